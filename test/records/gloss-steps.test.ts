/** Gloss in one reading of a colour and not in another: what can be seen of it without a tag. Readings are invented. */
import { describe, expect, test } from "vitest";
import { loadRecords } from "../../lib/records/load-records.ts";
import { contentFolder, type RecordTexts } from "../support/content-folder.ts";

const WAVELENGTHS = Array.from({ length: 31 }, (_, i) => 400 + 10 * i);
/** A blue, deep from 500 nm on. */
const blue = (nm: number): number => (nm < 500 ? 0.3 : 0.01);
const mixed = (share: number) => (nm: number) => blue(nm) + (0.9 - blue(nm)) * (1 - share) ** 3;

/** @param columns reflectance by wavelength, and what is read on top of it. */
function told(columns: Readonly<Record<string, (nm: number) => number>>): string[] {
  const all = { masstone: blue, white: () => 0.9, ...columns };
  const has = (name: string): boolean => name in columns;
  const read = (column: string): string => `reading: all, column: "${column}"`;
  const texts: RecordTexts = {
    "workshop.yaml": "name: Test\nreadings: { scale: factor, geometry: d/8 excluded }\n",
    "readings/all.csv": [
      ["nm", ...Object.keys(all)].join(","),
      ...WAVELENGTHS.map((nm) =>
        [nm, ...Object.values(all).map((of) => of(nm).toFixed(5))].join(","),
      ),
    ].join("\n"),
    "pigments/blue.yaml": "name: Blue\n",
    "pigments/zinc.yaml": "name: Zinc\n",
    "colours/zinc.md": `---\nname: Zinc White\npigments: [{ pigment: zinc }]\nmasstone: { ${read("white")} }\n---\n`,
    "colours/blue.md": `---
name: Blue
pigments: [{ pigment: blue }]
masstone: { ${read("masstone")} }
${has("1:1") ? `tints: [{ white: zinc, massRatio: "1:1", ratioKind: paint, ${read("1:1")} }]` : ""}
${has("film") ? `films: [{ ground: white, filmThicknessUm: 100, ${read("film")} }]` : ""}
---
`,
    ...(has("lot")
      ? {
          "lots/b-1.yaml": `number: B-1\ncolour: blue\ndate: 2026-05-01\npigments: [{ pigment: blue, massG: 100 }]\nmasstone: { ${read("lot")} }\n`,
        }
      : {}),
  };
  const { content, home } = contentFolder(texts);
  return loadRecords(content, home, "2026-06-30")
    .diagnostics.filter(({ rule }) => rule === "records/gloss-step")
    .map(({ severity, place, message }) => `${severity} ${place.path}: ${message}`);
}
const plus = (of: (nm: number) => number, step: number) => (nm: number) => of(nm) + step;

describe("a film that hides as its masstone does", () => {
  // basis: derived. Fresnel's ((n - 1)/(n + 1))^2 is .040 at n = 1.5.
  test("and reads .04 more at every wavelength holds gloss", () =>
    expect(told({ film: plus(blue, 0.04) })).toEqual([
      "warning films[0]: The film of 100 um over white and the masstone differ by one step at every wavelength, as readings with gloss do from those without",
    ]));
  test.each([0, 0.02, 0.07])("and reads %s more does not", (step) =>
    expect(told({ film: plus(blue, step) })).toEqual([]),
  );
  test("and lets its ground through where it is pale does not", () =>
    expect(told({ film: (nm) => blue(nm) * 1.3 })).toEqual([]));
});

describe("a lot's masstone", () => {
  test("read .04 below its colour's is told", () =>
    expect(told({ lot: plus((nm) => blue(nm) + 0.04, 0) })).toEqual([
      "warning masstone: The masstone and that of blue differ by one step at every wavelength, as readings with gloss do from those without",
    ]));
  test("that is another blue is not", () =>
    expect(told({ lot: (nm) => blue(nm) * 1.2 })).toEqual([]));
});

describe("a let-down", () => {
  test("that falls below its masstone where that is darkest, and is lighter on the whole, is told", () => {
    const [line] = told({ masstone: plus(blue, 0.04), "1:1": (nm) => (nm < 500 ? 0.8 : 0.015) });
    expect(line).toMatch(
      /^warning tints\[0\]: The let-down 1:1 in zinc is darker than the masstone at 21 of 31 wavelengths/,
    );
  });
  test("that is lighter throughout is not", () => expect(told({ "1:1": mixed(0.5) })).toEqual([]));
});

describe("a unit in the words of a method", () => {
  const named = (key: string, method: string): string[] => {
    const { content, home } = contentFolder({
      "workshop.yaml": "name: Test\n",
      "pigments/blue.yaml": `name: Blue\n${key}: { value: 0.9, method: "${method}", date: 2026-01-01 }\n`,
    });
    return loadRecords(content, home, "2026-06-30")
      .diagnostics.filter(({ rule }) => rule === "records/method-unit")
      .map(({ place, actual }) => `${place.path} ${actual}`);
  };
  test.each([
    ["oilAbsorptionGPer100g", "ISO 787-5, ml/100 g", "ml/100 g"],
    ["oilAbsorptionGPer100g", "ISO 787-5 (cm³ per 100 g)", "ml/100 g"],
    ["oilAbsorptionGPer100g", "rubbed out, in %", "%"],
    ["densityGPerCm3", "pycnometer; kg/m3", "g/l"],
    ["manganeseDioxideFraction", "XRF, wt.-%", "%"],
  ])("that %s is not taken in is told: %s", (key, method, unit) =>
    expect(named(key, method)).toEqual([`${key}.method ${unit}`]),
  );
  test.each([
    ["oilAbsorptionGPer100g", "ISO 787-5"],
    ["oilAbsorptionGPer100g", "ISO 787-5, g/100 g"],
    ["oilAbsorptionGPer100g", "rubbed out at 55 %, 20 g weighed"],
    ["densityGPerCm3", "pycnometer of 25 ml"],
    ["densityGPerCm3", "pycnometer, g/ml"],
  ])("that belongs to how %s was found is not: %s", (key, method) =>
    expect(named(key, method)).toEqual([]),
  );
});
