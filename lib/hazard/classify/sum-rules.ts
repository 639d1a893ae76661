/**
 * Classes that add up across ingredients: skin, eye, airways, aspiration, aquatic.
 *
 * A rule reads as its standard prints it: the weighted sum of the fractions is
 * held against one limit, for instance 10 x Skin Corr. + Skin Irrit. >= 10 %.
 *
 * @source clp-1272-2008 : Tables 3.2.3, 3.3.3, 4.1.1, 4.1.2; 3.8.3.4.5, 3.10.3.3
 * @source un-ghs-rev-11 : categories of the UN frame alone
 */
import type { HazardFrame } from "./frame.ts";
import type { HazardClass } from "./hazard-class.ts";
import type { HazardCode } from "../texts/hazard-statement.ts";
import type { SourceKey } from "../../sources/source.ts";

export interface SumTerm {
  readonly of: readonly HazardClass[];
  readonly weight: number;
  /** Whether the fraction is multiplied by the ingredient's M-factor. */
  readonly byMFactor?: true;
  /** Fraction below which an ingredient does not count (divided by M where M counts). */
  readonly relevantFrom: number;
}

export interface SumRule {
  readonly gives: HazardClass;
  readonly statement: HazardCode;
  /** Set where the ingredients must carry this very statement: H335 and H336 are one class. */
  readonly ofStatement?: HazardCode;
  readonly limit: number;
  readonly terms: readonly SumTerm[];
  readonly source: SourceKey;
  readonly frame?: HazardFrame;
}

const READ = "clp-1272-2008",
  UN = "un-ghs-rev-11";
const CORROSIVE = ["Skin Corr. 1", "Skin Corr. 1A", "Skin Corr. 1B", "Skin Corr. 1C"] as const;

function term(of: readonly HazardClass[], weight = 1, relevantFrom = 0.01): SumTerm {
  return { of, weight, relevantFrom };
}

/** Aquatic terms of category 1 count from .1 %, with their M-factor; the others from 1 %. */
function aquatic(of: HazardClass, weight: number): SumTerm {
  return of.endsWith("1")
    ? { of: [of], weight, byMFactor: true, relevantFrom: 0.001 }
    : term([of], weight);
}

export const SUM_RULES: readonly SumRule[] = [
  { gives: "Skin Corr. 1", statement: "H314", limit: 0.05, terms: [term(CORROSIVE)], source: READ },
  {
    gives: "Skin Irrit. 2",
    statement: "H315",
    limit: 0.1,
    terms: [term(CORROSIVE, 10), term(["Skin Irrit. 2"])],
    source: READ,
  },
  {
    gives: "Skin Irrit. 3",
    statement: "H316",
    limit: 0.1,
    terms: [term(CORROSIVE, 100), term(["Skin Irrit. 2"], 10), term(["Skin Irrit. 3"])],
    source: UN,
    frame: "UN GHS",
  },
  {
    gives: "Eye Dam. 1",
    statement: "H318",
    limit: 0.03,
    terms: [term([...CORROSIVE, "Eye Dam. 1"])],
    source: READ,
  },
  {
    gives: "Eye Irrit. 2",
    statement: "H319",
    limit: 0.1,
    terms: [term([...CORROSIVE, "Eye Dam. 1"], 10), term(["Eye Irrit. 2"])],
    source: READ,
  },
  {
    gives: "Eye Irrit. 2B",
    statement: "H320",
    limit: 0.1,
    terms: [term(["Eye Irrit. 2B"])],
    source: UN,
    frame: "UN GHS",
  },
  {
    gives: "STOT SE 3",
    statement: "H335",
    ofStatement: "H335",
    limit: 0.2,
    terms: [term(["STOT SE 3"])],
    source: READ,
  },
  {
    gives: "STOT SE 3",
    statement: "H336",
    ofStatement: "H336",
    limit: 0.2,
    terms: [term(["STOT SE 3"])],
    source: READ,
  },
  {
    gives: "Aquatic Acute 1",
    statement: "H400",
    limit: 0.25,
    terms: [aquatic("Aquatic Acute 1", 1)],
    source: READ,
  },
  {
    gives: "Aquatic Acute 2",
    statement: "H401",
    limit: 0.25,
    terms: [aquatic("Aquatic Acute 1", 10), aquatic("Aquatic Acute 2", 1)],
    source: UN,
    frame: "UN GHS",
  },
  {
    gives: "Aquatic Acute 3",
    statement: "H402",
    limit: 0.25,
    source: UN,
    frame: "UN GHS",
    terms: [
      aquatic("Aquatic Acute 1", 100),
      aquatic("Aquatic Acute 2", 10),
      aquatic("Aquatic Acute 3", 1),
    ],
  },
  {
    gives: "Aquatic Chronic 1",
    statement: "H410",
    limit: 0.25,
    terms: [aquatic("Aquatic Chronic 1", 1)],
    source: READ,
  },
  {
    gives: "Aquatic Chronic 2",
    statement: "H411",
    limit: 0.25,
    terms: [aquatic("Aquatic Chronic 1", 10), aquatic("Aquatic Chronic 2", 1)],
    source: READ,
  },
  {
    gives: "Aquatic Chronic 3",
    statement: "H412",
    limit: 0.25,
    source: READ,
    terms: [
      aquatic("Aquatic Chronic 1", 100),
      aquatic("Aquatic Chronic 2", 10),
      aquatic("Aquatic Chronic 3", 1),
    ],
  },
  {
    // A safety net: the plain fractions of all four categories, no M-factor.
    gives: "Aquatic Chronic 4",
    statement: "H413",
    limit: 0.25,
    source: READ,
    terms: [
      term(["Aquatic Chronic 1"], 1, 0.001),
      term(["Aquatic Chronic 2", "Aquatic Chronic 3", "Aquatic Chronic 4"]),
    ],
  },
];

/** Aspiration: the sum, and only in a mixture as thin as `viscosity` [mm2/s at 40 degrees C] or thinner. */
export const ASPIRATION_RULES: readonly (SumRule & { readonly viscosityUpTo: number })[] = [
  {
    gives: "Asp. Tox. 1",
    statement: "H304",
    limit: 0.1,
    terms: [term(["Asp. Tox. 1"])],
    source: READ,
    viscosityUpTo: 20.5,
  },
  {
    gives: "Asp. Tox. 2",
    statement: "H305",
    limit: 0.1,
    terms: [term(["Asp. Tox. 2"])],
    source: UN,
    frame: "UN GHS",
    viscosityUpTo: 14,
  },
];
