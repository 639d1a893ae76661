import {
  PERMANENCE_CONTRADICTIONS,
  PERMANENCE_REASONS,
  SENSITIVITIES,
  type PermanenceFacts,
} from "../../lib/permanence/permanence-rules.ts";
import { changeSoFarStatements } from "../../lib/permanence/change-so-far.ts";
import { expectedContradiction } from "../../lib/permanence/expected-contradiction.ts";
import { greyScaleRuling } from "../../lib/permanence/grey-scale.ts";
import {
  labelLightfastness,
  suitabilityRuling,
} from "../../lib/permanence/lightfastness-on-label.ts";
import { leastLightfast } from "../../lib/permanence/least-lightfast.ts";
import {
  permanenceRuling,
  type PermanenceQuestion,
} from "../../lib/permanence/permanence-ruling.ts";
import { sensitivityRulings, type SensitivityStatement } from "../../lib/permanence/sensitivity.ts";
import { PERMANENCE_RULINGS } from "../../lib/words/rulings/permanence.ts";
import type { Exposure } from "../../lib/permanence/exposure.ts";
import type { PermanenceStatement } from "../../lib/permanence/statements.ts";
import { statementText } from "../../lib/present/statement-text.ts";
import { ENGLISH } from "../../lib/words/english.ts";
import { expect, test } from "vitest";
import { KNOWN, lightOf } from "../support/known.ts";
import { casesOf, holdSentences, type RuleCase, type Stated } from "./statements-held.ts";

const exposed = (
  deltaEab: number,
  form: Exposure["form"],
  exposure: string,
  standard = "ASTM D4303",
): Exposure => ({ deltaEab, form, exposure, standard });
const twoKinds = [exposed(2, "tint", "daylight under glass"), exposed(3, "tint", "xenon arc")];
const pigment = (name: string, colourIndexName: string) => ({ name, ...lightOf(colourIndexName) });

const questions: PermanenceQuestion[] = [
  { pigments: [], exposures: twoKinds },
  {
    pigments: [],
    exposures: [exposed(30, "masstone", "own window", "none")],
    stated: { category: "II" },
  },
  {
    pigments: [],
    exposures: [exposed(1, "tint", "own window", "none")],
    stated: { category: "III", form: "tint" },
  },
  {
    pigments: [],
    exposures: [{ ...exposed(6, "tint", "a supplier's window"), standing: "stated" }],
    stated: { category: "III" },
  },
  { pigments: [], exposures: [], stated: { category: "II", form: "masstone" } },
  {
    pigments: [
      pigment("Ultramarine", "PB 29"),
      { ...pigment("Bone black", "PBk 9"), stated: { category: "I" } },
    ],
    exposures: [],
  },
  {
    pigments: [
      pigment("Alizarin lake", "PR 83"),
      pigment("Bone black", "PBk 9"),
      pigment("Yttrium blue", "PB 86"),
    ],
    exposures: [],
  },
  {
    pigments: [
      pigment("Alizarin lake", "PR 83"),
      { name: "Rose", exposures: [exposed(5, "tint", "own window", "none")] },
      {
        name: "Magenta",
        exposures: [{ ...exposed(3, "tint", "a supplier's window"), standing: "stated" }],
      },
    ],
    exposures: [],
  },
  { pigments: [pigment("Ultramarine", "PB 29"), pigment("Bone black", "PBk 9")], exposures: [] },
  { pigments: [{ name: "Bismuth vanadate" }, { name: "Nobody's blue" }], exposures: [] },
];
const answered = questions.map(permanenceRuling);

/** A tint that has changed so far, beside exposures on record. */
const soFar = (deltaEab: number, ...recorded: Exposure[]): PermanenceStatement | undefined =>
  changeSoFarStatements({ form: "tint", deltaEab }, recorded)[0];

const component = (
  name: string,
  known: Partial<Parameters<typeof leastLightfast>[0][number]> = {},
) => ({ name, pigments: [{ name }], exposures: [], ...known });
const [first, second, third] = [
  component("Viridian", { stated: { category: "I" } }),
  component("Quinacridone rose", { stated: { category: "II" } }),
  component("Alizarin lake", { pigments: [pigment("Alizarin lake", "PR 83")] }),
];

/** That an agent is said to harm one pigment and not another. */
function harm(
  when: SensitivityStatement["rule"],
  harmed: string,
  sound: string,
): RuleCase<PermanenceStatement> {
  const of = (name: string) => [
    sensitivityRulings([{ name, sensitivities: KNOWN.pigment(name).sensitivities }]).find(
      ({ reason }) => reason.rule === when,
    )?.reason,
  ];
  return { when, said: of(harmed), unsaid: of(sound) };
}

const rulings: Stated<PermanenceStatement>[] = [
  ...[
    [first, second],
    [first, second, { ...second, name: "Naples Yellow" }],
    [first, component("Rose", { exposures: [exposed(5, "tint", "own window")] })],
    [first, third],
    [first, first],
    [first, component("Unknown")],
  ].map(leastLightfast),
  ...answered.flatMap(({ reasons }) => reasons),
  ...answered.map(labelLightfastness),
  ...[
    expectedContradiction("excellent", { form: "tint", category: "III", meanDeltaEab: 12 }),
    expectedContradiction("poor", { form: "masstone", category: "II", meanDeltaEab: 6 }),
  ].filter((found) => found !== undefined),
  // Half a unit of Delta-E*ab between two readings of one change, common practice; a colour does not come back.
  {
    when: "change-beyond-record",
    said: [
      soFar(5.6, exposed(5, "tint", "own window")),
      soFar(9, exposed(2, "masstone", "own window"), exposed(6, "tint", "own window")),
    ],
    unsaid: [
      soFar(5.5, exposed(5, "tint", "own window")),
      soFar(9, exposed(2, "masstone", "own window")),
      soFar(9, exposed(2, "tint", "own window"), exposed(9, "tint", "own window")),
      soFar(9),
    ],
  },
  suitabilityRuling("II"),
  suitabilityRuling("III"),
  ...[PERMANENCE_REASONS, SENSITIVITIES, PERMANENCE_CONTRADICTIONS].flatMap((rules) =>
    casesOf<PermanenceFacts, PermanenceStatement>(rules, (known) => ({
      pigments: [],
      exposures: [],
      changes: [],
      ruling: permanenceRuling({ pigments: [], exposures: [] }),
      byPigments: permanenceRuling({ pigments: [], exposures: [] }),
      stated: undefined,
      blueWoolReference: undefined,
      ...known,
    })),
  ),
  ...[0.1, 2.1, 2.6, 20].map((change) => greyScaleRuling(change).reason),
  ...KNOWN.tables.sensitivities.flatMap((row) =>
    sensitivityRulings(
      row.pigments.map((name) => ({ name: `Pigment ${name}`, sensitivities: [row] })),
    ).map(({ reason }) => reason),
  ),
  // memory-permanence, gardner-1911: Prussian blue goes brown in lime and in heat, lead white dark in sulphur, lithopone in light.
  harm("harmed-by-alkali", "PB 27", "PB 29"),
  harm("harmed-by-heat", "PB 27", "PB 29"),
  harm("harmed-by-sulphur", "PW 1", "PW 4"),
  harm("harmed-by-acid", "PB 29", "PR 101"),
  harm("harmed-by-damp", "PY 35", "PB 29"),
  harm("harmed-by-light", "PW 5", "PW 6"),
];

holdSentences<PermanenceStatement>("sentences of permanence", PERMANENCE_RULINGS, rulings);

test("an estimate is worded as an expectation and never as a category", () => {
  const expected = answered
    .filter(({ basis }) => basis === "expected" || basis === "not known")
    .flatMap(({ reasons }) => reasons)
    .filter(
      ({ rule }) =>
        rule !== "pigment-category-stated" &&
        rule !== "pigment-exposed-in-its-own-paint" &&
        rule !== "pigment-exposed-as-stated",
    );
  expect(expected.length).toBeGreaterThan(4);
  for (const reason of expected) expect(statementText(reason, ENGLISH)).not.toMatch(/categor|D43/);
});
