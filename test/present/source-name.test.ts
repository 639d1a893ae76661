import { expect, test } from "vitest";
import { sourceName } from "../../lib/present/source-name.ts";
import { BIBLIOGRAPHY } from "../../lib/sources/bibliography.ts";

const STANDINGS = {
  read: "read",
  derived: "worked from",
  memory: "quoted from memory",
  practice: "common practice",
};

test.each([
  ["kubelka-munk-1931", "Kubelka & Munk 1931"],
  ["li-2017", "Li et al. 2017"],
  ["asbeck-van-loo-1949", "Asbeck & Van Loo 1949"],
  ["kubelka-1948", "Kubelka 1948"],
  ["hansen-lowinger-sadoff-1993", "Hansen et al. 1993"],
  ["astm-d4303", "ASTM D4303"],
  ["astm-d281", "ASTM D281"],
  ["iso-787-5", "ISO 787-5"],
  ["cie-15-2018", "CIE 15:2018"],
  ["practice-drying", "common practice"],
  ["memory-drying", "quoted from memory"],
  ["church-1915", "Church 1901"],
  ["css-color-4", "CSS Color Module Level 4"],
])("%s is cited as %s", (key, name) => {
  expect(sourceName(key, BIBLIOGRAPHY[key], STANDINGS)).toBe(name);
});

test("every text of the bibliography has a short name", () => {
  for (const [key, source] of Object.entries(BIBLIOGRAPHY)) {
    const name = sourceName(key, source, STANDINGS);
    expect(name.length, `${key}: ${name}`).toBeGreaterThan(2);
    expect(name.length, `${key}: ${name}`).toBeLessThan(60);
  }
});
