import type { ContributionWords } from "../contribution-name.ts";
import { OILS } from "./drying-phrases.ts";
import { degrees, listed, micrometres, significant, withUnit } from "./phrases.ts";

export const CONTRIBUTION_WORDS: ContributionWords = {
  oils: OILS,
  oilNotRecorded: "Oil, not recorded",
  drier: (metal, percentOnOil) =>
    `${metal} drier, ${withUnit(significant(percentOnOil, 2), "%")} on oil`,
  wetFilm: "Wet film",
  room: "Room",
  listed,
  figures: { micrometres, degrees },
};
