import { join } from "node:path";
import { expect, test } from "vitest";
import { STATEMENTS_FILE, statementsList } from "../support/statements-list.ts";
import { sheets } from "../support/demonstration.ts";

/** A changed rule shows here as changed sentences: `npm run statements` writes the list, and each new line is to be read. */
test("the list of statements holds what the demonstration's sheets state", async () => {
  await expect(statementsList(sheets())).toMatchFileSnapshot(
    join(import.meta.dirname, "../..", STATEMENTS_FILE),
  );
});
