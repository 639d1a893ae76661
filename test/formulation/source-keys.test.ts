/** Every text that the oil, drying and permanence rooms cite stands in their part of the bibliography, and every text there is cited. */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { DRYING_SOURCES } from "../../lib/sources/drying.ts";
import { FORMULATION_SOURCES } from "../../lib/sources/formulation.ts";
import { PERMANENCE_SOURCES } from "../../lib/sources/permanence.ts";

const ROOMS = {
  formulation: FORMULATION_SOURCES,
  drying: DRYING_SOURCES,
  permanence: PERMANENCE_SOURCES,
};

describe.each(Object.entries(ROOMS))("%s", (room, sources) => {
  const folder = new URL(`../../lib/${room}/`, import.meta.url);
  const text = readdirSync(folder)
    .map((file) => readFileSync(new URL(file, folder), "utf8"))
    .join("\n");
  const quoted = [...text.matchAll(/"([a-z0-9]+(?:-[a-z0-9]+)+)"/g)]
    .map(([, key]) => key ?? "")
    .filter(isKeyLike);
  const inDocs = [...text.matchAll(/@source ([a-z]+(?:-[a-z0-9]+)+)/g)].map(([, key]) => key ?? "");

  test("cites only texts of its own", () => {
    expect(quoted.length).toBeGreaterThan(0);
    for (const key of [...quoted, ...inDocs]) expect(Object.keys(sources)).toContain(key);
  });
  test("lists no text that nothing cites", () => {
    for (const key of Object.keys(sources)) expect(text, key).toContain(key);
  });
});

/** A key ends in a year, a standard's number, or the room it is a memory or practice of; other words in quotes do not. */
function isKeyLike(key: string): boolean {
  return /^(memory|practice)-|^(astm|iso)-|-\d{4}$/.test(key);
}
