import { formerTexts, type Former } from "../pages/former-page.ts";
import type { PageContext } from "../pages/page-context.ts";
import { SCHEMA_VERSION } from "./schema-version.ts";
import type { DataFile } from "./site.ts";

/** What the JSON at the address of a sheet that is gone says of itself: a sheet has no such key. */
export const FORMER_KIND = "mullstone-former-sheet";

const OF_COLOUR = /^colours\/([^/]+)\/$/;

/** Colours that the site had, by the slugs that their addresses have. */
export function formerColours({ records: { workshop } }: PageContext): {
  readonly slug: string;
  readonly former: Former;
}[] {
  return (workshop.former ?? []).flatMap((former) => {
    const slug = OF_COLOUR.exec(former.address)?.[1];
    return slug === undefined ? [] : [{ slug, former }];
  });
}

/** At the address of each sheet.json that is gone, where its data is found today. */
export function formerSheets(context: PageContext): DataFile[] {
  return formerColours(context).map(({ slug, former }) => {
    const { name, date, replacedBy } = former;
    const other = replacedBy === undefined ? undefined : OF_COLOUR.exec(replacedBy)?.[1];
    const value = {
      schemaVersion: SCHEMA_VERSION,
      kind: FORMER_KIND,
      slug,
      name,
      ...(date !== undefined && { gone: date }),
      ...(replacedBy !== undefined && {
        replacedBy: {
          name: formerTexts(former, context).replacement ?? replacedBy,
          url: replacedBy,
          ...(other !== undefined && { sheet: `colours/${other}/sheet.json` }),
        },
      }),
    };
    return {
      path: `colours/${slug}/sheet.json`,
      text: `${JSON.stringify(value, null, 1)}\n`,
    };
  });
}
