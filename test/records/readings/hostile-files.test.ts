import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { certain } from "../../../lib/quantities/at.ts";
import { cellIn } from "../../../lib/records/readings/reading-column.ts";
import { parseReadingFile } from "../../../lib/records/readings/reading-file.ts";
import { spectrumFromColumn } from "../../../lib/records/readings/spectrum-from-column.ts";
import {
  cgatsText,
  csvText,
  cxfObject,
  cxfText,
  INVENTED,
  WAVELENGTHS,
} from "./invented-reading.ts";

const cgats = cgatsText({
  header: ["MEASUREMENT_GEOMETRY 45/0"],
  fields: ["SAMPLE_ID", "LAB_L", "LAB_A", "LAB_B", ...WAVELENGTHS.map((nm) => `nm${nm}`)],
  sets: [["1", "30", "1", "2", ...INVENTED]],
});
const SOUND = {
  "r/a.csv": csvText(),
  "r/a.txt": cgats,
  "r/a.cxf": cxfText({ objects: cxfObject("red earth") }),
  "r/b.cxf": cxfText({ objects: cxfObject("red earth") }).replace(/>\s+</g, "><"),
} as const;
/** Made once: fast-check lists all letters that there are for it. */
const anyLetters = fc.string({ unit: "binary", maxLength: 8 });
const file = fc.constantFrom("r/a.csv", "r/a.txt", "r/a.cxf", "r/b.cxf");

/** A reading or an error, whole and printable; a column asked for gives reflectance factors or an error. */
function expectSoundAnswer(name: string, text: string): void {
  const { reading, diagnostics } = parseReadingFile(name, text);
  expect(reading === undefined).toBe(diagnostics.some(({ severity }) => severity === "error"));
  const lines = text.split(/\r\n|\r|\n/);
  const wrong = diagnostics.filter(
    ({ place: { line, column }, rule }) =>
      !/^readings\/[a-z0-9-]+$/.test(rule) ||
      !(line >= 1 && line <= lines.length) ||
      !(column >= 1 && column <= (lines[line - 1]?.length ?? 0) + 1),
  );
  expect(wrong).toEqual([]);
  for (const column of reading?.columns.values() ?? []) {
    expect(column.places.texts).toHaveLength(column.values.length);
    expect(column.values).toHaveLength(column.grid?.count ?? 0);
    const misplaced = [...column.values.keys()].flatMap((i) => {
      const { text: cell, line, column: at } = certain(cellIn(column.places, i));
      const written = lines[line - 1] ?? "";
      const isThere = written.startsWith(cell, at - 1) || written.startsWith('"', at - 1);
      return isThere || cell.includes("\n") ? [] : [`${cell} at ${line}:${at}`];
    });
    expect(misplaced).toEqual([]);
    const { spectrum, diagnostics: faults } = spectrumFromColumn(column, "factor", "45/0", name);
    expect(spectrum === undefined).toBe(faults.some(({ severity }) => severity === "error"));
    expect(spectrum?.values.every((R) => R >= 0 && R <= 1.2) ?? true).toBe(true);
  }
}

describe("no file makes an exception, a wrong place or a NaN", () => {
  test("the sound files are sound", () => {
    for (const [name, text] of Object.entries(SOUND)) {
      expect(parseReadingFile(name, text).diagnostics).toEqual([]);
      expectSoundAnswer(name, text);
    }
  });

  test("any text", () => {
    const pieces = fc
      .array(
        fc.oneof(
          anyLetters,
          fc.constantFrom(
            "\n",
            "\r",
            "\r\n",
            "\t",
            ",",
            ";",
            '"',
            '""',
            "#",
            "nm",
            "400",
            "0.5",
            "CGATS.17\n",
            "BEGIN_DATA_FORMAT\n",
            "END_DATA_FORMAT\n",
            "BEGIN_DATA\n",
            "END_DATA\n",
            "NUMBER_OF_SETS",
            "SPECTRAL_NM",
            "nm400 ",
            "SAMPLE_ID ",
            "<",
            ">",
            "/>",
            "</",
            "<!--",
            "-->",
            "<![CDATA[",
            "]]>",
            "<!DOCTYPE",
            "&",
            "&#0;",
            "&lt;",
            "<?",
            "?>",
            "=",
            "<CxF xmlns='http://colorexchangeformat.com/CxF3-core'>",
            "</CxF>",
            "__proto__",
          ),
        ),
        { maxLength: 40 },
      )
      .map((parts) => parts.join(""));
    fc.assert(
      fc.property(
        file,
        pieces,
        fc.constantFrom(
          "",
          "nm,",
          "CGATS.17\n",
          "<CxF xmlns='http://colorexchangeformat.com/CxF3-core'>",
        ),
        (name, text, start) => {
          expectSoundAnswer(name, start + text);
        },
      ),
      { seed: 1, numRuns: 250 },
    );
  });

  test("any bytes, decoded as UTF-8", () => {
    fc.assert(
      fc.property(file, fc.uint8Array({ maxLength: 200 }), (name, bytes) => {
        expectSoundAnswer(
          name,
          new TextDecoder("utf-8", { ignoreBOM: true }).decode(bytes).replace(/^\uFEFF/, ""),
        );
      }),
      { seed: 1, numRuns: 200 },
    );
  });

  test.each(Object.entries(SOUND))("%s cut at any place", (name, text) => {
    for (let end = 0; end < text.length; end += 7) expectSoundAnswer(name, text.slice(0, end));
  });

  test("a sound file with one piece torn out, doubled or replaced", () => {
    fc.assert(
      fc.property(
        file,
        fc.nat(),
        fc.nat({ max: 30 }),
        fc.oneof(
          fc.constant(undefined),
          anyLetters,
          fc.constantFrom('"', "\t", "\n", "<", "&", "9e9", "-", "#"),
        ),
        (name, seed, length, put) => {
          const text = SOUND[name];
          const at = seed % text.length;
          const torn = text.slice(at, at + length);
          expectSoundAnswer(
            name,
            text.slice(0, at) + (put ?? torn + torn) + text.slice(at + length),
          );
        },
      ),
      { seed: 1, numRuns: 250 },
    );
  });
});

describe("size and depth are bounded", () => {
  const CXF = '<CxF xmlns="http://colorexchangeformat.com/CxF3-core">';
  const TABLE =
    "NUMBER_OF_FIELDS 1\nNUMBER_OF_SETS 1\nBEGIN_DATA_FORMAT A END_DATA_FORMAT BEGIN_DATA 1 END_DATA\n";
  test("a hundred tables are read", () => {
    const { diagnostics } = parseReadingFile("r/a.txt", `CGATS.17\n${TABLE.repeat(100)}`);
    expect(diagnostics.map(({ rule }) => rule)).not.toContain("readings/size");
  });

  test.each([
    ["r/a.csv", "a cell too many", "nm" + ",".repeat(500_001), "size"],
    ["r/a.csv", "a row without end", "nm,a\n" + "4".repeat(1_000_000), "csv"],
    ["r/a.csv", "a quote without end", 'nm,"' + '""'.repeat(500_000), "csv"],
    ["r/a.csv", "ten thousand faults", "nm,a\n" + "400,1\n".repeat(10_000), "many-faults"],
    ["r/a.txt", "a line without end", "CGATS.17\n" + '"'.repeat(1_000_000), "cgats-line"],
    [
      "r/a.txt",
      "half a million words and a line of ten thousand more",
      "CGATS.17\n" + "A ".repeat(10_000).concat("\n").repeat(51),
      "size",
    ],
    ["r/a.txt", "a table too many", `CGATS.17\n${TABLE.repeat(101)}`, "size"],
    ["r/a.cxf", "an element too many", CXF + "<a/>".repeat(200_000), "size"],
    ["r/a.cxf", "a hundred thousand levels", CXF + "<a>".repeat(100_000), "xml-depth"],
    [
      "r/a.cxf",
      "a hundred thousand levels passed over",
      CXF + "<CustomResources>" + "<a>".repeat(100_000),
      "xml-depth",
    ],
    [
      "r/a.cxf",
      "a value too many",
      `${CXF}<Resources><ObjectCollection><Object Name="a"><ColorValues><ReflectanceSpectrum StartWL="400" Increment="1">${"1 ".repeat(500_001)}</ReflectanceSpectrum></ColorValues></Object></ObjectCollection></Resources></CxF>`,
      "size",
    ],
    [
      "r/a.cxf",
      "entities that grow",
      '<!DOCTYPE a [<!ENTITY b "cccc"><!ENTITY d "&b;&b;&b;">]><a>&d;</a>',
      "doctype",
    ],
  ])("%s: %s", (name, _, text, rule) => {
    const { reading, diagnostics } = parseReadingFile(name, text);
    expect(reading).toBeUndefined();
    expect(diagnostics.at(-1)?.rule).toBe(`readings/${rule}`);
    expect(diagnostics.length).toBeLessThanOrEqual(51);
  });
});
