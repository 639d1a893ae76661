import { stringify } from "csv-stringify/sync";
import { madeStep } from "../kept/kept-steps.ts";
import type { PageContext } from "../pages/page-context.ts";
import { codedText, labelModel } from "../present/label-model.ts";
import { statementText } from "../present/statement-text.ts";
import { isKnown } from "../quantities/figure.ts";
import { isInterval, midpoint } from "../quantities/interval.ts";
import type { Records } from "../records/records.ts";
import type { SizeOnOffer } from "../sheet/handling/handling-sections.ts";
import { isOffered } from "../sheet/handling/offer-section.ts";
import { lotOnSale } from "../sheet/lots/lot-on-sale.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { Words } from "../words/words.ts";
import type { PublishedSheet } from "./published-data.ts";
import { ownColour } from "../pages/screen-swatch.ts";
import { SHARED_PICTURES } from "../pages/shared-picture.ts";
import { pigmentName } from "../pages/pigment-name.ts";

/** Columns of catalogue.csv, each with what stands in it of a colour in one of its sizes. */
const COLUMNS = {
  id: ({ sheet, size }) => (size === undefined ? sheet.slug : `${sheet.slug}-${size.ml}-ml`),
  name: ({ sheet }) => sheet.name,
  size_ml: ({ size }) => size?.ml,
  net_weight_g: (row) => netWeight(row)?.grams,
  net_weight_standing: (row) => netWeight(row)?.standing,
  pigments: ({ sheet }) => sheet.pigments.map(pigmentName).join("; "),
  vehicle: ({ sheet }) => sheet.vehicle?.name,
  lightfastness: ({ sheet, words }) => statementText(sheet.permanence.label, words),
  signal_word: ({ sheet }) => sheet.cautions.signalWord ?? undefined,
  pictograms: ({ sheet }) => sheet.cautions.pictograms.join(" "),
  hazard_statements: hazardStatements,
  for_sale: ({ sheet, size }) =>
    sheet.discontinued === undefined && isOffered(sheet.cautions) && size !== undefined
      ? "yes"
      : "no",
  price: ({ size }) => size?.price,
  currency: ({ sheet, size }) => (size?.price === undefined ? undefined : sheet.offer?.currency),
  unit_price: ({ size }) => size?.unitPrice?.price,
  unit_price_ml: ({ size }) => size?.unitPrice?.ml,
  picture: ({ sheet, site }) =>
    address(
      ownColour(sheet.notations.masstone) === undefined
        ? undefined
        : `colours/${sheet.slug}/${SHARED_PICTURES.square}`,
      site,
    ),
  address: ({ sheet, site, folder }) => address(`${folder}colours/${sheet.slug}/`, site),
  lot: ({ records, sheet }) => {
    const colour = records.colours.get(sheet.slug);
    return colour && lotOnSale(colour, records);
  },
  ean: ({ records, sheet, size }) =>
    records.colours.get(sheet.slug)?.sizes.find(({ ml }) => ml === size?.ml)?.ean,
  revision: ({ revision }) => revision,
} as const satisfies Readonly<Record<string, (row: Row) => string | number | undefined>>;

export const CATALOGUE_COLUMNS = Object.keys(COLUMNS);

interface Row {
  readonly sheet: Sheet;
  /** Absent of a colour that no size is recorded of, or that may not be offered in any. */
  readonly size?: SizeOnOffer;
  readonly revision: string;
  readonly records: Records;
  readonly words: Words;
  /** Of the language, below the site's root. */
  readonly folder: string;
  /** Where the site stands, when its workshop says so. */
  readonly site: string | undefined;
}

/**
 * The range as a shop loads it: one line a size, and one of a colour without sizes. Empty where
 * nothing is known; prices only where no market of the workshop stands against the sale.
 * A text that a spreadsheet would run as a formula is led by an apostrophe.
 */
export function catalogueCsv(
  published: readonly PublishedSheet[],
  records: Records,
  context: Pick<PageContext, "words" | "folder" | "steps">,
): string {
  const lines = published.flatMap((one) => {
    const step = { modules: MODULES, name: "lines of catalogue.csv", of: one.worded.sheet.slug };
    return madeStep(context.steps, step, () => linesOf(one, records, context));
  });
  return stringify([CATALOGUE_COLUMNS, ...lines], { escape_formulas: true });
}

const MODULES = ["lib/site/catalogue-csv.ts", "lib/words/languages.ts"];

function linesOf(
  { worded: { sheet }, revision }: PublishedSheet,
  records: Records,
  { words, folder }: Pick<PageContext, "words" | "folder">,
): (string | number)[][] {
  const site = records.workshop.siteAddress?.replace(/\/?$/, "/");
  const row: Row = { sheet, revision, records, words, folder, site };
  const sizes = sheet.offer?.sizes ?? [];
  const rows = sizes.length === 0 ? [row] : sizes.map((size) => ({ ...row, size }));
  return rows.map((one) => Object.values(COLUMNS).map((cell) => cell(one) ?? ""));
}

/** Of the paint alone [g], whole, with what it rests on; of an estimate the middle, and its ends beside it. */
function netWeight({
  sheet,
  size,
}: Row): { readonly grams: number; readonly standing: string } | undefined {
  const held = sheet.fill.fillings
    .find(({ packing }) => packing === "paint")
    ?.holds.find(({ ml }) => ml === size?.ml)?.massG;
  if (held === undefined || !isKnown(held)) return undefined;
  return isInterval(held.value)
    ? {
        grams: Math.round(midpoint(held.value)),
        standing: `${held.restsOn}, ${held.value.map(Math.round).join(" to ")}`,
      }
    : { grams: Math.round(held.value), standing: held.restsOn };
}

/** As the label has them, with their texts; what is not known of an ingredient comes first. */
function hazardStatements({ sheet, words }: Row): string {
  const { gaps, hazards } = labelModel(sheet.cautions, words.language, words);
  return [...gaps, ...hazards].map(codedText).join(" ");
}

function address(path: string | undefined, site: string | undefined): string | undefined {
  return path === undefined || site === undefined ? path : new URL(path, site).href;
}
