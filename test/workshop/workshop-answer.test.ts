import { expect, test } from "vitest";
import { siteOf } from "../../lib/site/site-of-records.ts";
import { SMALLEST_WORKSHOP } from "../support/content-folder.ts";
import { soundRecords } from "../support/sound-records.ts";

// Plain logic and no source: a list of contents leads down the page, and the reply is its last part.
test("the contents of an answer's page stand in the order of its parts", () => {
  const records = soundRecords({
    ...SMALLEST_WORKSHOP,
    "answers/how-black.md": `---
question: How black is it?
summary: As lamp black is.
claims:
  - { fact: lamp-black.pigments, includes: lamp-black }
---
As lamp black is.
`,
  });
  const page = siteOf(records, undefined)
    .workshop({ isPrinted: false, printedCards: undefined })
    .pages.find(({ path }) => path === "answers/how-black/index.html");
  const view = page?.view.kind === "workshop" ? page.view : undefined;
  expect(view?.contents.map(({ href }) => href)).toEqual(["#claims", "#reply"]);
});
