import type { SearchDocument } from "../blocks/search-document.ts";
import type { PageContext } from "../pages/page-context.ts";
import { searchDocuments } from "../pages/search-documents.ts";
import { searchPartPath, searchParts } from "../pages/search-parts.ts";
import type { DataFile } from "./site.ts";

/** As scripts and not as JSON: a page opened from a folder may load the one and not the other. */
export function searchFiles(context: PageContext): DataFile[] {
  const documents = searchDocuments(context);
  const parts = [...searchParts(documents)];
  const letters = parts.map(([letter]) => letter);
  return parts.length === 0
    ? [{ path: "search-index.js", text: assigned("searchDocuments", documents) }]
    : [
        { path: "search-index.js", text: assigned("searchLetters", letters) },
        ...parts.map(([letter, part]) => ({
          path: searchPartPath(letter),
          text: added(letter, part),
        })),
      ];
}

function assigned(name: string, value: unknown): string {
  return `globalThis.${name}=${JSON.stringify(value)};\n`;
}

function added(letter: string, part: readonly SearchDocument[]): string {
  return `(globalThis.searchParts??={})[${JSON.stringify(letter)}]=${JSON.stringify(part)};\n`;
}
