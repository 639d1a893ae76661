/** What parts are now, each as a hash. */
import { contentHash } from "./content-hash.ts";

/** Of a hash as it is kept: 144 bits, which are letters without a rest. A text cut out of a longer one would hold that. */
const HASH_BYTES = 18;

export function textHash(parts: Iterable<string>): string {
  return contentHash(parts).subarray(0, HASH_BYTES).toString("base64url");
}

/** Of things that are the same ones in the next build of the same process, as records whose files were left alone. */
const knownHashes = new WeakMap<object, string>();

/** Of a part as it is now. */
export function partHash(part: unknown): string {
  if (typeof part !== "object" || part === null) return textHash([partText(part)]);
  const hash = knownHashes.get(part) ?? textHash([partText(part)]);
  knownHashes.set(part, hash);
  return hash;
}

/** Any part as text, the same of what was made now and of what was kept. Of a function nothing is told: what it goes by is a part of its own. */
export function partText(part: unknown): string {
  return part === undefined ? "not there" : JSON.stringify(asJson(part));
}

/** What JSON tells nothing of, or at length, as something that it does: of bytes their hash. What it tells all of is itself, and not copied. */
function asJson(part: unknown): unknown {
  if (typeof part === "function") return { "a function": part.length };
  if (typeof part === "number" && !Number.isFinite(part)) return { "no number": String(part) };
  if (typeof part !== "object" || part === null) return part;
  if (Array.isArray(part)) return listAsJson(part);
  if (part instanceof Uint8Array) return { bytes: contentHash([part]).toString("hex") };
  if (ArrayBuffer.isView(part)) return { numbers: [...(part as Float64Array)] };
  if (part instanceof Map) return { "a map": asJson([...(part as ReadonlyMap<unknown, unknown>)]) };
  if (part instanceof Set) return { "a set": asJson([...(part as ReadonlySet<unknown>)]) };
  return membersAsJson(part as Readonly<Record<string, unknown>>);
}

function listAsJson(list: readonly unknown[]): readonly unknown[] {
  let told: unknown[] | undefined;
  for (let i = 0; i < list.length; i++) {
    const own = asJson(list[i]);
    if (own !== list[i]) (told ??= [...list])[i] = own;
  }
  return told ?? list;
}

function membersAsJson(thing: Readonly<Record<string, unknown>>): object {
  let told: Record<string, unknown> | undefined;
  for (const key of Object.keys(thing)) {
    const own = asJson(thing[key]);
    if (own !== thing[key]) (told ??= { ...thing })[key] = own;
  }
  return told ?? thing;
}

/** Whether JSON tells all of it, and quickly. */
export function isJson(part: unknown): boolean {
  if (typeof part === "number") return Number.isFinite(part);
  if (typeof part === "function") return false;
  if (typeof part !== "object" || part === null) return true;
  if (Array.isArray(part)) return part.every(isJson);
  if (part instanceof Map || part instanceof Set || ArrayBuffer.isView(part)) return false;
  return Object.values(part).every(isJson);
}
