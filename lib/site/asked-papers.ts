import { readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { deflateRawSync } from "node:zlib";
import { keyOf, readResult, writeResult } from "../kept/kept-result.ts";
import type { WorkCache } from "../kept/work-cache.ts";
import { byFamily } from "../pages/catalogue-pages.ts";
import { formerTexts } from "../pages/former-page.ts";
import { PAPER_SIZES } from "../print/card-size.ts";
import { cardsFolder } from "../print/cards-page.ts";
import { formerPdf } from "../print/former-pdf.ts";
import type { PhotographOnPaper } from "../print/paper-photographs.ts";
import type { PagesOnPaper, SaidOnPaper, SheetPaper } from "../print/paper-work.ts";
import type { SheetToPrint } from "../print/sheet-paper.ts";
import type { PictureSizes } from "../records/taken-photograph.ts";
import { contentKey } from "../sheet/revision.ts";
import { formerColours } from "./former-sheets.ts";
import type { KeptPapers } from "./kept-papers.ts";
import { cardsKey, rangeKey } from "./paper-keys.ts";
import type { PaperState } from "./published-data.ts";
import { rangeParts } from "./range-papers.ts";
import type { BinaryFile, RangeToPrint } from "./site.ts";
import type { AskedWork, WorkThreads } from "./work-threads.ts";

/** Each paper of a site, asked of the threads where it is not the earlier output's. */

const LEAVES_MODULES = ["lib/print/sheet-pdf.ts", "lib/words/languages.ts"] as const;

export interface Paper extends PaperState, BinaryFile {}

/** What papers are drawn from, and by. */
export interface Printing {
  readonly prints: RangeToPrint;
  readonly program: string;
  readonly before: PreviousPapers;
  readonly cache: WorkCache | undefined;
  readonly threads: WorkThreads;
}

/** A paper that is drawn by somebody, or was before. */
interface AskedPaper {
  readonly path: string;
  readonly key: string;
  /** By this thread, where no other has begun it. */
  readonly drawn: () => Paper | Promise<Paper>;
}

/** A sheet's leaves as they are drawn, or were before. */
type AskedLeaves = AskedWork<Uint8Array>;

interface AskedSheet extends AskedPaper {
  readonly sheet: SheetToPrint;
  /** For the range. */
  readonly leaves: () => AskedLeaves;
}

function paperOf({ records: { workshop } }: RangeToPrint["context"]): {
  readonly widthMm: number;
  readonly heightMm: number;
} {
  return PAPER_SIZES[workshop.paper ?? "A4"];
}

function saidOf({ records: { workshop }, date, words }: RangeToPrint["context"]): SaidOnPaper {
  // Followed records are no plain data; their values are.
  return { workshop: { ...workshop }, date, language: words.language };
}

/** Photographs that some text names by their hashes. */
function photographsIn(
  names: (hash: string) => boolean,
  { records: { photographs } }: RangeToPrint["context"],
): PhotographOnPaper[] {
  const named = (
    one: PictureSizes | undefined,
  ): Pick<PictureSizes, "hash" | "paper"> | undefined =>
    one !== undefined && names(one.hash) ? { hash: one.hash, paper: one.paper } : undefined;
  return photographs.flatMap((photograph) => {
    const [pictures, inReadColour] = [named(photograph.pictures), named(photograph.inReadColour)];
    return pictures === undefined && inReadColour === undefined
      ? []
      : [{ ...(pictures && { pictures }), ...(inReadColour && { inReadColour }) }];
  });
}

export function askedSheet(
  sheet: SheetToPrint,
  key: string,
  { prints: { context }, before, cache, threads }: Printing,
): AskedSheet {
  const path = `colours/${sheet.slug}/sheet.pdf`;
  const paper = paperOf(context);
  const leavesKey = keyOf(cache, { modules: LEAVES_MODULES, inputs: { key, paper } });
  const asked = (): PagesOnPaper => {
    const pages = JSON.stringify({ sheet: sheet.sheet, bench: sheet.bench });
    return {
      slug: sheet.slug,
      // Packed: what waits to be drawn would take more memory than all that is drawn.
      pages: deflateRawSync(pages, { level: 1 }),
      caution: sheet.caution,
      said: saidOf(context),
      paper,
      photographs: photographsIn((hash) => pages.includes(hash), context),
    };
  };
  const keptOnceDone = (leaves: AskedLeaves): AskedLeaves => {
    if (cache && leavesKey !== undefined)
      void leaves.result.then(
        (bytes) => writeResult(cache, leavesKey, bytes),
        () => undefined,
      );
    return leaves;
  };
  const earlier = kept(path, key, before);
  if (earlier === undefined) {
    const work = threads.ask("sheet", asked());
    const leaves = keptOnceDone(leavesIn(work));
    return {
      path,
      key,
      sheet,
      leaves: () => leaves,
      drawn: async () => made(path, key, (await work.here()).pdf),
    };
  }
  let leaves: AskedLeaves | undefined;
  const leavesBefore = (): AskedLeaves | undefined => {
    const bytes = cache && leavesKey !== undefined ? readResult(cache, leavesKey) : undefined;
    return bytes && alreadyThere(bytes);
  };
  return {
    path,
    key,
    sheet,
    leaves: () => (leaves ??= leavesBefore() ?? keptOnceDone(threads.ask("leaves", asked()))),
    drawn: () => earlier,
  };
}

function alreadyThere<R>(value: R): AskedWork<R> {
  const result = Promise.resolve(value);
  return { result, here: () => result };
}

function leavesIn({ result, here }: AskedWork<SheetPaper>): AskedLeaves {
  const leaves = result.then((sheet) => sheet.leaves);
  // Whoever waits for the sheet is told what stopped it.
  leaves.catch(() => undefined);
  return { result: leaves, here: async () => (await here()).leaves };
}

export function askedRange(
  sheets: readonly AskedSheet[],
  { prints: { context }, program, before, threads }: Printing,
): AskedPaper[] {
  const bySlug = new Map(sheets.map((one) => [one.sheet.slug, one]));
  const families = byFamily(context.sheets, context.words.language).map(([family, members]) => ({
    name: context.words.families[family],
    items: members.flatMap((member) => bySlug.get(member.sheet.slug) ?? []),
  }));
  return rangeParts(families).map(({ path, families: part }): AskedPaper => {
    const key = rangeKey(
      part.map(({ name, items }) => [name, items.map((one) => one.key)]),
      context,
      program,
    );
    const earlier = kept(path, key, before);
    if (earlier !== undefined) return { path, key, drawn: () => earlier };
    const asking = askedPart(part, context, threads);
    asking.catch(() => undefined);
    return {
      path,
      key,
      drawn: async () => {
        for (const { leaves } of part.flatMap(({ items }) => items)) await leaves().here();
        return made(path, key, await (await asking).here());
      },
    };
  });
}

/** Asked as soon as each of its sheets is drawn. */
async function askedPart(
  part: readonly { readonly name: string; readonly items: readonly AskedSheet[] }[],
  context: RangeToPrint["context"],
  threads: WorkThreads,
): Promise<AskedWork<Uint8Array>> {
  const families = await Promise.all(
    part.map(async ({ name, items }) => ({
      name,
      sheets: await Promise.all(
        items.map(async ({ sheet: { slug, caution }, leaves }) => ({
          slug,
          caution,
          leaves: await leaves().result,
        })),
      ),
    })),
  );
  return threads.ask("range", {
    families,
    said: saidOf(context),
    paper: paperOf(context),
  });
}

/** A PDF of cards for each size. */
export function askedCards({
  prints: { context, laidOut },
  program,
  before,
  threads,
}: Printing): AskedPaper[] {
  const { date, words } = context;
  const { name: workshop } = context.records.workshop;
  return laidOut().sizes.flatMap(({ size, count, marks, laid }): AskedPaper[] => {
    const path = `${cardsFolder(size, context)}cards.pdf`;
    if (count === 0) return [];
    const key = cardsKey(marks, size, context, program);
    const earlier = kept(path, key, before);
    if (earlier !== undefined) return [{ path, key, drawn: () => earlier }];
    const said = { workshop, date, language: words.language };
    const asked = threads.ask("cards", { laid: laid(), size, said });
    return [{ path, key, drawn: async () => made(path, key, await asked.here()) }];
  });
}

/** A page at the address of each sheet that is gone. */
export function askedFormers({ prints: { context }, program, before }: Printing): AskedPaper[] {
  return formerColours(context).map(({ slug, former }) => {
    const path = `colours/${slug}/sheet.pdf`;
    const texts = formerTexts(former, context);
    const { records, date, words } = context;
    const key = contentKey(
      JSON.stringify([program, texts, records.workshop, date, words.language]),
    );
    return {
      path,
      key,
      drawn: () =>
        kept(path, key, before) ?? made(path, key, formerPdf(texts, context, paperOf(context))),
    };
  });
}

interface PreviousPapers extends Pick<KeptPapers, "drawnHash"> {
  readonly dir: string;
}

/** The earlier file, when it is what was drawn from the same. */
function kept(path: string, key: string, { dir, drawnHash }: PreviousPapers): Paper | undefined {
  try {
    const file = join(dir, path);
    if (!statSync(file).isFile()) return undefined;
    const bytes = readFileSync(file);
    const fileHash = drawnHash({ key, bytes });
    return fileHash === undefined ? undefined : { ...made(path, key, bytes), fileHash };
  } catch {
    return undefined;
  }
}

function made(path: string, key: string, bytes: Uint8Array): Paper {
  return { path, key, hash: contentKey(bytes), bytes };
}
