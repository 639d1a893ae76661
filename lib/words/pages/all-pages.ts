import type { Language } from "../../quantities/languages.ts";
import { saidIn, type Said } from "../texts.ts";
import { ANSWERS } from "./answers.ts";
import { BLACKS } from "./blacks.ts";
import { CARDS } from "./cards.ts";
import { CATALOGUE } from "./catalogue.ts";
import { CHANGES } from "./changes.ts";
import { COMPARE } from "./compare.ts";
import { DRYING } from "./drying.ts";
import { EVERY_PAGE } from "./every-page.ts";
import { EVIDENCE } from "./evidence.ts";
import { FOUND } from "./found.ts";
import { HANDLING } from "./handling.ts";
import { HOME } from "./home.ts";
import { HAZARD_NOTES } from "./hazard-notes.ts";
import { LISTING } from "./listing.ts";
import { LOTS } from "./lots.ts";
import { MIXING } from "./mixing.ts";
import { MIXTURE } from "./mixture.ts";
import { NEXT_STEPS } from "./next-steps.ts";
import { NOTATIONS } from "./notations.ts";
import { OIL } from "./oil.ts";
import { OPTICS } from "./optics.ts";
import { LABEL_REMARKS } from "./label-remarks.ts";
import { PACKAGE_LABELS } from "./package-labels.ts";
import { PAINT } from "./paint.ts";
import { PERMANENCE } from "./permanence.ts";
import { PHOTOGRAPHS } from "./photographs.ts";
import { PIGMENT } from "./pigment.ts";
import { PIGMENT_INDEX } from "./pigment-index.ts";
import { PIGMENTS } from "./pigments.ts";
import { RANGE } from "./range.ts";
import { SHEET } from "./sheet.ts";
import { SHEET_PAGE } from "./sheet-page.ts";
import { SHEET_PAPER } from "./sheet-paper.ts";
import { SOURCES } from "./sources.ts";
import { STRENGTH } from "./strength.ts";
import { WHITES } from "./whites.ts";
import { WORKSHOP } from "./workshop.ts";

/** Headings, captions and sentences of the pages that do not come from a science, a file a page; but what `declaredPage` of lib/pages is handed. */
const PAGES = {
  ...EVERY_PAGE,
  sheet: SHEET,
  whites: WHITES,
  strength: STRENGTH,
  drying: DRYING,
  permanence: PERMANENCE,
  oil: OIL,
  handling: HANDLING,
  pigmentIndex: PIGMENT_INDEX,
  pigment: PIGMENT,
  range: RANGE,
  notations: NOTATIONS,
  evidence: EVIDENCE,
  catalogue: CATALOGUE,
  pigments: PIGMENTS,
  home: HOME,
  sources: SOURCES,
  blacks: BLACKS,
  mixture: MIXTURE,
  compare: COMPARE,
  mixing: MIXING,
  paint: PAINT,
  listing: LISTING,
  photographs: PHOTOGRAPHS,
  workshop: WORKSHOP,
  found: FOUND,
  lots: LOTS,
  optics: OPTICS,
  hazardNotes: HAZARD_NOTES,
  sheetPage: SHEET_PAGE,
  sheetPaper: SHEET_PAPER,
  cards: CARDS,
  changes: CHANGES,
  packageLabels: PACKAGE_LABELS,
  labelRemarks: LABEL_REMARKS,
  nextSteps: NEXT_STEPS,
  answers: ANSWERS,
};

export type PageWords = Said<typeof PAGES>;

/** What pages say in a language. */
export function pageWords(language: Language): PageWords {
  return saidIn(language, PAGES);
}
