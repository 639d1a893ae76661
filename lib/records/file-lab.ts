import { xyzToLab } from "../colorimetry/lab.ts";
import { LAB_VIEWINGS, type Lab, type LabViewing } from "../colorimetry/viewing.ts";
import type { FoundViewing, ReadingColumn } from "./readings/reading-column.ts";
import { ILLUMINANTS } from "./schema/terms.ts";

/** What a record says of a L*a*b* whose file keeps it back. */
interface SaidViewing {
  readonly illuminant?: string | undefined;
  readonly observer?: number | undefined;
}

/** A L*a*b* with its viewing, or what stands in the way. */
export type FileLab =
  | { readonly lab: Lab; readonly viewing: LabViewing }
  | { readonly missing: "illuminant and observer" }
  | { readonly contradicts: string };

/**
 * The L*a*b* of a reading that has no spectrum, as its file gives it or from its XYZ.
 * @returns undefined for a reading that has neither.
 */
export function fileLab(column: ReadingColumn, said: SaidViewing): FileLab | undefined {
  const { lab, xyz } = column;
  const found = lab ?? xyz;
  if (found === undefined) return undefined;
  const viewing = viewingOf(found, said);
  if (typeof viewing !== "string") return viewing;
  if (lab !== undefined) return { lab: { L: lab.L, a: lab.a, b: lab.b }, viewing };
  return xyz === undefined ? undefined : { lab: xyzToLab(xyz, viewing), viewing };
}

/** The file's own word and the record's must agree; either is enough. */
function viewingOf(
  found: FoundViewing,
  said: SaidViewing,
): LabViewing | Exclude<FileLab, { lab: Lab }> {
  const inFile = knownIlluminant(found.illuminant);
  const [illuminant, observer] = [inFile ?? said.illuminant, found.observer ?? said.observer];
  for (const [file, record] of [
    [inFile, said.illuminant],
    [found.observer, said.observer],
  ])
    if (file !== undefined && record !== undefined && file !== record)
      return { contradicts: `${record} in the record, ${file} in the file` };
  const viewing = LAB_VIEWINGS.find((known) => known === `${illuminant ?? ""}/${observer ?? ""}`);
  return viewing ?? { missing: "illuminant and observer" };
}

/** "D50" of "D50", "d50" and "Illuminant D50". */
export function knownIlluminant(written: string | undefined): string | undefined {
  return written === undefined
    ? undefined
    : ILLUMINANTS.find((known) =>
        new RegExp(`(^|[^A-Za-z0-9])${known}$`, "i").test(written.trim()),
      );
}

/** Mean of several L*a*b*. */
export function meanLab(labs: readonly Lab[]): Lab {
  const mean = (of: (lab: Lab) => number): number =>
    labs.reduce((sum, lab) => sum + of(lab), 0) / labs.length;
  return { L: mean(({ L }) => L), a: mean(({ a }) => a), b: mean(({ b }) => b) };
}
