import { z } from "zod";
import { RECORD_SCHEMAS } from "./schema/record-schemas.ts";
import { workshopSchema } from "./schema/workshop.ts";

export interface NamedSchema {
  /** The kind of record or file: `pigment`. */
  readonly name: string;
  readonly schema: object;
}

/** The schemas that records are checked by, as JSON Schema for editors and other programs. */
export function recordSchemas(): NamedSchema[] {
  const ofFolders = Object.entries(RECORD_SCHEMAS).map(
    ([folder, schema]) => [folder.replace(/s$/, ""), schema] as const,
  );
  return [["workshop", workshopSchema] as const, ...ofFolders].map(([name, schema]) => ({
    name,
    schema: { title: name, ...z.toJSONSchema(schema, { io: "input" }) },
  }));
}
