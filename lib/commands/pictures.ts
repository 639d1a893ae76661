import { workCacheOf } from "../kept/work-cache.ts";
import { pairAddress } from "../pages/compare-pages.ts";
import { pagePlace } from "../pages/page-context.ts";
import { sheetPage } from "../pages/sheet-page.ts";
import { comparisonAssets, listingAssets } from "../pictures/listing-assets.ts";
import { shownPaint } from "../pictures/site-pictures.ts";
import { chosenPairs } from "../records/chosen-pairs.ts";
import { asFault } from "../site/output-fault.ts";
import { ownFiles } from "../site/own-files.ts";
import { printedDate } from "../site/printed-date.ts";
import { workedSite } from "../site/site-context.ts";
import { chosenAmong, type CardOptions } from "./card-options.ts";
import type { CommandOptions } from "./command-options.ts";
import { printableRecords } from "./printable-records.ts";
import { counted, say, seconds } from "./told.ts";

/** Write what a shop's listing takes: a zip a colour, and one for each comparison of the workshop. */
export async function pictures(
  options: Pick<CommandOptions, "contentDir" | "date" | "base" | "strict"> & {
    readonly to: string;
  },
  wanted: Pick<CardOptions, "only" | "family">,
): Promise<number> {
  const started = performance.now();
  const records = await printableRecords(options, "pictures", started, "pictures, too");
  if (records === undefined) return 1;
  try {
    const folder = ownFiles(options.to, options.contentDir);
    const isChosen = chosenAmong(wanted, records);
    const cache = workCacheOf(options.contentDir);
    const { context } = workedSite(records, printedDate(options.date, records.newestDate), cache);
    const files = new Map<string, Uint8Array>();
    const chosen = context.sheets.filter(({ sheet }) => isChosen(sheet));
    for (const worded of chosen) {
      const { file, bytes } = await listingAssets(worded, context, cache);
      files.set(file, bytes);
    }
    const paints = new Map(
      chosen.flatMap((worded) => {
        const { slug } = worded.sheet;
        const view = sheetPage(worded, context, pagePlace(`colours/${slug}/index.html`));
        const paint = shownPaint(view);
        return paint === undefined ? [] : [[slug, paint] as const];
      }),
    );
    for (const pair of chosenPairs(records.workshop)) {
      const own = pair.colours.flatMap((slug) => paints.get(slug) ?? []);
      if (own.length < pair.colours.length) continue;
      const { file, bytes } = await comparisonAssets(pairAddress(pair), own, context, cache);
      files.set(file, bytes);
    }
    for (const { sheet } of chosen)
      if (!paints.has(sheet.slug))
        say(`${sheet.slug}: no pictures of its swatch, since no colour of it is known`);
    const changed = folder.write(files);
    say(
      `${counted(files.size, "zip")}, ${changed.length === files.size ? "all" : changed.length === 0 ? "none" : String(changed.length)} of them new or changed, ${seconds(started)}: ${options.to}`,
    );
    return 0;
  } catch (error) {
    throw error instanceof RangeError ? error : asFault(error, options.to);
  }
}
