import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { nearestHint } from "../diagnostics/nearest-word.ts";
import { errorAt, warningAt, type Faults } from "./fault.ts";
import { isFaulty, type ParsedFiles } from "./parsed-files.ts";
import type { priceList, Column, PriceRow } from "./price-list.ts";
import { roundedPrice } from "./rounded-price.ts";
import { remembered } from "../quantities/remembered.ts";
import type { YamlRecord } from "./yaml-record.ts";

/** What of a size can be complained of. */
type SizeKey = "ml" | "price" | "code" | "ean";

/** A size that a colour is put up in, as its own record or prices.csv gives it. */
export interface OfferedSize {
  readonly ml: number;
  /** By the workshop's rounding rule, in its currency. */
  readonly price?: number;
  /** The same before that rule. */
  readonly written?: number;
  /** The price group that a label prints in place of a price. */
  readonly code?: string;
  readonly ean?: string;
  readonly place: (key: SizeKey) => Diagnostic["place"];
}

/**
 * The sizes of every colour by slug, in order of contents: those of its record and those of
 * prices.csv, each once. Complains of a size that is listed twice, of a colour that there is
 * not, of a price without a currency, and of one EAN on two things.
 */
export function offeredSizes(
  files: ParsedFiles,
  diagnostics: Diagnostic[],
  listOf: typeof priceList,
): ReadonlyMap<string, readonly OfferedSize[]> {
  const { colours, prices, workshop } = files;
  const { prices: rule, currency } = workshop?.record ?? {};
  const bySlug = new Map<string, OfferedSize[]>();
  const add = (slug: string, size: OfferedSize): void => {
    const sizes = bySlug.get(slug) ?? [];
    const twin = sizes.find(({ ml }) => ml === size.ml);
    if (twin === undefined) {
      bySlug.set(
        slug,
        [...sizes, size].sort((one, other) => one.ml - other.ml),
      );
      return;
    }
    const { file, line } = twin.place("ml");
    diagnostics.push(
      errorAt(size.place("ml"), "records/duplicate", {
        message: `The size ${size.ml} ml of ${slug} is listed already, at ${file}:${line}`,
        actual: `${size.ml} ml twice`,
        expected: "each size of a colour once, in its own record or in prices.csv",
      }),
    );
  };
  for (const [slug, { record, yaml }] of colours)
    record.sizes?.forEach((size, i) =>
      add(slug, {
        ...given(size),
        ...(size.price === undefined
          ? {}
          : { price: roundedPrice(size.price, rule, currency), written: size.price }),
        place: placesInRecord(yaml, i),
      }),
    );
  const listed = prices && listOf(prices.file, prices.text, currency);
  diagnostics.push(...(listed?.diagnostics ?? []));
  for (const row of listed?.rows ?? []) {
    const { colour, price } = row;
    const place = placesInList(row, prices?.file ?? "");
    if (!colours.has(colour)) {
      if (!isFaulty(files, "colours", colour))
        diagnostics.push(
          errorAt(place("colour"), "records/missing-colour", {
            message: `There is no colour ${colour} in colours/`,
            actual: colour,
            expected: "a file of colours/, without its ending",
            hint: nearestHint(colour, colours.keys()),
          }),
        );
      continue;
    }
    add(colour, {
      ...given(row),
      ...(price === undefined
        ? {}
        : { price: roundedPrice(price, rule, currency), written: price }),
      place,
    });
  }
  diagnostics.push(...eanFaults(bySlug), ...currencyFaults(listed?.rows ?? [], files));
  return bySlug;
}

// The same functions for a row or a size that was parsed once for many runs.
const placesInList = remembered(
  ({ at }: PriceRow, file: string) =>
    (column: Column): Diagnostic["place"] => ({ file, ...at[column], path: column }),
);

const placesInRecord = remembered(
  (yaml: YamlRecord, i: number) =>
    (key: SizeKey): Diagnostic["place"] =>
      yaml.place(["sizes", i, key]),
);

function given({
  ml,
  code,
  ean,
}: {
  readonly ml: number;
  readonly code?: string | undefined;
  readonly ean?: string | undefined;
}): Pick<OfferedSize, "ml" | "code" | "ean"> {
  return {
    ml,
    ...(code !== undefined && { code }),
    ...(ean !== undefined && { ean }),
  };
}

/** A shop's till takes two things of one number for the same. */
function* eanFaults(bySlug: ReadonlyMap<string, readonly OfferedSize[]>): Faults {
  const first = new Map<string, string>();
  for (const [slug, sizes] of bySlug)
    for (const { ean, ml, place } of sizes) {
      if (ean === undefined) continue;
      const twin = first.get(ean);
      if (twin === undefined) first.set(ean, `${slug} in ${ml} ml`);
      else
        yield errorAt(place("ean"), "records/ean-twice", {
          message: `The EAN ${ean} is that of ${twin} already`,
          actual: ean,
          expected: "an EAN of its own for each colour and size",
        });
    }
}

/** Told once, at the first price of the list. */
function* currencyFaults(rows: readonly PriceRow[], { workshop, prices }: ParsedFiles): Faults {
  const priced = rows.find(({ price }) => price !== undefined);
  if (workshop !== undefined && workshop.record.currency === undefined && priced !== undefined)
    yield warningAt(placesInList(priced, prices?.file ?? "")("price"), "records/currency", {
      message: "There are prices, and workshop.yaml gives no currency: none of them is printed",
      actual: "no currency",
      expected: "currency in workshop.yaml, three capitals such as GBP",
    });
}
