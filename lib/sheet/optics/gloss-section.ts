import { readingNotations } from "../../colorimetry/reading-notations.ts";
import { glossDepth, type Depth } from "../../optics/surface/gloss-depth.ts";
import { sourceFigure, type Figure } from "../../quantities/figure.ts";
import type { Quantity, Interval } from "../../quantities/interval.ts";
import { isStatement } from "../../quantities/statement.ts";
import type { Colour } from "../../records/records.ts";
import { opticsReading } from "../tints/drawdown-set.ts";
import { notationFigure, type Origin } from "../notations/lab-figures.ts";
import { screenFigures } from "../notations/munsell-figures.ts";
import type { FinishDepth, GlossDepthFigures } from "./optics-figures.ts";

const METHOD = "surface light of an oil film taken off and put on";
const DERIVED: Origin = {
  standing: "derived",
  restsOn: "measured",
  method: METHOD,
  source: "saunderson-1942",
};
const ESTIMATED: Origin = {
  standing: "estimated",
  restsOn: "estimated",
  method: `${METHOD}: 5-50 % of it for satin`,
  source: "optics-practice",
};

/** Glossy, satin and matte, gloss excluded as the eye does it and included; nothing where the reading can't tell. */
export function glossFigures({ masstone }: Colour): GlossDepthFigures | undefined {
  if (masstone?.form !== "spectrum") return undefined;
  const found = glossDepth(opticsReading(masstone));
  if (isStatement(found)) return undefined;
  const seen = (finish: Depth["finish"]): Depth | undefined =>
    found.depths.find((depth) => depth.finish === finish && depth.specular === "excluded");
  const [glossy, matte] = [seen("glossy"), seen("matte")];
  if (glossy === undefined || matte === undefined) return undefined;
  return {
    sentence: found.ruling,
    glossyL: notationFigure(glossy.L[0], "1", DERIVED),
    matteL: notationFigure(matte.L[0], "1", DERIVED),
    glossyValue: notationFigure(glossy.value[0], "1", DERIVED),
    matteValue: notationFigure(matte.value[0], "1", DERIVED),
    depths: found.depths.map((depth) => finishDepth(depth, masstone.spectrum.grid)),
  };
}

function finishDepth(
  { finish, specular, L, value, values: [least, most] }: Depth,
  grid: Parameters<typeof readingNotations>[0]["grid"],
): FinishDepth {
  const isOne = L[0] === L[1];
  const figure = (range: Interval): Figure<Quantity> =>
    isOne
      ? notationFigure<number>(range[0], "1", DERIVED)
      : sourceFigure<Quantity>("estimated", range, {
          unit: "1",
          method: ESTIMATED.method,
          source: ESTIMATED.source,
        });
  const middle = least.map((one, i) => Math.min(Math.max((one + (most[i] ?? NaN)) / 2, 0), 1.2));
  return {
    slug: `${finish}-${specular}`,
    finish,
    specular,
    L: figure(L),
    value: figure(value),
    ...screenFigures(
      readingNotations({ grid, values: middle }).screen,
      isOne ? DERIVED : ESTIMATED,
    ),
  };
}
