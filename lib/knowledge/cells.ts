import { z } from "zod";
import type { Interval, Quantity } from "../quantities/interval.ts";
import { BIBLIOGRAPHY } from "../sources/bibliography.ts";
import type { SourceKey } from "../sources/source.ts";

/**
 * How a row came by what it says: `published` was seen in its source or in a public
 * copy of its table, `derived` was worked out from its source, `practice` is common
 * practice of the trade, `memory` was recalled without the text at hand.
 */
const ROW_STANDINGS = ["published", "derived", "practice", "memory"] as const;
export type RowStanding = (typeof ROW_STANDINGS)[number];

/** What every row says beside its own matter. */
export const evidence = {
  source: z.string().refine((key): key is SourceKey => key in BIBLIOGRAPHY, {
    error: "a key of the bibliography in lib/sources",
  }),
  standing: z.enum(ROW_STANDINGS),
};

export const casCell = z.string().regex(/^\d{2,7}-\d{2}-\d$/, "a CAS number");

/** The text of a cell. */
export const wording = z.string().min(1);

export const patternCell = z
  .string()
  .refine(isPattern, { error: "the source of a regular expression" });

function isPattern(text: string): boolean {
  try {
    return new RegExp(text, "u").source !== "";
  } catch {
    return false;
  }
}

/** A number in its reach, both ends allowed. */
export function numberCell(least: number, most: number, unit: string): z.ZodType<number> {
  return z.union([z.number(), z.string()]).transform((cell, context) => {
    const value = typeof cell === "number" ? cell : written(cell);
    if (value >= least && value <= most) return value;
    context.addIssue({ code: "custom", message: `a number from ${least} to ${most} ${unit}` });
    return z.NEVER;
  });
}

/** One number or a range, "4.3" or "3.9-4.3", each end in its reach. */
export function quantityCell(least: number, most: number, unit: string): z.ZodType<Quantity> {
  return z.union([z.number(), z.string()]).transform((cell, context) => {
    const [lower, upper] =
      typeof cell === "number" ? [cell, cell] : endsOf(cell.split("-").map(written));
    if (lower >= least && lower <= upper && upper <= most)
      return lower === upper ? lower : ([lower, upper] as const);
    context.addIssue({
      code: "custom",
      message: `one number or a range from ${least} to ${most} ${unit}, such as 3.9-4.3`,
    });
    return z.NEVER;
  });
}

/** NaN for anything but plain digits with a point. */
function written(text: string): number {
  return /^\s*\d*\.?\d+\s*$/.test(text) ? Number(text) : NaN;
}

function endsOf(numbers: readonly number[]): Interval {
  const [lower = NaN, upper = lower, more] = numbers;
  return more === undefined ? [lower, upper] : [NaN, NaN];
}

/** A list in one cell, parted by semicolons, or a list of YAML; each item against its own form. */
export function listCell<Item extends z.ZodType<unknown, string>>(
  item: Item,
): z.ZodType<readonly z.output<Item>[]> {
  return z.preprocess(
    (cell) => (typeof cell === "string" ? cell.split(";").map((part) => part.trim()) : cell),
    z.array(item).min(1),
  );
}
