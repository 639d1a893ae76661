import { screenColours } from "../colorimetry/screen-colour.ts";
import { tristimulus } from "../colorimetry/tristimulus.ts";
import { spectrumLab } from "../colorimetry/spectrum-lab.ts";
import { munsellOfLab } from "../colorimetry/munsell.ts";
import type { BoardBlock, SectionBlock } from "../blocks/block.ts";
import { section, statement } from "../blocks/section-blocks.ts";
import type { MixingPaint } from "../mixing/mixing-paint.ts";
import { mixableColours, type MixingRange } from "../mixing/mixing-range.ts";
import { predictedMix, type PredictedMix } from "../mixing/prediction/predicted-mix.ts";
import { axisUncertainty } from "../optics/fit/prediction-uncertainty.ts";
import { isStatement } from "../quantities/statement.ts";
import { type PrintedNumbers } from "../words/number-text.ts";
import {
  colourChoices,
  offeredLead,
  offeredOf,
  BENCH_PATH,
  mixingPlaces,
  mixingWays,
  type MixingPageView,
  type PaintChoice,
} from "./mixing-ways.ts";
import type { PageContext, PagePlace } from "./page-context.ts";
import { NO_VALUE } from "../words/no-value.ts";
import { pageHead } from "./site-frame.ts";
import { onePage } from "./page-kind.ts";

/** Colours and a white mixed under the reader's hand; without script what was worked out beforehand. */
export interface TintBenchView extends MixingPageView {
  readonly kind: "tint-bench";
  readonly colours: readonly PaintChoice[];
  readonly whites: readonly PaintChoice[];
  readonly mediums: readonly PaintChoice[];
}

/** Colour to white by weight, of the table that needs no script. */
const RATIOS = [1, 5, 20, 100] as const;
const TOLD_RATIO = 20;

/** Colours and a white under the reader's hand; below, each colour at a few steps in each white. */
export function tintBenchPage(context: PageContext, place: PagePlace): TintBenchView {
  const text = context.words.pages.mixing;
  const range = offeredOf(context);
  const named = ({ slug, name }: MixingPaint): { slug: string; name: string } => ({ slug, name });
  return {
    kind: "tint-bench",
    ...pageHead(context, place, text.bench.heading, text.bench.description),
    lead: [text.bench.lead, ...offeredLead(context)],
    ways: mixingWays(context, place),
    words: text,
    colours: colourChoices(range),
    whites: range.whites.map(named),
    mediums: range.data.paints
      .filter(({ kind, film }) => kind === "medium" && film !== undefined)
      .map(named),
    sections: range.whites.flatMap((white) => letDowns(white, range, context, place)),
  };
}

function letDowns(
  white: MixingPaint,
  range: MixingRange,
  { words }: PageContext,
  { root }: PagePlace,
): SectionBlock[] {
  const text = words.pages.mixing.bench.static;
  const board: BoardBlock = {
    kind: "board",
    caption: text.caption(white.name),
    heads: [text.colour, ...RATIOS.map((parts) => `1:${parts}`), text.said],
    rows: mixableColours(range, white.slug).map(({ slug, name }) => {
      const steps = RATIOS.map((parts) => ({
        parts,
        found: predictedMix(
          { by: "mass", colours: [{ slug, parts: 1 }], white: { slug: white.slug, parts } },
          range,
        ),
      }));
      const told = steps.find(({ parts }) => parts === TOLD_RATIO)?.found;
      return {
        name,
        href: `${root}colours/${slug}/`,
        cells: steps.map(({ found }) =>
          isStatement(found) ? { missing: text.colour } : stepCell(found, words.numbers),
        ),
        said:
          told === undefined || isStatement(told)
            ? ""
            : text.finding(munsellOf(told), width(told, words.numbers)),
      };
    }),
  };
  return board.rows.length === 0
    ? []
    : section(`in-${white.slug}`, text.heading(white.name), [
        statement(text.note(white.name), "note"),
        board,
      ]);
}

function stepCell({ spectrum, lab, uncertainty }: PredictedMix, { decimal }: PrintedNumbers) {
  const { srgb, displayP3 } = screenColours(tristimulus(spectrum, "D65/2"));
  return {
    colour: { hex: srgb.hex, displayP3: displayP3.css },
    text: `L* ${decimal(lab.L, 1)}, a* ${decimal(lab.a, 1)}, b* ${decimal(lab.b, 1)}, \u0394E00 \u00b1${decimal(uncertainty.p68, 1)}`,
  };
}

function munsellOf({ spectrum, lab, uncertainty }: PredictedMix): string {
  const found = munsellOfLab(spectrumLab(spectrum, "C/2"), axisUncertainty(uncertainty.p68, lab));
  return isStatement(found) ? NO_VALUE : found.text;
}

function width({ uncertainty }: PredictedMix, { decimal }: PrintedNumbers): string {
  return decimal(uncertainty.p68, 1);
}

export const TINT_BENCH = onePage(
  BENCH_PATH,
  tintBenchPage,
  (context) => mixingPlaces(context).mixes,
);
