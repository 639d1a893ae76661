import type { SectionBlock } from "../blocks/block.ts";
import type { TextPageView } from "../blocks/page-kinds.ts";
import { pageHead } from "./site-frame.ts";
import type { Said, Texts } from "../words/texts.ts";
import type { InEach } from "../words/in-each.ts";
import type { PageContext, PagePlace } from "./page-context.ts";
import { pageWithRows, type PageKind } from "./page-kind.ts";

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

/** A page to read through that a site has once, declared by what it says, in rows, and by what it is made of, told in the language of the page. */
export function declaredPage<T extends Texts & { readonly heading: InEach }>(
  path: string,
  rows: T,
  made: (text: Said<T>, context: PageContext, place: PagePlace) => Omit<TextPage, "heading">,
): PageKind<TextPageView> {
  return pageWithRows(path, rows, (text, context, place) =>
    textPage(context, place, {
      heading: rows.heading[context.words.language],
      ...made(text, context, place),
    }),
  );
}
