import type { ColourFit, FitRefusal } from "../../optics/fit/colour-fit.ts";
import { at } from "../../quantities/at.ts";
import { isKnown, notStated, sourceFigure, type Figure } from "../../quantities/figure.ts";
import { midpoint, type Quantity } from "../../quantities/interval.ts";
import { derivedFigure } from "../../quantities/derived-figure.ts";
import { remembered, rememberedOfTwo } from "../../quantities/remembered.ts";
import type { Colour, Records } from "../../records/records.ts";
import { paintAsMade } from "../paint-as-made.ts";
import { mainOil } from "../oil/main-oil.ts";
import { colourRecord, paintsOfPigment, pigmentRecord } from "../record-inputs.ts";
import type { WeighedTube } from "../pigments/parts-of-paint.ts";
import type { PigmentPart } from "../pigments/pigment-figures.ts";
import type { Fits } from "../tints/strength.ts";
import * as d from "../declaration.ts";
import { slugOrder } from "../../quantities/name-order.ts";

/** A pigment of a mixture with the paint made of it alone, and what reckoning by paint needs of that. */
export interface ComponentPaint {
  readonly part: PigmentPart;
  /** Parts by mass of paint, where tubes were weighed. */
  readonly paintParts?: number;
  readonly colour: Colour | undefined;
  readonly fit: ColourFit | FitRefusal | undefined;
  readonly paint: PaintFacts | undefined;
}

/** A paint by mass: pigment in it, and its density. */
export interface PaintFacts {
  /** Mass of paint over mass of its pigment [1]. */
  readonly massPerPigment: Figure<Quantity>;
  readonly density: Figure<Quantity>;
}

/** Of the colours made of one pigment alone the one let down in most whites; undefined for none. */
function singlePigmentPaint(pigment: string, fits: Fits, records: Records): Colour | undefined {
  return mostLetDown(fittedColours(fits, records.colours), pigment);
}

interface FittedColours {
  readonly fits: Fits;
  readonly colours: Records["colours"];
}

const fittedColours = rememberedOfTwo((fits: Fits, colours: Records["colours"]): FittedColours => ({
  fits,
  colours,
}));

const mostLetDown = remembered(
  ({ fits, colours }: FittedColours, pigment: string): Colour | undefined => {
    const whites = ({ slug }: Colour): number => {
      const fit = fits.get(slug);
      return fit?.kind === "fit" ? fit.whites.length : 0;
    };
    const [best] = paintsOfPigment(pigment, colours).toSorted(
      (one, other) => whites(other) - whites(one) || slugOrder(one.slug, other.slug),
    );
    return best;
  },
);

export function componentPaints(
  parts: readonly PigmentPart[],
  tubes: readonly WeighedTube[] | undefined,
  fits: Fits,
  records: Records,
): ComponentPaint[] {
  return parts.map((part) => {
    const tube = tubes?.find(({ pigment }) => pigment === part.slug);
    const colour = tube === undefined ? singlePigmentPaint(part.slug, fits, records) : tube.paint;
    return {
      part,
      ...(tube !== undefined && { paintParts: tube.paintParts }),
      colour,
      fit: colour && fits.get(colour.slug),
      paint: colour && paintFacts(colour, records),
    };
  });
}

/** What of a paint's mass is pigment, from its oil and what was added to it. */
export function paintFacts(colour: Colour, records: Records): PaintFacts {
  const { oil, additions } = paintAsMade(colour, records);
  const shares = Object.fromEntries<Figure<Quantity>>(
    additions.map(({ slug, percentOfOil }) => [`percent ${slug}`, percentOfOil]),
  );
  return {
    massPerPigment: derivedFigure(
      { name: "1 + oil, and what was added to it, by mass of pigment", unit: "1" },
      { ...shares, oilIndex: mainOil(oil) },
      (v) =>
        1 +
        (v.oilIndex / 100) *
          (1 + additions.reduce((sum, { slug }) => sum + at(v, `percent ${slug}`), 0) / 100),
    ),
    density: oil.paintDensityGPerCm3,
  };
}

/** Pigment by mass of paint [1], in the middle of an estimate; undefined where the oil is not known. */
export function pigmentFraction({ massPerPigment }: PaintFacts): number | undefined {
  return isKnown(massPerPigment) ? 1 / midpoint(massPerPigment.value) : undefined;
}

export const MIXTURE_COMPONENT = d.section({
  /** Of the pigment. */
  slug: d.text,
  name: d.text,
  /** The paint of this pigment alone that it is reckoned from. */
  paint: d.optional(d.NAMED),
  /** Shares of the dry pigment, and of the component paints that squeezed out together make it: by mass and by volume [1]. */
  pigmentVolumeFraction: d.quantity({ ...d.SHARE, word: "pigmentVolumeShare" }),
  paintMassFraction: d.quantity({ ...d.SHARE, word: "paintMassShare" }),
  paintVolumeFraction: d.quantity({ ...d.SHARE, word: "paintVolumeShare" }),
});
export type MixtureComponent = d.SectionOf<typeof MIXTURE_COMPONENT>;

/** Shares of a mixture by mass and volume, of dry pigment and of the paints that make it on the palette. */
export function mixtureComponents(
  mixture: Colour,
  components: readonly ComponentPaint[],
): MixtureComponent[] {
  const weighed = keyed(components, "tube", ({ paintParts }) =>
    paintParts === undefined
      ? notStated("its paints were not weighed", [], colourRecord(mixture, "pigments"))
      : sourceFigure<Quantity>("stated", paintParts, {
          unit: "1",
          method: "parts of paint by mass, as recorded",
          inputs: colourRecord(mixture, "pigments"),
        }),
  );
  const areTubes = components.every(({ paintParts }) => paintParts !== undefined);
  const fractions = keyed(components, "fraction", ({ part }) => part.massFraction);
  const densities = keyed(components, "density", ({ part }) => part.densityGPerCm3);
  const noPaint = ({ part }: ComponentPaint): Figure<Quantity> =>
    notStated(`no paint is made of ${part.name} alone`, ["colours"], [pigmentRecord(part.slug)]);
  const perPigment = keyed(components, "mass", (one) => one.paint?.massPerPigment ?? noPaint(one));
  const paintDensities = keyed(components, "paint", (one) => one.paint?.density ?? noPaint(one));
  return components.map(({ part, colour }, own) => {
    const share = (
      name: string,
      inputs: Record<string, Figure<Quantity>>,
      amount: (v: Readonly<Record<string, number>>, i: number) => number,
    ): Figure<Quantity> =>
      derivedFigure(
        { name, unit: "1" },
        inputs,
        (v) => amount(v, own) / components.reduce((sum, _, i) => sum + amount(v, i), 0),
      );
    const of = (v: Readonly<Record<string, number>>, key: string, i: number): number =>
      at(v, `${key} ${i}`);
    return {
      slug: part.slug,
      name: part.name,
      ...(colour !== undefined && { paint: { slug: colour.slug, name: colour.record.name } }),
      pigmentVolumeFraction: share(
        "share by mass over density",
        { ...fractions, ...densities },
        (v, i) => of(v, "fraction", i) / of(v, "density", i),
      ),
      paintMassFraction: areTubes
        ? share("parts of paint over their sum", weighed, (v, i) => of(v, "tube", i))
        : share(
            "share by mass, each pigment with its own paint's oil",
            { ...fractions, ...perPigment },
            (v, i) => of(v, "fraction", i) * of(v, "mass", i),
          ),
      paintVolumeFraction: areTubes
        ? share(
            "the same over the density of each paint",
            { ...weighed, ...paintDensities },
            (v, i) => of(v, "tube", i) / of(v, "paint", i),
          )
        : share(
            "the same over the density of each paint",
            { ...fractions, ...perPigment, ...paintDensities },
            (v, i) => (of(v, "fraction", i) * of(v, "mass", i)) / of(v, "paint", i),
          ),
    };
  });
}

function keyed(
  components: readonly ComponentPaint[],
  key: string,
  place: (component: ComponentPaint) => Figure<Quantity>,
): Record<string, Figure<Quantity>> {
  return Object.fromEntries(components.map((component, i) => [`${key} ${i}`, place(component)]));
}
