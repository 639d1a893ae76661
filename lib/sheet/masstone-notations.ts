import { lamplight } from "../colorimetry/lamplight.ts";
import type { Reading } from "../records/records.ts";
import { notationFigure } from "./lab-figures.ts";
import { readingFigures } from "./reading-figures.ts";
import type { MasstoneNotations } from "./sheet.ts";

/** Every notation of a masstone that follows from its reading. */
export function masstoneNotations(reading: Reading): MasstoneNotations {
  return {
    ...(reading.form === "chip" ? {} : { geometry: reading.geometry }),
    standing: "measured",
    ...readingFigures(reading, "notations.masstone"),
    ...(reading.form === "spectrum" ? spectral(reading) : {}),
  };
}

/** What only a spectrum tells: the curve, and what lamplight does. */
function spectral({ spectrum }: Extract<Reading, { form: "spectrum" }>): Pick<MasstoneNotations, "lamplight" | "curve"> {
  const shift = lamplight(spectrum);
  return {
    lamplight: {
      deltaE00: notationFigure(shift.deltaE00, "1", {
        standing: "derived", restsOn: "measured", method: "Delta-E00 of D65/10 and A/10 carried over by CAT16", source: "li-2017",
        inputs: ["notations.masstone.lab.D65/10.L", "notations.masstone.lab.A/10.L"],
      }),
      sentence: shift.ruling,
    },
    curve: spectrum,
  };
}
