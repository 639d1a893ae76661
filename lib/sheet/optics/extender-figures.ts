import { extendedPaint, type ExtenderStatement } from "../../optics/mixtures/mixed-coefficients.ts";
import type { RecordRoot } from "../../quantities/figure.ts";
import type { Colour, Records } from "../../records/records.ts";
import * as d from "../declaration.ts";
import { filled, foundFrom } from "../found.ts";
import { notationFigure, type Origin } from "../notations/lab-figures.ts";
import { opacityChart } from "./opacity-chart.ts";
import {
  colourRecord,
  drawdownRecords,
  filmRecords,
  ingredientRecords,
  paintOfWhite,
  WORKSHOP,
} from "../record-inputs.ts";
import type { Fits } from "../tints/strength.ts";
import { filmsOf, letDownCoefficients } from "./let-down-coefficients.ts";

/** What a medium does to the workshop's strength reference, and how its figures came about. */
interface Extended {
  readonly paint: Colour;
  readonly ruling: ExtenderStatement;
  readonly origin: Origin;
}
const extended = foundFrom<Extended>();

/** A black let down with volumes of an extender medium: L* (D65/10), gloss included. */
export const EXTENDER = d.section({
  colour: extended.found(d.NAMED, ({ paint: { slug, record } }) => ({ slug, name: record.name })),
  volumes: extended.found(d.plainNumber, ({ ruling }) => ruling.values.volumes),
  fromL: extended.found(
    d.listed(d.number({ ...d.ONE_PLACE, word: "extendedFromL" })),
    ({ ruling, origin }) => notationFigure(ruling.values.fromL, "1", origin),
  ),
  toL: extended.found(
    d.listed(d.number({ ...d.ONE_PLACE, word: "extendedToL" })),
    ({ ruling, origin }) => notationFigure(ruling.values.toL, "1", origin),
  ),
  sentence: extended.found(d.statement, ({ ruling, paint }) => ({
    ...ruling,
    values: { ...ruling.values, colour: paint.record.name },
  })),
});
export type ExtenderFigures = d.SectionOf<typeof EXTENDER>;

/**
 * An extender medium shown for what it is, in the workshop's strength reference:
 * the medium by its films; the colour by its let-downs in a white whose films were
 * read, since films of a strong colour hide and tell only the least it can absorb.
 */
export function extenderFigures(
  colour: Colour,
  family: string | undefined,
  fits: Fits,
  records: Records,
): ExtenderFigures | undefined {
  const reference = records.workshop.strengthReference;
  const paint = reference === undefined ? undefined : records.colours.get(reference);
  const fit = reference === undefined ? undefined : fits.get(reference);
  if (family !== "extender" || paint === undefined || fit?.kind !== "fit") return undefined;
  const medium = filmsOf(colour, fit.grid, records);
  const strong = letDownCoefficients(paint, fit, records);
  if (medium === undefined || strong === undefined) return undefined;
  const { ruling } = extendedPaint(strong.coefficients, medium);
  const { name } = paint.record;
  const origin: Origin = {
    standing: "derived",
    inputs: [...madeOf(colour, paint, records), ...opacityChart(fit.grid, records).assumed],
    source: "duncan-1940",
    method: `K and S of ${name} from its let-downs in ${strong.white}, of ${strong.white} and of the medium from their films, mixed by volume; gloss included, D65/10`,
  };
  return filled(EXTENDER, { paint, ruling, origin });
}

/** The medium by its films, the strength reference by its let-downs and density, its whites by their films and densities. */
function madeOf(medium: Colour, strong: Colour, records: Records): RecordRoot[] {
  const density = (paint: Colour): RecordRoot[] => [
    ...ingredientRecords(paint, records),
    ...colourRecord(paint, "oilIndexGPer100g"),
  ];
  const whites = new Set((strong.record.tints ?? []).map(({ white }) => white));
  return [
    ...filmRecords(medium, records),
    ...drawdownRecords(strong, records),
    ...[...whites].flatMap((white) => {
      const paint = paintOfWhite(white, records);
      return paint === undefined ? [] : [...filmRecords(paint, records), ...density(paint)];
    }),
    ...density(strong),
    WORKSHOP,
  ];
}
