import type { ContributionWords } from "../contribution-name.ts";
import { DRIER_METALS, OILS } from "./closed-words.ts";
import { degrees, listed, micrometres, significant, withUnit } from "./phrases.ts";

export const CONTRIBUTION_WORDS: ContributionWords = {
  oils: OILS,
  oilNotRecorded: "Aceite, no registrado",
  drier: (metal, percentOnOil) =>
    `Secante de ${DRIER_METALS[metal]}, ${withUnit(significant(percentOnOil, 2), "%")} sobre el aceite`,
  wetFilm: "Película húmeda",
  room: "Sala",
  listed,
  figures: { micrometres, degrees },
};
