/** What changed from one publishing to the next: kept in the manifest, and told to readers of feeds. */
import { escapedMarkup } from "../exchange/escaped-markup.ts";
import type { ChangedThing } from "../changes/changes-between.ts";
import type { PastChange } from "../changes/published-state.ts";
import { wholeAddress, type PageContext } from "../pages/page-context.ts";
import { changeSentences } from "../present/change-text.ts";

export const FEED_PATH = "feed.xml";

/** Newest entries that a manifest keeps. */
const MOST_ENTRIES = 100;

/** Earlier changes with those of today before them; undated records have none to tell of. */
export function allChanges(
  changed: readonly ChangedThing[],
  past: readonly PastChange[],
  { words, date }: Pick<PageContext, "words" | "date">,
): PastChange[] {
  if (date === undefined) return past.slice(0, MOST_ENTRIES);
  const today = changed.map((thing): PastChange => ({
    date,
    address: `${thing.what === "colour" ? "colours" : "answers"}/${thing.slug}/`,
    title: thing.name,
    sentences: changeSentences(thing, words),
  }));
  return [...today, ...past].slice(0, MOST_ENTRIES);
}

/**
 * Changes as an Atom feed (RFC 4287): an entry for each page and day, told apart by both.
 * @returns undefined for a site without a whole address, since every entry has to have one
 */
export function feed(changes: readonly PastChange[], context: PageContext): string | undefined {
  const { words, records, date } = context;
  const own = wholeAddress(context, FEED_PATH);
  const home = wholeAddress(context, "index.html");
  if (own === undefined || home === undefined || date === undefined) return undefined;
  const entries = changes.flatMap(({ date: day, address, title, sentences }) => {
    const page = wholeAddress(context, `${address}index.html`);
    return page === undefined
      ? []
      : [
          ` <entry>
  <title>${escapedMarkup(title)}</title>
  <id>${escapedMarkup(`${page}#${day}`)}</id>
  <link href="${escapedMarkup(page)}"/>
  <updated>${day}T00:00:00Z</updated>
  <content type="text">${escapedMarkup(sentences.join("\n"))}</content>
 </entry>
`,
        ];
  });
  return `<?xml version="1.0" encoding="UTF-8"?>
<feed xmlns="http://www.w3.org/2005/Atom" xml:lang="${words.language}">
 <title>${escapedMarkup(words.pages.changes.feedTitle(records.workshop.name))}</title>
 <id>${escapedMarkup(own)}</id>
 <link rel="self" type="application/atom+xml" href="${escapedMarkup(own)}"/>
 <link rel="alternate" type="text/html" href="${escapedMarkup(home)}"/>
 <updated>${changes[0]?.date ?? date}T00:00:00Z</updated>
 <author><name>${escapedMarkup(records.workshop.name)}</name></author>
${entries.join("")}</feed>
`;
}
