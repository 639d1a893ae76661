import type { PaintComponent } from "../../formulation/paint-volume.ts";
import { pigmentVolumeConcentration } from "../../formulation/pvc.ts";
import { at } from "../../quantities/at.ts";
import type { Figure } from "../../quantities/figure.ts";
import type { Quantity } from "../../quantities/interval.ts";
import type { Amounts } from "../found.ts";
import type { AdditionPart } from "../pigments/pigment-figures.ts";

/** What the volumes of a paint follow from. */
export interface PaintOfOil extends Amounts<"pigmentDensityGPerCm3"> {
  /** Oil to 100 g of pigment of the vehicle alone, on which what was added to it is reckoned. */
  readonly mainOil: Figure<Quantity>;
  readonly oilDensity: Figure<Quantity>;
  readonly additions: readonly AdditionPart[];
  /** What of each medium leaves the film [1], by slug. */
  readonly solvents: ReadonlyMap<string, Figure<Quantity>>;
}

/** What binds the film beside the oil; a drier is too little to count, and a thinner leaves. */
const BINDING = new Set<AdditionPart["kind"]>(["oil", "medium"]);

/** Of what was added to the oil, all that binds the film beside it. */
export function bindingAdditions(additions: readonly AdditionPart[]): AdditionPart[] {
  return additions.filter(({ kind }) => BINDING.has(kind));
}

/** PVC of the dry film [1], by values of {@link inputs}. */
export function pvcOfFilm(
  v: Readonly<Record<string, number>>,
  binding: readonly AdditionPart[],
): number {
  const [pigment, ...rest] = stays(components(v, binding));
  const massG = rest.reduce((sum, one) => sum + one.massG, 0);
  const volumeMl = rest.reduce((sum, one) => sum + one.massG / one.densityGPerCm3, 0);
  return pigmentVolumeConcentration(pigment.massG, pigment.densityGPerCm3, massG, massG / volumeMl);
}

/** Inputs of figures of the paint as made: a share and a density more for each addition, and what of it leaves the film where some does. */
export function inputs(
  { mainOil, oilDensity, pigmentDensityGPerCm3 }: Omit<PaintOfOil, "additions" | "solvents">,
  additions: readonly AdditionPart[],
  solvents: ReadonlyMap<string, Figure<Quantity>> = new Map(),
): Record<string, Figure<Quantity>> {
  return {
    oilIndex: mainOil,
    oilDensity,
    pigmentDensity: pigmentDensityGPerCm3,
    ...Object.fromEntries(
      additions.flatMap(({ slug, percentOfOil, densityGPerCm3 }): [string, Figure<Quantity>][] => {
        const leaves = solvents.get(slug);
        return [
          [`percent ${slug}`, percentOfOil],
          [`density ${slug}`, densityGPerCm3],
          ...(leaves === undefined ? [] : [[leavesKey(slug), leaves] as [string, typeof leaves]]),
        ];
      }),
    ),
  };
}

/** The same without densities. */
export function massInputs(
  { mainOil }: Pick<PaintOfOil, "mainOil">,
  additions: readonly AdditionPart[],
): Record<string, Figure<Quantity>> {
  return {
    oilIndex: mainOil,
    ...Object.fromEntries(
      additions.map(({ slug, percentOfOil }) => [`percent ${slug}`, percentOfOil]),
    ),
  };
}

/** 100 g of pigment with its oil and additions; the pigment first. */
export function components(
  v: Readonly<Record<string, number>>,
  additions: readonly AdditionPart[],
): readonly [PaintComponent, ...PaintComponent[]] {
  const value = (name: string): number => at(v, name);
  const oilG = value("oilIndex");
  return [
    { massG: 100, densityGPerCm3: value("pigmentDensity"), volatile: false },
    { massG: oilG, densityGPerCm3: value("oilDensity"), volatile: false },
    ...additions.flatMap(({ slug, kind }) => {
      const massG = (oilG * value(`percent ${slug}`)) / 100;
      const densityGPerCm3 = value(`density ${slug}`);
      const leaves = kind === "thinner" ? 1 : (v[leavesKey(slug)] ?? 0);
      return [
        { massG: massG * (1 - leaves), densityGPerCm3, volatile: false },
        { massG: massG * leaves, densityGPerCm3, volatile: true },
      ].filter((one) => one.massG > 0);
    }),
  ];
}

/** What of it the film keeps; the pigment first. */
export function stays([pigment, ...others]: readonly [
  PaintComponent,
  ...PaintComponent[],
]): readonly [PaintComponent, ...PaintComponent[]] {
  return [pigment, ...others.filter(({ volatile }) => !volatile)];
}

function leavesKey(slug: string): string {
  return `leaves ${slug}`;
}
