import { practised, read, recalled, type Bibliography } from "./source.ts";

/** Texts that the drying, layering and film-health rulings rest on. */
export const DRYING_SOURCES = {
  "wehlte-1975": read(
    "Wehlte, K. (1975). The Materials and Techniques of Painting. New York: Van Nostrand Reinhold, p. 65.",
    "Lead, cobalt and manganese compounds and Prussian blue speed the drying of oils; zinc white and vermilion retard it.",
  ),
  "toch-1911": read(
    "Toch, M. (1911). Materials for Permanent Painting. New York: Van Nostrand.",
    "Lamp black in oil skins over and stays soft below.",
  ),
  "rogala-2010": read(
    "Rogala, D., Lake, S., Maines, C. & Mecklenburg, M. (2010). Condition problems related to zinc oxide underlayers: examination of selected abstract expressionist paintings. Journal of the American Institute for Conservation. doi:10.1179/019713610804489937.",
    "Its abstract: deterioration of upper layers is linked to zinc oxide paint beneath them.",
  ),
  "noble-boon-2007": read(
    "Noble, P. & Boon, J. J. (2007). Metal soap degradation of oil paintings: aggregates, increased transparency and efflorescence. AIC Paintings Specialty Group Postprints, 19, 1-15.",
    "Its abstract: lead- and zinc-containing oil paint may show protruding aggregates, increased transparency or efflorescence of metal soaps.",
  ),
  "pizzimenti-2022": read(
    "Pizzimenti, S., Bernazzani, L., Tinè, M. R., Duce, C. & Bonaduce, I. (2022). Unravelling the effect of carbon black in the autoxidation mechanism of polyunsaturated oils. Journal of Thermal Analysis and Calorimetry, 147, 5451-5462. doi:10.1007/s10973-021-11165-8.",
    "Its summary: amorphous carbon is an antioxidant in oil paint and inhibits the radical chain.",
  ),
  "saitzyk-1998": read(
    "Saitzyk, S. L. (1987, revised 1998). Art Hardware: The Definitive Guide to Artists' Materials, on drying rates.",
    "Slowest: carbon blacks, cadmiums, vermilion, alizarin crimson, zinc white, Vandyke brown; faster: colours of cobalt and of manganese, the umbers.",
  ),
  "old-hand-hints": read(
    "An Old Hand. Hints for Painters, Decorators and Paper-Hangers.",
    "Lamp black dries very slowly in oil; the black of burnt oil wants driers. Public domain.",
  ),
  "short-drying-tests": read(
    "Short, M. Pigment tests: swatches in linseed oil on a canvas pad, looked at every twelve hours (a painter's web page).",
    "Four siennas were dry in 23 to 67 hours, two bone blacks in 4 and 8 days; film and room are not told.",
    "a painter's drying tests",
  ),
  "memory-drying": recalled(
    "Drying figures of the trade, recalled without the text at hand.",
    "Days to touch dry of a thin film at 20–23 °C, and customary doses of driers.",
  ),
  "practice-drying": practised(
    "Common practice of oil painting and oil-colour making; no text.",
    "Rules of thumb and class limits of this project; a workshop's own trial overrides them.",
  ),
} as const satisfies Bibliography;
