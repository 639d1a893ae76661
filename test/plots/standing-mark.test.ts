import { describe, expect, test } from "vitest";
import { dashesOf, standingMark, type ShownStanding } from "../../lib/plots/standing-mark.ts";
import { writtenSvg } from "../../lib/plots/svg.ts";
import { parsedSvg } from "./parsed-svg.ts";

// The grammar of the house's design: shape, never colour, tells how a figure is known.
const GRAMMAR: readonly {
  readonly standing: ShownStanding;
  readonly filled: number;
  readonly open: number;
  readonly texts: readonly string[];
  readonly solid: boolean;
}[] = [
  { standing: "measured", filled: 1, open: 0, texts: [], solid: true },
  { standing: "derived", filled: 1, open: 1, texts: [], solid: false },
  { standing: "estimated", filled: 0, open: 1, texts: [], solid: false },
  { standing: "stated", filled: 1, open: 0, texts: ["\u201c", "\u201d"], solid: false },
  { standing: "not stated", filled: 0, open: 0, texts: [], solid: false },
];

describe.each(GRAMMAR)("$standing", ({ standing, filled, open, texts, solid }) => {
  const marks = parsedSvg(writtenSvg(standingMark(standing, { x: 10, y: 10 }))).all;
  const circles = marks.filter(({ name }) => name === "circle");
  test("filled and open circles", () => {
    expect(circles.filter(({ attributes }) => attributes.fill !== "none")).toHaveLength(filled);
    expect(
      circles.filter(
        ({ attributes }) => attributes.fill === "none" && attributes.stroke === "currentColor",
      ),
    ).toHaveLength(open);
  });
  test("quotes", () =>
    expect(marks.filter(({ name }) => name === "text").map(({ text }) => text)).toEqual(texts));
  test("line", () => expect(dashesOf(standing) === undefined).toBe(solid));
});

test("a derived line and an estimated one are broken differently", () => {
  expect(dashesOf("derived")).not.toBe(dashesOf("estimated"));
});

test("in its own colour a mark keeps a neutral rim, and an estimate stays open", () => {
  const { all } = parsedSvg(
    writtenSvg(standingMark("estimated", { x: 10, y: 10 }, { hex: "#336699" })),
  );
  expect(
    all.filter(({ name }) => name === "circle").map(({ attributes }) => attributes.fill),
  ).toEqual(["none", "none"]);
  expect(all.some(({ attributes }) => attributes.stroke === "currentColor")).toBe(true);
});

test.each(["square", "triangle", "diamond"] as const)(
  "a %s says how a figure is known by its filling, as a round mark does",
  (shape) => {
    const fills = (standing: ShownStanding): (string | undefined)[] =>
      parsedSvg(writtenSvg(standingMark(standing, { x: 10, y: 10 }, undefined, shape)))
        .all.filter(({ name }) => name === "path")
        .map(({ attributes }) => attributes.fill);
    expect(fills("measured")).toEqual(["currentColor"]);
    expect(fills("derived")).toEqual(["none", "currentColor"]);
    expect(fills("estimated")).toEqual(["none"]);
  },
);
