import type { IsccNbsBlock } from "../../colorimetry/iscc-nbs.ts";
import { LIGHTS, type Lamp } from "../../colorimetry/lamps.ts";
import { lamplight } from "../../colorimetry/lamplight.ts";
import { labUncertainty } from "../../colorimetry/lab-uncertainty.ts";
import { xyzToLab } from "../../colorimetry/lab.ts";
import { tristimulus } from "../../colorimetry/tristimulus.ts";
import { VIEWINGS, type JudgingObserver } from "../../colorimetry/viewing.ts";
import { spectrumLab } from "../../colorimetry/spectrum-lab.ts";
import { thicknessShift } from "../../optics/films/thickness-shift.ts";
import type { TwoGroundFilm } from "../../optics/films/two-ground-film.ts";
import {
  readingInGeometry,
  unstatedSurface,
} from "../../optics/surface/measurement-in-geometry.ts";
import type { Figure, RecordRoot } from "../../quantities/figure.ts";
import { isStatement } from "../../quantities/statement.ts";
import type { Reading, SpectrumReading } from "../../records/records.ts";
import { opticsReading } from "../tints/optics-reading.ts";
import { labFigures, notationFigure, xyzFigures, type Origin } from "./lab-figures.ts";
import { readingFigures, type ReadingFigures } from "./reading-figures.ts";
import type { MasstoneNotations } from "./notation-figures.ts";

/**
 * Every notation of a masstone that follows from its reading.
 * @param film the drawdown that the masstone was read on, over both grounds: its thickness counts into the uncertainty.
 */
export function masstoneNotations(
  reading: Reading,
  inputs: readonly RecordRoot[],
  blocks: readonly IsccNbsBlock[],
  observer: JudgingObserver = "CIE 1964",
  film?: TwoGroundFilm,
): MasstoneNotations {
  const moved = film === undefined ? [] : [thicknessShift(film)];
  const notations = readingFigures(reading, inputs, blocks, VIEWINGS, moved);
  return {
    ...(reading.form === "chip" ? {} : { geometry: reading.geometry }),
    standing:
      reading.form === "lab" && reading.photographed !== undefined ? "estimated" : "measured",
    ...notations,
    ...(reading.form === "spectrum" ? spectral(reading, notations, inputs, observer, moved) : {}),
    ...(reading.form === "spectrum" && reading.geometry === "d/8 included"
      ? glossExcluded(reading, inputs)
      : {}),
  };
}

/** With only an included reading: what the same film would read with the gloss shut out, as the eye meets it. */
function glossExcluded(
  reading: SpectrumReading,
  inputs: readonly RecordRoot[],
): Pick<MasstoneNotations, "glossExcludedL" | "glossExcludedCurve"> {
  const excluded = readingInGeometry(
    opticsReading(reading),
    "d/8 excluded",
    reading.surface ?? unstatedSurface(opticsReading(reading)),
  );
  if (isStatement(excluded)) return {};
  const { L } = spectrumLab(excluded);
  return {
    glossExcludedL: notationFigure(L, "1", {
      standing: "derived",
      inputs,
      method: "surface light of an oil film taken off, D65/10",
      source: "saunderson-1942",
    }),
    glossExcludedCurve: excluded,
  };
}

/** What only a spectrum tells: the curve, what lamplight does, and the colour to the observer of 2006 where that one judges. */
function spectral(
  reading: SpectrumReading,
  { lab: own, xyz }: ReadingFigures,
  read: readonly RecordRoot[],
  observer: JudgingObserver,
  moved: readonly (readonly number[])[],
): Pick<MasstoneNotations, "lamplight" | "curve" | "lab" | "xyz"> {
  const { spectrum } = reading;
  const { deltaE00, statement } = lamplight(spectrum, observer);
  const { daylight, lamps } = LIGHTS[observer];
  const cones = observer === "CIE 2006" ? coneFigures(reading, read, moved) : { lab: {}, xyz: {} };
  const lab: MasstoneNotations["lab"] = { ...own, ...cones.lab };
  const day = lab[daylight]?.L;
  const under = (lamp: Lamp, other?: Figure): Figure<number> =>
    notationFigure(deltaE00[lamp], "1", {
      standing: "derived",
      method: `ΔE00 of ${daylight} and ${lamps[lamp]} carried over by CAT16`,
      source: "li-2017",
      inputs: [...[day, other].filter((L) => L !== undefined), ...read],
    });
  return {
    lab,
    xyz: { ...xyz, ...cones.xyz },
    lamplight: {
      deltaE00: under("incandescent", observer === "CIE 1964" ? lab["A/10"]?.L : undefined),
      ledDeltaE00: under("led"),
      fluorescentDeltaE00: under("fluorescent"),
      sentence: statement,
    },
    curve: spectrum,
  };
}

/** In daylight to the 10 degree observer of CIE 2006. */
function coneFigures(
  { spectrum, noise, origin, geometry }: SpectrumReading,
  inputs: readonly RecordRoot[],
  moved: readonly (readonly number[])[],
): Pick<MasstoneNotations, "lab" | "xyz"> {
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
        labUncertainty(spectrum, viewing, noise, moved),
      ),
    },
  };
}
