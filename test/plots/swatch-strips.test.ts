import { describe, expect, test } from "vitest";
import { glazeStrip } from "../../lib/plots/glaze-strip.ts";
import { glossStrip } from "../../lib/plots/gloss-strip.ts";
import { ladderStrip, type LadderStep } from "../../lib/plots/ladder-strip.ts";
import { hasClass, numberOf, parsedSvg, seenTexts, type ParsedElement } from "./parsed-svg.ts";

const STRIP = {
  idPrefix: "s",
  title: "t",
  description: "d",
  axisLabel: "colour : white, paint by mass",
  missing: "no reading",
};
const colour = { hex: "#445566" };
const step = (whiteParts: number, standing: LadderStep["standing"]): LadderStep => ({
  whiteParts,
  label: `1:${whiteParts}`,
  colour,
  standing,
});
const swatchesOf = (svg: string): ParsedElement[] =>
  parsedSvg(svg)
    .all.filter((element) => hasClass(element, "swatch"))
    .flatMap(({ children }) => children.slice(0, 1));

describe("ladderStrip", () => {
  test("orders by ratio, whatever the order of the records", () => {
    const svg = ladderStrip({
      ...STRIP,
      steps: [step(100, "measured"), step(5, "derived"), step(20, "measured")],
    });
    expect(seenTexts(svg).filter((text) => text.startsWith("1:"))).toEqual([
      "1:5",
      "1:20",
      "1:100",
    ]);
  });

  test("a predicted step is lower, in dashes, and has no measured mark", () => {
    const svg = ladderStrip({
      ...STRIP,
      steps: [step(5, "measured"), step(10, "derived"), step(20, "estimated")],
    });
    const [measured, derived, estimated] = swatchesOf(svg).map((element) =>
      numberOf(element, "height"),
    );
    expect(derived).toBeLessThan((measured ?? NaN) * 0.8);
    expect(estimated).toBe(derived);
    const { all } = parsedSvg(svg);
    expect(
      all.filter(
        (element) =>
          hasClass(element, "plot__predicted") &&
          element.attributes["stroke-dasharray"] !== undefined,
      ),
    ).toHaveLength(2);
    expect(
      ["measured", "derived", "estimated"].map(
        (standing) => all.filter((element) => hasClass(element, `plot__mark--${standing}`)).length,
      ),
    ).toEqual([1, 1, 1]);
  });

  test("a suspect step says so in a word", () => {
    const svg = ladderStrip({
      ...STRIP,
      steps: [{ ...step(5, "measured"), suspect: "suspect" }, step(10, "measured")],
    });
    expect(
      parsedSvg(svg)
        .all.filter(({ text }) => text === "suspect")
        .map(({ attributes }) => attributes["font-weight"]),
    ).toEqual(["600"]);
  });

  test.each([1, 4, 7, 8, 13, 24])("%s steps stand on one grid inside the panel", (count) => {
    const svg = ladderStrip({
      ...STRIP,
      steps: Array.from({ length: count }, (_, i) => step(i + 1, "measured")),
    });
    const swatches = swatchesOf(svg);
    expect(swatches).toHaveLength(count);
    for (const element of swatches)
      expect(numberOf(element, "x") + numberOf(element, "width")).toBeLessThanOrEqual(320 - 15);
    const columns = new Set(swatches.map((element) => element.attributes.x)).size;
    const rows = new Set(swatches.map((element) => element.attributes.y)).size;
    expect(columns * rows).toBeGreaterThanOrEqual(count);
    expect(columns * (rows - 1)).toBeLessThan(count);
  });

  test("a step without a colour is hatched", () => {
    const svg = ladderStrip({ ...STRIP, steps: [{ ...step(5, "not stated"), colour: undefined }] });
    expect(parsedSvg(svg).all.some((element) => hasClass(element, "swatch--missing"))).toBe(true);
    expect(seenTexts(svg)).toEqual(expect.arrayContaining(["no", "reading"]));
  });

  test("refuses no steps, and parts that are no parts", () => {
    expect(() => ladderStrip({ ...STRIP, steps: [] })).toThrow(
      "The steps, none, can't be drawn; right would be at least one",
    );
    for (const parts of [-1, NaN, Infinity])
      expect(() => ladderStrip({ ...STRIP, steps: [step(parts, "measured")] })).toThrow(
        /The parts of white/,
      );
  });
});

describe("glazeStrip", () => {
  test("orders by film, from the bare ground on", () => {
    const film = (
      filmUm: number,
    ): { filmUm: number; label: string; colour: typeof colour; standing: "measured" } => ({
      filmUm,
      label: `${filmUm} µm`,
      colour,
      standing: "measured",
    });
    expect(
      seenTexts(glazeStrip({ ...STRIP, films: [film(40), film(0), film(10)] })).filter((text) =>
        text.endsWith("µm"),
      ),
    ).toEqual(["0 µm", "10 µm", "40 µm"]);
    for (const um of [-1, NaN, Infinity])
      expect(() => glazeStrip({ ...STRIP, films: [film(um)] })).toThrow(/The film thickness/);
    expect(() => glazeStrip({ ...STRIP, films: [] })).toThrow(/The steps/);
  });
});

describe("glossStrip", () => {
  test("keeps the order given, finish above depth", () => {
    const svg = glossStrip({
      ...STRIP,
      finishes: [
        { label: "matte", depth: "L* 25", colour, standing: "derived" },
        { label: "gloss", depth: "L* 7", colour, standing: "measured" },
      ],
    });
    expect(seenTexts(svg).slice(0, 4)).toEqual(["matte", "L* 25", "gloss", "L* 7"]);
    expect(() => glossStrip({ ...STRIP, finishes: [] })).toThrow(/The steps/);
  });
});
