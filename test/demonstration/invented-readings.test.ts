import { execFileSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, inject, test } from "vitest";
import { xyzToLab } from "../../lib/colorimetry/lab.ts";
import { tristimulus } from "../../lib/colorimetry/tristimulus.ts";
import type { Lab } from "../../lib/colorimetry/viewing.ts";
import { inventedReadings } from "./invented-readings.ts";
import { INVENTED_SETS } from "./invented-sets.ts";

const HERE = import.meta.dirname;
const READINGS = join(HERE, "../../content/readings");

describe("the demonstration's readings", () => {
  const made = inventedReadings();

  test("are the committed files, byte for byte", () => {
    const ofColours = readdirSync(READINGS).filter((name) => !name.startsWith("lots-"));
    expect(ofColours.toSorted()).toEqual(made.map(({ name }) => name).toSorted());
    for (const { name, text } of made)
      expect(text, name).toBe(readFileSync(join(READINGS, name), "utf8"));
  });

  test("are the same on a second run, written by the script", () => {
    const out = mkdtempSync(join(inject("scratch"), "invented-readings-"));
    try {
      execFileSync(process.execPath, [
        "--import",
        "tsx",
        join(HERE, "invented-readings.ts"),
        "--out",
        out,
      ]);
      for (const { name, text } of made)
        expect(readFileSync(join(out, name), "utf8"), name).toBe(text);
    } finally {
      rmSync(out, { recursive: true });
    }
  });

  test("come from a script that imports nothing but itself and node:", () => {
    const sources = readdirSync(HERE).filter(
      (file) => file.endsWith(".ts") && !file.endsWith(".test.ts"),
    );
    expect(sources).toContain("invented-readings.ts");
    const foreign = sources.flatMap((file) =>
      [...readFileSync(join(HERE, file), "utf8").matchAll(/(?:from|import)\s*\(?\s*"([^"]+)"/g)]
        .map(([, target]) => target ?? "")
        .filter((target) => !/^(node:[a-z_/]+|\.\/[a-z-]+\.ts)$/.test(target))
        .map((target) => `${file} imports ${target}`),
    );
    expect(foreign).toEqual([]);
  });

  test("hold one bad drawdown, and no record names it", () => {
    const bad = Object.values(INVENTED_SETS).filter((set) => "misweighed" in set);
    expect(bad).toHaveLength(1);
    const colours = join(HERE, "../../content/colours");
    for (const file of readdirSync(colours)) {
      expect(readFileSync(join(colours, file), "utf8"), file).not.toMatch(
        /mis-?weighed|weighed wrong|bad drawdown/i,
      );
    }
  });

  test("stay within what an instrument gives", () => {
    for (const { name, text } of made.filter(({ name }) => name.endsWith(".csv"))) {
      const rows = text
        .trim()
        .split("\n")
        .slice(1)
        .map((row) => row.split(",").slice(1).map(Number));
      const percent = Math.max(...rows.flat()) > 1.2 ? 100 : 1;
      for (const value of rows.flat())
        expect(value / percent, name).toSatisfy((R: number) => R >= -0.005 && R <= 1.05);
    }
  });
});

/** Lab under D65/10 of a CSV's column. */
function labOf(file: string, column: string): Lab {
  const rows = readFileSync(join(READINGS, file), "utf8")
    .trim()
    .split("\n")
    .map((row) => row.split(","));
  const index = rows[0]?.indexOf(column) ?? -1;
  if (index < 1) throw new Error(`Unexpected column \`${column}\`, expected one of ${file}`);
  const [wavelengths, values] = [
    rows.slice(1).map((row) => Number(row[0])),
    rows.slice(1).map((row) => Number(row[index])),
  ];
  const grid = { startNm: wavelengths[0] ?? NaN, stepNm: 10, count: values.length };
  return xyzToLab(tristimulus({ grid, values }, "D65/10"), "D65/10");
}

/** b* at L* 50 of a ladder as read, between the two steps that embrace it. */
function bAtL50(colour: keyof typeof INVENTED_SETS, white: string): number {
  const file = `${colour}.csv`;
  const header = readFileSync(join(READINGS, file), "utf8").split("\n")[0] ?? "";
  const steps = header
    .split(",")
    .filter((name) => name.startsWith(`${white} 1:`))
    .map((column) => labOf(file, column));
  const after = steps.findIndex(({ L }) => L >= 50);
  const [below, above] = [steps[after - 1], steps[after]];
  if (below === undefined || above === undefined)
    throw new Error(`Unexpected ladder of ${colour} in ${white}, expected one that passes L* 50`);
  const t = (50 - below.L) / (above.L - below.L);
  return below.b + t * (above.b - below.b);
}

/** Common practice, no source: what colourmen say of these blacks. */
describe("the blacks behave as colourmen say", () => {
  const BLACKS = [
    "lamp-black",
    "furnace-black",
    "bone-black",
    "iron-oxide-black",
    "spinel-black",
    "perylene-black",
  ] as const;

  test.each(BLACKS)("%s is bluer at L* 50 in titanium white than in lead white", (black) => {
    expect(bAtL50(black, "titanium-white")).toBeLessThan(bAtL50(black, "lead-white") - 1);
  });

  test.each(BLACKS)("%s is let down past L* 50, to about L* 80 in titanium white", (black) => {
    const header = readFileSync(join(READINGS, `${black}.csv`), "utf8").split("\n")[0] ?? "";
    const last = (white: string): number =>
      labOf(`${black}.csv`, header.split(",").findLast((name) => name.startsWith(white)) ?? "").L;
    expect(last("titanium-white")).toBeGreaterThan(76);
    expect(last("lead-white")).toBeGreaterThan(60);
  });

  test("lamp black turns clearly blue in titanium white", () => {
    expect(bAtL50("lamp-black", "titanium-white")).toBeLessThan(-2);
  });

  test("iron oxide black stays near neutral in lead white and cools in titanium white", () => {
    const inLead = bAtL50("iron-oxide-black", "lead-white");
    expect(Math.abs(inLead)).toBeLessThan(1.5);
    expect(bAtL50("iron-oxide-black", "titanium-white")).toBeLessThan(inLead - 2);
  });

  test("furnace black has the bluer masstone, lamp black the bluer tint", () => {
    expect(labOf("furnace-black.csv", "masstone").b).toBeLessThan(
      labOf("lamp-black.csv", "masstone 1").b,
    );
    expect(bAtL50("lamp-black", "titanium-white")).toBeLessThan(
      bAtL50("furnace-black", "titanium-white"),
    );
  });
});
