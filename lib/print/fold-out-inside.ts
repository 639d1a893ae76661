import { at } from "../quantities/at.ts";
import type { Tagged } from "./mark.ts";
import { flowed, type Column, type FlowGroup } from "./package-flow.ts";
import type { LabelLine, PackageLabelContent } from "./package-label-content.ts";
import {
  asProse,
  columnsOf,
  leading,
  lineSetter,
  PARAGRAPH_MM,
  sizeOfXHeightPt,
  SUBJECT_MM,
} from "./package-label-parts.ts";
import { measureText } from "./print-document.ts";

/** How the inside of a fold-out label is tried. */
export interface InsideAttempt {
  readonly xHeightMm: number;
  /** Whether no language goes on over from one column to another. */
  readonly areWhole: boolean;
  /** Of a page. */
  readonly columns: number;
  /** Whether pigments, vehicle and lightfastness stand there too. */
  readonly areFactsInside: boolean;
}

/**
 * All that a label says but pictograms and supplier, by language, each column with its languages at
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
  const columns = pages.flatMap((page) => columnsOf(page, attempt.columns));
  const { widthMm } = at(columns, 0);
  const groups = content.inside.map((line) => languageGroup(content, attempt, line, widthMm));
  const runOn = flowed(groups, columns) ?? flowed(groups, columns, { areLinesKept: false });
  if (!attempt.areWhole || runOn === undefined) return runOn;
  for (const counts of sharings(groups.length, columns.length)) {
    const set = counts.map((count, i) => {
      const from = counts.slice(0, i).reduce((sum, before) => sum + before, 0);
      return flowed(groups.slice(from, from + count), [at(columns, i)]);
    });
    if (set.every((one) => one !== undefined)) return set.flat();
  }
  return undefined;
}

/** How many of some things in a row each of some columns may bear, the most even sharing first; none is empty where there are enough. */
function sharings(things: number, columns: number): number[][] {
  const least = things >= columns ? 1 : 0;
  const all = (left: number, places: number): number[][] =>
    places === 1
      ? [[left]]
      : Array.from({ length: left + 1 }, (_, i) => left - i).flatMap((first) =>
          all(left - first, places - 1).map((rest) => [first, ...rest]),
        );
  return all(things, columns)
    .filter((counts) => counts.every((count) => count >= least))
    .sort((one, other) => Math.max(...one) - Math.max(...other));
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
  const inProse = (lines: readonly LabelLine[]) => ofLanguage(lines).map(asProse);
  return {
    kind: "group",
    head: line(isBeside ? named : code, 2 * SUBJECT_MM, "sans bold"),
    items: [
      ...(isBeside ? [] : [leading(line(name, PARAGRAPH_MM, "sans bold"))]),
      ...(own?.signalWord === undefined
        ? []
        : [leading(line(own.signalWord, SUBJECT_MM, "sans bold"))]),
      ...(statements === "" ? [] : [asProse(line(statements, PARAGRAPH_MM))]),
      ...inProse(rags),
      ...(areFactsInside ? [...ofLanguage(facts), ...inProse(demonstration)] : []),
    ],
  };
}
