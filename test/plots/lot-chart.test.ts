import { expect, test } from "vitest";
import { lotChart, type LotChart } from "../../lib/plots/lot-chart.ts";
import { numberOf, parsedSvg } from "./parsed-svg.ts";
import { words } from "./example-pictures.ts";

const CHART: LotChart = {
  ...words("chart", "Strength"),
  lots: [
    { place: 1, value: 104, isMarked: false },
    { place: 2, value: 100, isMarked: false },
    { place: 4, value: 92, isMarked: true },
  ],
  places: 4,
  mean: 100,
  limits: [94, 106],
  leastReach: 10,
  valueLabel: "Strength, %",
  orderLabel: "Lots",
  lineLabels: { mean: "mean", limits: "limits", tolerance: "tolerance" },
};

/** Where the path from lot to lot turns. */
function turnsOf(chart: LotChart): { x: number; y: number }[] {
  const [path] = parsedSvg(lotChart(chart)).all.filter(
    ({ name, attributes }) =>
      name === "path" && attributes.d?.split("L").length === CHART.lots.length,
  );
  return [...(path?.attributes.d ?? "").matchAll(/(-?[\d.]+)[ ,](-?[\d.]+)/g)].map(([, x, y]) => ({
    x: Number(x),
    y: Number(y),
  }));
}

test("lots stand where their values and their places are, one left out leaves its place free", () => {
  const [first, second, fourth] = turnsOf(CHART);
  if (first === undefined || second === undefined || fourth === undefined)
    throw new Error("Unexpected chart without its three lots");
  // 4 above and 8 below the mean, on one scale; a step of one place and one of two.
  expect((fourth.y - second.y) / (second.y - first.y)).toBeCloseTo(2, 2);
  expect((fourth.x - second.x) / (second.x - first.x)).toBeCloseTo(2, 2);
});

test("a lot that is told has a ring about it, and no other", () => {
  const rings = parsedSvg(lotChart(CHART)).all.filter(
    ({ name, attributes }) => name === "circle" && attributes.r === "8",
  );
  const [, , fourth] = turnsOf(CHART);
  expect(rings.map((ring) => [numberOf(ring, "cx"), numberOf(ring, "cy")])).toEqual([
    [fourth?.x, fourth?.y],
  ]);
});

test("fewer than two lots are refused", () => {
  expect(() => lotChart({ ...CHART, lots: CHART.lots.slice(0, 1) })).toThrow("lots of a chart");
});
