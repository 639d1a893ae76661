import { expect, test } from "vitest";
import { RULE } from "./added-kinds.ts";
import { moduleTexts, unnamedExports } from "./unnamed-exports.ts";

test("every rule there is, and all else that its science exports, is named by some module", () => {
  const modules = moduleTexts(".");
  const ofRules = modules.map(({ file }) => file).filter((file) => RULE.isOf.test(file));
  expect(ofRules.length).toBeGreaterThan(100);
  expect(unnamedExports(ofRules, modules)).toEqual([]);
});

test("which tells one that is named in its own file, in another, and in none", () => {
  const rules = { file: "lib/drying/a.ts", text: "export const RULES = [blooming];" };
  const defects = {
    file: "lib/drying/b.ts",
    text: "export function blooming() {}\nexport const LIMIT = 3;\nexport function bloomings() { return LIMIT; }\n",
  };
  const unnamed = (file: string): string[] =>
    unnamedExports([file], [rules, defects]).map(({ name }) => name);
  expect(unnamed(defects.file)).toEqual(["bloomings"]);
  expect(unnamed(rules.file)).toEqual(["RULES"]);
});
