import { at } from "../quantities/at.ts";
import type { Tagged } from "./mark.ts";
import { flowed, type Column, type FlowGroup } from "./package-flow.ts";
import type { LabelLine, PackageLabelContent } from "./package-label-content.ts";
import { lineSetter, PARAGRAPH_MM, sizeOfXHeightPt, SUBJECT_MM } from "./package-label-parts.ts";
import { measureText } from "./print-document.ts";

/** How the inside of a fold-out label is tried. */
export interface InsideAttempt {
  readonly xHeightMm: number;
  /** Whether each language begins on a page of its own. */
  readonly isApart: boolean;
  /** Whether pigments, vehicle and lightfastness stand there too. */
  readonly areFactsInside: boolean;
}

/**
 * All that a label says but pictograms and supplier, by language, each page with its languages at
 * the top of what is theirs.
 * @param pages where text stands on each.
 * @returns undefined where the pages do not hold it.
 * @source clp-fold-out
 */
export function insidePages(
  content: PackageLabelContent,
  attempt: InsideAttempt,
  pages: readonly Column[],
): Tagged[] | undefined {
  const { widthMm } = at(pages, 0);
  const groups = content.inside.map((line) => languageGroup(content, attempt, line, widthMm));
  const runOn = flowed(groups, pages);
  if (!attempt.isApart || runOn === undefined) return runOn;
  const blocks: Tagged[] = [];
  let from = 0;
  for (const group of groups) {
    const count = pages
      .slice(from)
      .findIndex((_, i) => flowed([group], pages.slice(from, from + i + 1)) !== undefined);
    if (count < 0) return undefined;
    blocks.push(...(flowed([group], pages.slice(from, from + count + 1)) ?? []));
    from += count + 1;
  }
  return blocks;
}

/** One language: its code, with the paint's name where that stands beside it, and every statement. */
function languageGroup(
  { name, cautions, facts, rags, demonstration }: PackageLabelContent,
  { xHeightMm, areFactsInside }: InsideAttempt,
  { language }: LabelLine,
  widthMm: number,
): FlowGroup {
  const line = lineSetter(xHeightMm, language);
  const code = language.toUpperCase();
  const named = `${code}\u2002${name}`;
  const isBeside = measureText(named, "sans bold", sizeOfXHeightPt(xHeightMm)) <= widthMm;
  const own = cautions.find((one) => one.language === language);
  const statements = own?.statements.map(({ text }) => text).join(" ") ?? "";
  const ofLanguage = (lines: readonly LabelLine[]) =>
    lines.filter((one) => one.language === language).map(({ text }) => line(text, PARAGRAPH_MM));
  return {
    kind: "group",
    head: line(isBeside ? named : code, 2 * SUBJECT_MM, "sans bold"),
    items: [
      ...(isBeside ? [] : [line(name, PARAGRAPH_MM, "sans bold")]),
      ...(own?.signalWord === undefined ? [] : [line(own.signalWord, SUBJECT_MM, "sans bold")]),
      ...(statements === "" ? [] : [line(statements, PARAGRAPH_MM)]),
      ...ofLanguage(rags),
      ...(areFactsInside ? ofLanguage([...facts, ...demonstration]) : []),
    ],
  };
}
