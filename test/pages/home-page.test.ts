import { expect, test } from "vitest";
import { homePage } from "../../lib/pages/home-page.ts";
import { pagePlace, type PageContext } from "../../lib/pages/page-context.ts";
import { worked } from "../support/demonstration.ts";

test.each([
  ["four questions stand on the first page, and nothing says that there are more", 4, undefined],
  ["of five the fifth is among all of them, one page further", 5, "All 5 questions"],
])("%s", (_, count, more) => {
  const { context } = worked();
  const some: PageContext = { ...context, answers: context.answers.slice(0, count) };
  const { ask } = homePage(some, pagePlace("index.html"));
  expect(ask?.links).toHaveLength(4);
  expect(ask?.more?.text).toBe(more);
});
