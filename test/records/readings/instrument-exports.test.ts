import { describe, expect, test } from "vitest";
import { deltaE00 } from "../../../lib/colorimetry/difference.ts";
import { xyzToLab } from "../../../lib/colorimetry/lab.ts";
import { tristimulus } from "../../../lib/colorimetry/tristimulus.ts";
import type { Spectrum } from "../../../lib/quantities/spectrum.ts";
import { parseReadingFile } from "../../../lib/records/readings/reading-file.ts";
import { spectrumFromColumn } from "../../../lib/records/readings/spectrum-from-column.ts";
import {
  readingFileText,
  understoodReadings,
} from "../../../lib/records/readings/understood-readings.ts";
import { MEASURED_PAINTS } from "../../published/measured-paints.ts";

/** Two invented samples in percent, 380 to 730 nm in steps of 10: a red and a grey. */
const NM = Array.from({ length: 36 }, (_, i) => 380 + 10 * i);
const RED = NM.map((nm) => Number((4 + 60 / (1 + Math.exp((600 - nm) / 15))).toFixed(2)));
const GREY = NM.map(() => 21.5);
const PREAMBLE = [
  "Instrument;Spectrophotometer, invented",
  "Serial;0001",
  "Illuminant;D65",
  "Observer;10",
  "",
];

/** Layouts that programs of instruments save, each of the same two samples. */
const LAYOUTS: Readonly<Record<string, string>> = {
  "a row a sample, heads in nm": [
    ...PREAMBLE,
    ["Name", "L*", "a*", "b*", ...NM.map((nm) => `${nm} nm`)].join(";"),
    ["red", 40, 50, 30, ...RED].join(";"),
    ["grey", 53, 0, 0, ...GREY].join(";"),
  ].join("\n"),
  "a row a sample, heads as CGATS fields": [
    ["SAMPLE_ID", "SAMPLE_NAME", ...NM.map((nm) => `SPECTRAL_NM${nm}`)].join("\t"),
    [1, "red", ...RED].join("\t"),
    [2, "grey", ...GREY].join("\t"),
  ].join("\n"),
  "a column a sample, what else was measured between names and wavelengths": [
    ...PREAMBLE,
    "Sample;red;grey",
    "Date;2026-05-18;2026-05-18",
    "L*;40;53",
    ...NM.map((nm, i) => `${nm} nm;${RED[i]};${GREY[i]}`),
    "Gloss;12;14",
  ].join("\n"),
  "a column a sample, heads as CGATS fields, decimal commas": [
    "Name;red;grey",
    ...NM.map(
      (nm, i) =>
        `SPECTRAL_NM${nm};${String(RED[i]).replace(".", ",")};${String(GREY[i]).replace(".", ",")}`,
    ),
  ].join("\r\n"),
  "a row a wavelength": ["nm,red,grey", ...NM.map((nm, i) => `${nm},${RED[i]},${GREY[i]}`)].join(
    "\n",
  ),
  "brackets about the wavelength": [
    ["Sample", ...NM.map((nm) => `R[${nm}nm]`)].join(","),
    ["red", ...RED].join(","),
    ["grey", ...GREY].join(","),
  ].join("\n"),
};

describe.each(Object.entries(LAYOUTS))("%s", (_, text) => {
  const { readings, diagnostics } = understoodReadings("export.csv", text);

  test("holds the two samples from 380 to 730 nm, in percent beyond doubt", () => {
    expect(diagnostics).toEqual([]);
    expect(readings?.samples.map(({ name }) => name)).toEqual(["red", "grey"]);
    expect(readings?.grid).toEqual({ startNm: 380, stepNm: 10, count: 36 });
    expect(readings?.scale).toEqual({ scale: "percent", how: "certain" });
    expect(readings?.samples.map(({ values }) => values)).toEqual([RED, GREY]);
  });

  test("is written as a file of factors that reads back the same", () => {
    if (readings === undefined) throw new Error("Unexpected fault");
    const { text: written = "" } = readingFileText("export.csv", readings, "percent", undefined, [
      "From an instrument",
    ]);
    expect(written.startsWith("# From an instrument\nnm,red,grey\n380,")).toBe(true);
    const back = parseReadingFile("readings/export.csv", written).reading;
    expect(back?.columns.get("red")?.values).toEqual(
      RED.map((percent) => Number((percent / 100).toPrecision(6))),
    );
  });
});

describe("factor or percent", () => {
  const table = (values: readonly number[]): string =>
    ["nm,dark", ...NM.map((nm, i) => `${nm},${values[i]}`)].join("\n");

  test("above 1.2 it can only be percent; to 1.2 it is to be confirmed", () => {
    const scaleOf = (highest: number) =>
      understoodReadings("x.csv", table(NM.map((_, i) => (i === 9 ? highest : 0.5)))).readings
        ?.scale;
    expect(scaleOf(1.21)).toEqual({ scale: "percent", how: "certain" });
    expect(scaleOf(1.2)).toEqual({ scale: "factor", how: "likely" });
  });

  test("a file that says it is taken at its word", () => {
    const { readings } = understoodReadings(
      "x.csv",
      ["nm,dark", ...NM.map((nm) => `${nm},0.5%`)].join("\n"),
    );
    expect(readings?.scale).toEqual({ scale: "percent", how: "said" });
  });
});

describe("a reading from 420 nm", () => {
  const column = (text: string) => {
    const found = parseReadingFile("r.csv", text).reading?.columns.get("red");
    if (found === undefined) throw new Error("Unexpected fault");
    return found;
  };
  const from = (startNm: number): string =>
    [
      "nm,red",
      ...NM.flatMap((nm, i) => (nm < startNm || nm > 700 ? [] : [`${nm},${RED[i]}`])),
    ].join("\n");

  test("is used as far as it reaches, its first value held down to 400 nm, and it is said", () => {
    const { spectrum, asRead, diagnostics } = spectrumFromColumn(
      column(from(420)),
      "percent",
      undefined,
      "r.csv",
    );
    expect(diagnostics.map(({ severity, message }) => [severity, message])).toEqual([
      ["warning", "red begins at 420 nm, and its first value is held down to 400 nm"],
    ]);
    expect(asRead?.grid.startNm).toBe(420);
    expect(spectrum?.grid.startNm).toBe(400);
    const [first, second, third] = spectrum?.values ?? [];
    expect([first, second]).toEqual([third, third]);
  });

  test("from 430 nm it is refused", () => {
    const { spectrum, diagnostics } = spectrumFromColumn(
      column(from(430)),
      "percent",
      undefined,
      "r.csv",
    );
    expect(spectrum).toBeUndefined();
    expect(diagnostics.map(({ severity }) => severity)).toEqual(["error"]);
  });

  /** Oil paints that were measured from 400 nm, with and without their first two values. */
  test("moves no measured oil paint by 0.3 Delta-E00", () => {
    const cut = ({ grid, values }: Spectrum): Spectrum => ({
      grid,
      values: values.map((R, i) => (i < 2 ? (values[2] ?? NaN) : R)),
    });
    const moved = [...MEASURED_PAINTS.values()].map(({ overWhite: { spectrum } }) => {
      const lab = (one: Spectrum) => xyzToLab(tristimulus(one, "D65/10"), "D65/10");
      return deltaE00(lab(spectrum), lab(cut(spectrum)));
    });
    expect(moved.length).toBeGreaterThan(50);
    expect(Math.max(...moved)).toBeLessThan(0.3);
  });
});
