import { describe } from "vitest";
import { SMALLEST_WORKSHOP } from "../support/content-folder.ts";
import { checkTold } from "./told.ts";

/** What cannot be a pigment's or a paint's, each told at its line with the nearest right form. Reaches and handbook ranges: memory (lib/formulation/plausibility.ts). */
const COLOUR = "colours/lamp-black.md";
const PIGMENT = "pigments/lamp-black.yaml";
const COLOUR_LINE = "content/colours/lamp-black.md";
const PIGMENT_LINE = "content/pigments/lamp-black.yaml";
const colourWith = (...lines: string[]): string =>
  SMALLEST_WORKSHOP[COLOUR].replace("\n---\nNotes", `\n${lines.join("\n")}\n---\nNotes`);
const pigmentWith = (...lines: string[]): string => ["name: Lamp black", ...lines, ""].join("\n");
const parts = (...given: number[]): Record<string, string> => ({
  [COLOUR]: SMALLEST_WORKSHOP[COLOUR].replace(
    "\n  - { pigment: lamp-black }",
    given
      .map(
        (part, i) =>
          `\n  - { pigment: ${["lamp-black", "bone-black", "umber"][i] ?? ""}, parts: ${part} }`,
      )
      .join(""),
  ),
  "pigments/bone-black.yaml": "name: Bone black\n",
  ...(given.length > 2 ? { "pigments/umber.yaml": "name: Umber\n" } : {}),
});

describe("figures of a pigment", () => {
  checkTold([
    {
      what: "a density in kg/m3: beyond any pigment's reach",
      files: { [PIGMENT]: pigmentWith("densityGPerCm3: 1800") },
      told: `${PIGMENT_LINE}:2:17 error The density of a pigment is 1800 g/cm3, beyond all that occurs, 0.9 to 20 g/cm3; 1.8 g/cm3 if it was given in kg/m3 formulation/density-reach (memory-formulation)`,
    },
    {
      what: "a density that few pigments have",
      files: { [PIGMENT]: pigmentWith("densityGPerCm3: 11") },
      told: `${PIGMENT_LINE}:2:17 warning The density of a pigment is 11 g/cm3, outside the usual, 1.2 to 9.5 g/cm3 formulation/density-reach (memory-formulation)`,
    },
    {
      what: "a density at the edge of the reach",
      files: { [PIGMENT]: pigmentWith("densityGPerCm3: 9.5") },
      told: [],
    },
    {
      what: "a density that another pigment has, not this one",
      files: {
        [PIGMENT]: pigmentWith(
          "colourIndexName: PBk 6",
          "densityGPerCm3: { value: 4.7, method: pycnometer }",
        ),
      },
      told: `${PIGMENT_LINE}:3:26 warning The density of PBk 6 is 4.7 g/cm3 here, and about 1.7 to 1.8 g/cm3 in handbooks formulation/density-against-handbook (memory-formulation)`,
    },
    {
      what: "an oil absorption in grams to a gram",
      files: { [PIGMENT]: pigmentWith("oilAbsorptionGPer100g: 0.72") },
      told: `${PIGMENT_LINE}:2:24 error The oil absorption is 0.72 g/100 g, beyond all that occurs, 3 to 500 g/100 g; 72 g/100 g if it was given in g/g formulation/oil-absorption-reach (memory-formulation)`,
    },
    {
      what: "an oil absorption far beyond the handbook's",
      files: { [PIGMENT]: pigmentWith("colourIndexName: PBk 11", "oilAbsorptionGPer100g: 72") },
      told: `${PIGMENT_LINE}:3:24 warning The oil absorption of PBk 11 is 72 g/100 g here, and about 15 to 30 g/100 g in handbooks formulation/oil-absorption-against-handbook (memory-formulation)`,
    },
    {
      what: "one end of an estimate out of reach",
      files: { [PIGMENT]: pigmentWith("oilAbsorptionGPer100g: { value: [50, 900] }") },
      told: `${PIGMENT_LINE}:2:38 error The oil absorption is 900 g/100 g, beyond all that occurs, 3 to 500 g/100 g; 90 g/100 g if it was given in g/kg formulation/oil-absorption-reach (memory-formulation)`,
    },
    {
      what: "a bulk density in g/l",
      files: { [PIGMENT]: pigmentWith("bulkDensityLooseGPerMl: 160") },
      told: `${PIGMENT_LINE}:2:25 error The bulk density is 160 g/ml, beyond all that occurs, 0.01 to 12 g/ml; 0.16 g/ml if it was given in g/l formulation/bulk-density-reach (memory-formulation)`,
    },
    {
      what: "powder that is lighter tapped than poured",
      files: {
        [PIGMENT]: pigmentWith("bulkDensityLooseGPerMl: 0.3", "bulkDensityTappedGPerMl: 0.2"),
      },
      told: `${PIGMENT_LINE}:2:25 error The loose bulk density is 0.3 g/ml, and must be at most the tapped one, 0.2 g/ml formulation/bulk-density-order`,
    },
    {
      what: "powder that is denser than its grain",
      files: { [PIGMENT]: pigmentWith("densityGPerCm3: 1.8", "bulkDensityTappedGPerMl: 1.9") },
      told: `${PIGMENT_LINE}:3:26 error The bulk density is 1.9 g/ml, and must be below the density of the grain, 1.8 g/cm3 formulation/bulk-density-order`,
    },
    {
      what: "an origin that is another black's",
      files: {
        [PIGMENT]: pigmentWith(
          "colourIndexName: PBk 6",
          "origin: Made from natural gas in a furnace.",
        ),
      },
      told: `${PIGMENT_LINE}:3:9 warning The origin of PBk 6, which is lamp black, speaks of carbon black; carbon black is PBk 7 formulation/origin-and-name (memory-formulation)`,
    },
    {
      what: "an origin that agrees with the name",
      files: {
        [PIGMENT]: pigmentWith(
          "colourIndexName: PBk 7",
          "origin: Made from natural gas in a furnace.",
        ),
      },
      told: [],
    },
  ]);
});

describe("a lightfastness on the wrong scale", () => {
  checkTold([
    {
      what: "a blue wool reference for a category",
      files: { [PIGMENT]: pigmentWith(`lightfastness: { category: "8" }`) },
      told: `${PIGMENT_LINE}:2:28 error lightfastness.category can't be "8": it takes I, II, III, IV or V; if it is blue wool 8, give it as blueWool; customarily set beside category I records/schema`,
    },
    {
      what: "the same as a number",
      files: { [PIGMENT]: pigmentWith("lightfastness: { category: 6 }") },
      told: `${PIGMENT_LINE}:2:28 error lightfastness.category can't be 6: it takes I, II, III, IV or V; if it is blue wool 6, give it as blueWool; customarily set beside category II records/schema`,
    },
    {
      what: "a category for a blue wool reference",
      files: { [PIGMENT]: pigmentWith("lightfastness: { blueWool: I }") },
      told: `${PIGMENT_LINE}:2:28 error lightfastness.blueWool can't be "I": it takes a number; I is a category: give it as category records/schema`,
    },
    {
      what: "a category in other words",
      files: { [COLOUR]: colourWith("lightfastness: { category: LF II }") },
      told: `${COLOUR_LINE}:6:28 error lightfastness.category can't be "LF II": it takes I, II, III, IV or V; write II records/schema`,
    },
    {
      what: "a grey-scale grade for a category",
      files: { [COLOUR]: colourWith("lightfastness: { category: 4-5 }") },
      told: `${COLOUR_LINE}:6:28 error lightfastness.category can't be "4-5": it takes I, II, III, IV or V; 4-5 is a grey-scale grade: it tells a change, not a lightfastness records/schema`,
    },
  ]);
});

describe("a paint and its trials", () => {
  checkTold([
    {
      what: "percentages that make no hundred",
      files: parts(60, 35),
      told: `${COLOUR_LINE}:4:3 warning The parts add up to 95, not to 100; they are taken in proportion formulation/parts-sum`,
    },
    {
      what: "fractions that make no whole",
      files: parts(0.6, 0.3),
      told: `${COLOUR_LINE}:4:3 warning The parts add up to 0.9, not to 1; they are taken in proportion formulation/parts-sum`,
    },
    { what: "thirds, written as far as they go", files: parts(33.3, 33.3, 33.3), told: [] },
    { what: "free parts", files: parts(2, 1), told: [] },
    {
      what: "an oil index in grams to a gram",
      files: { [COLOUR]: colourWith("oilIndexGPer100g: { value: 0.99, standing: measured }") },
      told: `${COLOUR_LINE}:6:28 error The oil index is 0.99 g/100 g, beyond all that occurs, 5 to 600 g/100 g; 99 g/100 g if it was given in g/g formulation/oil-index-reach (memory-formulation)`,
    },
    {
      what: "a trial without its film and room",
      files: { [COLOUR]: colourWith("dryingTrials:", "  - { touchDryDays: 6 }") },
      told: [
        `${COLOUR_LINE}:7:5 warning A drying trial tells days without its film thickness: they mean little without film thickness and temperature drying/trial-conditions`,
        `${COLOUR_LINE}:7:5 warning A drying trial tells days without its temperature: they mean little without film thickness and temperature drying/trial-conditions`,
      ],
    },
    {
      what: "a film in metres",
      files: {
        [COLOUR]: colourWith(
          "dryingTrials:",
          "  - { touchDryDays: 6, filmThicknessUm: 0.000075, temperatureC: 20 }",
        ),
      },
      told: `${COLOUR_LINE}:7:41 error The film thickness of a drying trial is 0.000075 um, and lies between 5 and 1000 um drying/trial-reach`,
    },
    {
      what: "a room that nobody paints in",
      files: {
        [COLOUR]: colourWith(
          "dryingTrials:",
          "  - { touchDryDays: 6, filmThicknessUm: 75, temperatureC: 41 }",
        ),
      },
      told: `${COLOUR_LINE}:7:59 error The temperature of a drying trial is 41 degrees C, and lies between 5 and 40 degrees C drying/trial-reach`,
    },
    {
      what: "days that were hours",
      files: {
        [COLOUR]: colourWith(
          "dryingTrials:",
          "  - { touchDryDays: 144, filmThicknessUm: 75, temperatureC: 20 }",
        ),
      },
      told: `${COLOUR_LINE}:7:21 warning 144 days to touch dry are more than the 120 that a trial takes; 6 days if it was given in hours drying/trial-days`,
    },
    {
      what: "through dry before touch dry",
      files: {
        [COLOUR]: colourWith(
          "dryingTrials:",
          "  - { touchDryDays: 6, throughDryDays: 4, filmThicknessUm: 75, temperatureC: 20 }",
        ),
      },
      told: `${COLOUR_LINE}:7:40 error 4 days to through dry are fewer than the 6 days to touch dry drying/trial-order`,
    },
    {
      what: "a drier of which the soap was taken for the metal",
      files: {
        "vehicles/drier.yaml":
          "name: Cobalt drier\nkind: drier\nmetals: [{ metal: cobalt, percent: 12 }]\n",
        [COLOUR]: colourWith("additions:", "  - { vehicle: drier, percentOfOil: 20 }"),
      },
      told: `${COLOUR_LINE}:7:37 error The drier's cobalt comes to 2.4 % of the oil, and more than 0.6 % of it does not occur; the record of the drier gives the metal in it, percentOfOil the drier on the oil drying/drier-reach (memory-drying)`,
    },
    {
      what: "an addition named twice",
      files: {
        "vehicles/poppy.yaml": "name: Poppy oil\nkind: oil\noil: poppy\n",
        [COLOUR]: colourWith(
          "additions:",
          "  - { vehicle: poppy, percentOfOil: 5 }",
          "  - { vehicle: poppy, percentOfOil: 5 }",
        ),
      },
      told: `${COLOUR_LINE}:8:16 error poppy is added twice records/duplicate`,
    },
  ]);
});
