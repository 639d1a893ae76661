import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import {
  listFilesInManifest,
  MANIFEST_KINDS,
  type OutputKind,
} from "../../lib/site/output-manifest.ts";

/** The least that the output folder knows for a site of ours. */
export function writeSmallSite(dir: string, text: string, kind: OutputKind = "site"): void {
  mkdirSync(join(dir, "colours"), { recursive: true });
  writeFileSync(join(dir, "index.html"), text);
  writeFileSync(join(dir, "colours", `${text}.html`), text);
  writeFileSync(join(dir, "manifest.json"), JSON.stringify({ kind: MANIFEST_KINDS[kind], text }));
  listFilesInManifest(dir);
}

export function smallPdf(text: string): string {
  return `%PDF-1.7\n${text}\n<pdf:Producer>Mullstone</pdf:Producer>\n%%EOF`;
}
