import type { SectionBlock } from "../blocks/block.ts";
import type { TextPageView } from "../blocks/page-kinds.ts";
import { pageHead } from "./site-frame.ts";
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
