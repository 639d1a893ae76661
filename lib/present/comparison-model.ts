import { sideBySide, type ComparedRow, type Verdict } from "../collection/side-by-side.ts";
import type {
  ComparisonCellView,
  ComparisonRowView,
  ComparisonView,
  ShownCell,
  ShownColour,
} from "./comparison-types.ts";
import type { CompareWords } from "../words/en/compare-pages.ts";
import type { StatementWording } from "../words/words.ts";

/** What a comparison says in one language: few words, since the page's script carries them. */
export interface ComparisonWords {
  readonly compare: CompareWords;
  readonly rulings: Readonly<Record<string, StatementWording>>;
  /** "not stated" */
  readonly notStated: string;
}

const VERDICTS: readonly Verdict[] = ["differs", "not told", "same", "not stated"];

/**
 * Two to four colours side by side, differences first: the same for a built page and for the script.
 * @param root from the page to the site's root: "../".
 * @throws RangeError as {@link sideBySide} does, and for a rule without a sentence.
 */
export function comparisonView(
  colours: readonly ShownColour[],
  words: ComparisonWords,
  root: string,
): ComparisonView {
  const { rows, unstated } = sideBySide(colours);
  const text = words.compare;
  const of = (verdict: Verdict) => rows.filter((row) => row.verdict === verdict);
  const heads = (verdict: Verdict): string[] => [
    ...new Set(of(verdict).map(({ key }) => headOf(key, undefined, colours, text).head)),
  ];
  const caption = text.panelTitle(colours.map(({ name }) => name));
  return {
    columns: colours.map(({ name, address }) => ({ text: name, href: root + address })),
    summary: text.summary(heads("differs"), heads("not told")),
    parts: VERDICTS.filter((verdict) => of(verdict).length > 0).map((verdict) => {
      const rowViews = of(verdict).map((row) => rowView(row, colours, words, root));
      return {
        ...text.parts[verdict],
        caption: `${caption}. ${text.parts[verdict].heading}`,
        rows: rowViews,
        ...(verdict === "same" || verdict === "not stated"
          ? { folded: text.folded(rowViews.map(({ head }) => head)) }
          : {}),
      };
    }),
    ...(unstated.length === 0
      ? {}
      : {
          unstated: text.unstated(
            unstated.map((key) => headOf(key, undefined, colours, text).head),
          ),
        }),
  };
}

function rowView(
  row: ComparedRow,
  colours: readonly ShownColour[],
  { compare, rulings, notStated }: ComparisonWords,
  root: string,
): ComparisonRowView {
  return {
    ...headOf(row.key, row.level, colours, compare),
    ...(row.ruling === undefined ? {} : { saying: worded(row.ruling, rulings) }),
    cells: colours.map(({ cells: { [row.key]: cell } }): ComparisonCellView =>
      cell === undefined
        ? { standing: { kind: "not stated", word: notStated }, items: [] }
        : cellView(cell, row, root),
    ),
  };
}

function worded(
  { rule, values }: NonNullable<ComparedRow["ruling"]>,
  rulings: ComparisonWords["rulings"],
): string {
  const wording = rulings[rule];
  if (wording === undefined)
    throw new RangeError(`The rule is ${rule}; right would be a rule with a sentence`);
  return wording(values);
}

function cellView(
  { lead, text, atL, standing, note, items, address }: ShownCell,
  { level }: ComparedRow,
  root: string,
): ComparisonCellView {
  const shown = level === undefined ? text : atL?.[level];
  return {
    ...(lead === undefined ? {} : { lead }),
    ...(shown === undefined ? {} : { text: shown }),
    // A standing belongs to a figure; the sentence of a tint that does not reach the lightness stands without.
    ...(standing === undefined || (shown === undefined && lead !== undefined) ? {} : { standing }),
    ...(note === undefined ? {} : { note }),
    items: items ?? [],
    ...(address === undefined ? {} : { href: root + address }),
  };
}

function headOf(
  key: string,
  level: ComparedRow["level"],
  colours: readonly ShownColour[],
  text: CompareWords,
): { readonly head: string; readonly unit?: string } {
  const [kind, slug] = key.split(".");
  if (slug === undefined) return text.rows[key] ?? { head: key };
  const white =
    colours.flatMap(({ whites }) => whites).find((one) => one.slug === slug)?.name ?? slug;
  if (kind === "parts")
    return { head: text.partsOfWhite.head(white), unit: text.partsOfWhite.unit };
  return {
    head: text.white.head(white),
    ...(level === undefined ? {} : { unit: text.white.unit(level) }),
  };
}
