import { derived, practised, read, recalled, type Bibliography } from "./source.ts";

/** Texts that the oil, finish and batch figures rest on. */
export const FORMULATION_SOURCES = {
  "asbeck-van-loo-1949": derived(
    "Asbeck, W. K. & Van Loo, M. (1949). Critical pigment volume relationships. Industrial and Engineering Chemistry, 41, 1470-1475.",
    "The concept of the CPVC; its equation from oil absorption was read in two later texts, not in this paper.",
  ),
  "bierwagen-hay-1975": recalled(
    "Bierwagen, G. P. & Hay, T. K. (1975). The reduced pigment volume concentration as an important parameter in interpreting and predicting the properties of organic coatings. Progress in Organic Coatings, 3, 281-303.",
    "Reduced PVC as PVC over CPVC.",
  ),
  "hansen-lowinger-sadoff-1993": read(
    "Hansen, E. F., Lowinger, R. & Sadoff, E. (1993). Consolidation of porous paint in a vapor-saturated atmosphere. Journal of the American Institute for Conservation, 32(1).",
    "Above the critical concentration a film holds voids and turns matte and paler, abruptly.",
  ),
  "church-1915": read(
    "Church, A. H. (1901, 1915). The Chemistry of Paints and Painting. London: Seeley.",
    "Parts of oil to grind 100 parts of pigment by weight, after two authorities. Public domain.",
  ),
  "gettens-stout-1942": read(
    "Gettens, R. J. & Stout, G. L. (1942). Painting Materials: A Short Encyclopaedia. New York: Van Nostrand.",
    "Densities and some oil absorptions, read in a scanned copy of its tables; that concentrated mineral acids, and not cold dilute ones, take cadmium sulphide up with hydrogen sulphide, page 102.",
  ),
  "astm-d281": recalled(
    "ASTM D281. Standard Test Method for Oil Absorption of Pigments by Spatula Rub-out.",
    "By title.",
  ),
  "iso-787-5": recalled(
    "ISO 787-5. General methods of test for pigments and extenders. Part 5: Determination of oil absorption value.",
    "By title: palette knife.",
  ),
  "astm-d1483": recalled(
    "ASTM D1483. Standard Test Method for Oil Absorption of Pigments by Gardner-Coleman Method.",
    "By title; gives higher figures than the rub-out.",
  ),
  "iso-1524": recalled(
    "ISO 1524. Paints, varnishes and printing inks. Determination of fineness of grind.",
    "By title.",
  ),
  "iso-2813": recalled(
    "ISO 2813. Paints and varnishes. Determination of gloss value at 20 degrees, 60 degrees and 85 degrees.",
    "Gloss values and which angle suits; it sets no finish words.",
  ),
  "memory-formulation": recalled(
    "Handbook figures of the trade, recalled without the text at hand.",
    "Usable as a default where a workshop has no figure of its own.",
  ),
  "practice-formulation": practised(
    "Common practice of oil-colour making; no text.",
    "Rules of thumb of this project, to be overridden by the workshop's own readings.",
  ),
  "price-indication-98-6-ec": read(
    "Directive 98/6/EC on the indication of the prices of products offered to consumers, Articles 2(b) and 3: the unit price, the final price of one litre, beside the selling price, but where the two are the same; another single quantity where a Member State has that in general use.",
    "Article 3 and recital 8 were read, Article 2(b) is recalled. Germany has had the litre alone since 28 May 2022 (Preisangabenverordnung, § 5(1), read).",
    "Directive 98/6/EC",
  ),
  "packed-quantity-76-211-eec": derived(
    "Directive 76/211/EEC on the making-up by weight or by volume of certain prepackaged products, Annex I, 1, 2.4 and 2.5: contents no less than nominal on the mean, tolerable negative errors by nominal contents of 5 g or ml to 10 kg or l, no package short by more than twice that.",
    "The table and its rounding were read alike in two laws that carry it over, of Germany (Fertigpackungsverordnung, § 9(1), (3) and (4)) and of Austria (Fertigpackungsverordnung 1993, § 9(1) and § 10(2)); the directive itself was not at hand. Germany lets 2 in 100 be short by more than the tolerable error; elsewhere a sampling test decides.",
    "Directive 76/211/EEC",
  ),
} as const satisfies Bibliography;
