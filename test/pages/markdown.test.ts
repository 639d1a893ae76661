import { expect, test } from "vitest";
import { markdownHtml } from "../../lib/pages/markdown.ts";

// basis: GitHub Flavored Markdown 4.10: a colon behind the dashes sets a column to the right.
test("a column set to the right is one of numbers, and no cell of a table has a style of its own", () => {
  const html = markdownHtml("| a | b | c |\n|:--|--:|:-:|\n| 1 | 2 | 3 |\n");
  expect(html).not.toContain("style");
  expect(html.match(/<t[hd][^>]*>./g)).toEqual([
    "<th>a",
    '<th class="number">b',
    "<th>c",
    "<td>1",
    '<td class="number">2',
    "<td>3",
  ]);
});
