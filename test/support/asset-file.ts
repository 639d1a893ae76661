import { readdirSync } from "node:fs";
import { join, parse } from "node:path";

/**
 * Path below an output of one of its assets, whose name has a hash in it: `assets/styles/site.css` lies at
 * `assets/styles/site.b2083c7c4b.css`. Undefined where there is none.
 */
export function assetFile(dir: string, path: string): string | undefined {
  const { dir: folder, name, ext } = parse(path);
  const hashed = new RegExp(`^${name}\\.[0-9a-f]{10}\\${ext}$`);
  const found = readdirSync(join(dir, folder)).find((file) => hashed.test(file));
  return found === undefined ? undefined : `${folder}/${found}`;
}
