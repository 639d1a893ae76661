import type { ContributionWords } from "../contribution-name.ts";
import { METAL_NAMES, OIL_NAMES } from "./closed-sets.ts";
import { degrees, listed, micrometres, significant, withUnit } from "./phrases.ts";

export const CONTRIBUTION_WORDS: ContributionWords = {
  oils: OIL_NAMES,
  oilNotRecorded: "Öl, nicht aufgezeichnet",
  drier: (metal, percentOnOil) =>
    `${METAL_NAMES[metal]}-Trockenstoff, ${withUnit(significant(percentOnOil, 2), "%")} auf Öl`,
  wetFilm: "Nassfilm",
  room: "Raum",
  listed,
  figures: { micrometres, degrees },
};
