import type { ColourFit, FitRefusal } from "../../optics/fit/colour-fit.ts";
import { isKnown, notStated, type Figure, type FigureRef } from "../../quantities/figure.ts";
import { midpoint, type Quantity } from "../../quantities/interval.ts";
import { derivedFigure } from "../../quantities/derived-figure.ts";
import type { Colour, Records } from "../../records/records.ts";
import type { MixtureComponent } from "./mixture-figures.ts";
import { oilSection } from "../oil/oil-section.ts";
import { additionParts, pigmentParts, vehiclePart } from "../pigments/pigment-parts.ts";
import type { PigmentPart } from "../sheet.ts";
import type { Fits } from "../tints/strength.ts";

/** A pigment of a mixture with the paint made of it alone, and what reckoning by paint needs of that. */
export interface ComponentPaint {
  readonly part: PigmentPart;
  readonly colour: Colour | undefined;
  readonly fit: ColourFit | FitRefusal | undefined;
  readonly paint: PaintFacts | undefined;
}

/** A paint by mass: pigment in it, and its density. */
export interface PaintFacts {
  /** Mass of paint over mass of its pigment [1]. */
  readonly massPerPigment: FigureRef<Quantity>;
  readonly density: FigureRef<Quantity>;
}

/** Of the colours made of one pigment alone the one let down in most whites; undefined for none. */
export function singlePigmentPaint(
  pigment: string,
  fits: Fits,
  records: Records,
): Colour | undefined {
  const whites = ({ slug }: Colour): number => {
    const fit = fits.get(slug);
    return fit?.kind === "fit" ? fit.whites.length : 0;
  };
  const [best] = [...records.colours.values()]
    .filter(({ record }) => record.pigments.length === 1 && record.pigments[0]?.pigment === pigment)
    .toSorted(
      (one, other) => whites(other) - whites(one) || one.slug.localeCompare(other.slug, "en"),
    );
  return best;
}

export function componentPaints(
  parts: readonly PigmentPart[],
  fits: Fits,
  records: Records,
): ComponentPaint[] {
  return parts.map((part) => {
    const colour = singlePigmentPaint(part.slug, fits, records);
    return {
      part,
      colour,
      fit: colour && fits.get(colour.slug),
      paint: colour && paintFacts(colour, records),
    };
  });
}

/** What of a paint's mass is pigment, from its oil and what was added to it. */
export function paintFacts(colour: Colour, records: Records): PaintFacts {
  const additions = additionParts(colour, records);
  const oil = oilSection(
    colour,
    pigmentParts(colour, records),
    vehiclePart(colour, records),
    additions,
    records,
  );
  const oilIndex: FigureRef<Quantity> = {
    path: `colours.${colour.slug}.oil.oilIndexGPer100g`,
    figure: oil.oilIndexGPer100g,
  };
  const added = additions.reduce(
    (sum, { percentOfOil }) => sum + (isKnown(percentOfOil) ? percentOfOil.value : 0),
    0,
  );
  return {
    massPerPigment: {
      path: oilIndex.path,
      figure: derivedFigure(
        { name: "1 + oil, and what was added to it, by mass of pigment", unit: "1" },
        { oilIndex },
        (v) => 1 + (v.oilIndex / 100) * (1 + added / 100),
      ),
    },
    density: {
      path: `colours.${colour.slug}.oil.paintDensityGPerCm3`,
      figure: oil.paintDensityGPerCm3,
    },
  };
}

/** Pigment by mass of paint [1], in the middle of an estimate; undefined where the oil is not known. */
export function pigmentFraction({ massPerPigment: { figure } }: PaintFacts): number | undefined {
  return isKnown(figure) ? 1 / midpoint(figure.value) : undefined;
}

/** Shares of a mixture by mass and volume, of dry pigment and of the paints that make it on the palette. */
export function mixtureComponents(components: readonly ComponentPaint[]): MixtureComponent[] {
  const fractions = keyed(components, "fraction", ({ part }) => ({
    path: `pigments.${part.slug}.massFraction`,
    figure: part.massFraction,
  }));
  const densities = keyed(components, "density", ({ part }) => ({
    path: `pigments.${part.slug}.densityGPerCm3`,
    figure: part.densityGPerCm3,
  }));
  const noPaint = (figure: string, { part }: ComponentPaint): FigureRef<Quantity> => ({
    path: figure,
    figure: notStated(`no paint is made of ${part.name} alone`, ["colours"]),
  });
  const perPigment = keyed(
    components,
    "mass",
    (one) => one.paint?.massPerPigment ?? noPaint("oil", one),
  );
  const paintDensities = keyed(
    components,
    "paint",
    (one) => one.paint?.density ?? noPaint("density", one),
  );
  return components.map(({ part, colour }, own) => {
    const share = (
      name: string,
      inputs: Record<string, FigureRef<Quantity>>,
      amount: (v: Readonly<Record<string, number>>, i: number) => number,
    ): Figure<Quantity> =>
      derivedFigure(
        { name, unit: "1" },
        inputs,
        (v) => amount(v, own) / components.reduce((sum, _, i) => sum + amount(v, i), 0),
      );
    const at = (v: Readonly<Record<string, number>>, key: string, i: number): number =>
      v[`${key} ${i}`] ?? NaN;
    return {
      slug: part.slug,
      name: part.name,
      ...(colour === undefined ? {} : { paint: { slug: colour.slug, name: colour.record.name } }),
      pigmentVolumeFraction: share(
        "share by mass over density",
        { ...fractions, ...densities },
        (v, i) => at(v, "fraction", i) / at(v, "density", i),
      ),
      paintMassFraction: share(
        "share by mass, each pigment with its own paint's oil",
        { ...fractions, ...perPigment },
        (v, i) => at(v, "fraction", i) * at(v, "mass", i),
      ),
      paintVolumeFraction: share(
        "the same over the density of each paint",
        { ...fractions, ...perPigment, ...paintDensities },
        (v, i) => (at(v, "fraction", i) * at(v, "mass", i)) / at(v, "paint", i),
      ),
    };
  });
}

function keyed(
  components: readonly ComponentPaint[],
  key: string,
  place: (component: ComponentPaint) => FigureRef<Quantity>,
): Record<string, FigureRef<Quantity>> {
  return Object.fromEntries(components.map((component, i) => [`${key} ${i}`, place(component)]));
}
