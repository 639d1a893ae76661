import { LAB_VIEWINGS } from "../../colorimetry/viewing.ts";
import type { Standing } from "../../quantities/figure.ts";
import { GEOMETRIES } from "../../records/schema/terms.ts";
import {
  flag,
  listed,
  map,
  notation,
  number,
  oneOf,
  optionally,
  orNull,
  section,
  type PartsOf,
  type SectionOf,
  ONE_PLACE,
} from "../declaration.ts";

export const STANDING = oneOf<Standing>(["measured", "derived", "estimated", "stated"]);
export const GEOMETRY = oneOf(GEOMETRIES);

const TRISTIMULUS = { unit: "1", kind: "significant", digits: 4 } as const;

export const XYZ = section({
  X: number({ ...TRISTIMULUS, word: "xyzX" }),
  Y: number({ ...TRISTIMULUS, word: "xyzY" }),
  Z: number({ ...TRISTIMULUS, word: "xyzZ" }),
});
export type XyzFigures = SectionOf<typeof XYZ>;

export const LAB = section({
  L: number({ ...ONE_PLACE, word: "labL" }),
  a: number({ ...ONE_PLACE, word: "labA" }),
  b: number({ ...ONE_PLACE, word: "labB" }),
});
export type LabFigures = SectionOf<typeof LAB>;

/** Lab by the viewings that follow from a reading. */
export const LAB_BY_VIEWING = map(LAB_VIEWINGS, LAB);

export const MUNSELL = section({
  /** Null below chroma .05: a neutral has none. */
  hue: orNull(notation("munsellHue")),
  value: number({ ...ONE_PLACE, word: "munsellValue" }),
  chroma: number({ ...ONE_PLACE, word: "munsellChroma" }),
  text: listed(notation("munsell")),
});
export type MunsellFigures = SectionOf<typeof MUNSELL>;

/** What a screen can show of a colour, from D65/2; `inGamut` false says that the screen shows the nearest it can. */
export const SCREEN = {
  srgb: section({ hex: listed(notation("srgb")), inGamut: flag }),
  displayP3: section({ css: listed(notation("displayP3")), inGamut: flag }),
  oklch: section({ css: listed(notation("oklch")) }),
};
export type ScreenFigures = PartsOf<typeof SCREEN>;
/** The same where it may not follow. */
export const SCREEN_IF_KNOWN = optionally(SCREEN);
