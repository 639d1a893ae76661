import type { SheetContent } from "../present/views.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import { coloursLetDownIn } from "./colours-tinted-with.ts";
import { dryingPart } from "./drying-view.ts";
import { handlingSection } from "./handling-section.ts";
import { hazardView } from "./label-view.ts";
import { madeOf, madeOfText, withMediumNote } from "./made-of.ts";
import { mixturePart } from "./mixture-view.ts";
import { notationsSection } from "./notations-section.ts";
import { oilPart } from "./oil-view.ts";
import type { PageContext, PagePlace } from "./page-context.ts";
import { permanencePart } from "./permanence-view.ts";
import type { SheetPage } from "./section-views.ts";
import { sheetPanel } from "./sheet-panel.ts";
import { pageHead } from "./site-frame.ts";
import { sixFacts } from "./six-facts.ts";
import { strengthSection } from "./strength-section.ts";
import { whitesSection } from "./whites-section.ts";

/** What a printed sheet is laid out from. */
export function sheetContent(
  worded: SheetTexts,
  revision: string,
  context: PageContext,
  place: PagePlace,
): SheetContent {
  const { words } = context;
  const { sheet } = worded;
  const page: SheetPage = { context, worded, place, words };
  const text = words.pages.sheet;
  const panel = sheetPanel(worded, words, "panel");
  const hazard = hazardView(sheet.cautions, sheet.cautions, words, "#handling");
  const mixture = mixturePart(page);
  return {
    ...pageHead(context, place, sheet.name, text.description(sheet.name, madeOfText(sheet, words))),
    name: sheet.name,
    madeOf: madeOf(sheet, words, place.root),
    ...(panel === undefined ? { noPanel: text.noPanel } : { panel }),
    sentence: oneSentence(sheet, context),
    facts: sixFacts(worded, context),
    ...(hazard === undefined ? {} : { hazard }),
    ...(sheet.cautions.unknown.length === 0
      ? {}
      : { unknownHazard: words.pages.handling.unknown(sheet.cautions.unknown) }),
    // Of an oil that is not on record nobody can say that its rags keep cool.
    ...(sheet.vehicle === undefined || sheet.vehicle.oil !== undefined
      ? { ragLine: words.pages.ragLine }
      : {}),
    revision: text.revision(
      revision,
      sheet.recordDate === undefined ? undefined : words.date(sheet.recordDate),
    ),
    whites: whitesSection(page),
    strength: strengthSection(page),
    drying: dryingPart(page),
    permanence: permanencePart(page),
    ...(mixture === undefined ? {} : { mixture }),
    oil: oilPart(page),
    handling: handlingSection(page),
    notations: notationsSection(page),
  };
}

/** What a colour does in the whites, with its figures; of a white, that others are let down in it. */
export function oneSentence(sheet: Sheet, { words, sheets }: PageContext): string {
  const text = words.pages.sheet;
  const letDown = coloursLetDownIn(sheet.slug, sheets);
  const sentence =
    sheet.tints.length > 0
      ? words.tintSentence(
          sheet.tints.map((tint) => ({ white: tint.white.name, ruling: tint.sentence })),
        )
      : letDown.length > 0
        ? text.whiteSentence(letDown.length)
        : text.noSentence;
  return withMediumNote(sentence, sheet, words);
}
