import { z } from "zod";
import { optional } from "./keys-and-lists.ts";
import { within } from "./reach.ts";

const difference = z.number().min(0.05).max(20).optional();
const percent = z.number().min(0.1).max(50).optional();

/** What a lot may differ by from its standard; what is left out is as customary. */
export const tolerances = z.strictObject({
  masstoneDeltaE00: difference,
  letDownDeltaE00: difference,
  residualDeltaE00: difference.describe("of the let-down at equal strength"),
  strengthPercent: optional(
    z.tuple([z.number().min(20).max(100), z.number().min(100).max(500)]),
    "from and to, 100 being the standard",
  ),
  finenessUm: optional(within("finenessOfGrindUm"), "at most"),
  oilIndexPercent: percent,
  densityPercent: percent,
});
