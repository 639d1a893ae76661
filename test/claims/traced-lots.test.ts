import { describe, expect, test } from "vitest";
import { tracedLots } from "../../lib/claims/traced-lots.ts";
import { lotsText } from "../../lib/commands/lots-text.ts";
import { soundRecords } from "../support/sound-records.ts";

const lot = (number: string, date: string, supplierLot: string, more = ""): string =>
  `number: ${number}\ncolour: green\ndate: ${date}\npigments: [{ pigment: green, massG: 600, supplierLot: ${supplierLot} }]\n${more}`;

/** Three lots out of two bags; one of them is planned. */
const FILES = {
  "workshop.yaml": "name: Test\n",
  "pigments/green.yaml": "name: Green\n",
  "colours/green.md": "---\nname: Phthalo Green\npigments: [{ pigment: green }]\n---\n",
  "lots/a.yaml": lot("PG-2", "2026-04-20", "K-5502", "tubes: [{ ml: 37, count: 17 }]\n"),
  "lots/b.yaml": lot("PG-1", "2026-02-14", "k-5502", "tubes: [{ ml: 37, count: 1 }]\n"),
  "lots/c.yaml": lot("PG-3", "2026-06-11", "K-5503", "planned: true\n"),
};
const records = soundRecords(FILES);
const told = (name: string): string[] =>
  tracedLots(name, records).map((found) => lotsText(found, records, []));

// Counted by hand out of the records above.
describe("what is called back", () => {
  test("by a supplier's lot: every lot that holds it, in small letters too, with its tubes", () => {
    expect(told("K-5502")).toEqual([
      `supplier's lot K-5502: 2 lots, 18 tubes
  PG-1: Phthalo Green, 2026-02-14; 600 g of green; 1 tube of 37 ml
  PG-2: Phthalo Green, 2026-04-20; 600 g of green; 17 tubes of 37 ml`,
    ]);
  });

  test("by the number on a tube: that lot, what it was made with, and where else that went", () => {
    expect(told("pg-1")).toEqual([
      `lot PG-1: 1 lot, 1 tube
  PG-1: Phthalo Green, 2026-02-14; 600 g of green; 1 tube of 37 ml
  made with
    green of the supplier's lot k-5502, also in PG-2`,
    ]);
    expect(told("PG-3")).toEqual([
      `lot PG-3: 1 lot, no tubes
  PG-3: Phthalo Green, 2026-06-11, planned; 600 g of green
  made with
    green of the supplier's lot K-5503`,
    ]);
  });

  test("by no other name", () => expect(told("K-550")).toEqual([]));
});
