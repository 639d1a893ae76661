import { at } from "../../quantities/at.ts";

/** The Munsell renotation as a table that a browser is sent: C*ab and hab at whole steps of hue, value and chroma. */

/** Hue numbers 2.5 apart, from 0 (10RP). */
const TABLE_HUES = 40;
export const TABLE_VALUES = [0.2, 0.4, 0.6, 0.8, 1, 2, 3, 4, 5, 6, 7, 8, 9] as const;
/** Chroma 2 to 26 by 2; beyond, C*ab grows with it. */
export const TABLE_CHROMAS = 13;

/** C*ab [1] and hab [degree] in the steps below, each list told by its second differences along chroma. */
export interface RenotationTable {
  readonly C: readonly number[];
  readonly h: readonly number[];
}

const C_STEP = 0.005;
const H_STEP = 0.01;

/** @param lchOf C*ab and hab under illuminant C of a hue number (0-100), value and chroma. */
export function renotationTable(
  lchOf: (hueNumber: number, value: number, chroma: number) => { C: number; h: number },
): RenotationTable {
  const [C, h]: [number[], number[]] = [[], []];
  for (let hue = 0; hue < TABLE_HUES; hue++)
    for (const value of TABLE_VALUES) {
      const row = Array.from({ length: TABLE_CHROMAS }, (_, i) =>
        lchOf(hue === 0 ? 100 : hue * 2.5, value, 2 * (i + 1)),
      );
      C.push(...secondDifferences(row.map((one) => Math.round(one.C / C_STEP))));
      h.push(
        ...secondDifferences(
          unwrapped(row.map((one) => one.h)).map((one) => Math.round(one / H_STEP)),
        ),
      );
    }
  return { C, h };
}

export interface Renotation {
  /** Of whole hue 0-39, place in TABLE_VALUES and half chroma 1-13. */
  readonly C: (hue: number, value: number, halfChroma: number) => number;
  readonly h: (hue: number, value: number, halfChroma: number) => number;
}

export function unpackedRenotation({ C, h }: RenotationTable): Renotation {
  const [ofC, ofH] = [unpacked(C), unpacked(h)];
  const cell = (hue: number, value: number, half: number): number =>
    (hue * TABLE_VALUES.length + value) * TABLE_CHROMAS + half - 1;
  return {
    C: (hue, value, half) => at(ofC, cell(hue, value, half)) * C_STEP,
    h: (hue, value, half) => (((at(ofH, cell(hue, value, half)) * H_STEP) % 360) + 360) % 360,
  };
}

/** Hues without a jump at 360, so that neighbours differ by little. */
function unwrapped(degrees: readonly number[]): number[] {
  let turn = 0;
  return degrees.map((own, i) => {
    const before = degrees[i - 1] ?? own;
    if (own - before > 180) turn -= 360;
    if (own - before < -180) turn += 360;
    return own + turn;
  });
}

function secondDifferences(values: readonly number[]): number[] {
  const once = values.map((value, i) => value - (values[i - 1] ?? 0));
  return once.map((value, i) => (i < 2 ? value : value - (once[i - 1] ?? 0)));
}

function unpacked(packed: readonly number[]): number[] {
  const values: number[] = [];
  for (let from = 0; from < packed.length; from += TABLE_CHROMAS) {
    let [value, step] = [0, 0];
    for (let i = 0; i < TABLE_CHROMAS; i++) {
      const own = at(packed, from + i);
      step = i < 2 ? own : step + own;
      value += step;
      values.push(value);
    }
  }
  return values;
}
