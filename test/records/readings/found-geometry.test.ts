import { describe, expect, test } from "vitest";
import {
  contradicts,
  foundGeometry,
  preambleGeometry,
} from "../../../lib/records/readings/found-geometry.ts";
import { foundObserver } from "../../../lib/records/readings/found-observer.ts";

describe("foundGeometry", () => {
  // Notation of CIE 15: di:8 specular included, de:8 excluded, 45a:0 annular. Other spellings: common practice, no source.
  test.each([
    ["45/0", "45/0"],
    ["0/45", "45/0"],
    ["0:45", "45/0"],
    ["45°a:0°", "45/0"],
    ["45 deg / 0 deg", "45/0"],
    ["450", undefined],
    ["45_deg/0_deg", "45/0"],
    ["di:8", "d/8 included"],
    ["de:8°", "d/8 excluded"],
    ["8:de", "d/8 excluded"],
    ["D/8", "d/8"],
    ["8/d", "d/8"],
    ["d/8 specular included", "d/8 included"],
    ["d/8, specular excluded", "d/8 excluded"],
    ["D/8 SCI", "d/8 included"],
    ["d/8_SCE", "d/8 excluded"],
    ["d/8 SCI SCE", "d/8"],
    ["45/15", "other"],
    ["d/0", "other"],
    ["0/0", "other"],
    ["", undefined],
    ["unknown", undefined],
    ["4".repeat(1_000_000), undefined],
  ])("%s is %s", (words, geometry) => {
    expect(foundGeometry(words)).toBe(geometry);
  });
});

describe("the geometry that lines before a table tell of", () => {
  test.each<[readonly string[], string | undefined]>([
    [["Instrument;invented", "Geometry;d/8 SCE"], "d/8 excluded"],
    [["Messgeometrie: 45°a:0°"], "45/0"],
    [["Measurement geometry,d/8", "Specular component,included"], "d/8 included"],
    [["# Geometry: 45/0"], "45/0"],
    [["SCI"], "d/8 included"],
    [["Mode;de:8"], "d/8 excluded"],
    [["G\u00e9om\u00e9trie\td/8", "Sp\u00e9culaire\texclude"], "d/8 excluded"],
    // A day, an observer and a lamp are no angles.
    [["Date;10/05/2026", "Observer;10/D65", "Run 45 of 60"], undefined],
    [[], undefined],
    [["geometry ".repeat(200_000)], undefined],
  ])("%j is %s", (lines, geometry) => {
    expect(preambleGeometry(lines)).toBe(geometry);
  });
});

describe("contradicts", () => {
  test.each([
    ["45/0", "45/0", false],
    ["45/0", "d/8 included", true],
    ["d/8", "d/8 included", false],
    ["d/8", "d/8 excluded", false],
    ["d/8", "45/0", true],
    ["d/8 included", "d/8 excluded", true],
    ["other", "45/0", true],
  ] as const)("%s in the file, %s in the record: %s", (found, declared, expected) => {
    expect(contradicts(found, declared)).toBe(expected);
  });
});

test.each([
  ["2", 2],
  ["10", 10],
  ["2_Degree", 2],
  ["10 degree", 10],
  ["20", undefined],
  ["2.5", undefined],
  ["", undefined],
])("observer %j is %s", (words, observer) => {
  expect(foundObserver(words)).toBe(observer);
});
