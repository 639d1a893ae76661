import { expect, test } from "vitest";
import { homePage } from "../../lib/pages/home-page.ts";
import { pagePlace, type PageContext } from "../../lib/pages/page-context.ts";
import { worked } from "../support/demonstration.ts";

const asked = (answers: PageContext["answers"], firstQuestions?: string[]) => {
  const { context } = worked();
  const workshop = { ...context.records.workshop, firstQuestions };
  const some = { ...context, answers, records: { ...context.records, workshop } };
  return homePage(some, pagePlace("index.html")).ask;
};

test.each([
  ["four questions stand on the first page, and nothing says that there are more", 4, undefined],
  ["of five the fifth is among all of them, one page further", 5, "All 5 questions"],
])("%s", (_, count, more) => {
  const ask = asked(worked().context.answers.slice(0, count));
  expect(ask?.links).toHaveLength(4);
  expect(ask?.more?.text).toBe(more);
});

test("the workshop says which stand there, and in which order", () => {
  const { answers } = worked().context;
  const first = [...answers.slice(5, 6), ...answers.slice(2, 3)];
  const ask = asked(
    answers,
    first.map(({ slug }) => slug),
  );
  expect(ask?.links.map(({ text }) => text)).toEqual(first.map(({ question }) => question));
  expect(ask?.more?.text).toBe(`All ${answers.length} questions`);
});
