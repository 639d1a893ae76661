import { isPictogramCode } from "../hazard/classify/hazard-class.ts";
import type {
  HazardView,
  LabelLanguageView,
  LabelView,
  PictogramView,
  StatementView,
  TraceView,
} from "../present/handling-views.ts";
import { labelModel, type LabelLine } from "../present/label-model.ts";
import { statementText } from "../present/statement-text.ts";
import type { Words } from "../words/words.ts";
import { pictogramSvg } from "../plots/pictogram.ts";
import type { Language } from "../quantities/languages.ts";
import type {
  CautionsSection,
  HandledPart,
  LabelPart,
  StatementRuling,
} from "../sheet/handling/handling-sections.ts";
import { sourceLink, type PageContext, type PagePlace } from "./page-context.ts";
import { given } from "../quantities/given.ts";

/** What a label goes by: reckoned in a frame, or the maker's word. */
export type LabelBasis = Pick<CautionsSection, "frame" | "edition" | "basis" | "maker">;

/** The band of a label: nothing only where nothing is classified, everything known and no metal to be named. */
export function hazardView(
  part: LabelPart,
  basis: LabelBasis,
  words: Words,
  handlingHref?: string,
): HazardView | undefined {
  const { signalWord, gaps, metals, hazards } = labelModel(part, words.language, words);
  if (signalWord === undefined && hazards.length === 0 && gaps.length + metals.length === 0)
    return undefined;
  return {
    ...(signalWord !== undefined && { signalWord }),
    pictograms: part.pictograms.flatMap((code): PictogramView[] =>
      isPictogramCode(code)
        ? [{ code, name: words.pictograms[code] ?? code, svg: pictogramSvg(code) }]
        : [],
    ),
    statements: [...gaps, ...metals, ...hazards].map((line) => lineView(line, words.language)),
    basis: part.unknown.length > 0 ? words.pages.handling.basisUnknown : basisText(basis, words),
    ...(handlingHref !== undefined && { handlingHref }),
  };
}

function basisText({ basis, frame, edition, maker }: LabelBasis, words: Words): string {
  const text = words.pages.handling;
  const by = words.factWords[frame] ?? frame;
  return basis === "worked out"
    ? text.basisWorkedOut(by, words.factWords[edition] ?? edition)
    : text.basisStated(by, maker === undefined ? "" : words.date(maker.date));
}

/** A line where a page of `language` prints it: marked where the text is in another one. */
function lineView({ code, text, language }: LabelLine, around: Language): StatementView {
  return {
    ...(code !== undefined && { code }),
    text,
    ...(language !== around && { language }),
  };
}

interface LabelTexts {
  readonly heading: string;
  /** Said where nothing is classified and everything is known. */
  readonly nothing: string;
}

/** A whole label: band, precautions, the workshop's other languages, and why each statement stands there. */
export function labelView(
  part: LabelPart & Pick<HandledPart, "dataSheet">,
  basis: LabelBasis,
  { heading, nothing }: LabelTexts,
  context: PageContext,
  place: PagePlace,
): LabelView {
  const { words, records } = context;
  const text = words.pages.handling;
  const { substances, precautions } = labelModel(part, words.language, words);
  const hazard = hazardView(part, basis, words);
  const others = (records.workshop.languages ?? []).filter(
    (language) => language !== words.language,
  );
  const traces = (rulings: readonly StatementRuling[]): TraceView[] =>
    distinct(rulings.map((ruling) => traceView(ruling, context, place)));
  const [standing, leftOut] = [traces(part.traces), traces(part.leftOut)];
  return {
    heading,
    remarks: given([
      hazard === undefined && nothing,
      substances !== undefined && substances.text,
      ...part.packaging.map((one) => statementText(one, words)),
    ]),
    ...(hazard !== undefined && { hazard }),
    ...(part.classification.length > 0 && {
      classification: text.classification(part.classification),
    }),
    precautionaryHeading: text.precautions,
    precautionary: precautions.map((line) => lineView(line, words.language)),
    ...(others.length === 0 || !isPrinted(part)
      ? {}
      : {
          languages: {
            summary: text.languages(others),
            list: others.map((language) => languageView(part, language, words)),
            note: text.languageNote,
          },
        }),
    ...(part.dataSheet !== undefined && {
      dataSheet: { text: text.dataSheet(undefined), href: part.dataSheet },
    }),
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

/** Whether there is a label to print in further languages: what nobody has classified has none yet. */
export function isPrinted({
  signalWord,
  hazardStatements,
  supplemental,
  precautionaryStatements,
  unknownAcuteToxicity,
  notClassified,
  unknown,
}: LabelPart): boolean {
  return (
    unknown.length === 0 &&
    (signalWord !== null ||
      [
        hazardStatements,
        supplemental,
        precautionaryStatements,
        unknownAcuteToxicity,
        notClassified,
      ].some(({ length }) => length > 0))
  );
}

function languageView(part: LabelPart, language: Language, words: Words): LabelLanguageView {
  const { signalWord, substances, metals, hazards, precautions } = labelModel(
    part,
    language,
    words,
  );
  const contents = substances === undefined ? [] : [substances];
  return {
    language,
    name: words.pages.handling.languageNames[language] ?? language,
    ...(signalWord !== undefined && { signalWord }),
    statements: [...contents, ...metals, ...hazards, ...precautions].map((line) => ({
      ...lineView(line, language),
      ...(line.isMissing && { remark: translationRemark(language, words) }),
    })),
  };
}

/** Said of a text that stands in English for want of its translation: in that language, and in the page's. */
export function translationRemark(language: Language, { colon, pages }: Words): string {
  const { toReview, toReviewPlain } = pages.handling;
  const own = toReview[language];
  return own === undefined ? toReviewPlain : `${own}${colon}${toReviewPlain}`;
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
