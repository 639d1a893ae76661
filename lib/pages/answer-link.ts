import type { LinkView } from "../present/views.ts";
import type { AnswerLink, PagePlace } from "./page-context.ts";

/** A question, leading to its answer. */
export function answerLink(
  { slug, question, language }: AnswerLink,
  { root }: PagePlace,
): LinkView {
  return {
    text: question,
    href: `${root}answers/${slug}/`,
    ...(language !== undefined && { language }),
  };
}
