import { describe, expect, test } from "vitest";
import { cellIn } from "../../../lib/records/readings/reading-column.ts";
import { checkFaults, columnOf, soundReading } from "./reading-faults.ts";
import { cgatsText, INVENTED, WAVELENGTHS } from "./invented-reading.ts";
import { parseReadingFile } from "../../../lib/records/readings/reading-file.ts";

// Keywords and field names: CGATS.17 / ISO 28178, as instruments write them.

const file = "content/readings/red-earth.txt";
const NUMBERS = INVENTED.map(Number);
const single = (form: (nm: string) => string, header: readonly string[] = []): string =>
  cgatsText({
    header,
    fields: ["SAMPLE_ID", "SAMPLE_NAME", ...WAVELENGTHS.map(form)],
    sets: [["A1", '"red earth"', ...INVENTED]],
  });
const plain = single((nm) => `SPECTRAL_NM${nm}`);
const paired = (
  scale: string,
  values: readonly string[],
  wavelengths: readonly string[] = WAVELENGTHS,
): string =>
  cgatsText({
    fields: ["SAMPLE_ID", ...values.flatMap(() => ["SPECTRAL_NM", scale])],
    sets: [["earth", ...values.flatMap((value, i) => [wavelengths[i] ?? "", value])]],
  });

describe("a CGATS reading with one field a wavelength", () => {
  test.each([["SPECTRAL_NM400"], ["SPECTRAL_NM_400"], ["SPEC_400"], ["nm400"], ["NM_400"]])(
    "written %s",
    (example) => {
      const column = columnOf(
        soundReading(
          file,
          single((nm) => example.replace("400", nm)),
        ),
        "red earth",
      );
      expect(column.grid).toEqual({ startNm: 400, stepNm: 10, count: 31 });
      expect(column.values).toEqual(NUMBERS);
      expect(column.declaredScale).toBeUndefined();
    },
  );

  test("gives the places of sample and values", () => {
    const column = columnOf(soundReading(file, plain), "red earth");
    expect(column.at).toEqual({ line: 9, column: 4 });
    expect(cellIn(column.places, 0)).toEqual({ text: "0.0511", line: 9, column: 16 });
    expect(cellIn(column.places, 1)).toEqual({ text: "0.0502", line: 9, column: 23 });
  });

  test.each([["\r\n"], ["\r"]])("reads lines that end with %j", (lineEnd) => {
    const column = columnOf(soundReading(file, plain.replaceAll("\n", lineEnd)), "red earth");
    expect(column.values).toEqual(NUMBERS);
    expect(cellIn(column.places, 0)).toEqual({ text: "0.0511", line: 9, column: 16 });
  });

  test("passes over comments, private keywords and empty lines; blanks separate as tabs do", () => {
    const text = plain
      .replaceAll("\t", "   ")
      .replace(
        "BEGIN_DATA_FORMAT",
        '\nKEYWORD "SHOP" # ours\nSHOP "a # in quotes"\n# a line\nBEGIN_DATA_FORMAT # fields',
      )
      .replace('"red earth"', '"red ""earth"" #2"');
    expect(columnOf(soundReading(file, text), 'red "earth" #2').values).toEqual(NUMBERS);
  });

  test("reads decimal commas", () => {
    expect(columnOf(soundReading(file, plain.replaceAll("0.", "0,")), "red earth").values).toEqual(
      NUMBERS,
    );
  });

  test("a set and the fields may run over several lines", () => {
    const text = plain
      .replace("\tSPECTRAL_NM550", "\nSPECTRAL_NM550")
      .replace("\t0.0741", "\n0.0741")
      .replace("\t0.2540", "\n0.2540");
    const column = columnOf(soundReading(file, text), "red earth");
    expect(column.values).toEqual(NUMBERS);
    expect(cellIn(column.places, 15)).toEqual({ text: "0.0741", line: 11, column: 1 });
  });

  test("turns a scan from red to blue round, values and places together", () => {
    const text = cgatsText({
      fields: ["SAMPLE_ID", ...WAVELENGTHS.map((nm) => `nm${nm}`).reverse()],
      sets: [["earth", ...INVENTED.toReversed()]],
    });
    const column = columnOf(soundReading(file, text), "earth");
    expect(column.grid).toEqual({ startNm: 400, stepNm: 10, count: 31 });
    expect(column.values).toEqual(NUMBERS);
    expect(cellIn(column.places, 30)).toEqual({ text: "0.337", line: 9, column: 7 });
  });

  test("carries what the header says", () => {
    const header = [
      'INSTRUMENTATION "invented"',
      "CREATED 2026-03-02",
      "MEASUREMENT_GEOMETRY 45/0",
      "ILLUMINATION_NAME D50",
      "OBSERVER_ANGLE 2",
    ];
    const text = cgatsText({
      header,
      fields: ["SAMPLE_ID", "LAB_L", "LAB_A", "LAB_B", "XYZ_X", "XYZ_Y", "XYZ_Z"],
      sets: [["1", "30.5", "-1.25", "2", "6.1", "6.3", "5"]],
    });
    const reading = soundReading(file, text);
    expect(reading.notes).toEqual({
      originator: "Saltreach Colourworks, invented",
      instrument: "invented",
      date: "2026-03-02",
      geometry: "45/0",
    });
    expect(columnOf(reading, "1")).toEqual({
      name: "1",
      at: { line: 14, column: 1 },
      values: [],
      places: { texts: [], lines: [], columns: [] },
      geometry: "45/0",
      lab: { L: 30.5, a: -1.25, b: 2, illuminant: "D50", observer: 2 },
      xyz: { X: 6.1, Y: 6.3, Z: 5, illuminant: "D50", observer: 2 },
    });
  });
});

describe("a CGATS reading in pairs of wavelength and value", () => {
  test("SPECTRAL_DEC is a factor", () => {
    const column = columnOf(soundReading(file, paired("SPECTRAL_DEC", INVENTED)), "earth");
    expect(column.values).toEqual(NUMBERS);
    expect(column.grid).toEqual({ startNm: 400, stepNm: 10, count: 31 });
    expect(column.declaredScale).toBe("factor");
  });

  test("SPECTRAL_PCT is percent", () => {
    const column = columnOf(
      soundReading(file, paired("SPECTRAL_PCT", ["5.11", "7.5"], ["400", "410"])),
      "earth",
    );
    expect(column.values).toEqual([5.11, 7.5]);
    expect(column.declaredScale).toBe("percent");
  });
});

describe("names of samples", () => {
  const set = (id: string, name: string): string[] => [id, name, "0.1", "0.2"];
  const fields = ["SAMPLE_ID", "SAMPLE_NAME", "nm400", "nm410"];

  test("a sample without a name goes by its identifier", () => {
    expect([
      ...soundReading(
        file,
        cgatsText({ fields, sets: [set("A1", "earth"), set("A2", '""')] }),
      ).columns.keys(),
    ]).toEqual(["earth", "A2"]);
  });

  test("samples whose names repeat go by their identifiers", () => {
    const { reading, diagnostics } = parseReadingFile(
      file,
      cgatsText({ fields, sets: [set("A1", "earth"), set("A2", "earth")] }),
    );
    expect([...(reading?.columns.keys() ?? [])]).toEqual(["A1", "A2"]);
    expect(diagnostics).toMatchObject([
      { severity: "warning", rule: "readings/duplicated-column", place: { line: 10, column: 4 } },
    ]);
  });

  test("a later table's sample of the same name says its table", () => {
    const table = cgatsText({ fields, sets: [set("A1", "earth")] });
    expect([...soundReading(file, table + table).columns.keys()]).toEqual([
      "earth",
      "earth (table 2)",
    ]);
  });
});

describe("faults of a CGATS text", () => {
  const short = cgatsText({
    fields: ["SAMPLE_ID", "nm400", "nm410"],
    sets: [
      ["1", "0.1", "0.2"],
      ["2", "0.1", "0.2"],
    ],
  });
  const at = (place: string): string => `${file}:${place}`;
  checkFaults([
    {
      what: "a count of fields that does not match",
      file,
      text: short.replace("FIELDS 3", "FIELDS 4"),
      told: at("3:18 error NUMBER_OF_FIELDS says 4, and the table has 3 readings/cgats-count"),
    },
    {
      what: "a count of sets that does not match",
      file,
      text: short.replace("SETS 2", "SETS 1"),
      told: at("7:16 error NUMBER_OF_SETS says 1, and the table has 2 readings/cgats-count"),
    },
    {
      what: "a count that is no number",
      file,
      text: short.replace("SETS 2", "SETS two"),
      told: at("7:16 error NUMBER_OF_SETS says two, and the table has 2 readings/cgats-count"),
    },
    {
      what: "a count that is left empty",
      file,
      text: short.replace("SETS 2", "SETS"),
      told: at("7:1 error NUMBER_OF_SETS says nothing, and the table has 2 readings/cgats-count"),
    },
    {
      what: "no count",
      file,
      text: short.replace("NUMBER_OF_SETS 2\n", ""),
      told: at(
        "5:1 warning NUMBER_OF_SETS is missing; the table has 2; without it a cut file can't be told readings/cgats-count",
      ),
    },
    {
      what: "no identifier",
      file,
      text: short.replace("CGATS.17\n", ""),
      told: at(
        '1:1 warning The first line is "ORIGINATOR Saltreach Colourworks, invented", and a file identifier such as CGATS.17 stands there alone readings/cgats-identifier',
      ),
    },
    {
      what: "a set one value short",
      file,
      text: short.replace("1\t0.1\t0.2", "1\t0.1"),
      told: at("9:1 error This set has 2 values, and the table has 3 fields readings/row-width"),
    },
    {
      what: "a set one value long",
      file,
      text: short.replace("1\t0.1\t0.2", "1\t0.1\t0.2\t0.3"),
      told: at("9:1 error This set has 4 values, and the table has 3 fields readings/row-width"),
    },
    {
      what: "an empty cell between tabs",
      file,
      text: short.replace("1\t0.1\t0.2", "1\t\t0.2"),
      told: at("9:3 error A cell is empty between two tabs readings/empty-cell"),
    },
    {
      what: "a text that is cut in its data",
      file,
      text: short.slice(0, short.indexOf("END_DATA\n")),
      told: at("11:1 error The file ends before END_DATA readings/cgats-structure"),
    },
    {
      what: "a text that is cut in its fields",
      file,
      text: short.slice(0, short.indexOf("END_DATA_FORMAT")),
      told: at("6:1 error The file ends before END_DATA_FORMAT readings/cgats-structure"),
    },
    {
      what: "a text that is cut before its data",
      file,
      text: short.slice(0, short.indexOf("NUMBER_OF_SETS")),
      told: at(
        "7:1 error The file ends without a table: BEGIN_DATA_FORMAT, BEGIN_DATA and their ends readings/cgats-structure",
      ),
    },
    {
      what: "a second table that is cut before its data",
      file,
      text: short + "BEGIN_DATA_FORMAT\nSAMPLE_ID\nEND_DATA_FORMAT\n",
      told: at(
        "15:1 error The file ends without a table: BEGIN_DATA_FORMAT, BEGIN_DATA and their ends readings/cgats-structure",
      ),
    },
    {
      what: "fields given twice",
      file,
      text: short.replace("NUMBER_OF_SETS", "BEGIN_DATA_FORMAT\nEND_DATA_FORMAT\nNUMBER_OF_SETS"),
      told: at("7:1 error A table has a second BEGIN_DATA_FORMAT readings/cgats-structure"),
    },
    {
      what: "fields that are not closed",
      file,
      text: short.replace("END_DATA_FORMAT\n", ""),
      told: at("6:1 error NUMBER_OF_SETS stands before END_DATA_FORMAT readings/cgats-structure"),
    },
    {
      what: "data without fields",
      file,
      text: "CGATS.17\nBEGIN_DATA\n1 2\nEND_DATA\n",
      told: at(
        "2:1 error BEGIN_DATA comes before BEGIN_DATA_FORMAT and the table's fields readings/cgats-structure",
      ),
    },
    {
      what: "an end without a beginning",
      file,
      text: short + "END_DATA\n",
      told: at("12:1 error END_DATA has no BEGIN_DATA before it readings/cgats-structure"),
    },
    {
      what: "a quote that is not closed",
      file,
      text: short.replace('invented"', "invented"),
      told: at(
        '2:12 error The quote before "Saltreach Colourworks, invented" is not closed on its line readings/cgats-quote',
      ),
    },
    {
      what: "a field twice",
      file,
      text: cgatsText({ fields: ["SAMPLE_ID", "LAB_L", "nm400", "nm410", "LAB_L"], sets: [] }),
      told: at("5:29 error The table has the field LAB_L twice readings/duplicated-column"),
    },
    {
      what: "a wavelength twice",
      file,
      text: cgatsText({ fields: ["SAMPLE_ID", "nm400", "nm410", "SPEC_410"], sets: [] }),
      told: at(
        "5:23 error The wavelength 410 comes twice: first on line 5 readings/duplicated-wavelength",
      ),
    },
    {
      what: "a gap",
      file,
      text: cgatsText({ fields: ["SAMPLE_ID", "nm400", "nm410", "nm420", "nm440"], sets: [] }),
      told: at(
        "5:29 error Wavelengths are missing between 420 and 440 nm: the step is 10 nm readings/wavelength-gap",
      ),
    },
    {
      what: "wavelengths out of order",
      file,
      text: cgatsText({ fields: ["SAMPLE_ID", "nm400", "nm420", "nm410", "nm430"], sets: [] }),
      told: at(
        "5:23 error The wavelength 410 is out of order: it follows 420, in a rising row readings/wavelength-order",
      ),
    },
    {
      what: "a gap in pairs",
      file,
      text: paired("SPECTRAL_DEC", ["0.1", "0.2", "0.3", "0.4"], ["400", "410", "420", "440"]),
      told: at(
        "9:31 error Wavelengths are missing between 420 and 440 nm: the step is 10 nm readings/wavelength-gap",
      ),
    },
    {
      what: "a value without its wavelength",
      file,
      text: cgatsText({ fields: ["SAMPLE_ID", "SPECTRAL_PCT"], sets: [] }),
      told: at(
        "5:11 error The field SPECTRAL_PCT needs SPECTRAL_NM just before it readings/cgats-pairs",
      ),
    },
    {
      what: "a wavelength without its value",
      file,
      text: cgatsText({ fields: ["SAMPLE_ID", "SPECTRAL_NM"], sets: [] }),
      told: at(
        "5:11 error The field SPECTRAL_NM needs SPECTRAL_PCT or SPECTRAL_DEC just after it readings/cgats-pairs",
      ),
    },
    {
      what: "percent and factor in one table",
      file,
      text: cgatsText({
        fields: ["SAMPLE_ID", "SPECTRAL_NM", "SPECTRAL_PCT", "SPECTRAL_NM", "SPECTRAL_DEC"],
        sets: [],
      }),
      told: at(
        "5:48 error The field SPECTRAL_DEC mixes two scales in one table: use SPECTRAL_PCT or SPECTRAL_DEC throughout readings/cgats-pairs",
      ),
    },
    {
      what: "both forms in one table",
      file,
      text: cgatsText({ fields: ["SPECTRAL_NM", "SPECTRAL_PCT", "nm400", "nm410"], sets: [] }),
      told: at(
        "5:26 error The table gives 400 nm a field of its own and also lists SPECTRAL_NM with its value: only one of the two can be read readings/cgats-pairs",
      ),
    },
    {
      what: "point and comma in one file",
      file,
      text: short.replace("2\t0.1", "2\t0,1"),
      told: at(
        '10:3 error "0,1" has another decimal mark than the numbers before it, which have "." readings/decimal-mark',
      ),
    },
    {
      what: "an identifier twice",
      file,
      text: short.replace("2\t0.1", "1\t0.1"),
      told: at("10:1 error The sample 1 comes twice readings/duplicated-column"),
    },
    {
      what: "no measured field",
      file,
      text: cgatsText({ fields: ["SAMPLE_ID", "CMYK_C"], sets: [["1", "50"]] }),
      told: at(
        "1:1 error The file holds no sample: one has fields SPECTRAL_NM400 and so on, LAB_L LAB_A LAB_B or XYZ_X XYZ_Y XYZ_Z readings/no-reading",
      ),
    },
    {
      what: "a Lab that is no number",
      file,
      text: cgatsText({
        fields: ["SAMPLE_ID", "LAB_L", "LAB_A", "LAB_B"],
        sets: [["1", "30", "n/a", "2"]],
      }),
      told: at('9:6 warning The L*a*b* or XYZ value "n/a" of 1 is no number readings/not-a-number'),
    },
  ]);
});
