import { statementText } from "../../lib/present/statement-text.ts";
import { describe, expect, test } from "vitest";
import { suppliersTraces } from "../../lib/hazard/label/supplier-label.ts";
import { dustiness } from "../../lib/hazard/studio/dustiness.ts";
import type { LabelElements } from "../../lib/hazard/label/label-elements.ts";
import { HAZARD_MARKETS } from "../../lib/hazard/classify/legislation.ts";
import type { Sale } from "../../lib/hazard/markets/market-statements.ts";
import type { Ingredient } from "../../lib/hazard/classify/composition.ts";
import type { StatedLabel } from "../../lib/hazard/label/stated-label.ts";
import {
  labelDifferences,
  labelElements,
  KNOWLEDGE,
  marketRulings,
  studioCautions,
  withMetals,
} from "../hazard/knowledge.ts";
import {
  STUDIO_OPERATIONS,
  type CautionStatement,
  type StudioCaution,
  type StudioPaint,
  type StudioPigment,
} from "../../lib/hazard/studio/studio-cautions.ts";
import { containedMetals } from "../../lib/hazard/studio/studio-material.ts";
import type { HazardStatement } from "../../lib/hazard/statements.ts";
import { ENGLISH } from "../../lib/words/english.ts";
import { LABEL_RULINGS } from "../../lib/words/rulings/label.ts";
import { MARKET_RULINGS } from "../../lib/words/rulings/markets.ts";
import { STUDIO_RULINGS } from "../../lib/words/rulings/studio.ts";
import { label, leadCarbonate, oil, substance, zincOxide } from "../hazard/ingredients.ts";
import { packagingStatements } from "../../lib/hazard/label/packaging.ts";
import { benchTestCaution } from "../../lib/hazard/studio/bench-test.ts";
import { holdSentences, type Stated } from "./statements-held.ts";

const unknown = (slug: string, massFraction: number): Ingredient => ({
  slug,
  name: slug,
  massFraction,
});
const titanium: Ingredient = {
  slug: "titanium-dioxide",
  name: "Titanium dioxide, rutile",
  casNumber: "13463-67-7",
  massFraction: 0.5,
  classifications: ["H351"],
};
const drier = (slug: string, casNumber: string, massFraction: number): Ingredient => ({
  slug,
  name: slug,
  casNumber,
  massFraction,
  classifications: [{ statement: "H360D", hazardClass: "Repr. 1B" }, "H317"],
});
const molybdate = (massFraction: number): Ingredient => ({
  slug: "molybdate-red",
  name: "Molybdate red",
  casNumber: "12656-85-8",
  massFraction,
  classifications: ["H350", "H373"],
});
const spirit = (massFraction: number): Ingredient =>
  substance(
    "petroleum-spirit",
    massFraction,
    "H226",
    "H304",
    { statement: "H332", route: "vapour" },
    "H336",
    "EUH066",
  );

const leadPaint = label([leadCarbonate(0.6), unknown("bismuth-vanadate", 0.12)], {
  packageMl: 40,
  publicSale: true,
});
const labels: LabelElements[] = [
  leadPaint,
  label([leadCarbonate([0.2, 0.4])], { packageMl: 200 }),
  label([leadCarbonate(1)], { form: "powder" }),
  label([drier("cobalt-drier", "136-52-7", 0.002), drier("zirconium-drier", "22464-99-9", 0.0025)]),
  label(
    [
      zincOxide(0.6),
      substance("strong-acid", 0.04, {
        statement: "H314",
        specificLimits: [{ hazardClass: "Skin Irrit. 2", from: 0.01 }],
      }),
    ],
    { packageMl: 100 },
  ),
  label([spirit(0.4)], { form: "liquid", flashPointC: 38 }),
  label([spirit(0.4)], { form: "liquid", flashPointC: 70, kinematicViscosityMm2PerS: 30 }),
  label([spirit(0.4)], { form: "liquid" }),
  label([spirit(0.995)], { form: "liquid" }),
  label([spirit(0.005)], { form: "liquid" }),
  label([spirit(0.2)]),
  label([spirit(0.2)], { form: "powder" }),
  label([molybdate(0.3)], { packageMl: 40 }),
  label([substance("nickel-yellow", 0.002, { statement: "H317", hazardClass: "Skin Sens. 1" })]),
  label([titanium, substance("resin", 0.1, "H303", "H251")]),
  label([unknown("bismuth-vanadate", 0.3)]),
  labelElements({
    ingredients: [titanium, oil(0.4)],
    form: "paste",
    frame: "EU CLP",
    publicSale: true,
  }),
];

const stated: StatedLabel = {
  frame: "UN GHS",
  signalWord: "Warning",
  pictograms: ["GHS02"],
  hazardStatements: ["H302", "H315", "H410"],
  precautionaryStatements: ["P201", "P202", "P260", "P264", "P270", "P280", "P308+P313", "P501"],
  supplemental: ["EUH066", "EUH212"],
};
const older: StatedLabel = {
  frame: "EU CLP",
  signalWord: null,
  pictograms: [],
  hazardStatements: ["H303"],
  supplemental: ["EUH212"],
  date: "2015-06-01",
};

function labelRulings({
  traces,
  leftOut,
  unknownAcuteToxicity,
  gaps,
  precautionaryStatements,
  smallPackage,
}: LabelElements): HazardStatement[] {
  return [
    ...traces,
    ...leftOut,
    ...unknownAcuteToxicity,
    ...gaps,
    ...precautionaryStatements,
    ...(smallPackage === undefined ? [] : [smallPackage]),
  ];
}

const sale: Sale = {
  ingredients: [leadCarbonate(0.5), molybdate(0.1), { ...titanium, massFraction: 0.3 }],
  form: "paste",
  hazardStatements: ["H350", "H360Df", "H302+H332"],
  publicSale: true,
  legalBasis: [{ market: "EU", basis: "Listed buildings, permit 7.", buyers: "restorers" }],
  reviewed: true,
  hasFormulaIdentifier: false,
};
const sales: Sale[] = [
  sale,
  { ...sale, form: "powder", reviewed: false },
  { ...sale, form: "powder", publicSale: false },
  {
    ...sale,
    ingredients: [
      {
        slug: "old-white",
        name: "Old white",
        massFraction: 0.5,
        classifications: "none stated",
        metals: { lead: "present" },
      },
    ],
  },
];

const pigment = (slug: string, other: Partial<StudioPigment>): StudioPigment => ({
  slug,
  name: slug,
  ingredients: [substance(slug, 1)],
  hazardStatements: [],
  ...other,
});
const studioPigments: StudioPigment[] = [
  pigment("lead-white", {
    ingredients: [leadCarbonate(1)],
    hazardStatements: ["H302", "H360Df"],
    colourIndexName: "PW 1",
    bulkDensityLooseGPerMl: [1.2, 2],
    bulkDensityTappedGPerMl: 2.4,
  }),
  pigment("lamp-black", {
    ingredients: [{ ...substance("lamp-black", 1), classifications: "none stated" }],
    colourIndexName: "PBk 6",
    bulkDensityLooseGPerMl: [0.1, 0.25],
    particleSizeUm: 0.1,
  }),
  pigment("madder-lake", {
    ingredients: [unknown("madder-lake", 1)],
    colourIndexName: "NR 8",
    bulkDensityTappedGPerMl: 0.9,
    hazardStatements: ["H315", "H319"],
  }),
  pigment("nobody-knows", {
    ingredients: [substance("nobody-knows", 1, "H317")],
    hazardStatements: ["H317"],
  }),
  pigment("yellow-ochre", {
    ingredients: [{ ...substance("yellow-ochre", 1), classifications: "none stated" }],
    colourIndexName: "PY 43",
  }),
  pigment("prussian-blue", {
    ingredients: [{ ...substance("prussian-blue", 1), classifications: "none stated" }],
    colourIndexName: "PB 27",
    givesOff: { gas: "hydrogen cyanide", release: "strong heat or strong acid" },
  }),
  pigment("cadmium-red", {
    ingredients: [{ ...substance("cadmium-red", 1), classifications: "none stated" }],
    givesOff: { gas: "hydrogen sulphide and hydrogen selenide", release: "strong acid" },
  }),
  pigment("lithopone", {
    ingredients: [{ ...substance("lithopone", 1), classifications: "none stated" }],
    givesOff: { gas: "hydrogen sulphide", release: "any acid" },
  }),
];
const paints: StudioPaint[] = [
  {
    ingredients: [leadCarbonate(0.6), oil(0.4)],
    hazardStatements: ["H302", "H360Df", "H318", "H226", "H332"],
    ofDust: [],
    sensitisers: [],
    dryingOil: true,
  },
  {
    ingredients: [oil(1)],
    hazardStatements: [],
    ofDust: [],
    sensitisers: ["cobalt drier"],
    dryingOil: true,
  },
  {
    ingredients: [unknown("bismuth-vanadate", 0.5), oil(0.5)],
    hazardStatements: [],
    ofDust: [],
    sensitisers: [],
    dryingOil: false,
  },
];
const cautions = paints.flatMap((paint) => studioCautions(studioPigments, paint));
/** Each of its own kind, and why it is called for. */
const withReasons = (told: readonly StudioCaution[]) => [
  ...(told as readonly CautionStatement[]),
  ...told.map(({ reason }) => reason),
];

const rulings: Stated<HazardStatement>[] = [
  ...labels.flatMap(labelRulings),
  ...labelDifferences(stated, leadPaint),
  ...labelDifferences(older, leadPaint),
  ...sales.flatMap((each) => HAZARD_MARKETS.flatMap((market) => marketRulings(each, market))),
  ...suppliersTraces(label([zincOxide(1)], { form: "powder" }).traces, "zinc-oxide"),
  ...containedMetals(
    [
      {
        slug: "cadmium-red",
        name: "Cadmium red",
        colourIndexName: "PR 108",
        massFraction: 0.5,
        classifications: "none stated" as const,
      },
    ].map(withMetals),
    [],
    KNOWLEDGE.metals,
  ),
  ...withReasons(cautions),
  ...withReasons(
    studioCautions(
      [
        {
          slug: "ochre",
          name: "Yellow ochre",
          colourIndexName: "PY 43",
          ingredients: [substance("ochre", 1)],
          hazardStatements: [],
        },
      ],
      { ingredients: [oil(1)], hazardStatements: [], ofDust: [], sensitisers: [], dryingOil: true },
    ),
  ),
  ...withReasons(
    studioCautions([pigment("mars-yellow", { colourIndexName: "PY 42" })], {
      ingredients: [oil(1)],
      hazardStatements: [],
      ofDust: [],
      sensitisers: [],
      dryingOil: true,
    }),
  ),
  ...studioCautions([pigment("slate", { hazardStatements: ["H373"] })], {
    ingredients: [oil(1)],
    hazardStatements: [],
    ofDust: ["H372"],
    sensitisers: [],
    dryingOil: true,
  }).map(({ reason }) => reason),
  ...marketRulings(
    {
      ingredients: [{ ...substance("cadmium-red", 0.5), colourIndexName: "PR 108" }],
      form: "paste",
      hazardStatements: [],
      publicSale: true,
      legalBasis: [],
      reviewed: false,
      hasFormulaIdentifier: false,
    },
    "EU",
  ),
  ...benchTestCaution(["heat", "acid", "lye", "peroxide", "solvent"]),
  ...packagingStatements([
    { hazardClass: "Asp. Tox. 1" },
    { hazardClass: "Flam. Liq. 2" },
    { hazardClass: "Acute Tox. 2", route: "dermal" },
  ]),
  ...label([substance("mystery", 0.2, "H999")]).gaps,
];

holdSentences<HazardStatement>(
  "sentences of hazards",
  { ...LABEL_RULINGS, ...STUDIO_RULINGS, ...MARKET_RULINGS },
  rulings,
);

describe("words of hazards", () => {
  test("every operation of the studio has its heading", () => {
    expect(Object.keys(ENGLISH.operations)).toEqual([...STUDIO_OPERATIONS]);
  });

  test("what is not known is to be treated as hazardous, never as no hazard", () => {
    const unknown = ["no-hazard-data", "hazard-data-missing", "total-short-of-the-whole"];
    const gaps = rulings.filter(
      (one): one is HazardStatement =>
        one !== undefined && "rule" in one && unknown.includes(one.rule),
    );
    expect(new Set(gaps.map(({ rule }) => rule)).size).toBe(3);
    for (const { rule, values } of gaps)
      expect(statementText({ rule, values }, ENGLISH)).toMatch(/; treat (it )?as hazardous\./);
    expect(dustiness({})).toBeUndefined();
    expect(statementText({ rule: "dustiness", values: { class: "not known" } }, ENGLISH)).toBe(
      "How dusty the powder is has not been recorded; treat it as very dusty.",
    );
  });

  test("oily rags: never in a bin or a heap", () => {
    expect(statementText({ rule: "oily-rags", values: {} }, ENGLISH)).toMatch(
      /can catch fire by themselves: .*closed metal can.*never in a bin or a heap\.$/,
    );
  });
});
