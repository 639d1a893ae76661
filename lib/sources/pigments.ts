import type { Bibliography } from "./source.ts";

/** Texts that the tables of pigments rest on or are held against. */
export const PIGMENT_SOURCES = {
  "pigment-constitutions-memory": {
    citation:
      "Common names, chemical classes, formulae and years of pigments by Colour Index generic name, as handbooks give them, recalled without the text at hand.",
    standing: "memory",
    note: "A formula is of the pure compound; an organic pigment is named by its class.",
  },
  "cameo-weld": {
    citation:
      "Museum of Fine Arts, Boston. CAMEO: Conservation & Art Materials Encyclopedia Online, entry Weld (Reseda luteola) LC, https://cameo.mfa.org/wiki/Weld_(Reseda_luteola)_LC.",
    short: "CAMEO, Weld",
    standing: "read",
    note: "That the yellow of weld is Natural Yellow 2, and that its colorant is the flavonoid luteolin with its glycosides; read in an excerpt.",
  },
  "common-names-memory": {
    citation:
      "Common and historic names of pigments, as handbooks and the trade use them, recalled without the text at hand.",
    standing: "memory",
    note: "A name has often stood for more than one pigment: the row gives those that bear it by the Colour Index.",
  },
  "gardner-1911": {
    citation: "Gardner, H. A. (1911). Paint Technology and Tests. New York: McGraw-Hill.",
    standing: "read",
    note: "Specific gravities and oil of pigments, and that lithopone darkens in the sun. Public domain.",
  },
  "rivington-notes": {
    citation:
      "Rivington's Series of Notes on Building Construction, Part III: Materials. London: Rivingtons.",
    short: "Notes on Building Construction",
    standing: "read",
    note: "Which pigments fade in strong light, are hurt by impure air, or are transparent. Public domain.",
  },
  "field-chromatography": {
    citation: "Field, G. Chromatography; or, a Treatise on Colours and Pigments. London.",
    standing: "read",
    note: "Table I: pigments that light and air change. Public domain.",
  },
  "farnsworth-1922": {
    citation: "Farnsworth, S. (1922). Illumination and its Development in the Present Day.",
    standing: "read",
    note: "Which blues and violets are permanent. The year is from memory.",
  },
  "hobbs-1912": {
    citation: "Hobbs, W. H. (1912). Earth Features and their Meaning. New York: Macmillan.",
    standing: "read",
    note: "Specific gravities of common minerals. Public domain.",
  },
  "van-driel-2018": {
    citation:
      "Investigating the effect of artists' paint formulation on degradation rates of TiO2-based oil paints. Heritage Science, 6 (2018), Table 1.",
    short: "van Driel et al. 2018",
    standing: "read",
    note: "Densities that the authors convert volumes with.",
  },
  "oil-absorption-notes-2022": {
    citation:
      "What is oil absorption of pigment? A paint chemist's notes on ASTM D281 with a table of values (web page, 2022).",
    short: "a paint chemist's notes",
    standing: "read",
    note: "The values agree with those of paint handbooks; the page does not say which.",
  },
} as const satisfies Bibliography;
