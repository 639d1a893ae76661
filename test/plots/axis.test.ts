import { describe, expect, test } from "vitest";
import { axisBelow, axisLeft, axisLeftWidth } from "../../lib/plots/axis.ts";
import { evenScale } from "../../lib/plots/scale.ts";
import { element, writtenSvg } from "../../lib/plots/svg.ts";
import { textWidth } from "../../lib/plots/text-width.ts";
import { ticksEvery } from "../../lib/plots/ticks.ts";
import { hasClass, numberOf, parsedSvg } from "./parsed-svg.ts";

const AREA = { left: 40, top: 10, right: 300, bottom: 200 };
const drawn = (nodes: ReturnType<typeof axisBelow>): ReturnType<typeof parsedSvg>["all"] =>
  parsedSvg(writtenSvg(element("g", {}, nodes))).all;

describe("axisBelow", () => {
  test.each([50, 20, 10, 5, 1])(
    "a step of %s: a mark at every tick, and no number touches the next",
    (step) => {
      const ticks = ticksEvery(step, [400, 700]);
      const all = drawn(axisBelow(AREA, evenScale([400, 700], [AREA.left, AREA.right]), ticks));
      expect(all.filter((node) => hasClass(node, "plot__axis"))).toHaveLength(
        ticks.values.length + 1,
      );
      const numbers = all.filter(({ name }) => name === "text");
      expect(numbers.length).toBeGreaterThanOrEqual(2);
      numbers.slice(1).forEach((number, i) => {
        const apart = numberOf(number, "x") - numberOf(numbers[i] ?? number, "x");
        expect(apart).toBeGreaterThan(textWidth(number.text) + 4);
      });
    },
  );
  test("numbers stand under their ticks", () => {
    const all = drawn(
      axisBelow(AREA, evenScale([0, 10], [AREA.left, AREA.right]), ticksEvery(5, [0, 10])),
    );
    expect(
      all
        .filter(({ name }) => name === "text")
        .map((node) => [node.text, numberOf(node, "x"), node.attributes["text-anchor"]]),
    ).toEqual([
      ["0", 40, "middle"],
      ["5", 170, "middle"],
      ["10", 300, "middle"],
    ]);
  });
});

describe("axisLeft", () => {
  test("numbers are right-aligned with one count of decimals", () => {
    const all = drawn(axisLeft(AREA, evenScale([0, 1], [200, 10]), ticksEvery(0.5, [0, 1])));
    const numbers = all.filter(({ name }) => name === "text");
    expect(numbers.map(({ text }) => text)).toEqual(["0.0", "0.5", "1.0"]);
    expect(
      new Set(
        numbers.map(({ attributes }) => `${attributes.x ?? ""} ${attributes["text-anchor"] ?? ""}`),
      ),
    ).toEqual(new Set(["33 end"]));
  });
  test("takes the room of its widest number", () => {
    expect(axisLeftWidth(ticksEvery(500, [0, 5000]))).toBeGreaterThan(
      axisLeftWidth(ticksEvery(5, [0, 50])),
    );
  });
});
