import { derived, read, recalled, type Bibliography } from "./source.ts";

/** Texts that labels to stick and their numbers go by. */
export const LABEL_SOURCES = {
  "gs1-check-digit": read(
    "GS1. How to calculate a check digit manually: positions, weights of 3 and 1, and a worked example.",
    "A second worked example is that of GS1 Sweden, Så beräknas kontrollsiffran.",
  ),
  "clp-label-sizes": read(
    "Regulation (EC) No 1272/2008 (CLP), Annex I, 1.2.1.3 and 1.2.1.4: Table 1.3, smallest label and smallest pictogram by the capacity of the package.",
    "Read in a public copy of the text. The official text is the Official Journal's.",
    "CLP, Annex I, 1.2.1",
  ),
  "clp-letter-sizes": derived(
    "Regulation (EU) 2024/2865 amending CLP, Annex I, 1.2.1.4 and 1.2.1.5: smallest letters by the capacity of the package, black on white, lines 120 % of the size of the letters apart, one face without serifs.",
    "Worked from what several commentaries print of the letters alike, and from what BG BAU, the German statutory accident insurance of the building trade, prints of 1.2.1.5; the text itself was not at hand. Smaller letters on an inner package of at most 10 ml are allowed there and not used here. Its application was put off to 1 January 2028 (announced by the Council on 17 November 2025), and its simplification is under discussion.",
    "Regulation (EU) 2024/2865",
  ),
  "clp-fold-out": derived(
    "Regulation (EU) 2024/2865 amending CLP, Article 31(1) and (1a) and Annex I, 1.2.1.6: what front, inside and back pages of a fold-out label bear. Article 31(1): a label may be one.",
    "Article 31(1a) was read in a public copy; the lists of 1.2.1.6 were worked from what commentaries print of them alike and from an example that one takes over from the European Chemicals Agency; the text itself was not at hand. On the front: name, pictograms, signal word in every language, contents, supplier, UFI, that there is more inside in words or by a symbol, and the codes of its languages; inside, by language and with its code at the top of each page, all but pictograms and supplier; on the back what is on the front without the codes. The professional association BG BAU has fold-out labels allowed without condition from 1 July 2026; before, the German helpdesk allowed them only where the whole surface did not hold one language.",
    "CLP, Annex I, 1.2.1.6",
  ),
  "iso-15420-memory": recalled(
    "ISO/IEC 15420 and the GS1 General Specifications: an EAN-13 symbol is 95 modules wide with 11 of quiet zone before and 7 behind; a module is 0.33 mm, and prints from 80 to 200 % of that.",
    "Recalled without the text at hand; the symbol's bars come from a library.",
  ),
} as const satisfies Bibliography;
