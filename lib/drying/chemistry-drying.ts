/** What a pigment's chemistry does to the drying of linseed oil: the rows of `chemistry-drying.csv`. */
import type { Interval } from "../quantities/interval.ts";
import type { SourceKey } from "../sources/source.ts";

/** What a pigment is, as far as drying and film go; `pigment-chemistry.csv` says which pigment is which. */
export const CHEMISTRIES = [
  "lead",
  "cobalt",
  "manganese",
  "manganese trace",
  "brown earth",
  "iron cyanide",
  "iron oxide",
  "aluminosilicate",
  "chromium oxide",
  "copper chromite",
  "inert extender",
  "phthalocyanine",
  "titanium dioxide",
  "zinc oxide",
  "mercury sulphide",
  "cadmium sulphide",
  "coarse carbon",
  "fine carbon",
  "organic",
] as const;
export type Chemistry = (typeof CHEMISTRIES)[number];

export const DRYING_EFFECTS = ["drier", "neutral", "retarder"] as const;
export type DryingEffect = (typeof DRYING_EFFECTS)[number];

export const DRYING_CAUSES = [
  "catalyses oxidation",
  "takes no part",
  "binds into soaps",
  "takes up radicals",
  "brings no drying metal",
] as const;
export type DryingCause = (typeof DRYING_CAUSES)[number];

export interface ChemistryRow {
  readonly chemistry: Chemistry;
  readonly effect: DryingEffect;
  /** Days to touch dry [d] of the pigment alone in linseed oil, thin film, about 20 degrees C. */
  readonly daysInLinseed: Interval;
  /** Share of the dry pigment by mass [1] from which it acts in full: a drying metal and a fine carbon act in small amounts. */
  readonly fullFromMassFraction: number;
  readonly cause: DryingCause;
  /** Text that says which way it goes. */
  readonly effectSource: SourceKey;
}
