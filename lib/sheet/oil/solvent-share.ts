import { isSolvent } from "../../hazard/studio/solvent.ts";
import { derivedFigure } from "../../quantities/derived-figure.ts";
import type { Figure } from "../../quantities/figure.ts";
import type { Quantity } from "../../quantities/interval.ts";
import type { Records } from "../../records/records.ts";
import type { VehicleRecord } from "../../records/schema/vehicle.ts";
import { vehicleRecord } from "../record-inputs.ts";
import { recordedFigure } from "../recorded-figure.ts";
import type { AdditionPart } from "../pigments/pigment-figures.ts";

/** Share by mass of each medium that leaves the film as it dries [1], by slug; none of one whose record names no solvent in it. */
export function solventShares(
  additions: readonly AdditionPart[],
  records: Records,
): ReadonlyMap<string, Figure<Quantity>> {
  return new Map(
    mediums(additions, records).flatMap(({ slug, record }): [string, Figure<Quantity>][] => {
      const solvents = (record.components ?? []).filter((one) => isSolvent(codesOf(one)));
      if (solvents.length === 0) return [];
      const shares = solvents.map(({ name, massFraction }) => [
        name,
        recordedFigure(massFraction, {
          unit: "1",
          wanting: `vehicles.${slug}.components`,
          inputs: [vehicleRecord(slug)],
        }),
      ]);
      const inputs = Object.fromEntries(shares) as Record<string, Figure<Quantity>>;
      const name = "solvents among its components, as many of its volume as of its mass";
      return [
        [
          slug,
          derivedFigure({ name, unit: "1" }, inputs, (v) =>
            Math.min(
              Object.values(v).reduce((sum, share) => sum + share, 0),
              1,
            ),
          ),
        ],
      ];
    }),
  );
}

/** Names of mediums that hold a solvent by their own statements, and whose record does not say how much. */
export function untoldSolvents(additions: readonly AdditionPart[], records: Records): string[] {
  return mediums(additions, records).flatMap(({ name, record }) =>
    isSolvent(codesOf(record)) && !(record.components ?? []).some((one) => isSolvent(codesOf(one)))
      ? [name]
      : [],
  );
}

function mediums(
  additions: readonly AdditionPart[],
  { vehicles }: Records,
): { readonly slug: string; readonly name: string; readonly record: VehicleRecord }[] {
  return additions.flatMap(({ slug, name, kind }) => {
    const record = vehicles.get(slug)?.record;
    return record === undefined || kind !== "medium" ? [] : [{ slug, name, record }];
  });
}

function codesOf({ hazards = [] }: Pick<VehicleRecord, "hazards">): string[] {
  return hazards.map((hazard) => (typeof hazard === "string" ? hazard : hazard.statement));
}
