/**
 * What the pigments of a paint together do to its drying.
 *
 * They bear on one reaction, so they do not multiply: the days of the mixture are the
 * geometric mean of the days that each would take alone, each weighed by how fully its
 * amount lets it act,
 *
 *     days = days_1 ^ w_1 days_2 ^ w_2 ...,  w_i = a_i / sum a,  a = min(1, share / full)
 *
 * A drying metal and a fine carbon act in full from a small amount; what takes no part
 * counts only in so far as nothing else acts. So a mixture is never slower than its
 * slowest part. Where the parts are not recorded the days reach from the fastest to the slowest.
 *
 * @source practice-drying : a rule of this project.
 */
import { spanning, type Interval } from "../quantities/interval.ts";
import { estimated, type StatementOf } from "../quantities/statement.ts";
import type { ChemistryRow, DryingCause } from "./chemistry-drying.ts";
import { inPart, ratio, signOf, type Contribution } from "./contribution.ts";
import { linseedDays, type OilRow } from "./oils.ts";
import { at } from "../quantities/at.ts";

export interface ChemicalPart {
  /** As the sheet names it. */
  readonly name: string;
  readonly chemistry: ChemistryRow;
  /** Share of the dry pigment by mass, 0-1; undefined when the parts are not recorded. */
  readonly massFraction: number | undefined;
  /** Whether it is the white that the colour is tinted with. */
  readonly white: boolean;
}

export type PigmentStatement =
  | StatementOf<
      | "pigment-speeds-drying"
      | "white-speeds-drying"
      | "pigment-slows-drying"
      | "white-slows-drying"
      | "pigment-takes-no-part-in-drying"
      | "white-takes-no-part-in-drying",
      {
        readonly pigment: string;
        readonly cause: DryingCause;
        readonly chemistry: string;
        readonly daysInLinseed: Interval;
        readonly factor: Interval;
        readonly massFraction?: number;
      }
    >
  | StatementOf<
      "brown-earth-not-told",
      {
        readonly pigment: string;
        readonly daysInLinseed: Interval;
        readonly factor: Interval;
        readonly massFraction?: number;
      }
    >
  | StatementOf<
      "pigment-parts-not-recorded",
      {
        readonly pigments: readonly string[];
        readonly daysInLinseed: Interval;
        readonly factor: Interval;
      }
    >;

/** @param oils of `oils.csv`. */
export function pigmentContributions(
  parts: readonly ChemicalPart[],
  oils: readonly OilRow[],
): Contribution<PigmentStatement>[] {
  const weights = partWeights(parts);
  const alone = parts.map(({ chemistry }) => ratio(chemistry.daysInLinseed, linseedDays(oils)));
  if (weights === undefined) return [unweighed(parts, alone)];
  return parts.map((part, i) => {
    const factor = inPart(at(alone, i), at(weights, i));
    // The days of what takes no part spread a little wider than the oil's, and that is no slowing.
    const sign = part.chemistry.effect === "neutral" ? "none" : signOf(factor);
    return { sign, factor, statement: statementOf(part, factor) };
  });
}

/** Share of the pigments' effect [1] that slows drying: how much of it is said already where the oil is slow too. */
export function slowingShare(parts: readonly ChemicalPart[]): number {
  const weights = partWeights(parts);
  return parts.reduce(
    (sum, { chemistry }, i) =>
      sum + (chemistry.effect === "retarder" ? (weights?.[i] ?? 1 / parts.length) : 0),
    0,
  );
}

/** How much each part counts [1], all together 1; undefined where an amount is not known. */
export function partWeights(
  parts: readonly Pick<ChemicalPart, "chemistry" | "massFraction">[],
): number[] | undefined {
  const acting: number[] = [];
  for (const { massFraction, chemistry } of parts) {
    if (massFraction === undefined) return undefined;
    acting.push(Math.min(1, massFraction / chemistry.fullFromMassFraction));
  }
  const strongest = Math.max(
    0,
    ...acting.filter((_, i) => parts[i]?.chemistry.effect !== "neutral"),
  );
  const counted = acting.map((share, i) =>
    parts[i]?.chemistry.effect === "neutral" ? share * (1 - strongest) : share,
  );
  const whole = counted.reduce((sum, share) => sum + share, 0);
  return counted.map((share) => share / whole);
}

function unweighed(
  parts: readonly ChemicalPart[],
  factors: readonly Interval[],
): Contribution<PigmentStatement> {
  const factor = spanning(factors);
  return {
    sign: signOf(factor),
    factor,
    statement: estimated(
      "pigment-parts-not-recorded",
      {
        pigments: parts.map(({ name }) => name),
        daysInLinseed: spanning(parts.map(({ chemistry }) => chemistry.daysInLinseed)),
        factor,
      },
      "practice-drying",
    ),
  };
}

function statementOf(
  { name, chemistry: row, massFraction, white }: ChemicalPart,
  factor: Interval,
): PigmentStatement {
  const { chemistry, effect, cause, daysInLinseed, effectSource } = row;
  const values = {
    pigment: name,
    daysInLinseed,
    factor,
    ...(massFraction !== undefined && { massFraction }),
  };
  if (chemistry === "brown earth")
    return estimated("brown-earth-not-told", values, "practice-drying");
  const what = EFFECT_RULES[effect];
  return estimated(
    white ? what.white : what.pigment,
    { ...values, chemistry, cause },
    effectSource,
  );
}

const EFFECT_RULES = {
  drier: { pigment: "pigment-speeds-drying", white: "white-speeds-drying" },
  retarder: { pigment: "pigment-slows-drying", white: "white-slows-drying" },
  neutral: { pigment: "pigment-takes-no-part-in-drying", white: "white-takes-no-part-in-drying" },
} as const;
