import { MIXING_RULINGS, type MixingStatement } from "../../lib/words/rulings/mixing.ts";
import { wordingsIn } from "../../lib/words/rulings/rulings-in-each.ts";
import { holdSentences, type Stated } from "./statements-held.ts";

const paint = "Alba";
const white = "Blanca";
const statements: Stated<MixingStatement>[] = [
  { rule: "nothing-mixed", values: {} },
  { rule: "paint-not-fitted", values: { paint, reason: "" } },
  { rule: "paint-not-let-down-in", values: { paint, white } },
  { rule: "white-not-read", values: { white } },
  { rule: "paints-read-unlike", values: { first: paint, other: white } },
  { rule: "density-not-recorded", values: { paints: [paint] } },
  { rule: "density-not-recorded", values: { paints: [paint, white] } },
  { rule: "pigment-share-not-recorded", values: { paint } },
  { rule: "white-films-not-read", values: { white } },
  { rule: "medium-films-not-read", values: { medium: "Cera" } },
  { rule: "grounds-not-read", values: {} },
  { rule: "film-needs-let-downs", values: {} },
  { rule: "no-such-paint", values: { slug: "albo" } },
  { rule: "no-such-paint", values: { slug: "albo", near: paint } },
  { rule: "no-such-parts", values: { paint, parts: "x" } },
  { rule: "too-many-colours", values: { most: 6 } },
  { rule: "no-such-choice", values: { key: "x", value: "y" } },
  { rule: "no-colour-notation", values: { text: "" } },
  { rule: "no-colour-notation", values: { text: "5PX" } },
  { rule: "no-surface-colour", values: { text: "5PB 9/20" } },
];

holdSentences("sentences of mixing", MIXING_RULINGS, statements, (language) =>
  wordingsIn(language, MIXING_RULINGS),
);
