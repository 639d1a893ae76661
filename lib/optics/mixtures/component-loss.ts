/** Where a mixed colour goes when one of its components loses strength. */
import { deltaE00, deltaEab } from "../../colorimetry/difference.ts";
import { labToLch } from "../../colorimetry/lab.ts";
import type { Lab } from "../../colorimetry/viewing.ts";
import { domainError } from "../../diagnostics/diagnostic.ts";
import { estimated, isStatement, type StatementOf } from "../../quantities/statement.ts";
import type { NotReached } from "../tints/equal-lightness.ts";
import { hueWord, type HueWord } from "../tints/hue-word.ts";
import { mixedLab, mixedRatioAt, mixedTint, type Mixture } from "./mixture.ts";

/** Shares of its strength [1] whose loss is told. */
export const TOLD_LOSSES = [0.3, 0.6] as const;
/** Losses [1] that the path is drawn through. */
export const PATH_LOSSES: readonly number[] = [0, 0.15, 0.3, 0.45, 0.6];
/** L* (D65/10) of the tint that is followed: a change shows most in a middle grey. */
export const DRIFT_LIGHTNESS = 50;

/**
 * Limits of the words, in D65/10.
 * @source optics-practice
 */
export const DRIFT_RULES = {
  /** Delta-E*ab under which nothing is seen. */
  seenMin: 1,
  /** Shift in a*b* under which the colour only grows lighter (or darker). */
  hueShiftMin: 1,
  /** C*ab from which a colour has a hue of its own: what then moves mostly to or from neutral changes its chroma. */
  ownHueFrom: 20,
} as const;

/** What a loss moves: in D65/10. */
type Change = {
  readonly component: string;
  readonly loss: number;
  readonly deltaE00: number;
  readonly deltaEab: number;
  readonly LChange: number;
  readonly aChange: number;
  readonly bChange: number;
};

export type DriftStatement =
  | StatementOf<
      | "drift-not-seen"
      | "drift-grows-lighter"
      | "drift-grows-darker"
      | "drift-grows-duller"
      | "drift-grows-stronger",
      Change
    >
  | StatementOf<"drift-goes-toward", Change & { readonly toward: HueWord }>;

/** The colour after a loss. */
export interface DriftStep {
  readonly loss: number;
  readonly lab: Lab;
  readonly deltaE00: number;
  readonly deltaEab: number;
}

export interface Drift {
  /** Which component, by index in the mixture. */
  readonly component: number;
  /** Mixture to white by mass [1]; the ratio stays while strength is lost. */
  readonly massRatio: number;
  /** Through PATH_LOSSES. */
  readonly path: readonly DriftStep[];
  /** At TOLD_LOSSES: which rule, and what it speaks of. */
  readonly rulings: readonly DriftStatement[];
  /** 68 %, Delta-E00, of the prediction it starts from. */
  readonly uncertainty: number;
}

/**
 * Drift of a tint at L* 50 as one component loses strength.
 *
 * Losing a share of its strength counts as so much of it gone, absorption and scattering alike.
 *
 * @param component index in the mixture.
 * @param names of the components, in the order of the mixture.
 * @returns the drift; rule `ladder-does-not-reach` when no tint of it is at L* 50.
 * @throws RangeError when there is no such component, or the names are not as many.
 * @source duncan-1940
 */
export function drift(
  mixed: Mixture,
  component: number,
  names: readonly string[],
): Drift | NotReached {
  if (!(Number.isInteger(component) && component >= 0 && component < mixed.parts.length))
    throw domainError("component", component, `0 to ${mixed.parts.length - 1}`);
  if (names.length !== mixed.parts.length)
    throw domainError("count of names", names.length, `${mixed.parts.length}, one a component`);
  const massRatio = mixedRatioAt(mixed, DRIFT_LIGHTNESS);
  if (isStatement(massRatio)) return massRatio;
  const left = (loss: number): number[] =>
    mixed.parts.map((_, i) => (i === component ? 1 - loss : 1));
  const { lab: fresh, uncertainty } = mixedTint(mixed, massRatio);
  const after = (loss: number): DriftStep => {
    const lab = mixedLab(mixed, massRatio, left(loss));
    return { loss, lab, deltaE00: deltaE00(fresh, lab), deltaEab: deltaEab(fresh, lab) };
  };
  return {
    component,
    massRatio,
    path: PATH_LOSSES.map(after),
    uncertainty: uncertainty.p68,
    rulings: TOLD_LOSSES.map((loss) => driftRuling(names[component] ?? "", fresh, after(loss))),
  };
}

/**
 * Which way a colour has gone.
 * @returns `drift-not-seen`, `drift-grows-lighter`, `drift-grows-darker`, of what has a hue of its own and moves
 *   mostly along it `drift-grows-duller` or `drift-grows-stronger`, else `drift-goes-toward` with the word for the
 *   direction in a*b* (and not for the hue it ends at).
 * @source optics-practice
 */
export function driftRuling(
  component: string,
  fresh: Lab,
  { loss, lab, deltaE00: dE00, deltaEab: dEab }: DriftStep,
): DriftStatement {
  const [L, a, b] = [lab.L - fresh.L, lab.a - fresh.a, lab.b - fresh.b];
  const values = {
    component,
    loss,
    deltaE00: dE00,
    deltaEab: dEab,
    LChange: L,
    aChange: a,
    bChange: b,
  };
  const source = "optics-practice";
  if (dEab < DRIFT_RULES.seenMin) return estimated("drift-not-seen", values, source);
  if (Math.hypot(a, b) < DRIFT_RULES.hueShiftMin)
    return estimated(L >= 0 ? "drift-grows-lighter" : "drift-grows-darker", values, source);
  const chroma = Math.hypot(fresh.a, fresh.b);
  const outward = (a * fresh.a + b * fresh.b) / chroma;
  if (chroma >= DRIFT_RULES.ownHueFrom && Math.abs(outward) > Math.SQRT1_2 * Math.hypot(a, b))
    return estimated(outward > 0 ? "drift-grows-stronger" : "drift-grows-duller", values, source);
  return estimated(
    "drift-goes-toward",
    { ...values, toward: hueWord(labToLch({ L: 0, a, b }).h) },
    source,
  );
}
