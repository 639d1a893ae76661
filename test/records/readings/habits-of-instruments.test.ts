import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { formatDiagnostic } from "../../../lib/diagnostics/diagnostic.ts";
import { decodedText } from "../../../lib/records/decoded-text.ts";
import { loadRecords } from "../../../lib/records/load-records.ts";
import { parseReadingFile } from "../../../lib/records/readings/reading-file.ts";
import { spectrumFromColumn } from "../../../lib/records/readings/spectrum-from-column.ts";
import { contentFolder, SMALLEST_WORKSHOP } from "../../support/content-folder.ts";
import { INVENTED, WAVELENGTHS } from "./invented-reading.ts";

// How programs of instruments lay out what they save is common practice, no source.

const FILE = "content/readings/a.csv";
const NUMBERS = INVENTED.map(Number);
const PERCENT = INVENTED.map((value) => (100 * Number(value)).toFixed(2));

function read(text: string, name = "masstone") {
  const { reading, diagnostics } = parseReadingFile(FILE, text);
  return { column: reading?.columns.get(name), told: diagnostics.map(formatDiagnostic) };
}

const rows = (
  value: (i: number) => string,
  nm = (i: number): string => WAVELENGTHS[i] ?? "",
): string => WAVELENGTHS.map((_, i) => `${nm(i)};${value(i)}`).join("\n");

describe("layouts of one table", () => {
  test.each([
    ["a mark of the separator", `sep=;\nnm;masstone\n${rows((i) => INVENTED[i] ?? "")}`],
    [
      "a preamble",
      `Instrument;X\nSerial no.;0071\n"Drawdowns, May"\n\nnm;masstone\n${rows((i) => INVENTED[i] ?? "")}`,
    ],
    [
      "the unit in each wavelength",
      `nm;masstone\n${rows(
        (i) => INVENTED[i] ?? "",
        (i) => `${WAVELENGTHS[i] ?? ""} nm`,
      )}`,
    ],
    [
      "a row a sample",
      `sample;${WAVELENGTHS.join(";")}\nother;${WAVELENGTHS.map(() => "0.5").join(";")}\nmasstone;${INVENTED.join(";")}\n`,
    ],
    [
      "a row a sample, with unit",
      `Name,${WAVELENGTHS.map((nm) => `${nm} nm`).join(",")}\nmasstone,${INVENTED.join(",")}\n`,
    ],
    [
      "a row a sample, with L*a*b* before and a number of its own",
      `No.\tSample Name\tL*\ta*\tb*\t${WAVELENGTHS.map((nm) => `R${nm}`).join("\t")}\n1\tmasstone\t35\t20\t15\t${INVENTED.join("\t")}\n`,
    ],
    [
      "a row a sample, decimal commas",
      `sample;${WAVELENGTHS.join(";")}\nmasstone;${INVENTED.map((value) => value.replace(".", ",")).join(";")}\n`,
    ],
  ])("%s", (_, text) => {
    const { column, told } = read(text);
    expect(told).toEqual([]);
    expect(column?.grid).toEqual({ startNm: 400, stepNm: 10, count: 31 });
    expect(column?.values).toEqual(NUMBERS);
  });

  test("cells that say percent", () => {
    const { column } = read(`nm;masstone\n${rows((i) => `${PERCENT[i] ?? ""}%`)}`);
    expect(column?.declaredScale).toBe("percent");
    expect(column?.values).toEqual(PERCENT.map(Number));
  });

  test("cells of which only some say percent are no numbers", () => {
    const { column } = read(
      `nm;masstone\n${rows((i) => (i === 3 ? "4.87" : `${PERCENT[i] ?? ""}%`))}`,
    );
    expect(column?.declaredScale).toBeUndefined();
    expect(column?.values.filter(Number.isNaN)).toHaveLength(30);
  });

  test("a fault behind a preamble is told at its own line", () => {
    const { told } = read(
      `Instrument;X\nnm;masstone\n${rows(
        (i) => INVENTED[i] ?? "",
        (i) => (i === 2 ? "blue" : (WAVELENGTHS[i] ?? "")),
      )}`,
    );
    expect(told[0]).toMatch(/^content\/readings\/a\.csv:5:1 error "blue" is no wavelength/);
  });
});

describe("steps of other instruments are resampled, and it is said", () => {
  /** A smooth curve that a cubic follows: what it is between its points is known. */
  const curve = (nm: number): number => 0.5 + 0.3 * Math.sin((nm - 400) / 60);
  const at = (wavelengths: readonly number[], digits: number) => {
    const { column } = read(
      `nm,masstone\n${wavelengths.map((nm) => `${nm.toFixed(digits)},${curve(nm).toFixed(6)}`).join("\n")}`,
    );
    if (column === undefined) throw new Error("There is no reading");
    return spectrumFromColumn(column, "factor", undefined, FILE);
  };
  const stepped = (from: number, step: number, count: number): number[] =>
    Array.from({ length: count }, (_, i) => from + i * step);

  test.each([
    ["10/3 nm, with decimals", stepped(380, 10 / 3, 106), 2, 5, "3.33", 0.0005],
    ["10/3 nm, printed as whole numbers", stepped(380, 10 / 3, 106), 0, 5, "3.33", 0.0005],
    ["4 nm", stepped(360, 4, 96), 0, 5, "4", 0.0005],
    ["3.5 nm", stepped(399, 3.5, 88), 1, 5, "3.5", 0.0005],
    ["20 nm", stepped(400, 20, 16), 0, 10, "20", 0.002],
  ] as const)("%s", (_, wavelengths, digits, step, printed, tolerance) => {
    const { spectrum, diagnostics } = at(wavelengths, digits);
    expect(spectrum?.grid.stepNm).toBe(step);
    expect((spectrum?.grid.startNm ?? NaN) % step).toBe(0);
    spectrum?.values.forEach((value, i) => {
      expect(Math.abs(value - curve(spectrum.grid.startNm + i * step))).toBeLessThan(tolerance);
    });
    expect(diagnostics.map(formatDiagnostic)).toEqual([
      `${FILE}:1:4 warning masstone steps by ${printed} nm, and is resampled to ${step} nm by natural cubic spline readings/resampled`,
    ]);
  });

  test("from 410 nm, the first value is held down to 400", () => {
    const { spectrum, diagnostics } = at(stepped(410, 10, 30), 0);
    expect(spectrum?.grid).toEqual({ startNm: 400, stepNm: 10, count: 31 });
    expect(spectrum?.values[0]).toBe(spectrum?.values[1]);
    expect(diagnostics.map(formatDiagnostic)).toEqual([
      `${FILE}:2:5 warning masstone begins at 410 nm, and its first value is held down to 400 nm readings/wavelength-range`,
    ]);
  });

  test.each([
    ["a wavelength left out", stepped(400, 10, 31).filter((nm) => nm !== 550)],
    ["one left out of steps of 1 nm", stepped(400, 1, 301).filter((nm) => nm !== 550)],
  ])("%s is a gap and no other step", (_, wavelengths) => {
    const { told } = read(`nm,masstone\n${wavelengths.map((nm) => `${nm},0.5`).join("\n")}`);
    expect(told[0]).toMatch(/Wavelengths are missing between/);
  });
});

describe("how a text was saved", () => {
  const text = "name: Krapplack für Öl\n";
  const utf16 = (bigEndian: boolean, mark: boolean): Uint8Array => {
    const letters = Buffer.from((mark ? "\uFEFF" : "") + text, "utf16le");
    return bigEndian ? letters.swap16() : letters;
  };
  test.each([
    ["UTF-8", Buffer.from(text), "UTF-8"],
    ["UTF-16, little end first", utf16(false, true), "UTF-16"],
    ["UTF-16, big end first", utf16(true, true), "UTF-16"],
    ["UTF-16 without its mark", utf16(false, false), "UTF-16"],
    ["UTF-16 without its mark, big end first", utf16(true, false), "UTF-16"],
    ["Latin-1", Buffer.from(text, "latin1"), "Windows-1252"],
  ])("%s", (_, bytes, encoding) => {
    expect(decodedText(bytes)).toEqual({ text, encoding });
  });

  test("bytes that are no text stay as they are, for a complaint", () => {
    expect(decodedText(Uint8Array.from([0x89, 0x50, 0x00, 0x81, 0xff])).text).toContain("\uFFFD");
  });

  test("a reading in UTF-16 is read, and a record in Latin-1 is told", () => {
    const { content, home } = contentFolder(SMALLEST_WORKSHOP);
    const write = (path: string, bytes: Buffer): void => writeFileSync(join(content, path), bytes);
    write(
      "readings/lamp-black.csv",
      Buffer.from(`\uFEFF${SMALLEST_WORKSHOP["readings/lamp-black.csv"]}`, "utf16le"),
    );
    write("pigments/lamp-black.yaml", Buffer.from("name: Lamp black\norigin: Köln\n", "latin1"));
    const { records, diagnostics } = loadRecords(content, home);
    expect(diagnostics.map(formatDiagnostic)).toEqual([
      "content/pigments/lamp-black.yaml:1:1 warning The file is not saved as UTF-8 and is read as Windows-1252 (Latin-1); look at letters with accents, and save the file as UTF-8 records/encoding",
    ]);
    expect(records?.pigments.get("lamp-black")?.record.origin).toBe("Köln");
    expect(records?.colours.get("lamp-black")?.masstone?.form).toBe("spectrum");
  });
});

describe("files that give L*a*b* and no spectrum", () => {
  const cgats = (keywords: string): string =>
    `CGATS.17\n${keywords}NUMBER_OF_FIELDS 4\nBEGIN_DATA_FORMAT\nSAMPLE_NAME LAB_L LAB_A LAB_B\nEND_DATA_FORMAT\nNUMBER_OF_SETS 2\nBEGIN_DATA\n"masstone" 21.4 1.2 -0.6\n"again" 21.8 1.0 -0.4\nEND_DATA\n`;
  const masstoneOf = (text: string, keys = "", column = "masstone") => {
    const { content, home } = contentFolder({
      ...SMALLEST_WORKSHOP,
      "readings/lab.txt": text,
      "colours/lamp-black.md": `---\nname: Lamp Black\npigments: [{ pigment: lamp-black }]\nmasstone: { reading: lab, column: ${column}, geometry: "45/0"${keys} }\n---\n`,
    });
    const { records, diagnostics } = loadRecords(content, home);
    return {
      masstone: records?.colours.get("lamp-black")?.masstone,
      told: diagnostics.map(formatDiagnostic).filter((line) => !line.includes("records/unused")),
    };
  };

  test("with the file's own light and observer", () => {
    const { masstone, told } = masstoneOf(cgats("ILLUMINATION_NAME D50\nOBSERVER_ANGLE 2\n"));
    expect(told).toEqual([]);
    expect(masstone).toMatchObject({
      form: "lab",
      viewing: "D50/2",
      lab: { L: 21.4, a: 1.2, b: -0.6 },
    });
  });

  test("with the record's, and averaged", () => {
    const { masstone } = masstoneOf(
      cgats(""),
      ", illuminant: D65, observer: 10",
      "[masstone, again]",
    );
    expect(masstone).toMatchObject({ form: "lab", viewing: "D65/10" });
    expect(masstone?.form === "lab" && masstone.lab.L).toBeCloseTo(21.6, 9);
  });

  test("with none it is asked for", () => {
    expect(masstoneOf(cgats("")).told).toEqual([
      "content/colours/lamp-black.md:4:22 error lab holds L*a*b* and no spectrum, and does not say for which light and observer: give illuminant and observer here records/viewing",
    ]);
  });

  test("with two that differ", () => {
    expect(
      masstoneOf(cgats("ILLUMINATION_NAME D50\nOBSERVER_ANGLE 2\n"), ", illuminant: D65").told[0],
    ).toContain(
      "The light and the observer of this L*a*b* differ: D65 in the record, D50 in the file",
    );
  });
});

describe("a file's own L*a*b*", () => {
  const file = (lab: string, factor = (_nm: string) => 0.18418652): string =>
    `CGATS.17\nILLUMINATION_NAME D65\nOBSERVER_ANGLE 10\nMEASUREMENT_SOURCE "Illumination=M3"\nMEASUREMENT_GEOMETRY 45/0\nNUMBER_OF_FIELDS 35\nBEGIN_DATA_FORMAT\nSAMPLE_NAME LAB_L LAB_A LAB_B ${WAVELENGTHS.map((nm) => `SPECTRAL_NM${nm}`).join(" ")}\nEND_DATA_FORMAT\nNUMBER_OF_SETS 1\nBEGIN_DATA\nmasstone ${lab} ${WAVELENGTHS.map(factor).join(" ")}\nEND_DATA\n`;
  const told = (L: number) => toldOf(file(`${L} 0 0`));
  const toldOf = (text: string) => {
    const { content, home } = contentFolder({
      ...SMALLEST_WORKSHOP,
      "readings/lamp-black.csv": "",
      "readings/own.txt": text,
      "colours/lamp-black.md":
        "---\nname: Lamp Black\npigments: [{ pigment: lamp-black }]\nmasstone: { reading: own, column: masstone, scale: factor }\n---\n",
    });
    const { diagnostics } = loadRecords(content, home);
    return diagnostics.map(formatDiagnostic).filter((line) => line.includes("lab-of-spectrum"));
  };

  test("agrees with its spectrum: R .18418652 is L* 50 (CIE 15: L* = 116 Y^(1/3) - 16)", () => {
    expect(told(50)).toEqual([]);
  });

  test("is told as that of another light, summed by hand over the 5 nm tables of CIE 15:2004", () => {
    const red = (nm: string): number => 0.05 + 0.45 / (1 + Math.exp((600 - Number(nm)) / 15));
    expect(toldOf(file("48.83 40.82 38.01", red))).toEqual([
      expect.stringContaining(
        "it is what the spectrum has under A/10; the spectrum is what is used",
      ),
    ]);
  });

  test("differs from it: 6 / (1 + 0.015 * 9 / sqrt(29)) of CIEDE2000, by hand", () => {
    expect(told(56)).toEqual([
      "content/readings/own.txt:12:1 warning The file gives masstone L*a*b* 56.0, 0.0, 0.0 (D65/10), and its spectrum has 50.0, 0.0, 0.0, Delta-E00 5.9 away; the spectrum is what is used readings/lab-of-spectrum",
    ]);
  });

  test("read between crossed polarisers it says so", () => {
    const { reading } = parseReadingFile("a.txt", file("50 0 0"));
    expect(reading?.columns.get("masstone")).toMatchObject({ isPolarised: true, geometry: "45/0" });
  });
});
