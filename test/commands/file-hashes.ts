import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";

/** Every file below a folder with the hash of its bytes, in order of name; nothing where there is no folder. */
export function fileHashes(dir: string): Readonly<Record<string, string>> {
  if (!existsSync(dir)) return {};
  const files = readdirSync(dir, { recursive: true, encoding: "utf8" })
    .filter((file) => statSync(join(dir, file)).isFile())
    .sort();
  return Object.fromEntries(
    files.map((file) => [
      file,
      createHash("sha256")
        .update(readFileSync(join(dir, file)))
        .digest("hex"),
    ]),
  );
}
