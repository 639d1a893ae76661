/**
 * The two frames that label elements are worked out in, each with its edition.
 *
 * @source clp-1272-2008, un-ghs-rev-11
 */
import type { SourceKey } from "../../sources/source.ts";

export const HAZARD_FRAMES = ["EU CLP", "UN GHS"] as const;
export type HazardFrame = (typeof HAZARD_FRAMES)[number];

/** Whether a row of a table holds in a frame: one that names none does in both. */
export function isOfFrame(
  { frame }: { readonly frame?: HazardFrame | undefined },
  wanted: HazardFrame,
): boolean {
  return frame === undefined || frame === wanted;
}

export interface FrameEdition {
  /** As a sheet names it beside the statements. */
  readonly edition: string;
  /** Date of the state that is known here, ISO. */
  readonly asOf: string;
  /** Which of the optional categories ("building blocks") are taken up. */
  readonly buildingBlocks: string;
  readonly source: SourceKey;
}

export const FRAME_EDITIONS = {
  "EU CLP": {
    edition: "Regulation (EC) No 1272/2008 as consolidated on 1 July 2026",
    // Since then no text of a label has changed that is known here.
    asOf: "2023-04-20",
    buildingBlocks: "the categories of the Regulation, with those of Regulation (EU) 2023/707",
    source: "clp-1272-2008",
  },
  "UN GHS": {
    edition: "UN GHS Rev. 11 (2025)",
    asOf: "2025-01-01",
    buildingBlocks:
      "all categories, with the concentration limits of the EU where the system offers a choice",
    source: "un-ghs-rev-11",
  },
} as const satisfies Record<HazardFrame, FrameEdition>;

export const PAINT_FORMS = ["paste", "powder", "liquid"] as const;
export type PaintForm = (typeof PAINT_FORMS)[number];
