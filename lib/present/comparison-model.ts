import {
  sideBySide,
  type ComparedRow,
  type SideBySide,
  VERDICTS,
  type Verdict,
} from "../collection/side-by-side.ts";
import type {
  ComparisonCellView,
  ComparisonPartView,
  ComparisonRowView,
  ComparisonView,
  ShownCell,
  ShownColour,
  SwatchRowView,
} from "./comparison-types.ts";
import type { ComparisonStatement } from "../collection/statements.ts";
import { given } from "../quantities/given.ts";
import type { WordingsOf } from "../quantities/statement.ts";
import { worded } from "../words/by-rule.ts";
import type { Words } from "../words/words.ts";

/** What a comparison says in one language: few words, since the page's script carries them. */
export interface ComparisonWords {
  readonly compare: Words["pages"]["compare"];
  readonly rulings: WordingsOf<ComparisonStatement>;
  /** "not stated" */
  readonly notStated: string;
}

/**
 * Two to four colours side by side: swatches first, then what differs, then the rest. The same for a built page and
 * for the script.
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
  const keys = (verdict: Verdict): string[] =>
    rows.filter((row) => row.verdict === verdict && isCompared(row)).map(({ key }) => key);
  const swatched = rows.filter((row) => isSwatched(row, colours));
  const repeated = rows.filter((row) => repeatsStrength(row, rows));
  const told = rows.filter((row) => !swatched.includes(row) && !repeated.includes(row));
  const caption = text.panelTitle(colours.map(({ name }) => name));
  const part = (
    id: keyof Words["pages"]["compare"]["parts"],
    of: readonly ComparedRow[],
  ): ComparisonPartView => ({
    ...text.parts[id],
    caption: `${caption}. ${text.parts[id].heading}`,
    rows: of.map((row) => rowView(row, colours, words, root)),
  });
  const folded = (id: keyof Words["pages"]["compare"]["parts"], of: readonly ComparedRow[]) => {
    const view = part(id, of);
    return { ...view, folded: text.folded(view.rows.map(({ head }) => head)) };
  };
  return {
    columns: colours.map(({ name, address, index }) => ({
      text: name,
      href: root + address,
      ...(index !== undefined && { index }),
    })),
    caption,
    swatches: swatchRows(swatched, colours, words),
    summary: comparisonSummary(keys("differs"), keys("not told"), text.summary),
    parts: given([
      ...VERDICTS.flatMap((verdict): ComparisonPartView[] => {
        const of = told.filter((row) => row.verdict === verdict);
        if (of.length === 0) return [];
        return [
          verdict === "same" || verdict === "not stated" ? folded(verdict, of) : part(verdict, of),
        ];
      }),
      swatched.length + repeated.length !== 0 && {
        ...part("figures", [...swatched, ...repeated]),
        folded: text.foldedFigures,
      },
    ]),
    ...unstatedLine(
      unstated.filter((key) => key !== "strength" || !rows.some(tellsStrength)),
      colours,
      text,
    ),
  };
}

const NOT_COMPARED: ReadonlySet<string> = new Set<ComparisonStatement["rule"]>([
  "compared-otherwise-known",
  "compared-shows-ground",
  "compared-no-lightness",
]);

/** Whether its colours were held against each other at all: what was not is neither close nor apart. */
function isCompared({ ruling }: ComparedRow): boolean {
  return ruling === undefined || !NOT_COMPARED.has(ruling.rule);
}

/** What rows that differ, and rows that are too close to call, are about: each thing once, and what differs in one white differs. */
export function comparisonSummary(
  differs: readonly string[],
  notTold: readonly string[],
  { differ, nothing, tooClose, inShort }: Words["pages"]["compare"]["summary"],
): string {
  const names: Readonly<Record<string, string>> = inShort;
  const about = (keys: readonly string[]): string[] => [
    ...new Set(keys.map((key) => names[key.split(".")[0] ?? key] ?? key)),
  ];
  const different = about(differs);
  const close = about(notTold).filter((name) => !different.includes(name));
  return [
    different.length === 0 ? nothing : differ(different),
    ...(close.length === 0 ? [] : [tooClose(close)]),
  ].join(" ");
}

function unstatedLine(
  unstated: SideBySide["unstated"],
  colours: readonly ShownColour[],
  text: Words["pages"]["compare"],
): Pick<ComparisonView, "unstated"> {
  return unstated.length === 0
    ? {}
    : {
        unstated: text.unstated(unstated.map((key) => headOf(key, undefined, colours, text).head)),
      };
}

/** A row that swatches show: the colours alone, or a white that two of them have a tint in. */
function isSwatched({ key, level }: ComparedRow, colours: readonly ShownColour[]): boolean {
  if (key === "masstone") return true;
  return colours.filter((colour) => paintOf(colour, key, level) !== undefined).length > 1;
}

function paintOf(colour: ShownColour, key: string, level: ComparedRow["level"]) {
  if (key === "masstone") return colour.masstone;
  const slug = whiteOf(key);
  return slug === undefined || level === undefined
    ? undefined
    : colour.whites.find((white) => white.slug === slug)?.tints[level];
}

function whiteOf(key: string): string | undefined {
  return key.startsWith("white.") ? key.slice("white.".length) : undefined;
}

/** Parts of white to a middle tone are a strength too, and so is what a white whitens: where they are told, strength is not unknown. */
function tellsStrength({ key, verdict }: ComparedRow): boolean {
  return (key === "whitens" || key.startsWith("parts.")) && verdict !== "not stated";
}

/** Parts of white say again what the strength says, where every colour has a strength. */
function repeatsStrength({ key }: ComparedRow, rows: readonly ComparedRow[]): boolean {
  const strength = rows.find((row) => row.key === "strength");
  return key.startsWith("parts.") && strength !== undefined && strength.verdict !== "not stated";
}

function swatchRows(
  rows: readonly ComparedRow[],
  colours: readonly ShownColour[],
  { compare: text, rulings }: ComparisonWords,
): SwatchRowView[] {
  // The colours as they come from the tube stand first, whatever else is compared.
  return rows
    .toSorted((one, other) => Number(other.key === "masstone") - Number(one.key === "masstone"))
    .map((row) => {
      const { key, level, ruling, verdict } = row;
      const isAlone = key === "masstone";
      const alike = verdict === "same" ? text.swatches.same : undefined;
      const saying = ruling === undefined ? alike : worded(rulings, ruling);
      return {
        head: isAlone ? text.swatches.alone : headOf(key, level, colours, text).head,
        isAlone,
        swatches: colours.map((colour) => {
          const paint = paintOf(colour, key, level);
          const cell = colour.cells[key];
          const figure = isAlone
            ? cell?.text
            : level === undefined
              ? undefined
              : cell?.atL?.[level];
          return paint === undefined
            ? {
                text: isAlone
                  ? text.swatches.notRead
                  : cell === undefined
                    ? text.swatches.notTried
                    : text.swatches.notReached,
              }
            : { paint, text: figure ?? "" };
        }),
        ...(saying !== undefined && { saying }),
      };
    });
}

function rowView(
  row: ComparedRow,
  colours: readonly ShownColour[],
  { compare, rulings, notStated }: ComparisonWords,
  root: string,
): ComparisonRowView {
  return {
    ...headOf(row.key, row.level, colours, compare),
    ...(row.ruling !== undefined && { saying: worded(rulings, row.ruling) }),
    cells: colours.map(({ cells: { [row.key]: cell } }): ComparisonCellView =>
      cell === undefined
        ? { standing: { kind: "not stated", word: notStated }, items: [] }
        : cellView(cell, row, root),
    ),
  };
}

/** A mark stands only where it is news: a supplier's word, an estimate, nothing known. */
function cellView(
  { lead, text, atL, standing, note, items, address }: ShownCell,
  { level }: ComparedRow,
  root: string,
): ComparisonCellView {
  const shown = level === undefined ? text : atL?.[level];
  const isNews =
    standing !== undefined && standing.kind !== "measured" && standing.kind !== "derived";
  return {
    ...(lead !== undefined && { lead }),
    ...(shown !== undefined && { text: shown }),
    ...(!isNews || (shown === undefined && lead !== undefined) ? {} : { standing }),
    ...(note !== undefined && { note }),
    items: items ?? [],
    ...(address !== undefined && { href: root + address }),
  };
}

function headOf(
  key: string,
  level: ComparedRow["level"],
  colours: readonly ShownColour[],
  text: Words["pages"]["compare"],
): { readonly head: string; readonly unit?: string } {
  const [kind, slug] = key.split(".");
  const rows: Readonly<Record<string, { readonly head: string; readonly unit?: string }>> =
    text.rows;
  if (slug === undefined) return rows[key] ?? { head: key };
  const white =
    colours.flatMap(({ whites }) => whites).find((one) => one.slug === slug)?.name ?? slug;
  if (kind === "parts")
    return { head: text.partsOfWhite.head, unit: text.partsOfWhite.unit(white) };
  return {
    head: text.white.head(white),
    ...(level !== undefined && { unit: text.white.unit(level) }),
  };
}
