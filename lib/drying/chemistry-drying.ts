/**
 * What a pigment's chemistry does to the drying of linseed oil.
 *
 * @source wehlte-1975 for which way it goes, where named; memory-drying for the days.
 */
import type { Interval } from "../quantities/interval.ts";
import type { SourceKey } from "../sources/source.ts";

/** What a pigment is, as far as drying and film go; `pigment-chemistry.csv` says which pigment is which. */
export const CHEMISTRIES = [
  "lead",
  "cobalt",
  "manganese",
  "manganese trace",
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

export type DryingEffect = "drier" | "neutral" | "retarder";

export interface ChemistryRow {
  readonly chemistry: Chemistry;
  readonly effect: DryingEffect;
  /** Days to touch dry [d] of the pigment alone in linseed oil, thin film, about 20 degrees C. */
  readonly daysInLinseed: Interval;
  /** Share of the dry pigment by mass [1] from which it acts in full: a drying metal and a fine carbon act in small amounts. */
  readonly fullFromMassFraction: number;
  /** Why it acts so, for the reason. */
  readonly cause:
    | "catalyses oxidation"
    | "takes no part"
    | "binds into soaps"
    | "takes up radicals and drier"
    | "brings no drying metal";
  /** Text that says which way it goes. */
  readonly source: SourceKey;
}

const RECALLED = "memory-drying";
const READ = "wehlte-1975";

export const CHEMISTRY_DRYING: readonly ChemistryRow[] = [
  {
    chemistry: "lead",
    effect: "drier",
    daysInLinseed: [1, 3],
    fullFromMassFraction: 0.1,
    cause: "catalyses oxidation",
    source: READ,
  },
  {
    chemistry: "cobalt",
    effect: "drier",
    daysInLinseed: [1, 3],
    fullFromMassFraction: 0.1,
    cause: "catalyses oxidation",
    source: READ,
  },
  {
    chemistry: "manganese",
    effect: "drier",
    daysInLinseed: [1, 3],
    fullFromMassFraction: 0.1,
    cause: "catalyses oxidation",
    source: READ,
  },
  {
    chemistry: "manganese trace",
    effect: "drier",
    daysInLinseed: [2, 4],
    fullFromMassFraction: 0.25,
    cause: "catalyses oxidation",
    source: RECALLED,
  },
  {
    chemistry: "iron cyanide",
    effect: "drier",
    daysInLinseed: [1, 3],
    fullFromMassFraction: 0.1,
    cause: "catalyses oxidation",
    source: READ,
  },
  {
    chemistry: "iron oxide",
    effect: "neutral",
    daysInLinseed: [3, 6],
    fullFromMassFraction: 0.25,
    cause: "takes no part",
    source: RECALLED,
  },
  {
    chemistry: "aluminosilicate",
    effect: "neutral",
    daysInLinseed: [3, 6],
    fullFromMassFraction: 0.25,
    cause: "takes no part",
    source: RECALLED,
  },
  {
    chemistry: "chromium oxide",
    effect: "neutral",
    daysInLinseed: [3, 6],
    fullFromMassFraction: 0.25,
    cause: "takes no part",
    source: RECALLED,
  },
  {
    chemistry: "copper chromite",
    effect: "neutral",
    daysInLinseed: [3, 6],
    fullFromMassFraction: 0.25,
    cause: "takes no part",
    source: RECALLED,
  },
  {
    chemistry: "inert extender",
    effect: "neutral",
    daysInLinseed: [3, 6],
    fullFromMassFraction: 0.25,
    cause: "takes no part",
    source: RECALLED,
  },
  {
    chemistry: "phthalocyanine",
    effect: "neutral",
    daysInLinseed: [3, 8],
    fullFromMassFraction: 0.25,
    cause: "takes no part",
    source: RECALLED,
  },
  {
    chemistry: "titanium dioxide",
    effect: "retarder",
    daysInLinseed: [6, 12],
    fullFromMassFraction: 0.25,
    cause: "brings no drying metal",
    source: RECALLED,
  },
  {
    chemistry: "zinc oxide",
    effect: "retarder",
    daysInLinseed: [6, 12],
    fullFromMassFraction: 0.25,
    cause: "binds into soaps",
    source: READ,
  },
  {
    chemistry: "mercury sulphide",
    effect: "retarder",
    daysInLinseed: [6, 12],
    fullFromMassFraction: 0.25,
    cause: "brings no drying metal",
    source: READ,
  },
  {
    chemistry: "cadmium sulphide",
    effect: "retarder",
    daysInLinseed: [6, 12],
    fullFromMassFraction: 0.25,
    cause: "brings no drying metal",
    source: RECALLED,
  },
  {
    chemistry: "coarse carbon",
    effect: "retarder",
    daysInLinseed: [6, 12],
    fullFromMassFraction: 0.1,
    cause: "takes up radicals and drier",
    source: RECALLED,
  },
  {
    chemistry: "fine carbon",
    effect: "retarder",
    daysInLinseed: [8, 16],
    fullFromMassFraction: 0.02,
    cause: "takes up radicals and drier",
    source: RECALLED,
  },
  {
    chemistry: "organic",
    effect: "retarder",
    daysInLinseed: [6, 12],
    fullFromMassFraction: 0.25,
    cause: "brings no drying metal",
    source: RECALLED,
  },
];

/** Row of a chemistry. */
export function chemistryRow(chemistry: Chemistry): ChemistryRow {
  const row = CHEMISTRY_DRYING.find((candidate) => candidate.chemistry === chemistry);
  if (row === undefined) throw new Error(`Unreachable: no drying row for ${chemistry}`);
  return row;
}
