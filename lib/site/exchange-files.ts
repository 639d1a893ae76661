import { cgatsText } from "../exchange/cgats-text.ts";
import { colourSamples, type ColourSample } from "../exchange/colour-sample.ts";
import { cxfText, type ExchangeHead } from "../exchange/cxf-text.ts";
import { certain } from "../quantities/at.ts";
import type { PageContext } from "../pages/page-context.ts";
import type { DataFile } from "./site.ts";

/** Readings of a colour's masstone and tints in the open formats of the trade. */
export function readingsOf(slug: string, context: PageContext): DataFile[] {
  const colour = certain(context.records.colours.get(slug));
  const samples = colourSamples(colour, namesIn(context));
  return filesOf(samples, `colours/${slug}/readings`, headOf(colour.record.name, context));
}

/** The same of the whole range. */
export function readingsOfRange(context: PageContext): DataFile[] {
  const { colours, workshop } = context.records;
  const nameOf = namesIn(context);
  const samples = [...colours.values()].flatMap((colour) => colourSamples(colour, nameOf));
  return filesOf(samples, "range", headOf(workshop.name, context));
}

function namesIn({ records: { colours, pigments } }: PageContext): (slug: string) => string {
  return (slug) => colours.get(slug)?.record.name ?? pigments.get(slug)?.record.name ?? slug;
}

function headOf(what: string, { records: { workshop }, date }: PageContext): ExchangeHead {
  return {
    creator:
      workshop.demonstration === true ? `${workshop.name} (an invented workshop)` : workshop.name,
    description: `${what}: masstone and tints, as read`,
    date,
  };
}

function filesOf(samples: readonly ColourSample[], place: string, head: ExchangeHead): DataFile[] {
  return samples.length === 0
    ? []
    : [
        { path: `${place}.cxf`, text: cxfText(samples, head) },
        { path: `${place}.cgats.txt`, text: cgatsText(samples, head) },
      ];
}
