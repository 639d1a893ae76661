import { describe, expect, test } from "vitest";
import { handbookEstimate, type HandbookRow } from "../../lib/formulation/handbook-estimate.ts";
import { PIGMENT_REACH } from "../../lib/formulation/plausibility.ts";
import { OIL_DENSITY_G_PER_CM3 } from "../../lib/formulation/vehicle-density.ts";
import { ends } from "../../lib/quantities/interval.ts";
import { KNOWN } from "../support/known.ts";

const { densities, oilAbsorptions, looseDensities, tappedDensities } = KNOWN.tables;

const figureOf = (table: readonly HandbookRow[], kind: string): HandbookRow["figure"] | undefined =>
  table.find((row) => row.kind === kind)?.figure;

describe("densities as Gettens & Stout (1942) print them (read)", () => {
  test.each([
    ["bone black", 2.29],
    ["Prussian blue", 1.83],
    ["raw sienna", 3.14],
    ["burnt sienna", 3.56],
    ["raw umber", 3.2],
    ["burnt umber", 3.64],
    ["ultramarine", 2.34],
    ["viridian", 3.32],
    ["basic lead carbonate", 6.7],
    ["zinc oxide", 5.65],
    ["rutile", 4.2],
    ["anatase", 3.9],
    ["vermilion", 8.09],
    ["cadmium yellow", 4.35],
    ["cadmium red", 4.5],
    ["chalk", 2.7],
  ])("%s %s g/cm3", (kind, density) => {
    const row = densities.find((candidate) => candidate.kind === kind);
    expect(row).toMatchObject({ figure: density, source: "gettens-stout-1942" });
  });
  test("no other row claims to be read there", () => {
    expect(densities.filter((row) => row.source === "gettens-stout-1942")).toHaveLength(16);
    expect(
      oilAbsorptions.filter((row) => row.source === "gettens-stout-1942").map((row) => row.kind),
    ).toEqual(["basic lead carbonate"]);
  });
});

describe("constants of the crystals, checked against another kind of source (mineral handbooks, from memory)", () => {
  // hematite 5.26, magnetite 5.18, goethite 4.3, graphite 2.16-2.25, barite 4.48, calcite 2.71, eskolaite 5.2: a pigment is no denser than its mineral
  test.each([
    ["red iron oxide", 5.26],
    ["black iron oxide", 5.18],
    ["yellow iron oxide", 4.3],
    ["graphite", 2.3],
    ["barium sulphate", 4.5],
    ["chromium oxide green", 5.22],
  ])("%s is at most %s", (kind, mineral) => {
    const figure = figureOf(densities, kind);
    expect(figure).toBeDefined();
    expect(ends(figure ?? NaN)[1]).toBeLessThanOrEqual(mineral);
    expect(ends(figure ?? NaN)[0]).toBeGreaterThan(mineral * 0.8);
  });
});

describe("every table", () => {
  test.each([
    ["density", densities, PIGMENT_REACH.densityGPerCm3.usual],
    ["oil absorption", oilAbsorptions, PIGMENT_REACH.oilAbsorptionGPer100g.usual],
    ["loose", looseDensities, PIGMENT_REACH.bulkDensityGPerMl.usual],
    ["tapped", tappedDensities, PIGMENT_REACH.bulkDensityGPerMl.usual],
  ])("%s: kinds once, ends in order, within a pigment's usual reach", (_, table, [least, most]) => {
    expect(table.length).toBeGreaterThan(0);
    expect(new Set(table.map((row) => row.kind)).size).toBe(table.length);
    for (const { figure, kind } of table) {
      const [lower, upper] = ends(figure);
      expect(lower, kind).toBeLessThanOrEqual(upper);
      expect(lower, kind).toBeGreaterThanOrEqual(least);
      expect(upper, kind).toBeLessThanOrEqual(most);
    }
  });
  test("powder is lighter poured than settled, and lighter settled than the grain", () => {
    for (const { kind, figure, pigments } of looseDensities) {
      const tapped = figureOf(tappedDensities, kind);
      const grain = handbookEstimate(KNOWN.pigment(pigments[0] ?? "").densities, {
        colourIndexName: pigments[0] ?? "",
      })?.estimate;
      expect(ends(figure)[0], kind).toBeLessThan(ends(tapped ?? NaN)[0]);
      expect(ends(tapped ?? NaN)[1], kind).toBeLessThan(grain?.[0] ?? NaN);
    }
  });
});

describe("handbookEstimate", () => {
  test("gives a range as it stands", () => {
    expect(
      handbookEstimate(KNOWN.pigment("PBk 6").densities, { colourIndexName: "PBk 6" }),
    ).toMatchObject({
      estimate: [1.7, 1.8],
      reason: { rule: "handbook-range", standing: "estimated", source: "memory-formulation" },
    });
  });
  test("widens a single figure by what lots stray", () => {
    const found = handbookEstimate(KNOWN.pigment("PBk 9").densities, { colourIndexName: "PBk 9" });
    expect(found?.estimate[0]).toBeCloseTo(2.29 * 0.95, 12);
    expect(found?.estimate[1]).toBeCloseTo(2.29 * 1.05, 12);
    expect(found?.reason.source).toBe("gettens-stout-1942");
  });
  test("spans every pigment of a name, and the kind narrows it", () => {
    const all = handbookEstimate(KNOWN.pigment("PBr 7").densities, { colourIndexName: "PBr 7" });
    const one = handbookEstimate(KNOWN.pigment("PBr 7").densities, {
      colourIndexName: "PBr 7",
      kind: "raw umber",
    });
    expect(all?.rows).toHaveLength(4);
    expect(all?.estimate[0]).toBeCloseTo(3.14 * 0.95, 12);
    expect(all?.estimate[1]).toBeCloseTo(3.64 * 1.05, 12);
    expect(one?.rows.map((row) => row.kind)).toEqual(["raw umber"]);
    expect(
      handbookEstimate(KNOWN.pigment("PBr 7").densities, {
        colourIndexName: "PBr 7",
        kind: "no such kind",
      })?.rows,
    ).toHaveLength(4);
  });
  test("a recalled row makes the whole range recalled", () => {
    const rows: HandbookRow[] = [
      { kind: "one", pigments: ["PY 1"], figure: 2, source: "gettens-stout-1942" },
      { kind: "other", pigments: ["PY 1"], figure: 3, source: "memory-formulation" },
    ];
    expect(handbookEstimate(rows, { colourIndexName: "PY 1" })?.reason.source).toBe(
      "memory-formulation",
    );
    expect(handbookEstimate(rows, { colourIndexName: "PY 1", kind: "one" })?.reason.source).toBe(
      "gettens-stout-1942",
    );
  });
  test("takes a crystal form for its pigment", () => {
    expect(
      handbookEstimate(KNOWN.pigment("PB 15:3").densities, { colourIndexName: "PB 15:3" })
        ?.estimate,
    ).toEqual([1.5, 1.65]);
  });
  test("knows nothing of what the table lacks", () => {
    expect(
      handbookEstimate(KNOWN.pigment("PY 999").densities, { colourIndexName: "PY 999" }),
    ).toBeUndefined();
  });
});

test("oils are lighter than water, and the thickened one the heaviest", () => {
  const oils = Object.entries(OIL_DENSITY_G_PER_CM3);
  expect(oils.map(([oil]) => oil).sort()).toEqual([
    "linseed",
    "poppy",
    "safflower",
    "stand linseed",
    "walnut",
  ]);
  for (const [oil, [lower, upper]] of oils) {
    expect(lower < upper && lower > 0.9 && upper < 1, oil).toBe(true);
    if (oil !== "stand linseed")
      expect(upper, oil).toBeLessThan(OIL_DENSITY_G_PER_CM3["stand linseed"][0]);
  }
});
