import { z } from "zod";
import type { RecordPath } from "./yaml-record.ts";

/** The keys that a schema knows at a path inside a record; those of every form where there are several. */
export function knownKeys(schema: z.ZodType, path: RecordPath): string[] {
  const here = unwrapped(schema);
  if (here instanceof z.ZodUnion)
    return [...new Set((here.options as z.ZodType[]).flatMap((option) => knownKeys(option, path)))];
  const [key, ...rest] = path;
  if (here instanceof z.ZodObject) {
    const shape = here.shape as Record<string, z.ZodType>;
    if (key === undefined) return Object.keys(shape);
    const inner = shape[String(key)];
    return inner === undefined ? [] : knownKeys(inner, rest);
  }
  if (here instanceof z.ZodRecord) {
    if (key !== undefined) return knownKeys(here.valueType as z.ZodType, rest);
    return here.keyType instanceof z.ZodEnum ? here.keyType.options.map(String) : [];
  }
  if (here instanceof z.ZodArray && key !== undefined)
    return knownKeys(here.element as z.ZodType, rest);
  return [];
}

function unwrapped(schema: z.ZodType): z.ZodType {
  return schema instanceof z.ZodOptional || schema instanceof z.ZodNullable
    ? unwrapped(schema.unwrap() as z.ZodType)
    : schema;
}
