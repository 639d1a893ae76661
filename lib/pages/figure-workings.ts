import { isKnown, type Figure } from "../quantities/figure.ts";
import { figureText } from "../present/figure-text.ts";
import { standingView } from "../present/standing-view.ts";
import type { SourceEntryView, StandingView, TableView } from "../present/views.ts";
import { tableView } from "../present/table-view.ts";
import { figureEntries } from "../sheet/figure-entries.ts";
import { inputPathsOn } from "../sheet/figure-places.ts";
import { sourceEntry } from "./source-entry.ts";
import type { SheetPage } from "./page-of-sheet.ts";
import { slugOrder } from "../quantities/name-order.ts";
import { grouped } from "../quantities/grouped.ts";

/** Ladders, batches, fills and what moves the days have their own tables, with standing beside each; sheet.json lists them all. */
const IN_ITS_TABLE =
  /^(?:tints\..*\.steps|mixture\.whites\..*\.(?:steps|losses|fresh)|optics\.gloss\.depths|batch\.sizes|fill\.fillings|drying\..*contributions)\./;

/** How each known figure was found, part by part in the sheet's order. */
export function workings(page: SheetPage): {
  readonly id: string;
  readonly heading: string;
  readonly summary: string;
  readonly table: TableView;
}[] {
  const text = page.words.pages.evidence;
  return byPart(shownFigures(page)).map(([part, entries]) => ({
    id: `of-${part}`,
    heading: text.parts[part] ?? part,
    summary: text.part(text.parts[part] ?? part, entries.length),
    table: workingTable(entries, text.parts[part] ?? part, page),
  }));
}

/** What is not known of a colour, why, and which records would tell; nothing where all is known. */
export function missingFigures(page: SheetPage): TableView[] {
  const missing = shownFigures(page).filter(({ figure }) => !isKnown(figure));
  return missing.length === 0 ? [] : [missingTable(missing, page.words)];
}

function shownFigures({ sheet }: SheetPage): Entries {
  return figureEntries(sheet).filter(({ path, row }) => !row.isPrivate && !IN_ITS_TABLE.test(path));
}

type Entries = ReturnType<typeof figureEntries>;

/** Known figures by the part of the sheet that they stand in, in the sheet's order. */
function byPart(entries: Entries): [string, Entries][] {
  const known = entries.filter(({ figure }) => isKnown(figure));
  return [...grouped(known.map((entry) => [entry.path.split(".")[0] ?? "", entry]))];
}

function workingTable(entries: Entries, part: string, { sheet, words }: SheetPage): TableView {
  const text = words.pages.evidence;
  const inputsText = inputsTextOn(sheet.slug);
  return tableView({
    caption: `${text.caption}${words.colon}${part}`,
    columns: [
      text.columns.figure,
      text.columns.value,
      text.columns.standing,
      text.columns.method,
      text.columns.inputs,
    ].map((head) => ({ head })),
    rows: entries.flatMap(({ path, row, figure }) =>
      isKnown(figure)
        ? [
            [
              path,
              figureText(row, figure, words),
              standingText(standingView(figure, words)),
              words.method(figure.method),
              inputsText(figure),
            ],
          ]
        : [],
    ),
  });
}

function missingTable(
  missing: ReturnType<typeof figureEntries>,
  words: SheetPage["words"],
): TableView {
  const text = words.pages.evidence;
  return tableView({
    caption: text.notStatedCaption,
    columns: [text.columns.figure, text.reason, text.wanting],
    rows: missing.flatMap(({ path, figure }) =>
      isKnown(figure)
        ? []
        : [
            [
              path,
              words.absence({ reason: figure.reason, wanting: [] }),
              figure.wanting.join(", "),
            ],
          ],
    ),
  });
}

/** In a column of its own a standing needs no mark. */
function standingText({ word, restsOn }: StandingView): string {
  return restsOn === undefined ? word : `${word}, ${restsOn}`;
}

/** Three coordinates of one Lab stand for themselves: the path above them is enough. */
function inputsText(inputs: readonly string[]): string {
  const above = inputs.map((input) => input.replace(/\.(L|a|b)$/, ""));
  return [...new Set(above)].join(", ");
}

/** Of figures that were made from one list of inputs that is worded once. */
function inputsTextOn(colour: string): (figure: Figure) => string {
  const inputPaths = inputPathsOn(colour);
  const known = new Map<readonly string[], string>();
  return (figure) => {
    const paths = inputPaths(figure);
    const text = known.get(paths) ?? inputsText(paths);
    known.set(paths, text);
    return text;
  };
}

/** What a sheet cites. */
export function sheetSources({ worded, context, words }: SheetPage): SourceEntryView[] {
  const keys = [...worded.inShort.sources].sort(slugOrder);
  return keys.flatMap((key) => {
    const source = context.records.sources.get(key);
    return source === undefined ? [] : [sourceEntry(key, source, words, [])];
  });
}
