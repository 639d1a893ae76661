import { recordSchemas } from "../../lib/records/json-schemas.ts";

/** Where the demonstration's records look for their schemas. */
export const EDITOR_SCHEMAS = "assets/schema";

/** The schema files that should stand there. */
export function editorSchemas(): { readonly file: string; readonly text: string }[] {
  return recordSchemas().map(({ name, schema }) => ({
    file: `${name}.schema.json`,
    text: `${JSON.stringify(schema, null, 2)}\n`,
  }));
}
