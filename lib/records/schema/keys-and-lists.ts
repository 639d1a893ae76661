import { z } from "zod";

/** A key that a record may leave out, and what is said of it. */
export function optional<S extends z.ZodType>(schema: S, said: string): z.ZodOptional<S> {
  return schema.optional().describe(said);
}

/** A list in which nothing stands twice. @param what stands in it: "market". */
export function eachOnce<S extends z.ZodArray>(list: S, what: string): S {
  return list.refine(
    (members: readonly unknown[]) => new Set(members).size === members.length,
    `each ${what} once`,
  );
}

/** A list of which each member has these keys and no others. */
export function listOf<const S extends z.ZodRawShape>(keys: S) {
  return z.array(z.strictObject(keys));
}
