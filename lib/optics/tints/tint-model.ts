/**
 * What a colour reads in a white at any mass ratio: two-constant Kubelka-Munk,
 * drawn through the drawdowns that were measured.
 *
 * A colour's strength drifts along its ladder: each let-down has a strength of its own,
 * which is carried to the ratios between by their logarithm, and half of the drift a
 * little beyond them. What is then still missed,
 * as a factor on the reflectance, is carried in proportion to how dark they are, so that
 * a predicted step beside a measured one does not jump and the figures at L* 50 are the
 * measured ones when a drawdown falls there.
 *
 * @source duncan-1940
 */
import { at } from "../../quantities/at.ts";
import { masstoneReflectance } from "../kubelka-munk.ts";
import type { SurfaceForm } from "../surface/surface.ts";
import { internalOf, keptRatio, mixtureRatio, readingOf, shares } from "./tint-reading.ts";

/** Internal R-infinity of the colour, and what goes with one white; shape (count) each. */
export interface PlainModel {
  readonly form: SurfaceForm;
  readonly masstone: ArrayLike<number>;
  /** K/S of the white [1]. */
  readonly whiteRatio: ArrayLike<number>;
  /** (K + S)/Sw of the colour per unit of mass ratio [1]. */
  readonly extinction: ArrayLike<number>;
  /** How much of a drift of strength goes on beyond the last let-downs [1]; left out, as measured paints ask for. */
  readonly carriedShare?: number | undefined;
}

/** ln of measured over modelled reading, and how dark the drawdown is: mean ln of its modelled reading. */
interface Anchor {
  readonly darkness: number;
  readonly miss: Float64Array;
}

/** ln of a let-down's own E over the model's, at ln of its mass ratio. */
interface OwnStrength {
  readonly logRatio: number;
  readonly change: Float64Array;
}

export interface TintModel extends PlainModel {
  /** Palest first, as the anchors are. */
  readonly strengths: readonly OwnStrength[];
  readonly anchors: readonly Anchor[];
  readonly readings: ReadingsRange;
}

/**
 * Least and largest reading of all drawdowns by wavelength [1], shape (count) each, as read and as they would
 * read if they hid: K/S of a let-down lies between those of its white and its masstone, so that no other
 * let-down reads beyond them.
 */
export interface ReadingsRange {
  readonly least: Float64Array;
  readonly most: Float64Array;
}

/** A measured drawdown [1]: mass ratio 0 for the white itself, Infinity for the masstone. */
export interface MeasuredPoint {
  readonly massRatio: number;
  /** As read: what the model is drawn through. */
  readonly measured: readonly number[];
  /** As it would read if it hid its ground, where it does not: what its strength is told by. */
  readonly hiding?: readonly number[];
}

/** Below this a reading [1] is nearly all noise, and its ratio to a model says nothing. */
const LEAST_READING = 0.001;

/** Readings of the plain two-constant model [1], shape (count). */
export function plainReadings(
  { form, masstone, whiteRatio, extinction }: PlainModel,
  massRatio: number,
): number[] {
  const readings = new Array<number>(masstone.length);
  for (let i = 0; i < readings.length; i++) {
    readings[i] = readingOf(
      form,
      masstoneReflectance(
        mixtureRatio(massRatio, extinction[i] ?? NaN, masstone[i] ?? NaN, whiteRatio[i] ?? NaN),
      ),
    );
  }
  return readings;
}

/** A model drawn through measured drawdowns. */
export function tintModel(plain: PlainModel, points: readonly MeasuredPoint[]): TintModel {
  const strengths = points
    .filter(({ massRatio }) => massRatio > 0 && massRatio < Infinity)
    .map((point) => ownStrength(plain, point))
    .sort((one, other) => one.logRatio - other.logRatio);
  const anchors = points.map(({ massRatio, measured }): Anchor => {
    const readings = plainReadings(withOwnStrength(plain, strengths, massRatio), massRatio);
    const miss = new Float64Array(readings.length);
    for (let i = 0; i < miss.length; i++)
      miss[i] = Math.log(
        Math.max(at(measured, i), LEAST_READING) / Math.max(at(readings, i), LEAST_READING),
      );
    return { darkness: darkness(readings), miss };
  });
  return {
    ...plain,
    strengths,
    anchors: anchors.sort((one, other) => other.darkness - one.darkness),
    readings: readingsRange([
      ...points.flatMap(({ measured, hiding }) =>
        hiding === undefined ? [measured] : [measured, hiding],
      ),
      plainReadings(plain, Infinity),
    ]),
  };
}

/** Range of several readings, or of several ranges' ends. */
export function readingsRange(readings: readonly ArrayLike<number>[]): ReadingsRange {
  const count = readings[0]?.length ?? 0;
  const [least, most] = [new Float64Array(count), new Float64Array(count)];
  for (let i = 0; i < count; i++) {
    let [smallest, largest] = [Infinity, -Infinity];
    for (const values of readings) {
      const value = values[i] ?? NaN;
      smallest = Math.min(smallest, value);
      largest = Math.max(largest, value);
    }
    least[i] = smallest;
    most[i] = largest;
  }
  return { least, most };
}

/** Readings kept within a range [1], shape (count). */
export function keptWithin(readings: readonly number[], { least, most }: ReadingsRange): number[] {
  return readings.map((reading, i) => Math.min(Math.max(reading, least[i] ?? NaN), most[i] ?? NaN));
}

/** Beyond this a let-down tells its noise and not its strength. */
const STRENGTH_CHANGE_MAX = 1;

function ownStrength(plain: PlainModel, point: MeasuredPoint): OwnStrength {
  const { massRatio, hiding: measured = point.measured } = point;
  const change = new Float64Array(measured.length);
  for (let i = 0; i < change.length; i++) {
    const { k, s } = shares(at(plain.masstone, i));
    const theta = keptRatio(internalOf(plain.form, at(measured, i)));
    const own = (theta - at(plain.whiteRatio, i)) / (massRatio * (k - theta * s));
    const told = Math.log(own / at(plain.extinction, i));
    change[i] = Math.abs(told) < STRENGTH_CHANGE_MAX ? told : 0;
  }
  return { logRatio: Math.log(massRatio), change };
}

/**
 * How much of a drift goes on beyond the last two let-downs of an end, and how far in ln of the ratio: with a
 * quarter or a half, left-out let-downs of measured oil paints are met better in the middle than with none, and
 * as well on average; with all of it, worse.
 * @source reconstructed-oil-paints
 */
const CARRIED = { share: 0.5, logRatio: Math.log(10) } as const;

/** Where between two let-downs a ratio stands [1], drawn toward them from beyond. */
function carriedShare(share: number, reach: number, carried: number = CARRIED.share): number {
  const beyond = (past: number): number => carried * Math.min(past, reach);
  return share < 0 ? -beyond(-share) : share > 1 ? 1 + beyond(share - 1) : share;
}

/** The model with the strength that its let-downs show about a mass ratio. */
function withOwnStrength(
  plain: PlainModel,
  strengths: readonly OwnStrength[],
  massRatio: number,
): PlainModel {
  if (!(massRatio > 0 && massRatio < Infinity)) return plain;
  const asked = Math.log(massRatio);
  const next = strengths.findIndex(({ logRatio }) => logRatio >= asked);
  const from = Math.max((next === -1 ? strengths.length : next) - 1, 0);
  const lower = strengths[Math.min(from, Math.max(strengths.length - 2, 0))];
  const upper = strengths[Math.min(from + 1, strengths.length - 1)];
  if (upper === undefined || lower === undefined) return plain;
  const span = upper.logRatio - lower.logRatio;
  const share =
    span > 0
      ? carriedShare((asked - lower.logRatio) / span, CARRIED.logRatio / span, plain.carriedShare)
      : 0;
  const extinction = new Float64Array(plain.extinction.length);
  for (let i = 0; i < extinction.length; i++) {
    const change = (1 - share) * (lower.change[i] ?? NaN) + share * (upper.change[i] ?? NaN);
    extinction[i] = (plain.extinction[i] ?? NaN) * Math.exp(change);
  }
  return { ...plain, extinction };
}

/**
 * Readings of a let-down [1], shape (count).
 * @param massRatio colour to white by mass [1], 0 <= r <= Infinity.
 */
export function tintReadings(model: TintModel, massRatio: number): number[] {
  const readings = plainReadings(withOwnStrength(model, model.strengths, massRatio), massRatio);
  const dark = darkness(readings);
  const next = model.anchors.findIndex((anchor) => anchor.darkness <= dark);
  const darker = model.anchors[next === -1 ? model.anchors.length - 1 : next];
  if (darker === undefined) return readings;
  const paler =
    model.anchors[next === -1 ? model.anchors.length - 1 : Math.max(next - 1, 0)] ?? darker;
  const span = paler.darkness - darker.darkness;
  const share = span > 0 ? (paler.darkness - dark) / span : 0;
  const drawn = readings.map(
    (reading, i) =>
      reading * Math.exp((1 - share) * (paler.miss[i] ?? NaN) + share * (darker.miss[i] ?? NaN)),
  );
  return keptWithin(drawn, model.readings);
}

function darkness(readings: readonly number[]): number {
  let sum = 0;
  for (const reading of readings) sum += Math.log(Math.max(reading, LEAST_READING));
  return sum / readings.length;
}
