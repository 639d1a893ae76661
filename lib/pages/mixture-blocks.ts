import { isKnown, knownValue } from "../quantities/figure.ts";
import { figureText } from "../present/figure-text.ts";
import type { Block, StatementBlock } from "../blocks/block.ts";
import {
  blocksOf,
  fold,
  headed,
  lists,
  plots,
  statement,
  tables,
} from "../blocks/section-blocks.ts";
import { statementText } from "../present/statement-text.ts";
import { standingView, standingWord } from "../present/standing-view.ts";
import type { CellView, ReasonView, TableView } from "../present/views.ts";
import { tableView } from "../present/table-view.ts";
import type { MixtureSection } from "../sheet/mixture/mixture-figures.ts";
import type { MixtureWhite } from "../sheet/mixture/mixture-white.ts";
import { mixturePictures } from "./mixture-pictures.ts";
import { blacksTable, driftTable, stepsTable } from "./mixture-tables.ts";
import { NO_VALUE } from "../words/no-value.ts";
import { textOf, type SheetPage } from "./page-of-sheet.ts";
import type { PathBelow } from "../sheet/sheet-path.ts";
import { given } from "../quantities/given.ts";

/** What a colour of several pigments is mixed from, what its components predict, and where it goes when one of them fades. */
export function mixtureBlocks(page: SheetPage): Block[] {
  const { sheet, words } = page;
  const { mixture } = sheet;
  if (mixture === undefined) return [];
  const isEmpty =
    mixture.whites.length === 0 &&
    mixture.components.every(({ pigmentVolumeFraction }) => !isKnown(pigmentVolumeFraction));
  return [
    ...blocksOf({
      summary: given([
        ...[mixture.leastLightfast, ...mixture.refusals].map((ruling) =>
          statementText(ruling, words),
        ),
        mixture.whites.length > 0 && words.pages.mixture.lead,
      ]),
      tables: isEmpty ? [] : [componentTable(mixture, page)],
    }),
    ...mixture.whites.map((white) => whiteBlock(white, page)),
  ];
}

const SHARES = [
  "massFraction",
  "pigmentVolumeFraction",
  "paintMassFraction",
  "paintVolumeFraction",
] as const;

function componentTable(
  { components }: MixtureSection,
  { worded, words, place }: SheetPage,
): TableView {
  const { columns, caption, note, noPaint } = words.pages.mixture;
  const share = (slug: string, key: (typeof SHARES)[number]): CellView => {
    const { row, figure } = worded.leaf(
      key === "massFraction"
        ? `pigments.${slug}.massFraction`
        : `mixture.components.${slug}.${key}`,
    );
    return isKnown(figure)
      ? { text: figureText(row, figure, words), standing: standingView(figure, words) }
      : { text: NO_VALUE, reason: words.absence(figure) };
  };
  return tableView({
    caption,
    note,
    columns: [
      columns.pigment,
      columns.paint,
      ...[columns.pigmentMass, columns.pigmentVolume, columns.paintMass, columns.paintVolume].map(
        (head) => ({ head, numeric: true }),
      ),
    ],
    rows: components.map(({ slug, name, paint }) => [
      name,
      paint === undefined
        ? noPaint
        : { text: paint.name, href: `${place.root}colours/${paint.slug}/` },
      ...SHARES.map((key) => share(slug, key)),
    ]),
  });
}

function whiteBlock(white: MixtureWhite, page: SheetPage): Block {
  const { words } = page;
  const text = words.pages.mixture;
  const drifts = driftSentences(white, page);
  return headed(
    text.heading(white.white.name),
    [
      statement(metText(white, page), "body", { standing: standingWord("derived", words) }),
      ...neutralSentence(white, page),
      ...plots(mixturePictures(white, page)),
      ...(drifts.length === 0 ? [] : lists([{ heading: text.drift.heading, items: drifts }])),
      ...[
        { summary: text.steps(white.steps.length), table: stepsTable(white, words) },
        ...driftTable(white, words),
        ...blacksTable(white, page),
      ].flatMap(({ summary, table }) => fold(summary, tables([table]))),
    ],
    `mixture-in-${white.white.slug}`,
  );
}

/** Where it goes as each pigment in turn gets weaker, and a black of one pigment beside it. */
function driftSentences(white: MixtureWhite, page: SheetPage): ReasonView[] {
  const { words } = page;
  const { single } = words.pages.mixture.drift;
  const [ofSingle] = white.singleBlack?.sentences ?? [];
  return given([
    ...likeliestFirst(white.drifts, page).flatMap(({ sentences: [first] }) =>
      first === undefined ? [] : [statementText(first, words)],
    ),
    ofSingle !== undefined && single(words.lowerFirst(statementText(ofSingle, words))),
  ]).map((text) => ({ text, standing: standingWord("estimated", words) }));
}

/** What light takes first comes first, where that is known. */
function likeliestFirst(
  drifts: MixtureWhite["drifts"],
  { sheet: { mixture } }: SheetPage,
): MixtureWhite["drifts"] {
  const { rule = "", values } = mixture?.leastLightfast ?? {};
  const watched = new Set(rule.startsWith("least-lightfast") ? values?.pigments : []);
  return drifts.toSorted(
    (one, other) => Number(watched.has(other.name)) - Number(watched.has(one.name)),
  );
}

/** Ratio of the step that holds no white. */
const ALONE = "1:0";

function metText({ white, steps, middleMissDeltaE00 }: MixtureWhite, { words }: SheetPage): string {
  const text = words.pages.mixture;
  const misses = steps.flatMap(({ missDeltaE00 }) => knownValue(missDeltaE00) ?? []);
  if (!isKnown(middleMissDeltaE00) || misses.length === 0) return text.notMet(white.name);
  const middle = words.numbers.decimal(middleMissDeltaE00.value, 1);
  const largest = words.numbers.decimal(Math.max(...misses), 1);
  const isAloneRead = steps.some(
    ({ massRatio, missDeltaE00 }) => massRatio === ALONE && knownValue(missDeltaE00) !== undefined,
  );
  if (!isAloneRead) return text.met(white.name, misses.length, middle, largest);
  return misses.length === 1
    ? text.metAlone(white.name, middle)
    : text.metWithMasstone(white.name, misses.length, middle, largest);
}

function neutralSentence({ white, pair }: MixtureWhite, page: SheetPage): StatementBlock[] {
  const { words } = page;
  if (pair === undefined) return [];
  const text = (key: PathBelow<`mixture.whites.${string}.pair`>): string | undefined =>
    textOf(page, `mixture.whites.${white.slug}.pair.${key}`);
  const [share, chroma] = [text("neutralShare"), text("neutralChroma")];
  if (share === undefined || chroma === undefined) return [];
  return [
    statement(
      words.pages.mixture.pair.neutral(
        pair.first,
        pair.second,
        share,
        text("neutralVolumeShare"),
        chroma,
      ),
      "body",
      { standing: standingView(pair.neutralShare, words) },
    ),
  ];
}
