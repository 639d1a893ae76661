import { cgatsText } from "../exchange/cgats-text.ts";
import { colourSamples } from "../exchange/colour-sample.ts";
import { cxfText, type ExchangeHead } from "../exchange/cxf-text.ts";
import type { PageContext } from "../pages/page-context.ts";
import type { DataFile } from "./site.ts";

/** Readings of every masstone and tint in the open formats of the trade: of each colour, and of the whole range. */
export function exchangeFiles({ records, date }: PageContext): DataFile[] {
  const { workshop, colours, pigments } = records;
  const nameOf = (slug: string): string =>
    colours.get(slug)?.record.name ?? pigments.get(slug)?.record.name ?? slug;
  const head = (what: string): ExchangeHead => ({
    creator:
      workshop.demonstration === true ? `${workshop.name} (an invented workshop)` : workshop.name,
    description: `${what}: masstone and tints, as read`,
    date,
  });
  const each = [...colours.values()].map((colour) => ({
    colour,
    samples: colourSamples(colour, nameOf),
  }));
  const all = each.flatMap(({ samples }) => samples);
  return [
    ...each.map(({ colour, samples }) => ({
      folder: `colours/${colour.slug}/readings`,
      samples,
      head: head(colour.record.name),
    })),
    { folder: "range", samples: all, head: head(workshop.name) },
  ].flatMap(({ folder, samples, head: own }) =>
    samples.length === 0
      ? []
      : [
          { path: `${folder}.cxf`, text: cxfText(samples, own) },
          { path: `${folder}.cgats.txt`, text: cgatsText(samples, own) },
        ],
  );
}
