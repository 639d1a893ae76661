import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";

/** SHA-256 of some parts, each with its length first, so that no two lists of parts run together. */
export function contentHash(parts: Iterable<string | Uint8Array>): Buffer {
  const hash = createHash("sha256");
  for (const part of parts) hash.update(`${Buffer.byteLength(part)}:`).update(part);
  return hash.digest();
}

/** The hash of what a file holds, in base64url. */
export function fileHash(file: string): string {
  return contentHash([readFileSync(file)]).toString("base64url");
}
