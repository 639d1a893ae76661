import type { LabelStatement } from "../../hazard/statements.ts";
import type { MetalAdvice } from "../../hazard/texts/contents-line.ts";
import type { ValuesOf } from "../../quantities/statement.ts";
import { millilitres, namesWithin, percent, sentence, significant, withUnit } from "./phrases.ts";
import { metalWord } from "./studio-phrases.ts";

export const ROUTES = {
  oral: "por ingestión",
  dermal: "por contacto con la piel",
  dust: "por inhalación de polvo",
  vapour: "por inhalación de vapores",
} as const;
export const LIMIT_KINDS = {
  generic: "el límite general",
  specific: "el límite propio de la sustancia",
} as const;

/** Stands among ingredients for a share that nobody accounts for. */
const UNACCOUNTED = "(unaccounted)";

type Of<R extends LabelStatement["rule"]> = ValuesOf<LabelStatement, R>;

export function named(ingredients: readonly string[]): string {
  return namesWithin([
    ...new Set(ingredients.map((slug) => (slug === UNACCOUNTED ? "la parte desconocida" : slug))),
  ]);
}

/** As the tables of label texts have it. */
export const METAL_ADVICE: Readonly<Record<MetalAdvice, string>> = {
  "do not spray or heat": "No pulverizar, no lijar en seco, no calentar.",
  "do not sand dry": "No lijar en seco; no respirar el polvo ni el aerosol.",
  "do not heat": "No calentar; no verter nada por el desagüe.",
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
    return `lo que${others === undefined ? "" : `, con ${named(others)},`} lleva la mezcla a una estimación de ${withUnit(significant(ate, 2), unit)}, por encima de ${withUnit(significant(upTo, 3), unit)}`;
  }
  return limit === undefined
    ? "demasiado poco para que cuente"
    : `por debajo del ${percent(limit)}`;
}

export function counted(as: string): string {
  return as === "substance" ? "" : `, contado como ${metalWord(as)}`;
}

export function shortForm({
  packageMl,
  shortBelowMl,
}: Pick<Of<"lead-as-metal">, "packageMl" | "shortBelowMl">): string {
  if (packageMl === undefined || packageMl >= (shortBelowMl ?? 0)) return "";
  return `; un envase de ${millilitres(packageMl)} lleva la forma corta`;
}

export function uncertain(certain: "yes" | "no"): string {
  return certain === "no" ? ", sin certeza" : "";
}

export function missing(code: string): string {
  return sentence(`${code} resulta del cálculo, y no está en la etiqueta del fabricante`);
}

export function excess(code: string): string {
  return sentence(`${code} está en la etiqueta del fabricante, y no resulta del cálculo`);
}
