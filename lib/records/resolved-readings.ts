import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { deltaE00 } from "../colorimetry/difference.ts";
import { spectrumLab } from "../colorimetry/spectrum-lab.ts";
import { VIEWINGS, type Lab, type LabViewing, type Viewing } from "../colorimetry/viewing.ts";
import { parseMunsell } from "../colorimetry/munsell-notation.ts";
import {
  HAND_HELD_NOISE,
  noiseOfMean,
  replicateNoise,
  statedNoise,
} from "../colorimetry/reading-noise.ts";
import { at } from "../quantities/at.ts";
import { grouped } from "../quantities/grouped.ts";
import { remembered } from "../quantities/remembered.ts";
import { type Spectrum, sameGrid } from "../quantities/spectrum.ts";
import { faultAt, warningAt, type Fault, type Faults } from "./fault.ts";
import { fileLab, knownIlluminant, meanLab, type FileLab } from "./file-lab.ts";
import { isFaulty, type ParsedFiles } from "./parsed-files.ts";
import { averaged } from "./readings/averaged.ts";
import { cellIn, type ReadingColumn } from "./readings/reading-column.ts";
import type { ReadingFile } from "./readings/reading-file.ts";
import { factorComplaint, percentComplaint } from "./readings/percent-complaint.ts";
import { readingStem } from "./readings/reading-endings.ts";
import { replicateComplaint, spikeNm } from "./replicate-faults.ts";
import { spectrumFromColumn } from "./readings/spectrum-from-column.ts";
import type { LabReading, Reading, SpectrumReading, Surface } from "./records.ts";
import type { ReadingForm } from "./schema/reading-form.ts";
import { GEOMETRIES, type Geometry, type Scale } from "./schema/terms.ts";
import type { WorkshopRecord } from "./schema/workshop.ts";
import {
  GRIDS_DIFFER,
  missingColumn,
  missingReading,
  NO_GEOMETRY,
  NO_SCALE,
  noMunsell,
  viewingFault,
} from "./reading-faults.ts";
import type { RecordPath, YamlRecord } from "./yaml-record.ts";

type SpectrumForm = Extract<ReadingForm, { reading: string }>;
type LabForm = Extract<ReadingForm, { lab: unknown }>;

/** Turns what a record says of a reading into the reading itself, or into complaints at the record's line. */
export interface ReadingResolver {
  readonly resolve: ResolveReading;
  readonly told: ToldOfReadings;
}

/** What readings tell beside themselves: of one record in `told`, and put together by {@link allOfReadings}. Plain data. */
export interface ToldOfReadings {
  /** Each with a name of its own where another record may find the same. */
  readonly complaints: readonly { readonly once?: string; readonly found: Diagnostic }[];
  /** Names of the reading files that were asked for. */
  readonly used: ReadonlySet<string>;
  /** By instrument and what was averaged. */
  readonly replicates: ReadonlyMap<string, ReadonlyMap<string, readonly Spectrum[]>>;
  /** Readings whose noise nobody states, with their instrument. */
  readonly unstated: ReadonlyMap<Reading, string>;
}

/** @param hasEffect of a paint that fluoresces or holds flakes, which may send back more light than falls on it. */
type ResolveReading = (
  form: ReadingForm,
  yaml: YamlRecord,
  path: RecordPath,
  hasEffect?: boolean,
) => Reading | undefined;

interface ParsedReading {
  readonly file: string;
  readonly stem: string;
  readonly reading: ReadingFile;
}

/** What a record says of a reading, and where. */
interface Asked {
  readonly form: SpectrumForm;
  readonly yaml: YamlRecord;
  readonly path: RecordPath;
}

/** Of one record: what is told then follows from that and from the files that it asks for. */
export function readingResolver(files: ParsedFiles): ReadingResolver {
  const complaints: ToldOfReadings["complaints"][number][] = [];
  const used = new Set<string>();
  const scales = new Map<string, boolean>();
  const spectra = new Map<string, Spectrum | undefined>();
  const replicates = new Map<string, Map<string, readonly Spectrum[]>>();
  const unstated = new Map<Reading, string>();

  function complain(yaml: YamlRecord, path: RecordPath, fault: Fault): undefined {
    complaints.push({ found: faultAt(yaml.place(path), fault) });
  }

  /** The file that a record names, or a complaint unless one was made already. */
  function namedFile({ form: { reading: name }, yaml, path }: Asked): ParsedReading | undefined {
    const stem = readingStem(name);
    used.add(stem);
    const { file, reading } = files.readings.get(stem) ?? {};
    if (file !== undefined) return reading && { file, stem, reading };
    if (isFaulty(files, "readings", stem)) return undefined;
    return complain(yaml, [...path, "reading"], missingReading(name, stem, files.readings.keys()));
  }

  /** The columns that a record names, each a sample of one drawdown. */
  function namedColumns(
    { form: { column }, yaml, path }: Asked,
    { file, reading }: ParsedReading,
  ): ReadingColumn[] | undefined {
    const names = typeof column === "string" ? [column] : column;
    const columns = names.flatMap((name, i) => {
      const found = reading.columns.get(name.normalize("NFC"));
      if (found !== undefined) return [found];
      const key = typeof column === "string" ? ["column"] : ["column", i];
      complain(yaml, [...path, ...key], missingColumn(name, file, [...reading.columns.keys()]));
      return [];
    });
    return columns.length === names.length ? columns : undefined;
  }

  /** A column as a spectrum, complained of once however many records name it. */
  function spectrumOf(
    column: ReadingColumn,
    { file, stem, reading }: ParsedReading,
    scale: Scale,
    geometry: Geometry,
    hasEffect: boolean,
  ): Spectrum | undefined {
    const effect = hasEffect ? ["effect"] : [];
    const key = JSON.stringify([stem, column.name, scale, geometry, ...effect]);
    if (!spectra.has(key)) {
      const isShared = sharesGrid(reading);
      const gridOf = isShared ? "Every column" : column.name;
      const { spectrum, diagnostics } = spectrumFromColumn(
        column,
        scale,
        geometry,
        file,
        gridOf,
        hasEffect,
      );
      for (const [i, found] of [...diagnostics, ...spikeFaults(column, spectrum, file)].entries()) {
        const ofFile = isShared && GRID_RULES.has(found.rule);
        const once = JSON.stringify(ofFile ? [stem, found.rule, found.message] : [key, i]);
        complaints.push({ once, found });
      }
      spectra.set(key, spectrum);
    }
    return spectra.get(key);
  }

  /** A whole file that reads as the other scale; told once a file. @returns false where it can't be read as this one. */
  function isOfScale(
    { yaml, path }: Asked,
    { file, stem, reading }: ParsedReading,
    scale: Scale,
  ): boolean {
    const key = JSON.stringify([stem, scale]);
    const known = scales.get(key);
    if (known !== undefined) return known;
    const complaint = scaleComplaint(reading, scale, file);
    if (complaint !== undefined)
      complaints.push({ once: key, found: faultAt(yaml.place(path), complaint) });
    scales.set(key, complaint?.severity !== "error");
    return complaint?.severity !== "error";
  }

  /** The record's own word comes first, then the file's, then what workshop.yaml says of all readings. */
  function fileReading(asked: Asked, hasEffect: boolean): SpectrumReading | LabReading | undefined {
    const { form, yaml, path } = asked;
    const named = namedFile(asked);
    const columns = named && namedColumns(asked, named);
    if (named === undefined || columns === undefined) return undefined;
    // A faulty workshop.yaml is told of once, not again at every reading that may rest on it.
    const workshop = files.workshop?.record;
    if (workshop === undefined) return undefined;
    const defaults = workshop.readings;
    const geometry = form.geometry ?? geometryOf(columns) ?? defaults?.geometry;
    if (geometry === undefined) return complain(yaml, path, NO_GEOMETRY);
    const labs = columns.flatMap((column) =>
      column.grid === undefined ? (fileLab(column, form) ?? []) : [],
    );
    if (labs.length === columns.length) {
      const fault = viewingFault(labs, form);
      return fault === undefined
        ? labsReading(labs, form, named, geometry)
        : complain(yaml, [...path, "reading"], fault);
    }
    const scale = form.scale ?? columns[0]?.declaredScale ?? defaults?.scale;
    if (scale === undefined) return complain(yaml, path, NO_SCALE);
    // What fluoresces may pass 1 by much: a percentage is then told at its own cell.
    if (!(hasEffect && scale === "factor") && !isOfScale(asked, named, scale)) return undefined;
    const read = columns
      .map((column) => spectrumOf(column, named, scale, geometry, hasEffect))
      .filter((spectrum) => spectrum !== undefined);
    const [first] = read;
    if (first === undefined || read.length < columns.length) return undefined;
    columns.forEach((column, i) => {
      for (const found of ownLabFaults(column, read[i], named.file)) complaints.push({ found });
    });
    if (!read.every((spectrum) => sameGrid(spectrum.grid, first.grid)))
      return complain(yaml, [...path, "column"], GRIDS_DIFFER);
    const { resolved, instrument, apart } = averagedReading(form, named.reading, columns, read, {
      ...defaults,
      geometry,
    });
    if (apart !== undefined) complain(yaml, [...path, "column"], apart);
    if (read.length > 1) {
      const sets = replicates.get(instrument) ?? new Map<string, readonly Spectrum[]>();
      const set = JSON.stringify([named.stem, ...columns.map(({ name }) => name)]);
      replicates.set(instrument, sets.set(set, read));
    }
    if ((form.uncertainty ?? defaults?.uncertainty) === undefined)
      unstated.set(resolved, instrument);
    return resolved;
  }

  return {
    told: { complaints, used, replicates, unstated },
    resolve: (form, yaml, path, hasEffect = false) => {
      if ("reading" in form) return fileReading({ form, yaml, path }, hasEffect);
      if ("lab" in form) return labReading(form);
      if (parseMunsell(form.munsell) === undefined)
        return complain(yaml, [...path, "munsell"], noMunsell(form.munsell));
      return {
        form: "chip",
        munsell: form.munsell,
        origin: "Munsell chip, by eye",
        ...(form.date !== undefined && { date: form.date }),
      };
    },
  };
}

/** A reading of which the file gives L*a*b* or XYZ alone: as far as that goes, and no spectrum made up. */
function labsReading(
  found: readonly FileLab[],
  form: SpectrumForm,
  { reading }: ParsedReading,
  geometry: Geometry,
): LabReading {
  const labs = found.filter((one) => "lab" in one);
  const { viewing } = at(labs, 0);
  return {
    form: "lab",
    lab: meanLab(labs.map(({ lab }) => lab)),
    viewing,
    geometry,
    origin: `${reading.format}, ${form.reading}, L*a*b* without a spectrum, ${viewing}`,
    ...(form.date !== undefined && { date: form.date }),
  };
}

/** What the readings of all records tell together. */
export interface AllOfReadings {
  readonly diagnostics: readonly Diagnostic[];
  readonly used: ReadonlySet<string>;
  /** A reading with the noise that all replicates read by its instrument show; as stated where it is stated. */
  readonly withReplicateNoise: <R extends Reading>(reading: R) => R;
}

export function allOfReadings(told: readonly ToldOfReadings[]): AllOfReadings {
  const known = new Set<string>();
  const isTold = (once: string): boolean => {
    const before = known.has(once);
    known.add(once);
    return before;
  };
  const sets = grouped(told.flatMap(({ replicates }) => [...replicates]));
  const noises = new Map(
    [...sets].map(([instrument, each]) => [
      instrument,
      replicateNoise([...new Map(each.flatMap((own) => [...own])).values()]),
    ]),
  );
  const unstated = new Map(told.flatMap((one) => [...one.unstated]));
  return {
    diagnostics: told.flatMap(({ complaints }) =>
      complaints.flatMap(({ once, found }) => (once !== undefined && isTold(once) ? [] : [found])),
    ),
    used: new Set(told.flatMap((one) => [...one.used])),
    withReplicateNoise: (reading) => {
      const instrument = unstated.get(reading);
      if (reading.form !== "spectrum" || instrument === undefined) return reading;
      const noise = noises.get(instrument) ?? replicateNoise([]);
      return { ...reading, noise: noiseOfMean(noise, reading.count) };
    },
  };
}

/** Complaints about wavelengths, which all columns of a file mostly share. */
const GRID_RULES: ReadonlySet<string> = new Set([
  "readings/resampled",
  "readings/wavelength-range",
  "readings/wavelength-step",
]);

/** Spectra of one paint as one reading, and what their instrument and their scatter are. */
interface AveragedReading {
  readonly resolved: SpectrumReading;
  readonly instrument: string;
  readonly apart: Fault | undefined;
}

function averagedReading(
  form: SpectrumForm,
  file: ReadingFile,
  columns: readonly ReadingColumn[],
  read: readonly Spectrum[],
  defaults: NonNullable<WorkshopRecord["readings"]> & { readonly geometry: Geometry },
): AveragedReading {
  const { geometry } = defaults;
  const surface: Surface | undefined = form.surface ?? defaults.surface;
  const uncertainty = form.uncertainty ?? defaults.uncertainty;
  const calibration = form.calibration ?? form.date;
  const { aperture } = file.notes;
  const names = columns.map(({ name }) => name);
  const { mean } = averaged(read);
  return {
    instrument: instrumentOf(file, geometry),
    apart: replicateComplaint(names, read),
    resolved: {
      form: "spectrum",
      spectrum: mean,
      count: read.length,
      geometry,
      noise: uncertainty === undefined ? HAND_HELD_NOISE : statedNoise(uncertainty),
      ...(surface !== undefined && { surface }),
      origin: `${file.format}, ${form.reading}, ${names.join(" + ")}${howRead(columns, mean)}`,
      ...(form.date !== undefined && { date: form.date }),
      ...(calibration !== undefined && { calibration }),
      ...(aperture !== undefined && { aperture }),
    },
  };
}

// Of a file that is parsed once for many runs, what follows from it alone is worked out once.
const sharesGrid = remembered(({ columns }: ReadingFile): boolean => {
  const grids = [...columns.values()].map(({ grid }) => JSON.stringify(grid));
  return grids.length > 1 && new Set(grids).size === 1;
});

const scaleComplaint = remembered(({ columns }: ReadingFile, scale: Scale, file: string) =>
  (scale === "percent" ? percentComplaint : factorComplaint)([...columns.values()], file),
);

/** Where the visible range begins [nm]. */
const FIRST_SEEN_NM = 400;

/** What evidence says beside a reading's name of how it was read, and of what was done to its wavelengths. */
function howRead(columns: readonly ReadingColumn[], { grid }: Spectrum): string {
  const steps = new Set(columns.map((column) => column.grid?.stepNm));
  const [step] = steps;
  const first = Math.max(...columns.map((column) => column.grid?.startNm ?? grid.startNm));
  return [
    columns.some(({ isPolarised }) => isPolarised === true)
      ? ", between crossed polarisers (M3)"
      : "",
    step === undefined || step === grid.stepNm
      ? ""
      : `, resampled from ${Number(step.toFixed(2))} to ${grid.stepNm} nm`,
    first > grid.startNm && grid.startNm <= FIRST_SEEN_NM && first > FIRST_SEEN_NM
      ? `, read from ${first} nm and held down to ${FIRST_SEEN_NM} nm`
      : "",
  ].join("");
}

/** Farther than this [Delta-E00] a file's own L*a*b* is not that of its spectrum: sums over other tables part by less. */
const OWN_LAB_WITHIN = 1;

/** The L*a*b* that an instrument's program worked out, against that of the spectrum beside it. */
function* ownLabFaults(
  { name, at, lab }: ReadingColumn,
  spectrum: Spectrum | undefined,
  file: string,
): Faults {
  const viewing = VIEWINGS.find(
    (known) => known === `${knownIlluminant(lab?.illuminant) ?? ""}/${lab?.observer ?? ""}`,
  );
  if (lab === undefined || spectrum === undefined || viewing === undefined) return;
  const own = spectrumLab(spectrum, viewing);
  const apart = deltaE00(own, lab);
  if (!(apart > OWN_LAB_WITHIN)) return;
  const apartUnder = (one: Viewing): number => deltaE00(spectrumLab(spectrum, one), lab);
  const [other] = VIEWINGS.filter((one) => apartUnder(one) <= OWN_LAB_WITHIN).toSorted(
    (one, next) => apartUnder(one) - apartUnder(next),
  );
  const written = (of: Lab): string =>
    [of.L, of.a, of.b].map((part) => part.toFixed(1).replace(/^-(?=0\.0$)/, "")).join(", ");
  yield warningAt(
    { file, line: at.line, column: at.column, path: name },
    "readings/lab-of-spectrum",
    {
      message: `The file gives ${name} L*a*b* ${written(lab)} (${viewing}), and its spectrum has ${written(own)}, Delta-E00 ${apart.toFixed(1)} away`,
      actual: written(lab),
      expected: `${written(own)}, within Delta-E00 ${OWN_LAB_WITHIN}`,
      hint:
        other === undefined
          ? "the spectrum is what is used"
          : `it is what the spectrum has under ${other}; the spectrum is what is used`,
    },
  );
}

/** A value at one wavelength that a finger slipped on. */
function* spikeFaults(
  { name, at, places }: ReadingColumn,
  spectrum: Spectrum | undefined,
  file: string,
): Faults {
  const nm = spectrum && spikeNm(spectrum);
  if (spectrum === undefined || nm === undefined) return;
  const index = Math.round((nm - spectrum.grid.startNm) / spectrum.grid.stepNm);
  const { text: written, ...cell } = cellIn(places, index) ?? { text: "", ...at };
  yield warningAt(
    { file, line: cell.line, column: cell.column, path: `${name}[${nm} nm]` },
    "readings/spike",
    {
      message: `The reflectance of ${name} at ${nm} nm, ${written}, stands out of its neighbours as no paint's does`,
      actual: written,
      expected: "a value near those beside it",
      hint: "a decimal point may have slipped",
    },
  );
}

/** A workshop has one instrument of a geometry, but where its files name several. */
function instrumentOf({ notes }: ReadingFile, geometry: Geometry): string {
  return JSON.stringify([geometry, notes.instrument ?? ""]);
}

/** The geometry that a file states, where all the columns state the same and it is one that is known here. */
function geometryOf(columns: readonly ReadingColumn[]): Geometry | undefined {
  const stated = new Set(columns.map(({ geometry }) => geometry));
  const [only] = stated;
  return stated.size === 1 ? GEOMETRIES.find((known) => known === only) : undefined;
}

function labReading(form: LabForm): LabReading {
  const viewing: LabViewing = `${form.illuminant}/${form.observer}`;
  const [L, a, b] = form.lab;
  return {
    form: "lab",
    lab: { L, a, b },
    viewing,
    geometry: form.geometry,
    origin: `Lab as read, ${viewing}`,
    ...(form.uncertainty !== undefined && { uncertainty: form.uncertainty }),
    ...(form.date !== undefined && { date: form.date }),
  };
}
