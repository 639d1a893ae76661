import { readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { serialize } from "node:v8";
import { deflateRawSync } from "node:zlib";
import { keyOf, readResult, writeResult } from "../kept/kept-result.ts";
import type { WorkCache } from "../kept/work-cache.ts";
import { byFamily } from "../pages/catalogue-pages.ts";
import { formerTexts } from "../pages/former-page.ts";
import { PAPER_SIZES } from "../print/card-size.ts";
import { cardsFolder } from "../print/cards-page.ts";
import { formerPdf } from "../print/former-pdf.ts";
import { unpackedText, type PackedPages } from "../print/packed-pages.ts";
import type { PagesOnPaper, SaidOnPaper } from "../print/paper-work.ts";
import { contentKey } from "../sheet/revision.ts";
import { formerColours } from "./former-sheets.ts";
import type { KeptPapers } from "./kept-papers.ts";
import { cardsKey, rangeKey } from "./paper-keys.ts";
import type { PaperState } from "./published-data.ts";
import { rangeParts } from "./range-papers.ts";
import type { BinaryFile, PackedSheet, RangeToPrint } from "./site.ts";
import type { AskedWork, WorkThreads } from "./work-threads.ts";

/** Each paper of a site, asked of the threads where it is not the earlier output's. */

const LEAVES_MODULES = ["lib/print/sheet-pdf.ts", "lib/words/languages.ts"] as const;

/** A paper that is drawn and has been put where it goes: of its bytes nothing is held. */
export interface Paper extends PaperState {
  /** [bytes] */
  readonly size: number;
  readonly fileHash: string;
}

/** What papers are drawn from, and by. */
export interface Printing {
  readonly prints: RangeToPrint;
  readonly program: string;
  readonly before: PreviousPapers;
  readonly cache: WorkCache | undefined;
  readonly threads: WorkThreads;
  /** Put a paper where it goes, as soon as it is drawn. @returns the hash of its file. */
  readonly put: (file: BinaryFile) => string;
  /** Put the earlier output's paper there, where its hash is this; without it the earlier paper is read and put. */
  readonly bring?: ((path: string, hash: string) => boolean) | undefined;
}

/** A paper that is drawn by somebody, or was before. */
interface AskedPaper {
  readonly path: string;
  readonly key: string;
  /** By this thread, where no other has begun it. */
  readonly drawn: () => Paper | Promise<Paper>;
}

/** A sheet's leaves once they are drawn, or were before: loaded when the range is bound, since all of them would take more memory than it does. */
type AskedLeaves = AskedWork<() => Promise<Uint8Array>>;

interface AskedSheet extends AskedPaper {
  readonly sheet: PackedSheet;
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

/** Before the hash by which a view names a photograph. */
const NAMES_PHOTOGRAPH = '"hash":"';

/** Looked for once: of a large range there are as many photographs as pages that might name them. */
function* hashesIn(pages: string): Generator<string> {
  for (let at = pages.indexOf(NAMES_PHOTOGRAPH); at !== -1;) {
    const begin = at + NAMES_PHOTOGRAPH.length;
    yield pages.slice(begin, pages.indexOf('"', begin));
    at = pages.indexOf(NAMES_PHOTOGRAPH, begin);
  }
}

/** Photographs that both pages name by their hashes. */
function photographsIn(
  { sheet, bench }: PackedPages,
  { records: { photographs } }: RangeToPrint["context"],
): ReadonlyMap<string, Uint8Array> {
  if (photographs.length === 0) return new Map();
  const hashes = new Set([sheet, bench].flatMap((page) => [...hashesIn(unpackedText(page))]));
  return new Map(
    photographs
      .flatMap(({ pictures, inReadColour }) => [pictures ?? [], inReadColour ?? []].flat())
      .filter(({ hash }) => hashes.has(hash))
      .map(({ hash, paper }) => [hash, paper.bytes()]),
  );
}

export function askedSheet(sheet: PackedSheet, key: string, printing: Printing): AskedSheet {
  const {
    prints: { context },
    cache,
    threads,
  } = printing;
  const path = `colours/${sheet.slug}/sheet.pdf`;
  const paper = paperOf(context);
  const leavesKey = keyOf(cache, { modules: LEAVES_MODULES, inputs: { key, paper } });
  const asked = (): PagesOnPaper => {
    const pages = sheet.packed();
    return {
      slug: sheet.slug,
      pages,
      caution: sheet.caution,
      said: saidOf(context),
      paper,
      photographs: photographsIn(pages, context),
    };
  };
  const leavesBefore = (): Uint8Array | undefined =>
    cache && leavesKey !== undefined ? readResult(cache, leavesKey) : undefined;
  const drawnNow = (): AskedWork<Uint8Array> => threads.ask("leaves", asked());
  const keptLeaves = (bytes: Uint8Array): (() => Promise<Uint8Array>) =>
    cache && leavesKey !== undefined && writeResult(cache, leavesKey, bytes)
      ? async () => leavesBefore() ?? drawnNow().here()
      : () => Promise.resolve(bytes);
  const earlier = kept(path, key, printing);
  if (earlier === undefined) {
    const work = threads.ask("sheet", asked());
    const paper = madeOf(work, ({ pdf }) => put(key, { path, bytes: pdf }, printing));
    const leaves = madeOf(work, (drawn) => keptLeaves(drawn.leaves));
    return { path, key, sheet, leaves: () => leaves, drawn: paper.here };
  }
  let leaves: AskedLeaves | undefined;
  return {
    path,
    key,
    sheet,
    leaves: () => {
      const bytes = leaves === undefined ? leavesBefore() : undefined;
      leaves ??=
        bytes === undefined
          ? madeOf(drawnNow(), keptLeaves)
          : alreadyThere(() => Promise.resolve(bytes));
      return leaves;
    },
    drawn: () => earlier,
  };
}

function alreadyThere<R>(value: R): AskedWork<R> {
  const result = Promise.resolve(value);
  return { result, here: () => result };
}

/** What is made of a piece of work as soon as that is done; what it came out as is let go then. */
function madeOf<R, V>(asked: AskedWork<R>, made: (result: R) => V): AskedWork<V> {
  let work: AskedWork<R> | undefined = asked;
  const result = asked.result.then(made).finally(() => {
    work = undefined;
  });
  // Whoever waits for it is told what stopped it.
  result.catch(() => undefined);
  return {
    result,
    here: async () => {
      await work?.here();
      return result;
    },
  };
}

export function askedRange(sheets: readonly AskedSheet[], printing: Printing): AskedPaper[] {
  const {
    prints: { context },
    program,
    threads,
  } = printing;
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
    const earlier = kept(path, key, printing);
    if (earlier !== undefined) return { path, key, drawn: () => earlier };
    const asking = askedPart(part, context, threads).then((asked) =>
      madeOf(asked, (bytes) => put(key, { path, bytes }, printing)),
    );
    asking.catch(() => undefined);
    return {
      path,
      key,
      drawn: async () => {
        for (const { leaves } of part.flatMap(({ items }) => items)) await leaves().here();
        return (await asking).here();
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
  await Promise.all(part.flatMap(({ items }) => items.map(async ({ leaves }) => leaves().result)));
  const families = await Promise.all(
    part.map(async ({ name, items }) => ({
      name,
      sheets: await Promise.all(
        items.map(async ({ sheet: { slug, caution }, leaves }) => ({
          slug,
          caution,
          leaves: await (await leaves().result)(),
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
export function askedCards(printing: Printing): AskedPaper[] {
  const {
    prints: { context, laidOut },
    program,
    threads,
  } = printing;
  const { date, words } = context;
  const { name: workshop } = context.records.workshop;
  return laidOut().sizes.flatMap(({ size, count, marks, laid }): AskedPaper[] => {
    const path = `${cardsFolder(size, context)}cards.pdf`;
    if (count === 0) return [];
    const key = cardsKey(marks, size, context, program);
    const earlier = kept(path, key, printing);
    if (earlier !== undefined) return [{ path, key, drawn: () => earlier }];
    const said = { workshop, date, language: words.language };
    // Packed: with all their marks the cards of a large range take more memory than its sheets do.
    const packed = deflateRawSync(serialize(laid()), { level: 1 });
    const paper = madeOf(threads.ask("cards", { laid: packed, size, said }), (bytes) =>
      put(key, { path, bytes }, printing),
    );
    return [{ path, key, drawn: paper.here }];
  });
}

/** A page at the address of each sheet that is gone. */
export function askedFormers(printing: Printing): AskedPaper[] {
  const {
    prints: { context },
    program,
  } = printing;
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
        kept(path, key, printing) ??
        put(key, { path, bytes: formerPdf(texts, context, paperOf(context)) }, printing),
    };
  });
}

interface PreviousPapers extends Pick<KeptPapers, "drawn" | "drawnHash"> {
  readonly dir: string;
}

/** The earlier file, when it is what was drawn from the same. */
function kept(path: string, key: string, printing: Printing): Paper | undefined {
  const { dir, drawn, drawnHash } = printing.before;
  const known = drawn(key);
  if (known !== undefined && printing.bring?.(path, known.fileHash) === true)
    return { path, key, ...known };
  const bytes = fileBytes(join(dir, path));
  const fileHash = bytes && drawnHash({ key, bytes });
  return bytes && fileHash !== undefined
    ? put(key, { path, bytes, fileHash }, printing)
    : undefined;
}

function fileBytes(file: string): Uint8Array | undefined {
  try {
    return statSync(file).isFile() ? readFileSync(file) : undefined;
  } catch {
    return undefined;
  }
}

function put(key: string, file: BinaryFile, printing: Pick<Printing, "put">): Paper {
  const { path, bytes } = file;
  return {
    path,
    key,
    hash: contentKey(bytes),
    size: bytes.length,
    fileHash: printing.put(file),
  };
}
