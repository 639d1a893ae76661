import type { SectionBlock } from "../blocks/block.ts";
import { linksOf, section } from "../blocks/section-blocks.ts";
import type { TextPageView } from "../blocks/page-kinds.ts";
import { madeStep } from "../kept/kept-steps.ts";
import { MEASURED_COVERAGE } from "../optics/fit/measured-coverage.ts";
import { MEASURED_ERRORS } from "../optics/fit/measured-errors.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import type { LinkView } from "../present/views.ts";
import { LABELS_PAGE } from "./label-page.ts";
import type { PageContext, PagePlace } from "./page-context.ts";
import { languageFolder, pageLanguages } from "./page-languages.ts";
import { NOT_FOUND_PATH, standingsKey } from "./site-frame.ts";
import { sourceEntry } from "./source-entry.ts";
import type { PageKind } from "./page-kind.ts";
import { declaredPage, textPage } from "./text-page.ts";
import { ABOUT } from "../words/pages/about.ts";
import { METHODS } from "../words/pages/methods.ts";
import { SOURCES } from "../words/pages/sources.ts";
import { proseSection } from "./prose-section.ts";
import { WORDS } from "../words/languages.ts";
import { slugOrder } from "../quantities/name-order.ts";
import { grouped } from "../quantities/grouped.ts";

const METHODS_PAGE = declaredPage("methods/index.html", METHODS, (text, { words, records }) => ({
  description: text.lead,
  opening: [standingsKey(words)],
  sections: text.sections.map(([id, heading, prose]) =>
    proseSection([
      id,
      heading,
      id === "tints"
        ? [
            prose,
            text.measured(MEASURED_ERRORS, records.workshop.demonstration === true),
            text.coverage(MEASURED_COVERAGE),
          ].join("\n\n")
        : prose,
    ]),
  ),
  close: [
    {
      kind: "terms",
      terms: Object.entries(words.trade).map(([term, gloss]) => ({ term, gloss })),
    },
  ],
}));

/** The bibliography: what these sheets use, then what the engine knows beside. */
const SOURCES_PAGE = declaredPage("sources/index.html", SOURCES, (text, context, place) => {
  const { words, records, sheets } = context;
  const usedBy = grouped(
    sheets.flatMap((worded) => {
      const { name, slug, keys } = sourcesOf(worded, context);
      const link = { text: name, href: `${place.root}colours/${slug}/evidence/#sources` };
      return keys.map((key) => [key, link] as const);
    }),
  );
  const entries = [...records.sources].sort(([one], [other]) => slugOrder(one, other));
  const group = (id: string, heading: string, wanted: (key: string) => boolean): SectionBlock[] => {
    const own = entries
      .filter(([key]) => wanted(key))
      .map(([key, source]) => sourceEntry(key, source, words, fewLinks(usedBy.get(key) ?? [])));
    return section(id, heading, own.length === 0 ? [] : [{ kind: "sources", entries: own }]);
  };
  return {
    description: text.lead,
    sections: [
      ...group("used", text.groups.used, (key) => usedBy.has(key)),
      ...group("other", text.groups.other, (key) => !usedBy.has(key)),
    ],
  };
});

/** What a sheet goes by, asked of it once for as long as it stays as it is. */
function sourcesOf(
  { sheet, inShort }: SheetTexts,
  { steps }: PageContext,
): { readonly name: string; readonly slug: string; readonly keys: readonly string[] } {
  const { slug } = sheet;
  return madeStep(steps, { modules: MODULES, name: "sources of sheets", of: slug }, () => ({
    name: sheet.name,
    slug,
    keys: [...inShort.sources],
  }));
}

const MODULES = ["lib/pages/text-pages.ts", "lib/words/languages.ts"];

/** A source that every sheet uses is better said so than listed forty times. */
const MOST_LINKS = 6;
function fewLinks(links: readonly LinkView[]): readonly LinkView[] {
  return links.length > MOST_LINKS ? [] : links;
}

const ABOUT_PAGE = declaredPage(
  "about/index.html",
  ABOUT,
  (text, { records: { workshop }, revision }) => {
    const description = text.lead(workshop.name);
    return {
      description,
      lead: [workshop.about ?? description, text.revision(revision)],
      sections: text.sections.map((one) => proseSection(one)),
    };
  },
);

function notFoundPage(context: PageContext, place: PagePlace): TextPageView {
  const text = context.words.pages.notFound;
  return textPage(context, place, {
    heading: text.heading,
    description: text.lead,
    opening: linksOf([
      { text: text.link, href: `${place.root}colours/` },
      ...inOtherLanguages(context, place),
    ]),
    sections: [],
  });
}

/** The same to whoever was lost in another language's folder: there is one such page for all. */
function inOtherLanguages({ records, words }: PageContext, { root }: PagePlace): LinkView[] {
  const languages = pageLanguages(records.workshop).filter((one) => one !== words.language);
  return languages.map((language) => {
    const { heading, link } = WORDS[language].pages.notFound;
    const href = `${root}${languageFolder(language, records.workshop)}colours/`;
    return { text: `${heading}. ${link}`, href, language };
  });
}

/** The server may show it at any depth, so that its links start at the site's own folder. */
export const NOT_FOUND_PAGE: PageKind<TextPageView> = {
  pages: ({ context }) => [
    {
      path: NOT_FOUND_PATH,
      root: context.records.siteBase,
      view: (place) => notFoundPage(context, place),
    },
  ],
};

/** Pages to read through that a site has once. */
export const TEXT_PAGES = [METHODS_PAGE, LABELS_PAGE, SOURCES_PAGE, ABOUT_PAGE];
