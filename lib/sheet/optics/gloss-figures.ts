import { readingNotations } from "../../colorimetry/reading-notations.ts";
import {
  glossDepth,
  type Depth,
  FINISHES,
  type Finish,
  type GlossDepth,
} from "../../optics/surface/gloss-depth.ts";
import { at } from "../../quantities/at.ts";
import { computedFigure, type Figure } from "../../quantities/figure.ts";
import type { Quantity, Interval } from "../../quantities/interval.ts";
import { isStatement, type Statement } from "../../quantities/statement.ts";
import type { WavelengthGrid } from "../../quantities/spectrum.ts";
import type { Colour } from "../../records/records.ts";
import * as d from "../declaration.ts";
import { filled, foundFrom } from "../found.ts";
import { opticsReading } from "../tints/optics-reading.ts";
import { notationFigure, type Origin } from "../notations/lab-figures.ts";
import { screenFigures } from "../notations/munsell-figures.ts";
import { SCREEN_IF_KNOWN } from "../notations/notation-figures.ts";
import { masstoneRecords } from "../record-inputs.ts";

const METHOD = "surface light of an oil film taken off and put on";
const DERIVED: Origin = {
  inputs: [],
  standing: "derived",
  method: METHOD,
  source: "saunderson-1942",
};
const ESTIMATED: Origin = {
  inputs: [],
  standing: "estimated",
  method: `${METHOD}: 5-50 % of it for satin`,
  source: "optics-practice",
};

/** Why a masstone's depth is not told, where its reading lies too near its surface. */
export function glossReasons({ masstone }: Colour): Statement[] {
  if (masstone?.form !== "spectrum") return [];
  const found = glossDepth(opticsReading(masstone));
  return isStatement(found) && found.rule === "masstone-near-its-surface" ? [found] : [];
}

/** One finish, and how its figures came about. */
interface OneDepth {
  readonly depth: Depth;
  readonly origin: Origin;
}
const one = foundFrom<OneDepth>();

const DEPTH_L = { unit: "1", kind: "decimal", digits: 0 } as const;
const DEPTH_VALUE = { unit: "1", kind: "decimal", digits: 1 } as const;

/** One finish as one geometry meets it; satin, excluded, is an estimate's two ends, its screen colour their middle. */
const FINISH_DEPTH = d.section({
  /** "glossy-excluded" */
  slug: one.found(d.text, ({ depth: { finish, specular } }) => `${finish}-${specular}`),
  finish: one.found(d.oneOf(FINISHES), ({ depth }) => depth.finish),
  specular: one.found(d.oneOf(["excluded", "included"]), ({ depth }) => depth.specular),
  L: one.found(d.quantity({ ...DEPTH_L, word: "labL" }), (of) => oneOrBoth(of.depth.L, of)),
  value: one.found(d.quantity({ ...DEPTH_VALUE, word: "munsellValue" }), (of) =>
    oneOrBoth(of.depth.value, of),
  ),
  ...SCREEN_IF_KNOWN,
});
export type FinishDepth = d.SectionOf<typeof FINISH_DEPTH>;

interface GlossOfMasstone {
  readonly told: GlossDepth;
  readonly glossy: Depth;
  readonly matte: Depth;
  readonly grid: WavelengthGrid;
  readonly derived: Origin;
}
const gloss = foundFrom<GlossOfMasstone>();

/** The masstone glossy and matte, to an eye that looks past the glare. */
export const GLOSS_DEPTH = d.section({
  sentence: gloss.found(d.statement, ({ told }) => told.ruling),
  glossyL: gloss.found(d.number({ ...DEPTH_L, word: "glossyL" }), ({ glossy, derived }) =>
    notationFigure(glossy.L[0], "1", derived),
  ),
  matteL: gloss.found(d.number({ ...DEPTH_L, word: "matteL" }), ({ matte, derived }) =>
    notationFigure(matte.L[0], "1", derived),
  ),
  glossyValue: gloss.found(
    d.number({ ...DEPTH_VALUE, word: "glossyValue" }),
    ({ glossy, derived }) => notationFigure(glossy.value[0], "1", derived),
  ),
  matteValue: gloss.found(d.number({ ...DEPTH_VALUE, word: "matteValue" }), ({ matte, derived }) =>
    notationFigure(matte.value[0], "1", derived),
  ),
  /** Glossy, satin, matte, each with gloss excluded and included. */
  depths: gloss.found(d.list(FINISH_DEPTH), ({ told, grid, derived }) =>
    told.depths.map((depth) => {
      const isOne = depth.L[0] === depth.L[1];
      const origin = isOne ? derived : { ...ESTIMATED, inputs: derived.inputs };
      const [least, most] = depth.values;
      const values = least.map((low, i) => Math.min(Math.max((low + at(most, i)) / 2, 0), 1.2));
      return filled(FINISH_DEPTH, {
        depth,
        origin,
        ...screenFigures(readingNotations({ grid, values }).screen, origin),
      });
    }),
  ),
});
export type GlossDepthFigures = d.SectionOf<typeof GLOSS_DEPTH>;

/** Glossy, satin and matte, gloss excluded as the eye does it and included; nothing where the reading can't tell. */
export function glossFigures(colour: Colour): GlossDepthFigures | undefined {
  const { masstone } = colour;
  if (masstone?.form !== "spectrum") return undefined;
  const told = glossDepth(opticsReading(masstone));
  if (isStatement(told)) return undefined;
  const seen = (finish: Finish): Depth | undefined =>
    told.depths.find((depth) => depth.finish === finish && depth.specular === "excluded");
  const [glossy, matte] = [seen("glossy"), seen("matte")];
  if (glossy === undefined || matte === undefined) return undefined;
  const derived = { ...DERIVED, inputs: masstoneRecords(colour) };
  return filled(GLOSS_DEPTH, { told, glossy, matte, grid: masstone.spectrum.grid, derived });
}

function oneOrBoth(
  [least, most]: Interval,
  { origin: { standing, ...details } }: OneDepth,
): Figure<Quantity> {
  const value = standing === "estimated" ? ([least, most] as const) : least;
  return computedFigure<Quantity>(standing, value, { unit: "1", ...details });
}
