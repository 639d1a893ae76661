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
