import { answerReply } from "../answers/answer-pages.ts";
import { claimTable } from "../answers/claim-table.ts";
import type { FigureIndex } from "../claims/figure-index.ts";
import type { HeldAnswer, HeldClaim } from "../claims/held-claims.ts";
import type { SectionBlock } from "../blocks/block.ts";
import type { WorkshopPageView } from "../blocks/page-kinds.ts";
import { contentsOf, section, tables } from "../blocks/section-blocks.ts";
import type { PageContext, PagePlace } from "../pages/page-context.ts";
import { workshopPage } from "./workshop-frame.ts";

export function workshopAnswerPath(slug: string): string {
  return `answers/${slug}/index.html`;
}

/** A question of customers: the reply to send, and every claim that the answer rests on, the unpublished ones too. */
export function workshopAnswerPage(
  held: HeldAnswer,
  context: PageContext,
  place: PagePlace,
  index: FigureIndex,
): WorkshopPageView {
  const { answer: text } = context.words.pages.workshop;
  const { question } = held.answer.record;
  const reply = answerReply(held, context, index);
  const claims = (id: string, heading: string, of: readonly HeldClaim[]): SectionBlock[] =>
    section(id, heading, tables(of.length === 0 ? [] : [claimTable(of, context, index)]));
  const sections = [
    ...claims(
      "claims",
      text.claims,
      held.claims.filter(({ isPrivate }) => !isPrivate),
    ),
    ...claims(
      "private-claims",
      text.privateClaims,
      held.claims.filter(({ isPrivate }) => isPrivate),
    ),
  ];
  return {
    ...workshopPage(context, {
      heading: question,
      description: text.description(question),
      back: { text: text.back, href: place.root },
      lead: [],
      sections,
    }),
    contents: [...contentsOf(sections), { text: reply.heading, href: "#reply" }],
    reply,
  };
}
