import type { AnswerEntryView } from "../present/answer-views.ts";
import type { Words } from "../words/words.ts";
import type { AnswerLink, PagePlace } from "./page-context.ts";

/** A question with its short answer, leading to the whole one. */
export function answerEntry(
  { slug, question, summary, date, language }: AnswerLink,
  words: Words,
  { root }: PagePlace,
): AnswerEntryView {
  return {
    question,
    href: `${root}answers/${slug}/`,
    summary,
    ...(date === undefined ? {} : { date: words.date(date) }),
    ...(language === undefined ? {} : { language }),
  };
}
