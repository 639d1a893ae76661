import type { EntriesBlock } from "../blocks/block.ts";
import type { TextPageView } from "../blocks/page-kinds.ts";
import { section } from "../blocks/section-blocks.ts";
import type { AnswerLink, PageContext, PagePlace } from "../pages/page-context.ts";
import { ownColour } from "../pages/screen-swatch.ts";
import { textPage } from "../pages/text-page.ts";
import { THEMES } from "../records/schema/terms.ts";
import { onePage } from "../pages/page-kind.ts";

/** Every answer, theme by theme. */
export function answerIndex(context: PageContext, place: PagePlace): TextPageView {
  const { words, answers } = context;
  const text = words.pages.answers;
  return textPage(context, place, {
    heading: text.heading,
    description: text.lead,
    lead: answers.length === 0 ? [text.lead, text.none] : [text.lead],
    sections: themed(answers, context, place),
  });
}

function themed(answers: readonly AnswerLink[], context: PageContext, place: PagePlace) {
  const { themes } = context.words.pages.answers;
  return [...THEMES, undefined].flatMap((theme) =>
    section(theme ?? "others", themes[theme ?? "others"], [
      ...entriesOf(
        answers.filter((answer) => answer.theme === theme),
        context,
        place,
      ),
    ]),
  );
}

function entriesOf(
  answers: readonly AnswerLink[],
  context: PageContext,
  { root }: PagePlace,
): EntriesBlock[] {
  if (answers.length === 0) return [];
  return [
    {
      kind: "entries",
      entries: answers.map(({ slug, question, summary, colours, language }) => ({
        heading: question,
        href: `${root}answers/${slug}/`,
        text: firstSentence(summary),
        ...(language !== undefined && { language }),
        colours: colours.slice(0, MOST_COLOURS).flatMap((colour) => {
          const sheet = context.sheets.find((one) => one.sheet.slug === colour)?.sheet;
          return ownColour(sheet?.notations.masstone) ?? [];
        }),
      })),
    },
  ];
}
const MOST_COLOURS = 6;

function firstSentence(text: string): string {
  return /^.*?[.!?](?=\s+\p{Lu}|$)/su.exec(text)?.[0] ?? text;
}

export const ANSWER_INDEX = onePage(
  "answers/index.html",
  answerIndex,
  ({ records }) => records.answers.size > 0,
);
