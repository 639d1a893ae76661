import type { LabelStatement } from "../../hazard/statements.ts";
import type { MetalAdvice } from "../../hazard/texts/contents-line.ts";
import type { ValuesOf } from "../../quantities/statement.ts";
import { millilitres, namesWithin, percent, sentence, significant, withUnit } from "./phrases.ts";
import { metalWord } from "./studio-phrases.ts";

export const ROUTES = {
  oral: "par ingestion",
  dermal: "par contact cutané",
  dust: "par inhalation de poussières",
  vapour: "par inhalation de vapeurs",
} as const;
export const LIMIT_KINDS = {
  generic: "la limite générale",
  specific: "la limite propre à la substance",
} as const;

/** Stands among ingredients for a share that nobody accounts for. */
const UNACCOUNTED = "(unaccounted)";

type Of<R extends LabelStatement["rule"]> = ValuesOf<LabelStatement, R>;

export function named(ingredients: readonly string[]): string {
  return namesWithin([
    ...new Set(ingredients.map((slug) => (slug === UNACCOUNTED ? "la part inconnue" : slug))),
  ]);
}

/** As the tables of label texts have it. */
export const METAL_ADVICE: Readonly<Record<MetalAdvice, string>> = {
  "do not spray or heat": "Ne pas pulvériser, ne pas poncer à sec, ne pas chauffer.",
  "do not sand dry": "Ne pas poncer à sec\u202f; ne pas respirer ses poussières ni ses aérosols.",
  "do not heat": "Ne pas chauffer\u202f; ne rien jeter à l’égout.",
};

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
    return `ce qui${others === undefined ? "" : `, avec ${named(others)},`} mène le mélange à une estimation de ${withUnit(significant(ate, 2), unit)}, au-dessus de ${withUnit(significant(upTo, 3), unit)}`;
  }
  return limit === undefined ? "trop peu pour compter" : `au-dessous de ${percent(limit)}`;
}

export function counted(as: string): string {
  return as === "substance" ? "" : `, compté en ${metalWord(as)}`;
}

export function shortForm({
  packageMl,
  shortBelowMl,
}: Pick<Of<"lead-as-metal">, "packageMl" | "shortBelowMl">): string {
  if (packageMl === undefined || packageMl >= (shortBelowMl ?? 0)) return "";
  return `\u202f; un emballage de ${millilitres(packageMl)} porte la forme courte`;
}

export function uncertain(certain: "yes" | "no"): string {
  return certain === "no" ? ", sans certitude" : "";
}

export function missing(code: string): string {
  return sentence(`${code} résulte du calcul, et n’est pas sur l’étiquette du fabricant`);
}

export function excess(code: string): string {
  return sentence(`${code} est sur l’étiquette du fabricant, et ne résulte pas du calcul`);
}
