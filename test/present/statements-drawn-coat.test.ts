import { expect, test } from "vitest";
import { drawnCoatRuling } from "../../lib/optics/films/drawn-coat.ts";
import { DRAWN_COAT_RULINGS } from "../../lib/words/rulings/drawn-coat.ts";
import { holdSentences } from "./statements-held.ts";

// A contrast ratio of .98 counts as hiding (ISO 6504-3; memory).
const hiding = drawnCoatRuling(0.98);
if (hiding === undefined) throw new Error("A coat of contrast ratio .98 hides");

holdSentences("sentences of a coat of unknown thickness", DRAWN_COAT_RULINGS, [hiding]);

test.each([0.979, 0, NaN])("nothing is said of a coat of contrast ratio %s", (contrast) => {
  expect(drawnCoatRuling(contrast)).toBeUndefined();
});
