import { cardsPdf } from "../print/cards-pdf.ts";
import { completeCards, laidCards, type WithoutCard } from "../print/range-cards.ts";
import { reprintList, type Reprint } from "../print/reprint-list.ts";
import { earlierCards } from "../site/earlier-manifest.ts";
import { keepPrintedCards } from "../site/printed-cards.ts";
import { OutputFault } from "../site/output-fault.ts";
import { outputFile } from "../site/output-file.ts";
import { printedDate } from "../site/printed-date.ts";
import { workedSite } from "../site/site-context.ts";
import { chosenAmong, chosenSize, type CardOptions } from "./card-options.ts";
import { printableRecords } from "./printable-records.ts";
import { counted, say, seconds } from "./told.ts";
import type { CommandOptions } from "./command-options.ts";

/** Print shelf cards: all, some, or only those that say something else than they did. */
export async function cards(
  options: Pick<CommandOptions, "contentDir" | "date" | "base" | "strict"> & {
    readonly outputFile: string;
  },
  wanted: CardOptions,
): Promise<number> {
  const started = performance.now();
  const records = await printableRecords(options, "cards", started);
  if (records === undefined) return 1;
  try {
    const output = outputFile(options.outputFile, options.contentDir, "cards");
    const size = chosenSize(wanted, records.workshop);
    const isChosen = chosenAmong(wanted, records);
    const before = wanted.since === undefined ? undefined : earlierCards(wanted.since);
    const worked = workedSite(records, printedDate(options.date, records.newestDate));
    const {
      context,
      cards: { cards: all, without },
    } = worked;
    const chosen = all.filter(isChosen);
    const asked = wanted.incomplete ? chosen : completeCards(chosen);
    const left = new Set(chosen.filter((card) => !asked.includes(card)).map(({ slug }) => slug));
    const reprints =
      before === undefined
        ? undefined
        : reprintList(
            asked,
            before.filter((card) => isChosen(card) && !left.has(card.slug)),
            context.words,
          );
    const print =
      reprints === undefined
        ? asked
        : asked.filter(({ slug }) => reprints.some((one) => one.slug === slug));
    for (const one of without.filter(isChosen)) say(`${one.slug}: no card, since ${reason(one)}`);
    for (const { slug, name, lacks } of chosen)
      if (left.has(slug))
        say(
          `${slug}: no card of ${name}, which has no ${lacks.join(" and no ")}; --incomplete prints it`,
        );
    for (const reprint of reprints ?? []) sayReprint(reprint);
    const { laid, faults } = laidCards(print, size, context);
    for (const { slug, message } of faults) process.stderr.write(`${slug}: no card. ${message}\n`);
    if (laid.length === 0) {
      say(
        `${reprints === undefined ? "no cards to print" : `no card says anything else than in ${wanted.since ?? ""}`}, ${seconds(started)}: nothing was written`,
      );
      return faults.length === 0 ? 0 : 1;
    }
    if (wanted.proof) {
      const { drawnProof } = await import("./proof.ts");
      const proof = await drawnProof(laid, size, worked);
      output.write(proof.bytes);
      for (const line of proof.missed)
        say(`beyond these inks, by \u0394E00 from the colour to what they show: ${line}`);
      say(
        `a preview in process inks of ${counted(laid.length, "colour")} on ${counted(proof.pages, "page")}, by the profile of one proof read in 2003, which stands for no printing condition of a standard, ${seconds(started)}: ${options.outputFile}`,
      );
      return faults.length === 0 ? 0 : 1;
    }
    const pdf = cardsPdf(laid, size, {
      workshop: records.workshop.name,
      date: context.date,
      words: context.words,
    });
    if (records.workshop.siteAddress === undefined)
      say("no QR codes: workshop.yaml gives no siteAddress");
    output.write(pdf.bytes);
    const isLaid = new Set(laid.map(({ slug }) => slug));
    const kept = keepPrintedCards(
      options.contentDir,
      print.filter(({ slug }) => isLaid.has(slug)),
      all,
    );
    if (kept !== undefined) say(`what they say is not kept for the next time: ${kept}`);
    say(
      `${counted(laid.length, "card")} in ${size.name} on ${counted(pdf.pages, "page")} of ${size.paper}${size.twoSided ? ", to print on both sides, turned on the long edge" : ", to fold"}, ${seconds(started)}: ${options.outputFile}`,
    );
    return faults.length === 0 ? 0 : 1;
  } catch (error) {
    // A size of the workshop's that no sheet of paper holds.
    throw error instanceof RangeError ? new OutputFault(error.message, { cause: error }) : error;
  }
}

function reason({ markets, notClassified }: WithoutCard): string {
  return notClassified.length > 0
    ? `it is not classified yet, for want of hazard data of ${notClassified.join(", ")}`
    : `it may be sold in ${markets.join(", ")} on a legal basis alone or not at all`;
}

function sayReprint({ slug, changes }: Reprint): void {
  for (const change of changes) say(`${slug}: ${change}`);
}
