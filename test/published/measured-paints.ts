/** The measured oil paints of oil-paints/, as an instrument gave them. */
import { readFileSync } from "node:fs";
import { parse } from "csv-parse/sync";
import type { Spectrum, WavelengthGrid } from "../../lib/quantities/spectrum.ts";
import type { Measurement } from "../../lib/optics/fit/measurement.ts";

const GRID: WavelengthGrid = { startNm: 400, stepNm: 10, count: 31 };

/** One paint, drawn down over both halves of a chart. */
export interface MeasuredPaint {
  readonly id: string;
  /** Paint by mass [1], by name of the paint. */
  readonly parts: ReadonlyMap<string, number>;
  readonly overBlack: Measurement;
  readonly overWhite: Measurement;
  readonly chartBlack: Measurement;
  readonly chartWhite: Measurement;
}

/** All paints by id, in the order of the table. */
export const MEASURED_PAINTS: ReadonlyMap<string, MeasuredPaint> = measuredPaints();

export function measuredPaint(id: string): MeasuredPaint {
  const paint = MEASURED_PAINTS.get(id);
  if (paint === undefined) throw new RangeError(`No paint ${id} in oil-paints/paints.csv`);
  return paint;
}

function measuredPaints(): Map<string, MeasuredPaint> {
  const [, ...readings] = rows("readings.csv");
  const [, ...paints] = rows("paints.csv");
  const rowOf = (id: string, part: string): string[] | undefined =>
    readings.find(([ofPaint, ofPart]) => ofPaint === id && ofPart === part);
  const reading = (id: string, part: string): Measurement => {
    const row = rowOf(id, part);
    if (row === undefined) throw new RangeError(`No reading ${part} of ${id}`);
    const spectrum: Spectrum = {
      grid: GRID,
      values: row.slice(2).map((percent) => Number(percent) / 100),
    };
    return { spectrum, geometry: "d/8 included" };
  };
  const read = paints.filter(([id = ""]) => rowOf(id, "over white") !== undefined);
  return new Map(
    read.map(([id = "", parts = ""]) => [
      id,
      {
        id,
        parts: new Map(parts.split("; ").map(weighedPart)),
        overBlack: reading(id, "over black"),
        overWhite: reading(id, "over white"),
        chartBlack: reading(id, "chart black"),
        chartWhite: reading(id, "chart white"),
      },
    ]),
  );
}

function weighedPart(text: string): [string, number] {
  const at = text.lastIndexOf(" ");
  return [text.slice(0, at), Number(text.slice(at + 1)) / 100];
}

function rows(name: string): string[][] {
  return parse(readFileSync(new URL(`oil-paints/${name}`, import.meta.url)));
}
