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
  "pizzimenti-2022": {
    citation:
      "Pizzimenti, S., Bernazzani, L., Tinè, M. R., Duce, C. & Bonaduce, I. (2022). Unravelling the effect of carbon black in the autoxidation mechanism of polyunsaturated oils. Journal of Thermal Analysis and Calorimetry, 147, 5451-5462. doi:10.1007/s10973-021-11165-8.",
    standing: "read",
    note: "Its summary: amorphous carbon is an antioxidant in oil paint and inhibits the radical chain.",
  },
  "saitzyk-1998": {
    citation:
      "Saitzyk, S. L. (1987, revised 1998). Art Hardware: The Definitive Guide to Artists' Materials, on drying rates.",
    standing: "read",
    note: "Slowest: carbon blacks, cadmiums, vermilion, alizarin crimson, zinc white, Vandyke brown; faster: colours of cobalt and of manganese, the umbers.",
  },
  "old-hand-hints": {
    citation: "An Old Hand. Hints for Painters, Decorators and Paper-Hangers.",
    standing: "read",
    note: "Lamp black dries very slowly in oil; the black of burnt oil wants driers. Public domain.",
  },
  "short-drying-tests": {
    citation:
      "Short, M. Pigment tests: swatches in linseed oil on a canvas pad, looked at every twelve hours (a painter's web page).",
    short: "a painter's drying tests",
    standing: "read",
    note: "Four siennas were dry in 23 to 67 hours, two bone blacks in 4 and 8 days; film and room are not told.",
  },
  "memory-drying": {
    citation: "Drying figures of the trade, recalled without the text at hand.",
    standing: "memory",
    note: "Days to touch dry of a thin film at 20–23 °C, and customary doses of driers.",
  },
  "practice-drying": {
    citation: "Common practice of oil painting and oil-colour making; no text.",
    standing: "practice",
    note: "Rules of thumb and class limits of this project; a workshop's own trial overrides them.",
  },
} as const satisfies Bibliography;
