import { spreadOf } from "../../lib/collection/spread.ts";
import { certain } from "../../lib/quantities/at.ts";
import { expect, test } from "vitest";
import { coefficientCurves } from "../../lib/plots/coefficient-curves.ts";
import { hidingCurve } from "../../lib/plots/hiding-curve.ts";
import { hueCircle } from "../../lib/plots/hue-circle.ts";
import { placeInRange } from "../../lib/plots/place-in-range.ts";
import { spectralCurve } from "../../lib/plots/spectral-curve.ts";
import { swatchStrip } from "../../lib/plots/swatch-strip.ts";
import { tintTrail } from "../../lib/plots/tint-trail.ts";
import { valueChromaSlice } from "../../lib/plots/value-chroma-slice.ts";
import { parsedSvg, seenTexts } from "./parsed-svg.ts";

// No spaces, so that it is not broken into lines.
const T = `<b>&"'`;
const words = { idPrefix: "e", title: T, description: T };
const colour = { hex: "#123456" };
const step = { colour, standing: "measured" } as const;
const strip = { ...words, axisLabel: T, missing: T };
const grid = { startNm: 400, stepNm: 100, count: 4 };
const point = { ...step, label: T, hue: 5, chroma: 1, value: 5, href: `../a?b=1&c="<'` };

const PICTURES: Readonly<Record<string, string>> = {
  swatchStrip: swatchStrip("ladder-strip", {
    ...strip,
    steps: [
      { ...step, lines: [T, T], flag: T },
      { ...step, colour: undefined, lines: [T] },
    ],
  }),
  tintTrail: tintTrail({
    ...words,
    ends: { plusA: T, minusA: T, plusB: T, minusB: T },
    trails: [{ label: T, points: [{ ...step, a: 3, b: 3, label: T }] }],
  }),
  spectralCurve: spectralCurve({
    ...words,
    wavelengthLabel: T,
    reflectanceLabel: () => T,
    curves: [{ ...step, label: T, spectrum: { grid, values: [0.1, 0.2, 0.3, 0.4] } }],
  }),
  placeInRange: placeInRange({
    ...words,
    heading: T,
    domain: [0, 1],
    own: { value: 0.5, standing: "measured", text: T },
    range: certain(spreadOf([0.1, 0.2, 0.3, 0.4, 0.5])),
    legend: T,
    ends: { low: T, high: T },
  }),
  valueChromaSlice: valueChromaSlice({ ...words, points: [point], chromaLabel: T, valueLabel: T }),
  hueCircle: hueCircle({
    ...words,
    points: [point, { ...point, hue: null, chroma: 0 }],
    chromaLabel: T,
    neutralLabel: T,
  }),
  hidingCurve: hidingCurve({
    ...words,
    filmLabel: T,
    contrastLabel: T,
    ...step,
    label: T,
    points: [
      { filmUm: 0, contrastRatio: 0 },
      { filmUm: 9, contrastRatio: 0.9 },
    ],
    limit: { contrastRatio: 0.98, label: T },
  }),
  coefficientCurves: coefficientCurves({
    ...words,
    wavelengthLabel: T,
    absorption: { axisLabel: T, curves: [{ ...step, label: T, grid, values: [1, 1, 1, 1] }] },
    scattering: { axisLabel: T, curves: [{ ...step, label: T, grid, values: [1, 1, 1, 1] }] },
  }),
};

test.each(Object.entries(PICTURES))("%s shows < & \" ' as they are", (_, svg) => {
  const { root, all } = parsedSvg(svg);
  expect(all.map(({ name }) => name)).not.toContain("b");
  expect(root.children.slice(0, 2).map(({ text }) => text)).toEqual([T, T]);
  const texts = seenTexts(svg);
  expect(texts.filter((text) => text === T).length).toBeGreaterThanOrEqual(3);
  // Nothing escaped twice, nothing cut.
  expect(texts.filter((text) => /&(?:amp|lt|quot)|<(?!b>&"'$)/.test(text))).toEqual([]);
});
