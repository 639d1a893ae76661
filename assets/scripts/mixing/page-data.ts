/** The paints and notations that a page which mixes is sent as scripts beside its own. */
import { isccNbsNames, isccNbsText, type IsccNbsBlock } from "../../../lib/colorimetry/iscc-nbs.ts";
import { xyzToLab } from "../../../lib/colorimetry/lab.ts";
import { munsellOfLab, type Munsell } from "../../../lib/colorimetry/munsell.ts";
import { tristimulus } from "../../../lib/colorimetry/tristimulus.ts";
import type { Lab } from "../../../lib/colorimetry/viewing.ts";
import { mixingRange, type MixingRange } from "../../../lib/mixing/mixing-range.ts";
import type { MixingData } from "../../../lib/mixing/mixing-paint.ts";
import { useRenotation } from "../../../lib/mixing/notation/compact-munsell.ts";
import type { RenotationTable } from "../../../lib/mixing/notation/renotation-table.ts";
import { axisUncertainty } from "../../../lib/optics/fit/prediction-uncertainty.ts";
import { isStatement } from "../../../lib/quantities/statement.ts";
import type { Spectrum } from "../../../lib/quantities/spectrum.ts";
import { MIXING_PAGES as TEXT } from "#browser-words";

interface Sent {
  readonly mixingPaints?: MixingData;
  readonly colourNotations?: {
    readonly renotation: RenotationTable;
    readonly blocks: readonly (readonly [
      number,
      number,
      number,
      number,
      number,
      number,
      number,
      string,
    ])[];
  };
}

/** Bring the part of a page that a script makes to life; where the range has not come, what stands in its place says why. */
export function withRange(
  selector: string,
  start: (at: HTMLElement, range: MixingRange) => void,
): void {
  const root = document.querySelector<HTMLElement>(selector);
  const without = document.querySelector("[data-without]");
  const range = sentRange();
  if (typeof range === "string") {
    if (without !== null) without.textContent = range;
  } else if (root !== null) {
    without?.remove();
    root.hidden = false;
    start(root, range);
  }
}

/** The range, or a sentence why there is none. */
export function sentRange(): MixingRange | string {
  const { mixingPaints } = globalThis as Sent;
  if (mixingPaints === undefined) return TEXT.noData;
  try {
    return mixingRange(mixingPaints);
  } catch (error) {
    if (error instanceof RangeError) return TEXT.olderData;
    throw error;
  }
}

export interface Notations {
  readonly munsell?: Munsell;
  /** ISCC-NBS. */
  readonly name?: string;
}

/** Munsell notation and name of a spectrum; nothing while their tables have not come. */
export function notationsOf(spectrum: Spectrum, lab: Lab, p68: number): Notations {
  const blocks = sentBlocks();
  if (blocks === undefined) return {};
  const found = munsellOfLab(
    xyzToLab(tristimulus(spectrum, "C/2"), "C/2"),
    axisUncertainty(p68, lab),
  );
  if (isStatement(found)) return {};
  const name = isccNbsText(isccNbsNames(found, blocks, found.uncertainty));
  return { munsell: found, ...(name === "" ? {} : { name }) };
}

/** Make Munsell notations readable, where their tables have come. */
export function readyNotations(): boolean {
  return sentBlocks() !== undefined;
}

let known: readonly IsccNbsBlock[] | undefined;

function sentBlocks(): readonly IsccNbsBlock[] | undefined {
  const { colourNotations } = globalThis as Sent;
  if (known !== undefined || colourNotations === undefined) return known;
  useRenotation(colourNotations.renotation);
  known = colourNotations.blocks.map(
    ([hueFrom, hueTo, valueFrom, valueTo, chromaFrom, chromaTo, number, name]) => ({
      hueFrom,
      hueTo,
      valueFrom,
      valueTo,
      chromaFrom,
      chromaTo,
      number,
      name,
    }),
  );
  return known;
}
