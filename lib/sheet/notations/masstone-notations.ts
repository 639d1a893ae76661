import { LAMPS, type Lamp } from "../../colorimetry/lamps.ts";
import { lamplight } from "../../colorimetry/lamplight.ts";
import { xyzToLab } from "../../colorimetry/lab.ts";
import { tristimulus } from "../../colorimetry/tristimulus.ts";
import { readingInGeometry } from "../../optics/surface/measurement-in-geometry.ts";
import { OIL_SURFACE } from "../../optics/surface/surface.ts";
import type { Figure, FigurePath } from "../../quantities/figure.ts";
import { isStatement } from "../../quantities/statement.ts";
import type { Reading, SpectrumReading } from "../../records/records.ts";
import { opticsReading } from "../tints/drawdown-set.ts";
import { notationFigure } from "./lab-figures.ts";
import { readingFigures } from "./reading-figures.ts";
import type { MasstoneNotations } from "../sheet.ts";

/** Every notation of a masstone that follows from its reading. */
export function masstoneNotations(reading: Reading): MasstoneNotations {
  return {
    ...(reading.form === "chip" ? {} : { geometry: reading.geometry }),
    standing: "measured",
    ...readingFigures(reading, "notations.masstone"),
    ...(reading.form === "spectrum" ? spectral(reading) : {}),
    ...(reading.form === "spectrum" && reading.geometry === "d/8 included"
      ? glossExcluded(reading)
      : {}),
  };
}

/** With only an included reading: what the same film would read with the gloss shut out, as the eye meets it. */
function glossExcluded(
  reading: SpectrumReading,
): Pick<MasstoneNotations, "glossExcludedL" | "glossExcludedCurve"> {
  const excluded = readingInGeometry(
    opticsReading(reading),
    "d/8 excluded",
    reading.surface ?? OIL_SURFACE,
  );
  if (isStatement(excluded)) return {};
  const { L } = xyzToLab(tristimulus(excluded, "D65/10"), "D65/10");
  return {
    glossExcludedL: notationFigure(L, "1", {
      standing: "derived",
      restsOn: "measured",
      method: "surface light of an oil film taken off, D65/10",
      source: "saunderson-1942",
    }),
    glossExcludedCurve: excluded,
  };
}

/** What only a spectrum tells: the curve, and what lamplight does. */
function spectral({ spectrum }: SpectrumReading): Pick<MasstoneNotations, "lamplight" | "curve"> {
  const { deltaE00, statement } = lamplight(spectrum);
  const under = (lamp: Lamp, inputs?: readonly FigurePath[]): Figure<number> =>
    notationFigure(deltaE00[lamp], "1", {
      standing: "derived",
      restsOn: "measured",
      method: `Delta-E00 of D65/10 and ${LAMPS[lamp]} carried over by CAT16`,
      source: "li-2017",
      inputs,
    });
  const day = "notations.masstone.lab.D65/10.L";
  return {
    lamplight: {
      deltaE00: under("incandescent", [day, "notations.masstone.lab.A/10.L"]),
      ledDeltaE00: under("led", [day]),
      fluorescentDeltaE00: under("fluorescent", [day]),
      sentence: statement,
    },
    curve: spectrum,
  };
}
