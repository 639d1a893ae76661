import { FAT_ABOVE, oilBeforeFatMl } from "../../drying/oil-richness.ts";
import {
  paintDensityGPerCm3,
  paintVolumeMl,
  volumeSolids,
  type PaintComponent,
} from "../../formulation/paint-volume.ts";
import { pigmentVolumeConcentration } from "../../formulation/pvc.ts";
import { at } from "../../quantities/at.ts";
import type { Figure } from "../../quantities/figure.ts";
import type { Quantity } from "../../quantities/interval.ts";
import { derivedFigure } from "../../quantities/derived-figure.ts";
import type { AdditionPart } from "../pigments/pigment-figures.ts";
import type { Packing } from "./oil-figures.ts";

export type PaintVolumes = Pick<
  Packing,
  | "pvc"
  | "oilBeforeFat"
  | "paintDensityGPerCm3"
  | "pigmentMassFraction"
  | "pigmentGPerMl"
  | "volumeSolids"
>;

export interface PaintInputs {
  readonly oilIndex: Figure<Quantity>;
  readonly oilDensity: Figure<Quantity>;
  readonly pigmentDensity: Figure<Quantity>;
}

/** What binds the film beside the oil; a drier is too little to count, and a thinner leaves. */
const BINDING = new Set<AdditionPart["kind"]>(["oil", "medium"]);

/**
 * Volumes of pigment, oil and what was added to it, as shares of film and of wet paint.
 * @param solvents what of each medium leaves the film [1], by slug.
 */
export function paintVolumes(
  paint: PaintInputs,
  additions: readonly AdditionPart[],
  solvents: ReadonlyMap<string, Figure<Quantity>>,
): PaintVolumes {
  const binding = bindingAdditions(additions);
  const binder = binding.length === 0 ? "oil" : "oil and medium";
  return {
    pvc: derivedFigure(
      {
        name: `PVC = pigment volume / (pigment + ${binder} volume)`,
        unit: "1",
        source: "bierwagen-hay-1975",
      },
      inputs(paint, binding, solvents),
      (v) => pvcOfFilm(v, binding),
    ),
    paintDensityGPerCm3: derivedFigure(
      { name: "mass / volume of all that is in it", unit: "g/cm3" },
      inputs(paint, additions),
      (v) => paintDensityGPerCm3(components(v, additions)),
    ),
    pigmentMassFraction: derivedFigure(
      { name: "mass of dry pigment / mass of all that is in it", unit: "1" },
      massInputs(paint, additions),
      (v) => {
        const massG =
          additions.reduce((sum, { slug }) => sum + at(v, `percent ${slug}`) / 100, 1) *
          at(v, "oilIndex");
        return 100 / (100 + massG);
      },
    ),
    pigmentGPerMl: derivedFigure(
      { name: "mass of dry pigment / volume of all that is in it", unit: "g/ml" },
      inputs(paint, additions),
      (v) => {
        const parts = components(v, additions);
        const massG = parts.reduce((sum, one) => sum + one.massG, 0);
        return (paintDensityGPerCm3(parts) * parts[0].massG) / massG;
      },
    ),
    volumeSolids: derivedFigure(
      { name: "volume of all but thinner / volume of the wet paint", unit: "1" },
      inputs(paint, additions, solvents),
      (v) => volumeSolids(components(v, additions)),
    ),
    oilBeforeFat: derivedFigure(
      {
        name: `oil added until ${FAT_ABOVE * 100} % of the dry film is oil / volume of the wet paint`,
        unit: "1",
        standing: "estimated",
        source: "practice-drying",
      },
      inputs(paint, additions, solvents),
      (v) => {
        const [pigment, ...binder] = stays(components(v, binding));
        return (
          oilBeforeFatMl(paintVolumeMl([pigment]), paintVolumeMl(binder)) /
          paintVolumeMl(components(v, additions))
        );
      },
    ),
  };
}

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
  paint: PaintInputs,
  additions: readonly AdditionPart[],
  solvents: ReadonlyMap<string, Figure<Quantity>> = new Map(),
): Record<string, Figure<Quantity>> {
  return {
    ...paint,
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
  { oilIndex }: Pick<PaintInputs, "oilIndex">,
  additions: readonly AdditionPart[],
): Record<string, Figure<Quantity>> {
  return {
    oilIndex,
    ...Object.fromEntries(
      additions.map(({ slug, percentOfOil }) => [`percent ${slug}`, percentOfOil]),
    ),
  };
}

/** 100 g of pigment with its oil and additions; the pigment first. */
function components(
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
function stays([pigment, ...others]: readonly [PaintComponent, ...PaintComponent[]]): readonly [
  PaintComponent,
  ...PaintComponent[],
] {
  return [pigment, ...others.filter(({ volatile }) => !volatile)];
}

function leavesKey(slug: string): string {
  return `leaves ${slug}`;
}
