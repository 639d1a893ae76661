/** German for the words of closed sets that come into sentences as values. */
import type { DrierMetal } from "../../drying/added-drier.ts";
import type { Chemistry } from "../../drying/chemistry-drying.ts";
import type { DryingClass } from "../../drying/drying-class.ts";
import type { Oil } from "../../drying/oils.ts";
import type { Finish } from "../../formulation/finish.ts";
import type { OilIndexClass } from "../../formulation/oil-index-class.ts";
import type { SignalWord } from "../../hazard/classify/hazard-class.ts";
import type { Metal } from "../../hazard/studio/metal-content.ts";
import type { OpacityClass } from "../../optics/films/opacity.ts";
import type { HueWord } from "../../optics/tints/hue-word.ts";
import type { Expectation } from "../../permanence/expected-lightfastness.ts";
import type { SeenChange } from "../../permanence/grey-scale.ts";
import type { ExposedForm } from "../../permanence/exposure.ts";
import type { Bound } from "../../quantities/figure.ts";
import type { Dispersion } from "../../formulation/dispersion.ts";

/** As a quality: "blau". */
export const HUES: Readonly<Record<HueWord, string>> = {
  red: "rot",
  brown: "braun",
  yellow: "gelb",
  olive: "oliv",
  green: "grün",
  "blue-green": "blaugrün",
  blue: "blau",
  violet: "violett",
  purple: "purpurn",
};

/** As a direction: "nach Blau". */
export const HUE_NOUNS: Readonly<Record<HueWord, string>> = {
  red: "Rot",
  brown: "Braun",
  yellow: "Gelb",
  olive: "Oliv",
  green: "Grün",
  "blue-green": "Blaugrün",
  blue: "Blau",
  violet: "Violett",
  purple: "Purpur",
};

export const OPACITY_WORDS: Readonly<Record<OpacityClass, string>> = {
  opaque: "deckend",
  "semi-opaque": "halbdeckend",
  "semi-transparent": "halblasierend",
  transparent: "lasierend",
};

export const FINISH_WORDS: Readonly<Record<Finish, string>> = {
  gloss: "glänzend",
  "semi-gloss": "seidenglänzend",
  satin: "seidenmatt",
  matte: "matt",
};

export const DRYING_WORDS: Readonly<Record<DryingClass, string>> = {
  fast: "schnell",
  medium: "mittel",
  slow: "langsam",
  "very slow": "sehr langsam",
};

export const OIL_INDEX_WORDS: Readonly<Record<OilIndexClass, string>> = {
  "very low": "sehr niedrig",
  low: "niedrig",
  medium: "mittel",
  high: "hoch",
  "very high": "sehr hoch",
};

export const EXPECTATION_WORDS: Readonly<Record<Expectation, string>> = {
  excellent: "ausgezeichnet",
  "very good": "sehr gut",
  fair: "mäßig",
  poor: "gering",
  fugitive: "sehr gering",
};

/** What an eye that saw both halves would say of a change. */
export const CHANGE_WORDS: Readonly<Record<SeenChange, string>> = {
  unchanged: "unverändert",
  "hardly changed": "kaum verändert",
  "changed slightly": "leicht verändert",
  changed: "verändert",
  "changed much": "stark verändert",
  "changed greatly": "sehr stark verändert",
};

export const FORM_WORDS: Readonly<Record<ExposedForm, string>> = {
  masstone: "Vollton",
  tint: "Aufhellung",
};

export const OIL_NAMES: Readonly<Record<Oil, string>> = {
  linseed: "Leinöl",
  walnut: "Walnussöl",
  safflower: "Safloröl",
  poppy: "Mohnöl",
  "stand linseed": "Leinstandöl",
};

export const METAL_NAMES: Readonly<Record<Metal | DrierMetal, string>> = {
  lead: "Blei",
  cadmium: "Cadmium",
  mercury: "Quecksilber",
  arsenic: "Arsen",
  chromate: "sechswertiges Chrom",
  nickel: "Nickel",
  cobalt: "Cobalt",
  antimony: "Antimon",
  barium: "lösliches Barium",
  manganese: "Mangan",
  copper: "Kupfer",
  zirconium: "Zirkonium",
  calcium: "Calcium",
  zinc: "Zink",
};

export const CHEMISTRY_NAMES: Readonly<Record<Chemistry, string>> = {
  lead: "Blei",
  cobalt: "Cobalt",
  manganese: "Mangan",
  "manganese trace": "Manganspuren",
  "brown earth": "braune Erde",
  "iron cyanide": "Eisencyanid",
  "iron oxide": "Eisenoxid",
  aluminosilicate: "Alumosilikat",
  "chromium oxide": "Chromoxid",
  "copper chromite": "Kupferchromit",
  "inert extender": "inerter Füllstoff",
  phthalocyanine: "Phthalocyanin",
  "titanium dioxide": "Titandioxid",
  "zinc oxide": "Zinkoxid",
  "mercury sulphide": "Quecksilbersulfid",
  "cadmium sulphide": "Cadmiumsulfid",
  "coarse carbon": "grober Kohlenstoff",
  "fine carbon": "feiner Kohlenstoff",
  organic: "organisches Pigment",
};

export const DISPERSION_WORDS: Readonly<Record<Dispersion, string>> = {
  mulled: "von Hand angerieben",
  milled: "gewalzt",
};

/** How parts are counted. */
export const BY_WORDS: Readonly<Record<string, string>> = {
  volume: "nach Volumen",
  weight: "nach Gewicht",
};

export const BOUND_WORDS: Readonly<Record<Bound, string>> = {
  "at least": "mindestens",
  "at most": "höchstens",
};

/** The words of Annex I of Regulation (EC) No 1272/2008. */
export const SIGNAL_WORDS: Readonly<Record<SignalWord, string>> = {
  Danger: "Gefahr",
  Warning: "Achtung",
};

/** The German of a value of a set that is closed elsewhere; a value that is not in it stands as it is. */
export function inGerman(words: Readonly<Record<string, string>>, value: string): string {
  return words[value] ?? value;
}
