import { at as memberAt } from "../../quantities/at.ts";
import { naturalSpline } from "../../colorimetry/cubic-spline.ts";
import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import { wavelengthNm, type Spectrum, type WavelengthGrid } from "../../quantities/spectrum.ts";
import type { Geometry, Scale } from "../schema/terms.ts";
import { faultList, type FaultList } from "./fault-list.ts";
import { contradicts } from "./found-geometry.ts";
import { LARGEST_FACTOR } from "./percent-complaint.ts";
import { cellIn, type ReadingColumn } from "./reading-column.ts";
import { percentToFactor } from "./written-number.ts";

/** Steps [nm] that are computed with as they are; others within the reach are resampled. */
const STEPS_KEPT_NM: readonly number[] = [1, 2, 5, 10];
const STEP_REACH_NM = [1, 20] as const;
/** What a finer and a coarser step is resampled to [nm]. */
const RESAMPLED_STEPS_NM = [5, 10] as const;

/** The visible range that a reading has to cover [nm]. */
const FIRST_NM = 400;
const LAST_NM = 700;
/** A reading that begins here is taken, its first value held down to 400 nm. */
const LATEST_FIRST_NM = 420;
/** Reflectance factors [1] that a sound instrument gives: a glossy black without its gloss may come out just below 0. */
const R_MIN = -0.005;
/** What a pigment that fluoresces, or whose flakes mirror, may send back beside it. Our own limit, wide. */
const R_MAX_OF_EFFECT = 4;
/** Above this [1] a paint sends back more than falls on it; below it, an instrument may be calibrated a little high. Our own limit. */
const R_WHITE = 1.02;

interface ColumnSpectrum {
  /** Reflectance factors to compute with, 0 <= R <= 1.2, of a special effect 4; absent as soon as there is an error. */
  readonly spectrum?: Spectrum;
  /** The same reading as read, on its own grid and with its values just below 0. */
  readonly asRead?: Spectrum;
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * The spectrum of a reading, held against what its file says of itself and
 * against the limits of a sound reading. Percent becomes factor, digit for
 * digit; -0.005 <= R < 0 is taken as 0, with a warning; steps that are not kept are
 * resampled to 5 or 10 nm by natural cubic spline, and a reading from 410 or 420 nm has its first
 * value held down to 400 nm, each with a warning.
 *
 * @param scale what the record declares; a file that says otherwise is an error.
 * @param geometry what the record declares, if it does; likewise.
 * @param file path as printed in complaints.
 * @param hasEffect whether the paint fluoresces or holds flakes, and may send back more than falls on it.
 * @param gridOf whose wavelengths a complaint is about: the column's, or those of every column alike.
 */
export function spectrumFromColumn(
  column: ReadingColumn,
  scale: Scale,
  geometry: Geometry | undefined,
  file: string,
  gridOf: string = column.name,
  hasEffect = false,
): ColumnSpectrum {
  const faults = faultList(file);
  const asRead = soundSpectrum(column, scale, geometry, gridOf, hasEffect, faults);
  if (asRead === undefined || faults.errorCount() > 0) return { diagnostics: faults.diagnostics };
  const values = asRead.values.map((R) => Math.max(R, 0));
  const even = STEPS_KEPT_NM.includes(asRead.grid.stepNm)
    ? { grid: asRead.grid, values }
    : resampled(asRead.grid, values, hasEffect);
  const spectrum = fromFirst(even);
  return { spectrum, asRead, diagnostics: faults.diagnostics };
}

function soundSpectrum(
  column: ReadingColumn,
  scale: Scale,
  geometry: Geometry | undefined,
  gridOf: string,
  hasEffect: boolean,
  faults: FaultList,
): Spectrum | undefined {
  const { name, at, grid, values } = column;
  if (grid === undefined) {
    faults.error("no-spectrum", at, {
      path: name,
      message: `The reading ${name} holds no spectrum`,
      actual: "no spectrum",
      expected: "reflectance by wavelength",
    });
    return undefined;
  }
  if (column.declaredScale !== undefined && column.declaredScale !== scale) {
    faults.error("scale", at, {
      path: name,
      message: `The record says scale: ${scale}, and the file says that ${name} is in ${column.declaredScale}`,
      actual: scale,
      expected: `${column.declaredScale}, as the file says`,
    });
  }
  if (
    geometry !== undefined &&
    column.geometry !== undefined &&
    contradicts(column.geometry, geometry)
  ) {
    faults.error("geometry", at, {
      path: name,
      message: `The record says geometry: ${geometry}, and the file says that ${name} was read at ${column.geometry}`,
      actual: geometry,
      expected: `${column.geometry}, as the file says`,
    });
  }
  checkGrid(column, grid, gridOf, faults);
  checkValues(column, grid, scale, hasEffect, faults);
  return { grid, values: scale === "percent" ? values.map(percentToFactor) : values };
}

function checkGrid(
  { name: path, at, places }: ReadingColumn,
  grid: WavelengthGrid,
  gridOf: string,
  faults: FaultList,
): void {
  const [finest, coarsest] = STEP_REACH_NM;
  if (!(grid.stepNm >= finest && grid.stepNm <= coarsest)) {
    faults.error("wavelength-step", at, {
      path,
      message: `${gridOf} steps by ${grid.stepNm} nm, and steps of ${finest} to ${coarsest} nm are read`,
      actual: `${grid.stepNm} nm`,
      expected: `${finest} to ${coarsest} nm`,
    });
  } else if (!STEPS_KEPT_NM.includes(grid.stepNm)) {
    faults.warning("resampled", at, {
      path,
      message: `${gridOf} steps by ${stepText(grid.stepNm)} nm, and is resampled to ${resampledStep(grid.stepNm)} nm by natural cubic spline`,
      actual: `${stepText(grid.stepNm)} nm`,
      expected: `${STEPS_KEPT_NM.join(", ")} nm`,
    });
  }
  const lastNm = wavelengthNm(grid, grid.count - 1);
  if (grid.startNm > FIRST_NM && grid.startNm <= LATEST_FIRST_NM)
    faults.warning("wavelength-range", cellIn(places, 0) ?? at, {
      path,
      message: `${gridOf} begins at ${grid.startNm} nm, and its first value is held down to ${FIRST_NM} nm`,
      actual: `${grid.startNm} nm`,
      expected: `${FIRST_NM} nm or less`,
    });
  else if (grid.startNm > FIRST_NM)
    faults.error("wavelength-range", cellIn(places, 0) ?? at, {
      path,
      message: `${gridOf} begins at ${grid.startNm} nm, and a reading begins at ${LATEST_FIRST_NM} nm or below`,
      actual: `${grid.startNm} nm`,
      expected: `${FIRST_NM} nm or less`,
    });
  if (lastNm < LAST_NM)
    faults.error("wavelength-range", cellIn(places, places.texts.length - 1) ?? at, {
      path,
      message: `${gridOf} ends at ${lastNm} nm, and a reading goes to ${LAST_NM} nm or beyond`,
      actual: `${lastNm} nm`,
      expected: `${LAST_NM} nm or more`,
    });
}

/** So many values of a column are complained of one by one; more have one cause, and the last says how many. */
const MOST_OF_A_KIND = 3;

function checkValues(
  { name, values, places, at }: ReadingColumn,
  grid: WavelengthGrid,
  scale: Scale,
  hasEffect: boolean,
  faults: FaultList,
): void {
  const unit = scale === "percent" ? 100 : 1;
  const most = largestFactor(hasEffect);
  const limits =
    scale === "percent" ? `${100 * R_MIN} to ${100 * most} percent` : `${R_MIN} to ${most}`;
  const faulty: Record<"empty-cell" | "not-a-number" | "reflectance-domain", number[]> = {
    "empty-cell": [],
    "not-a-number": [],
    "reflectance-domain": [],
  };
  const belowZero: number[] = [];
  const aboveWhite: number[] = [];
  values.forEach((value, i) => {
    if (places.texts[i] === "") faulty["empty-cell"].push(i);
    else if (Number.isNaN(value)) faulty["not-a-number"].push(i);
    else if (!(value >= R_MIN * unit && value <= most * unit)) faulty["reflectance-domain"].push(i);
    else if (value < 0) belowZero.push(i);
    else if (value > R_WHITE * unit && !hasEffect) aboveWhite.push(i);
  });

  for (const [rule, indices] of Object.entries(faulty)) {
    const isRange = rule === "reflectance-domain";
    indices.slice(0, MOST_OF_A_KIND).forEach((index, nth) => {
      const place = cellIn(places, index);
      const written = place?.text ?? String(values[index]);
      const rest = nth === MOST_OF_A_KIND - 1 ? indices.length - MOST_OF_A_KIND : 0;
      const hints = [
        ...(isRange && !hasEffect && mayBeOfEffect(memberAt(values, index) / unit)
          ? [EFFECT_HINT]
          : isRange && scale === "factor" && memberAt(values, index) > most
            ? ["a reading in percent says scale: percent"]
            : []),
        ...(rest > 0 ? [`and ${rest} more of this column`] : []),
      ];
      faults.error(rule, place ?? at, {
        path: `${name}[${wavelengthNm(grid, index)} nm]`,
        message: isRange
          ? `The reflectance of ${name} at ${wavelengthNm(grid, index)} nm is ${written}, outside ${limits}`
          : `The reflectance of ${name} at ${wavelengthNm(grid, index)} nm is ${written === "" ? "missing" : `"${written}", no number`}`,
        actual: written === "" ? "nothing" : written,
        expected: isRange ? limits : "a number",
        ...(hints.length > 0 && { hint: hints.join("; ") }),
      });
    });
  }
  const [brightest] = aboveWhite.toSorted(
    (one, other) => (values[other] ?? 0) - (values[one] ?? 0),
  );
  if (brightest !== undefined)
    faults.warning("above-white", cellIn(places, brightest) ?? at, {
      path: `${name}[${wavelengthNm(grid, brightest)} nm]`,
      message: `The reflectance of ${name} at ${wavelengthNm(grid, brightest)} nm is ${places.texts[brightest] ?? values[brightest]}: more light than falls on it`,
      actual: places.texts[brightest] ?? String(values[brightest]),
      expected: `at most ${unit} but for what fluoresces or mirrors`,
      hint: "effect: fluorescent where its pigment is; else the instrument's white is off",
    });
  const [first] = belowZero;
  if (first === undefined) return;
  faults.warning("below-zero", cellIn(places, first) ?? at, {
    path: `${name}[${wavelengthNm(grid, first)} nm]`,
    message:
      belowZero.length === 1
        ? `The reflectance of ${name} at ${wavelengthNm(grid, first)} nm lies below 0`
        : `${belowZero.length} reflectances of ${name} lie below 0, the first at ${wavelengthNm(grid, first)} nm`,
    actual: places.texts[first] ?? String(values[first]),
    expected: "R >= 0",
    hint: "kept as read, taken as 0 in computing",
  });
}

const EFFECT_HINT = "effect: fluorescent where its pigment is, scale: percent of percent";

function mayBeOfEffect(factor: number): boolean {
  return factor > LARGEST_FACTOR && factor <= R_MAX_OF_EFFECT;
}

function largestFactor(hasEffect: boolean): number {
  return hasEffect ? R_MAX_OF_EFFECT : LARGEST_FACTOR;
}

function resampledStep(stepNm: number): number {
  const [fine, coarse] = RESAMPLED_STEPS_NM;
  return stepNm <= fine ? fine : coarse;
}

function stepText(stepNm: number): string {
  return String(Number(stepNm.toFixed(2)));
}

/** The spline may swing past a steep edge: what it gives stays within the limits of a reading. */
function resampled(
  { startNm, stepNm, count }: WavelengthGrid,
  values: readonly number[],
  hasEffect: boolean,
): Spectrum {
  const spline = naturalSpline(startNm, stepNm, values);
  const step = resampledStep(stepNm);
  const lastNm = startNm + stepNm * (count - 1);
  const first = Math.ceil(startNm / step - 1e-9) * step;
  const last = Math.floor(lastNm / step + 1e-9) * step;
  const grid = { startNm: first, stepNm: step, count: Math.round((last - first) / step) + 1 };
  return {
    grid,
    values: Array.from({ length: grid.count }, (_, i) =>
      Math.min(Math.max(spline(wavelengthNm(grid, i)), 0), largestFactor(hasEffect)),
    ),
  };
}

/** A reading from a little above 400 nm, with its first value down to there: the observer sees next to nothing of it. */
function fromFirst({ grid, values }: Spectrum): Spectrum {
  const missing = Math.ceil((grid.startNm - FIRST_NM) / grid.stepNm - 1e-9);
  const [first = NaN] = values;
  return missing <= 0
    ? { grid, values }
    : {
        grid: {
          startNm: grid.startNm - missing * grid.stepNm,
          stepNm: grid.stepNm,
          count: grid.count + missing,
        },
        values: [...Array.from({ length: missing }, () => first), ...values],
      };
}
