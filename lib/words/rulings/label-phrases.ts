import type { LabelStatement } from "../../hazard/statements.ts";
import type { MetalAdvice } from "../../hazard/texts/contents-line.ts";
import type { AcuteRoute } from "../../hazard/texts/hazard-statement.ts";
import type { ValuesOf } from "../../quantities/statement.ts";
import type { InEach } from "../in-each.ts";
import { de, en, es, fr, inEach, sentences } from "../phrases-in-each.ts";
import { alike } from "../texts.ts";
import { metalWord } from "./studio-phrases.ts";

type Of<R extends LabelStatement["rule"]> = ValuesOf<LabelStatement, R>;

export const ROUTES = {
  oral: { en: "swallowed", de: "bei Verschlucken", fr: "par ingestion", es: "por ingestión" },
  dermal: {
    en: "on the skin",
    de: "bei Hautkontakt",
    fr: "par contact cutané",
    es: "por contacto con la piel",
  },
  dust: {
    en: "breathed in as dust",
    de: "beim Einatmen als Staub",
    fr: "par inhalation de poussières",
    es: "por inhalación de polvo",
  },
  vapour: {
    en: "breathed in as vapour",
    de: "beim Einatmen als Dampf",
    fr: "par inhalation de vapeurs",
    es: "por inhalación de vapores",
  },
} as const satisfies Readonly<Record<string, InEach>>;

export const LIMIT_KINDS = {
  generic: {
    en: "the general limit",
    de: "allgemeiner Grenzwert",
    fr: "la limite générale",
    es: "el límite general",
  },
  specific: {
    en: "the substance's own limit",
    de: "eigener Grenzwert des Stoffes",
    fr: "la limite propre à la substance",
    es: "el límite propio de la sustancia",
  },
} as const satisfies Readonly<Record<string, InEach>>;

/** Stands among ingredients for a share that nobody accounts for. */
const UNACCOUNTED = "(unaccounted)";

export function named(ingredients: readonly string[]): InEach {
  return inEach((p, language) =>
    p.namesWithin([
      ...new Set(ingredients.map((slug) => (slug === UNACCOUNTED ? THE_REST[language] : slug))),
    ]),
  );
}

const THE_REST: InEach = {
  en: "what is not accounted for",
  de: "der nicht belegte Rest",
  fr: "la part inconnue",
  es: "la parte desconocida",
};

/** What a label says of a metal that no statement tells of; in other languages by the tables of label texts. */
export const METAL_ADVICE: Readonly<Record<MetalAdvice, InEach>> = {
  "do not spray or heat": {
    en: "Do not spray, sand dry or heat.",
    de: "Nicht sprühen, nicht trocken schleifen, nicht erhitzen.",
    fr: "Ne pas pulvériser, ne pas poncer à sec, ne pas chauffer.",
    es: "No pulverizar, no lijar en seco, no calentar.",
  },
  "do not sand dry": {
    en: "Do not sand dry; keep its dust and spray out of the lungs.",
    de: "Nicht trocken schleifen; Staub und Aerosol nicht einatmen.",
    fr: "Ne pas poncer à sec\u202f; ne pas respirer ses poussières ni ses aérosols.",
    es: "No lijar en seco; no respirar el polvo ni el aerosol.",
  },
  "do not heat": {
    en: "Do not heat; nothing down the drain.",
    de: "Nicht erhitzen; nichts in den Ausguss geben.",
    fr: "Ne pas chauffer\u202f; ne rien jeter à l’égout.",
    es: "No calentar; no verter nada por el desagüe.",
  },
};

/** "Acute Tox. 2 dermal" with its route in words; any other class as it is. */
export function classByRoute(name: string): InEach {
  const [, hazardClass, route] = /^(.+) (oral|dermal|dust|vapour)$/.exec(name) ?? [];
  return hazardClass === undefined || route === undefined
    ? alike(name)
    : inEach((_, language) => `${hazardClass} (${ROUTES[route as AcuteRoute][language]})`);
}

/** The least share that counts; of an acute toxicity the estimate, which decides; else that it is too little. */
export function belowWhat({
  limit,
  ate,
  upTo,
  unit,
  others,
}: Omit<Of<"below-its-limit">, "ingredients" | "massFraction">): InEach {
  if (ate === undefined || upTo === undefined || unit === undefined)
    return limit === undefined
      ? {
          en: "is too little to count",
          de: "ist zu wenig, um zu zählen",
          fr: "trop peu pour compter",
          es: "demasiado poco para que cuente",
        }
      : {
          en: `stays below ${en.percent(limit)}`,
          de: `bleibt unter ${de.percent(limit)}`,
          fr: `au-dessous de ${fr.percent(limit)}`,
          es: `por debajo del ${es.percent(limit)}`,
        };
  const estimate = inEach((p) => p.withUnit(p.significant(ate, 2), unit));
  const above = inEach((p) => p.withUnit(p.significant(upTo, 3), unit));
  const together = inEach((_, language) =>
    others === undefined ? "" : `, ${WITH[language]} ${named(others)[language]},`,
  );
  return {
    en: `brings the mixture${together.en} to an estimate of ${estimate.en}, which is above ${above.en}`,
    de: `bringt das Gemisch${together.de} auf einen Schätzwert von ${estimate.de}, der über ${above.de} liegt`,
    fr: `ce qui${together.fr} mène le mélange à une estimation de ${estimate.fr}, au-dessus de ${above.fr}`,
    es: `lo que${together.es} lleva la mezcla a una estimación de ${estimate.es}, por encima de ${above.es}`,
  };
}

const WITH: InEach = { en: "with", de: "mit", fr: "avec", es: "con" };

export function counted(as: string): InEach {
  if (as === "substance") return alike("");
  const { de, fr, es } = metalWord(as);
  return {
    en: `, counted as ${as}`,
    de: `, gerechnet als ${de}`,
    fr: `, compté en ${fr}`,
    es: `, contado como ${es}`,
  };
}

/** Of a package too small for the whole text. */
export function shortForm({
  packageMl,
  shortBelowMl,
}: Pick<Of<"lead-as-metal">, "packageMl" | "shortBelowMl">): InEach {
  return packageMl === undefined || packageMl >= (shortBelowMl ?? 0)
    ? alike("")
    : {
        en: `; a package of ${en.millilitres(packageMl)} bears the short form`,
        de: `; eine Packung von ${de.millilitres(packageMl)} trägt die Kurzform`,
        fr: `\u202f; un emballage de ${fr.millilitres(packageMl)} porte la forme courte`,
        es: `; un envase de ${es.millilitres(packageMl)} lleva la forma corta`,
      };
}

export function uncertain(certain: "yes" | "no"): InEach {
  return certain === "yes"
    ? alike("")
    : { en: ", not for certain", de: ", ungewiss", fr: ", sans certitude", es: ", sin certeza" };
}

export function missing(code: InEach): InEach {
  return sentences({
    en: `${code.en} is worked out, and is not on the maker's label`,
    de: `${code.de} ist errechnet und steht nicht auf dem Etikett des Herstellers`,
    fr: `${code.fr} résulte du calcul, et n’est pas sur l’étiquette du fabricant`,
    es: `${code.es} resulta del cálculo, y no está en la etiqueta del fabricante`,
  });
}

export function excess(code: InEach): InEach {
  return sentences({
    en: `${code.en} is on the maker's label, and is not worked out`,
    de: `${code.de} steht auf dem Etikett des Herstellers und ist nicht errechnet`,
    fr: `${code.fr} est sur l’étiquette du fabricant, et ne résulte pas du calcul`,
    es: `${code.es} está en la etiqueta del fabricante, y no resulta del cálculo`,
  });
}
