import { answerColours, answerPath } from "../answers/answer-pages.ts";
import { replyFaults } from "../answers/answer-faults.ts";
import { renderedAnswer } from "../answers/rendered-answer.ts";
import { figureIndex, type FigureIndex } from "../claims/figure-index.ts";
import { claimDiagnostics, heldAnswer, type HeldAnswer } from "../claims/held-claims.ts";
import { recordRoots, type RootsOf } from "../claims/record-roots.ts";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { pagePlace, type AnswerLink, type PageContext } from "../pages/page-context.ts";

/** The answers of a workshop, held against its sheets. */
export interface SiteAnswers {
  readonly index: FigureIndex;
  readonly rootsOf: RootsOf;
  readonly held: readonly HeldAnswer[];
  readonly links: readonly AnswerLink[];
  /** Claims that do not hold, shortcodes and replies that lead nowhere. */
  readonly diagnostics: readonly Diagnostic[];
}

export function siteAnswers(context: PageContext): SiteAnswers {
  const { records, sheets } = context;
  const index = figureIndex(sheets.map(({ sheet }) => sheet));
  const rootsOf = recordRoots(index, records);
  const held = [...records.answers.values()].map((answer) =>
    heldAnswer(answer, index, rootsOf, records),
  );
  const each = held.map(({ answer, claims }) => {
    const { slug, record } = answer;
    const { summaryText, faults } = renderedAnswer(
      answer,
      context,
      pagePlace(answerPath(slug)),
      index,
    );
    const colours = answerColours(answer, claims);
    const link: AnswerLink = {
      slug,
      question: record.question,
      summary: summaryText,
      colours,
      ...(record.date === undefined ? {} : { date: record.date }),
      ...(record.theme === undefined ? {} : { theme: record.theme }),
      ...(answer.language === undefined ? {} : { language: answer.language }),
    };
    return {
      link,
      diagnostics: [
        ...claimDiagnostics({ answer, claims }),
        ...faults,
        ...replyFaults(answer, colours, index),
      ],
    };
  });
  return {
    index,
    rootsOf,
    held,
    links: each.map(({ link }) => link).toSorted(newestFirst),
    diagnostics: each.flatMap(({ diagnostics }) => diagnostics),
  };
}

/** Undated ones last; equals by slug, as they come. */
function newestFirst({ date: one = "" }: AnswerLink, { date: other = "" }: AnswerLink): number {
  return one > other ? -1 : one < other ? 1 : 0;
}
