import { readingNotations } from "../colorimetry/reading-notations.ts";
import type { Block, SwatchCell } from "../blocks/block.ts";
import type { WorkshopPageView } from "../blocks/page-kinds.ts";
import { section, statement, tableOf } from "../blocks/section-blocks.ts";
import type { Correction } from "../lots/correction.ts";
import type { DifferenceParts } from "../lots/difference-parts.ts";
import { takenVolumeMl } from "../formulation/container-fill.ts";
import { isPackedSize, isShort, packedMasses } from "../formulation/packed-quantity.ts";
import { isWhollyCompared } from "../lots/lot-against-standard.ts";
import { addressTo, type PageContext, type PagePlace } from "../pages/page-context.ts";
import { statementText } from "../present/statement-text.ts";
import type { CellView, TableView } from "../present/views.ts";
import { numberColumns, tableView } from "../present/table-view.ts";
import type { Interval } from "../quantities/interval.ts";
import { given } from "../quantities/given.ts";
import { tareOf } from "./packed-remarks.ts";
import type { Lot, Reading, TintReading } from "../records/records.ts";
import { standardLetDowns } from "../records/standard-let-downs.ts";
import type { JudgedLot, LotBook } from "../sheet/lots/lot-book.ts";
import { lotState, type LotState } from "../sheet/lots/lot-on-sale.ts";
import { whiteColour } from "../sheet/tints/drawdown-set.ts";
import { foreignIngredients } from "./foreign-ingredients.ts";
import { batchSheetPath, correctionAddress, lotBatchAddress, verdictWord } from "./lot-words.ts";
import { NO_VALUE } from "../words/no-value.ts";
import { workshopPage } from "./workshop-frame.ts";
import { weighedInG } from "../records/made-of.ts";

/** One lot: its verdict, how it differs, what would bring it back, and how it was made. */
export function lotPage(
  lot: Lot,
  book: LotBook,
  context: PageContext,
  { root }: PagePlace,
): WorkshopPageView {
  const { words } = context;
  const { lot: text } = words.pages.lots;
  const { number, state: ruling } = lot.record;
  const colour = book.colour.record.name;
  const judged = book.lots.find((one) => one.lot === lot);
  const state = lotState(lot, book);
  const sections = [
    ...section(
      "verdict",
      text.sections.verdict,
      given([
        statement(text.lead[state], "lead"),
        ruling !== undefined && statement(text.ruled(words.date(ruling.since), ruling.why.trim())),
        ...(judged === undefined ? [] : verdictBlocks(judged, context)),
      ]),
    ),
    ...(judged === undefined
      ? []
      : [
          ...section("seen", text.sections.seen, seenBlocks(judged, book, context)),
          ...section("parts", text.sections.parts, partsBlocks(judged, context)),
          ...(state === "near" || state === "fail"
            ? section(
                "correction",
                text.sections.correction,
                correctionBlocks(judged, book, context),
              )
            : []),
        ]),
    ...section("batch", state === "planned" ? text.sections.planned : text.sections.batch, [
      tableOf(batchTable(lot, context)),
      ...shortBlocks(lot, context),
    ]),
    ...section("next", text.sections.next, [
      ...text.steps[nextStep(state, judged)](number, labelsWanted(lot)).map((step) =>
        typeof step === "string"
          ? statement(step)
          : statement(step.text, "body", { code: step.code }),
      ),
      {
        kind: "links",
        links: given([
          state === "planned" && {
            text: text.ownSheet(number),
            href: `${root}${lotBatchAddress(lot.slug)}`,
          },
          judged !== undefined &&
            bestCorrection(judged) !== undefined && {
              text: text.correctionSheet(number),
              href: `${root}${correctionAddress(lot.slug)}`,
            },
          {
            text: text.batchSheet(colour),
            href: addressTo(batchSheetPath(book.colour.slug), { root }),
          },
          { text: text.reply(colour), href: `${root}colours/${book.colour.slug}/#reply` },
          { text: text.colourPage(colour), href: `${root}colours/${book.colour.slug}/` },
        ]),
      },
    ]),
  ];
  return workshopPage(context, {
    heading: text.heading(number, colour),
    description: text.description(number, colour),
    back: { text: text.back, href: `${root}lots/` },
    lead: [words.date(lot.record.date)],
    sections,
  });
}

/**
 * What a lot wants next: one that is off is first read whole, as its standard was; then it is corrected, or
 * kept where nothing would bring it back.
 */
function nextStep(state: LotState, judged: JudgedLot | undefined): LotState | "kept" {
  if (judged === undefined || (state !== "fail" && state !== "near")) return state;
  const { comparison } = judged;
  if (comparison.remarks.some(({ rule }) => rule !== "strength-not-judged")) return "unjudged";
  // Of a colour without strength nothing is worked out that would bring it back.
  if (comparison.remarks.length > 0) return state === "near" ? state : "kept";
  if (!isWhollyCompared(comparison)) return "none";
  return state === "near" || bestCorrection(judged) !== undefined ? state : "kept";
}

/** As many labels of each size as tubes of it were filled; a letter to be replaced where nobody wrote that down. */
function labelsWanted({ record: { tubes = [] } }: Lot): string {
  return tubes.some(({ count }) => count > 0) ? "--filled" : "--copies N";
}

/** What a lot that is near or fails is best brought back with, where anything does. */
export function bestCorrection({ comparison, corrections }: JudgedLot): Correction | undefined {
  return isWhollyCompared(comparison) ? corrections()[0] : undefined;
}

function verdictBlocks({ comparison }: JudgedLot, { words }: PageContext): Block[] {
  const { lot: text } = words.pages.lots;
  const strength = comparison.letDown?.strength;
  return given([
    ...[...comparison.remarks, ...comparison.notes].map((remark) =>
      statement(statementText(remark, words)),
    ),
    ...comparison.judged
      .filter(({ verdict }) => verdict !== "pass")
      .map(({ reason }) => statement(statementText(reason, words))),
    strength !== undefined &&
      statement(
        text.strength(
          words.numbers.decimal(strength.percent, 1),
          strength.strongestNm,
          words.numbers.decimal(strength.weightedPercent, 1),
        ),
      ),
    tableOf({
      caption: text.judgedCaption,
      columns: [
        text.judgedColumns.what,
        ...numberColumns(text.judgedColumns.found),
        text.judgedColumns.tolerance,
        text.judgedColumns.verdict,
      ],
      rows: comparison.judged.map(({ criterion, value, uncertainty, limits, verdict }) => {
        const { name, places, unit } = words.criteria[criterion];
        return [
          name,
          `${words.numbers.decimal(value, places)}${uncertainty === 0 ? "" : `\u00a0\u00b1\u00a0${words.numbers.decimal(uncertainty, places)}`}\u00a0${unit}`,
          words.limits(criterion, limits),
          verdictWord(verdict, words),
        ];
      }),
      note: text.customary,
    }),
  ]);
}

/** Standard above lot, abutting, as masstone and as let-down. */
function seenBlocks(
  { lot, comparison }: JudgedLot,
  { colour, standard }: LotBook,
  { words, records }: PageContext,
): Block[] {
  const { lot: text } = words.pages.lots;
  const { letDown } = comparison;
  const ofLetDown = (tints: readonly TintReading[]): Reading | undefined =>
    tints.find(
      ({ white, massRatio }) => white === letDown?.white && massRatio === letDown.massRatio,
    )?.reading;
  const again = lot.standard;
  return [
    {
      kind: "swatches",
      description: text.seenDescription(lot.record.number),
      rows: [...text.seenRows],
      columns: given([
        {
          head: text.masstone,
          cells: [seen(again?.masstone ?? colour.masstone), seen(lot.masstone)],
        },
        letDown !== undefined && {
          head: text.letDown(whiteColour(letDown.white, records).name, letDown.massRatio),
          cells: [
            seen(ofLetDown([...(again?.letDowns ?? []), ...standardLetDowns(colour, standard)])),
            seen(ofLetDown(lot.letDowns)),
          ],
        },
      ]),
    },
  ];
}

function seen(reading: Reading | undefined): SwatchCell {
  if (reading?.form !== "spectrum") return { missing: NO_VALUE };
  const { screen } = readingNotations(reading.spectrum);
  return { colour: { hex: screen.srgb.hex, displayP3: screen.displayP3.css } };
}

function partsBlocks({ comparison }: JudgedLot, { words, records }: PageContext): Block[] {
  const { lot: text } = words.pages.lots;
  const { masstone, letDown } = comparison;
  const row = (name: string, parts: DifferenceParts): CellView[] => [
    { text: name },
    ...[parts.deltaE00, parts.deltaL, parts.deltaC, parts.deltaH].map((value) => ({
      text: words.numbers.decimal(value, 2),
    })),
  ];
  const rows = given([
    masstone !== undefined && row(text.masstone, masstone),
    ...(letDown === undefined
      ? []
      : [
          row(
            text.letDown(whiteColour(letDown.white, records).name, letDown.massRatio),
            letDown.difference,
          ),
          ...(letDown.strength === undefined ? [] : [row(text.equal, letDown.strength.residual)]),
        ]),
  ]);
  if (rows.length === 0) return [];
  const table = tableView({
    caption: text.partsCaption,
    compact: true,
    columns: [
      text.partsColumns.of,
      ...numberColumns(
        text.partsColumns.total,
        text.partsColumns.L,
        text.partsColumns.C,
        text.partsColumns.H,
      ),
    ],
    rows,
  });
  return [tableOf(table)];
}

function correctionBlocks(
  { comparison, corrections: worked }: JudgedLot,
  { colour }: LotBook,
  context: PageContext,
): Block[] {
  const { words } = context;
  const { lot: text } = words.pages.lots;
  if (!isWhollyCompared(comparison)) return [statement(text.correctionUnread)];
  const corrections = worked();
  const [best] = corrections;
  if (best === undefined) return [statement(text.correctionNone)];
  const ranged = (value: number, [low, high]: Interval, places: number): CellView => ({
    text: words.numbers.decimal(value, places),
    note: `(${words.numbers.decimal(low, places)}\u2013${words.numbers.decimal(high, places)})`,
  });
  return [
    statement(
      text.correctionLead(best.candidate.name, words.numbers.decimal(best.gramsPer100g, 1)),
      "lead",
    ),
    ...corrections.flatMap(({ candidate }) => {
      const foreign = foreignIngredients(candidate, colour, context);
      return foreign.length === 0
        ? []
        : [statement(text.correctionForeign(candidate.name, words.listed(foreign)))];
    }),
    tableOf({
      caption: text.correctionCaption,
      columns: [
        text.correctionColumns.what,
        ...numberColumns(
          text.correctionColumns.grams,
          text.correctionColumns.masstone,
          text.correctionColumns.letDown,
          text.correctionColumns.strength,
        ),
      ],
      rows: corrections.map(({ candidate, gramsPer100g, predicted, range }) => [
        { text: candidate.name, note: text.kinds[candidate.kind] },
        words.numbers.decimal(gramsPer100g, 1),
        ranged(predicted.masstoneDeltaE00, range.masstoneDeltaE00, 2),
        ranged(predicted.letDownDeltaE00, range.letDownDeltaE00, 2),
        ranged(predicted.strengthPercent, range.strengthPercent, 1),
      ]),
      note: text.correctionNote,
    }),
  ];
}

function batchTable({ record }: Lot, { words, records }: PageContext): TableView {
  const { lot: text } = words.pages.lots;
  const grams = (massG: number): string => `${words.numbers.decimal(massG, 1)}\u00a0g`;
  const vehicle = (slug: string): string => records.vehicles.get(slug)?.record.name ?? slug;
  const weighed = weighedInG(record);
  const { yieldG, densityGPerCm3, finenessOfGrindUm } = record;
  const rows: readonly (readonly [name: string, value: string | undefined])[] = [
    ...record.pigments.map(
      ({ pigment, massG }) =>
        [records.pigments.get(pigment)?.record.name ?? pigment, grams(massG)] as const,
    ),
    ...given([record.oil, ...(record.additions ?? [])]).map(
      (one) => [vehicle(one.vehicle), grams(one.massG)] as const,
    ),
    [text.rows.yield, yieldG === undefined ? undefined : grams(yieldG)],
    [
      text.rows.loss,
      yieldG === undefined
        ? undefined
        : `${words.numbers.decimal(100 * (1 - yieldG / weighed), 1)}\u00a0%`,
    ],
    ...(record.tubes ?? []).flatMap(({ ml, count, massG, tareG }) => [
      [text.rows.tubes(String(ml)), String(count)] as const,
      [text.rows.tubeMass(String(ml)), massG === undefined ? undefined : grams(massG)] as const,
      ...packedRows(ml, tareG ?? tareOf(ml, records), densityGPerCm3, { words }),
    ]),
    [text.rows.passes, record.passes?.toString()],
    [
      text.rows.fineness,
      finenessOfGrindUm === undefined ? undefined : `${finenessOfGrindUm}\u00a0\u00b5m`,
    ],
    [
      text.rows.density,
      densityGPerCm3 === undefined
        ? undefined
        : `${words.numbers.decimal(densityGPerCm3, 3)}\u00a0g/cm\u00b3`,
    ],
    [text.rows.retained, record.retainedSample],
    [text.rows.note, record.note],
  ];
  return tableView({
    caption: record.planned === true ? text.plannedCaption : text.batchCaption,
    columns: [text.batchColumns.what, { head: text.batchColumns.amount, numeric: true }],
    rows: rows.flatMap(([name, value]) => (value === undefined ? [] : [[name, value]])),
  });
}

/** What one tube must hold on the mean, and what all but few hold; the same with the tube. */
function packedRows(
  ml: number,
  tareG: number | undefined,
  densityGPerCm3: number | undefined,
  { words }: Pick<PageContext, "words">,
): [string, string][] {
  if (densityGPerCm3 === undefined || !isPackedSize(ml)) return [];
  const { rows: text } = words.pages.lots.lot;
  const { meanG, fewBelowG } = packedMasses(ml, densityGPerCm3);
  const grams = (massG: number): string =>
    `${words.numbers.decimal(Math.ceil(10 * massG - 1e-6) / 10, 1)}\u00a0g`;
  const withTube = (massG: number, net: string): string =>
    tareG === undefined ? net : text.packedGross(net, grams(massG + tareG));
  return [
    [text.packed(words.numbers.plain(ml)), withTube(meanG, text.packedMean(grams(meanG)))],
    [text.packedFew, withTube(fewBelowG, grams(fewBelowG))],
  ];
}

/** Of each size whose tubes hold less on the mean than stands on them. */
function shortBlocks({ record }: Lot, { words }: PageContext): Block[] {
  const { densityGPerCm3, tubes = [] } = record;
  if (densityGPerCm3 === undefined) return [];
  return tubes.flatMap(({ ml, massG }) => {
    if (massG === undefined || !isPackedSize(ml)) return [];
    const foundMl = takenVolumeMl(massG, densityGPerCm3);
    if (!isShort(foundMl, ml)) return [];
    return [
      statement(
        words.pages.lots.lot.rows.packedShort(
          words.numbers.decimal(foundMl, 1),
          words.numbers.plain(ml),
        ),
      ),
    ];
  });
}
