import { deltaE00 } from "../colorimetry/difference.ts";
import { xyzToLab } from "../colorimetry/lab.ts";
import type { Lab } from "../colorimetry/viewing.ts";
import { certain } from "../quantities/at.ts";
import {
  correctedLight,
  CORRECTION_FORMS,
  fittedCorrection,
  labOfLight,
  LEAST_PATCHES,
  type ColourCorrection,
  type KnownPatch,
} from "./colour-correction.ts";
import { median } from "../quantities/median.ts";

/** By how much a patch was missed by a correction that knew nothing of it. */
export interface LeftOut {
  readonly name: string;
  /** Corrected less known, under D65, 2 degree. */
  readonly miss: Lab;
  readonly deltaE00: number;
}

/** A correction by all patches, and what it is worth. */
export interface TriedCorrection {
  readonly correction: ColourCorrection;
  readonly leftOut: readonly LeftOut[];
  readonly medianDeltaE00: number;
  readonly worst: LeftOut;
  /** Patches that miss by far more than the others: exchanged, most likely, or in a reflection. */
  readonly suspected: readonly LeftOut[];
}

/** Above this median Delta-E00 of patches left out, a picture is shown as it came and tells no colour. */
export const MOST_MEDIAN_DELTA_E00 = 4;

/** A patch is suspected whose miss is so many times the median, and no small one. */
const SUSPECTED_TIMES = 4;
const SUSPECTED_DELTA_E00 = 8;

/**
 * The correction of some patches, its form chosen by leaving out one patch after the other. How far
 * it misses is told by patches that had no part in it: not in its coefficients, not in its tone
 * curve, and not in the choice of its form, which is made once more without each.
 * @param patches two or more.
 * @throws RangeError for fewer.
 */
export function triedCorrection(patches: readonly KnownPatch[]): TriedCorrection {
  const leftOut = patches.map((patch): LeftOut => {
    const others = patches.filter((other) => other !== patch);
    return missed(patch, chosenCorrection(others));
  });
  const misses = leftOut.map((one) => one.deltaE00);
  const medianDeltaE00 = median(misses);
  const most = Math.max(...misses);
  return {
    correction: chosenCorrection(patches),
    leftOut,
    medianDeltaE00,
    worst: certain(leftOut.find((one) => one.deltaE00 === most)),
    suspected: leftOut.filter(
      (one) =>
        one.deltaE00 > SUSPECTED_DELTA_E00 && one.deltaE00 > SUSPECTED_TIMES * medianDeltaE00,
    ),
  };
}

/** The correction whose form misses patches left out by least on the average; the simplest that few patches bear. */
function chosenCorrection(patches: readonly KnownPatch[]): ColourCorrection {
  const able = CORRECTION_FORMS.filter((form) => patches.length >= LEAST_PATCHES[form]);
  const [only = "gains"] = able;
  if (able.length < 2) return fittedCorrection(patches, only);
  const tried = able.map((form) => {
    const correction = fittedCorrection(patches, form);
    // The tone curve is told by all of these at once, so that a choice takes no minute.
    const { tone } = correction;
    const sum = patches.reduce((own, patch) => {
      const others = patches.filter((other) => other !== patch);
      return own + missed(patch, fittedCorrection(others, form, [tone])).deltaE00;
    }, 0);
    return { correction, sum };
  });
  return certain(tried.toSorted((one, other) => one.sum - other.sum)[0]).correction;
}

function missed({ name, seen, known }: KnownPatch, correction: ColourCorrection): LeftOut {
  const [lab, right] = [labOfLight(correctedLight(correction, seen)), xyzToLab(known, "D65/2")];
  return {
    name,
    miss: { L: lab.L - right.L, a: lab.a - right.a, b: lab.b - right.b },
    deltaE00: deltaE00(lab, right),
  };
}
