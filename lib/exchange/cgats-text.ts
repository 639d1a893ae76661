import { wavelengthsNm } from "../quantities/spectrum.ts";
import { factorText, type ColourSample } from "./colour-sample.ts";
import type { ExchangeHead } from "./cxf-text.ts";
import { given } from "../quantities/given.ts";

/** The columns of a table, and what its readings have in common. */
interface Table {
  readonly keywords: readonly string[];
  readonly fields: readonly string[];
  readonly rows: (readonly string[])[];
}

/**
 * Samples as CGATS.17 text: one table for readings of one kind, geometry and grid, spectra as pairs of wavelength and factor.
 * Keywords and blocks are those of ISO 28178.
 */
export function cgatsText(samples: readonly ColourSample[], head: ExchangeHead): string {
  const tables = new Map<string, Table>();
  samples.forEach((sample, i) => {
    const { keywords, fields, cells } = laidOut(sample);
    const key = [...keywords, ...fields].join("\n") + gridKey(sample);
    const table = tables.get(key) ?? { keywords, fields, rows: [] };
    table.rows.push([String(i + 1), quoted(sample.name), ...cells]);
    tables.set(key, table);
  });
  return [...tables.values()]
    .map(({ keywords, fields, rows }) =>
      given([
        "CGATS.17",
        "",
        `ORIGINATOR\t${quoted(head.creator)}`,
        `DESCRIPTOR\t${quoted(head.description)}`,
        head.date !== undefined && `CREATED\t${quoted(head.date)}`,
        ...keywords,
        "",
        `NUMBER_OF_FIELDS\t${fields.length}`,
        "BEGIN_DATA_FORMAT",
        fields.join("\t"),
        "END_DATA_FORMAT",
        "",
        `NUMBER_OF_SETS\t${rows.length}`,
        "BEGIN_DATA",
        ...rows.map((row) => row.join("\t")),
        "END_DATA",
        "",
      ]).join("\n"),
    )
    .join("\n");
}

function laidOut({ reading }: ColourSample): {
  readonly keywords: readonly string[];
  readonly fields: readonly string[];
  readonly cells: readonly string[];
} {
  const geometry = `MEASUREMENT_GEOMETRY\t${quoted(reading.geometry)}`;
  const names = ["SAMPLE_ID", "SAMPLE_NAME"];
  if (reading.form === "lab") {
    const { L, a, b } = reading.lab;
    const [illuminant = "", observer = ""] = reading.viewing.split("/");
    return {
      keywords: [
        geometry,
        `ILLUMINATION_NAME\t${quoted(illuminant)}`,
        `OBSERVER_ANGLE\t${quoted(observer)}`,
      ],
      fields: [...names, "LAB_L", "LAB_A", "LAB_B"],
      cells: [L, a, b].map(String),
    };
  }
  const { grid, values } = reading.spectrum;
  const wavelengths = wavelengthsNm(grid);
  return {
    keywords: [geometry],
    fields: [...names, ...wavelengths.flatMap(() => ["SPECTRAL_NM", "SPECTRAL_DEC"])],
    cells: values.flatMap((value, i) => [String(wavelengths[i]), factorText(value)]),
  };
}

function gridKey({ reading }: ColourSample): string {
  return reading.form === "lab" ? "" : JSON.stringify(reading.spectrum.grid);
}

/** A text of a table: without the quotation mark that would end it. */
function quoted(text: string): string {
  return `"${text.replaceAll(/["\r\n\t]/g, " ")}"`;
}
