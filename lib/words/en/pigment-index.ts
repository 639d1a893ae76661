import { upperFirst } from "../letter-case.ts";
import type { DryingEffect } from "../../drying/chemistry-drying.ts";
import type { ExpectedLightfastnessRow } from "../../permanence/expected-lightfastness.ts";
import type { PigmentNature } from "../../hazard/studio/pigment-nature.ts";

const EFFECTS: Readonly<Record<DryingEffect, string>> = {
  drier: "speeds drying",
  neutral: "takes no part in drying",
  retarder: "slows drying",
};
const DUST: Readonly<Record<PigmentNature, string>> = {
  "fine carbon": "fine carbon, which can burn",
  organic: "organic, which can burn",
  mineral: "mineral, which does not burn",
};

/** The page of pigments: the workshop's own, then what the engine knows of every Colour Index name. */
export const PIGMENT_INDEX = {
  lead: "What the colours are made from, and what we know of every Colour Index name used in artists' oil colours.",
  known:
    "Open a name for its chemistry, density, oil absorption, drying, light, opacity and what harms it. Most of it is recalled from handbooks, so it is a wide range or a class: plan by it, promise nothing by it. Our own figures are on the page of each pigment.",
  knownHeading: (count: number) => `Known by Colour Index name (${count})`,
  summary: (name: string, called: string | undefined, isOwn: boolean) =>
    [name, called, isOwn ? "one of ours" : undefined]
      .filter((part) => part !== undefined)
      .join(" \u00b7 "),
  nothing: "We know no more than its name.",
  notStated: (names: readonly string[]) => `Not stated: ${names.join(", ")}.`,
  facts: {
    alsoCalled: "Also called",
    chemistry: "Chemistry",
    metals: "Metals",
    mineral: "As a mineral",
    year: "Introduced",
    density: "Density",
    oilAbsorption: "Oil absorption",
    drying: "Drying",
    lightfastness: "Lightfastness",
    opacity: "Opacity",
    sensitivities: "Harmed by",
    dust: "Dust",
  },
  /** What is not stated, within a sentence. */
  missing: {
    chemistry: "chemistry",
    year: "year of introduction",
    density: "density",
    oilAbsorption: "oil absorption",
    drying: "drying",
    lightfastness: "lightfastness",
    opacity: "opacity",
    dust: "dust",
  },
  drying: (chemistry: string, effect: DryingEffect, days: string) =>
    `counts as ${chemistry} and ${EFFECTS[effect]}: alone in linseed oil touch dry in ${days}`,
  light: ({ masstone, tint }: Pick<ExpectedLightfastnessRow, "masstone" | "tint">) =>
    masstone === tint
      ? `expected ${masstone}, in masstone and in tints`
      : `expected ${masstone} in masstone, ${tint} in tints`,
  dust: (nature: PigmentNature) => DUST[nature],
  sourced: (text: string, sources: string) => `${upperFirst(text)} (${sources}).`,
  /** A row of a text that was recalled, and of nothing but memory. */
  recalled: (source: string) => `${source}, from memory`,
  memory: "from memory",
  workedOut: (source: string) => `worked out from ${source}`,
} as const;
