/** What a jar or tube holds, by mass, and what a mass takes, by volume. */
import { domainError } from "../diagnostics/diagnostic.ts";
import type { Interval } from "../quantities/interval.ts";
import type { StatementOf } from "../quantities/statement.ts";
import { requirePositive } from "../quantities/positive.ts";

/**
 * Mass that a container holds [g]: of paint by its density, of dry pigment by its
 * loose or tapped bulk density.
 *
 * @param volumeMl of the container [ml], > 0. @param densityGPerMl of what fills it [g/ml], > 0.
 * @throws RangeError when either is not a finite number above 0.
 * @example heldMassG(118, 0.2) // 23.6
 */
export function heldMassG(volumeMl: number, densityGPerMl: number): number {
  requirePositive("volume of the container", volumeMl, "ml");
  requirePositive("density of the filling", densityGPerMl, "g/ml");
  return volumeMl * densityGPerMl;
}

/**
 * Volume that a mass takes [ml]; inverse of {@link heldMassG}.
 * @throws RangeError when either is not a finite number above 0.
 */
export function takenVolumeMl(massG: number, densityGPerMl: number): number {
  requirePositive("mass of the filling", massG, "g");
  requirePositive("density of the filling", densityGPerMl, "g/ml");
  return massG / densityGPerMl;
}

export interface BulkDensity {
  /** As poured [g/ml]. */
  readonly looseGPerMl: number;
  /** As settled by tapping [g/ml], at least the loose one. */
  readonly tappedGPerMl: number;
}

export type JarStatement = StatementOf<
  "fills-the-jar" | "fills-until-it-settles" | "does-not-fill-the-jar",
  {
    /** The dry pigment. */
    readonly pigment: string;
    readonly massG: number;
    readonly jarMl: number;
    /** From settled to poured. */
    readonly takenMl: Interval;
  }
>;

/**
 * Whether a mass of dry pigment fills a jar: as poured and still when settled,
 * only as poured, or not at all.
 *
 * @param pigment as the sheet names it.
 * @throws RangeError when a figure is not above 0, or loose above tapped.
 */
export function jarFillStatement(
  pigment: string,
  massG: number,
  jarMl: number,
  { looseGPerMl, tappedGPerMl }: BulkDensity,
): JarStatement {
  requirePositive("volume of the jar", jarMl, "ml");
  if (looseGPerMl > tappedGPerMl)
    throw domainError("loose bulk density", looseGPerMl, `<= tapped, ${tappedGPerMl} g/ml`);
  const looseMl = takenVolumeMl(massG, looseGPerMl);
  const tappedMl = takenVolumeMl(massG, tappedGPerMl);
  const rule =
    tappedMl >= jarMl
      ? "fills-the-jar"
      : looseMl >= jarMl
        ? "fills-until-it-settles"
        : "does-not-fill-the-jar";
  return {
    rule,
    values: { pigment, massG, jarMl, takenMl: [tappedMl, looseMl] },
    standing: "derived",
  };
}
