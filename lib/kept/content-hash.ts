import { createHash } from "node:crypto";

/** SHA-256 of some parts, each with its length first, so that no two lists of parts run together. */
export function contentHash(parts: Iterable<string | Uint8Array>): Buffer {
  const hash = createHash("sha256");
  for (const part of parts) hash.update(`${Buffer.byteLength(part)}:`).update(part);
  return hash.digest();
}
