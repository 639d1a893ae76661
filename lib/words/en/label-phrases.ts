import type { LabelStatement } from "../../hazard/statements.ts";
import type { MetalAdvice } from "../../hazard/texts/contents-line.ts";
import type { ValuesOf } from "../../quantities/statement.ts";
import { millilitres, namesWithin, percent, sentence, significant, withUnit } from "./phrases.ts";

export const ROUTES = {
  oral: "swallowed",
  dermal: "on the skin",
  dust: "breathed in as dust",
  vapour: "breathed in as vapour",
} as const;
export const LIMIT_KINDS = {
  generic: "the general limit",
  specific: "the substance's own limit",
} as const;

/** Stands among ingredients for a share that nobody accounts for. */
const UNACCOUNTED = "(unaccounted)";

type Of<R extends LabelStatement["rule"]> = ValuesOf<LabelStatement, R>;

export function named(ingredients: readonly string[]): string {
  return namesWithin([
    ...new Set(
      ingredients.map((slug) => (slug === UNACCOUNTED ? "what is not accounted for" : slug)),
    ),
  ]);
}

/** What a label says of a metal that no statement tells of; in other languages by the tables of label texts. */
export const METAL_ADVICE: Readonly<Record<MetalAdvice, string>> = {
  "do not spray or heat": "Do not spray, sand dry or heat.",
  "do not sand dry": "Do not sand dry; keep its dust and spray out of the lungs.",
  "do not heat": "Do not heat; nothing down the drain.",
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
    return `brings the mixture${others === undefined ? "" : `, with ${named(others)},`} to an estimate of ${withUnit(significant(ate, 2), unit)}, which is above ${withUnit(significant(upTo, 3), unit)}`;
  }
  return limit === undefined ? "is too little to count" : `stays below ${percent(limit)}`;
}

export function counted(as: string): string {
  return as === "substance" ? "" : `, counted as ${as}`;
}

export function shortForm({
  packageMl,
  shortBelowMl,
}: Pick<Of<"lead-as-metal">, "packageMl" | "shortBelowMl">): string {
  if (packageMl === undefined || packageMl >= (shortBelowMl ?? 0)) return "";
  return `; a package of ${millilitres(packageMl)} bears the short form`;
}

export function uncertain(certain: "yes" | "no"): string {
  return certain === "no" ? ", not for certain" : "";
}

export function missing(code: string): string {
  return sentence(`${code} is worked out, and is not on the maker's label`);
}

export function excess(code: string): string {
  return sentence(`${code} is on the maker's label, and is not worked out`);
}
