import { describe, expect, test } from "vitest";
import { HUE_FAMILIES, hueFamily } from "../../lib/knowledge/hue-family.ts";
import { KNOWN } from "../support/known.ts";

const ROWS = KNOWN.tables.hueFamilies;
const of = (name: string, pigmentClass?: string) => hueFamily(ROWS, name, pigmentClass);

/** The letters of a generic name stand for usage and hue: common practice of the Colour Index, from memory. */
describe("by the letters of the name", () => {
  test.each([
    ["PW 6", "white"],
    ["PBk 7", "black"],
    ["PBr 24", "brown"],
    ["PB 29", "blue"],
    ["PR 254", "red"],
    ["PO 20:1", "orange"],
    ["PY 184", "yellow"],
    ["PG 7", "green"],
    ["PV 23", "violet"],
    ["NR 4", "red"],
    ["NBr 9", "brown"],
  ])("%s is %s", (name, family) => expect(of(name)).toBe(family));
  test.each(["PM 1", "", "lamp black", "PX 3", "B 29", "PBk"])("%j is none", (name) =>
    expect(of(name)).toBeUndefined(),
  );
});

describe("by what the pigment is, before its name", () => {
  test.each([
    ["PBr 7", "brown earth", "earth"],
    ["PY 43", "yellow earth", "earth"],
    ["PG 23", "green earth", "earth"],
    ["PW 18", "chalk", "extender"],
    ["PW 6", "titanium dioxide", "white"],
    ["PR 101", "a class without a row", "red"],
  ])("%s, %s: %s", (name, pigmentClass, family) => expect(of(name, pigmentClass)).toBe(family));
});

test("every row's class is one of pigments.csv, and every family has a name of its own", () => {
  const classes = new Set(KNOWN.tables.pigments.map((row) => row.class));
  const letters = new Set(["W", "Bk", "Br", "R", "O", "Y", "G", "B", "V"]);
  expect(ROWS.filter((row) => !letters.has(row.of) && !classes.has(row.of))).toEqual([]);
  expect(new Set(ROWS.map(({ family }) => family))).toEqual(new Set(HUE_FAMILIES));
});

test("each name in the tables has a family", () =>
  expect(KNOWN.names.filter((name) => KNOWN.pigment(name).family === undefined)).toEqual([]));
