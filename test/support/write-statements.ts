/** `npm run statements`: writes every sentence that the demonstration's sheets state into one file, to be read through when a rule changes. */
import { writeFileSync } from "node:fs";
import { loadRecords } from "../../lib/records/load-records.ts";
import { allSheets } from "../../lib/sheet/all-sheets.ts";
import { STATEMENTS_FILE, statementsList } from "./statements-list.ts";

const { records, diagnostics } = loadRecords("content");
if (records === undefined)
  throw new Error(`Unexpected faults of the demonstration: ${JSON.stringify(diagnostics)}`);
writeFileSync(STATEMENTS_FILE, statementsList(allSheets(records)));
process.stdout.write(`${STATEMENTS_FILE}\n`);
