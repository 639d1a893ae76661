import { expect, test } from "vitest";
import { spectrumFromColumn } from "../../../lib/records/readings/spectrum-from-column.ts";
import {
  cgatsText,
  csvText,
  cxfObject,
  cxfText,
  INVENTED,
  WAVELENGTHS,
} from "./invented-reading.ts";
import { columnOf, soundReading } from "./reading-faults.ts";

const percent = INVENTED.map((value) => value.replace(/^0\.(\d\d)/, "$1."));
const single = cgatsText({
  fields: ["SAMPLE_ID", ...WAVELENGTHS.map((nm) => `SPECTRAL_NM${nm}`)],
  sets: [["masstone", ...INVENTED]],
});
const pairs = (field: string, values: readonly string[]): string =>
  cgatsText({
    fields: ["SAMPLE_ID", ...values.flatMap(() => ["SPECTRAL_NM", field])],
    sets: [["masstone", ...values.flatMap((value, i) => [WAVELENGTHS[i] ?? "", value])]],
  });

test.each([
  ["CSV", "r/a.csv", csvText(), "factor"],
  [
    "CSV with decimal commas, CRLF and byte order mark",
    "r/a.csv",
    "\uFEFF" + csvText({}, "\r\n").replaceAll(",", ";").replaceAll("0.", "0,"),
    "factor",
  ],
  ["CGATS, one field a wavelength", "r/a.txt", single, "factor"],
  ["CGATS, pairs of factors", "r/a.cgats", pairs("SPECTRAL_DEC", INVENTED), "factor"],
  ["CGATS, pairs of percent", "r/a.it8", pairs("SPECTRAL_PCT", percent), "percent"],
  ["CxF", "r/a.cxf", cxfText({ objects: cxfObject("masstone") }), "factor"],
] as const)("%s gives the same numbers to the last digit", (_, file, text, scale) => {
  const { spectrum, diagnostics } = spectrumFromColumn(
    columnOf(soundReading(file, text), "masstone"),
    scale,
    undefined,
    file,
  );
  expect(diagnostics).toEqual([]);
  expect(spectrum).toEqual({
    grid: { startNm: 400, stepNm: 10, count: 31 },
    values: INVENTED.map(Number),
  });
});
