import { cautionLine } from "./caution-line.ts";
import type { KeyBlock } from "../blocks/block.ts";
import type { Words } from "../words/words.ts";
import type { LinkView, SiteView, PageView } from "../present/views.ts";
import { dateText } from "../present/date-text.ts";
import { LANGUAGE_NAMES } from "../words/languages.ts";
import { languageFolder, pageLanguages } from "./page-languages.ts";
import { hasMixing } from "./mixing-data.ts";
import { shortAddress, wholeAddress, type PageContext, type PagePlace } from "./page-context.ts";
import { given } from "../quantities/given.ts";

/** The frame of one page: navigation, standing lines, the key to standings. */
export function siteFrame(context: PageContext, { path, root }: PagePlace): SiteView {
  const { words, records, date } = context;
  const { pages } = words;
  const { workshop } = records;
  const link = (text: string, href: string): LinkView => ({
    text,
    href: `${root}${href}`,
    ...(path.startsWith(href) && { current: true }),
  });
  return {
    workshop: workshop.name,
    language: words.language,
    ownTexts: context.ownTexts,
    root,
    top: topOf(context, root),
    home: {
      text: workshop.name,
      href: root === "" ? "./" : root,
      ...(path === "index.html" && { current: true }),
    },
    nav: given([
      link(pages.nav.colours, "colours/"),
      records.answers.size !== 0 && link(pages.nav.answers, "answers/"),
      link(pages.nav.compare, "compare/"),
      hasMixing(context) && link(pages.nav.mix, "bench/"),
      link(pages.nav.pigments, "pigments/"),
      link(pages.nav.methods, "methods/"),
    ]),
    search: { ...pages.search, href: `${root}colours/` },
    more: [
      link(pages.nav.label, "label/"),
      link(pages.nav.sources, "sources/"),
      link(pages.nav.about, "about/"),
    ],
    words: pages.frame,
    ...(workshop.demonstration === true && { demonstration: pages.demonstration }),
    ragLine: pages.ragLine,
    cautionLine: cautionLine(context),
    build: pages.build(dateText(date, words)),
    ...(workshop.contact !== undefined && { contact: workshop.contact }),
    standings: standingsKey(words).standings,
    translations: translationsOf(context, { path, root }),
  };
}

/** How each figure is known: a mark and a word for each, with what it means. */
export function standingsKey({ pages, standings }: Words): KeyBlock {
  return {
    kind: "key",
    heading: pages.frame.standingsHeading,
    standings: (["measured", "derived", "estimated", "stated", "not stated"] as const).map(
      (kind) => ({ kind, ...standings[kind] }),
    ),
  };
}

/** Once for all languages, at whatever address somebody was lost. */
export const NOT_FOUND_PATH = "404.html";

/** From a page to the folder of the whole site, where styles, scripts and pictures lie for all its languages. */
export function topOf({ folder }: Pick<PageContext, "folder">, root: string): string {
  return folder === "" ? root : `${root}../`;
}

/** The same page in each language of the site; none where there is one language. */
function translationsOf(context: PageContext, { path, root }: PagePlace): SiteView["translations"] {
  const languages = pageLanguages(context.records.workshop);
  if (languages.length === 1 || path === NOT_FOUND_PATH) return [];
  return languages.map((language) => {
    const folder = languageFolder(language, context.records.workshop);
    const href = `${topOf(context, root)}${folder}${shortAddress(path)}`;
    return {
      language,
      text: LANGUAGE_NAMES[language],
      href,
      alternate: wholeAddress({ records: context.records, folder }, path) ?? href,
      ...(language === context.words.language && { current: true }),
    };
  });
}

/** What every page says of itself. */
export function pageHead(
  context: PageContext,
  { path }: PagePlace,
  heading: string,
  description: string,
): Pick<PageView, "title" | "heading" | "description" | "canonical"> {
  const address = wholeAddress(context, path);
  return {
    title: context.words.pages.title(heading, context.records.workshop.name),
    heading,
    description,
    ...(address !== undefined && { canonical: address }),
  };
}
