import type { ContributionWords } from "../contribution-name.ts";
import { DRIER_METALS, OILS } from "./closed-words.ts";
import { degrees, listed, micrometres, significant, withUnit } from "./phrases.ts";

export const CONTRIBUTION_WORDS: ContributionWords = {
  oils: OILS,
  oilNotRecorded: "Huile, non consignée",
  drier: (metal, percentOnOil) =>
    `Siccatif au ${DRIER_METALS[metal]}, ${withUnit(significant(percentOnOil, 2), "%")} sur l’huile`,
  wetFilm: "Film humide",
  room: "Pièce",
  listed,
  figures: { micrometres, degrees },
};
