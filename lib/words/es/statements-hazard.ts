import type { LabelStatement } from "../../hazard/statements.ts";
import type { MetalAdvice } from "../../hazard/texts/contents-line.ts";
import type { ValuesOf, WordingsOf } from "../../quantities/statement.ts";
import { SIGNAL_WORDS } from "./label-words.ts";
import {
  bracketed,
  dateWords,
  degrees,
  listed,
  millilitres,
  namesWithin,
  percent,
  sentence,
  significant,
  within,
  withUnit,
} from "./phrases.ts";
import { wordOf } from "./closed-words.ts";
import { MARKET_WORDINGS } from "./statements-markets.ts";
import { metalWord, STUDIO_WORDINGS } from "./statements-studio.ts";

const ROUTES = {
  oral: "por ingestión",
  dermal: "por contacto con la piel",
  dust: "por inhalación de polvo",
  vapour: "por inhalación de vapores",
} as const;
const LIMIT_KINDS = {
  generic: "el límite general",
  specific: "el límite propio de la sustancia",
} as const;

/** Stands among ingredients for a share that nobody accounts for. */
const UNACCOUNTED = "(unaccounted)";

type Of<R extends LabelStatement["rule"]> = ValuesOf<LabelStatement, R>;

/** Why each statement stands on a label or was left out, what is not known, and where the maker's label and the reckoning part. */
const LABEL_WORDINGS: WordingsOf<LabelStatement> = {
  "ate-mix": ({ hazardClass, route, ingredients, ateMix, limit, unit, unknownFraction }) =>
    `${hazardClass}, ${ROUTES[route]}, por ${named(ingredients)}: la estimación para la mezcla es de ${withUnit(significant(ateMix, 3), unit)}, ${limit === undefined ? "para la que no se indica ningún límite" : `el límite de ${withUnit(significant(limit, 3), unit)}`}${unknownFraction > 0 ? `, con un ${percent(unknownFraction)} de toxicidad desconocida` : ""}.`,
  "cut-off": ({ hazardClass, limit, limitKind, ingredients, massFraction, countedAs }) =>
    `${hazardClass} desde el ${percent(limit)} (${LIMIT_KINDS[limitKind]}): ${named(ingredients)} al ${percent(massFraction)}${counted(countedAs)}.`,
  "cut-off-summed": ({ hazardClass, limit, limitKind, ingredients, massFraction, countedAs }) =>
    `${hazardClass} desde el ${percent(limit)} (${LIMIT_KINDS[limitKind]}): ${named(ingredients)}, en conjunto ${percent(massFraction)}${counted(countedAs)}.`,
  "weighted-sum": ({ hazardClass, limit, limitKind, ingredients, weightedSum }) =>
    `${hazardClass} desde una suma ponderada del ${percent(limit)}: ${named(ingredients)}, ponderado ${percent(weightedSum)}${limitKind === "specific" ? bracketed("según un límite propio de la sustancia") : ""}.`,
  "flash-point": ({ hazardClass, flashPointC }) =>
    `${hazardClass} por el punto de inflamación de la mezcla, ${degrees(flashPointC)}.`,
  "flash-point-not-stated": ({ hazardClass, ingredients, massFraction }) =>
    `${hazardClass}, como ${named(ingredients)} (${percent(massFraction)}): el punto de inflamación de la mezcla no está registrado.`,
  "as-its-ingredient": ({ hazardClass, ingredients, massFraction }) =>
    `${hazardClass}, como ${named(ingredients)}, que es prácticamente toda ella (${percent(massFraction)}).`,
  "as-its-ingredients": ({ ingredients, limit, massFraction }) =>
    `Viene con ${named(ingredients)} desde el ${percent(limit)}: ${percent(massFraction)}.`,
  elicitation: ({ substance, hazardClass, massFraction, limit }) =>
    sentence(
      `${within(substance)} (${hazardClass}) al ${percent(massFraction)}: desde el ${percent(limit)} puede reaccionar quien ya sea alérgico`,
    ),
  "lead-as-metal": ({ massFraction, ingredients, limit, ...size }) =>
    `El plomo, como metal, es el ${percent(massFraction)} de la pintura (${named(ingredients)}), por encima del ${percent(limit)}${shortForm(size)}.`,
  "lead-share-not-stated": ({ ingredients, limit, ...size }) =>
    `Contiene plomo en una parte que no se indica (${named(ingredients)}), así que cuenta como por encima del ${percent(limit)}${shortForm(size)}.`,
  "traces-in-an-unclassified-mixture": ({ ingredients }) =>
    `No clasificada, pero por contener ${named(ingredients)} debe darse una ficha de datos de seguridad a quien la pida.`,
  "as-its-supplier-states": ({ ingredients }) =>
    `Según lo declara el proveedor de ${named(ingredients)}.`,

  "below-its-limit": ({ ingredients, massFraction, ...what }) =>
    `Omitido: ${named(ingredients)}, ${ingredients.length > 1 ? "en conjunto " : ""}${percent(massFraction)} del total, ${belowWhat(what)}.`,
  "covered-by": ({ by }) => `Omitido, puesto que ${by} dice más.`,
  "entry-annulled": ({ name }) => `Omitido: anulado para ${within(name)}.`,
  "category-not-in-frame": ({ name, frame }) =>
    `Omitido: declarado para ${within(name)}, y ninguna categoría de ${frame}.`,
  "dust-not-from-a-paste": ({ name }) =>
    `Omitido: declarado para el polvo de ${within(name)}, y una pasta no lo desprende.`,
  "vapour-not-from-a-powder": ({ name }) =>
    `Omitido: declarado para el vapor de ${within(name)}, y un polvo no lo desprende.`,
  "not-a-liquid": ({ name }) =>
    `Omitido: declarado para ${within(name)} como líquido, y esto no lo es.`,
  "flash-point-decides": ({ name }) =>
    `Omitido: declarado para ${within(name)}, pero decide el punto de inflamación de la mezcla.`,
  "flammable-trace": ({ name }) =>
    `Omitido: hay demasiado poco de ${within(name)} para contar; lo diría el punto de inflamación de la mezcla.`,
  "too-viscous-to-aspirate": ({ name }) =>
    `Omitido: declarado para ${within(name)}, y la mezcla es demasiado espesa para ser aspirada a los pulmones.`,
  "needs-a-test-of-the-mixture": ({ name }) =>
    `Omitido: declarado para ${within(name)}, y solo lo diría un ensayo de la propia mezcla.`,

  "by-severity": ({ answers }) => `Elegido por gravedad, para ${listed(answers)}.`,
  "children-first": ({ answers }) =>
    `Va primero en todo lo que el público puede comprar${bracketed(listed(answers))}.`,
  "disposal-for-the-public": ({ answers }) =>
    `La eliminación tiene su sitio en todo lo que el público puede comprar${bracketed(listed(answers))}.`,
  "small-package": ({ packageMl, upToMl, statements }) =>
    `La etiqueta de un envase de ${millilitres(packageMl)} (hasta ${millilitres(upToMl)}) puede omitir ${listed(statements)} si ni ella, ni una etiqueta desplegable, ni una colgante, ni un envase exterior pueden llevarlo todo; una página o una tarjeta nunca.`,

  "unknown-acute-toxicity": ({ massFraction, routes, ingredients }) =>
    `El ${percent(massFraction)} de la mezcla está constituido por componentes de toxicidad aguda desconocida (${listed(
      routes.map((route) => ROUTES[route]),
      "or",
    )}): ${named(ingredients)}.`,
  "no-hazard-data": ({ name }) =>
    `No hay datos de peligro registrados para ${within(name)}; tratar como peligroso. Hace falta la ficha de datos de seguridad de su proveedor, secciones 2 y 3.`,
  "total-short-of-the-whole": ({ unaccounted }) =>
    `No se sabe qué es el ${percent(unaccounted)} de la mezcla; tratarla como peligrosa.`,
  "statement-not-known": ({ statements, name }) =>
    `El proveedor de ${within(name)} declara ${listed(statements)}, que no está en ninguna de nuestras listas: consultarlo, y tratar como peligroso.`,

  "contains-metal": ({ metals, advice }) =>
    `Contiene ${listed(metals.map(metalWord))}. ${METAL_ADVICE[advice]}`,
  "child-resistant-fastening": ({ classes }) =>
    `Vendido al público, su envase necesita un cierre de seguridad para niños (${listed(classes.map(classByRoute))}).`,
  "tactile-warning": ({ classes }) =>
    `Vendido al público, su envase necesita una advertencia de peligro táctil (${listed(classes.map(classByRoute))}).`,

  "frame-differs": ({ stated, workedOut }) =>
    `La etiqueta del fabricante sigue ${stated}, y aquí se calcula según ${workedOut}.`,
  "signal-word-differs": ({ stated, workedOut }) =>
    `El fabricante ${stated === "none" ? "no declara ninguna palabra de advertencia" : `declara la palabra de advertencia ${wordOf(SIGNAL_WORDS, stated)}`}; según el cálculo es ${workedOut === "none" ? "ninguna" : wordOf(SIGNAL_WORDS, workedOut)}.`,
  "pictogram-not-stated": ({ code }) => missing(code),
  "pictogram-not-worked-out": ({ code }) => excess(code),
  "supplement-not-stated": ({ code }) => missing(code),
  "supplement-not-worked-out": ({ code }) => excess(code),
  "statement-not-stated": ({ statement, ingredients, certain }) =>
    missing(`${statement} (${named(ingredients)}${uncertain(certain)})`),
  "statement-not-worked-out": ({ statement }) => excess(statement),
  "statement-differs": ({ stated, workedOut, ingredients, certain }) =>
    `El fabricante declara ${stated}; según el cálculo es ${workedOut} (${named(ingredients)}${uncertain(certain)}).`,
  "statement-annulled": ({ statement }) =>
    `${statement} fue anulado y no tiene sitio en ninguna etiqueta.`,
  "not-of-the-frame": ({ statement, frame }) => `${statement} no es una indicación de ${frame}.`,
  "older-than-the-edition": ({ statement, edition, replacement }) =>
    `${statement} es más antiguo que la edición (${edition}), que tiene ${replacement}.`,
  "label-older-than-the-edition": ({ date, asOf, edition }) =>
    `La etiqueta es del ${dateWords(date)}, y la edición del ${dateWords(asOf)} (${edition}): cotejarla con ella.`,
  "too-many-precautions": ({ count, atMost }) =>
    `${count} consejos de prudencia, donde en una etiqueta caben ${atMost}.`,
};

/** Labels, studio and markets. */
export const HAZARD_RULINGS = { ...LABEL_WORDINGS, ...STUDIO_WORDINGS, ...MARKET_WORDINGS };

function named(ingredients: readonly string[]): string {
  return namesWithin([
    ...new Set(ingredients.map((slug) => (slug === UNACCOUNTED ? "la parte desconocida" : slug))),
  ]);
}

/** As the tables of label texts have it. */
const METAL_ADVICE: Readonly<Record<MetalAdvice, string>> = {
  "do not spray or heat": "No pulverizar, no lijar en seco, no calentar.",
  "do not sand dry": "No lijar en seco; no respirar el polvo ni el aerosol.",
  "do not heat": "No calentar; no verter nada por el desagüe.",
};

/** "Acute Tox. 2 dermal" with its route in words; any other class as it is. */
function classByRoute(name: string): string {
  const [, hazardClass, route] = /^(.+) (oral|dermal|dust|vapour)$/.exec(name) ?? [];
  return hazardClass === undefined || route === undefined
    ? name
    : `${hazardClass} (${ROUTES[route as keyof typeof ROUTES]})`;
}

/** The least share that counts; of an acute toxicity the estimate, which decides; else that it is too little. */
function belowWhat({
  limit,
  ate,
  upTo,
  unit,
  others,
}: Omit<Of<"below-its-limit">, "ingredients" | "massFraction">): string {
  if (ate !== undefined && upTo !== undefined && unit !== undefined) {
    return `lo que${others === undefined ? "" : `, con ${named(others)},`} lleva la mezcla a una estimación de ${withUnit(significant(ate, 2), unit)}, por encima de ${withUnit(significant(upTo, 3), unit)}`;
  }
  return limit === undefined ? "demasiado poco para contar" : `por debajo del ${percent(limit)}`;
}

function counted(as: string): string {
  return as === "substance" ? "" : `, contado como ${metalWord(as)}`;
}

function shortForm({
  packageMl,
  shortBelowMl,
}: Pick<Of<"lead-as-metal">, "packageMl" | "shortBelowMl">): string {
  if (packageMl === undefined || packageMl >= (shortBelowMl ?? 0)) return "";
  return `; un envase de ${millilitres(packageMl)} lleva la forma corta`;
}

function uncertain(certain: "yes" | "no"): string {
  return certain === "no" ? ", sin certeza" : "";
}

function missing(code: string): string {
  return sentence(`${code} resulta del cálculo, y no está en la etiqueta del fabricante`);
}

function excess(code: string): string {
  return sentence(`${code} está en la etiqueta del fabricante, y no resulta del cálculo`);
}
