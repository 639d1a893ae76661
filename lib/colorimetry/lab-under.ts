import type { StatementOf } from "../quantities/statement.ts";
import { adaptedXyz } from "./adaptation.ts";
import { labToXyz, xyzToLab } from "./lab.ts";
import type { Lab, LabViewing, Viewing, Xyz } from "./viewing.ts";

/** Why a Lab is not known under another viewing. */
export type LabUnderStatement =
  | StatementOf<"impossible-colour", Lab & { readonly viewing: LabViewing }>
  | StatementOf<
      "lamplight-needs-a-spectrum",
      { readonly from: LabViewing; readonly to: LabViewing }
    >;

/** A Lab as it would be under another viewing. */
export interface LabUnder {
  readonly lab: Lab;
  /** False where the viewing is the one the Lab was given for. */
  readonly approximate: boolean;
  /** Standard uncertainty as a distance in L*a*b* [Delta-E*ab]; 0 where not approximate. */
  readonly uncertainty: number;
}

/**
 * What adapting a Lab costs, as a share of its chroma C*ab: two colours of one Lab
 * may part under another light or another observer. 68th percentile over 43 smooth
 * spectra (edges, peaks, a dozen dry pigments), each worked out both ways.
 */
export const ADAPTATION_SHARES = {
  /** C and D65, one observer. */
  "like daylights": 0.02,
  /** D50 and one of the other daylights, one observer. */
  "warmer daylight": 0.065,
  /** 2 and 10 degree, C or D65. */
  "other observer": 0.12,
  /** 2 and 10 degree, D50 on one side. */
  "other observer, warmer daylight": 0.17,
} as const;

export type AdaptationKind = keyof typeof ADAPTATION_SHARES;

/** The same for a neutral [Delta-E*ab]: even a grey is not quite flat. */
const NEUTRAL_UNCERTAINTY = 0.1;

/** How far below zero a tristimulus value may lie as the rounding of a black's Lab. */
const DARK_ROUNDING = 0.05;

/**
 * Lab of a colour under another viewing than it is known for, by CAT16.
 *
 * Only a spectrum says what a colour is under another light: this stands in where
 * there is none (a Lab from elsewhere, a chip by eye), between daylights. It is
 * exact only for the viewing given. From 10 to 2 degree the error is large, about
 * an eighth of chroma; call what follows from it estimated.
 *
 * @param lab finite, under `from`.
 * @returns the Lab with its uncertainty; or the ruling `lamplight-needs-a-spectrum`
 *   between lamplight and daylight, or `impossible-colour` for a Lab that no surface has.
 * @throws RangeError when a value is NaN or infinite.
 * @source li-2017
 */
export function labUnder(lab: Lab, from: LabViewing, to: Viewing): LabUnder | LabUnderStatement {
  const given = labToXyz(lab, from);
  if (Math.min(given.X, given.Y, given.Z) < -DARK_ROUNDING) {
    return { rule: "impossible-colour", values: { L: lab.L, a: lab.a, b: lab.b, viewing: from } };
  }
  if (from === to) return { lab, approximate: false, uncertainty: 0 };
  const kind = adaptationKind(from, to);
  if (kind === undefined) return { rule: "lamplight-needs-a-spectrum", values: { from, to } };
  const adapted = xyzToLab(notNegative(adaptedXyz(given, from, to)), to);
  const uncertainty = Math.hypot(
    ADAPTATION_SHARES[kind] * Math.hypot(adapted.a, adapted.b),
    NEUTRAL_UNCERTAINTY,
  );
  return { lab: adapted, approximate: true, uncertainty };
}

/** Which row of {@link ADAPTATION_SHARES} holds between two viewings; none with lamplight on one side. */
export function adaptationKind(from: LabViewing, to: LabViewing): AdaptationKind | undefined {
  const [[light, observer], [otherLight, otherObserver]] = [parts(from), parts(to)];
  if (light === "A" || otherLight === "A") return undefined;
  const warmer = light !== otherLight && (light === "D50" || otherLight === "D50");
  if (observer === otherObserver) return warmer ? "warmer daylight" : "like daylights";
  return warmer ? "other observer, warmer daylight" : "other observer";
}

function parts(viewing: LabViewing): readonly [string, string] {
  const [light = "", observer = ""] = viewing.split("/");
  return [light, observer];
}

function notNegative({ X, Y, Z }: Xyz): Xyz {
  return { X: Math.max(X, 0), Y: Math.max(Y, 0), Z: Math.max(Z, 0) };
}
