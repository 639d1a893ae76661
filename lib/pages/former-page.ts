import type { TextPageView } from "../blocks/page-kinds.ts";
import type { WorkshopRecord } from "../records/schema/workshop.ts";
import type { PageContext, PagePlace } from "./page-context.ts";
import { textPage } from "./text-page.ts";

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

/** A page of before: what it was of, since when it is gone, and what took its place. */
export function formerPage(former: Former, context: PageContext, place: PagePlace): TextPageView {
  const { words, records } = context;
  const text = words.pages.former;
  const { name, date, replacedBy } = former;
  const lead = text.gone(name, date === undefined ? undefined : words.date(date));
  return textPage(
    {
      heading: name,
      description: lead,
      opening: [
        {
          kind: "links",
          links: [
            ...(replacedBy === undefined
              ? []
              : [
                  {
                    text: text.replacedBy(pageName(replacedBy, records)),
                    href: `${place.root}${replacedBy}`,
                  },
                ]),
            { text: words.pages.notFound.link, href: `${place.root}colours/` },
          ],
        },
      ],
      sections: [],
    },
    context,
    place,
  );
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
