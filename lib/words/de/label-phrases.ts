import type { AcuteRoute } from "../../hazard/texts/hazard-statement.ts";
import type { LabelStatement } from "../../hazard/statements.ts";
import type { MetalAdvice } from "../../hazard/texts/contents-line.ts";
import type { ValuesOf } from "../../quantities/statement.ts";
import { SIGNAL_WORDS, wordOf } from "../closed-sets.ts";
import { millilitres, namesWithin, percent, sentence, significant, withUnit } from "./phrases.ts";
import { metalWord } from "./studio-phrases.ts";

export const ROUTES: Readonly<Record<AcuteRoute, string>> = {
  oral: "bei Verschlucken",
  dermal: "bei Hautkontakt",
  dust: "beim Einatmen als Staub",
  vapour: "beim Einatmen als Dampf",
};
export const LIMIT_KINDS = {
  generic: "allgemeiner Grenzwert",
  specific: "eigener Grenzwert des Stoffes",
} as const;

/** Stands among ingredients for a share that nobody accounts for. */
const UNACCOUNTED = "(unaccounted)";

type Of<R extends LabelStatement["rule"]> = ValuesOf<LabelStatement, R>;

export function named(ingredients: readonly string[]): string {
  return namesWithin([
    ...new Set(ingredients.map((slug) => (slug === UNACCOUNTED ? "der nicht belegte Rest" : slug))),
  ]);
}

/** What a label says of a metal that no statement tells of, as the table of label texts has it. */
export const METAL_ADVICE: Readonly<Record<MetalAdvice, string>> = {
  "do not spray or heat": "Nicht sprühen, nicht trocken schleifen, nicht erhitzen.",
  "do not sand dry": "Nicht trocken schleifen; Staub und Aerosol nicht einatmen.",
  "do not heat": "Nicht erhitzen; nichts in den Ausguss geben.",
};

export function signalWord(word: string): string {
  return word === "none" ? "keines" : wordOf(SIGNAL_WORDS, word, "de");
}

/** "Acute Tox. 2 dermal" with its route in words; any other class as it is. */
export function classByRoute(name: string): string {
  const [, hazardClass, route] = /^(.+) (oral|dermal|dust|vapour)$/.exec(name) ?? [];
  return hazardClass === undefined || route === undefined
    ? name
    : `${hazardClass} (${ROUTES[route as keyof typeof ROUTES]})`;
}

/** The least share that counts; of an acute toxicity the estimate, which decides; else that it is too little. */
export function belowWhat({
  limit,
  ate,
  upTo,
  unit,
  others,
}: Omit<Of<"below-its-limit">, "ingredients" | "massFraction">): string {
  if (ate !== undefined && upTo !== undefined && unit !== undefined) {
    return `bringt das Gemisch${others === undefined ? "" : `, mit ${named(others)},`} auf einen Schätzwert von ${withUnit(significant(ate, 2), unit)}, der über ${withUnit(significant(upTo, 3), unit)} liegt`;
  }
  return limit === undefined ? "ist zu wenig, um zu zählen" : `bleibt unter ${percent(limit)}`;
}

export function counted(as: string): string {
  return as === "substance" ? "" : `, gerechnet als ${metalWord(as)}`;
}

export function shortForm({
  packageMl,
  shortBelowMl,
}: Pick<Of<"lead-as-metal">, "packageMl" | "shortBelowMl">): string {
  if (packageMl === undefined || packageMl >= (shortBelowMl ?? 0)) return "";
  return `; eine Packung von ${millilitres(packageMl)} trägt die Kurzform`;
}

export function uncertain(certain: "yes" | "no"): string {
  return certain === "no" ? ", ungewiss" : "";
}

export function missing(code: string): string {
  return sentence(`${code} ist errechnet und steht nicht auf dem Etikett des Herstellers`);
}

export function excess(code: string): string {
  return sentence(`${code} steht auf dem Etikett des Herstellers und ist nicht errechnet`);
}
