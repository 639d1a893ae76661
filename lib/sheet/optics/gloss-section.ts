import { readingNotations } from "../../colorimetry/reading-notations.ts";
import { glossDepth, type Depth } from "../../optics/surface/gloss-depth.ts";
import { at } from "../../quantities/at.ts";
import { sourceFigure, type Figure, type RecordRoot } from "../../quantities/figure.ts";
import type { Quantity, Interval } from "../../quantities/interval.ts";
import { isStatement, type Statement } from "../../quantities/statement.ts";
import type { Colour } from "../../records/records.ts";
import { opticsReading } from "../tints/optics-reading.ts";
import { notationFigure, type Origin } from "../notations/lab-figures.ts";
import { screenFigures } from "../notations/munsell-figures.ts";
import { masstoneRecords } from "../record-inputs.ts";
import type { FinishDepth, GlossDepthFigures } from "./optics-parts.ts";

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

/** Glossy, satin and matte, gloss excluded as the eye does it and included; nothing where the reading can't tell. */
export function glossFigures(colour: Colour): GlossDepthFigures | undefined {
  const { masstone } = colour;
  if (masstone?.form !== "spectrum") return undefined;
  const found = glossDepth(opticsReading(masstone));
  if (isStatement(found)) return undefined;
  const seen = (finish: Depth["finish"]): Depth | undefined =>
    found.depths.find((depth) => depth.finish === finish && depth.specular === "excluded");
  const [glossy, matte] = [seen("glossy"), seen("matte")];
  if (glossy === undefined || matte === undefined) return undefined;
  const inputs = masstoneRecords(colour);
  const derived = { ...DERIVED, inputs };
  return {
    sentence: found.ruling,
    glossyL: notationFigure(glossy.L[0], "1", derived),
    matteL: notationFigure(matte.L[0], "1", derived),
    glossyValue: notationFigure(glossy.value[0], "1", derived),
    matteValue: notationFigure(matte.value[0], "1", derived),
    depths: found.depths.map((depth) => finishDepth(depth, masstone.spectrum.grid, inputs)),
  };
}

function finishDepth(
  { finish, specular, L, value, values: [least, most] }: Depth,
  grid: Parameters<typeof readingNotations>[0]["grid"],
  inputs: readonly RecordRoot[],
): FinishDepth {
  const derived = { ...DERIVED, inputs };
  const isOne = L[0] === L[1];
  const figure = (range: Interval): Figure<Quantity> =>
    isOne
      ? notationFigure<number>(range[0], "1", derived)
      : sourceFigure<Quantity>("estimated", range, {
          unit: "1",
          method: ESTIMATED.method,
          source: ESTIMATED.source,
          inputs,
        });
  const middle = least.map((one, i) => Math.min(Math.max((one + at(most, i)) / 2, 0), 1.2));
  return {
    slug: `${finish}-${specular}`,
    finish,
    specular,
    L: figure(L),
    value: figure(value),
    ...screenFigures(
      readingNotations({ grid, values: middle }).screen,
      isOne ? derived : { ...ESTIMATED, inputs },
    ),
  };
}
