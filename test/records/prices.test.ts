import { describe, expect, test } from "vitest";
import { loadRecords } from "../../lib/records/load-records.ts";
import { contentFolder, SMALLEST_WORKSHOP } from "../support/content-folder.ts";
import { checkTold } from "./told.ts";

const LINE = "content/prices.csv";
const CURRENCY = { "workshop.yaml": "name: Test Workshop\ncurrency: GBP\n" };
const withSizes = (sizes: string): string =>
  SMALLEST_WORKSHOP["colours/lamp-black.md"].replace(
    "\n---\nNotes",
    `\nsizes: ${sizes}\n---\nNotes`,
  );

describe("a price list", () => {
  test("gives a colour its sizes, beside those of its record, in order, by the rounding rule", () => {
    const { content, home } = contentFolder({
      ...SMALLEST_WORKSHOP,
      "workshop.yaml": `${CURRENCY["workshop.yaml"]}prices: { addPercent: 10, roundTo: 0.5, rounding: up }\n`,
      "prices.csv":
        "ml;colour;price;code;ean\n120 ml;lamp-black;19,20;B;6291041500213\n15;lamp-black;;A;\n",
      "colours/lamp-black.md": withSizes('[{ ml: 40, price: 8.1, ean: "7300011000017" }]'),
    });
    const { records, diagnostics } = loadRecords(content, home);
    expect(diagnostics).toEqual([]);
    expect(records?.colours.get("lamp-black")?.sizes).toMatchObject([
      { ml: 15, code: "A" },
      { ml: 40, price: 9, ean: "7300011000017" },
      { ml: 120, price: 21.5, code: "B", ean: "6291041500213" },
    ]);
    expect(records?.colours.get("lamp-black")?.sizes[0]?.price).toBeUndefined();
  });

  checkTold([
    {
      what: "a price of nothing, and one that is rounded to it",
      files: {
        "workshop.yaml": `${CURRENCY["workshop.yaml"]}prices: { roundTo: 5, rounding: down }\n`,
        "prices.csv":
          "colour,ml,price\nlamp-black,15,4.9\nlamp-black,40,0\nlamp-black,60,\nlamp-black,120,5\n",
      },
      told: [
        `${LINE}:2:15 warning 15 ml at 4.9 are rounded to nothing by the rule of prices in workshop.yaml records/price-of-nothing`,
        `${LINE}:3:15 warning 40 ml cost nothing here, and a price list would say so; a size that has no price yet is listed without one records/price-of-nothing`,
      ],
    },
    {
      what: "a price of a colour that is made no more, as a note",
      files: {
        ...CURRENCY,
        "prices.csv": "colour,ml,price\nlamp-black,40,8\n",
        "colours/lamp-black.md": SMALLEST_WORKSHOP["colours/lamp-black.md"].replace(
          "\n---\nNotes",
          "\ndiscontinued: 2026-03-01\n---\nNotes",
        ),
      },
      told: `${LINE}:2:15 note lamp-black has a price for 40 ml, and is made no more from 2026-03-01 on: its sheet prints no price, and the line can go once none of it is left to label records/past-price`,
    },
    {
      what: "a colour that there is not, with the nearest",
      files: { ...CURRENCY, "prices.csv": "colour,ml,price\nlamp-blak,40 ml,8\n" },
      told: `${LINE}:2:1 error There is no colour lamp-blak in colours/; nearest: lamp-black records/missing-colour`,
    },
    {
      what: "cells that say no size, no price and no EAN",
      files: {
        ...CURRENCY,
        "prices.csv": "colour,ml,price,ean\nlamp-black,large,£8,6291041500214\n",
      },
      told: [
        `${LINE}:2:12 error The size can't be "large": it is contents in millilitres, such as 40 records/price`,
        `${LINE}:2:18 error The price can't be "£8": it is a number of 0 or more, in the workshop's currency; written so: 8 records/price`,
        `${LINE}:2:21 error The ean can't be "6291041500214": it is 6291041500213, by the check digit of an EAN-13 records/price`,
      ],
    },
    {
      what: "a head that is not there, and one that nobody knows",
      files: { ...CURRENCY, "prices.csv": "colour,mls,prize\nlamp-black,40,8\n" },
      told: [
        `${LINE}:1:8 error A price list has no column "mls": its columns are colour, ml, price, code, ean; nearest: ml records/price-column`,
        `${LINE}:1:12 error A price list has no column "prize": its columns are colour, ml, price, code, ean; nearest: price records/price-column`,
      ],
    },
    {
      what: "a head without a price",
      files: { ...CURRENCY, "prices.csv": "colour,ml\nlamp-black,40\n" },
      told: `${LINE}:1:1 error The price list has no column price: its first line is colour,ml,price, with code and ean where they are used records/price-column`,
    },
    {
      what: "no head at all, once",
      files: { ...CURRENCY, "prices.csv": "lamp-black,40,8\nlamp-black,120,20\n" },
      told: `${LINE}:1:1 error The first line of the price list names no columns: it is colour,ml,price, with code and ean where they are used records/price-column`,
    },
    {
      what: "a size in another unit",
      files: { ...CURRENCY, "prices.csv": "colour;ml;price\nlamp-black;0,04 l;8\n" },
      told: `${LINE}:2:12 error The size can't be "0,04 l": it is contents in millilitres, such as 40; written so: 40 records/price`,
    },
    {
      what: "prices cut in two at their decimal comma, once",
      files: {
        ...CURRENCY,
        "prices.csv":
          "colour,ml,price,code\nlamp-black,15,4,50\nlamp-black,40,9,00\nlamp-black,60,13.00,07\n",
      },
      told: `${LINE}:2:15 warning The price 4 and the code 50 stand where 4,50 would, since a comma parts the cells, and so in 1 more line; 4.50 if it is one price; 4.00 if 50 is its code records/price-cut`,
    },
    {
      what: "price groups that are no coins, or between semicolons",
      files: { ...CURRENCY, "prices.csv": "colour,ml,price,code\nlamp-black,15,4,5\n" },
      told: [],
    },
    {
      what: "price groups of two digits between semicolons",
      files: { ...CURRENCY, "prices.csv": "colour;ml;price;code\nlamp-black;15;4;50\n" },
      told: [],
    },
    {
      what: "a price cut in two before an EAN",
      files: { ...CURRENCY, "prices.csv": "colour,ml,price,code,ean\nlamp-black,15,4,50,3,\n" },
      told: `${LINE}:2:20 error The ean can't be "3": it is 13 digits, the last of them the check digit of an EAN-13; a decimal comma in the price? between commas it is written 4.50 records/price`,
    },
    {
      what: "price and price group exchanged",
      files: { ...CURRENCY, "prices.csv": "colour,ml,price,code\nlamp-black,15,4,12.50\n" },
      told: `${LINE}:2:17 warning The code 12.50 is written as a price, and the price 4 is not; price and code exchanged? records/price-cell`,
    },
    {
      what: "a size that the colour's own record has already",
      files: {
        ...CURRENCY,
        "prices.csv": "colour,ml,price\nlamp-black,40 ml,9\n",
        "colours/lamp-black.md": withSizes("[{ ml: 40, price: 8 }]"),
      },
      told: `${LINE}:2:12 error The size 40 ml of lamp-black is listed already, at content/colours/lamp-black.md:6 records/duplicate`,
    },
    {
      what: "one EAN on two sizes",
      files: {
        ...CURRENCY,
        "prices.csv":
          "colour,ml,price,ean\nlamp-black,40 ml,9,6291041500213\nlamp-black,120,20,6291041500213\n",
      },
      told: `${LINE}:3:19 error The EAN 6291041500213 is that of lamp-black in 40 ml already records/ean-twice`,
    },
    {
      what: "prices whose point may part thousands, in the list and in a record",
      files: {
        ...CURRENCY,
        "prices.csv": "colour;ml;price\nlamp-black;40;1.200\nlamp-black;120;12,345\n",
        "colours/lamp-black.md": withSizes("[{ ml: 60, price: 1.500 }]"),
      },
      told: [
        `content/colours/lamp-black.md:6:26 error The price 1.500 has three decimals, so it may be 1500 or 1.50: write the one that is meant records/price`,
        `${LINE}:2:15 error The price 1.200 has three decimals, so it may be 1200 or 1.20: write the one that is meant records/price`,
        `${LINE}:3:16 error The price 12,345 has three decimals, so it may be 12345 or 12.35: write the one that is meant records/price`,
      ],
    },
    ...(
      [
        ["12,50", "can't be 12,50: it takes a number; with a decimal point: 12.50"],
        ["12,05", "can't be 12,05: it takes a number; with a decimal point: 12.05"],
        ["1.200,50", "can't be 1.200,50: it takes a number; with a decimal point: 1200.50"],
        ['"12,50"', 'can\'t be "12,50": it takes a number; with a decimal point: 12.50'],
        ['"1.200,50 €"', 'can\'t be "1.200,50 €": it takes a number; written so: 1200.50'],
        ["€12", 'can\'t be "€12": it takes a number; written so: 12'],
      ] as const
    ).map(([price, told]) => ({
      what: `a record's price of ${price}`,
      files: {
        ...CURRENCY,
        "colours/lamp-black.md": withSizes(`[{ ml: 60, price: ${price} }]`),
      },
      told: `content/colours/lamp-black.md:6:26 error sizes[0].price ${told} records/schema`,
    })),
    {
      what: "a unit of measurement that is none",
      files: { "workshop.yaml": `${CURRENCY["workshop.yaml"]}prices: { unitMl: 250 }\n` },
      told: "content/workshop.yaml:3:19 error prices.unitMl can't be 250: it takes 1000 or 100 records/schema",
    },
    {
      what: "prices with three decimals of a currency that has so many, and below one",
      files: {
        "workshop.yaml": "name: Test Workshop\ncurrency: KWD\n",
        "prices.csv": "colour;ml;price\nlamp-black;40;1.200\nlamp-black;120;1.750\n",
      },
      told: [],
    },
    ...(
      [
        ["0.2", "20"],
        ["-0.15", "-15"],
      ] as const
    ).map(([percent, meant]) => ({
      what: `a rise of ${percent}, which is a fraction`,
      files: {
        "workshop.yaml": `${CURRENCY["workshop.yaml"]}prices: { addPercent: ${percent} }\n`,
      },
      told: `content/workshop.yaml:3:23 warning Less than 1 % is put on every price, ${percent} %; ${meant} %, if it was given as a fraction records/price-rise`,
    })),
    {
      what: "a rise of one in a hundred, and none",
      files: { "workshop.yaml": `${CURRENCY["workshop.yaml"]}prices: { addPercent: 1 }\n` },
      told: [],
    },
    {
      what: "prices of no currency, once",
      files: { "prices.csv": "colour,ml,price\nlamp-black,40 ml,9\nlamp-black,120 ml,9\n" },
      told: `${LINE}:2:18 warning There are prices, and workshop.yaml gives no currency: none of them is printed records/currency`,
    },
    {
      what: "an EAN in a colour's record with a wrong check digit",
      files: {
        ...CURRENCY,
        "colours/lamp-black.md": withSizes('[{ ml: 40, ean: "6291041500214" }]'),
      },
      told: `content/colours/lamp-black.md:6:24 error sizes[0].ean can't be "6291041500214": it takes 6291041500213, by the check digit of an EAN-13 records/schema`,
    },
  ]);
});

describe("a size and its price exchanged", () => {
  const told = (rows: string): string[] => {
    const { content, home } = contentFolder({
      ...SMALLEST_WORKSHOP,
      ...CURRENCY,
      ...Object.fromEntries(
        ["a", "b", "c", "d"].map((name) => [
          `colours/${name}.md`,
          `---\nname: ${name}\npigments: [{ pigment: lamp-black }]\n---\n`,
        ]),
      ),
      "prices.csv": `colour,ml,price\n${rows}`,
    });
    return loadRecords(content, home).diagnostics.map(({ message }) => message);
  };
  test("is told where no other is sold in it, and many are in its price", () => {
    expect(told("a,40,9\nb,40,8\nc,40,9\nd,24,40\n")).toEqual([
      "Nothing else is sold in 24 ml, and its price here, 40, is the size of 3 others",
    ]);
    expect(told("a,40,9\nb,40,8\nc,24,9\nd,24,40\n")).toEqual([]);
    expect(told("a,40,9\nb,40,8\nd,24,40\n")).toEqual([]);
  });
});

describe("a price that is far from those of the range", () => {
  const TOLD = /times what the range costs|\/\d+ of what the range costs/;
  const range = (rows: readonly string[], pigments: Readonly<Record<string, number>> = {}) => {
    const names = [...new Set(rows.map((row) => row.split(",")[0] ?? ""))];
    const { content, home } = contentFolder({
      ...SMALLEST_WORKSHOP,
      "workshop.yaml": `${CURRENCY["workshop.yaml"]}prices: { addPercent: 20, roundTo: 0.05, rounding: up }\n`,
      "prices.csv": `colour,ml,price\n${rows.join("\n")}\n`,
      ...Object.fromEntries(
        names.flatMap((name) => [
          [
            `colours/${name}.md`,
            `---\nname: ${name}\npigments: [{ pigment: ${name} }]\n---\nNotes.\n`,
          ],
          [`pigments/${name}.yaml`, `name: ${name}\npricePerKg: ${pigments[name] ?? 20}\n`],
        ]),
      ),
    });
    return loadRecords(content, home)
      .diagnostics.map(({ message }) => message)
      .filter((message) => TOLD.test(message));
  };
  const USUAL = ["ochre,40,8", "umber,40,7", "sienna,40,8", "red-earth,40,9", "black,120,18"];

  test("is told of a colour of one size, as the list has it", () => {
    expect(range([...USUAL, "blue,5,19.9"])).toEqual([
      "19.9 for 5 ml is 20 times what the range costs to the millilitre in the middle",
    ]);
  });
  test("is not told where another size bears it out, and is where that does not", () => {
    expect(range([...USUAL, "blue,5,19.9", "blue,20,59"])).toEqual([]);
    expect(range([...USUAL, "blue,5,199", "blue,20,8"])).toHaveLength(1);
    // Of one's own sizes one a tenth of another to the millilitre is as doubtful: 0.019 beside 0.16.
    expect(range([...USUAL, "blue,40,0.6", "blue,100,16"])).toEqual([
      "0.6 for 40 ml is 1/11 of what the range costs to the millilitre in the middle",
    ]);
  });
  test("is not told of a paint whose pigment costs ten times what pigments do", () => {
    expect(range([...USUAL, "blue,5,19.9"], { blue: 200 })).toEqual([]);
    expect(range([...USUAL, "blue,5,19.9"], { blue: 190 })).toHaveLength(1);
    // A dear pigment is no reason for a paint that costs a tenth.
    expect(range([...USUAL, "blue,40,0.6"], { blue: 200 })).toHaveLength(1);
  });
});
