import { labelSizes } from "../hazard/label/label-sizes.ts";
import type { PackageLabelRecord } from "../records/schema/package-label.ts";
import type { Language } from "../quantities/languages.ts";
import type { WorkshopRecord } from "../records/schema/workshop.ts";
import type { Paper } from "./card-size.ts";

/**
 * Contents [ml] and diameters [mm] of collapsible tubes: common practice, no source.
 * A workshop that measures its own gives `diameterMm` and `heightMm`.
 */
const TUBES: readonly (readonly [ml: number, diameterMm: number])[] = [
  [15, 19],
  [20, 22],
  [30, 22],
  [40, 25],
  [50, 28],
  [60, 30],
  [75, 30],
  [100, 35],
  [120, 35],
  [150, 38],
  [200, 40],
];
export const TUBE_REACH_ML = [15, 200] as const;

const OVERLAP_MM = 3;

/** A label with everything settled that its record leaves open. */
export interface PackageSize {
  readonly name: string;
  readonly kind: PackageLabelRecord["kind"];
  readonly ml: number;
  /** Of one label [mm]: of a jar's front, and of its back. */
  readonly widthMm: number;
  readonly heightMm: number;
  /** At the right, under the left edge once it is round the tube: nothing stands there [mm]. */
  readonly overlapMm: number;
  /** Of the tube; absent of what is not round, or not known to be. */
  readonly diameterMm?: number;
  readonly languages: readonly Language[];
  readonly xHeightMm: number;
  /** Whether what a small package may leave out goes where it finds no room. */
  readonly isReduced: boolean;
  /** Whether what finds no room on one page goes onto the pages of a fold-out label. */
  readonly isFoldOut: boolean;
  readonly price: "price" | "code" | "none";
  readonly symbol: "ean" | "qr" | "none";
  readonly paper: Paper;
  readonly sheet?: NonNullable<PackageLabelRecord["sheet"]>;
}

/** The labels of a workshop. @throws RangeError of a tube that is neither generic nor measured. */
export function packageSizes(workshop: WorkshopRecord): PackageSize[] {
  return (workshop.labels ?? []).map((label) => packageSize(label, workshop));
}

function packageSize(
  label: PackageLabelRecord,
  { paper = "A4", languages = ["en"] }: Pick<WorkshopRecord, "paper" | "languages">,
): PackageSize {
  const { name, kind, ml, sheet } = label;
  const generic = kind === "tube" ? genericTube(ml) : undefined;
  const diameterMm = label.diameterMm ?? generic?.diameterMm;
  const overlapMm = kind === "tube" ? (label.overlapMm ?? OVERLAP_MM) : 0;
  const [short, long] = labelSizes(ml).labelMm;
  const round = diameterMm === undefined ? undefined : Math.PI * diameterMm + overlapMm;
  const widthMm = label.widthMm ?? (kind === "tube" ? round : long);
  const heightMm =
    label.heightMm ?? (kind === "jar" ? short : diameterMm && columnMm(ml, diameterMm));
  if (widthMm === undefined || heightMm === undefined)
    throw new RangeError(
      `The label ${name} is for a tube of ${ml} ml, and generic tubes hold ${TUBE_REACH_ML[0]} to ${TUBE_REACH_ML[1]} ml: give its diameterMm and heightMm`,
    );
  return {
    name,
    kind,
    ml,
    widthMm: Math.round(widthMm * 10) / 10,
    heightMm,
    overlapMm,
    ...(diameterMm === undefined || kind === "jar" ? {} : { diameterMm }),
    languages: label.languages ?? languages,
    xHeightMm: label.xHeightMm ?? labelSizes(ml).xHeightMm,
    isReduced: label.reduced ?? false,
    isFoldOut: label.foldOut ?? false,
    price: label.price ?? "none",
    symbol: label.symbol ?? "none",
    paper: label.paper ?? paper,
    ...(sheet !== undefined && { sheet }),
  };
}

/** The smallest generic tube that holds so much; undefined past the largest and below the smallest. */
function genericTube(ml: number): { readonly ml: number; readonly diameterMm: number } | undefined {
  const [least] = TUBE_REACH_ML;
  const found = TUBES.find(([holds]) => holds >= ml);
  return found === undefined || ml < least ? undefined : { ml: found[0], diameterMm: found[1] };
}

/** A label with the generic tube's measures in place of its own, the tubes that hold more one after the other. */
export function largerTubes(size: PackageSize): PackageSize[] {
  const [, ...rest] = TUBES.filter(([ml]) => ml >= size.ml).sort(([one], [other]) => one - other);
  return rest.map(([ml, diameterMm]) => ({
    ...size,
    kind: "tube",
    ml,
    diameterMm,
    overlapMm: OVERLAP_MM,
    widthMm: Math.round((Math.PI * diameterMm + OVERLAP_MM) * 10) / 10,
    heightMm: columnMm(ml, diameterMm),
  }));
}

/** As high as the contents would stand in the tube as a cylinder, to the 5 mm below: towards its fold a tube grows flat. */
function columnMm(ml: number, diameterMm: number): number {
  const areaMm2 = (Math.PI / 4) * diameterMm ** 2;
  return Math.floor((1000 * ml) / areaMm2 / 5) * 5;
}
