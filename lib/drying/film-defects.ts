/**
 * What may go wrong with a film of this paint, where chemistry or recipe gives
 * cause: brittleness, soaps, wrinkling, sinking-in.
 *
 * @source practice-drying
 */
import { ends, type Quantity } from "../quantities/interval.ts";
import type { Statement, StatementValue } from "../quantities/statement.ts";
import { drierRulings, type AddedDrier } from "./added-drier.ts";
import type { Chemistry } from "./chemistry-drying.ts";
import { sinkingInRulings } from "./sinking-in.ts";
import type { OilPart } from "./vehicle-drying.ts";
import { yellowingRuling } from "./yellowing.ts";

export interface FilmPigment {
  readonly name: string;
  /** Undefined for a pigment that no table knows. */
  readonly chemistry?: Chemistry | undefined;
  readonly massFraction?: number | undefined;
}

export interface Film {
  readonly pigments: readonly FilmPigment[];
  readonly oils: readonly OilPart[];
  /** Names of mediums in it of which no drying oil, drier or solvent is recorded: wax paste, resin, egg. */
  readonly mediums?: readonly string[] | undefined;
  readonly addedDriers?: readonly AddedDrier[] | undefined;
  /** 1 - PVC [1]. */
  readonly oilVolumeFraction?: Quantity | undefined;
  /** PVC over effective CPVC [1]. */
  readonly reducedPvc?: Quantity | undefined;
}

export interface ChemistryHealthRow {
  readonly chemistry: Chemistry;
  readonly rule: string;
  readonly source: "practice-drying" | "rogala-2010" | "noble-boon-2007";
  /** Least share of the dry pigment by mass [1] at which it is said; a share not recorded counts as enough. */
  readonly fromMassFraction: number;
}

export const CHEMISTRY_HEALTH: readonly ChemistryHealthRow[] = [
  {
    chemistry: "zinc oxide",
    rule: "zinc-makes-brittle",
    source: "practice-drying",
    fromMassFraction: 0.05,
  },
  {
    chemistry: "zinc oxide",
    rule: "zinc-soaps-may-part-layers",
    source: "rogala-2010",
    fromMassFraction: 0.01,
  },
  {
    chemistry: "lead",
    rule: "lead-makes-tough",
    source: "practice-drying",
    fromMassFraction: 0.25,
  },
  {
    chemistry: "lead",
    rule: "lead-soaps-turn-transparent",
    source: "noble-boon-2007",
    fromMassFraction: 0.01,
  },
  {
    chemistry: "fine carbon",
    rule: "carbon-skin-wrinkles-when-thick",
    source: "practice-drying",
    fromMassFraction: 0.25,
  },
];

/** Oil volume fraction [1] from which a thick stroke may wrinkle. */
export const WRINKLES_FROM_OIL = 0.68;

/**
 * Every ruling that the paint gives cause for: pigments' first, then oil, driers, recipe.
 * @throws RangeError when a drier's dose lies beyond reach, or a reduced PVC is not above 0.
 */
export function filmHealthRulings(film: Film): Statement[] {
  return [
    ...film.pigments.flatMap(pigmentRulings),
    ...(film.mediums ?? []).map((medium) => practice("holds-medium-not-known", { medium })),
    ...compact(yellowingRuling(film.oils)),
    ...drierRulings(film.addedDriers ?? []),
    ...(film.oilVolumeFraction === undefined ? [] : wrinkling(film.oilVolumeFraction)),
    ...(film.reducedPvc === undefined ? [] : sinkingInRulings(film.reducedPvc)),
  ];
}

function pigmentRulings({ name, chemistry, massFraction }: FilmPigment): Statement[] {
  return CHEMISTRY_HEALTH.filter(
    (row) =>
      row.chemistry === chemistry &&
      (massFraction === undefined || massFraction >= row.fromMassFraction),
  ).map((row) => ({
    ...practice(row.rule, {
      pigment: name,
      ...(massFraction === undefined ? {} : { massFraction }),
    }),
    source: row.source,
  }));
}

function wrinkling(oilVolumeFraction: Quantity): Statement[] {
  return ends(oilVolumeFraction)[1] >= WRINKLES_FROM_OIL
    ? [practice("oil-rich-wrinkles-when-thick", { oilVolumeFraction, from: WRINKLES_FROM_OIL })]
    : [];
}

function practice(rule: string, values: Readonly<Record<string, StatementValue>>): Statement {
  return { rule, values, standing: "estimated", source: "practice-drying" };
}

function compact<T>(value: T | undefined): readonly T[] {
  return value === undefined ? [] : [value];
}
