import { describe, expect, test } from "vitest";
import type { Ingredient } from "../../lib/hazard/classify/composition.ts";
import { containedMetals } from "../../lib/hazard/studio/studio-material.ts";
import type { PaintForm } from "../../lib/hazard/classify/frame.ts";
import { KNOWLEDGE, studioCautions, withMetals, labelElements } from "./knowledge.ts";

/**
 * Records that can hurt somebody, each as a dry pigment (or a paste, or a liquid) and
 * worked by hand: label from the limits of CLP Annex I (02008R1272-20260701), metals
 * from the Colour Index (memory), studio cautions from common practice (no source).
 */
interface Awkward {
  readonly what: string;
  readonly of: Omit<Ingredient, "slug" | "massFraction" | "name">;
  readonly share?: number;
  readonly form?: PaintForm;
  readonly percentQuartz?: number;
  /** Hazard statements of the label. */
  readonly label?: readonly string[];
  /** Metals that the label names by itself. */
  readonly contains?: readonly string[];
  readonly mask: "p3" | "ffp2" | "none";
  readonly heat: "never" | "with exhaust";
  readonly unborn: boolean;
}

const NONE = "none stated";
/** A pigment whose supplier states no hazard. */
const unstated = (colourIndexName: string): Awkward["of"] => ({
  colourIndexName,
  classifications: NONE,
});

/** What the studio is told of what harms the unborn too; of dust alone; of fumes; of neither; of what does not dust. */
const GRAVE = { mask: "p3", heat: "never", unborn: true } as const;
const DUST = { mask: "p3", heat: "with exhaust", unborn: false } as const;
const FUME = { mask: "p3", heat: "never", unborn: false } as const;
const PLAIN = { mask: "ffp2", heat: "with exhaust", unborn: false } as const;
const WET = { mask: "none", heat: "with exhaust", unborn: false } as const;

const RECORDS: readonly Awkward[] = [
  // Metals in pigments whose supplier states nothing: the metal speaks.
  { what: "vermilion", of: unstated("PR 106"), contains: ["mercury"], ...GRAVE },
  { what: "a red named vermilion that holds no mercury", of: unstated("PR 254"), ...PLAIN },
  {
    what: "mercury cadmium red, two metals",
    of: unstated("PR 113"),
    contains: ["cadmium", "mercury"],
    ...GRAVE,
  },
  {
    what: "the same with a suffix",
    of: unstated("PR 113:1"),
    contains: ["cadmium", "mercury"],
    ...GRAVE,
  },
  { what: "cadmium red", of: unstated("PR 108"), contains: ["cadmium"], ...GRAVE },
  {
    what: "cadmium red let down with barium sulphate, PR 108:1",
    of: unstated("PR 108:1"),
    contains: ["cadmium"],
    ...GRAVE,
  },
  { what: "cadmium orange", of: unstated("PO 20"), contains: ["cadmium"], ...GRAVE },
  { what: "cobalt violet, the phosphate", of: unstated("PV 14"), contains: ["cobalt"], ...DUST },
  {
    what: "cobalt violet, the arsenate, told by its CAS number",
    of: { colourIndexName: "PV 14", casNumber: "24719-19-5", classifications: ["H300", "H350"] },
    label: ["H300", "H350"],
    ...GRAVE,
  },
  { what: "cobalt blue", of: unstated("PB 28"), contains: ["cobalt"], ...DUST },
  { what: "nickel titanate", of: unstated("PY 53"), contains: ["nickel", "antimony"], ...FUME },
  { what: "nickel barium titanate", of: unstated("PY 157"), contains: ["nickel"], ...DUST },
  { what: "nickel azo yellow", of: unstated("PY 150"), contains: ["nickel"], ...DUST },
  { what: "chrome antimony titanate", of: unstated("PBr 24"), contains: ["antimony"], ...FUME },
  { what: "manganese blue", of: unstated("PB 33"), contains: ["barium", "manganese"], ...DUST },
  {
    what: "malachite",
    of: unstated("PG 20"),
    contains: ["copper"],
    mask: "ffp2",
    heat: "never",
    unborn: false,
  },
  { what: "phthalocyanine blue: its copper is bound", of: unstated("PB 15:3"), ...PLAIN },
  { what: "barium sulphate: no soluble barium", of: unstated("PW 21"), ...PLAIN },
  // Suppliers' statements, and metals beside them.
  {
    what: "orpiment",
    of: { colourIndexName: "PY 39", classifications: ["H301", "H331", "H400", "H410"] },
    label: ["H301", "H331", "H410"],
    ...GRAVE,
  },
  {
    what: "emerald green",
    of: { colourIndexName: "PG 21", classifications: ["H301", "H331", "H350", "H410"] },
    label: ["H301", "H331", "H350", "H410"],
    ...GRAVE,
  },
  {
    what: "a paste of 2 % emerald green: 100/5000 of the oral limit is left, the carcinogen stays",
    of: { colourIndexName: "PG 21", classifications: ["H301", "H350"] },
    share: 0.02,
    form: "paste",
    label: ["H350"],
    mask: "none",
    heat: "never",
    unborn: true,
  },
  {
    what: "chrome yellow",
    of: { colourIndexName: "PY 34", classifications: ["H350", "H360Df", "H373", "H410"] },
    label: ["H350", "H360Df", "H373", "H410"],
    ...GRAVE,
  },
  {
    what: "barium yellow",
    of: { colourIndexName: "PY 31", classifications: ["H302", "H332", "H350i", "H317"] },
    label: ["H302", "H317", "H332", "H350i"],
    ...GRAVE,
  },
  {
    what: "zinc chromate",
    of: { colourIndexName: "PY 36", classifications: ["H302", "H317", "H350", "H410"] },
    label: ["H302", "H317", "H350", "H410"],
    ...GRAVE,
  },
  {
    what: "spirit: 39 degrees C, thin enough to be drawn into the lungs",
    of: { classifications: ["H226", "H304", "H336"] },
    form: "liquid",
    label: ["H226", "H304", "H336"],
    ...WET,
  },
  {
    what: "drier: cobalt soap, 17 % of it metal",
    of: { casNumber: "136-52-7", classifications: ["H317", "H319", "H360D", "H412"] },
    form: "liquid",
    label: ["H317", "H319", "H360D", "H412"],
    mask: "none",
    heat: "with exhaust",
    unborn: true,
  },
  // What only the earth tells.
  { what: "yellow ochre", of: unstated("PY 43"), ...DUST },
  {
    what: "yellow ochre whose paper states no respirable quartz",
    of: unstated("PY 43"),
    percentQuartz: 0,
    ...PLAIN,
  },
  { what: "synthetic red oxide", of: unstated("PR 101"), ...PLAIN },
  { what: "a filler of quartz, PW 27", of: unstated("PW 27"), ...DUST },
  // New classes (Regulation (EU) 2023/707): ED 1 from .1 %, ED 2 from 1 %.
  {
    what: "an endocrine disrupter of category 1 at .1 %",
    of: { classifications: ["EUH380"] },
    share: 0.001,
    form: "paste",
    label: ["EUH380"],
    mask: "none",
    heat: "with exhaust",
    unborn: true,
  },
  {
    what: "the same at .09 %",
    of: { classifications: ["EUH380"] },
    share: 0.0009,
    form: "paste",
    ...WET,
  },
  {
    what: "category 2 at .9 %",
    of: { classifications: ["EUH381"] },
    share: 0.009,
    form: "paste",
    ...WET,
  },
  {
    what: "a PMT substance at .1 %",
    of: { classifications: ["EUH450"] },
    share: 0.001,
    form: "paste",
    label: ["EUH450"],
    ...WET,
  },
  // Nothing known.
  {
    what: "a pigment of which nobody has said anything",
    of: { colourIndexName: "PR 254" },
    ...FUME,
  },
  {
    what: "a supplier's code that no list knows",
    of: { colourIndexName: "PR 254", classifications: ["H999"] },
    label: [],
    mask: "p3",
    heat: "never",
    unborn: false,
  },
];

describe("awkward records, worked by hand", () => {
  test("there are at least 25", () => expect(RECORDS.length).toBeGreaterThan(24));

  test.each(RECORDS)("$what", (record) => {
    const { of, share = 1, form = "powder", percentQuartz } = record;
    const one = withMetals({ slug: "it", name: "it", massFraction: share, ...of });
    const ingredients =
      share < 1
        ? [
            one,
            { slug: "oil", name: "oil", massFraction: 1 - share, classifications: NONE } as const,
          ]
        : [one];
    const found = labelElements({
      ingredients,
      form,
      frame: "EU CLP",
      publicSale: false,
      ...(form === "liquid"
        ? {
            flashPointC: of.classifications?.includes("H226") === true ? 39 : 70,
            kinematicViscosityMm2PerS: 1.4,
          }
        : {}),
    });
    expect([...found.hazardStatements].sort()).toEqual([...(record.label ?? [])].sort());
    expect(
      containedMetals(ingredients, found.hazardStatements, KNOWLEDGE.metals)
        .flatMap(({ values }) => values.metals)
        .toSorted(),
    ).toEqual([...(record.contains ?? [])].sort());

    const cautions = studioCautions(
      form === "powder"
        ? [
            {
              slug: "it",
              name: "it",
              colourIndexName: of.colourIndexName,
              ingredients,
              hazardStatements: found.hazardStatements,
              respirableQuartzPercent: percentQuartz,
            },
          ]
        : [],
      {
        ingredients,
        hazardStatements: found.hazardStatements,
        ofDust: [],
        sensitisers: [],
        dryingOil: false,
      },
    ).map(({ rule }) => rule);
    const mask = cautions.includes("respirator-p3")
      ? "p3"
      : cautions.includes("respirator-ffp2")
        ? "ffp2"
        : "none";
    expect(mask).toBe(record.mask);
    expect(cautions.includes("no-spraying-no-heating")).toBe(record.heat === "never");
    expect(cautions.includes("pregnant-or-nursing-keep-away")).toBe(record.unborn);
  });

  test("what is not known is told as a gap, and never as no hazard", () => {
    const gaps = (classifications?: readonly string[]): string[] =>
      labelElements({
        ingredients: [{ slug: "a", name: "a", massFraction: 1, classifications }],
        form: "powder",
        frame: "EU CLP",
        publicSale: false,
      }).gaps.map(({ rule }) => rule);
    expect(gaps()).toEqual(["no-hazard-data"]);
    expect(gaps(["H999"])).toEqual(["statement-not-known"]);
  });
});
