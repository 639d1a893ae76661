import { describe, expect, test } from "vitest";
import { certain } from "../../lib/quantities/at.ts";
import { handbookEstimate, type HandbookRow } from "../../lib/formulation/handbook-estimate.ts";
import type { ReachedFigure } from "../../lib/formulation/plausibility.ts";
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
    ["alumina hydrate", 2.45],
    ["azurite", 3.8],
    ["barytes", 4.45],
    ["blanc fixe", 4.36],
    ["barium yellow", 4.49],
    ["cadmium red lithopone", 4.3],
    ["cadmium yellow lithopone", 4.25],
    ["china clay", 2.6],
    ["silica", 2.66],
    ["talc", 2.77],
    ["orpiment", 3.4],
    ["red lead", 8.73],
    ["zinc yellow", 3.46],
    ["Cassel earth", 1.66],
  ])("%s %s g/cm3", (kind, density) => {
    const row = densities.find(
      (candidate) => candidate.kind === kind && candidate.source === "gettens-stout-1942",
    );
    expect(row).toMatchObject({ figure: density, standing: "published" });
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
  const usual = (figure: ReachedFigure) =>
    certain(KNOWN.tables.reaches.find((row) => row.figure === figure)).usual;
  test.each([
    ["density", densities, usual("densityGPerCm3")],
    ["oil absorption", oilAbsorptions, usual("oilAbsorptionGPer100g")],
    ["loose", looseDensities, usual("bulkDensityGPerMl")],
    ["tapped", tappedDensities, usual("bulkDensityGPerMl")],
  ])("%s: kinds once, ends in order, within a pigment's usual reach", (_, table, [least, most]) => {
    expect(table.length).toBeGreaterThan(0);
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
    const found = handbookEstimate(KNOWN.pigment("PW 24").densities, { colourIndexName: "PW 24" });
    expect(found?.estimate[0]).toBeCloseTo(2.45 * 0.95, 12);
    expect(found?.estimate[1]).toBeCloseTo(2.45 * 1.05, 12);
    expect(found?.reason.source).toBe("gettens-stout-1942");
  });
  test("spans every pigment of a name, and the kind narrows it", () => {
    const all = handbookEstimate(KNOWN.pigment("PBr 7").densities, { colourIndexName: "PBr 7" });
    const one = handbookEstimate(KNOWN.pigment("PBr 7").densities, {
      colourIndexName: "PBr 7",
      kind: "raw umber",
    });
    expect(new Set(all?.rows.map((row) => row.kind)).size).toBe(4);
    expect(all?.estimate).toEqual([2.9, 4.1]);
    expect(one?.estimate).toEqual([2.9, 3.8]);
    expect(new Set(one?.rows.map((row) => row.kind))).toEqual(new Set(["raw umber"]));
    expect(
      handbookEstimate(KNOWN.pigment("PBr 7").densities, {
        colourIndexName: "PBr 7",
        kind: "no such kind",
      })?.rows,
    ).toHaveLength(8);
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
    ).toEqual([1.4, 1.7]);
  });
  test("knows nothing of what the table lacks", () => {
    expect(
      handbookEstimate(KNOWN.pigment("PY 999").densities, { colourIndexName: "PY 999" }),
    ).toBeUndefined();
  });
});

test("oils are lighter than water, and the thickened one the heaviest", () => {
  const { oilDensities } = KNOWN.tables;
  const [thickened] = certain(oilDensities.find(({ oil }) => oil === "stand linseed")).gPerCm3;
  for (const {
    oil,
    gPerCm3: [lower, upper],
  } of oilDensities) {
    expect(lower < upper && lower > 0.9 && upper < 1, oil).toBe(true);
    if (oil !== "stand linseed") expect(upper, oil).toBeLessThan(thickened);
  }
});
