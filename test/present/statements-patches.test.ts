import type { PhotographStatement } from "../../lib/patches/statements.ts";
import { PATCH_RULINGS } from "../../lib/words/rulings/patches.ts";
import { holdSentences, type Stated } from "./statements-held.ts";

const statements: Stated<PhotographStatement>[] = [
  { rule: "photograph-corrected", values: { patches: 12, median: 1.7, largest: 4.9 } },
  { rule: "photograph-not-corrected", values: { median: 6.2, limit: 4 } },
  { rule: "photograph-as-it-came", values: {} },
  { rule: "light-evened", values: { percent: 81 } },
  { rule: "colour-of-photograph", values: { L: [30, 36], a: [-4, 2], b: [-12.4, -6] } },
  { rule: "photograph-beside-reading", values: { deltaE00: 1.6 } },
  { rule: "texture-in-read-colour", values: {} },
];

holdSentences("sentences of photographs", PATCH_RULINGS, statements);
