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
  if (priced.length <= MANY) return;
  const usual = median(priced.map(({ perMl }) => perMl));
  const dear = dearPigments(files);
  for (const { slug, perMl, ml, written, place } of priced) {
    const times = perMl / usual;
    const isLikeOwn = (): boolean =>
      priced.some(
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

function isApart(times: number, limit: number = TIMES): boolean {
  return times >= limit || times <= 1 / limit;
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
