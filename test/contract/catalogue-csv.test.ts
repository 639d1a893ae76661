import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { parse } from "csv-parse/sync";
import { describe, expect, inject, test } from "vitest";
import { eanFault } from "../../lib/records/ean.ts";
import { publishedSheets } from "./published.ts";

const ROWS = parse<Readonly<Record<string, string>>>(
  readFileSync(join(inject("siteDir"), "catalogue.csv"), "utf8"),
  { columns: true },
);
const SHEETS = publishedSheets();

interface Offer {
  readonly currency?: string;
  readonly sizes: readonly {
    readonly ml: number;
    readonly price?: number;
    readonly unitPrice?: { readonly ml: number; readonly price: number };
  }[];
}

test("every row has an id of its own, and every EAN its check digit", () => {
  expect(ROWS.length).toBeGreaterThan(SHEETS.length);
  expect(new Set(ROWS.map(({ id }) => id)).size).toBe(ROWS.length);
  const numbers = ROWS.flatMap(({ ean }) => (ean === undefined || ean === "" ? [] : [ean]));
  expect(numbers.length).toBeGreaterThan(30);
  expect(numbers.filter((ean) => eanFault(ean) !== undefined)).toEqual([]);
});

test("its heads are plain: lower-case words that any program takes for names", () => {
  expect(Object.keys(ROWS[0] ?? {}).filter((head) => !/^[a-z]+(_[a-z]+)*$/.test(head))).toEqual([]);
});

describe.each(SHEETS)("the rows of $slug", ({ slug, sheet }) => {
  const offer = sheet["offer"] as Offer | undefined;
  const cautions = sheet["cautions"] as Readonly<Record<string, readonly string[]>>;
  const rows = ROWS.filter(({ id }) => id === slug || id?.startsWith(`${slug}-`) === true).filter(
    ({ name }) => name === sheet["name"],
  );

  test("are one a size, with the price of the sheet; one where no size is offered", () => {
    const sizes = offer?.sizes ?? [];
    expect(rows.map(({ size_ml, price, currency }) => [size_ml, price, currency])).toEqual(
      sizes.length === 0
        ? [["", "", ""]]
        : sizes.map(({ ml, price }) => [
            String(ml),
            price === undefined ? "" : String(price),
            price === undefined ? "" : offer?.currency,
          ]),
    );
  });

  test("say what a litre costs, to the penny, wherever they say a price", () => {
    for (const { price, size_ml, unit_price, unit_price_ml } of rows) {
      const perLitre = (1000 * Number(price)) / Number(size_ml);
      if (price === "") expect([unit_price, unit_price_ml]).toEqual(["", ""]);
      else {
        expect(unit_price_ml).toBe("1000");
        expect(Math.abs(Number(unit_price) - perLitre)).toBeLessThanOrEqual(0.005);
      }
    }
    expect(rows.map(({ unit_price }) => unit_price)).toEqual(
      rows.map(({ size_ml }) =>
        String(offer?.sizes.find(({ ml }) => String(ml) === size_ml)?.unitPrice?.price ?? ""),
      ),
    );
  });

  test("name every hazard statement of the sheet, and are for sale only where it has a price to offer", () => {
    for (const row of rows) {
      for (const code of cautions["hazardStatements"] ?? [])
        expect(row["hazard_statements"], code).toContain(`${code} `);
      if ((cautions["unknown"] ?? []).length > 0) expect(row["for_sale"]).toBe("no");
      if (row["price"] !== "") expect(row["for_sale"]).toBe("yes");
    }
  });

  test("weigh what the sheet says that a tube holds, with what that rests on", () => {
    const evidence = sheet["evidence"] as readonly Readonly<Record<string, unknown>>[];
    for (const { size_ml, net_weight_g, net_weight_standing } of rows) {
      const held = evidence.find(
        ({ figure }) => figure === `fill.fillings.paint.holds.${size_ml}-ml.massG`,
      );
      const value = held?.["value"] as number | readonly [number, number] | undefined;
      if (value === undefined) expect([net_weight_g, net_weight_standing]).toEqual(["", ""]);
      else if (typeof value === "number") {
        expect(Math.abs(Number(net_weight_g) - value)).toBeLessThanOrEqual(0.5);
        expect(net_weight_standing).toBe(held?.["restsOn"]);
      } else {
        const [low, high] = value;
        expect(Math.abs(Number(net_weight_g) - (low + high) / 2)).toBeLessThanOrEqual(0.5);
        expect(net_weight_standing).toBe(
          `${String(held?.["restsOn"])}, ${Math.round(low)} to ${Math.round(high)}`,
        );
      }
    }
  });

  test("lead to a page and a picture that are there", () => {
    for (const { address = "", picture = "" } of rows)
      for (const link of [address, picture].filter((one) => one !== ""))
        expect(existsSync(join(inject("siteDir"), new URL(link).pathname)), link).toBe(true);
  });
});
