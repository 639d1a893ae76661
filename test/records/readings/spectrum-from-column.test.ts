import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { formatDiagnostic } from "../../../lib/diagnostics/diagnostic.ts";
import { parseReadingFile } from "../../../lib/records/readings/reading-file.ts";
import { spectrumFromColumn } from "../../../lib/records/readings/spectrum-from-column.ts";
import {
  cgatsText,
  csvText,
  cxfObject,
  cxfText,
  INVENTED,
  specification,
} from "./invented-reading.ts";
import { columnOf, soundReading } from "./reading-faults.ts";

const file = "content/readings/red-earth.csv";
const masstone = (text: string) => columnOf(soundReading(file, text), "masstone");
const grid = (startNm: number, stepNm: number, count: number, value = "0.1"): string =>
  [
    "nm,masstone",
    ...Array.from({ length: count }, (_, i) => `${startNm + stepNm * i},${value}`),
  ].join("\n");

describe("spectrumFromColumn", () => {
  test.each([
    [1, 301],
    [2, 151],
    [5, 61],
    [10, 31],
  ])("keeps a grid of %s nm as it is", (stepNm, count) => {
    const { spectrum, asRead, diagnostics } = spectrumFromColumn(
      masstone(grid(400, stepNm, count)),
      "factor",
      "45/0",
      file,
    );
    expect(diagnostics).toEqual([]);
    expect(spectrum).toEqual({
      grid: { startNm: 400, stepNm, count },
      values: Array.from({ length: count }, () => 0.1),
    });
    expect(asRead).toEqual(spectrum);
  });

  test("makes factors of percent, digit for digit", () => {
    const percent = csvText().replace(/0\.(\d\d)(\d+)/g, "$1.$2");
    const factors = spectrumFromColumn(masstone(csvText()), "factor", undefined, file);
    expect(masstone(percent).values[0]).toBe(5.11);
    expect(spectrumFromColumn(masstone(percent), "percent", undefined, file)).toEqual(factors);
  });

  test("interpolates 20 nm to 10 nm by natural cubic spline, and warns once", () => {
    const read = [
      ".051",
      ".049",
      ".047",
      ".046",
      ".0455",
      ".046",
      ".048",
      ".055",
      ".081",
      ".16",
      ".31",
      ".452",
      ".521",
      ".548",
      ".559",
      ".562",
    ];
    // SciPy 1.17.1, CubicSpline(x, y, bc_type="natural"), at 410, 430 ... 690 nm.
    const between = [
      0.050024805008, 0.047925584976, 0.046397855088, 0.045670494672, 0.045607666225,
      0.046711340428, 0.050359472062, 0.063850771325, 0.111237442639, 0.22969945812, 0.387839724882,
      0.494816642352, 0.53751870571, 0.554858534806, 0.561047155065,
    ];
    const text = ["nm,masstone", ...read.map((value, i) => `${400 + 20 * i},${value}`)].join("\n");
    const { spectrum, asRead, diagnostics } = spectrumFromColumn(
      masstone(text),
      "factor",
      undefined,
      file,
    );
    expect(asRead).toEqual({
      grid: { startNm: 400, stepNm: 20, count: 16 },
      values: read.map(Number),
    });
    expect(spectrum?.grid).toEqual({ startNm: 400, stepNm: 10, count: 31 });
    expect(spectrum?.values.filter((_, i) => i % 2 === 0)).toEqual(read.map(Number));
    spectrum?.values
      .filter((_, i) => i % 2 === 1)
      .forEach((value, i) => expect(value).toBeCloseTo(between[i] ?? NaN, 11));
    expect(diagnostics.map(formatDiagnostic)).toEqual([
      `${file}:1:4 warning masstone steps by 20 nm, and is resampled to 10 nm by natural cubic spline readings/resampled`,
    ]);
  });

  test("what lies between steep 20 nm readings stays a reflectance factor", () => {
    const text = [
      "nm,masstone",
      ...Array.from({ length: 16 }, (_, i) => `${400 + 20 * i},${i < 8 ? 0 : 1.2}`),
    ].join("\n");
    const values =
      spectrumFromColumn(masstone(text), "factor", undefined, file).spectrum?.values ?? [];
    expect(values).toHaveLength(31);
    expect(values.every((R) => R >= 0 && R <= 1.2)).toBe(true);
  });

  test("keeps values just below zero as read, computes with 0, and warns once with their count", () => {
    const { spectrum, asRead, diagnostics } = spectrumFromColumn(
      masstone(csvText({ 4: "420,-0.005", 5: "430,-.001" })),
      "factor",
      undefined,
      file,
    );
    expect(asRead?.values.slice(1, 5)).toEqual([0.0502, -0.005, -0.001, 0.048]);
    expect(spectrum?.values.slice(1, 5)).toEqual([0.0502, 0, 0, 0.048]);
    expect(diagnostics.map(formatDiagnostic)).toEqual([
      `${file}:4:5 warning 2 reflectances of masstone lie below 0, the first at 420 nm; kept as read, taken as 0 in computing readings/below-zero`,
    ]);
  });

  test.each([
    ["factor", "1.2"],
    ["factor", "-0.005"],
    ["factor", "-0"],
    ["percent", "120"],
    ["percent", "-0.5"],
  ] as const)("takes %s %s, on the limit", (scale, value) => {
    const { spectrum } = spectrumFromColumn(
      masstone(csvText({ 4: `420,${value}` })),
      scale,
      undefined,
      file,
    );
    expect(spectrum?.values[2]).toBe(Math.max(Number(value) / (scale === "percent" ? 100 : 1), 0));
    expect(Object.is(spectrum?.values[2], -0)).toBe(false);
  });

  test("a grid may begin below 400 nm and end above 700", () => {
    const { spectrum, diagnostics } = spectrumFromColumn(
      masstone(grid(360, 10, 40)),
      "factor",
      undefined,
      file,
    );
    expect(diagnostics).toEqual([]);
    expect(spectrum?.grid).toEqual({ startNm: 360, stepNm: 10, count: 40 });
  });
});

describe("faults of a column, each told with its place", () => {
  const EFFECT = "effect: fluorescent where its pigment is, scale: percent of percent";
  const domain = "error The reflectance of masstone";
  test.each([
    [
      "an empty cell",
      csvText({ 4: "420," }),
      "factor",
      ":4:5 error The reflectance of masstone at 420 nm is missing readings/empty-cell",
    ],
    [
      "a cell left out",
      csvText({ 4: "420" }),
      "factor",
      ":4:4 error The reflectance of masstone at 420 nm is missing readings/empty-cell",
    ],
    [
      "NaN",
      csvText({ 4: "420,NaN" }),
      "factor",
      ':4:5 error The reflectance of masstone at 420 nm is "NaN", no number readings/not-a-number',
    ],
    [
      "infinity",
      csvText({ 4: "420,1e999" }),
      "factor",
      ':4:5 error The reflectance of masstone at 420 nm is "1e999", no number readings/not-a-number',
    ],
    [
      "a unit",
      csvText({ 4: "420,5 %" }),
      "percent",
      ':4:5 error The reflectance of masstone at 420 nm is "5 %", no number readings/not-a-number',
    ],
    [
      "above 1.2",
      csvText({ 4: "420,1.2001" }),
      "factor",
      `:4:5 ${domain} at 420 nm is 1.2001, outside -0.005 to 1.2; ${EFFECT} readings/reflectance-domain`,
    ],
    [
      "below -0.005",
      csvText({ 4: "420,-0.0051" }),
      "factor",
      `:4:5 ${domain} at 420 nm is -0.0051, outside -0.005 to 1.2 readings/reflectance-domain`,
    ],
    [
      "above 120 percent",
      csvText({ 4: "420,120.1" }),
      "percent",
      `:4:5 ${domain} at 420 nm is 120.1, outside -0.5 to 120 percent; ${EFFECT} readings/reflectance-domain`,
    ],
    [
      "below -0.5 percent",
      csvText({ 4: "420,-0.51" }),
      "percent",
      `:4:5 ${domain} at 420 nm is -0.51, outside -0.5 to 120 percent readings/reflectance-domain`,
    ],
    [
      "a start above 400 nm",
      grid(430, 10, 28),
      "factor",
      ":2:5 error masstone begins at 430 nm, and a reading begins at 420 nm or below readings/wavelength-range",
    ],
    [
      "an end below 700 nm",
      grid(400, 10, 30),
      "factor",
      ":31:5 error masstone ends at 690 nm, and a reading goes to 700 nm or beyond readings/wavelength-range",
    ],
    [
      "a step of 0.5 nm",
      grid(400, 0.5, 601),
      "factor",
      ":1:4 error masstone steps by 0.5 nm, and steps of 1 to 20 nm are read readings/wavelength-step",
    ],
    [
      "a step of 25 nm",
      grid(400, 25, 13),
      "factor",
      ":1:4 error masstone steps by 25 nm, and steps of 1 to 20 nm are read readings/wavelength-step",
    ],
  ] as const)("%s", (_, text, scale, told) => {
    const { spectrum, asRead, diagnostics } = spectrumFromColumn(
      masstone(text),
      scale,
      undefined,
      file,
    );
    expect(diagnostics.map(formatDiagnostic)).toEqual([file + told]);
    expect([spectrum, asRead]).toEqual([undefined, undefined]);
  });

  test("percent declared as factor is told three times, not thirty-one", () => {
    const { diagnostics } = spectrumFromColumn(
      masstone(grid(400, 10, 31, "45")),
      "factor",
      undefined,
      file,
    );
    expect(diagnostics).toHaveLength(3);
    expect(diagnostics[2]?.hint).toBe(
      "a reading in percent says scale: percent; and 28 more of this column",
    );
  });
});

describe("a record that contradicts its file", () => {
  const cxf = (geometry: string) =>
    columnOf(
      soundReading(
        "r/a.cxf",
        cxfText({ objects: cxfObject("earth"), specifications: specification("s1", geometry) }),
      ),
      "earth",
    );
  const told = (...args: Parameters<typeof spectrumFromColumn>): string[] =>
    spectrumFromColumn(...args).diagnostics.map(formatDiagnostic);
  const SPHERE = "<cc:Sphere/>";
  const EXCLUDED = "<cc:Sphere><cc:Specular>Excluded</cc:Specular></cc:Sphere>";

  test("CxF values are factors", () => {
    expect(told(cxf(""), "percent", undefined, "r/a.cxf")).toEqual([
      "r/a.cxf:7:40 error The record says scale: percent, and the file says that earth is in factor readings/scale",
    ]);
  });

  test("SPECTRAL_PCT is percent", () => {
    const fields = ["SAMPLE_ID", ...INVENTED.flatMap(() => ["SPECTRAL_NM", "SPECTRAL_PCT"])];
    const column = columnOf(
      soundReading(
        "r/a.txt",
        cgatsText({
          fields,
          sets: [["earth", ...INVENTED.flatMap((value, i) => [String(400 + 10 * i), value])]],
        }),
      ),
      "earth",
    );
    expect(told(column, "factor", undefined, "r/a.txt")).toEqual([
      "r/a.txt:9:1 error The record says scale: factor, and the file says that earth is in percent readings/scale",
    ]);
    expect(told(column, "percent", undefined, "r/a.txt")).toEqual([]);
  });

  test("geometry", () => {
    expect(told(cxf(EXCLUDED), "factor", "d/8 included", "r/a.cxf")).toEqual([
      "r/a.cxf:7:40 error The record says geometry: d/8 included, and the file says that earth was read at d/8 excluded readings/geometry",
    ]);
    expect(told(cxf(SPHERE), "factor", "45/0", "r/a.cxf")).toEqual([
      "r/a.cxf:7:40 error The record says geometry: 45/0, and the file says that earth was read at d/8 readings/geometry",
    ]);
    expect(told(cxf(SPHERE), "factor", "d/8 included", "r/a.cxf")).toEqual([]);
    expect(told(cxf(EXCLUDED), "factor", "d/8 excluded", "r/a.cxf")).toEqual([]);
    expect(told(cxf(""), "factor", "45/0", "r/a.cxf")).toEqual([]);
  });

  test("a sample with Lab alone has no spectrum", () => {
    const column = columnOf(
      soundReading(
        "r/a.txt",
        cgatsText({
          fields: ["SAMPLE_ID", "LAB_L", "LAB_A", "LAB_B"],
          sets: [["1", "30", "1", "2"]],
        }),
      ),
      "1",
    );
    expect(told(column, "factor", undefined, "r/a.txt")).toEqual([
      "r/a.txt:9:1 error The reading 1 holds no spectrum readings/no-spectrum",
    ]);
  });
});

describe("whatever the cells say", () => {
  const cell = fc.oneof(
    { weight: 30, arbitrary: fc.double({ min: -0.005, max: 1.2, noNaN: true }).map(String) },
    {
      weight: 1,
      arbitrary: fc.constantFrom(
        "",
        "NaN",
        "1e400",
        "-1",
        "1.3",
        "0.1.2",
        "-",
        ".",
        "0x1",
        "Infinity",
        "１",
      ),
    },
  );

  test("an accepted reading is made of reflectance factors, never NaN", () => {
    let accepted = 0;
    fc.assert(
      fc.property(
        fc.array(cell, { minLength: 31, maxLength: 31 }),
        fc.constantFrom("factor" as const, "percent" as const),
        (cells, scale) => {
          const column = parseReadingFile(
            file,
            ["nm,masstone", ...cells.map((value, i) => `${400 + 10 * i},${value}`)].join("\n"),
          ).reading?.columns.get("masstone");
          if (!column) throw new Error("Unexpected reading `undefined`, expected one");
          const { spectrum, asRead, diagnostics } = spectrumFromColumn(
            column,
            scale,
            undefined,
            file,
          );
          const isSound = !diagnostics.some(({ severity }) => severity === "error");
          expect(spectrum !== undefined).toBe(isSound);
          if (!spectrum || !asRead) return;
          accepted++;
          expect(spectrum.values.every((R) => R >= 0 && R <= 1.2)).toBe(true);
          expect(asRead.values.every((R) => R >= -0.005 && R <= 1.2)).toBe(true);
        },
      ),
      { seed: 1, numRuns: 200 },
    );
    expect(accepted).toBeGreaterThan(20);
    expect(accepted).toBeLessThan(190);
  });
});
