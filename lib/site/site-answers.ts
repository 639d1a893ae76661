import { answerColours, answerPath } from "../answers/answer-pages.ts";
import { replyFaults } from "../answers/answer-faults.ts";
import { renderedAnswer } from "../answers/rendered-answer.ts";
import { figureIndex, type FigureIndex } from "../claims/figure-index.ts";
import {
  claimDiagnostics,
  heldAnswer,
  type FaultsOfAnswer,
  type HeldAnswer,
} from "../claims/held-claims.ts";
import { recordRoots, type RootsOf } from "../claims/record-roots.ts";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { madeStep, type Step } from "../kept/kept-steps.ts";
import { readWhenAsked } from "../kept/reads.ts";
import { pagePlace, type AnswerLink, type PageContext } from "../pages/page-context.ts";
import { certain } from "../quantities/at.ts";
import type { Answer } from "../records/records.ts";

/** The answers of a workshop, held against its sheets when they are asked for. */
export interface SiteAnswers {
  readonly index: FigureIndex;
  readonly rootsOf: RootsOf;
  readonly held: readonly HeldAnswer[];
  readonly heldOf: (slug: string) => HeldAnswer;
}

/** What every page may show of the answers, and what is wrong with them. */
export interface ToldAnswers {
  readonly answers: SiteAnswers;
  readonly links: readonly AnswerLink[];
  /** Claims that do not hold, shortcodes and replies that lead nowhere. */
  readonly diagnostics: readonly Diagnostic[];
}

const MODULES = ["lib/site/site-answers.ts", "lib/words/languages.ts"];

export function siteAnswers(context: PageContext): ToldAnswers {
  const answers = heldAnswers(context);
  const each = [...context.records.answers.values()].map((answer) =>
    toldOfAnswer(answer, answers, context),
  );
  return {
    answers,
    links: each.map(({ link }) => link).toSorted(newestFirst),
    diagnostics: each.flatMap(({ diagnostics }) => diagnostics),
  };
}

function heldAnswers({ records, sheets }: PageContext): SiteAnswers {
  const index = readWhenAsked(() =>
    figureIndex(
      sheets.map(({ sheet }) => sheet),
      sheets,
    ),
  );
  const rootsOf = readWhenAsked(() => recordRoots(index(), records));
  const held = new Map(
    [...records.answers].map(([slug, answer]) => [
      slug,
      readWhenAsked(() => heldAnswer(answer, index(), rootsOf(), records)),
    ]),
  );
  return {
    get index() {
      return index();
    },
    get rootsOf() {
      return rootsOf();
    },
    get held() {
      return [...held.values()].map((one) => one());
    },
    heldOf: (slug) => certain(held.get(slug))(),
  };
}

interface ToldOfAnswer {
  readonly link: AnswerLink;
  readonly diagnostics: readonly Diagnostic[];
}

/** As it was kept, unless something in its text was wrong: such a complaint names its line, which is nothing that a step reads. */
function toldOfAnswer(answer: Answer, answers: SiteAnswers, context: PageContext): ToldOfAnswer {
  const step: Step = { modules: MODULES, name: "answers", of: answer.slug };
  const read = readWhenAsked(() => answerAsRead(answer, answers, context));
  const { link, claims, isSound } = madeStep(context.steps, step, () => ({
    link: read().link,
    claims: read().claims,
    isSound: read().inText.length === 0,
  }));
  return {
    link,
    diagnostics: [...claimDiagnostics({ answer, claims }), ...(isSound ? [] : read().inText)],
  };
}

interface AnswerAsRead extends Pick<ToldOfAnswer, "link">, Pick<FaultsOfAnswer, "claims"> {
  /** Shortcodes and a reply that lead nowhere. */
  readonly inText: readonly Diagnostic[];
}

function answerAsRead(
  answer: Answer,
  { heldOf, index }: SiteAnswers,
  context: PageContext,
): AnswerAsRead {
  const { slug, record } = answer;
  const { claims } = heldOf(slug);
  const place = pagePlace(answerPath(slug));
  const { summaryText, faults } = renderedAnswer(answer, context, place, index);
  const colours = answerColours(answer, claims);
  return {
    link: {
      slug,
      question: record.question,
      summary: summaryText,
      colours,
      ...(record.date !== undefined && { date: record.date }),
      ...(record.theme !== undefined && { theme: record.theme }),
      ...(answer.language !== undefined && { language: answer.language }),
    },
    claims: claims.map((one) => ({
      faults: one.faults,
      ...(one.newest !== undefined && { newest: one.newest }),
    })),
    inText: [...faults, ...replyFaults(answer, colours, index)],
  };
}

/** Undated ones last; equals by slug, as they come. */
function newestFirst({ date: one = "" }: AnswerLink, { date: other = "" }: AnswerLink): number {
  return one > other ? -1 : one < other ? 1 : 0;
}
