import type { TextPageView } from "../blocks/page-kinds.ts";
import type { WorkshopRecord } from "../records/schema/workshop.ts";
import { wholeAddress, type PageContext, type PagePlace } from "./page-context.ts";
import { textPage } from "./text-page.ts";
import { given } from "../quantities/given.ts";
import { dateText } from "../present/date-text.ts";
import type { PageKind } from "./page-kind.ts";

export type Former = NonNullable<WorkshopRecord["former"]>[number];

/** Pages of a colour beside its sheet. */
const BESIDE_SHEET = ["bench/", "evidence/"];

/** Every page that the site had and that goes on saying what took its place; of a colour, those beside its sheet too. */
export function formerPages({
  former = [],
}: Pick<WorkshopRecord, "former">): { readonly path: string; readonly former: Former }[] {
  return former.flatMap((one) =>
    ["", ...(/^colours\/[^/]+\/$/.test(one.address) ? BESIDE_SHEET : [])].map((below) => ({
      path: `${one.address}${below}index.html`,
      former: one,
    })),
  );
}

/** What is said in the place of a page that is gone, on a page and on paper. */
export interface FormerTexts {
  readonly heading: string;
  readonly gone: string;
  /** What took its place is called so today. */
  readonly replacement?: string;
  /** The same as a line, with the whole address of its page where the site has one. */
  readonly inItsPlace?: { readonly text: string; readonly href?: string };
}

export function formerTexts(
  { name, date, replacedBy }: Former,
  context: Pick<PageContext, "words" | "records" | "folder">,
): FormerTexts {
  const { words, records } = context;
  const text = words.pages.former;
  const said = {
    heading: name,
    gone: text.gone(name, dateText(date, words)),
  };
  if (replacedBy === undefined) return said;
  const replacement = pageName(replacedBy, records);
  const href = wholeAddress(context, replacedBy);
  return {
    ...said,
    replacement,
    inItsPlace: { text: text.replacedBy(replacement), ...(href !== undefined && { href }) },
  };
}

/** A page of before: what it was of, since when it is gone, and what took its place. */
export function formerPage(former: Former, context: PageContext, place: PagePlace): TextPageView {
  const { heading, gone, inItsPlace } = formerTexts(former, context);
  const { words } = context;
  return textPage(context, place, {
    heading,
    description: gone,
    opening: [
      {
        kind: "links",
        links: given([
          inItsPlace !== undefined && {
            text: inItsPlace.text,
            href: `${place.root}${former.replacedBy ?? ""}`,
          },
          { text: words.pages.notFound.link, href: `${place.root}colours/` },
        ]),
      },
    ],
    sections: [],
  });
}

/** What a page of today is called: a colour's name, a pigment's, a question; else its address. */
function pageName(address: string, { colours, pigments, answers }: PageContext["records"]): string {
  const [folder, slug = ""] = address.split("/");
  const name =
    folder === "colours"
      ? colours.get(slug)?.record.name
      : folder === "pigments"
        ? pigments.get(slug)?.record.name
        : folder === "answers"
          ? answers.get(slug)?.record.question
          : undefined;
  return name ?? address;
}

export const FORMER: PageKind<TextPageView> = {
  pages: ({ context }) =>
    formerPages(context.records.workshop).map(({ path, former }) => ({
      path,
      isUnlisted: true,
      view: (place) => formerPage(former, context, place),
    })),
};
