import type { SectionBlock } from "../blocks/block.ts";
import type { TextPageView } from "../blocks/page-kinds.ts";
import { pageHead } from "./site-frame.ts";
import { saidIn, type Said, type Texts } from "../words/texts.ts";
import type { Language } from "../quantities/languages.ts";
import type { InEach } from "../words/in-each.ts";
import type { PageContext, PagePlace } from "./page-context.ts";

/** What a page to read through says; the rest follows. */
interface TextPage extends Partial<
  Pick<TextPageView, "back" | "revision" | "opening" | "close" | "lead">
> {
  readonly heading: string;
  /** Of search engines, and the lead where none is given. */
  readonly description: string;
  readonly sections: readonly SectionBlock[];
}

/** A page to read through: contents are listed where there is more than one section. */
export function textPage(
  context: PageContext,
  place: PagePlace,
  { heading, description, sections, ...rest }: TextPage,
): TextPageView {
  return {
    kind: "text",
    ...pageHead(context, place, heading, description),
    lead: [description],
    opening: [],
    close: [],
    contents:
      sections.length > 1
        ? sections.map(({ id, heading: text }) => ({ text, href: `#${id}` }))
        : [],
    sections,
    ...rest,
  };
}

/** A page to read through that a site has once, with the words that are its own. */
export interface DeclaredPage {
  /** All that it alone says. */
  readonly said: (language: Language) => object;
  readonly filled: (context: PageContext, place: PagePlace) => TextPageView;
}

/** A page declared by what it says, in rows, and by what it is made of, told in the language of the page. */
export function declaredPage<T extends Texts & { readonly heading: InEach }>(
  texts: T,
  made: (text: Said<T>, context: PageContext, place: PagePlace) => Omit<TextPage, "heading">,
): DeclaredPage {
  return {
    said: (language) => saidIn(language, texts),
    filled: (context, place) => {
      const { language } = context.words;
      return textPage(context, place, {
        heading: texts.heading[language],
        ...made(saidIn(language, texts), context, place),
      });
    },
  };
}
