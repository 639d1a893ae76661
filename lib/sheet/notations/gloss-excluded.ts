/** Paint read with its gloss, as the eye meets it: what stands beside paint that was read without. */
import { readingNotations } from "../../colorimetry/reading-notations.ts";
import type { Measurement, SurfaceConstants } from "../../optics/fit/measurement.ts";
import {
  readingInGeometry,
  unstatedSurface,
} from "../../optics/surface/measurement-in-geometry.ts";
import type { Spectrum } from "../../quantities/spectrum.ts";
import { isStatement } from "../../quantities/statement.ts";
import type { Reading } from "../../records/records.ts";
import { section, type SectionOf } from "../declaration.ts";
import { opticsReading } from "../tints/optics-reading.ts";
import { labFigures, type Origin } from "./lab-figures.ts";
import { screenFigures } from "./munsell-figures.ts";
import { LAB_BY_VIEWING, SCREEN_IF_KNOWN } from "./notation-figures.ts";

/** Of what was read, or predicted, with gloss: the same with its surface light taken off, for paper and screen. */
export const GLOSS_EXCLUDED = section({ lab: LAB_BY_VIEWING, ...SCREEN_IF_KNOWN });
type GlossExcluded = SectionOf<typeof GLOSS_EXCLUDED>;

/** Surface of a paint's films: as recorded with its masstone, else an oil film's; undefined where no spectrum of that was read. */
export function masstoneSurface(masstone: Reading | undefined): SurfaceConstants | undefined {
  return masstone?.form === "spectrum"
    ? (masstone.surface ?? unstatedSurface(opticsReading(masstone)))
    : undefined;
}

/** What the same film would read with the gloss shut out; undefined where none is in the reading, or the surface is not known or does not tell. */
export function withoutGloss(
  { spectrum, geometry }: Pick<Measurement, "spectrum" | "geometry">,
  surface: SurfaceConstants | undefined,
): Spectrum | undefined {
  if (geometry !== "d/8 included" || surface === undefined) return undefined;
  const beneath = readingInGeometry({ spectrum, geometry }, "d/8 excluded", surface);
  return isStatement(beneath) ? undefined : beneath;
}

/** How. */
export const GLOSS_TAKEN_OFF = "surface light of an oil film taken off";

/** Of whose figures the gloss is taken off. */
type Beneath = Pick<Origin, "standing" | "inputs">;

/** @param beneath of `withoutGloss`. */
export function glossExcludedFigures(
  beneath: Spectrum,
  { standing, inputs }: Beneath,
): GlossExcluded {
  const takenOff: Origin = {
    standing,
    inputs,
    method: GLOSS_TAKEN_OFF,
    source: "saunderson-1942",
  };
  const { lab, screen } = readingNotations(beneath);
  return {
    lab: { "D50/2": labFigures(lab["D50/2"], takenOff) },
    ...screenFigures(screen, takenOff),
  };
}

/** The same of a tint, by the surface of its colour's masstone; nothing where the tint holds no gloss. */
export function tintWithoutGloss(
  tint: Pick<Measurement, "spectrum" | "geometry">,
  surface: SurfaceConstants | undefined,
  origin: Beneath,
): { readonly glossExcluded?: GlossExcluded } {
  const beneath = withoutGloss(tint, surface);
  return beneath === undefined ? {} : { glossExcluded: glossExcludedFigures(beneath, origin) };
}
