import { labUnder } from "../colorimetry/lab-under.ts";
import type { Lab, LabViewing } from "../colorimetry/viewing.ts";
import { isStatement } from "../quantities/statement.ts";
import type { LabFigures } from "../sheet/notations/notation-figures.ts";
import { knownAb, knownLab } from "../sheet/notations/known-lab.ts";

/** A paint as ink: its Lab in D50/2, the profile connection space of printing. */
interface PrintedLab {
  readonly lab: Lab;
  /** Adapted from another viewing, for want of a spectrum. */
  readonly isAdapted?: true;
}

/** Nearest to D50/2 first. */
const FROM: readonly LabViewing[] = ["D50/2", "D65/2", "C/2", "D50/10", "D65/10", "C/10"];

/** The sheet's own D50/2 where it has one; else adapted from what it has; nothing where no colour is known. */
export function printedLab(labs: Partial<Record<LabViewing, LabFigures>>): PrintedLab | undefined {
  for (const viewing of FROM) {
    const lab = knownLab(labs[viewing]);
    if (lab === undefined) continue;
    if (viewing === "D50/2") return { lab };
    const adapted = labUnder(lab, viewing, "D50/2");
    if (!isStatement(adapted)) return { lab: adapted.lab, isAdapted: true };
  }
  return undefined;
}

/** The same of a tint at an L*, of which without a spectrum only a* and b* are known, under D65 and the 10 degree observer. */
export function printedTint(
  L: number,
  tint: Pick<LabFigures, "a" | "b"> & {
    readonly lab?: Partial<Record<LabViewing, LabFigures>>;
  },
): PrintedLab | undefined {
  if (tint.lab !== undefined) return printedLab(tint.lab);
  const plane = knownAb(tint);
  if (plane === undefined) return undefined;
  const adapted = labUnder({ L, ...plane }, "D65/10", "D50/2");
  return isStatement(adapted) ? undefined : { lab: adapted.lab, isAdapted: true };
}
