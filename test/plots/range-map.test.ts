import { expect, test } from "vitest";
import { rangeMap, type MapColour } from "../../lib/plots/range-map.ts";
import { textWidth } from "../../lib/plots/text-width.ts";
import { numberOf, parsedSvg } from "./parsed-svg.ts";

const colour = { hex: "#335577" };
const WORDS = {
  idPrefix: "m",
  title: "t",
  description: "d",
  axes: { a: "a*", b: "b*" },
  crowd: { withinChroma: 5, word: "near neutral:" },
};
/** Far corners, so that what lies between them has room. */
const CORNERS: readonly MapColour[] = [
  { label: "North", colour, a: 0, b: 90, trail: [] },
  { label: "South", colour, a: 0, b: -90, trail: [] },
  { label: "East", colour, a: 90, b: 0, trail: [] },
  { label: "West", colour, a: -90, b: 0, trail: [] },
];

/** Where the name of a colour stands in a map of 600 units. */
function nameBox(map: readonly MapColour[], label: string) {
  const { svg, scale } = rangeMap({ ...WORDS, width: 600, colours: map, outlines: [] });
  const name = parsedSvg(svg).all.find(
    ({ name: tag, text, attributes }) =>
      tag === "text" && text === label && attributes["font-weight"] !== "600",
  );
  if (name === undefined) throw new Error(`Unexpected map without ${label}`);
  const x = numberOf(name, "x");
  const width = textWidth(label);
  const anchor = name.attributes["text-anchor"] ?? "start";
  const left = anchor === "end" ? x - width : anchor === "middle" ? x - width / 2 : x;
  return { left, right: left + width, y: numberOf(name, "y"), scale };
}

test("a name gives way to a trail that runs to the side where it would stand", () => {
  const own: MapColour = { label: "Madder lake", colour, a: 20, b: 20, trail: [] };
  const free = nameBox([...CORNERS, own], "Madder lake");
  expect(free.left).toBeGreaterThan(free.scale.originX + 20 * free.scale.unit);
  const trail = [{ a: 60, b: 20, colour }];
  const crossed = nameBox([...CORNERS, { ...own, trail }], "Madder lake");
  const line = crossed.scale.originY - 20 * crossed.scale.unit;
  const isBeyond = crossed.right < crossed.scale.originX + 20 * crossed.scale.unit;
  expect(isBeyond || crossed.y < line - 2 || crossed.y > line + 12).toBe(true);
});

test("colours about the middle are named in a line below the map, and only there", () => {
  const blacks = ["Lamp black", "Bone black"].map((label, i): MapColour => ({
    label,
    colour,
    a: i,
    b: -i,
    trail: [],
  }));
  const { svg, scale } = rangeMap({
    ...WORDS,
    width: 600,
    colours: [...CORNERS, ...blacks],
    outlines: [],
  });
  const south = scale.originY + 90 * scale.unit;
  const texts = parsedSvg(svg).all.filter(({ name }) => name === "text");
  for (const label of ["near neutral:", "Lamp black", "Bone black"]) {
    const always = texts.filter(
      ({ text, attributes }) => text === label && attributes["font-weight"] !== "600",
    );
    expect(always.map((text) => numberOf(text, "y") > south)).toEqual([true]);
  }
});
