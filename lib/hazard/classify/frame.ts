/**
 * The two frames that label elements are worked out in, each with its edition.
 *
 * @source clp-1272-2008, un-ghs-rev-10
 */
import type { SourceKey } from "../../sources/source.ts";

export const HAZARD_FRAMES = ["EU CLP", "UN GHS"] as const;
export type HazardFrame = (typeof HAZARD_FRAMES)[number];

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
    edition: "Regulation (EC) No 1272/2008, statements as of Regulation (EU) 2019/521",
    asOf: "2019-03-27",
    buildingBlocks:
      "the categories of the Regulation; endocrine disruption and persistence (Regulation (EU) 2023/707) are not worked out",
    source: "clp-1272-2008",
  },
  "UN GHS": {
    edition: "UN GHS Rev. 10 (2023)",
    asOf: "2023-07-27",
    buildingBlocks:
      "all categories, with the concentration limits of the EU where the system offers a choice",
    source: "un-ghs-rev-10",
  },
} as const satisfies Record<HazardFrame, FrameEdition>;

export type PaintForm = "paste" | "powder" | "liquid";
