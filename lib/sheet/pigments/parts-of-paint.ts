/** A mixture that was weighed as paints from tubes: what of it is dry pigment, and what oil. */
import { at } from "../../quantities/at.ts";
import { derivedFigure } from "../../quantities/derived-figure.ts";
import {
  computedFigure,
  inputsOf,
  isKnown,
  notStated,
  type Figure,
} from "../../quantities/figure.ts";
import { ends, isInterval, type Quantity } from "../../quantities/interval.ts";
import type { Colour, Records } from "../../records/records.ts";
import type { AdditionPart, VehiclePart } from "./pigment-figures.ts";
import { colourRecord } from "../record-inputs.ts";

/** A pigment of a mixture as the tube that it came from. */
export interface WeighedTube {
  readonly pigment: string;
  readonly paintParts: number;
  /** Undefined: no colour is made of that pigment alone. */
  readonly paint: Colour | undefined;
}

/** The tubes of a mixture that was weighed as paint; undefined of one that was weighed as dry pigment, or not at all. */
export function weighedTubes(colour: Colour, { colours }: Records): WeighedTube[] | undefined {
  const tubes = colour.record.pigments.flatMap(({ pigment, paint, paintParts }): WeighedTube[] => {
    if (paintParts === undefined) return [];
    const alone = [...colours.values()].find(
      ({ slug, record }) =>
        slug !== colour.slug &&
        record.pigments.length === 1 &&
        record.pigments[0]?.pigment === pigment,
    );
    return [{ pigment, paintParts, paint: paint === undefined ? alone : colours.get(paint) }];
  });
  return tubes.length > 1 ? tubes : undefined;
}

/** A tube with how much of its mass is pigment [1]. */
export interface KnownTube extends WeighedTube {
  readonly pigmentFraction: Figure<Quantity>;
  readonly vehicle: VehiclePart | undefined;
  readonly additions: readonly AdditionPart[];
}

/**
 * Shares of dry pigment by mass [1], one a tube.
 *
 *     m_i = p_i f_i / Sum p f,  p parts of paint, f pigment by mass in each paint
 *
 * @returns not stated where how much of a paint is pigment is not known; where that is an estimate, the
 *   middle of what it allows, as an estimate.
 */
export function pigmentShares(colour: Colour, tubes: readonly KnownTube[]): Figure<number>[] {
  const beside = colourRecord(colour, "pigments");
  const vague = tubes.find(({ pigmentFraction }) => !isKnown(pigmentFraction));
  return tubes.map((_, own): Figure<number> => {
    const share = derivedFigure(
      { name: "parts of paint by the pigment in each", unit: "1", beside },
      contentsOf(tubes),
      (v) => pigmentIn(tubes, v, own) / pigmentIn(tubes, v),
    );
    if (!isKnown(share))
      return notStated(
        "it was weighed as paint, and how much of each paint is pigment is not recorded",
        [`colours.${vague?.paint?.slug ?? vague?.pigment ?? ""}.oilIndexGPer100g`],
        [share, ...beside],
      );
    // Shares make a whole together, so that none of them is moved by itself: they carry no uncertainty.
    const [least, most] = ends(share.value);
    return computedFigure(isInterval(share.value) ? "estimated" : "derived", (least + most) / 2, {
      unit: "1",
      method: isInterval(share.value)
        ? `${share.method}: the middle of ${percent(least)} to ${percent(most)} %`
        : share.method,
      inputs: inputsOf(share),
    });
  });
}

function percent(share: number): string {
  return (100 * share).toPrecision(2);
}

/**
 * Main oil to 100 g of pigment in what the tubes give together [g/100 g].
 *
 *     100 (Sum p / Sum p f - 1) / (1 + Sum a)
 *
 * with a, on the oil, what the record names as additions and a tube holds: of all that is no pigment these
 * are a part, and are reckoned beside the oil by themselves.
 */
export function mainOilOfTubes(
  colour: Colour,
  tubes: readonly KnownTube[],
  additions: readonly AdditionPart[],
): Figure<Quantity> {
  const inTubes = new Set(
    tubes.flatMap(({ vehicle, additions: own }) => [vehicle, ...own].map((one) => one?.slug)),
  );
  const onOil = Object.fromEntries(
    additions
      .filter(({ slug }) => inTubes.has(slug))
      .map(({ slug, percentOfOil }) => [`% of ${slug}`, percentOfOil]),
  );
  return derivedFigure(
    {
      name: "what of the paints that it was weighed from is not pigment",
      unit: "g/100 g",
      beside: colourRecord(colour, "pigments"),
    },
    { ...contentsOf(tubes), ...onOil },
    (v) => {
      const paint = tubes.reduce((sum, { paintParts }) => sum + paintParts, 0);
      const all = Object.keys(onOil).reduce((sum, key) => sum + at(v, key) / 100, 1);
      return (100 * (paint / pigmentIn(tubes, v) - 1)) / all;
    },
  );
}

/**
 * Density of the oil of a mixture [g/cm3], where a tube is in another than its record names.
 *
 *     rho = Sum m / Sum (m / rho_i),  m = p (1 - f) of oil in each tube
 *
 * @param named slugs of vehicle and additions of the record.
 * @returns undefined where the record names them all: then its recipe tells it.
 */
export function oilDensityOfTubes(
  colour: Colour,
  tubes: readonly KnownTube[],
  named: readonly string[],
): Figure<Quantity> | undefined {
  if (tubes.every(({ vehicle }) => vehicle === undefined || named.includes(vehicle.slug)))
    return undefined;
  const beside = colourRecord(colour, "pigments");
  const densities = Object.fromEntries(
    tubes.map(({ pigment, paint, vehicle }) => [
      oilOf(vehicle),
      vehicle?.densityGPerCm3 ??
        notStated(
          "no oil is recorded of a paint that it was weighed from",
          [`colours.${paint?.slug ?? pigment}.vehicle`],
          beside,
        ),
    ]),
  );
  return derivedFigure(
    { name: "oils of the paints that it was weighed from, by volume", unit: "g/cm3", beside },
    { ...contentsOf(tubes), ...densities },
    (v) => {
      const oils = tubes.map(({ pigment, paintParts, vehicle }) => ({
        mass: paintParts * (1 - at(v, pigment)),
        density: at(v, oilOf(vehicle)),
      }));
      return (
        oils.reduce((sum, { mass }) => sum + mass, 0) /
        oils.reduce((sum, { mass, density }) => sum + mass / density, 0)
      );
    },
  );
}

/** A name that no pigment bears. */
function oilOf(vehicle: VehiclePart | undefined): string {
  return `oil ${vehicle?.slug ?? ""}`;
}

function contentsOf(tubes: readonly KnownTube[]): Record<string, Figure<Quantity>> {
  return Object.fromEntries(
    tubes.map(({ pigment, pigmentFraction }) => [pigment, pigmentFraction]),
  );
}

/** Parts of dry pigment in all tubes, or in one. */
function pigmentIn(
  tubes: readonly KnownTube[],
  fractions: Readonly<Record<string, number>>,
  only?: number,
): number {
  return tubes.reduce(
    (sum, { pigment, paintParts }, i) =>
      only === undefined || only === i ? sum + paintParts * at(fractions, pigment) : sum,
    0,
  );
}
