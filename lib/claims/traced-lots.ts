import type { Lot, Records } from "../records/records.ts";
import { given } from "../quantities/given.ts";

/** Lots to be called back together: all that hold a supplier's lot, or the one of a number. */
export interface TracedLots {
  readonly kind: "supplier's lot" | "lot";
  readonly name: string;
  /** By number of lot, the oldest first. */
  readonly lots: readonly Lot[];
  /** Of one lot, what it was made with, and which other lots were. */
  readonly madeWith: readonly SupplierLot[];
}

/** A supplier's lot of a pigment, with the numbers of other lots that hold it too. */
export interface SupplierLot {
  readonly pigment: string;
  readonly name: string;
  readonly alsoIn: readonly string[];
}

/** What goes by a name in the workshop's book of lots: numbers as they stand on bag and tube, small or capital letters alike. */
export function tracedLots(name: string, { lots }: Pick<Records, "lots">): TracedLots[] {
  const wanted = folded(name);
  const all = [...lots.values()].sort((one, other) =>
    one.record.date < other.record.date ? -1 : one.record.date > other.record.date ? 1 : 0,
  );
  const holding = all.filter((lot) => suppliedOf(lot).some((own) => folded(own.name) === wanted));
  const numbered = all.filter(
    ({ slug, record }) => folded(record.number) === wanted || slug === wanted,
  );
  return given([
    holding.length > 0 && { kind: "supplier's lot" as const, name, lots: holding, madeWith: [] },
    ...numbered.map((lot) => ({
      kind: "lot" as const,
      name: lot.record.number,
      lots: [lot],
      madeWith: suppliedOf(lot).map((own): SupplierLot => ({
        ...own,
        alsoIn: all.flatMap((other) =>
          other !== lot && suppliedOf(other).some((one) => isSame(one, own))
            ? [other.record.number]
            : [],
        ),
      })),
    })),
  ]);
}

type Supplied = Pick<SupplierLot, "pigment" | "name">;

function suppliedOf({ record }: Lot): Supplied[] {
  return record.pigments.flatMap(({ pigment, supplierLot }) =>
    supplierLot === undefined ? [] : [{ pigment, name: supplierLot }],
  );
}

function isSame(one: Supplied, other: Supplied): boolean {
  return one.pigment === other.pigment && folded(one.name) === folded(other.name);
}

function folded(name: string): string {
  return name.trim().toLowerCase();
}
