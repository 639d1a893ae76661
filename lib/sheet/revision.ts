import { createHash } from "node:crypto";

/**
 * Eight hex digits that change when anything a sheet says changes: its content
 * with dates left out, keys in order.
 */
export function revision(content: unknown): string {
  return createHash("sha256")
    .update(JSON.stringify(undated(content)))
    .digest("hex")
    .slice(0, 8);
}

/** Sixteen hex digits of some content, dates and all: whether a file would come out the same. */
export function contentKey(content: string | Uint8Array): string {
  return createHash("sha256").update(content).digest("hex").slice(0, 16);
}

function undated(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(undated);
  if (typeof value !== "object" || value === null) return value;
  const own = value as Readonly<Record<string, unknown>>;
  const inOrder: Record<string, unknown> = {};
  for (const key of Object.keys(own).sort())
    if (!IS_DATE.test(key)) inOrder[key] = undated(own[key]);
  return inOrder;
}

const IS_DATE = /date$/i;
