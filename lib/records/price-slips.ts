import { coinDigits } from "../quantities/coin-digits.ts";
import { median } from "../quantities/median.ts";
import { errorAt, fractionHint, warningAt, type Fault, type Faults } from "./fault.ts";
import type { ParsedFiles } from "./parsed-files.ts";
import type { Parsed } from "./parsed-record.ts";

/** Times [1] the middle price of all other materials, and times the dearest of these, past which one was most likely written in another unit; and below the middle and the cheapest, where fillers cost little. Our own limits. */
const APART_TIMES = { middle: 100, below: 50, end: 10 } as const;
/** So many other materials have to have a price before one is held against them. */
const MANY = 3;

/**
 * The two prices that one with three decimals may be, where its currency has fewer: in thousands, and cut to its coins.
 * @param currency its code; two decimals without one.
 * @example twoReadings("1.200", "GBP") // ["1200", "1.20"]
 */
function twoReadings(
  written: string,
  currency: string | undefined,
): readonly [thousands: string, decimals: string] | undefined {
  const coins = coinDigits(currency);
  const [, whole = "", decimals = ""] = /^([1-9]\d{0,2})[.,](\d{3})$/.exec(written) ?? [];
  if (whole === "" || coins > 2) return undefined;
  return [`${whole}${decimals}`, Number(`${whole}.${decimals}`).toFixed(coins)];
}

/**
 * A price as it is written here: without its currency, and without what parts its thousands.
 * @returns nothing where that is no price either.
 * @example priceHint("1.200,50 EUR") // "written so: 1200.50"
 */
export function priceHint(written: string): string | undefined {
  const bare = written.replace(/^[\p{Sc}\p{L}\s]+|[\p{Sc}\p{L}\s]+$/gu, "");
  const [, whole = "", decimals = ""] =
    /^(\d{1,3}(?:[.,' \u00a0\u202f]\d{3})+|\d+)(?:[.,](\d{1,2}))?$/.exec(bare) ?? [];
  if (whole === "") return undefined;
  return `written so: ${whole.replace(/\D/g, "")}${decimals === "" ? "" : `.${decimals}`}`;
}

/** Prices whose point may part thousands, a rise that is most likely a fraction, a material dearer or cheaper by far than all others. */
export function* priceSlips(files: ParsedFiles): Faults {
  yield* thousandsFaults(files);
  yield* riseFaults(files);
  yield* materialFaults(files);
}

/** In a record a price is a number, and 1.200 would be read as 1.2 without a word. */
function* thousandsFaults({ colours, workshop }: ParsedFiles): Faults {
  for (const { record, yaml } of colours.values())
    for (const i of (record.sizes ?? []).keys()) {
      const path = ["sizes", i, "price"];
      const fault = thousandsFault(yaml.written(path) ?? "", workshop?.record.currency);
      if (fault !== undefined) yield errorAt(yaml.place(path), "records/price", { ...fault });
    }
}

/** What is said of a price that can be read in two ways. */
export function thousandsFault(
  written: string,
  currency: string | undefined,
): Required<Pick<Fault, "message" | "actual" | "expected">> | undefined {
  const readings = twoReadings(written, currency)?.join(" or ");
  return readings === undefined
    ? undefined
    : {
        message: `The price ${written} has three decimals, so it may be ${readings}: write the one that is meant`,
        actual: written,
        expected: readings,
      };
}

/** A rise of all prices by less than one in a hundred. */
function* riseFaults({ workshop }: ParsedFiles): Faults {
  const percent = workshop?.record.prices?.addPercent ?? 0;
  if (workshop === undefined || percent === 0 || Math.abs(percent) >= 1) return;
  yield warningAt(workshop.yaml.place(["prices", "addPercent"]), "records/price-rise", {
    message: `Less than 1 % is put on every price, ${percent} %`,
    actual: `${percent} %`,
    expected: "a share in percent, such as 20",
    hint: fractionHint(percent),
  });
}

function* materialFaults({ pigments, vehicles }: ParsedFiles): Faults {
  const priced = [...pigments.values(), ...vehicles.values()].flatMap(
    ({
      record,
      yaml,
    }: Pick<Parsed<{ readonly pricePerKg?: number | undefined }>, "record" | "yaml">) =>
      record.pricePerKg === undefined ? [] : [{ price: record.pricePerKg, yaml }],
  );
  if (priced.length <= MANY) return;
  for (const [i, { price, yaml }] of priced.entries()) {
    const others = priced.filter((_, other) => other !== i).map((one) => one.price);
    const [middle, dearest, cheapest] = [median(others), Math.max(...others), Math.min(...others)];
    if (price > APART_TIMES.middle * middle && price > APART_TIMES.end * dearest)
      yield warningAt(yaml.place(["pricePerKg"]), "records/price-reach", {
        message: `${price} a kilogram is ${Math.round(price / dearest)} times what the dearest of all other materials costs`,
        actual: String(price),
        expected: `near ${dearest} or below`,
        hint: `${Number((price / 100).toPrecision(6))}, if it was given in pence or cents; ${Number((price / 1000).toPrecision(6))}, if for a tonne, or if a point parts its thousands`,
      });
    if (price > 0 && price < middle / APART_TIMES.below && price < cheapest / APART_TIMES.end)
      yield warningAt(yaml.place(["pricePerKg"]), "records/price-reach", {
        message: `${price} a kilogram is 1/${Math.round(cheapest / price)} of what the cheapest of all other materials costs`,
        actual: String(price),
        expected: `near ${cheapest} or above`,
        hint: `${Number((price * 1000).toPrecision(6))}, if it was given for a gram`,
      });
  }
}
