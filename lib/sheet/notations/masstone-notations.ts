import type { IsccNbsBlock } from "../../colorimetry/iscc-nbs.ts";
import { LAMPS, type Lamp } from "../../colorimetry/lamps.ts";
import { lamplight } from "../../colorimetry/lamplight.ts";
import { xyzToLab } from "../../colorimetry/lab.ts";
import { tristimulus } from "../../colorimetry/tristimulus.ts";
import {
  readingInGeometry,
  unstatedSurface,
} from "../../optics/surface/measurement-in-geometry.ts";
import type { Figure, RecordRoot } from "../../quantities/figure.ts";
import { isStatement } from "../../quantities/statement.ts";
import type { Reading, SpectrumReading } from "../../records/records.ts";
import { opticsReading } from "../tints/optics-reading.ts";
import { notationFigure } from "./lab-figures.ts";
import { readingFigures, type ReadingFigures } from "./reading-figures.ts";
import type { MasstoneNotations } from "../sheet.ts";

/** Every notation of a masstone that follows from its reading. */
export function masstoneNotations(
  reading: Reading,
  inputs: readonly RecordRoot[],
  blocks: readonly IsccNbsBlock[],
): MasstoneNotations {
  const notations = readingFigures(reading, inputs, blocks);
  return {
    ...(reading.form === "chip" ? {} : { geometry: reading.geometry }),
    standing: "measured",
    ...notations,
    ...(reading.form === "spectrum" ? spectral(reading, notations, inputs) : {}),
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
  const { L } = xyzToLab(tristimulus(excluded, "D65/10"), "D65/10");
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

/** What only a spectrum tells: the curve, and what lamplight does. */
function spectral(
  { spectrum }: SpectrumReading,
  { lab }: ReadingFigures,
  read: readonly RecordRoot[],
): Pick<MasstoneNotations, "lamplight" | "curve"> {
  const { deltaE00, statement } = lamplight(spectrum);
  const day = lab["D65/10"]?.L;
  const under = (lamp: Lamp, other?: Figure): Figure<number> =>
    notationFigure(deltaE00[lamp], "1", {
      standing: "derived",
      method: `Delta-E00 of D65/10 and ${LAMPS[lamp]} carried over by CAT16`,
      source: "li-2017",
      inputs: [...[day, other].filter((L) => L !== undefined), ...read],
    });
  return {
    lamplight: {
      deltaE00: under("incandescent", lab["A/10"]?.L),
      ledDeltaE00: under("led"),
      fluorescentDeltaE00: under("fluorescent"),
      sentence: statement,
    },
    curve: spectrum,
  };
}
