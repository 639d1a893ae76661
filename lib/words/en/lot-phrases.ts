import { NUMBERS } from "./phrases.ts";
import { criteriaIn, criterionFigures } from "../lot-criteria.ts";
import type { Charted } from "../../lots/chart-signals.ts";
import { GEOMETRIES, wordOf } from "../closed-sets.ts";

export const CRITERIA = criteriaIn(
  {
    masstone: "Masstone",
    letDown: "Let-down",
    strength: "Tinting strength",
    residual: "Let-down at equal strength",
    fineness: "Fineness of grind",
    oilIndex: "Oil index",
    density: "Density",
  },
  "g to 100 g",
);

export const { limitsText, figureOf, withUncertainty } = criterionFigures(CRITERIA, {
  atMost: "at most",
  to: "to",
  beforeUnit: " ",
  numbers: NUMBERS,
});

/** What a chart follows, as it stands inside a sentence. */
export const CHARTED: Readonly<Record<Charted, string>> = {
  strength: "strength",
  letDown: "the let-down\u2019s difference from the standard",
  masstone: "the masstone\u2019s difference from the standard",
};

export const NOT_READ = {
  masstone: "No spectrum of its masstone is recorded: the verdict says nothing of the masstone.",
  "let-down":
    "No spectrum of a let-down of it is recorded: the verdict says nothing of its strength.",
  both: "No spectrum of its masstone or of a let-down is recorded.",
} as const;

export function geometryOf(name: string): string {
  return wordOf(GEOMETRIES, name, "en");
}

/** Why K and S, and with them strength, do not follow from a reading. */
export const WITHOUT_STRENGTH = {
  "pigment-fluoresces": "fluoresces",
  "pigment-is-flakes": "is made of flakes",
} as const;
