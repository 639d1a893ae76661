import { describe, expect, test } from "vitest";
import {
  bluenessRows,
  type BluenessLane,
  type BluenessRows,
} from "../../lib/plots/blueness-rows.ts";
import {
  relativeScattering,
  scatteringScale,
  type RelativeScattering,
} from "../../lib/plots/relative-scattering.ts";
import { hasClass, numberOf, parsedSvg } from "./parsed-svg.ts";

const FRAME: Omit<BluenessRows, "rows"> = {
  idPrefix: "b",
  title: "t",
  description: "d",
  axisLabel: "b*",
  ends: { minus: "blue", plus: "yellow" },
  domain: [-15, 10],
};
const picture = (...lanes: BluenessLane[]): string =>
  bluenessRows({ ...FRAME, rows: [{ label: "Lamp black", lanes }] });
const point = (b: number): BluenessLane => ({
  kind: "point",
  label: "titanium",
  b,
  uncertainty: 1,
});
const band = (low: number, middle: number, high: number): BluenessLane => ({
  kind: "band",
  label: "lead",
  low,
  middle,
  high,
});

describe("b* of blacks, a lane a white", () => {
  test("yellow lies right, in equal units, and a band spans its two ends on the same scale", () => {
    const { all } = parsedSvg(picture(point(-5), point(0), point(5), band(-5, 0, 5)));
    const [blue, neutral, yellow] = all
      .filter((element) => hasClass(element, "plot__mark"))
      .map(({ children: [ring] }) => (ring === undefined ? NaN : numberOf(ring, "cx")));
    expect((yellow ?? NaN) - (neutral ?? NaN)).toBeCloseTo((neutral ?? NaN) - (blue ?? NaN), 2);
    expect(yellow).toBeGreaterThan(neutral ?? NaN);
    const [drawn] = all.filter((element) => hasClass(element, "plot__bounds"));
    if (drawn === undefined) throw new Error("Unexpected missing band");
    expect(numberOf(drawn, "x")).toBeCloseTo(blue ?? NaN, 2);
    expect(numberOf(drawn, "x") + numberOf(drawn, "width")).toBeCloseTo(yellow ?? NaN, 2);
  });

  test("a band has no paint's colour and a broken outline; only a reading has a mark", () => {
    const { all } = parsedSvg(picture(band(-1, 0, 1)));
    expect(all.some((element) => hasClass(element, "plot__mark"))).toBe(false);
    expect(
      all
        .filter((element) => hasClass(element, "plot__bounds"))
        .map(({ attributes }) => [attributes["fill"], attributes["stroke-dasharray"]]),
    ).toEqual([["currentColor", "4 3"]]);
  });

  test.each([
    [() => picture(point(-15.01)), "The b*"],
    [() => picture(point(NaN)), "The b*"],
    [() => picture(band(-1, 0, 10.01)), "The b*"],
    [() => picture(band(1, 0, 2)), "The band of b*"],
    [() => picture(), "The lanes"],
  ])("refuses what it can't draw (%#)", (draw, told) => expect(draw).toThrow(told));
  test.each([-15, 10])("b* of %d is drawn still", (b) =>
    expect(() => picture(point(b))).not.toThrow(),
  );
});

describe("scattering of a white over the spectrum", () => {
  const base: RelativeScattering = {
    idPrefix: "s",
    title: "t",
    description: "d",
    wavelengthLabel: "nm",
    axisLabel: "S",
    most: 2,
    read: [],
    band: [
      { nm: 440, low: 1, high: 2 },
      { nm: 700, low: 0.5, high: 0.8 },
    ],
  };
  test("a line broken where the films told nothing is as many lines, never solid, since none was read as S", () => {
    const run = (from: number): { nm: number; value: number }[] => [
      { nm: from, value: 1 },
      { nm: from + 50, value: 1 },
    ];
    const lines = parsedSvg(relativeScattering({ ...base, read: [run(450), run(600)] })).all.filter(
      (element) => hasClass(element, "plot__line"),
    );
    expect(lines.map(({ attributes }) => attributes["stroke-dasharray"])).toEqual(["9 3", "9 3"]);
  });
  test.each([
    [() => relativeScattering({ ...base, band: [] }), "The points of scattering"],
    [
      () =>
        relativeScattering({
          ...base,
          band: [
            { nm: 440, low: 2, high: 1 },
            { nm: 700, low: 1, high: 1 },
          ],
        }),
      "The band of scattering",
    ],
    [
      () =>
        relativeScattering({
          ...base,
          band: [
            { nm: 440, low: 1, high: 2.01 },
            { nm: 700, low: 1, high: 1 },
          ],
        }),
      "The relative scattering",
    ],
    [
      () =>
        relativeScattering({
          ...base,
          band: [
            { nm: 440, low: NaN, high: 1 },
            { nm: 700, low: 1, high: 1 },
          ],
        }),
      "The band of scattering",
    ],
  ])("refuses what it can't draw (%#)", (draw, told) => expect(draw).toThrow(told));
  test.each([
    [[1.5], 1.5],
    [[1.51], 2],
    [[0.2], 1.5],
    [[6], 6],
  ] as const)("%j is drawn to %d", (values, most) => expect(scatteringScale(values)).toBe(most));
  test.each([[[6.01]], [[NaN]]])("%j is refused a scale", (values) =>
    expect(() => scatteringScale(values)).toThrow("The relative scattering"),
  );
});
