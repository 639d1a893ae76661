/** Closed vocabularies of the records: an unknown word is an error with the nearest known one offered. */
import { METALS } from "../../hazard/studio/metal-content.ts";

// What the sciences have words for is listed there.
export { JUDGING_OBSERVERS as OBSERVERS } from "../../colorimetry/viewing.ts";
export { TOUCHES } from "../../drying/touch.ts";
export { HAZARD_FRAMES as FRAMES } from "../../hazard/classify/frame.ts";
export { SIGNAL_WORDS } from "../../hazard/classify/hazard-class.ts";
export {
  HAZARD_MARKETS as MARKETS,
  type HazardMarket as Market,
} from "../../hazard/classify/legislation.ts";
export { ACUTE_ROUTES } from "../../hazard/texts/hazard-statement.ts";
export { RATIO_KINDS, type RatioKind } from "../../optics/fit/drawdown.ts";
export { GEOMETRIES, type Geometry } from "../../optics/fit/measurement.ts";

export const SCALES = ["factor", "percent"] as const;
export const ILLUMINANTS = ["A", "C", "D50", "D65"] as const;
export const ROOT_STANDINGS = ["measured", "stated", "estimated"] as const;
export const DISPERSIONS = ["mulled", "milled"] as const;
export const FAMILIES = [
  "white",
  "black",
  "grey",
  "earth",
  "brown",
  "red",
  "orange",
  "yellow",
  "green",
  "blue",
  "violet",
  "extender",
] as const;
export const VEHICLE_KINDS = ["oil", "medium", "drier", "thinner"] as const;
/** Metals whose share a record may give: those of driers, and those that a label or a studio must know of. */
export const RECORD_METALS = [...METALS, "zirconium", "calcium", "zinc"] as const;
export const FORMS = ["masstone", "tint"] as const;
export const CATEGORIES = ["I", "II", "III", "IV", "V"] as const;
export const GROUNDS = ["black", "white"] as const;
/** What a photograph is of. A drawdown lies over black and white. */
export const PHOTOGRAPHED = ["drawdown", "brush stroke", "tube", "dry pigment", "impasto"] as const;
export const BODIES = ["short", "long", "stiff", "ropy"] as const;
export const OIL_SEPARATIONS = ["none", "slight", "marked"] as const;
/** What answers are about, in the order of their list. */
export const THEMES = ["whites", "choice", "drying", "lasting", "tube", "safety"] as const;
export const PAPERS = ["A4", "Letter"] as const;
/** What a label to stick goes on, what it says of the price, and what a till reads on it. */
export const LABEL_KINDS = ["tube", "jar"] as const;
export const LABEL_PRICES = ["price", "code", "none"] as const;
export const LABEL_SYMBOLS = ["ean", "qr", "none"] as const;
/** How a price goes to the step that it is rounded to. */
export const ROUNDINGS = ["nearest", "up", "down"] as const;
/** Units of measurement [ml] that a price can be told by: the litre, and what small packages are compared by where a country has that in general use. @source price-indication-98-6-ec Article 2(b) */
export const UNITS_OF_PRICE_ML = [1000, 100] as const;
export type UnitOfPriceMl = (typeof UNITS_OF_PRICE_ML)[number];

export type Scale = (typeof SCALES)[number];
export type Dispersion = (typeof DISPERSIONS)[number];
export type Family = (typeof FAMILIES)[number];
export type VehicleKind = (typeof VEHICLE_KINDS)[number];
export type Theme = (typeof THEMES)[number];
