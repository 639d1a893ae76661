import type { WorkshopRecord } from "../records/schema/workshop.ts";

export interface PaperSize { readonly name: "A4" | "Letter"; readonly widthMm: number; readonly heightMm: number }

/** @source ISO 216 for A4; ANSI/ASME Y14.1 A (8.5 by 11 inches) for US Letter. */
export const PAPER_SIZES: Readonly<Record<PaperSize["name"], PaperSize>> = {
  A4: { name: "A4", widthMm: 210, heightMm: 297 }, Letter: { name: "Letter", widthMm: 215.9, heightMm: 279.4 },
};

export function paperOf({ paper }: Pick<WorkshopRecord, "paper">): PaperSize {
  return PAPER_SIZES[paper ?? "A4"];
}
