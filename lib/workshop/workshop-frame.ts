import type { WorkshopPageView } from "../blocks/page-kinds.ts";
import { contentsOf } from "../blocks/section-blocks.ts";
import type { SiteView, PageView } from "../present/views.ts";
import type { PageContext, PagePlace } from "../pages/page-context.ts";
import { siteFrame } from "../pages/site-frame.ts";

/** The frame of a page of the workshop's own: ways among these pages alone, no search, no address to the public ones. */
export function workshopFrame(
  context: PageContext,
  place: PagePlace,
  sections: readonly { readonly text: string; readonly href: string }[],
): SiteView {
  const { search: _, ...frame } = siteFrame(context, place);
  const text = context.words.pages.workshop;
  return {
    ...frame,
    isWorkshop: true,
    workshop: text.name(context.records.workshop.name),
    nav: sections.map(({ text: name, href }) => ({
      text: name,
      href: `${place.root}${href}`,
      ...(place.path.startsWith(href) && !href.includes("#") && { current: true }),
    })),
    more: [],
    translations: [],
    notice: text.notice,
  };
}

/** A page of the workshop's own: its sections, and the ways to each. */
export function workshopPage(
  context: PageContext,
  {
    heading,
    description,
    sections,
    ...more
  }: Pick<WorkshopPageView, "heading" | "description" | "sections" | "lead" | "back">,
): WorkshopPageView {
  return {
    kind: "workshop",
    ...workshopHead(context, heading, description),
    ...more,
    contents: contentsOf(sections),
    sections,
  };
}

/** What a page of the workshop says of itself: no address, since it has none outside. */
export function workshopHead(
  { words, records }: PageContext,
  heading: string,
  description: string,
): Pick<PageView, "title" | "heading" | "description"> {
  return {
    title: words.pages.title(heading, words.pages.workshop.name(records.workshop.name)),
    heading,
    description,
  };
}
