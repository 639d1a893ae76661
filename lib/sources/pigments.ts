import { read, recalled, type Bibliography } from "./source.ts";

/** Texts that the tables of pigments rest on or are held against. */
export const PIGMENT_SOURCES = {
  "pigment-constitutions-memory": recalled(
    "Common names, chemical classes, formulae and years of pigments by Colour Index generic name, as handbooks give them, recalled without the text at hand.",
    "A formula is of the pure compound; an organic pigment is named by its class.",
  ),
  "cameo-weld": read(
    "Museum of Fine Arts, Boston. CAMEO: Conservation & Art Materials Encyclopedia Online, entry Weld (Reseda luteola) LC, https://cameo.mfa.org/wiki/Weld_(Reseda_luteola)_LC.",
    "That the yellow of weld is Natural Yellow 2, and that its colorant is the flavonoid luteolin with its glycosides; read in an excerpt.",
    "CAMEO, Weld",
  ),
  "common-names-memory": recalled(
    "Common and historic names of pigments, as handbooks and the trade use them, recalled without the text at hand.",
    "A name has often stood for more than one pigment: the row gives those that bear it by the Colour Index.",
  ),
  "gardner-1911": read(
    "Gardner, H. A. (1911). Paint Technology and Tests. New York: McGraw-Hill.",
    "Specific gravities and oil of pigments, and that lithopone darkens in the sun. Public domain.",
  ),
  "rivington-notes": read(
    "Rivington's Series of Notes on Building Construction, Part III: Materials. London: Rivingtons.",
    "Which pigments fade in strong light, are hurt by impure air, or are transparent. Public domain.",
    "Notes on Building Construction",
  ),
  "field-chromatography": read(
    "Field, G. Chromatography; or, a Treatise on Colours and Pigments. London.",
    "Table I: pigments that light and air change. Public domain.",
  ),
  "farnsworth-1922": read(
    "Farnsworth, S. (1922). Illumination and its Development in the Present Day.",
    "Which blues and violets are permanent. The year is from memory.",
  ),
  "hobbs-1912": read(
    "Hobbs, W. H. (1912). Earth Features and their Meaning. New York: Macmillan.",
    "Specific gravities of common minerals. Public domain.",
  ),
  "van-driel-2018": read(
    "Investigating the effect of artists' paint formulation on degradation rates of TiO2-based oil paints. Heritage Science, 6 (2018), Table 1.",
    "Densities that the authors convert volumes with.",
    "van Driel et al. 2018",
  ),
  "oil-absorption-notes-2022": read(
    "What is oil absorption of pigment? A paint chemist's notes on ASTM D281 with a table of values (web page, 2022).",
    "The values agree with those of paint handbooks; the page does not say which.",
    "a paint chemist's notes",
  ),
} as const satisfies Bibliography;
