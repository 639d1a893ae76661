/**
 * Dispersion: clumps hold oil inside them, so a badly opened paste acts as if its
 * pigment drank more, and its effective CPVC is lower than the rub-out says.
 *
 * @source practice-formulation : the factors are an estimate.
 */
import { domainError } from "../diagnostics/diagnostic.ts";
import { spanning, type Interval } from "../quantities/interval.ts";
import { estimated, type StatementOf } from "../quantities/statement.ts";
import type { ParticleClass } from "./particle-class.ts";
import { requireOpenFraction } from "./required-domain.ts";
import { requirePositive } from "../quantities/positive.ts";

export type Dispersion = "mulled" | "milled";

export interface DispersionFactorRow {
  readonly dispersion: Dispersion;
  readonly particle: ParticleClass;
  /** Effective CPVC over CPVC [1]. */
  readonly factor: Interval;
}

export const DISPERSION_FACTORS: readonly DispersionFactorRow[] = [
  { dispersion: "milled", particle: "coarse", factor: [1, 1] },
  { dispersion: "milled", particle: "fine", factor: [1, 1] },
  { dispersion: "milled", particle: "fine carbon", factor: [1, 1] },
  { dispersion: "mulled", particle: "coarse", factor: [1, 1] },
  { dispersion: "mulled", particle: "fine", factor: [0.9, 0.9] },
  { dispersion: "mulled", particle: "fine carbon", factor: [0.7, 0.8] },
];

export type DispersionFactorStatement =
  | StatementOf<
      "dispersion-unknown" | "agglomerates-hold-oil",
      {
        readonly particle: ParticleClass;
        /** Effective CPVC over CPVC [1]. */
        readonly factor: Interval;
      }
    >
  | StatementOf<"pigment-opened" | "coarse-pigment-opens", Record<string, never>>;

export interface DispersionFactorRuling {
  readonly factor: Interval;
  readonly reason: DispersionFactorStatement;
}

/**
 * Factor from CPVC to effective CPVC.
 *
 * @param dispersion how the paste was opened; unknown takes in both, from the worse to the better.
 */
export function dispersionFactorRuling(
  dispersion: Dispersion | undefined,
  particle: ParticleClass,
): DispersionFactorRuling {
  const rows = DISPERSION_FACTORS.filter(
    (row) =>
      row.particle === particle && (dispersion === undefined || row.dispersion === dispersion),
  );
  const factor = spanning(rows.map((row) => row.factor));
  const evidence = { standing: "estimated", source: "practice-formulation" } as const;
  return {
    factor,
    reason:
      particle === "coarse"
        ? { rule: "coarse-pigment-opens", values: {}, ...evidence }
        : dispersion !== undefined && factor[0] === 1
          ? { rule: "pigment-opened", values: {}, ...evidence }
          : {
              rule: dispersion === undefined ? "dispersion-unknown" : "agglomerates-hold-oil",
              values: { particle, factor },
              ...evidence,
            },
  };
}

/**
 * Effective CPVC: the CPVC that the paste acts by.
 *
 * @param cpvc fraction, 0-1, both ends open.
 * @param factor of {@link dispersionFactorRuling}, 0 < factor <= 1.
 * @throws RangeError outside those.
 */
export function effectiveCpvc(cpvc: number, factor: number): number {
  requireOpenFraction("CPVC", cpvc);
  if (!(factor > 0 && factor <= 1))
    throw domainError("dispersion factor", factor, "0 < factor <= 1");
  return cpvc * factor;
}

/** Largest fineness of grind [um] at which a paste counts as opened, however it was made. */
const OPENED_UP_TO_UM = 20;

export type FinenessStatement = StatementOf<
  | "fineness-shows-the-grain"
  | "opened-as-if-milled"
  | "opened-by-fineness"
  | "milled-but-not-opened"
  | "not-opened-by-fineness",
  { readonly finenessOfGrindUm: number; readonly limitUm: number }
>;

export interface DispersionRuling {
  readonly dispersion: Dispersion | undefined;
  readonly reason?: FinenessStatement;
}

/**
 * How a paste counts: by its fineness of grind (ISO 1524) where that was read,
 * else by the record's word. A coarse pigment reads coarse however well it is
 * opened, so its reading decides nothing.
 *
 * @param finenessOfGrindUm reading on the gauge [um], > 0.
 * @throws RangeError when the reading is not a finite number above 0.
 * @source iso-1524 for the reading; practice-formulation for the limit, an estimate.
 */
export function dispersionRuling(
  recorded: Dispersion | undefined,
  finenessOfGrindUm: number | undefined,
  particle: ParticleClass,
): DispersionRuling {
  if (finenessOfGrindUm === undefined) return { dispersion: recorded };
  requirePositive("fineness of grind", finenessOfGrindUm, "um");
  const because = (rule: FinenessStatement["rule"]): FinenessStatement =>
    estimated(rule, { finenessOfGrindUm, limitUm: OPENED_UP_TO_UM }, "practice-formulation");
  if (particle === "coarse")
    return { dispersion: recorded, reason: because("fineness-shows-the-grain") };
  return finenessOfGrindUm <= OPENED_UP_TO_UM
    ? {
        dispersion: "milled",
        reason: because(recorded === "mulled" ? "opened-as-if-milled" : "opened-by-fineness"),
      }
    : {
        dispersion: "mulled",
        reason: because(recorded === "milled" ? "milled-but-not-opened" : "not-opened-by-fineness"),
      };
}
