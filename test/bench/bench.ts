/**
 * `npm run bench`: how long the main job's parts take, each beside one fixed piece
 * of arithmetic timed in the same run. The ratios travel between machines; the
 * milliseconds are this machine's today.
 */
import { hueChromaOfLab } from "../../lib/colorimetry/munsell-inversion.ts";
import { readingNotations } from "../../lib/colorimetry/reading-notations.ts";
import { fittedColour } from "../../lib/optics/fit/fitted-colour.ts";
import { predictedAtLightness } from "../../lib/optics/tints/equal-lightness.ts";
import { ladderModel, ladderSteps } from "../../lib/optics/tints/ladder.ts";
import type { Spectrum } from "../../lib/quantities/spectrum.ts";
import { PAPER_SIZES, cardSizes } from "../../lib/print/card-size.ts";
import { rangePdf } from "../../lib/print/range-pdf.ts";
import { laidOutSheet, type SheetToPrint } from "../../lib/print/sheet-paper.ts";
import { sheetLeaves, sheetPdf } from "../../lib/print/sheet-pdf.ts";
import { siteOf } from "../../lib/site/site-of-records.ts";
import { cardsPdf } from "../../lib/print/cards-pdf.ts";
import { laidCards } from "../../lib/print/range-cards.ts";
import { foundMixes } from "../../lib/mixing/finding/found-mixes.ts";
import { targetOfText } from "../../lib/mixing/finding/target-text.ts";
import { mixableColours } from "../../lib/mixing/mixing-range.ts";
import { rangeReach } from "../../lib/mixing/reach/range-reach.ts";
import { mixingOf } from "../../lib/pages/mixing-ways.ts";
import { isStatement } from "../../lib/quantities/statement.ts";
import { workedSite } from "../../lib/site/site-context.ts";
import { loadRecords } from "../../lib/records/load-records.ts";
import { allSheets } from "../../lib/sheet/all-sheets.ts";
import { blackTheory, whiteRuns } from "../../lib/optics/theory/theory-figure.ts";
import { drawdownSet } from "../../lib/sheet/tints/drawdown-set.ts";
import { theoryModels } from "../../lib/sheet/pigments/theory-models.ts";

const RUNS = 9;

/** Median of several runs [ms], after one that only warms up. */
function medianMs(work: () => unknown, times: number): number {
  work();
  const taken = Array.from({ length: RUNS }, () => {
    const started = performance.now();
    for (let i = 0; i < times; i++) work();
    return (performance.now() - started) / times;
  });
  return taken.sort((one, other) => one - other)[Math.floor(RUNS / 2)] ?? NaN;
}

/** The yardstick: a million square roots added up. */
function yardstick(): number {
  let sum = 0;
  for (let i = 1; i <= 1_000_000; i++) sum += Math.sqrt(i);
  return sum;
}

const grid = { startNm: 400, stepNm: 10, count: 31 };
const reading: Spectrum = {
  grid,
  values: Array.from({ length: 31 }, (_, i) => 0.05 + 0.4 / (1 + Math.exp((20 - i) / 2))),
};
const { records, diagnostics } = loadRecords("content");
if (records === undefined) throw new Error(`Unexpected errors in content/: ${diagnostics.length}`);
const lampBlack = records.colours.get("lamp-black");
if (lampBlack === undefined) throw new Error("Unexpected demonstration, expected a lamp-black");
const drawdowns = drawdownSet(lampBlack, records);

const models = theoryModels(records);
const whitesRun = whiteRuns(models.whites);
const slowest = models.blacks
  .map((black) => ({ black, ms: medianMs(() => blackTheory(black, whitesRun), 1) }))
  .toSorted((one, other) => other.ms - one.ms)[0];

const {
  context,
  cards: { cards },
} = workedSite(records, undefined);
const [leading] = cardSizes(records.workshop);
const hundred = Array.from({ length: 100 }, (_, i) => cards[i % cards.length]).filter(
  (card) => card !== undefined,
);
const hundredCards = (): unknown =>
  leading === undefined
    ? undefined
    : cardsPdf(laidCards(hundred, leading, context).laid, leading, {
        workshop: "bench",
        date: undefined,
        words: context.words,
      });

const range = mixingOf(context);
const [mixingWhite] = range.whites;
const grey = targetOfText("N 5/");
if (mixingWhite === undefined || isStatement(grey))
  throw new Error("Unexpected demonstration, expected a white and a grey");
/** As many colours as make 2,047 mixtures of up to three with a white. */
const mixed = mixableColours(range, mixingWhite.slug)
  .map(({ slug }) => slug)
  .slice(0, 23);
const recipes = (): unknown => [
  ...foundMixes(
    {
      target: grey,
      white: mixingWhite.slug,
      colours: mixed,
      mustHold: [],
      coloursMost: 3,
      without: [],
      isWhiteFree: false,
    },
    range,
  ),
];

const unit = medianMs(yardstick, 5);
const notations = medianMs(() => readingNotations(reading), 200);
const munsell = medianMs(() => [1, 2, 3].map(() => hueChromaOfLab({ L: 45, a: 20, b: 15 })), 200);

function laddersInWhites(): unknown {
  const fit = fittedColour(drawdowns);
  return fit.kind === "refused"
    ? fit
    : fit.whites.map(({ slug }) => {
        const ladder = ladderModel(fit, slug);
        return [
          ladderSteps(ladder),
          ...([70, 50, 30] as const).map((L) => predictedAtLightness(ladder, L)),
        ];
      });
}

const rows: (readonly [string, number, string])[] = [
  [
    "a reading to every notation",
    notations,
    `npm munsell's three inversions ${Math.round((100 * munsell) / notations)} % of it; wanted under 0.5 ms`,
  ],
  [
    "one colour in three whites: fit, ladders, equal lightness",
    medianMs(laddersInWhites, 10),
    "wanted under 5 ms",
  ],
  [
    "theory of one black in three whites, uncached",
    slowest?.ms ?? NaN,
    `${slowest?.black.slug ?? "none"}, the slowest of ${models.blacks.length}; wanted under 150 ms, once`,
  ],
  [
    "theory of one white, uncached",
    Math.max(...models.whites.map((white) => medianMs(() => whiteRuns([white]), 1))),
    "the slowest; wanted under 150 ms, once",
  ],
  [
    "all records read and checked",
    medianMs(() => loadRecords("content"), 1),
    `${records.colours.size} colours`,
  ],
  [
    "recipes for a grey, all mixtures of up to three",
    medianMs(recipes, 1),
    `${mixed.length} colours; wanted under 1000 ms`,
  ],
  [
    "reach in one white, whole and without each colour",
    medianMs(() => rangeReach(range, mixingWhite), 1),
    `${mixingWhite.name}; at three lightnesses`,
  ],
  ["100 shelf cards laid out and drawn", medianMs(hundredCards, 1), "wanted under 1 s after start"],
  [
    "all sheets worked out",
    medianMs(() => allSheets(records), 1),
    `${records.colours.size} colours`,
  ],
];

const { prints } = siteOf(records, undefined).site;
if (prints === undefined) throw new Error("Unexpected site without sheets to print");
const leaves = prints.sheets.map((sheet) => ({
  ...sheet,
  ...sheetLeaves(sheet, PAPER_SIZES.A4, laidOutSheet(sheet, PAPER_SIZES.A4)),
}));
rows.push(
  [
    "100 sheet PDFs",
    medianMs(
      () =>
        Array.from({ length: 10 }, (_, i) =>
          sheetPdf(prints.sheets[(i * 4) % prints.sheets.length] as SheetToPrint, PAPER_SIZES.A4),
        ),
      1,
    ) * 10,
    "of ten colours, ten times, in one thread; wanted under 5000 ms",
  ],
  [
    "the range as one PDF",
    medianMs(() => rangePdf([{ name: "All", sheets: leaves }], prints.context, PAPER_SIZES.A4), 1),
    `${leaves.length} sheets, already drawn`,
  ],
);

process.stdout.write(`yardstick: a million square roots, ${unit.toFixed(2)} ms\n`);
for (const [name, ms, note] of rows) {
  process.stdout.write(
    `${name.padEnd(52)} ${(ms / unit).toFixed(2).padStart(9)} x   ${ms.toFixed(3).padStart(10)} ms   ${note}\n`,
  );
}
