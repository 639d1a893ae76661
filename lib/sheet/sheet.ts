import type { Dispersion, Family } from "../records/schema/terms.ts";
import {
  list,
  optional,
  orUndefined,
  plain,
  section,
  text,
  type SectionOf,
  workshopAlone,
  type WordsOf,
} from "./declaration.ts";
import { DRYING } from "./drying/drying-figures.ts";
import { CAUTIONS, OFFER } from "./handling/handling-sections.ts";
import { filled, found } from "./found.ts";
import { LOTS } from "./lots/lots-figures.ts";
import { MIXTURE } from "./mixture/mixture-figures.ts";
import { MASSTONE } from "./notations/masstone-figures.ts";
import { BATCH } from "./oil/batch-figures.ts";
import { FILL } from "./oil/fill-figures.ts";
import { OIL } from "./oil/oil-figures.ts";
import { OPTICS } from "./optics/optics-figures.ts";
import type { PaintOfColour } from "./paint-as-made.ts";
import { PERMANENCE } from "./permanence/permanence-figures.ts";
import { ADDITION, PIGMENT, VEHICLE } from "./pigments/pigment-figures.ts";
import { EXPECTED_TINT } from "./tints/expected-figures.ts";
import { TINT } from "./tints/tint-figures.ts";

/** What a section is found from that asks for nothing but the paint. */
interface OfPaint {
  readonly paint: PaintOfColour;
}

/**
 * A colour's sheet: everything that is worked out of its records. A leaf is a
 * figure, a statement (a sentence not yet worded) or a plain fact of the record.
 * The declaration is the one place that says what a sheet holds: its type, the
 * figure table, the published schema and the walk into sheet.json follow from it.
 */
export const SHEET = section({
  slug: text,
  name: text,
  family: orUndefined(plain<Family>({ type: "string" })),
  recordDate: orUndefined(text),
  /** The day from which on it is made no more. */
  discontinued: optional(text),
  vehicle: orUndefined(VEHICLE),
  dispersion: orUndefined(plain<Dispersion>({ type: "string" })),
  pigments: list(PIGMENT),
  /** Driers, mediums and thinners on top of pigment and oil. */
  additions: list(ADDITION),
  notations: section({ masstone: optional(MASSTONE) }),
  tints: list(TINT),
  /** In whites that it was not let down in, by what other colours do there. */
  expectedTints: list(EXPECTED_TINT),
  optics: OPTICS,
  /** Of colours of two pigments or more. */
  mixture: optional(MIXTURE),
  oil: OIL,
  /** Absent where oil, density or parts are not known: then nothing can be weighed out. */
  batch: workshopAlone(optional(BATCH)),
  fill: found(FILL, ({ paint }: OfPaint) => filled(FILL, paint)),
  drying: DRYING,
  permanence: PERMANENCE,
  cautions: CAUTIONS,
  /** Absent where no lot is on record. */
  lots: optional(LOTS),
  /** What it is put up in; absent where no size is recorded. */
  offer: optional(OFFER),
});
export type Sheet = SectionOf<typeof SHEET>;

/** Keys of the names that a language gives to figures. */
export type FigureWord = WordsOf<typeof SHEET>;
