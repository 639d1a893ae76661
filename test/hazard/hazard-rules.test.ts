import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { HAZARD_RULES } from "../../lib/hazard/classify/hazard-rules.ts";
import { HAZARD_SOURCES } from "../../lib/sources/hazard.ts";

const ROOM = new URL("../../lib/hazard/", import.meta.url);
const files = readdirSync(ROOM, { recursive: true, encoding: "utf8" })
  .filter((name) => name.endsWith(".ts"))
  .map((name) => ({
    name,
    text: readFileSync(new URL(name, ROOM), "utf8"),
  }));
const code = files
  .filter(({ name }) => !name.endsWith("hazard-rules.ts"))
  .map(({ text }) => text)
  .join("\n");

test("each rule of the list is ruled by somewhere, and stands once", () => {
  expect(HAZARD_RULES.length).toBeGreaterThan(60);
  expect(new Set(HAZARD_RULES).size).toBe(HAZARD_RULES.length);
  // "pictogram-not-stated" and its like are put together from their kind.
  const built = (rule: string) => /^(pictogram|supplement)-not-(stated|worked-out)$/.test(rule);
  expect(HAZARD_RULES.filter((rule) => !built(rule) && !code.includes(`"${rule}"`))).toEqual([]);
});

test("each source that the room names is in its bibliography, and none is idle", () => {
  const keys = Object.keys(HAZARD_SOURCES);
  const named = files.flatMap(({ text }) => [
    ...[...text.matchAll(/source: "([a-z0-9-]+)"/g)].map((match) => match[1] ?? ""),
    ...[...text.matchAll(/@source ([a-z0-9-]+(?:, [a-z0-9-]+)*)/g)].flatMap((match) =>
      (match[1] ?? "").split(", "),
    ),
  ]);
  expect(named.length).toBeGreaterThan(40);
  expect(named.filter((key) => !keys.includes(key))).toEqual([]);
  expect(keys.filter((key) => !code.includes(key))).toEqual([]);
});
