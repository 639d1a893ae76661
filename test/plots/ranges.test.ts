import { spreadOf } from "../../lib/collection/spread.ts";
import { certain } from "../../lib/quantities/at.ts";
import { describe, expect, test } from "vitest";
import { hueCircle, type HuePoint } from "../../lib/plots/hue-circle.ts";
import { spread } from "../../lib/plots/end-labels.ts";
import { rangeRows } from "../../lib/plots/range-rows.ts";
import { placeInRange, type PlaceInRange } from "../../lib/plots/place-in-range.ts";
import { valueChromaSlice } from "../../lib/plots/value-chroma-slice.ts";
import { textWidth } from "../../lib/plots/text-width.ts";
import { hasClass, numberOf, parsedSvg, seenTexts } from "./parsed-svg.ts";

const WORDS = { idPrefix: "r", title: "t", description: "d" };
const colour = { hex: "#335577" };

/** Centres of the small swatches, in order. */
function swatchCentres(svg: string): { x: number; y: number }[] {
  return parsedSvg(svg)
    .all.filter((element) => hasClass(element, "swatch"))
    .flatMap(({ children }) =>
      children.map((rect) => ({
        x: numberOf(rect, "x") + numberOf(rect, "width") / 2,
        y: numberOf(rect, "y") + numberOf(rect, "height") / 2,
      })),
    );
}

describe("placeInRange", () => {
  const params = (change: Partial<PlaceInRange>): PlaceInRange => ({
    ...WORDS,
    heading: "Oil index",
    domain: [0, 100],
    own: { value: 50, standing: "measured", text: "50" },
    range: certain(spreadOf([0, 100])),
    legend: "box: the middle half",
    ends: { low: "least", high: "most" },
    ...change,
  });
  const places = (svg: string, name: string): string[] =>
    parsedSvg(svg)
      .all.filter((element) => hasClass(element, name))
      .map(({ attributes }) => attributes.d ?? "");

  /** Where each line of the spread begins and ends. */
  const lines = (svg: string): number[][] =>
    places(svg, "plot__spread").flatMap((d) =>
      [...d.matchAll(/M([\d.]+)[ ,][\d.]+L([\d.]+)/g)].map(([, from, to]) => [
        Number(from),
        Number(to),
      ]),
    );
  const boxes = (svg: string) =>
    parsedSvg(svg).all.filter((element) => hasClass(element, "plot__middle-half"));

  test("a line from the least to the highest, a box over the middle half, and the median across it", () => {
    const svg = placeInRange(
      params({ range: certain(spreadOf([0, 10, 20, 25, 40, 60, 75, 100])) }),
    );
    const [[low, boxFrom] = [], [boxTo, high] = [], [median] = []] = lines(svg);
    const [box] = boxes(svg);
    const own = parsedSvg(svg).all.find(({ name }) => name === "circle");
    if (low === undefined || high === undefined || box === undefined || own === undefined)
      throw new Error("Unexpected missing mark");
    const at = (share: number): number => low + share * (high - low);
    expect(numberOf(own, "cx")).toBeCloseTo(at(0.5), 2);
    expect(boxFrom).toBeCloseTo(at(0.1), 2);
    expect(boxTo).toBeCloseTo(at(0.6), 2);
    expect(median).toBeCloseTo(at(0.25), 2);
    expect(numberOf(box, "x")).toBeCloseTo(at(0.1), 2);
    expect(numberOf(box, "width")).toBeCloseTo(at(0.6) - at(0.1), 2);
    expect(seenTexts(svg)).toContain("box: the middle half");
  });
  test.each([
    [4, 0],
    [5, 1],
  ])("of %i figures there are %i boxes", (count, expected) => {
    const figures = Array.from({ length: count }, (_, i) => i);
    expect(boxes(placeInRange(params({ range: certain(spreadOf(figures)) })))).toHaveLength(
      expected,
    );
  });
  test("an estimate is a bar from end to end with an open mark", () => {
    const svg = placeInRange(
      params({
        own: { value: [40, 80], standing: "estimated", text: "40 to 80" },
        range: certain(spreadOf([[40, 80], 30])),
      }),
    );
    expect(places(svg, "plot__range")).toHaveLength(2);
    expect(
      parsedSvg(svg)
        .all.filter(({ name }) => name === "circle")
        .map(({ attributes }) => attributes.fill),
    ).toEqual(["none"]);
  });
  test.each([0, 0.5, 99, 100])("the words of a mark at %s stay inside the picture", (value) => {
    const text = "a figure in rather many words";
    const label = parsedSvg(
      placeInRange(params({ own: { value, standing: "measured", text } })),
    ).all.find((element) => element.text === text);
    if (label === undefined) throw new Error("Unexpected missing label");
    const half = textWidth(text, "bold") / 2;
    expect(numberOf(label, "x") - half).toBeGreaterThanOrEqual(0);
    expect(numberOf(label, "x") + half).toBeLessThanOrEqual(320);
  });
  test.each([
    [{ range: certain(spreadOf([100.1])) }],
    [{ range: certain(spreadOf([-0.1])) }],
    [{ range: certain(spreadOf([NaN])) }],
    [{ own: { value: [50, 101], standing: "estimated", text: "" } }],
  ] as const)("refuses a figure off the axis %o", (change) => {
    expect(() => placeInRange(params(change))).toThrow(/The figure in a range/);
  });
});

describe("valueChromaSlice", () => {
  const slice = (...points: readonly (readonly [number, number])[]): string =>
    valueChromaSlice({
      ...WORDS,
      chromaLabel: "chroma",
      valueLabel: "value",
      points: points.map(([value, chroma], i) => ({ label: `c${i}`, colour, value, chroma })),
    });

  test("value goes up, chroma right", () => {
    const [dark, light, vivid] = swatchCentres(slice([2, 1], [8, 1], [2, 7]));
    if (dark === undefined || light === undefined || vivid === undefined)
      throw new Error("Unexpected missing swatch");
    expect(light.y).toBeLessThan(dark.y);
    expect(light.x).toBe(dark.x);
    expect(vivid.x).toBeGreaterThan(dark.x);
  });
  test.each([
    [2, "2.0"],
    [2.01, "4"],
    [16.01, "20"],
    [20.01, "24"],
    [32, "32"],
  ])("chroma %s is drawn to %s", (chroma, end) => {
    expect(seenTexts(slice([5, chroma]))).toContain(end);
  });
  test.each([
    [-0.1, 1],
    [10.1, 1],
    [NaN, 1],
    [5, -0.1],
    [5, NaN],
    [5, 32.1],
  ])("refuses value %s, chroma %s", (value, chroma) => {
    expect(() => slice([value, chroma])).toThrow(/The Munsell (?:value|chroma)/);
  });
  test("refuses no colours", () => expect(() => slice()).toThrow("The colours of a range, none"));
});

describe("rangeRows", () => {
  const rows = (...places: readonly number[]): string =>
    rangeRows({
      ...WORDS,
      rows: places.map((at, i) => ({ label: `c${i}`, colour, href: `c${i}/`, at, group: "g" })),
      domain: [0, 10],
      tickStep: 2,
      axisLabel: "value",
    });
  const named = (svg: string, name: string) => {
    const found = parsedSvg(svg).all.find(
      (element) => element.name === "text" && element.text === name,
    );
    if (found === undefined) throw new Error("Unexpected missing name");
    return found;
  };

  test("a row each, one below the other, across by its place", () => {
    const [low, high] = swatchCentres(rows(1, 9));
    if (low === undefined || high === undefined) throw new Error("Unexpected missing swatch");
    expect(high.x).toBeGreaterThan(low.x);
    expect(high.y - low.y).toBe(24);
  });
  test("each row is met by a finger: 24 px high (WCAG 2.2, 2.5.8 Target Size)", () => {
    const hits = parsedSvg(rows(1, 9)).all.filter((element) => hasClass(element, "plot__hit"));
    expect(hits.map((hit) => numberOf(hit, "height"))).toEqual([24, 24]);
  });
  test("a name stands right of its swatch, left where the edge would cut it", () => {
    const svg = rows(0, 10);
    expect(named(svg, "c0").attributes["text-anchor"]).toBeUndefined();
    expect(named(svg, "c1").attributes["text-anchor"]).toBe("end");
  });
  test.each([-0.1, 10.1, NaN])("refuses a place off the axis, %s", (at) =>
    expect(() => rows(at)).toThrow(/The place on the axis/),
  );
  test("refuses no colours", () => expect(() => rows()).toThrow("The colours of a range, none"));
});

describe("a crowd of near-neutrals", () => {
  const slice = (crowdBelow?: number): string =>
    valueChromaSlice({
      ...WORDS,
      width: 640,
      chromaLabel: "chroma",
      valueLabel: "value",
      crowdBelow,
      points: [0.5, 0.6, 0.7, 6].map((value, i) => ({
        label: `c${i}`,
        colour,
        value,
        chroma: i === 3 ? 8 : 0.2,
      })),
    });
  const nameX = (svg: string, name: string): number => {
    const found = parsedSvg(svg).all.find(
      (element) => element.name === "text" && element.text === name,
    );
    if (found === undefined) throw new Error("Unexpected missing name");
    return numberOf(found, "x");
  };

  test("is named in one column, left of every swatch, the others beside their own", () => {
    const svg = slice(1);
    const [first] = swatchCentres(svg);
    const column = ["c0", "c1", "c2"].map((name) => nameX(svg, name));
    expect(new Set(column).size).toBe(1);
    expect(column[0]).toBeLessThan(first?.x ?? NaN);
    expect(nameX(svg, "c3")).toBeGreaterThan(first?.x ?? NaN);
  });
});

describe("spread", () => {
  const BOUNDS = { top: 0, bottom: 100 };
  test.each([
    // Worked by hand: boxes of 10 centred on their places where these are apart; pushed down; back up from the edge.
    [
      [20, 60],
      [15, 55],
    ],
    [
      [20, 22],
      [15, 25],
    ],
    [
      [98, 99],
      [80, 90],
    ],
    [
      [0, 1],
      [0, 10],
    ],
  ])("boxes of 10 at %j", (places, tops) => {
    expect(
      spread(
        places.map((y) => ({ y, height: 10 })),
        BOUNDS,
      ),
    ).toEqual(tops);
  });
});

describe("hueCircle", () => {
  const circle = (...points: readonly Partial<HuePoint>[]): string =>
    hueCircle({
      ...WORDS,
      chromaLabel: "chroma",
      neutralLabel: "neutral",
      points: points.map((point, i) => ({ label: `c${i}`, colour, hue: 5, chroma: 4, ...point })),
    });

  test("5R is at the top, then clockwise: 5Y to the right and below 5YR, 5BG at the bottom", () => {
    // The order of the Munsell hue circle, R YR Y GY G BG B PB P RP; a quarter turn is 25 steps.
    const [red, quarter, blueGreen, threeQuarters] = swatchCentres(
      circle({ hue: 5 }, { hue: 30 }, { hue: 55 }, { hue: 80 }),
    );
    expect(red).toMatchObject({ x: 160 });
    expect(blueGreen).toMatchObject({ x: 160 });
    expect(red?.y).toBeLessThan(160);
    expect(blueGreen?.y).toBeGreaterThan(160);
    expect(quarter).toMatchObject({ y: 160 });
    expect(quarter?.x).toBeGreaterThan(160);
    expect(threeQuarters?.x).toBeLessThan(160);
  });
  test("chroma is the distance from the middle", () => {
    const [near, far] = swatchCentres(circle({ chroma: 3 }, { chroma: 6 }));
    expect(160 - (far?.y ?? NaN)).toBeCloseTo(2 * (160 - (near?.y ?? NaN)), 2);
  });
  test("of many colours in one place names the first", () => {
    const many = Array.from({ length: 70 }, () => ({}));
    const names = seenTexts(circle(...many)).filter((text) => /^c\d+$/.test(text));
    expect(names[0]).toBe("c0");
    expect(names).not.toContain("c69");
  });

  test("a neutral has no place on the circle and stands below, named", () => {
    const svg = circle({ hue: null, chroma: 0, label: "Lamp black" });
    expect(swatchCentres(svg)[0]?.y).toBeGreaterThan(320);
    expect(seenTexts(svg)).toEqual(expect.arrayContaining(["neutral", "Lamp black"]));
    expect(seenTexts(circle({}))).not.toContain("neutral");
  });
  test("links are named and make the picture a group", () => {
    const { root, all } = parsedSvg(circle({ href: "../smalt/", label: "Smalt" }));
    expect(root.attributes.role).toBe("group");
    expect(
      all
        .filter(({ name }) => name === "a")
        .map(({ attributes, children }) => [attributes.href, children[0]?.text]),
    ).toEqual([["../smalt/", "Smalt"]]);
  });
  test.each(["javascript:alert(1)", "data:text/html,x", " javascript:x", "vbscript:x", ""])(
    "refuses the link %j",
    (href) => {
      expect(() => circle({ href })).toThrow(/The link/);
    },
  );
  test.each([
    "../smalt/",
    "smalt/",
    "/colours/smalt/",
    "#smalt",
    "https://example.org/smalt",
    "smalt.html",
  ])("takes the link %j", (href) => {
    expect(() => circle({ href })).not.toThrow();
  });
  test.each([
    [-0.1, 1],
    [100.1, 1],
    [NaN, 1],
    [5, -1],
    [5, NaN],
    [5, 33],
  ])("refuses hue %s, chroma %s", (hue, chroma) => {
    expect(() => circle({ hue, chroma })).toThrow(/The Munsell (?:hue|chroma)/);
  });
  test("refuses no colours", () => expect(() => circle()).toThrow("The colours of a range, none"));
});
