import { answerSchema } from "./answer.ts";
import { colourSchema } from "./colour.ts";
import { lotSchema } from "./lot.ts";
import { pigmentSchema } from "./pigment.ts";
import { sourceSchema } from "./source.ts";
import { trialSchema } from "./trial.ts";
import { vehicleSchema } from "./vehicle.ts";

/** The form of each kind of record, by the folder that its files lie in; workshop.yaml is a kind by itself. */
export const RECORD_SCHEMAS = {
  pigments: pigmentSchema,
  vehicles: vehicleSchema,
  colours: colourSchema,
  sources: sourceSchema,
  answers: answerSchema,
  lots: lotSchema,
  trials: trialSchema,
} as const;
export type RecordFolder = keyof typeof RECORD_SCHEMAS;
