import { z } from "zod";
import { answerSchema } from "./schema/answer.ts";
import { colourSchema } from "./schema/colour.ts";
import { lotSchema } from "./schema/lot.ts";
import { trialSchema } from "./schema/trial.ts";
import { pigmentSchema } from "./schema/pigment.ts";
import { sourceSchema } from "./schema/source.ts";
import { vehicleSchema } from "./schema/vehicle.ts";
import { workshopSchema } from "./schema/workshop.ts";

export interface NamedSchema {
  /** The kind of record or file: `pigment`. */
  readonly name: string;
  readonly schema: object;
}

/** The schemas that records are checked by, as JSON Schema for editors and other programs. */
export function recordSchemas(): NamedSchema[] {
  const records = {
    workshop: workshopSchema,
    pigment: pigmentSchema,
    vehicle: vehicleSchema,
    colour: colourSchema,
    source: sourceSchema,
    answer: answerSchema,
    lot: lotSchema,
    trial: trialSchema,
  };
  return Object.entries(records).map(([name, schema]) => ({
    name,
    schema: { title: name, ...z.toJSONSchema(schema, { io: "input" }) },
  }));
}
