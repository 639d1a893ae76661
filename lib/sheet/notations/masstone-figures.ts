import type { IsccNbsBlock } from "../../colorimetry/iscc-nbs.ts";
import { LIGHTS, type Lamp } from "../../colorimetry/lamps.ts";
import { lamplight } from "../../colorimetry/lamplight.ts";
import { labUncertainty } from "../../colorimetry/lab-uncertainty.ts";
import { xyzToLab } from "../../colorimetry/lab.ts";
import { spectrumLab } from "../../colorimetry/spectrum-lab.ts";
import { tristimulus } from "../../colorimetry/tristimulus.ts";
import { SHOWN_VIEWINGS, VIEWINGS, type JudgingObserver } from "../../colorimetry/viewing.ts";
import { thicknessShift } from "../../optics/films/thickness-shift.ts";
import type { TwoGroundFilm } from "../../optics/films/two-ground-film.ts";
import type { Figure, RecordRoot } from "../../quantities/figure.ts";
import type { Spectrum } from "../../quantities/spectrum.ts";
import type { Reading, SpectrumReading } from "../../records/records.ts";
import * as d from "../declaration.ts";
import { filled, foundFrom } from "../found.ts";
import {
  GLOSS_EXCLUDED,
  glossExcludedFigures,
  masstoneSurface,
  withoutGloss,
} from "./gloss-excluded.ts";
import { labFigures, notationFigure, xyzFigures, type Origin } from "./lab-figures.ts";
import {
  GEOMETRY,
  LAB,
  MUNSELL,
  SCREEN_IF_KNOWN,
  STANDING,
  XYZ,
  type LabFigures,
  type XyzFigures,
} from "./notation-figures.ts";
import { placeOf, readingFigures, type ReadingFigures } from "./reading-figures.ts";

type ByViewing<T> = { readonly [V in (typeof SHOWN_VIEWINGS)[number]]?: T };

interface OfCones {
  readonly xyz: ByViewing<XyzFigures>;
  readonly lab: ByViewing<LabFigures>;
}

/** What the notations of a masstone are found from, beside one another. */
interface MasstoneOfReading {
  readonly reading: Reading;
  /** Of a reading that is a spectrum. */
  readonly spectral: SpectrumReading | undefined;
  /** The same without its gloss, where it was read with it. */
  readonly beneath: Spectrum | undefined;
  readonly followed: ReadingFigures;
  /** To the observer of 2006, where that one judges. */
  readonly ofCones: OfCones | undefined;
  readonly observer: JudgingObserver;
  /** Then it is told in daylight alone: under another lamp it is excited otherwise. */
  readonly fluoresces: boolean;
  /** The records that it stands in. */
  readonly read: readonly RecordRoot[];
}
const masstone = foundFrom<MasstoneOfReading & { readonly lab: ByViewing<LabFigures> }>();

interface Lamplit {
  readonly spectrum: Spectrum;
  readonly observer: JudgingObserver;
  readonly lab: ByViewing<LabFigures>;
  readonly read: readonly RecordRoot[];
}

/** Colour change [Delta-E00] from daylight to a lamp, after adaptation. */
function under(lamp: Lamp, { spectrum, observer, lab, read }: Lamplit): Figure<number> {
  const { daylight, lamps } = LIGHTS[observer];
  const other = lamp === "incandescent" && observer === "CIE 1964" ? lab["A/10"] : undefined;
  return notationFigure(lamplight(spectrum, observer).deltaE00[lamp], "1", {
    standing: "derived",
    method: `ΔE00 of ${daylight} and ${lamps[lamp]} carried over by CAT16`,
    source: "li-2017",
    inputs: [...[lab[daylight], other].flatMap((one) => one?.L ?? []), ...read],
  });
}

const light = foundFrom<Lamplit>();
const LAMPLIGHT = d.section({
  deltaE00: light.found(d.listed(d.number({ ...d.ONE_PLACE, word: "lamplight" })), (at) =>
    under("incandescent", at),
  ),
  ledDeltaE00: light.found(d.listed(d.number({ ...d.ONE_PLACE, word: "lamplightLed" })), (at) =>
    under("led", at),
  ),
  fluorescentDeltaE00: light.found(
    d.listed(d.number({ ...d.ONE_PLACE, word: "lamplightFluorescent" })),
    (at) => under("fluorescent", at),
  ),
  sentence: light.found(
    d.statement,
    ({ spectrum, observer }) => lamplight(spectrum, observer).statement,
  ),
});

const GRID = d.section({ startNm: d.plainNumber, stepNm: d.plainNumber, count: d.plainNumber });

/** Every notation of a masstone that follows from its reading. */
export const MASSTONE = d.headed("notationsSection", {
  /** Absent for a chip judged by eye. */
  geometry: masstone.found(d.optional(GEOMETRY), ({ reading }) =>
    reading.form === "chip" ? undefined : reading.geometry,
  ),
  standing: masstone.found(STANDING, ({ reading }) =>
    reading.form === "lab" && reading.photographed !== undefined ? "estimated" : "measured",
  ),
  xyz: masstone.found(
    d.map(SHOWN_VIEWINGS, XYZ),
    ({ followed, ofCones }): ByViewing<XyzFigures> => ({
      ...followed.xyz,
      ...ofCones?.xyz,
    }),
  ),
  lab: masstone.found(
    d.map(SHOWN_VIEWINGS, LAB),
    ({ followed, ofCones }): ByViewing<LabFigures> => ({
      ...followed.lab,
      ...ofCones?.lab,
    }),
  ),
  munsell: masstone.found(d.optional(MUNSELL), ({ followed }) => followed.munsell),
  nbsName: masstone.found(
    d.optional(d.listed(d.notation("nbsName"))),
    ({ followed }) => followed.nbsName,
  ),
  srgb: masstone.found(SCREEN_IF_KNOWN.srgb, ({ followed }) => followed.srgb),
  displayP3: masstone.found(SCREEN_IF_KNOWN.displayP3, ({ followed }) => followed.displayP3),
  oklch: masstone.found(SCREEN_IF_KNOWN.oklch, ({ followed }) => followed.oklch),
  /** What lamps do, with its sentence. */
  lamplight: masstone.found(
    d.optional(LAMPLIGHT),
    ({ spectral, observer, fluoresces, lab, read }) =>
      spectral === undefined || fluoresces
        ? undefined
        : filled(LAMPLIGHT, { spectrum: spectral.spectrum, observer, lab, read }),
  ),
  /** For the spectral curve: the readings as drawn. */
  curve: masstone.found(
    d.optional(
      d.section({
        grid: GRID,
        values: d.plain<readonly number[]>({ type: "array", items: { type: "number" } }),
      }),
    ),
    ({ spectral }) => spectral?.spectrum,
  ),
  /** Only an included reading: the darker value that follows for gloss excluded. */
  glossExcludedL: masstone.found(
    d.optional(d.listed(d.number({ ...d.ONE_PLACE, word: "glossExcludedL" }))),
    ({ beneath, read }) =>
      beneath === undefined
        ? undefined
        : notationFigure(spectrumLab(beneath).L, "1", {
            standing: "derived",
            inputs: read,
            method: "surface light of an oil film taken off, D65/10",
            source: "saunderson-1942",
          }),
  ),
  glossExcludedCurve: masstone.found(
    d.optional(d.plain<Spectrum>({ type: "object" })),
    ({ beneath }) => beneath,
  ),
  glossExcluded: masstone.found(d.optional(GLOSS_EXCLUDED), ({ beneath, read }) =>
    beneath === undefined
      ? undefined
      : glossExcludedFigures(beneath, { standing: "derived", inputs: read }),
  ),
});
export type MasstoneNotations = d.SectionOf<typeof MASSTONE>;

/**
 * Every notation of a masstone that follows from its reading.
 * @param film the drawdown that the masstone was read on, over both grounds: its thickness counts into the uncertainty.
 */
export function masstoneNotations(
  reading: Reading,
  read: readonly RecordRoot[],
  blocks: readonly IsccNbsBlock[],
  observer: JudgingObserver = "CIE 1964",
  film?: TwoGroundFilm,
  fluoresces = false,
): MasstoneNotations {
  const moved = film === undefined ? [] : [thicknessShift(film)];
  const spectral = reading.form === "spectrum" ? reading : undefined;
  return filled(MASSTONE, {
    reading,
    spectral,
    beneath: spectral && withoutGloss(spectral, masstoneSurface(spectral)),
    followed: readingFigures(reading, read, blocks, fluoresces ? DAYLIGHTS : VIEWINGS, moved),
    ofCones:
      spectral !== undefined && observer === "CIE 2006"
        ? coneFigures(spectral, read, moved)
        : undefined,
    observer,
    fluoresces,
    read,
  });
}

const DAYLIGHTS = VIEWINGS.filter((viewing) => !viewing.startsWith("A/"));

/** In daylight to the 10 degree observer of CIE 2006. */
function coneFigures(
  reading: SpectrumReading,
  inputs: readonly RecordRoot[],
  moved: readonly (readonly number[])[],
): OfCones {
  const { spectrum, noise, origin, geometry } = reading;
  const viewing = "D65/2006";
  const summed: Origin = {
    standing: "derived",
    inputs,
    method: `CIE sums of ${origin}, ${geometry}, 10 degree observer of CIE 2006`,
    source: "cie-170-2",
  };
  const xyz = tristimulus(spectrum, viewing);
  return {
    xyz: { [viewing]: xyzFigures(xyz, summed) },
    lab: {
      [viewing]: labFigures(
        xyzToLab(xyz, viewing),
        summed,
        labUncertainty(spectrum, viewing, noise, moved, placeOf(reading)),
      ),
    },
  };
}
