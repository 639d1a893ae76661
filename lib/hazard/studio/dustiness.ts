/**
 * How readily a dry pigment goes up as dust, by its bulk density and particle size.
 *
 * The limits are rules of thumb of this project: a light, fluffed-up powder
 * (lamp black, .1-.25 g/ml loose) hangs in the air, a heavy one (basic lead
 * carbonate, 1.2-2) falls. A trial in the studio is worth more.
 *
 * @source practice-hazard
 */
import { requirePositive } from "../../quantities/positive.ts";
import { ends, type Quantity } from "../../quantities/interval.ts";

export type Dustiness = "very dusty" | "dusty" | "less dusty";

export interface Powder {
  readonly bulkDensityLooseGPerMl?: Quantity | undefined;
  readonly bulkDensityTappedGPerMl?: Quantity | undefined;
  /** Of the primary particle [um]. */
  readonly particleSizeUm?: Quantity | undefined;
}

/** Bulk density below which a powder is of the class [g/ml], the dustiest first. */
const DUSTINESS_LIMITS = [
  { class: "very dusty", looseBelowGPerMl: 0.4, tappedBelowGPerMl: 0.5 },
  { class: "dusty", looseBelowGPerMl: 1, tappedBelowGPerMl: 1.4 },
  { class: "less dusty", looseBelowGPerMl: Infinity, tappedBelowGPerMl: Infinity },
] as const satisfies readonly {
  readonly class: Dustiness;
  readonly looseBelowGPerMl: number;
  readonly tappedBelowGPerMl: number;
}[];

/** Particles below this size make even a heavy powder dusty once it is stirred [um]. */
const FINE_BELOW_UM = 1;

/**
 * @returns undefined when neither bulk density is known: to be treated as very dusty.
 * @throws RangeError for a density or size that is not positive.
 */
export function dustiness({
  bulkDensityLooseGPerMl: loose,
  bulkDensityTappedGPerMl: tapped,
  particleSizeUm: size,
}: Powder): Dustiness | undefined {
  const [looseAtLeast, tappedAtLeast, sizeAtLeast] = [
    lowerEnd("loose bulk density", loose),
    lowerEnd("tapped bulk density", tapped),
    lowerEnd("particle size", size),
  ];
  if (looseAtLeast === undefined && tappedAtLeast === undefined) return undefined;
  const row = DUSTINESS_LIMITS.find((limit) =>
    looseAtLeast === undefined
      ? (tappedAtLeast ?? 0) < limit.tappedBelowGPerMl
      : looseAtLeast < limit.looseBelowGPerMl,
  );
  const byDensity = row?.class ?? "less dusty";
  return byDensity === "less dusty" && sizeAtLeast !== undefined && sizeAtLeast < FINE_BELOW_UM
    ? "dusty"
    : byDensity;
}

function lowerEnd(subject: string, quantity: Quantity | undefined): number | undefined {
  if (quantity === undefined) return undefined;
  const [lower] = ends(quantity);
  requirePositive(subject, lower);
  return lower;
}
