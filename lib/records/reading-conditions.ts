import { mostOf } from "../quantities/most-of.ts";
import { warningAt, type Faults } from "./fault.ts";
import { capitalised, readDrawdowns } from "./read-drawdowns.ts";
import type { ReadColour, Reading } from "./records.ts";

/** One way in which readings of one paint may be unlike: what it is called, and what it is of a reading. */
interface Condition {
  readonly key: "geometry" | "aperture" | "illuminant";
  readonly of: (reading: Reading) => string | undefined;
  /** "was read 45/0". */
  readonly read: (value: string) => string;
  readonly why: string;
  readonly hint: string;
}

const CONDITIONS: readonly Condition[] = [
  {
    key: "geometry",
    of: (reading) => (reading.form === "chip" ? undefined : reading.geometry),
    read: (value) => `was read ${value}`,
    why: "gloss counts in one of them and not in the other, or not in the same measure",
    hint: "geometry left out or miswritten at one of them? A reading by another instrument is made again",
  },
  {
    key: "aperture",
    of: (reading) => (reading.form === "spectrum" ? reading.aperture : undefined),
    read: (value) => `was read through ${value}`,
    why: "a small opening loses light at its edge that a large one keeps",
    hint: "another instrument's file, or another opening?",
  },
  {
    key: "illuminant",
    of: (reading) => (reading.form === "lab" ? reading.viewing : undefined),
    read: (value) => `is told for ${value}`,
    why: "an instrument tells all for the light and the observer that it is set to",
    hint: "illuminant or observer left out, miswritten or copied at one of them?",
  },
];

/**
 * Drawdowns of one colour that were not all read alike. Told of those that are fewer, since a
 * forgotten word is one reading's; of as many on either side, of those that are not the masstone.
 */
export function* conditionFaults(colour: ReadColour): Faults {
  // What it leaves to its retained standard is told of that lot.
  const drawdowns = readDrawdowns(colour).filter(({ path }) => String(path[0]) in colour.record);
  for (const { key, of, read, why, hint } of CONDITIONS) {
    const told = drawdowns.flatMap((one) => {
      const value = of(one.reading);
      return value === undefined ? [] : [{ ...one, value }];
    });
    const usual = mostOf(told.map(({ value }) => value));
    if (usual === undefined) continue;
    for (const { as, path, value } of told) {
      if (value === usual) continue;
      yield warningAt(colour.place([...path, key]), "records/reading-conditions", {
        message: `${capitalised(as)} ${read(value)}, and the other drawdowns of this colour ${usual}: ${why}`,
        actual: value,
        expected: usual,
        hint,
      });
    }
  }
}
