import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { STATEMENTS_FILE, statementsList } from "../support/statements-list.ts";
import { SHEETS } from "./demonstration-sheets.ts";

/** A changed rule shows here as changed sentences: read them, then write the list by `npm run statements`. */
test("the list of statements holds what the demonstration's sheets state", () => {
  expect(readFileSync(STATEMENTS_FILE, "utf8")).toBe(statementsList(SHEETS));
});
