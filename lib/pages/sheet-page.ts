import type { LinkView, SheetView } from "../present/views.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import { answerEntry } from "./answer-entry.ts";
import { evidenceSection } from "./evidence-section.ts";
import { dryingPart } from "./drying-view.ts";
import { handlingSection } from "./handling-section.ts";
import { hazardView } from "./label-view.ts";
import { jsonLd } from "./json-ld.ts";
import { labelTextView } from "./label-text.ts";
import { madeOf, madeOfText } from "./made-of.ts";
import { notesSection } from "./notes-section.ts";
import { notationsSection } from "./notations-section.ts";
import { mixturePart } from "./mixture-view.ts";
import { oilPart } from "./oil-view.ts";
import type { PageContext, PagePlace } from "./page-context.ts";
import { permanencePart } from "./permanence-view.ts";
import { pigmentSection } from "./pigment-view.ts";
import { rangeSection } from "./range-section.ts";
import { sheetFacts } from "./sheet-facts.ts";
import { sheetPanel } from "./sheet-panel.ts";
import { strengthSection } from "./strength-section.ts";
import { terms, type SheetPage } from "./section-views.ts";
import { pageHead } from "./site-frame.ts";
import { coloursLetDownIn } from "./colours-tinted-with.ts";
import { whitesSection } from "./whites-section.ts";

/** A colour's sheet, in reading order. */
export function sheetPage(
  worded: SheetTexts,
  revision: string,
  context: PageContext,
  place: PagePlace,
): SheetView {
  const { words } = context;
  const { sheet } = worded;
  const page: SheetPage = { context, worded, place, words };
  const text = words.pages.sheet;
  const panel = sheetPanel(worded, words, "panel");
  const hazard = hazardView(sheet.cautions, sheet.cautions, words, "#handling");
  const range = rangeSection(page);
  const notes = notesSection(page);
  const mixture = mixturePart(page);
  const questions = questionsSection(page);
  const head = pageHead(
    context,
    place,
    sheet.name,
    text.description(sheet.name, madeOfText(sheet, words)),
  );
  const recordDate = sheet.recordDate === undefined ? undefined : words.date(sheet.recordDate);
  return {
    kind: "sheet",
    ...head,
    jsonLd: jsonLd(sheet, context, head),
    name: sheet.name,
    madeOf: madeOf(sheet, words, place.root),
    ...(panel === undefined ? { noPanel: text.noPanel } : { panel }),
    sentence: oneSentence(sheet, context),
    facts: sheetFacts(worded, context),
    ...(hazard === undefined ? {} : { hazard }),
    ...(sheet.cautions.unknown.length === 0
      ? {}
      : { unknownHazard: words.pages.handling.unknown(sheet.cautions.unknown) }),
    // Of an oil that is not on record nobody can say that its rags keep cool.
    ...(sheet.vehicle === undefined || sheet.vehicle.oil !== undefined
      ? { ragLine: words.pages.ragLine }
      : {}),
    revision: text.revision(revision, recordDate),
    terms: terms(words, ["masstone", "tint", "Munsell", "oil index"]),
    contents: contents(page, {
      range: range !== undefined,
      mixture: mixture !== undefined,
      notes: notes !== undefined,
      questions: questions !== undefined,
    }),
    whites: whitesSection(page),
    strength: strengthSection(page),
    drying: dryingPart(page),
    permanence: permanencePart(page),
    ...(mixture === undefined ? {} : { mixture }),
    oil: oilPart(page),
    handling: handlingSection(page),
    pigment: pigmentSection(page),
    ...(notes === undefined ? {} : { notes }),
    ...(range === undefined ? {} : { range }),
    ...(questions === undefined ? {} : { questions }),
    label: labelTextView(page),
    notations: notationsSection(page),
    evidence: evidenceSection(page),
    downloads: [
      { text: "sheet.json", href: "sheet.json", note: words.pages.downloads.sheet },
      ...(sheet.notations.masstone?.curve === undefined
        ? []
        : [{ text: "masstone.csv", href: "masstone.csv", note: words.pages.downloads.reading }]),
    ],
  };
}

/** What a colour does in the whites; of a white, that others are let down in it. */
export function oneSentence(sheet: Sheet, { words, sheets }: PageContext): string {
  const text = words.pages.sheet;
  if (sheet.tints.length > 0)
    return words.tintSentence(
      sheet.tints.map(({ white, sentence }) => ({ white: white.name, ruling: sentence })),
    );
  const letDown = coloursLetDownIn(sheet.slug, sheets);
  return letDown.length > 0 ? text.whiteSentence(letDown.length) : text.noSentence;
}

/** Answers that name the colour. */
function questionsSection({
  context,
  worded: { sheet },
  words,
  place,
}: SheetPage): SheetView["questions"] {
  const naming = context.answers.filter(({ colours }) => colours.includes(sheet.slug));
  return naming.length === 0
    ? undefined
    : {
        id: "questions",
        heading: words.pages.sections.questions,
        answers: naming.map((answer) => answerEntry(answer, words, place)),
      };
}

function contents({ words }: SheetPage, present: Readonly<Record<string, boolean>>): LinkView[] {
  return Object.entries(words.pages.sections)
    .filter(([id]) => present[id] !== false)
    .map(([id, text]) => ({ text, href: `#${id}` }));
}
