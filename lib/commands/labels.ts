import { labelsPdf, type LabelRun } from "../print/labels-pdf.ts";
import { andNearest } from "../diagnostics/nearest-word.ts";
import { packageSizes, type PackageSize } from "../print/package-size.ts";
import { rangeLabels } from "../print/range-labels.ts";
import type { Lot, Records } from "../records/records.ts";
import type { WorkshopRecord } from "../records/schema/workshop.ts";
import { lotOnSale, lotState } from "../sheet/lots/lot-on-sale.ts";
import { bookOf } from "../sheet/lots/lot-book.ts";
import { OutputFault } from "../site/output-fault.ts";
import { outputFile } from "../site/output-file.ts";
import { latestDate, printedDate } from "../site/printed-date.ts";
import { keepPrintedLabels, type LabelPrint } from "../site/printed-labels.ts";
import { workedSite } from "../site/site-context.ts";
import { chosenAmong, unknownChoice, type CardOptions } from "./card-options.ts";
import type { CommandOptions } from "./command-options.ts";
import { printableRecords } from "./printable-records.ts";
import { counted, say, seconds } from "./told.ts";

/** Which labels are asked for. */
interface LabelOptions extends Pick<CardOptions, "only" | "family" | "size"> {
  /** Number or file name of the lot that is filled; without it of each colour the one on sale. */
  readonly lot: string | undefined;
  /** How many of each, or one for each tube that the lot filled. */
  readonly copies: number | "filled";
}

/** Print labels to stick on tubes and jars, at real size, into one PDF. */
export async function labels(
  options: Pick<CommandOptions, "contentDir" | "date" | "base" | "strict"> & {
    readonly outputFile: string;
  },
  wanted: LabelOptions,
): Promise<number> {
  const started = performance.now();
  const records = await printableRecords(options, "labels", started);
  if (records === undefined) return 1;
  try {
    const output = outputFile(options.outputFile, options.contentDir, "labels");
    const sizes = chosenLabels(wanted.size, records.workshop);
    const lot = wanted.lot === undefined ? undefined : chosenLot(wanted.lot, records);
    if (lot?.record.state?.is === "recalled")
      throw new OutputFault(
        `lot ${lot.record.number} is recalled since ${lot.record.state.since}: no labels of it are printed`,
      );
    const isChosen = chosenAmong(
      lot === undefined ? wanted : { ...wanted, only: onlyOf(lot, wanted.only) },
      records,
    );
    const { context } = workedSite(records, printedDate(options.date, records.newestDate));
    const { runs, remarks, refusals } = rangeLabels(
      context.sheets.filter(({ sheet }) => isChosen(sheet)),
      sizes,
      context,
      lot?.record.number,
    );
    if (lot !== undefined) sayOfLot(lot, records);
    for (const remark of remarks) say(remark);
    for (const refusal of refusals) process.stderr.write(`${refusal}\n`);
    const copied = runs.map(({ size, labels: laid }) => ({
      size,
      labels: laid.flatMap((label) =>
        Array.from({ length: copiesOf(size, wanted.copies, lot) }, () => label),
      ),
    }));
    if (wanted.copies === "filled" && lot !== undefined) sayOfFilled(lot, sizes);
    const count = copied.reduce((sum, run) => sum + run.labels.length, 0);
    if (count === 0) {
      say(`no labels to print, ${seconds(started)}: nothing was written`);
      return refusals.length === 0 ? 0 : 1;
    }
    const pdf = labelsPdf(copied, {
      workshop: records.workshop.name,
      date: context.date,
      words: context.words,
    });
    // A label that is out and not on record could not be called back, and one that is on record and not out would be looked for.
    output.write(pdf.bytes, () =>
      keepPrintedLabels(
        options.contentDir,
        printsOf(copied, latestDate(options.date), lot?.record.number, records),
      ),
    );
    say(
      `${counted(count, "label")} on ${counted(pdf.pages, "page")}, to print at full size, ${seconds(started)}: ${options.outputFile}`,
    );
    return refusals.length === 0 ? 0 : 1;
  } catch (error) {
    // A size of the workshop's that no sheet of paper holds.
    throw error instanceof RangeError ? new OutputFault(error.message, { cause: error }) : error;
  }
}

/** What goes on record of the labels, a line a colour and size. */
function printsOf(
  runs: readonly LabelRun[],
  date: string,
  lotNumber: string | undefined,
  records: Records,
): LabelPrint[] {
  return runs.flatMap(({ size, labels: laid }) =>
    [...new Set(laid.map(({ slug }) => slug))].map((slug): LabelPrint => {
      const colour = records.colours.get(slug);
      const lot = lotNumber ?? (colour && lotOnSale(colour, records));
      return {
        date,
        ...(lot === undefined ? {} : { lot }),
        colour: slug,
        size: size.name,
        ml: size.ml,
        copies: laid.filter((label) => label.slug === slug).length,
      };
    }),
  );
}

/** @throws OutputFault for a lot that is not on record, with the nearest. */
function chosenLot(wanted: string, { lots }: Records): Lot {
  const word = wanted.toLowerCase();
  const found = [...lots.values()].find(
    ({ slug, record }) => slug === word || record.number.toLowerCase() === word,
  );
  if (found !== undefined) return found;
  const near = andNearest(wanted, [
    ...[...lots.values()].map(({ record }) => record.number),
    ...lots.keys(),
  ]);
  throw new OutputFault(`There is no lot ${wanted} in lots/${near}`);
}

/** The colour of the lot alone. @throws OutputFault where another was asked for. */
function onlyOf({ record: { number, colour } }: Lot, only: string | undefined): string {
  if (only === undefined || only.trim() === colour) return colour;
  throw new OutputFault(`The lot ${number} is one of ${colour}, and --only asks for ${only}`);
}

/** How many labels of a size: what was asked for, or as many as the lot filled. */
function copiesOf(
  { ml }: PackageSize,
  copies: LabelOptions["copies"],
  lot: Lot | undefined,
): number {
  return copies === "filled" ? filledOf(ml, lot) : copies;
}

function filledOf(ml: number, lot: Lot | undefined): number {
  return (lot?.record.tubes ?? [])
    .filter((tube) => tube.ml === ml)
    .reduce((sum, { count }) => sum + count, 0);
}

/** What a lot filled and these labels are not for. */
function sayOfFilled({ record: { number, tubes = [] } }: Lot, sizes: readonly PackageSize[]): void {
  if (tubes.every(({ count }) => count === 0))
    say(`the record of lot ${number} gives no tubes: a list of { ml, count } says how many`);
  for (const { ml, count } of tubes)
    if (count > 0 && !sizes.some((size) => size.ml === ml))
      say(`${counted(count, "tube")} of ${ml} ml of lot ${number} have no label here`);
}

/** How the lot stands that the labels are for: they are printed whatever it is, with a warning of one that nothing speaks for. */
function sayOfLot(lot: Lot, records: Records): void {
  const state = lotState(lot, bookOf(lot.record.colour, records));
  const told = {
    pass: "agrees with its standard",
    standard: "is the standard",
    near: "lies so near to a limit that it neither passes nor fails: its page in the workshop names the limit",
    fail: "fails against its standard: its page in the workshop says by what",
    none: "was not judged",
    unjudged: "was not judged: its page in the workshop says why",
    planned: "is planned, and not made yet",
    recalled: "is recalled",
    conceded: "is conceded: it is sold though it does not pass",
  } as const;
  const remark = `lot ${lot.record.number} ${told[state]}`;
  if (state === "pass" || state === "standard") say(remark);
  else process.stderr.write(`warning: ${remark}; its labels are printed all the same\n`);
}

function chosenLabels(size: string | undefined, workshop: WorkshopRecord): PackageSize[] {
  const sizes = packageSizes(workshop);
  if (sizes.length === 0)
    throw new OutputFault(
      "workshop.yaml gives no labels: a list of { name, kind: tube | jar, ml } says which there are",
    );
  if (size === undefined) return sizes;
  const found = sizes.filter(({ name }) => name === size);
  if (found.length === 0)
    throw unknownChoice(
      "--size",
      size,
      sizes.map(({ name }) => name),
    );
  return found;
}
