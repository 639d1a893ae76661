/** What a first-principles figure takes a pigment for: its indices, and what is known of its sizes. */
import type { Interval } from "../../quantities/interval.ts";
import type { StatementOf } from "../../quantities/statement.ts";
import type { SourceKey } from "../../sources/source.ts";
import { BONE_CHARS, CARBONS, MAGNETITE } from "./absorbing-index.ts";
import {
  CALCITE,
  LEAD_CARBONATE,
  RUTILE,
  statedIndex,
  ZINCITE,
  type IndexSet,
} from "./refractive-index.ts";

/** Inputs of a calculation, each unknown as the range or the list it is drawn from. */
export interface ParticleModel {
  readonly slug: string;
  readonly indices: readonly IndexSet[];
  /** Median by volume, or number mean, [um]. */
  readonly sizeUm: Interval;
  readonly sizeKind: "volume median" | "number mean";
  /** Geometric standard deviation [1]. */
  readonly spread: Interval;
  readonly spreadSource: SourceKey;
}

/** What a pigment's record knows. */
export interface RecordedParticle {
  readonly slug: string;
  readonly name: string;
  readonly colourIndexName: string | undefined;
  readonly sizeUm: number | Interval | undefined;
  readonly refractiveIndex: number | Interval | undefined;
  /** k of n + i k, of what absorbs. */
  readonly absorptionIndex?: number | Interval | undefined;
  /** Whether it lets light through unabsorbed: whites and extenders. */
  readonly isClear: boolean;
}

interface Substance {
  readonly indices: readonly IndexSet[];
  readonly sizeKind: ParticleModel["sizeKind"];
  readonly spread: Interval;
}

/** Substances of known index, by Colour Index generic name. Spreads are from memory. */
const SUBSTANCES: Readonly<Record<string, Substance>> = {
  "PW 1": { indices: LEAD_CARBONATE, sizeKind: "volume median", spread: [1.5, 2] },
  "PW 4": { indices: [ZINCITE], sizeKind: "volume median", spread: [1.4, 1.8] },
  "PW 6": { indices: [RUTILE], sizeKind: "number mean", spread: [1.25, 1.45] },
  "PW 18": { indices: [CALCITE], sizeKind: "volume median", spread: [1.5, 2] },
  "PBk 6": { indices: CARBONS, sizeKind: "volume median", spread: [1.2, 1.5] },
  "PBk 7": { indices: CARBONS, sizeKind: "volume median", spread: [1.2, 1.5] },
  "PBk 9": { indices: BONE_CHARS, sizeKind: "volume median", spread: [1.5, 2] },
  "PBk 11": { indices: [MAGNETITE], sizeKind: "volume median", spread: [1.2, 1.5] },
};

/** Why theory says nothing of a pigment. */
export type ParticleStatement =
  | StatementOf<
      "particle-size-not-known" | "absorption-not-known" | "refractive-index-not-known",
      { pigment: string }
    >
  | StatementOf<"particle-too-coarse", { pigment: string; sizeUm: Interval; limitUm: number }>;

/** Of a pigment that no row names. */
const USUAL_SPREAD: Interval = [1.3, 1.8];
/** How far a size that is stated as one number is taken to be off [1]. */
const SIZE_SHARE = 0.15;
/** Largest diameter that is reckoned with [um]: coarser grains scatter as a flat face does. */
const LARGEST_UM = 50;

/**
 * The model of a recorded pigment.
 * A substance of the list goes by its published indices, and any other by those that are recorded.
 * @returns the model; rules `particle-size-not-known`, `particle-too-coarse`, `absorption-not-known` (a pigment that absorbs,
 *   of which no k is on record), `refractive-index-not-known`.
 */
export function particleModel({
  slug,
  name,
  colourIndexName,
  sizeUm,
  refractiveIndex,
  absorptionIndex,
  isClear,
}: RecordedParticle): ParticleModel | ParticleStatement {
  const values = { pigment: name };
  if (sizeUm === undefined) return { rule: "particle-size-not-known", values };
  const size: Interval =
    typeof sizeUm === "number" ? [sizeUm * (1 - SIZE_SHARE), sizeUm * (1 + SIZE_SHARE)] : sizeUm;
  if (!(size[0] > 0 && size[1] <= LARGEST_UM))
    return {
      rule: "particle-too-coarse",
      values: { ...values, sizeUm: size, limitUm: LARGEST_UM },
    };
  const known = colourIndexName === undefined ? undefined : SUBSTANCES[colourIndexName];
  if (known !== undefined) return { slug, ...known, sizeUm: size, spreadSource: "particle-spread" };
  if (!isClear && absorptionIndex === undefined) return { rule: "absorption-not-known", values };
  if (refractiveIndex === undefined) return { rule: "refractive-index-not-known", values };
  const ends = (amount: number | Interval): readonly number[] =>
    typeof amount === "number" ? [amount] : amount;
  const indices = ends(refractiveIndex).flatMap((n) =>
    ends(isClear ? 0 : (absorptionIndex ?? 0)).map((k) => statedIndex(name, n, k)),
  );
  return {
    slug,
    indices,
    sizeUm: size,
    sizeKind: "volume median",
    spread: USUAL_SPREAD,
    spreadSource: "particle-spread",
  };
}
