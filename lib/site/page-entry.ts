import type { AnyPageView } from "./all-pages.ts";
import { contentHash } from "../kept/content-hash.ts";
import { madeStep, type KeptSteps } from "../kept/kept-steps.ts";
import { packedText, unpackedText } from "../print/packed-pages.ts";
import { readAgain, readBy, type Read } from "../kept/reads.ts";
import { hashOfView, viewKey, type FilledPage } from "./filled-page.ts";

/**
 * One page to render: templates/partials/every-page.njk picks the template of its kind.
 * It is filled when it is first looked into, and again when it is looked into after it was let go.
 */
export interface PageEntry extends FilledPage {
  /** Below the site's root: `colours/bone-black/index.html`. */
  readonly path: string;
  /** Of no use to whoever searches: not in the list for search engines. */
  readonly isUnlisted?: boolean;
  /** The hash of what it is filled with, which may be known without filling it. */
  readonly key: () => string;
  /** Its view as JSON that is deflated, for whoever takes it to another thread. */
  readonly packedView: () => Uint8Array;
  /** Hold no longer what it is filled with, once it is written: of a large range that is more than fits into memory. */
  readonly letGo: () => void;
}

/** Of what output pages are, and what was kept of earlier builds. */
export interface PagesKept {
  readonly steps: KeptSteps | undefined;
  readonly of: string;
}

/** A page that is filled by a function. @param kept the hash of what it was filled with, by what was read to fill it. */
export function pageEntry(
  path: string,
  filled: () => FilledPage,
  kept?: PagesKept,
  isUnlisted = false,
): PageEntry {
  let read: Read<HeldPage> | undefined;
  let key: string | undefined;
  const once = (): Read<HeldPage> => (read ??= heldAsText(readBy(filled)));
  const again = (): HeldPage => readAgain(once());
  const keyNow = (): string =>
    (key ??= madeStep(kept?.steps, { ...FILLING, name: `pages of ${kept?.of}`, of: path }, () =>
      viewKey(again()),
    ));
  return {
    path,
    ...(isUnlisted && { isUnlisted }),
    get site() {
      return again().site;
    },
    get view() {
      return again().view;
    },
    key: keyNow,
    packedView: () => {
      const page = again();
      return page.packed ?? packedText(JSON.stringify(page.view));
    },
    letGo: () => {
      // Asked for later, when pages are kept, it would be filled again for that alone.
      if (read !== undefined && kept?.steps !== undefined) keyNow();
      read = undefined;
    },
  };
}

const FILLING = { modules: ["lib/site/site-of-records.ts"] };

/** Pages of every colour, which are asked for by pictures, by paper and by their templates, long after one another. */
const OF_EVERY_COLOUR: ReadonlySet<string> = new Set<AnyPageView["kind"]>(["sheet", "bench"]);

interface HeldPage extends FilledPage {
  readonly packed?: Buffer;
}

/** What such a page is filled with as packed text, which takes a fiftieth of what its objects take. */
function heldAsText(read: Read<FilledPage>): Read<HeldPage> {
  const {
    value: { site, view },
    names,
  } = read;
  if (!OF_EVERY_COLOUR.has(view.kind)) return read;
  const text = JSON.stringify(view);
  const held = packedText(text);
  return {
    names,
    value: {
      site,
      packed: held,
      viewHash: hashOfView(text),
      get view() {
        return viewOf(held);
      },
    },
  };
}

/** Whoever looks into a page does so several times in a row: so many views are held beside their texts. */
const RECENT_MOST = 4;
const recent = new Map<Buffer, AnyPageView>();

function viewOf(text: Buffer): AnyPageView {
  const view = recent.get(text) ?? (JSON.parse(unpackedText(text)) as AnyPageView);
  recent.delete(text);
  recent.set(text, view);
  for (const oldest of recent.keys()) {
    if (recent.size <= RECENT_MOST) break;
    recent.delete(oldest);
  }
  return view;
}

/** The page at another place. */
export function pageAt(path: string, page: PageEntry): PageEntry {
  return {
    path,
    ...(page.isUnlisted !== undefined && { isUnlisted: page.isUnlisted }),
    get site() {
      return page.site;
    },
    get view() {
      return page.view;
    },
    key: page.key,
    packedView: page.packedView,
    letGo: page.letGo,
  };
}

/** The page with something put into it once it is filled. @param beside all that this goes by. */
export function pageWith(
  page: PageEntry,
  changed: (filled: FilledPage) => FilledPage,
  beside: readonly string[],
): PageEntry {
  let made: FilledPage | undefined;
  const once = (): FilledPage => (made ??= changed({ site: page.site, view: page.view }));
  return {
    path: page.path,
    ...(page.isUnlisted !== undefined && { isUnlisted: page.isUnlisted }),
    get site() {
      return once().site;
    },
    get view() {
      return once().view;
    },
    key: () => contentHash([page.key(), ...beside]).toString("hex"),
    packedView: () => packedText(JSON.stringify(once().view)),
    letGo: () => {
      made = undefined;
      page.letGo();
    },
  };
}
