import { expectedRuling } from "../../lib/optics/tints/expected-ladder.ts";
import { EXPECTED_RULINGS } from "../../lib/words/rulings/expected.ts";
import { holdSentences } from "./statements-held.ts";

const tint = {
  massRatio: 0.2,
  spectrum: { grid: { startNm: 400, stepNm: 10, count: 0 }, values: [] },
  lab: { L: 50, a: 0, b: 0 },
  uncertainty: { p68: 3, p90: 5 },
  distance: 20,
  own: 1,
};

holdSentences(
  "sentences of a white that was not tried",
  EXPECTED_RULINGS,
  [["Bone Black"], ["Bone Black", "Red Earth"], ["A", "B", "C", "D"]].map((through) =>
    expectedRuling("Lead White", "Zinc White", through, [tint]),
  ),
);
