import { followedList, followedWhenAsked, type Followed, type Grain } from "../kept/followed.ts";
import { noteRead } from "../kept/reads.ts";
import type { LazySheet } from "../sheet/all-sheets.ts";
import { EVIDENCE } from "../sheet/figure-places.ts";
import { evidenceHash } from "../sheet/kept-sheet.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";

/** A sheet, and its texts, that are made when they are asked for. */
export interface LazyTexts extends LazySheet {
  readonly texts: () => SheetTexts;
}

/**
 * Finished sheets that note what is read of them: which there are, and of each its sections, its
 * published texts, single figures, and what its figures were made from. A part is told by what it says.
 */
export function followedTexts(all: readonly LazyTexts[]): Followed<readonly SheetTexts[]> {
  const sheets = all.map(followedSheet);
  const list = sheets.map(({ value }) => value);
  const bySlug = new Map(all.map(({ slug }, i) => [slug, sheets[i]]));
  return {
    value: followedList(list, "sheets"),
    part: (name) => {
      const [, slug = "", ...rest] = name.split("/");
      return slug === "#" ? [...bySlug.keys()] : bySlug.get(slug)?.part(rest.join("/"));
    },
  };
}

/** A sheet section by section, and those key by key that most others read something of. */
const SHEET: Readonly<Partial<Record<keyof Sheet, Grain>>> = {
  slug: "always",
  tints: { members: { keys: {} } },
  notations: { keys: {} },
  optics: { keys: {} },
  oil: { keys: {} },
  drying: { keys: {} },
  permanence: { keys: {} },
};

function followedSheet({
  slug,
  identity,
  head,
  sheet: own,
  texts,
}: LazyTexts): Followed<SheetTexts> {
  const root = `sheets/${slug}`;
  const sheet = followedWhenAsked(own, SHEET, `${root}/sheet`, { slug }, head);
  const plain = followedWhenAsked(() => texts().plain, {}, `${root}/plain`);
  const inShort = followedWhenAsked(() => texts().inShort, {}, `${root}/inShort`);
  return {
    value: {
      sheet: sheet.value,
      plain: plain.value,
      inShort: inShort.value,
      has: (path) => {
        noteRead(`${root}/leaf/${path}`);
        return texts().has(path);
      },
      leaf: (path) => {
        noteRead(`${root}/leaf/${path}`);
        return texts().leaf(path);
      },
    },
    part: (rest) => {
      const [of = "", ...more] = rest.split("/");
      if (of === "plain") return plain.part(`${root}/${rest}`);
      if (of === "inShort") return inShort.part(`${root}/${rest}`);
      if (of === "sheet") return sheet.part(`${root}/${rest}`);
      if (of === EVIDENCE) return identity ?? evidenceHash(own());
      const path = more.join("/");
      return texts().has(path) ? texts().leaf(path).figure : undefined;
    },
  };
}
