import { isPictogramCode } from "../hazard/classify/hazard-class.ts";
import type { PaintForm } from "../hazard/classify/frame.ts";
import {
  signalWordText,
  statementInLanguage,
  unknownToxicityText,
} from "../hazard/texts/hazard-statement-text.ts";
import type {
  HazardView,
  LabelLanguageView,
  LabelView,
  PictogramView,
  StatementView,
  TraceView,
} from "../present/handling-views.ts";
import { statementText } from "../present/statement-text.ts";
import { asMarkup } from "../present/views.ts";
import { percent } from "../words/en/statements-phrases.ts";
import type { Words } from "../words/words.ts";
import { pictogramSvg } from "../plots/pictogram.ts";
import type { Language } from "../records/schema/terms.ts";
import type {
  CautionsSection,
  HandledPart,
  LabelPart,
  StatementRuling,
} from "../sheet/handling/handling-sections.ts";
import { sourceLink, type PageContext, type PagePlace } from "./page-context.ts";

type Basis = Pick<CautionsSection, "frame" | "edition" | "basis" | "maker">;

/** The band of a label: nothing only where nothing is classified and everything known. */
export function hazardView(
  part: LabelPart,
  basis: Basis,
  form: PaintForm,
  words: Words,
  handlingHref?: string,
): HazardView | undefined {
  const statements = bandStatements(part, form, words.language);
  const gaps = [...part.gaps, ...part.notClassified].map((gap): StatementView => ({
    text: statementText(gap, words),
  }));
  if (part.signalWord === null && statements.length === 0 && gaps.length === 0) return undefined;
  return {
    ...(part.signalWord === null ? {} : { signalWord: words.signalWords[part.signalWord] }),
    pictograms: part.pictograms.flatMap((code): PictogramView[] =>
      isPictogramCode(code)
        ? [{ code, name: words.pictograms[code] ?? code, svg: asMarkup(pictogramSvg(code)) }]
        : [],
    ),
    statements: [...gaps, ...statements],
    basis: basisText(basis, words),
    ...(handlingHref === undefined ? {} : { handlingHref }),
  };
}

function basisText({ basis, frame, edition, maker }: Basis, words: Words): string {
  const text = words.pages.handling;
  return basis === "worked out"
    ? text.basisWorkedOut(frame, edition)
    : text.basisStated(frame, maker === undefined ? "" : words.date(maker.date));
}

/** Hazard and supplemental statements and the line on unknown acute toxicity, which is a label's own. */
function bandStatements(
  { hazardStatements, supplemental, sensitisers, unknownAcuteToxicity }: LabelPart,
  form: PaintForm,
  language: Language,
): StatementView[] {
  const shares = new Set(
    unknownAcuteToxicity.map(({ values }) => percent(Number(values["massFraction"]))),
  );
  return [
    ...hazardStatements.map((code) => statementView(code, language, form)),
    ...supplemental.map((code) => statementView(code, language, form, sensitisers)),
    ...[...shares].map((share) => textView(unknownToxicityText(share, language), language)),
  ];
}

/** A statement in a language; "H302+H332" is one statement of two texts. */
function statementView(
  code: string,
  language: Language,
  form: PaintForm,
  names: readonly string[] = [],
): StatementView {
  const texts = code.startsWith("P")
    ? [statementInLanguage(code, language, { form })]
    : code.split("+").map((single) => statementInLanguage(single, language, { names, form }));
  const missing = texts.some(({ translationMissing }) => translationMissing);
  return {
    code,
    ...textView(
      { text: texts.map(({ text }) => text).join(" "), translationMissing: missing },
      language,
    ),
  };
}

function textView(
  { text, translationMissing }: { readonly text: string; readonly translationMissing: boolean },
  language: Language,
): StatementView & { readonly isMissing?: true } {
  return {
    text,
    ...(translationMissing && language !== "en"
      ? { language: "en", isMissing: true as const }
      : {}),
  };
}

export interface LabelTexts {
  readonly heading: string;
  /** Said where nothing is classified and everything is known. */
  readonly nothing: string;
}

/** A whole label: band, precautions, the workshop's other languages, and why each statement stands there. */
export function labelView(
  part: LabelPart & Pick<HandledPart, "dataSheet">,
  basis: Basis,
  form: PaintForm,
  { heading, nothing }: LabelTexts,
  context: PageContext,
  place: PagePlace,
): LabelView {
  const { words, records } = context;
  const text = words.pages.handling;
  const hazard = hazardView(part, basis, form, words);
  const others = (records.workshop.languages ?? []).filter(
    (language) => language !== words.language,
  );
  const traces = (rulings: readonly StatementRuling[]): TraceView[] =>
    distinct(rulings.map((ruling) => traceView(ruling, context, place)));
  const [standing, leftOut] = [traces(part.traces), traces(part.leftOut)];
  return {
    heading,
    remarks: hazard === undefined ? [nothing] : [],
    ...(hazard === undefined ? {} : { hazard }),
    ...(part.classification.length === 0
      ? {}
      : { classification: text.classification(part.classification) }),
    precautionaryHeading: text.precautions,
    precautionary: part.precautionaryStatements.map((code) =>
      statementView(code, words.language, form),
    ),
    ...(others.length === 0 || isWordless(part)
      ? {}
      : {
          languages: {
            summary: text.languages(others),
            list: others.map((language) => languageView(part, form, language, words)),
            note: text.languageNote,
          },
        }),
    ...(part.dataSheet === undefined
      ? {}
      : { dataSheet: { text: text.dataSheet(undefined), href: part.dataSheet } }),
    ...tracesView(standing, leftOut, text),
  };
}

/** Where nothing stands on the label the list is of what does not, and its summary says so. */
function tracesView(
  standing: readonly TraceView[],
  leftOut: readonly TraceView[],
  text: Words["pages"]["handling"],
): Pick<LabelView, "traces"> {
  if (standing.length + leftOut.length === 0) return {};
  if (standing.length === 0)
    return {
      traces: { summary: text.leftOut, list: leftOut, leftOutHeading: text.leftOut, leftOut: [] },
    };
  return { traces: { summary: text.why, list: standing, leftOutHeading: text.leftOut, leftOut } };
}

function isWordless({
  signalWord,
  hazardStatements,
  supplemental,
  precautionaryStatements,
  unknownAcuteToxicity,
}: LabelPart): boolean {
  return (
    signalWord === null &&
    [hazardStatements, supplemental, precautionaryStatements, unknownAcuteToxicity].every(
      ({ length }) => length === 0,
    )
  );
}

function languageView(
  part: LabelPart,
  form: PaintForm,
  language: Language,
  words: Words,
): LabelLanguageView {
  const { signalWord, precautionaryStatements } = part;
  const remarked = (view: StatementView & { readonly isMissing?: true }): StatementView => {
    const { isMissing, ...plain } = view;
    return isMissing === true ? { ...plain, remark: translationRemark(language, words) } : plain;
  };
  return {
    language,
    name: words.pages.handling.languageNames[language] ?? language,
    ...(signalWord === null ? {} : { signalWord: signalWordText(signalWord, language).text }),
    statements: [
      ...bandStatements(part, form, language),
      ...precautionaryStatements.map((code) => statementView(code, language, form)),
    ].map(remarked),
  };
}

/** Said of a text that stands in English for want of its translation: in that language, and in the page's. */
export function translationRemark(
  language: Language,
  {
    pages: {
      handling: { toReview, toReviewPlain },
    },
  }: Words,
): string {
  const own = toReview[language];
  return own === undefined ? toReviewPlain : `${own}: ${toReviewPlain}`;
}

/** The rule's own text first, then the suppliers' papers that its ingredients were classified by. */
function traceView(ruling: StatementRuling, context: PageContext, place: PagePlace): TraceView {
  const keys = new Set([ruling.source, ...(ruling.shares ?? []).map(({ source }) => source)]);
  return {
    statement: ruling.statement,
    text: statementText(ruling, context.words),
    sources: [...keys].flatMap((key) =>
      key === undefined ? [] : [sourceLink(context, place)(key)],
    ),
  };
}

/** One ingredient's two like entries say one thing. */
function distinct(views: readonly TraceView[]): TraceView[] {
  return [...new Map(views.map((view) => [`${view.statement} ${view.text}`, view])).values()];
}
