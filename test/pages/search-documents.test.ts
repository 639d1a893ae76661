/** Names of the trade by Colour Index name: generic, from memory; nothing of ours says which pigment bears them. */
import { expect, test } from "vitest";
import { searchDocuments } from "../../lib/pages/search-documents.ts";
import { worked } from "../support/demonstration.ts";

test.each([
  ["ivory black", "colours/bone-black/"],
  ["mars black", "colours/iron-oxide-black/"],
  ["flake white", "colours/lead-white/"],
  ["Venetian red", "colours/red-iron-oxide/"],
  ["terre verte", "colours/green-earth/"],
  ["ivory black", "pigments/bone-black/"],
])("%s is found at %s, and not at the other black", (name, href) => {
  const documents = searchDocuments(worked().context);
  const found = documents.filter(({ words }) => words.includes(name)).map((one) => one.href);
  expect(found).toContain(href);
  expect(found).not.toContain("colours/lamp-black/");
});

test("an answer is found by the words of its question, each at its own address", () => {
  const { context } = worked();
  const titles = new Map(searchDocuments(context).map(({ href, title }) => [href, title]));
  expect(context.records.answers.size).toBeGreaterThan(20);
  for (const { slug, record } of context.records.answers.values())
    expect(titles.get(`answers/${slug}/`), slug).toBe(record.question);
});

/** Words that painters ask by; which answer tells of each, a person judged. */
test.each([
  [["lightfast"], "answers/will-it-last/"],
  [["toxic"], "answers/children-pregnancy-and-rags/"],
  [["turpentine"], "answers/can-i-work-without-solvent/"],
  [["cadmium", "free"], "answers/what-replaces-cadmium/"],
])("a question by %j finds its answer", (words, href) => {
  const found = searchDocuments(worked().context).filter((one) =>
    words.every((word) => `${one.title} ${one.words}`.toLowerCase().includes(word)),
  );
  expect(found.map((one) => one.href)).toContain(href);
});
