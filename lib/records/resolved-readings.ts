import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { nearestWord } from "../diagnostics/nearest-word.ts";
import type { LabViewing } from "../colorimetry/viewing.ts";
import { parseMunsell } from "../colorimetry/munsell-notation.ts";
import type { Spectrum } from "../quantities/spectrum.ts";
import { sameGrid } from "../quantities/spectrum.ts";
import { isFaulty, type ParsedFiles } from "./parsed-files.ts";
import { averaged } from "./readings/averaged.ts";
import { spectrumFromColumn } from "./readings/spectrum-from-column.ts";
import type { LabReading, Reading, SpectrumReading, Surface } from "./records.ts";
import type { ReadingForm } from "./schema/reading-form.ts";
import type { Geometry, Scale } from "./schema/terms.ts";
import type { WorkshopRecord } from "./schema/workshop.ts";
import type { RecordPath, YamlRecord } from "./yaml-record.ts";

type SpectrumForm = Extract<ReadingForm, { reading: string }>;
type LabForm = Extract<ReadingForm, { lab: unknown }>;

/** Turns what a record says of a reading into the reading itself, or into complaints at the record's line. */
export interface ReadingResolver {
  readonly resolve: (form: ReadingForm, yaml: YamlRecord, path: RecordPath) => Reading | undefined;
  /** Names of the reading files that some record has asked for. */
  readonly used: ReadonlySet<string>;
}

export function readingResolver(files: ParsedFiles, workshop: WorkshopRecord | undefined, diagnostics: Diagnostic[]): ReadingResolver {
  const used = new Set<string>();
  const spectra = new Map<string, Spectrum | undefined>();

  function complain(yaml: YamlRecord, path: RecordPath, fault: Pick<Diagnostic, "rule" | "subject" | "actual" | "expected" | "hint">): undefined {
    diagnostics.push({ severity: "error", place: yaml.place(path), ...fault });
  }

  function spectrumReading(form: SpectrumForm, yaml: YamlRecord, path: RecordPath): SpectrumReading | undefined {
    const stem = withoutEnding(form.reading);
    const file = files.readings.get(stem);
    used.add(stem);
    if (file === undefined) {
      if (isFaulty(files, "readings", stem)) return undefined;
      const near = nearestWord(stem, [...files.readings.keys()]);
      return complain(yaml, [...path, "reading"], {
        rule: "records/missing-reading", subject: "reading", actual: form.reading, expected: "the name of a file in readings/",
        ...(near === undefined ? {} : { hint: `nearest \`${near}\`` }),
      });
    }
    if (file.reading === undefined) return undefined;
    const scale: Scale | undefined = form.scale ?? workshop?.readings?.scale;
    const geometry: Geometry | undefined = form.geometry ?? workshop?.readings?.geometry;
    if (geometry === undefined) {
      return complain(yaml, path, { rule: "records/geometry", subject: "geometry", actual: "nothing", expected: "45/0 | d/8 included | d/8 excluded, here or under readings in workshop.yaml" });
    }

    const columns = typeof form.column === "string" ? [form.column] : form.column;
    const read: Spectrum[] = [];
    for (const [i, name] of columns.entries()) {
      const columnPath = typeof form.column === "string" ? [...path, "column"] : [...path, "column", i];
      const column = file.reading.columns.get(name);
      if (column === undefined) {
        const near = nearestWord(name, [...file.reading.columns.keys()]);
        complain(yaml, columnPath, {
          rule: "records/missing-column", subject: "column", actual: name, expected: `a column of ${file.file}`,
          hint: near === undefined ? `it has: ${[...file.reading.columns.keys()].slice(0, 12).join(", ")}` : `nearest \`${near}\``,
        });
        continue;
      }
      const declared = scale ?? column.declaredScale;
      if (declared === undefined) {
        complain(yaml, path, { rule: "records/scale", subject: "scale", actual: "nothing", expected: "factor | percent, here or under readings in workshop.yaml" });
        continue;
      }
      const key = JSON.stringify([stem, name, declared, geometry]);
      if (!spectra.has(key)) {
        const result = spectrumFromColumn(column, declared, geometry, file.file);
        diagnostics.push(...result.diagnostics);
        spectra.set(key, result.spectrum);
      }
      const spectrum = spectra.get(key);
      if (spectrum) read.push(spectrum);
    }
    const [first] = read;
    if (first === undefined || read.length < columns.length) return undefined;
    if (!read.every((spectrum) => sameGrid(spectrum.grid, first.grid))) {
      return complain(yaml, [...path, "column"], { rule: "records/grid", subject: "wavelength grids", actual: "differing", expected: "one grid for readings that are averaged" });
    }
    const { mean, spread } = averaged(read);
    const surface: Surface | undefined = form.surface ?? workshop?.readings?.surface;
    const uncertainty = form.uncertainty ?? workshop?.readings?.uncertainty;
    return {
      form: "spectrum", spectrum: mean, count: read.length, geometry,
      ...(read.length > 1 ? { spread } : {}),
      ...(surface === undefined ? {} : { surface }),
      ...(uncertainty === undefined ? {} : { uncertainty }),
      origin: `${file.reading.format}, ${form.reading}, ${columns.join(" + ")}`,
      ...(form.date === undefined ? {} : { date: form.date }),
    };
  }

  return {
    used,
    resolve: (form, yaml, path) => {
      if ("reading" in form) return spectrumReading(form, yaml, path);
      if ("lab" in form) return labReading(form);
      if (parseMunsell(form.munsell) === undefined) {
        return complain(yaml, [...path, "munsell"], { rule: "records/munsell", subject: "Munsell notation", actual: form.munsell, expected: "N 2/ or 5PB 3/1" });
      }
      return { form: "chip", munsell: form.munsell, origin: "Munsell chip, by eye", ...(form.date === undefined ? {} : { date: form.date }) };
    },
  };
}

function labReading(form: LabForm): LabReading {
  const viewing: LabViewing = `${form.illuminant}/${form.observer}`;
  const [L, a, b] = form.lab;
  return {
    form: "lab", lab: { L, a, b }, viewing, geometry: form.geometry, origin: `Lab as read, ${viewing}`,
    ...(form.uncertainty === undefined ? {} : { uncertainty: form.uncertainty }),
    ...(form.date === undefined ? {} : { date: form.date }),
  };
}

function withoutEnding(name: string): string {
  return name.replace(/\.(csv|txt|cgats|it8|cxf|xml)$/i, "");
}
