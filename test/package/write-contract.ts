/** `npm run contract`: heads an entry of CONTRACT.md with the state of today and writes into it what came to what other programs read. */
import { readFileSync, writeFileSync } from "node:fs";
import { SCHEMA_VERSION } from "../../lib/site/schema-version.ts";
import {
  contractState,
  entryPoints,
  FORM_FILE,
  formChanges,
  publishedForm,
} from "./published-form.ts";
import { withEntry } from "./contract-entry.ts";

const now = publishedForm();
const changes = formChanges(readFileSync(FORM_FILE, "utf8").trim().split("\n"), now);
const contract = readFileSync("CONTRACT.md", "utf8");
writeFileSync(
  "CONTRACT.md",
  withEntry(contract, {
    version: SCHEMA_VERSION,
    state: contractState(),
    points: entryPoints(changes),
    breaks: changes.breaks,
  }),
);
writeFileSync(FORM_FILE, `${now.join("\n")}\n`);
process.stdout.write("CONTRACT.md\n");
