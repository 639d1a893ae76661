import { describe, expect, test } from "vitest";
import { cellIn } from "../../../lib/records/readings/reading-column.ts";
import { checkFaults, columnOf, soundReading } from "./reading-faults.ts";
import { csvText, INVENTED } from "./invented-reading.ts";

// The fixed form of content/readings/NAME.csv is the project's own: header row, first column `nm`.
// Quoting, separators and line ends: RFC 4180, and common practice of spreadsheets where comma is the decimal mark.

const NUMBERS = INVENTED.map(Number);
const file = "content/readings/red-earth.csv";

describe("a CSV reading", () => {
  test("gives grid, values as written and the place of each", () => {
    const reading = soundReading(file, csvText());
    const column = columnOf(reading, "masstone");
    expect(reading.format).toBe("CSV");
    expect(column.grid).toEqual({ startNm: 400, stepNm: 10, count: 31 });
    expect(column.values).toEqual(NUMBERS);
    expect(column.at).toEqual({ line: 1, column: 4 });
    expect(cellIn(column.places, 0)).toEqual({ text: "0.0511", line: 2, column: 5 });
    expect(cellIn(column.places, 30)).toEqual({ text: "0.337", line: 32, column: 5 });
    expect(column.declaredScale).toBeUndefined();
  });

  test.each([["\n"], ["\r\n"], ["\r"]])("reads lines that end with %j", (lineEnd) => {
    const column = columnOf(soundReading(file, csvText({}, lineEnd)), "masstone");
    expect(column.values).toEqual(NUMBERS);
    expect(cellIn(column.places, 30)).toMatchObject({ line: 32, column: 5 });
  });

  test("passes over a byte order mark, comments, empty lines, empty rows and a trailing separator", () => {
    const text =
      '\uFEFF# invented "readings", Saltreach\r\n\r\nnm,masstone,\r\n' +
      INVENTED.map((value, i) => `${400 + 10 * i},${value},`).join("\r\n") +
      "\r\n,,\r\n";
    const column = columnOf(soundReading(file, text), "masstone");
    expect(column.values).toEqual(NUMBERS);
    expect(cellIn(column.places, 0)).toEqual({ text: "0.0511", line: 4, column: 5 });
  });

  test.each([[";"], ["\t"]])("reads decimal commas between %j", (separator) => {
    const text = [
      `nm${separator}masstone`,
      ...INVENTED.map((value, i) => `${400 + 10 * i}${separator}${value.replace(".", ",")}`),
    ].join("\n");
    expect(columnOf(soundReading(file, text), "masstone").values).toEqual(NUMBERS);
  });

  test("a byte order mark has no column", () => {
    expect(columnOf(soundReading(file, "\uFEFF" + csvText()), "masstone").at).toEqual({
      line: 1,
      column: 4,
    });
  });

  test("reads quoted cells, with commas, quotes and line breaks in a name", () => {
    const text =
      '"nm", "masstone, ""short""" ,"tint\n1:20"\n' +
      INVENTED.map((value, i) => `"${400 + 10 * i}" , "${value}","0.5"`).join("\n");
    const reading = soundReading(file, text);
    const column = columnOf(reading, 'masstone, "short"');
    expect([...reading.columns.keys()]).toEqual(['masstone, "short"', "tint\n1:20"]);
    expect(column.values).toEqual(NUMBERS);
    expect(column.at).toEqual({ line: 1, column: 7 });
    expect(cellIn(column.places, 0)).toEqual({ text: "0.0511", line: 3, column: 9 });
  });

  test("counts columns after letters outside ASCII", () => {
    const text =
      "nm,Kräplack 😀,tint\n" +
      INVENTED.map((value, i) => `${400 + 10 * i},${value},0.5`).join("\n");
    expect(columnOf(soundReading(file, text), "tint").at).toEqual({ line: 1, column: 16 });
  });

  test("a quote inside a name is a letter like others, and an accent may be a mark of its own", () => {
    expect([...soundReading(file, csvText({ 1: 'nm,2" kra\u0308plack' })).columns.keys()]).toEqual([
      '2" kr\u00e4plack',
    ]);
  });

  test("takes wavelengths from 100 to 4000 nm", () => {
    expect(soundReading(file, "nm,a\n100,0.1\n200,0.1\n").columns.size).toBe(1);
    expect(soundReading(file, "nm,a\n3900,0.1\n4000,0.1\n").columns.size).toBe(1);
  });

  test("turns a scan from red to blue round, values and places together", () => {
    const rows = INVENTED.map((value, i) => `${400 + 10 * i},${value}`).reverse();
    const column = columnOf(soundReading(file, ["nm,masstone", ...rows].join("\n")), "masstone");
    expect(column.grid).toEqual({ startNm: 400, stepNm: 10, count: 31 });
    expect(column.values).toEqual(NUMBERS);
    expect(cellIn(column.places, 0)).toMatchObject({ text: "0.0511", line: 32 });
  });

  test.each(["nm", "NM", "wavelength nm", "Wavelength (nm)", "wavelength_nm"])(
    "knows the wavelengths under %s",
    (head) => {
      expect(soundReading(file, csvText({ 1: `${head},masstone` })).columns.size).toBe(1);
    },
  );

  test("a column nobody has asked for may have empty cells and words", () => {
    const text = csvText({ 1: "nm,masstone,remarks", 5: "430,0.0487,lamp changed" });
    const reading = soundReading(file, text);
    expect(columnOf(reading, "masstone").values).toEqual(NUMBERS);
    expect(columnOf(reading, "remarks").values.every(Number.isNaN)).toBe(true);
  });
});

describe("faults of a CSV", () => {
  checkFaults([
    {
      what: "a gap",
      file,
      text: csvText({ 6: "", 7: "" }),
      told: `${file}:8:1 error Wavelengths are missing between 430 and 460 nm: the step is 10 nm readings/wavelength-gap`,
    },
    {
      what: "two wavelengths swapped",
      file,
      text: csvText({ 6: "450,0.0476", 7: "440,0.0480" }),
      told: `${file}:7:1 error The wavelength 440 is out of order: it follows 450, in a rising row readings/wavelength-order`,
    },
    {
      what: "a wavelength twice",
      file,
      text: csvText({ 6: "440,0.0480\n440,0.0481" }),
      told: `${file}:7:1 error The wavelength 440 comes twice: first on line 6 readings/duplicated-wavelength`,
    },
    {
      what: "a wavelength off the step",
      file,
      text: csvText({ 32: "705,0.337" }),
      told: `${file}:32:1 error 705 nm follows 690 nm off the step of 10 nm: 700 is next readings/wavelength-step`,
    },
    {
      what: "a wavelength that is no number",
      file,
      text: csvText({ 6: "blue,0.0480" }),
      told: `${file}:6:1 error "blue" is no wavelength: that is a number of nm, 100 to 4000 readings/wavelength`,
    },
    {
      what: "a wavelength in micrometres",
      file,
      text: "nm,masstone\n0.4,0.05\n",
      told: `${file}:2:1 error "0.4" is no wavelength: that is a number of nm, 100 to 4000 readings/wavelength`,
    },
    {
      what: "a gap where either step might be meant",
      file,
      text: "nm,a\n400,0.1\n420,0.1\n430,0.1\n",
      told: `${file}:3:1 error Wavelengths are missing between 400 and 420 nm: the step is 10 nm readings/wavelength-gap`,
    },
    {
      what: "a wavelength below 100 nm",
      file,
      text: "nm,a\n99,0.1\n100,0.1\n",
      told: `${file}:2:1 error "99" is no wavelength: that is a number of nm, 100 to 4000 readings/wavelength`,
    },
    {
      what: "a wavelength above 4000 nm",
      file,
      text: "nm,a\n4000,0.1\n4001,0.1\n",
      told: `${file}:3:1 error "4001" is no wavelength: that is a number of nm, 100 to 4000 readings/wavelength`,
    },
    {
      what: "a row without wavelength",
      file,
      text: csvText({ 6: ",0.0480" }),
      told: `${file}:6:1 error A wavelength is missing here readings/wavelength`,
    },
    {
      what: "a single wavelength",
      file,
      text: "nm,masstone\n400,0.05\n",
      told: `${file}:1:1 error One wavelength is too few: a reading covers 400 to 700 nm in even steps of 1 to 20 nm readings/wavelength-count`,
    },
    {
      what: "a header alone",
      file,
      text: "nm,masstone\n",
      told: `${file}:1:1 error 0 wavelengths are too few: a reading covers 400 to 700 nm in even steps of 1 to 20 nm readings/wavelength-count`,
    },
    {
      what: "no header row",
      file,
      text: csvText({ 1: "" }),
      told: `${file}:2:1 error The header row begins with "400", and begins with nm in a reading readings/header`,
    },
    {
      what: "wavelengths alone",
      file,
      text: "nm\n400\n410\n",
      told: `${file}:1:1 error The header row has nm alone: each column needs a name readings/header`,
    },
    {
      what: "a column name twice",
      file,
      text: csvText({ 1: "nm,masstone,masstone" }),
      told: `${file}:1:13 error The column masstone comes twice: first at column 4 of the header row readings/duplicated-column`,
    },
    {
      what: "values under no name",
      file,
      text: csvText({ 1: "nm,masstone,", 3: "410,0.0502,0.5" }),
      told: `${file}:1:13 error A column of values has no name above it readings/column-name`,
    },
    {
      what: "a cell past the last column",
      file,
      text: csvText({ 3: "410,0.0502,0.5" }),
      told: `${file}:3:12 error The cell "0.5" lies past the last column: the header row has 2; decimal commas need semicolons or tabs between the cells readings/row-width`,
    },
    {
      what: "decimal commas between commas",
      file,
      text: [
        "nm,masstone",
        ...INVENTED.map((value, i) => `${400 + 10 * i},${value.replace(".", ",")}`),
      ].join("\n"),
      told: `${file}:2:7 error The cell "0511" lies past the last column: the header row has 2; decimal commas need semicolons or tabs between the cells, and on 30 more rows readings/row-width`,
    },
    {
      what: "point and comma in one file",
      file,
      text: csvText().replaceAll(",", ";").replace("0.0493", "0,0493"),
      told: `${file}:4:5 error "0,0493" has another decimal mark than the numbers before it, which have "." readings/decimal-mark`,
    },
    {
      what: "a quote that is not closed",
      file,
      text: csvText({ 3: '410,"0.0502' }),
      told: `${file}:3:5 error The rows of this CSV can't be told apart: quote that is not closed readings/csv`,
    },
    {
      what: "text after a quote",
      file,
      text: csvText({ 3: '410,"0.0502" x' }),
      told: `${file}:3:5 error The rows of this CSV can't be told apart: text after a closing quote readings/csv`,
    },
  ]);
});

describe("faults of a file as a whole", () => {
  checkFaults([
    {
      what: "an ending of none of the formats",
      file: "r/a.xls",
      text: csvText(),
      told: "r/a.xls:1:1 error A reading's name has an ending that says its format, .csv, .txt, .cgats or .it8, .cxf or .xml, and this one has .xls readings/ending",
    },
    {
      what: "no ending",
      file: "r/a",
      text: csvText(),
      told: "r/a:1:1 error A reading's name has an ending that says its format, .csv, .txt, .cgats or .it8, .cxf or .xml, and this one has none readings/ending",
    },
    {
      what: "an ending that is a word of the language",
      file: "r/a.constructor",
      text: csvText(),
      told: "r/a.constructor:1:1 error A reading's name has an ending that says its format, .csv, .txt, .cgats or .it8, .cxf or .xml, and this one has .constructor readings/ending",
    },
    {
      what: "a UTF-16 mark read as UTF-8",
      file,
      text: "\uFFFD\uFFFDnm",
      told: `${file}:1:1 error The file is not saved as UTF-8 text; save the file as UTF-8 text readings/encoding`,
    },
    {
      what: "nothing in it",
      file,
      text: "\uFEFF \r\n",
      told: `${file}:1:1 error The file is empty, and would hold CSV readings/empty`,
    },
    {
      what: "UTF-16 read as UTF-8",
      file,
      text: "n\0m\0,\0",
      told: `${file}:1:1 error The file is not saved as UTF-8 text; save the file as UTF-8 text readings/encoding`,
    },
    {
      what: "CGATS text named .csv",
      file,
      text: "CGATS.17\nBEGIN_DATA_FORMAT\n",
      told: `${file}:1:1 error A .csv holds CSV, and this one holds CGATS.17; name it .txt, .cgats or .it8 readings/format`,
    },
    {
      what: "XML named .csv",
      file,
      text: "<CxF/>",
      told: `${file}:1:1 error A .csv holds CSV, and this one holds CxF3; name it .cxf or .xml readings/format`,
    },
    {
      what: "a picture named .csv",
      file,
      text: "\u0089PNG\r\n\u001A\n\u0001\u0008",
      told: `${file}:1:1 error The file holds bytes that no text has, as a picture or a program's own format does; export them from the instrument as CSV, CGATS.17 or CxF3 readings/encoding`,
    },
    {
      what: "CSV named .txt",
      file: "r/a.txt",
      text: csvText(),
      told: "r/a.txt:1:1 error A .txt holds CGATS.17, and this one holds CSV; name it .csv readings/format",
    },
    {
      what: "a letter named .xml",
      file: "r/a.xml",
      text: "Dear Sir",
      told: "r/a.xml:1:1 error A .xml holds CxF3, and this one holds some other text readings/format",
    },
    {
      what: "more than a workshop reads",
      file,
      text: " ".repeat(8 * 1024 * 1024 + 1),
      told: `${file}:1:1 error The file has 8388609 characters, and at most 8388608 are read readings/size`,
    },
  ]);
});
