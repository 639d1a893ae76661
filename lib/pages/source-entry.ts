import type { Source } from "../sources/source.ts";
import type { LinkView, SourceEntryView } from "../present/views.ts";
import type { Words } from "../words/words.ts";

export function sourceEntry(
  key: string,
  source: Source,
  words: Words,
  usedBy: readonly LinkView[],
): SourceEntryView {
  return {
    id: `source-${key}`,
    citation: source.citation,
    standing: words.pages.sources.standings[source.standing] ?? source.standing,
    ...(source.note !== undefined && { note: source.note }),
    usedBy,
  };
}
