import { expect, test } from "vitest";
import { BAG_G, BAG_JAR_ML, CUSTOMARY_JARS_ML } from "../../lib/formulation/containers.ts";

// basis: practice, practice-formulation; the ounce: memory, of NIST Handbook 44: 1 fl oz is 29.5735 ml.
test("pigment is sold in jars of 100 and 250 ml and of four US fluid ounces, 100 g to a bag", () => {
  expect(CUSTOMARY_JARS_ML).toEqual([100, Math.round(4 * 29.5735), 250]);
  expect([BAG_G, BAG_JAR_ML]).toEqual([100, Math.round(4 * 29.5735)]);
});
