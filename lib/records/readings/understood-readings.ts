import { stringify } from "csv-stringify/sync";
import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import {
  sameGrid,
  wavelengthNm,
  type Spectrum,
  type WavelengthGrid,
} from "../../quantities/spectrum.ts";
import { errorAt } from "../fault.ts";
import type { Geometry, Scale } from "../schema/terms.ts";
import { LARGEST_FACTOR } from "./percent-complaint.ts";
import { at } from "../../quantities/at.ts";
import type { ReadingColumn, ReadingFormat, ReadingNotes } from "./reading-column.ts";
import { contentFormat, parseReadingFile } from "./reading-file.ts";
import { spectrumFromColumn } from "./spectrum-from-column.ts";

/** A file of an instrument as it was understood. */
export interface UnderstoodReadings {
  readonly format: ReadingFormat;
  readonly notes: ReadingNotes;
  /** Those that hold a spectrum. */
  readonly samples: readonly ReadingColumn[];
  /** Names of those that hold none. */
  readonly withoutSpectrum: readonly string[];
  /** What those hold, where it can be read: "L*a*b*", "XYZ". */
  readonly measures?: "L*a*b*" | "XYZ";
  readonly grid?: WavelengthGrid;
  /** The largest value of any sample, as written. */
  readonly highest: number;
  readonly scale: FoundScale;
}

/** `said` by the file itself; `certain` since no factor is so high; else what the values look like, to be confirmed. */
interface FoundScale {
  readonly scale: Scale;
  readonly how: "said" | "certain" | "likely";
}

/**
 * What an instrument's file holds, whatever its ending; the content says its format.
 * @returns without readings where it holds none, with what is wrong.
 */
export function understoodReadings(
  file: string,
  text: string,
): { readonly readings?: UnderstoodReadings; readonly diagnostics: readonly Diagnostic[] } {
  const body = text.replace(/^\uFEFF/, "");
  const { reading, diagnostics } = parseReadingFile(file, body, contentFormat(body) ?? "CSV");
  if (reading === undefined) return { diagnostics };
  const columns = [...reading.columns.values()];
  const samples = columns.filter(({ grid }) => grid !== undefined);
  const highest = Math.max(
    ...samples.flatMap(({ values }) => values.filter((value) => Number.isFinite(value))),
  );
  const measures = columns.some(({ lab }) => lab !== undefined)
    ? "L*a*b*"
    : columns.some(({ xyz }) => xyz !== undefined)
      ? "XYZ"
      : undefined;
  const declared = samples.find(({ declaredScale }) => declaredScale !== undefined)?.declaredScale;
  const [grid] = samples.map((sample) => sample.grid);
  return {
    diagnostics,
    readings: {
      format: reading.format,
      notes: reading.notes,
      samples,
      withoutSpectrum: columns
        .filter((column) => column.grid === undefined)
        .map(({ name }) => name),
      ...(measures !== undefined && { measures }),
      ...(grid !== undefined && { grid }),
      highest,
      scale:
        declared !== undefined
          ? { scale: declared, how: "said" }
          : highest > LARGEST_FACTOR
            ? { scale: "percent", how: "certain" }
            : { scale: "factor", how: "likely" },
    },
  };
}

/**
 * The same samples as a reading file of ours: a column each, factors, on their own grid, lines
 * that begin with # before them. What a reading may not be is told of, and then there is no text.
 * @param remarks where it comes from, a line each.
 */
export function readingFileText(
  file: string,
  { samples }: UnderstoodReadings,
  scale: Scale,
  geometry: Geometry | undefined,
  remarks: readonly string[],
): {
  readonly text?: string;
  /** Of each sample, in their order, as records read it. */
  readonly spectra?: readonly Spectrum[];
  readonly diagnostics: readonly Diagnostic[];
} {
  const read = samples.map((sample) => spectrumFromColumn(sample, scale, geometry, file));
  const diagnostics = read.flatMap((one) => one.diagnostics);
  const spectra = read.flatMap(({ asRead }) => asRead ?? []);
  const [first] = spectra;
  if (first === undefined || spectra.length < samples.length) return { diagnostics };
  const odd = spectra.findIndex(({ grid }) => !sameGrid(grid, first.grid));
  const oddSample = samples[odd];
  if (oddSample !== undefined)
    return {
      diagnostics: [
        ...diagnostics,
        errorAt({ file, ...oddSample.at, path: oddSample.name }, "readings/grid", {
          message: `${oddSample.name} has other wavelengths than ${samples[0]?.name ?? ""}: one file of readings has one grid`,
          actual: "differing",
          expected: "one grid in a file",
        }),
      ],
    };
  const rows = first.values.map((_, i) => [
    wavelengthNm(first.grid, i),
    ...spectra.map(({ values }) => Number(at(values, i).toPrecision(6))),
  ]);
  const readAs = read.flatMap(({ spectrum }) => spectrum ?? []);
  const table = stringify([["nm", ...samples.map(({ name }) => name)], ...rows]);
  return {
    text: `${remarks.map((line) => `# ${line}\n`).join("")}${table}`,
    spectra: readAs,
    diagnostics,
  };
}
