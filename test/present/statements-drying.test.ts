import { drierWarnings, type DrierMetal } from "../../lib/drying/added-drier.ts";
import { dryingClassRuling } from "../../lib/drying/drying-class.ts";
import { dryingEstimate, type DryingQuestion } from "../../lib/drying/drying-estimate.ts";
import { daysOfParts } from "../../lib/drying/days-of-parts.ts";
import { noteStatements, THROUGH_DRY } from "../../lib/drying/drying-notes.ts";
import { dryingTrialRuling, trialContradiction } from "../../lib/drying/drying-trial.ts";
import { fatnessRuling } from "../../lib/drying/oil-richness.ts";
import {
  DRYING_REASONS,
  FILM_HEALTH,
  LAYERING_REASONS,
  type DryingFacts,
} from "../../lib/drying/drying-rules.ts";
import { said, type SaidBy } from "../../lib/quantities/statement.ts";
import { groundStatements } from "../../lib/drying/layering-advice.ts";
import { keptPaintStatements } from "../../lib/drying/kept-in-the-tube.ts";
import { layeringLine } from "../../lib/drying/layering-line.ts";
import { MEDIUM_CHANGES, mediumStatements } from "../../lib/drying/medium-in-paint.ts";
import type { DryingStatement } from "../../lib/drying/statements.ts";
import { wetFilmStatements, type WetFilm } from "../../lib/drying/wet-film.ts";
import { DRYING_RULINGS } from "../../lib/words/rulings/drying.ts";
import { chemistryOf, dryingFacts, KNOWN } from "../support/known.ts";
import { casesOf, holdSentences, type Stated } from "./statements-held.ts";

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
  const { dryingNotes: notes } = KNOWN.pigment(colourIndexName);
  return { name, notes, massFraction, ...chemistryOf(colourIndexName) };
};
const health = (of: Partial<DryingFacts>): SaidBy<typeof FILM_HEALTH>[] =>
  said(FILM_HEALTH, dryingFacts(of));
const fatness = (oil: number | readonly [number, number]) => fatnessRuling(oil).reason;
/** What is said of one pigment in linseed oil, after where the days begin and the oil. */
const reasonOf = (one: ReturnType<typeof pigment>): DryingStatement | undefined =>
  reasons({ pigments: [one], oils: linseed })[2];
/** What is said of a paint that is kept with some driers in it, .04 % of each. */
const kept = (metals: readonly DrierMetal[], one: ReturnType<typeof pigment>) =>
  keptPaintStatements(
    metals.map((metal) => ({ metal, percentOnOil: 0.04 })),
    [one],
    KNOWN.tables.driers,
  )[0];
/** Of a film of 75 um at 20 degrees C beside a record that says dry in 6 days. */
const wetFilm = (of: Partial<WetFilm>, recorded: object = {}): DryingStatement | undefined =>
  wetFilmStatements({ found: "tacky", day: 7, filmThicknessUm: 75, temperatureC: 20, ...of }, [
    { touchDryDays: [5, 6], filmThicknessUm: 75, temperatureC: 20, ...recorded },
  ])[0];
const umber = dryingEstimate(
  { pigments: [pigment("Raw umber", "PBr 7")], oils: linseed },
  KNOWN.tables,
);

const statements: Stated<DryingStatement>[] = [
  ...[DRYING_REASONS, LAYERING_REASONS, FILM_HEALTH].flatMap((rules) =>
    casesOf<DryingFacts, DryingStatement>(rules, dryingFacts),
  ),
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
  // A film that is tacky on a day was not dry before it; as thick by a third and as warm by 3 degrees, our own choice.
  {
    when: "film-wet-beyond-record",
    said: [
      wetFilm({}),
      wetFilm({ found: "wet", day: 10 }),
      wetFilm({ filmThicknessUm: 100, temperatureC: 23 }),
    ],
    unsaid: [
      wetFilm({ day: 6 }),
      wetFilm({ filmThicknessUm: 101 }),
      wetFilm({ temperatureC: 23.1 }),
      wetFilm({ temperatureC: undefined }),
      wetFilm({}, { filmThicknessUm: undefined }),
    ],
  },
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
  // practice-drying: lean to 56 % of oil by volume, fat above 68 %, an estimate by its middle.
  {
    when: "lean-film",
    said: [fatness(0.5), fatness(0.56)],
    unsaid: [fatness(0.561)],
  },
  {
    when: "medium-fat-film",
    said: [fatness(0.561), fatness([0.55, 0.65]), fatness(0.68)],
    unsaid: [fatness(0.56), fatness(0.681)],
  },
  { when: "fat-film", said: [fatness(0.681), fatness(0.72)], unsaid: [fatness(0.68)] },
  {
    when: "fatness-not-told",
    said: [fatness([0.56, 0.681])],
    unsaid: [fatness([0.561, 0.9]), fatness([0.1, 0.68])],
  },
  ...(["fast", "medium", "slow"] as const).flatMap((dryingClass) =>
    (["lean", "fat"] as const).map((fatness) => layeringLine(dryingClass, fatness, 0)),
  ),
  layeringLine("slow", "lean", 0.4),
  layeringLine("medium", "lean", 0, true),
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
  // practice-drying: a fine carbon takes up what dries from the surface, and calcium in its place; 2 % of the pigment are enough.
  {
    when: "drier-is-lost-in-the-tube",
    said: [
      kept(["cobalt", "manganese"], pigment("Lamp black", "PBk 6")),
      kept(["cobalt"], pigment("Lamp black", "PBk 6", 0.02)),
    ],
    unsaid: [
      kept(["cobalt"], pigment("Lamp black", "PBk 6", 0.019)),
      kept(["cobalt", "calcium"], pigment("Lamp black", "PBk 6")),
      kept(["zirconium"], pigment("Lamp black", "PBk 6")),
      kept(["cobalt"], pigment("Titanium dioxide, rutile", "PW 6")),
    ],
  },
  // Of an earth that the record calls neither umber nor sienna, nobody knows which days are right.
  {
    when: "brown-earth-not-told",
    said: [reasonOf(pigment("Brown earth", "PBr 7"))],
    unsaid: [reasonOf(pigment("Ultramarine", "PB 29"))],
  },
  {
    when: "pigment-takes-no-part-in-drying",
    said: [reasonOf(pigment("Ultramarine", "PB 29"))],
    unsaid: [reasonOf(pigment("Titanium dioxide, rutile", "PW 6", undefined, true))],
  },
  {
    when: "white-takes-no-part-in-drying",
    said: [reasonOf(pigment("Chalk", "PW 18", undefined, true))],
    unsaid: [reasonOf(pigment("Titanium dioxide, rutile", "PW 6", undefined, true))],
  },
  {
    when: "white-slows-drying",
    said: [reasonOf(pigment("Titanium dioxide, rutile", "PW 6", undefined, true))],
    unsaid: [reasonOf(pigment("Chalk", "PW 18", undefined, true))],
  },
  // Basic lead carbonate and Prussian blue dry fast in any handbook, a lamp black slowly.
  {
    when: "white-speeds-drying",
    said: [reasonOf(pigment("Lead white", "PW 1", undefined, true))],
    unsaid: [reasonOf(pigment("Prussian Blue", "PB 27"))],
  },
  {
    when: "pigment-speeds-drying",
    said: [reasonOf(pigment("Prussian Blue", "PB 27"))],
    unsaid: [reasonOf(pigment("Lamp black", "PBk 6"))],
  },
  {
    when: "pigment-slows-drying",
    said: [reasonOf(pigment("Lamp black", "PBk 6"))],
    unsaid: [reasonOf(pigment("Prussian Blue", "PB 27"))],
  },
];

holdSentences("sentences of drying", DRYING_RULINGS, statements);
