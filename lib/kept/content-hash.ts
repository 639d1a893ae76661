import { createHash, hash as hashAtOnce, type Hash } from "node:crypto";
import { readFileSync } from "node:fs";

/** SHA-256 of some parts, each with its length first, so that no two lists of parts run together. */
export function contentHash(parts: Iterable<string | Uint8Array>): Buffer {
  let hash: Hash | undefined;
  // Texts that follow each other are handed over as one: most are short, and each hand-over takes longer than they do.
  let text = "";
  for (const part of parts) {
    text += `${Buffer.byteLength(part)}:`;
    if (typeof part === "string") text += part;
    else {
      hash ??= createHash("sha256");
      hash.update(text).update(part);
      text = "";
    }
  }
  return hash?.update(text).digest() ?? hashAtOnce("sha256", text, "buffer");
}

/** The hash of what a file holds, in base64url. */
export function fileHash(file: string): string {
  return contentHash([readFileSync(file)]).toString("base64url");
}
