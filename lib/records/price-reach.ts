import { median } from "../quantities/median.ts";
import { warningAt, type Faults } from "./fault.ts";
import type { ParsedFiles } from "./parsed-files.ts";
import type { Colour } from "./records.ts";

/** So many other prices have to agree before one that differs is spoken of. */
const MANY = 3;
/** Times [1] from which on a price to the millilitre is another's ten times over, and a pigment a dear one. Our own limit. */
const TIMES = 10;

/** Times [1] from which on two sizes of one colour no longer bear each other out. Our own limit. */
const OWN_TIMES = 5;

/** Times [1] the cost of what is in it that no paint is sold at: in hundredths of a currency the dearest pigments pass it. Our own limit. */
const MOST_OF_MATERIALS = 100;
/** Mass of paint [kg/ml] by which that cost is told; lead whites weigh twice as much, blacks half. */
const KG_PER_ML = 0.002;

interface Priced {
  readonly slug: string;
  readonly perMl: number;
  readonly ml: number;
  /** As its list or record has it, before the workshop's rule. */
  readonly written: number;
  readonly place: Colour["sizes"][number]["place"];
}

/**
 * Prices whose decimal point may have slipped: to the millilitre ten times the middle of the range or a tenth, where
 * neither another size of the colour bears that out nor what its pigment costs.
 */
export function* priceReachFaults(colours: readonly Colour[], files: ParsedFiles): Faults {
  const priced = colours.flatMap(({ slug, sizes }) =>
    sizes.flatMap(({ ml, price = 0, written = price, place }): Priced[] =>
      price === 0 ? [] : [{ slug, perMl: price / ml, ml, written, place }],
    ),
  );
  const beyond = priced.filter(
    ({ slug, perMl }) => perMl > MOST_OF_MATERIALS * KG_PER_ML * dearestPerKg(slug, files),
  );
  for (const { slug, ml, written, place } of beyond)
    yield warningAt(place("price"), "records/price-reach", {
      message: `${written} for ${ml} ml is more than ${MOST_OF_MATERIALS} times what is in it costs, by the ${dearestPerKg(slug, files)} a kilogram of its dearest material`,
      actual: String(written),
      expected: `far below ${Number((MOST_OF_MATERIALS * KG_PER_ML * ml * dearestPerKg(slug, files)).toPrecision(3))}`,
      hint: `${Number((written / 100).toPrecision(6))}, if it was given in pence or cents`,
    });
  yield* exchangedFaults(priced);
  const rest = priced.filter((one) => !beyond.includes(one));
  if (rest.length <= MANY) return;
  const usual = median(rest.map(({ perMl }) => perMl));
  const dear = dearPigments(files);
  for (const { slug, perMl, ml, written, place } of rest) {
    const times = perMl / usual;
    const isLikeOwn = (): boolean =>
      rest.some(
        (other) =>
          other.slug === slug && other.ml !== ml && !isApart(perMl / other.perMl, OWN_TIMES),
      );
    if (!isApart(times) || isLikeOwn() || (times > 1 && isMadeOf(slug, dear, files))) continue;
    yield warningAt(place("price"), "records/price-reach", {
      message: `${written} for ${ml} ml is ${times > 1 ? `${Math.round(times)} times` : `1/${Math.round(1 / times)} of`} what the range costs to the millilitre in the middle`,
      actual: String(written),
      expected: `within ${TIMES} times of ${Number((written / times).toPrecision(3))}`,
      hint: "a decimal point may have slipped, in the price or in the size",
    });
  }
}

/** A size that nothing else is sold in, at a price that is the size of many others. */
function* exchangedFaults(priced: readonly Priced[]): Faults {
  const soldIn = (size: number): number => priced.filter(({ ml }) => ml === size).length;
  for (const { ml, written, place } of priced) {
    if (soldIn(ml) > 1 || soldIn(written) < MANY) continue;
    yield warningAt(place("ml"), "records/price-reach", {
      message: `Nothing else is sold in ${ml} ml, and its price here, ${written}, is the size of ${soldIn(written)} others`,
      actual: `${ml} ml at ${written}`,
      expected: `${written} ml at ${ml}, or a size that others have`,
      hint: "size and price exchanged?",
    });
  }
}

function isApart(times: number, limit: number = TIMES): boolean {
  return times >= limit || times <= 1 / limit;
}

/** Price [1/kg] of the dearest pigment or oil of a colour; endless where one of them has none. */
function dearestPerKg(
  slug: string,
  { colours, pigments, vehicles, workshop }: ParsedFiles,
): number {
  const record = colours.get(slug)?.record;
  const vehicle = record?.vehicle ?? workshop?.record.vehicle ?? "";
  return Math.max(
    vehicles.get(vehicle)?.record.pricePerKg ?? Infinity,
    ...(record?.pigments ?? []).map(
      ({ pigment }) => pigments.get(pigment)?.record.pricePerKg ?? Infinity,
    ),
  );
}

/** Pigments that cost ten times what pigments do in the middle. */
function dearPigments({ pigments }: ParsedFiles): ReadonlySet<string> {
  const priced = [...pigments.values()].flatMap(({ slug, record: { pricePerKg } }) =>
    pricePerKg === undefined ? [] : [{ slug, pricePerKg }],
  );
  if (priced.length <= MANY) return new Set();
  const usual = median(priced.map(({ pricePerKg }) => pricePerKg));
  return new Set(
    priced.filter(({ pricePerKg }) => pricePerKg >= TIMES * usual).map(({ slug }) => slug),
  );
}

function isMadeOf(
  colour: string,
  dear: ReadonlySet<string>,
  { colours }: Pick<ParsedFiles, "colours">,
): boolean {
  return colours.get(colour)?.record.pigments.some(({ pigment }) => dear.has(pigment)) === true;
}

/** A size that is given away: a price of nothing, or one that the workshop's rule rounds down to it. */
export function* freeSizeFaults(colours: readonly Colour[]): Faults {
  for (const { sizes } of colours)
    for (const { ml, price, written = price, place } of sizes)
      if (price === 0)
        yield warningAt(place("price"), "records/price-of-nothing", {
          message:
            written === 0
              ? `${ml} ml cost nothing here, and a price list would say so`
              : `${ml} ml at ${written} are rounded to nothing by the rule of prices in workshop.yaml`,
          actual: String(written),
          expected: "a price above 0",
          hint: written === 0 ? "a size that has no price yet is listed without one" : undefined,
        });
}
