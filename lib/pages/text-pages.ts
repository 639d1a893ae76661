import {
  asMarkup,
  type AboutView,
  type MethodsView,
  type NotFoundView,
  type ProseSectionView,
  type SourcesView,
} from "../present/views.ts";
import { MEASURED_ERRORS } from "../optics/fit/measured-errors.ts";
import { markdownHtml } from "./markdown.ts";
import { pageHead } from "./site-frame.ts";
import type { PageContext, PagePlace } from "./page-context.ts";
import { sourceEntry } from "./source-entry.ts";
import { terms } from "./section-views.ts";

export function methodsPage(context: PageContext, place: PagePlace): MethodsView {
  const { words } = context;
  const text = words.pages.methods;
  return {
    kind: "methods",
    ...pageHead(context, place, text.heading, text.lead),
    lead: [text.lead],
    standingsHeading: words.pages.frame.standingsHeading,
    contents: text.sections.map(([id, heading]) => ({ text: heading, href: `#${id}` })),
    sections: text.sections.map(([id, heading, prose]) =>
      proseSection([
        id,
        heading,
        id === "tints" ? `${prose}\n\n${text.measured(MEASURED_ERRORS)}` : prose,
      ]),
    ),
    terms: terms(words, Object.keys(words.trade)),
  };
}

function proseSection([id, heading, prose]: readonly [string, string, string]): ProseSectionView {
  return { id, heading, body: asMarkup(markdownHtml(prose)), tables: [], sources: [] };
}

/** The bibliography: what these sheets use, then what the engine knows beside. */
export function sourcesPage(context: PageContext, place: PagePlace): SourcesView {
  const { words, records, sheets } = context;
  const text = words.pages.sources;
  const usedBy = new Map<string, { text: string; href: string }[]>();
  for (const { sheet, plain } of sheets) {
    for (const key of new Set(
      plain.evidence.map(({ source }) => source).filter((source) => typeof source === "string"),
    )) {
      usedBy.set(key, [
        ...(usedBy.get(key) ?? []),
        { text: sheet.name, href: `${place.root}colours/${sheet.slug}/evidence/#sources` },
      ]);
    }
  }
  const entries = [...records.sources].sort(([one], [other]) => (one < other ? -1 : 1));
  const group = (id: string, heading: string, wanted: (key: string) => boolean) => ({
    id,
    heading,
    entries: entries
      .filter(([key]) => wanted(key))
      .map(([key, source]) => sourceEntry(key, source, words, fewLinks(usedBy.get(key) ?? []))),
  });
  return {
    kind: "sources",
    ...pageHead(context, place, text.heading, text.lead),
    lead: [text.lead],
    groups: [
      group("used", text.groups.used, (key) => usedBy.has(key)),
      group("other", text.groups.other, (key) => !usedBy.has(key)),
    ].filter((one) => one.entries.length > 0),
  };
}

/** A source that every sheet uses is better said so than listed forty times. */
const MOST_LINKS = 6;
function fewLinks(
  links: readonly { text: string; href: string }[],
): readonly { text: string; href: string }[] {
  return links.length > MOST_LINKS ? [] : links;
}

export function aboutPage(context: PageContext, place: PagePlace): AboutView {
  const { words, records } = context;
  const text = words.pages.about;
  const lead = records.workshop.about ?? text.lead(records.workshop.name);
  return {
    kind: "about",
    ...pageHead(context, place, text.heading, text.lead(records.workshop.name)),
    lead: [lead, text.revision(context.revision)],
    sections: text.sections.map(proseSection),
  };
}

export function notFoundPage(context: PageContext, place: PagePlace): NotFoundView {
  const text = context.words.pages.notFound;
  return {
    kind: "not-found",
    ...pageHead(context, place, text.heading, text.lead),
    lead: [text.lead],
    links: [{ text: text.link, href: `${place.root}colours/` }],
  };
}
