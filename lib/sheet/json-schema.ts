/** JSON Schemas of what is published, put together of their parts. */

/** A JSON Schema of a plain part. */
export type Schema = Readonly<Record<string, unknown>>;

/** A member that may be left out. */
interface Maybe {
  readonly maybe: Schema;
}
type Members = Readonly<Record<string, Schema | Maybe>>;

export const TEXT = { type: "string" } as const;
export const NUMBER = { type: "number" } as const;
export const TEXTS = listOf(TEXT);
export const DATE = { type: "string", format: "date" } as const;

/** Lower-case hexadecimal digits, so many of them. */
export function hexadecimal(digits: number): Schema {
  return { type: "string", pattern: `^[0-9a-f]{${digits}}$` };
}

export function listOf<const S extends Schema>(items: S) {
  return { type: "array", items } as const;
}

/** Members of any name, each of one kind. */
export function mapOf(member: Schema): Schema {
  return { type: "object", additionalProperties: member };
}

export function maybe(schema: Schema): Maybe {
  return { maybe: schema };
}

/** Just these members, all of them but those that may be left out. */
export function closed(members: Members): Schema {
  return { type: "object", additionalProperties: false, ...membersOf(members) };
}

/** These members at the least. */
export function open(members: Members): Schema {
  return { type: "object", ...membersOf(members) };
}

function membersOf(members: Members): Schema {
  return {
    required: Object.keys(members).filter((key) => !isMaybe(members[key])),
    properties: Object.fromEntries(
      Object.entries(members).map(([key, one]) => [key, isMaybe(one) ? one.maybe : one]),
    ),
  };
}

function isMaybe(member: Schema | Maybe | undefined): member is Maybe {
  return member !== undefined && "maybe" in member;
}
