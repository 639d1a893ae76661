import { LAB_VIEWINGS } from "../../colorimetry/viewing.ts";
import type { Standing } from "../../quantities/figure.ts";
import { GEOMETRIES } from "../../records/schema/terms.ts";
import * as d from "../declaration.ts";

export const STANDING = d.oneOf<Standing>(["measured", "derived", "estimated", "stated"]);
export const GEOMETRY = d.oneOf(GEOMETRIES);

const TRISTIMULUS = { unit: "1", kind: "significant", digits: 4 } as const;

export const XYZ = d.section({
  X: d.number({ ...TRISTIMULUS, word: "xyzX" }),
  Y: d.number({ ...TRISTIMULUS, word: "xyzY" }),
  Z: d.number({ ...TRISTIMULUS, word: "xyzZ" }),
});
export type XyzFigures = d.SectionOf<typeof XYZ>;

export const LAB = d.section({
  L: d.number({ ...d.ONE_PLACE, word: "labL" }),
  a: d.number({ ...d.ONE_PLACE, word: "labA" }),
  b: d.number({ ...d.ONE_PLACE, word: "labB" }),
});
export type LabFigures = d.SectionOf<typeof LAB>;

/** Lab by the viewings that follow from a reading. */
export const LAB_BY_VIEWING = d.map(LAB_VIEWINGS, LAB);

export const MUNSELL = d.section({
  /** Null below chroma .05: a neutral has none. */
  hue: d.orNull(d.notation("munsellHue")),
  value: d.number({ ...d.ONE_PLACE, word: "munsellValue" }),
  chroma: d.number({ ...d.ONE_PLACE, word: "munsellChroma" }),
  text: d.listed(d.notation("munsell")),
});
export type MunsellFigures = d.SectionOf<typeof MUNSELL>;

/** What a screen can show of a colour, from D65/2; `inGamut` false says that the screen shows the nearest it can. */
export const SCREEN = {
  srgb: d.section({ hex: d.listed(d.notation("srgb")), inGamut: d.flag }),
  displayP3: d.section({ css: d.listed(d.notation("displayP3")), inGamut: d.flag }),
  oklch: d.section({ css: d.listed(d.notation("oklch")) }),
};
export type ScreenFigures = d.PartsOf<typeof SCREEN>;
/** The same where it may not follow. */
export const SCREEN_IF_KNOWN = d.optionally(SCREEN);
