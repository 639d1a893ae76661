import { practised, read, recalled, type Bibliography } from "./source.ts";

/** Texts that the permanence rulings rest on. */
export const PERMANENCE_SOURCES = {
  "astm-d4303": recalled(
    "ASTM D4303-10(2022). Standard Test Methods for Lightfastness of Colorants Used in Artists' Materials. ASTM International.",
    "That a daylight and a xenon-arc exposure are combined, and ΔE*ab of CIE 1976, was read; the category limits are quoted from memory. A category needs the standard's own exposures.",
  ),
  "astm-d4302": recalled(
    "ASTM D4302. Standard Specification for Artists' Oil, Resin-Oil, and Alkyd Paints. ASTM International.",
    "Lists pigments of category I and II as suitable (partly read); which pigment stands where is recalled without the text at hand.",
  ),
  "iso-105-b02": read(
    "ISO 105-B02. Textiles. Tests for colour fastness. Part B02: Colour fastness to artificial light: Xenon arc fading lamp test.",
    "Blue wool references 1 (most fugitive) to 8.",
  ),
  "iso-105-a02": read(
    "ISO 105-A02. Textiles. Tests for colour fastness. Part A02: Grey scale for assessing change in colour.",
    "CIELAB differences of the whole grades were read; those of the half grades are from memory.",
  ),
  "kirby-saunders-2004": read(
    "Kirby, J. & Saunders, D. (2004). Fading and colour change of Prussian blue: methods of manufacture and the influence of extenders. National Gallery Technical Bulletin, 25, 73-99.",
    "Its abstract: mixtures of Prussian blue and white changed colour more in light than Prussian blue alone, and alumina as an extender made it fade faster. The word for such tints is this project's.",
  ),
  "stenger-2010": read(
    "Stenger, J. et al. (2010). Lithol Red salts: characterization and deterioration. e-Preservation Science, 7, 147-157.",
    "Its abstract: of sodium, barium and calcium salts, the neat powder is very lightfast and the pigment in paint is poorly so.",
    "Stenger et al. 2010",
  ),
  "memory-permanence": recalled(
    "Permanence of pigments as known in the trade, recalled without the text at hand.",
    "The customary correspondence of blue wool references to categories, and what alkali, acid, sulphur, heat and damp do to a pigment.",
  ),
  "practice-permanence": practised(
    "Common practice of artists' colour making; no text.",
    "A mixed colour takes its least lightfast pigment's category; the form that was exposed is the form that is rated.",
  ),
} as const satisfies Bibliography;
