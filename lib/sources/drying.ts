import type { Bibliography } from "./source.ts";

/** Texts that the drying, layering and film-health rulings rest on. */
export const DRYING_SOURCES = {
  "wehlte-1975": {
    citation:
      "Wehlte, K. (1975). The Materials and Techniques of Painting. New York: Van Nostrand Reinhold, p. 65.",
    standing: "read",
    note: "Lead, cobalt and manganese compounds and Prussian blue speed the drying of oils; zinc white and vermilion retard it.",
  },
  "toch-1911": {
    citation: "Toch, M. (1911). Materials for Permanent Painting. New York: Van Nostrand.",
    standing: "read",
    note: "Lamp black in oil skins over and stays soft below.",
  },
  "rogala-2010": {
    citation:
      "Rogala, D., Lake, S., Maines, C. & Mecklenburg, M. (2010). Condition problems related to zinc oxide underlayers: examination of selected abstract expressionist paintings. Journal of the American Institute for Conservation. doi:10.1179/019713610804489937.",
    standing: "read",
    note: "Its abstract: deterioration of upper layers is linked to zinc oxide paint beneath them.",
  },
  "noble-boon-2007": {
    citation:
      "Noble, P. & Boon, J. J. (2007). Metal soap degradation of oil paintings: aggregates, increased transparency and efflorescence. AIC Paintings Specialty Group Postprints, 19, 1-15.",
    standing: "read",
    note: "Its abstract: lead- and zinc-containing oil paint may show protruding aggregates, increased transparency or efflorescence of metal soaps.",
  },
  "memory-drying": {
    citation: "Drying figures of the trade, recalled without the text at hand.",
    standing: "memory",
    note: "Days to touch dry of a thin film at 20-23 degrees C, and customary doses of driers.",
  },
  "practice-drying": {
    citation: "Common practice of oil painting and oil-colour making; no text.",
    standing: "practice",
    note: "Rules of thumb and class limits of this project; a workshop's own trial overrides them.",
  },
} as const satisfies Bibliography;
