import type { Block } from "../../lib/blocks/block.ts";
import type { RangeToPrint, Site } from "../../lib/site/site.ts";
import type { SheetToPrint } from "../../lib/print/sheet-paper.ts";
import { site } from "../support/demonstration.ts";
import { solid } from "../support/read-pdf.ts";

/** The demonstration's site, and its sheets as paper takes them. */
export const SITE: Site = site();
if (SITE.prints === undefined) throw new Error("Unexpected site without sheets to print");
export const PRINTS: RangeToPrint = SITE.prints;

/** @throws Error for a colour that the demonstration lacks. */
export function printOf(slug: string): SheetToPrint {
  const found = PRINTS.sheets.find((sheet) => sheet.slug === slug);
  if (found === undefined) throw new Error(`Unexpected demonstration without ${slug}`);
  return found;
}

/** A black, a white that is sold under permit alone, a white, a medium, two pigments, a chip by eye, hardly anything known. */
export const KINDS = [
  "bone-black",
  "lead-white",
  "titanium-white",
  "barytes-medium",
  "umber-ultramarine-black",
  "green-earth",
  "slate-grey",
] as const;

/** Those of some texts that another lacks. */
export function lacking(texts: readonly string[], within: string): string[] {
  const whole = solid(within).toLowerCase();
  return texts.filter((text) => !whole.includes(solid(text).toLowerCase()));
}

/** Blocks of a kind that paper prints, wherever they stand: not what a reader opens on a page alone. */
export function blocksIn<K extends Block["kind"]>(
  sections: readonly { readonly blocks: readonly Block[] }[],
  kind: K,
): Extract<Block, { readonly kind: K }>[] {
  return sections
    .flatMap(({ blocks }) => blocks)
    .flatMap((block): Extract<Block, { readonly kind: K }>[] => {
      const own = block.kind === kind ? [block as Extract<Block, { readonly kind: K }>] : [];
      return block.kind === "group" || (block.kind === "fold" && block.isPrinted === true)
        ? [...own, ...blocksIn([block], kind)]
        : own;
    });
}
