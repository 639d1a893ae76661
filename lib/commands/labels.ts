import { labelsPdf } from "../print/labels-pdf.ts";
import { packageSizes, type PackageSize } from "../print/package-size.ts";
import { rangeLabels } from "../print/range-labels.ts";
import type { WorkshopRecord } from "../records/schema/workshop.ts";
import { colourFamily } from "../sheet/colour-sheet.ts";
import { OutputFault } from "../site/output-fault.ts";
import { outputFile } from "../site/output-file.ts";
import { printedDate } from "../site/printed-date.ts";
import { workedSite } from "../site/site-context.ts";
import { chosenColours, unknownChoice, type CardOptions } from "./card-options.ts";
import type { CommandOptions } from "./command-line.ts";
import { printableRecords } from "./printable-records.ts";
import { counted, say, seconds } from "./told.ts";

/** Which labels are asked for. */
export interface LabelOptions extends Pick<CardOptions, "only" | "family" | "size"> {
  /** How many of each. */
  readonly copies: number;
}

/** Print labels to stick on tubes and jars, at real size, into one PDF. */
export function labels(
  options: Pick<CommandOptions, "contentDir" | "date" | "strict"> & { readonly outputFile: string },
  wanted: LabelOptions,
): number {
  const started = performance.now();
  const records = printableRecords(options, "labels", started);
  if (records === undefined) return 1;
  try {
    const output = outputFile(options.outputFile, options.contentDir, "labels");
    const sizes = chosenLabels(wanted.size, records.workshop);
    const isChosen = chosenColours(
      wanted,
      [...records.colours.values()].map((colour) => ({
        slug: colour.slug,
        family: colourFamily(colour, records),
      })),
    );
    const { context } = workedSite(records, printedDate(options.date, records.newestDate));
    const { runs, remarks, refusals } = rangeLabels(
      context.sheets.filter(({ sheet }) => isChosen(sheet)),
      sizes,
      context,
    );
    for (const remark of remarks) say(remark);
    for (const refusal of refusals) process.stderr.write(`${refusal}\n`);
    const copied = runs.map(({ size, labels: laid }) => ({
      size,
      labels: laid.flatMap((label) => Array.from({ length: wanted.copies }, () => label)),
    }));
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
    output.write(pdf.bytes);
    say(
      `${counted(count, "label")} on ${counted(pdf.pages, "page")}, to print at full size, ${seconds(started)}: ${options.outputFile}`,
    );
    return refusals.length === 0 ? 0 : 1;
  } catch (error) {
    if (!(error instanceof OutputFault || error instanceof RangeError)) throw error;
    process.stderr.write(`${error.message}\n`);
    return 1;
  }
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
