import { drierWarnings } from "../../lib/drying/added-drier.ts";
import { dryingClassRuling } from "../../lib/drying/drying-class.ts";
import { dryingEstimate, type DryingQuestion } from "../../lib/drying/drying-estimate.ts";
import { daysOfParts } from "../../lib/drying/days-of-parts.ts";
import { noteStatements, THROUGH_DRY } from "../../lib/drying/drying-notes.ts";
import { dryingTrialRuling, trialContradiction } from "../../lib/drying/drying-trial.ts";
import { fatnessRuling } from "../../lib/drying/oil-richness.ts";
import {
  filmHealthStatements,
  type Film,
  type FilmHealthStatement,
} from "../../lib/drying/film-defects.ts";
import { groundStatements } from "../../lib/drying/layering-advice.ts";
import { keptPaintStatements } from "../../lib/drying/kept-in-the-tube.ts";
import { layeringLine } from "../../lib/drying/layering-line.ts";
import { MEDIUM_CHANGES, mediumStatements } from "../../lib/drying/medium-in-paint.ts";
import type { DryingStatement } from "../../lib/drying/statements.ts";
import { DRYING_RULINGS } from "../../lib/words/rulings/drying.ts";
import { chemistryOf, KNOWN } from "../support/known.ts";
import { holdSentences } from "./statements-held.ts";

function reasons(question: DryingQuestion): DryingStatement[] {
  const estimate = dryingEstimate(question, KNOWN.tables);
  return estimate.known
    ? [estimate.base, ...estimate.contributions.map(({ statement }) => statement)]
    : [estimate.reason];
}

const linseed = [{ oil: "linseed", massFraction: 1 }] as const;
const pigment = (name: string, colourIndexName: string, massFraction?: number, white = false) => ({
  name,
  ...chemistryOf(colourIndexName),
  massFraction,
  white,
});
const film = (name: string, colourIndexName: string, massFraction?: number) => {
  const { chemistry, dryingNotes: notes } = KNOWN.pigment(colourIndexName);
  return { name, notes, massFraction, ...(chemistry === undefined ? {} : { chemistry }) };
};
const health = (of: Film): FilmHealthStatement[] => filmHealthStatements(of, KNOWN.tables);
const umber = dryingEstimate(
  { pigments: [pigment("Raw umber", "PBr 7")], oils: linseed },
  KNOWN.tables,
);

const statements: (DryingStatement | undefined)[] = [
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
  THROUGH_DRY,
  ...(["skins-and-stays-soft", "driers-customary"] as const).flatMap((note) =>
    noteStatements(note, [
      { name: "Lamp black", massFraction: 0.5, notes: KNOWN.pigment("PBk 6").dryingNotes },
    ]),
  ),
  ...MEDIUM_CHANGES.flatMap((changes) => mediumStatements(["Wax paste", "Egg"], changes)),
  ...reasons({
    pigments: [pigment("Brown earth", "PBr 7", 0.3), pigment("Chalk", "PW 18", 0.7)],
    oils: linseed,
  }),
  ...reasons({
    pigments: [pigment("Raw umber", "PBr 7"), pigment("Chalk", "PW 18")],
    oils: linseed,
  }),
  ...daysOfParts(
    [true, false].map((isTried) => ({
      name: "Bone black",
      touchDryDays: isTried ? 10 : ([6, 12] as const),
      isTried,
      massFraction: isTried ? 0.4 : undefined,
      fullFromMassFraction: 0.1,
    })),
  ).statements,
  ...[0.5, [0.55, 0.65] as const, 0.72].map((oil) => fatnessRuling(oil).reason),
  ...(["fast", "medium", "slow"] as const).flatMap((dryingClass) =>
    (["lean", "fat"] as const).map((fatness) => layeringLine(dryingClass, fatness, 0)),
  ),
  layeringLine("slow", "lean", 0.4),
  ...(["acrylic", "oil", "glue and chalk"] as const).flatMap(groundStatements),
  ...health({
    pigments: [
      film("Zinc oxide", "PW 4", 0.12),
      film("Basic lead carbonate", "PW 1"),
      film("Lamp black", "PBk 6", 0.3),
    ],
    oils: linseed,
    mediums: ["Wax paste"],
    oilVolumeFraction: [0.66, 0.72],
    finish: { spans: ["gloss"], reducedPvc: [0.8, 0.86] },
  }),
  ...health({ pigments: [], oils: [], oilVolumeFraction: 0.72 }),
  ...(["walnut", "stand linseed", "poppy"] as const).flatMap((oil) =>
    health({ pigments: [], oils: [{ oil, massFraction: 1 }] }),
  ),
  ...(
    [
      [
        ["gloss", "semi-gloss"],
        [0.72, 0.92],
      ],
      [["satin"], 0.98],
      [
        ["satin", "matte"],
        [0.98, 1.05],
      ],
      [["matte"], 1.2],
    ] as const
  ).flatMap(([spans, reducedPvc]) =>
    health({ pigments: [], oils: [], finish: { spans, reducedPvc } }),
  ),
  ...drierWarnings(
    [
      { metal: "cobalt", percentOnOil: 0.1 },
      { metal: "manganese", percentOnOil: 0.05 },
    ],
    KNOWN.tables.driers,
  ),
  ...keptPaintStatements(
    [
      { metal: "cobalt", percentOnOil: 0.04 },
      { metal: "manganese", percentOnOil: 0.04 },
    ],
    [pigment("Lamp black", "PBk 6")],
    KNOWN.tables.driers,
  ),
];

holdSentences(
  "sentences of drying",
  DRYING_RULINGS,
  statements.filter((statement) => statement !== undefined),
);
