/** `npm run schemas`: writes the records' schemas for editors into assets/schema, from the ones that records are checked by. */
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { EDITOR_SCHEMAS, editorSchemas } from "./editor-schemas.ts";

mkdirSync(EDITOR_SCHEMAS, { recursive: true });
for (const { file, text } of editorSchemas()) {
  writeFileSync(join(EDITOR_SCHEMAS, file), text);
  process.stdout.write(`${join(EDITOR_SCHEMAS, file)}\n`);
}
