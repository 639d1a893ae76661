/**
 * Lines of a label that no code stands for: what it contains, and what to leave with
 * a metal that no statement on it tells of. They are ours, in every language.
 *
 * @source label-lines-own
 */
import { isOneOf } from "../../quantities/members.ts";
import type { Metal, MetalRow } from "../studio/metal-content.ts";
import {
  statementText,
  type StatementLanguage,
  type StatementText,
  type StatementTexts,
} from "./statement-texts.ts";

/** How the tables name the line that lists what a label contains. */
export const CONTAINS = "contains";

/** What to leave with a metal, as the tables name the sentence. */
const METAL_ADVICE = ["do not spray or heat", "do not sand dry", "do not heat"] as const;
export type MetalAdvice = (typeof METAL_ADVICE)[number];

/** Whether a row of the tables is ours: English first, the other languages translated. */
export function isOwnLine(code: string): boolean {
  return code === CONTAINS || code.startsWith("metal ") || isOneOf(METAL_ADVICE, code);
}

export function metalAdvice({ heat, dust }: Pick<MetalRow, "heat" | "dust">): MetalAdvice {
  if (heat === "with exhaust") return "do not sand dry";
  return dust === "grave" ? "do not spray or heat" : "do not heat";
}

/** What the line of substances is printed under. */
export const SUBSTANCES_LINE = "contains substances";

/** What a line on metals is printed under. */
export function metalLineKey(metals: readonly Metal[]): string {
  return `contains ${metals.join(", ")}`;
}

/** How the tables name a metal's name. */
export function metalKey(metal: Metal): string {
  return `metal ${metal}`;
}

/**
 * "Contains lead and cadmium. Do not spray, sand dry or heat."
 * @returns undefined where the language lacks one of its parts.
 */
export function metalLine(
  texts: StatementTexts,
  metals: readonly Metal[],
  advice: MetalAdvice,
  language: StatementLanguage,
): string | undefined {
  const names = metals.flatMap((metal) => texts.get(metalKey(metal))?.texts[language] ?? []);
  if (names.length < metals.length) return undefined;
  const contains = statementText(texts, CONTAINS, language, { names: [listed(names, language)] });
  const leave = statementText(texts, advice, language);
  return isIn(contains, language) && isIn(leave, language)
    ? `${contains.text} ${leave.text}`
    : undefined;
}

/** "Contains basic lead carbonate." @returns undefined where the language lacks the sentence. */
export function substancesLine(
  texts: StatementTexts,
  names: readonly string[],
  language: StatementLanguage,
): string | undefined {
  const line = statementText(texts, CONTAINS, language, { names });
  return isIn(line, language) ? line.text : undefined;
}

function isIn({ text, language }: StatementText, wanted: StatementLanguage): boolean {
  return language === wanted && text !== "";
}

/** "a, b and c" in each language. */
function listed(names: readonly string[], language: StatementLanguage): string {
  const locale = language === "en" ? "en-GB" : language;
  return new Intl.ListFormat(locale, { type: "conjunction" }).format(names);
}
