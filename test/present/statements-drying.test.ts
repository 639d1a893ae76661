import { drierRulings } from "../../lib/drying/added-drier.ts";
import { dryingClassRuling } from "../../lib/drying/drying-class.ts";
import { dryingEstimate, type DryingQuestion } from "../../lib/drying/drying-estimate.ts";
import { dryingNotes } from "../../lib/drying/drying-notes.ts";
import { dryingTrialRuling, trialContradiction } from "../../lib/drying/drying-trial.ts";
import { fatnessRuling } from "../../lib/drying/oil-richness.ts";
import { filmHealthRulings } from "../../lib/drying/film-defects.ts";
import { groundRulings } from "../../lib/drying/layering-advice.ts";
import { layeringLine } from "../../lib/drying/layering-line.ts";
import { layeringRulings } from "../../lib/drying/layering.ts";
import { sinkingInRulings } from "../../lib/drying/sinking-in.ts";
import { DRYING_RULINGS } from "../../lib/words/en/statements-drying.ts";
import { expect, test } from "vitest";
import { chemistryOf } from "../support/known.ts";
import type { Quantity } from "../../lib/quantities/interval.ts";
import type { Statement } from "../../lib/quantities/statement.ts";
import { holdSentences } from "./statements-held.ts";

function reasons(question: DryingQuestion): Statement[] {
  const estimate = dryingEstimate(question);
  return estimate.known ? [estimate.base, ...estimate.contributions] : [estimate.reason];
}

const linseed = [{ oil: "linseed", massFraction: 1 }] as const;
const pigment = (name: string, colourIndexName: string, massFraction?: number, white = false) => ({
  name,
  ...chemistryOf(colourIndexName),
  massFraction,
  white,
});
const umber = dryingEstimate({ pigments: [pigment("Raw umber", "PBr 7")], oils: linseed });

const rulings: (Statement | undefined)[] = [
  dryingClassRuling(4).reason,
  dryingClassRuling([4, 9]).reason,
  ...reasons({ pigments: [], oils: linseed }),
  ...reasons({
    pigments: [pigment("Bismuth vanadate", "PY 184"), pigment("Nobody's blue", "PB 999")],
    oils: linseed,
  }),
  ...reasons({ pigments: [pigment("Raw umber", "PBr 7")], oils: [] }),
  ...reasons({
    pigments: [
      pigment("Prussian Blue", "PB 27", 0.2),
      pigment("Titanium dioxide, rutile", "PW 6", 0.5, true),
      pigment("Ultramarine", "PB 29", 0.3),
    ],
    oils: [
      { oil: "linseed", massFraction: 0.6 },
      { oil: "poppy", massFraction: 0.4 },
    ],
  }),
  ...reasons({
    pigments: [pigment("Lamp black", "PBk 6"), pigment("Bone black", "PBk 9")],
    oils: linseed,
    addedDriers: [{ metal: "cobalt", percentOnOil: 0.04 }],
    filmThicknessUm: 150,
    temperatureC: 10,
  }),
  ...reasons({
    pigments: [pigment("Lead white", "PW 1", 0.5, true), pigment("Red iron oxide", "PR 101", 0.5)],
    oils: linseed,
    addedDriers: [
      { metal: "manganese", percentOnOil: 0.03 },
      { metal: "zirconium", percentOnOil: 0.2 },
      { metal: "zinc", percentOnOil: 0.1 },
    ],
    filmThicknessUm: 40,
    temperatureC: 28,
  }),
  ...reasons({
    pigments: [pigment("Chalk", "PW 18", 0.3, true), pigment("Lamp black", "PBk 6", 0.7)],
    oils: linseed,
  }),
  ...[
    {
      touchDryDays: 3,
      throughDryDays: [18, 24],
      filmThicknessUm: 75,
      temperatureC: 20,
      humidityPercent: 55,
    } as const,
    { touchDryDays: [7, 9], filmThicknessUm: 150, temperatureC: 12 } as const,
    { touchDryDays: 1 },
    { touchDryDays: 4, temperatureC: 20 },
  ].map((trial) => dryingTrialRuling(trial).reason),
  ...(umber.known
    ? [
        trialContradiction({ touchDryDays: 20 }, umber),
        trialContradiction({ touchDryDays: 0.4 }, umber),
      ]
    : []),
  ...dryingNotes(["PBk 6"]),
  ...[0.5, [0.55, 0.65] as const, 0.72].map((oil) => fatnessRuling(oil).reason),
  ...(
    [
      [0.65, 0.52],
      [0.5, 0.65],
      [0.6, 0.61],
    ] as const
  ).flatMap(([upper, lower]) =>
    layeringRulings(
      { name: "Titanium White", oilVolumeFraction: upper, dryingClass: "medium" },
      { name: "Lamp Black", oilVolumeFraction: lower, dryingClass: "very slow" },
    ),
  ),
  ...(["fast", "medium", "slow"] as const).flatMap((dryingClass) =>
    (["lean", "fat"] as const).map((fatness) => layeringLine(dryingClass, fatness, 0)),
  ),
  layeringLine("slow", "lean", 0.4),
  ...(["acrylic", "oil", "glue and chalk"] as const).flatMap(groundRulings),
  ...filmHealthRulings({
    pigments: [
      pigment("Zinc oxide", "PW 4", 0.12),
      pigment("Basic lead carbonate", "PW 1"),
      pigment("Lamp black", "PBk 6", 0.3),
    ],
    oils: linseed,
    mediums: ["Wax paste"],
    oilVolumeFraction: [0.66, 0.72],
    reducedPvc: [0.8, 0.86],
  }),
  ...(["walnut", "stand linseed", "poppy"] as const).flatMap((oil) =>
    filmHealthRulings({
      pigments: [],
      oils: [{ oil, massFraction: 1 }],
      reducedPvc: oil === "poppy" ? 1.2 : 0.95,
    }),
  ),
  ...(
    [
      [0.65, 1.05],
      [0.72, 0.92],
      [1.02, 1.17],
    ] as const
  ).flatMap((reducedPvc) => filmHealthRulings({ pigments: [], oils: [], reducedPvc })),
  ...drierRulings([
    { metal: "cobalt", percentOnOil: 0.1 },
    { metal: "manganese", percentOnOil: 0.05 },
  ]),
];

test("what only one end of an estimate bears out is said as what may be", () => {
  const said = (reducedPvc: Quantity): string[] =>
    sinkingInRulings(reducedPvc)
      .filter(({ rule }) => rule !== "oiling-out")
      .map(({ rule, values }) => DRYING_RULINGS[rule as "dull-of-itself"](values));
  expect([said([0.65, 1.05]), said([0.72, 0.92])]).toEqual([
    [expect.stringMatching(/^At the drier end .* it may be dull of itself/)],
    [expect.stringMatching(/^At the drier end .* it may sink in/)],
  ]);
  expect([said([1.02, 1.17]), said(1.1), said([0.92, 0.97])]).toEqual([
    [expect.stringMatching(/^Dull of itself/)],
    [expect.stringMatching(/^Dull of itself/)],
    [expect.stringMatching(/^Little oil/)],
  ]);
});

holdSentences(
  "sentences of drying",
  DRYING_RULINGS,
  rulings.filter((ruling) => ruling !== undefined),
);
