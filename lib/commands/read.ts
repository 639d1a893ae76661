import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { basename, extname, join } from "node:path";
import { codeOf, reasonRefused } from "../diagnostics/error-code.ts";
import { given } from "../quantities/given.ts";
import { wavelengthNm, type Spectrum } from "../quantities/spectrum.ts";
import { decodedText } from "../records/decoded-text.ts";
import { contentTree } from "../records/content-tree.ts";
import { PARSERS, parsedFiles } from "../records/parsed-files.ts";
import {
  readingFileText,
  understoodReadings,
  type UnderstoodReadings,
} from "../records/readings/understood-readings.ts";
import { replicateComplaint } from "../records/replicate-faults.ts";
import { GEOMETRIES, type Geometry, type Scale } from "../records/schema/terms.ts";
import type { CommandOptions } from "./command-options.ts";
import { slugOf } from "../records/slug-of.ts";
import { asked, complaint, counted, printDiagnostics, say } from "./told.ts";

/** Names of samples that are printed. */
const NAMED = 12;

/**
 * Say what a file of an instrument holds, and write it into readings/ as factors. Where factor and
 * percent can't be told apart nothing is written until `--scale` says which.
 */
export function read(
  { contentDir }: Pick<CommandOptions, "contentDir">,
  file: string | undefined,
  scale: Scale | undefined,
): number {
  if (file === undefined) return complaint(`A file is read by: ${asked("read FILE")}`);
  let text: string;
  try {
    text = decodedText(readFileSync(file)).text;
  } catch (error) {
    return complaint(`${file} can't be read, ${reasonRefused(error)}`);
  }
  const { readings, diagnostics } = understoodReadings(file, text);
  printDiagnostics(diagnostics);
  if (readings === undefined) return 1;
  for (const line of understood(readings)) say(line);
  const unfit = unfitReadings(file, readings);
  if (unfit !== undefined) return complaint(`${unfit}: nothing was written`);
  const settled = settledScale(readings, scale);
  if ("complaint" in settled) return complaint(`${settled.complaint}: nothing was written`);
  say(`taken as ${settled.scale}, ${settled.since}`);
  return written(file, readings, settled.scale, contentDir);
}

function understood({
  format,
  notes,
  samples,
  withoutSpectrum,
  grid,
  highest,
}: UnderstoodReadings): string[] {
  const names = samples.map(({ name }) => name);
  const geometry = [...new Set(samples.flatMap((sample) => sample.geometry ?? []))];
  return given([
    `${format}: ${counted(samples.length, "sample")}${names.length === 0 ? "" : `: ${names.slice(0, NAMED).join(", ")}${names.length > NAMED ? ` and ${names.length - NAMED} more` : ""}`}`,
    grid !== undefined &&
      `${grid.startNm} to ${wavelengthNm(grid, grid.count - 1)} nm in steps of ${Number(grid.stepNm.toFixed(2))} nm`,
    samples.length > 0 && `highest value ${highest}`,
    geometry.length > 0 && `geometry ${geometry.join(", ")}`,
    ...Object.entries(notes).map(([key, value]: [string, string]) => `${key} ${value}`),
    withoutSpectrum.length > 0 && `without a spectrum, and left out: ${withoutSpectrum.join(", ")}`,
  ]);
}

/** Why a file is not written as factors: what it holds in place of reflectances, and what to do with it. */
function unfitReadings(
  file: string,
  { samples, measures }: UnderstoodReadings,
): string | undefined {
  if (samples.length === 0)
    return measures === undefined
      ? `${file} holds no spectrum, and a reading is one, or L*a*b* or XYZ with the names that CGATS and CxF3 have for them`
      : `${file} holds ${measures} and no spectrum; a record can name it as it is, put into readings/, with the illuminant and observer where the file does not say them`;
  const absorbing = samples.filter(({ name }) => OF_ABSORPTION.test(name)).map(({ name }) => name);
  return absorbing.length === 0
    ? undefined
    : `${absorbing.join(", ")} of ${file} ${absorbing.length === 1 ? "is" : "are"} named as K/S, which is worked out of a reflectance, and a reading is the reflectance itself; export that, or leave ${absorbing.length === 1 ? "the column" : "these columns"} out`;
}

/** How instruments head what they worked out by Kubelka and Munk. */
const OF_ABSORPTION = /(?:^|[\s_([])K\s*\/\s*S(?:$|[\s_)\]])|^(?:K[\s_-]?(?:over|by)[\s_-]?S)$/i;

/** What the file says, what no factor could be, or what the command says; else the question. */
function settledScale(
  { scale: found, highest }: UnderstoodReadings,
  wanted: Scale | undefined,
): { readonly scale: Scale; readonly since: string } | { readonly complaint: string } {
  if (wanted !== undefined && found.how !== "likely" && wanted !== found.scale)
    return {
      complaint: `--scale is ${wanted}, and ${found.how === "said" ? "the file says" : `a value of ${highest} can only be`} ${found.scale}`,
    };
  if (found.how === "said") return { scale: found.scale, since: "as the file says" };
  if (found.how === "certain")
    return { scale: found.scale, since: `since a value of ${highest} can only be that` };
  if (wanted !== undefined) return { scale: wanted, since: "as --scale says" };
  return {
    complaint: `no value is above ${highest}: as factors that is usual, in percent every column would be a black; say which they are with --scale factor or --scale percent`,
  };
}

function written(
  file: string,
  readings: UnderstoodReadings,
  scale: Scale,
  contentDir: string,
): number {
  if (!existsSync(join(contentDir, "workshop.yaml")))
    return complaint(`The content folder ${contentDir} has no workshop.yaml: nothing was written`);
  const name = slugOf(basename(file, extname(file)));
  const place = join(contentDir, "readings", `${name === "" ? "reading" : name}.csv`);
  const stated = new Set(readings.samples.map((sample) => sample.geometry));
  const geometry = GEOMETRIES.find((known) => stated.size === 1 && stated.has(known));
  const { instrument, date, aperture } = readings.notes;
  const { text, spectra, diagnostics } = readingFileText(file, readings, scale, geometry, [
    `From ${basename(file)}, ${readings.format}, read as ${scale}, written as factor`,
    ...(instrument === undefined ? [] : [`Instrument: ${instrument}`]),
    ...(date === undefined ? [] : [`Date: ${date}`]),
    ...(geometry === undefined ? [] : [`Geometry: ${geometry}`]),
    ...(aperture === undefined ? [] : [`Aperture: ${aperture}`]),
  ]);
  printDiagnostics(diagnostics);
  if (text === undefined) return complaint("nothing was written");
  try {
    mkdirSync(join(contentDir, "readings"), { recursive: true });
    writeFileSync(place, text, { flag: "wx" });
  } catch (error) {
    return complaint(
      codeOf(error) === "EEXIST"
        ? `${place} is there already, and was left as it is`
        : `${place} can't be written: ${String(error)}`,
    );
  }
  say(place);
  const further = `scale: factor${geometryText(geometry, contentDir)}`;
  const names = readings.samples.map((sample) => sample.name);
  for (const [first = "", ...again] of drawdowns(names, spectra ?? []))
    say(
      `{ reading: ${name}, column: ${again.length === 0 ? JSON.stringify(first) : `[${[first, ...again].map((one) => JSON.stringify(one)).join(", ")}]`}, ${further} }`,
    );
  if (further.endsWith(OPEN))
    say(
      `${OPEN} stands for ${GEOMETRIES.join(", ")}: the file does not say it, nor does workshop.yaml`,
    );
  return 0;
}

/** Samples by drawdown: names that differ in a last number alone are one that was made or read again, unless they read as different paints. */
function drawdowns(names: readonly string[], spectra: readonly Spectrum[]): string[][] {
  const groups = new Map<string, number[]>();
  names.forEach((name, i) => {
    const drawdown = name.replace(/[\s_-]+\d+$/, "");
    groups.set(drawdown, [...(groups.get(drawdown) ?? []), i]);
  });
  return [...groups.values()].flatMap((group) => {
    const alike = group.map((i) => names[i] ?? "");
    const isOne =
      replicateComplaint(
        alike,
        group.flatMap((i) => spectra[i] ?? []),
      ) === undefined;
    return isOne ? [alike] : alike.map((name) => [name]);
  });
}

/** What is left to be filled in. */
const OPEN = "GEOMETRY";

/** Left out where workshop.yaml says it of all readings, whatever is wrong with other records as yet. */
function geometryText(geometry: Geometry | undefined, contentDir: string): string {
  const { workshop } = parsedFiles(contentTree(contentDir, process.cwd()), [], PARSERS);
  return geometry === undefined && workshop?.record.readings?.geometry !== undefined
    ? ""
    : `, geometry: ${geometry ?? OPEN}`;
}
