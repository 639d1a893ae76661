/**
 * No range counts twice: two figures that go by one range are no inputs of a third, which has to start from that range.
 * PVC over CPVC by hand: pigment over pigment and oil of density 0.93 or what the record has, and 1/(1 + OA rho/93.5).
 */
import { describe, expect, test } from "vitest";
import {
  inputsOf,
  isFigure,
  isKnown,
  sourceFigure,
  type Figure,
} from "../../lib/quantities/figure.ts";
import { ends, isInterval, type Quantity } from "../../lib/quantities/interval.ts";
import { derivedFigure } from "../../lib/quantities/derived-figure.ts";
import { figureEntries } from "../../lib/sheet/figure-entries.ts";
import { asWeighed } from "../../lib/sheet/oil/weighed-paint.ts";
import type { Declared } from "../../lib/sheet/declaration.ts";
import type { Example } from "../../lib/sheet/found.ts";
import { OIL } from "../../lib/sheet/oil/oil-figures.ts";
import { paintAsMade } from "../../lib/sheet/paint-as-made.ts";
import { RECORDS, sheets } from "../support/demonstration.ts";

/** Customary ranges: what they name among their inputs decides that they are customary, and not how wide. */
const OWN_RANGE = new Set(["customary share kept by"]);

function isRange(figure: Figure): boolean {
  return isKnown(figure) && isInterval(figure.value);
}

function rangedInputs(figure: Figure): Figure[] {
  return inputsOf(figure).filter((input) => isFigure(input) && isRange(input)) as Figure[];
}

/** Ranges that a figure goes by, those that no other figure's range makes. */
function rangesBelow(figure: Figure): ReadonlySet<Figure> {
  const isOwn = isKnown(figure) && OWN_RANGE.has(figure.method);
  const inputs = isOwn ? [] : rangedInputs(figure);
  return new Set(inputs.length === 0 ? [figure] : inputs.flatMap((one) => [...rangesBelow(one)]));
}

/** Whether two of a figure's inputs go by one range. */
function countsTwice(figure: Figure): boolean {
  if (!isRange(figure) || (isKnown(figure) && OWN_RANGE.has(figure.method))) return false;
  const below = rangedInputs(figure).flatMap((input) => [...rangesBelow(input)]);
  return new Set(below).size < below.length;
}

/** Whose ranges a figure rests on. */
function rootsOf(figure: Figure): string {
  const roots = new Set(rangedInputs(figure).flatMap((input) => [...rangesBelow(input)]));
  return [...roots].map((root) => (isKnown(root) ? root.method : "")).join(" and ");
}

describe("a range counts once", () => {
  test("in every figure of the demonstration", () => {
    const ranged = sheets().flatMap((sheet) =>
      [...figureEntries(sheet)].filter(({ figure }) => isRange(figure)),
    );
    expect(ranged.length).toBeGreaterThan(100);
    expect(
      ranged
        .filter(({ figure }) => countsTwice(figure))
        .map(
          ({ path, figure }) => `${path}: start it from ${rootsOf(figure)}, as reduced-pvc.ts does`,
        ),
    ).toEqual([]);
  });
  test("which tells a figure whose inputs share one", () => {
    const method = { name: "by hand", unit: "1" };
    const root = sourceFigure<Quantity>("estimated", [1, 2], {
      unit: "1",
      method: "guess",
      inputs: [],
    });
    const twice = derivedFigure(method, { root }, (v) => 2 * v.root);
    expect(countsTwice(twice)).toBe(false);
    expect(countsTwice(derivedFigure(method, { root, twice }, (v) => v.twice / v.root))).toBe(true);
  });
});

describe("PVC over CPVC", () => {
  const reduced = (slug: string): readonly number[] => {
    const figure = sheets().find((sheet) => sheet.slug === slug)?.oil.reducedPvc;
    return figure !== undefined && isKnown(figure) ? ends(figure.value) : [];
  };
  test("of a pigment whose density is a range is hardly one", () => {
    // derived: OI 58, OA 42. rho 2.9: 0.3560/0.4343; rho 3.5: 0.3142/0.3888.
    const [least, most] = reduced("yellow-ochre");
    expect(least).toBeCloseTo(0.808, 2);
    expect(most).toBeCloseTo(0.82, 2);
  });
  test("of an oil index that is 1.1 to 2 of the absorption goes by that ratio", () => {
    // derived: OA 40 to 100, rho 1.4 to 1.9. Most at 1.1 of OA 40 and rho 1.4: 1.599/1.662; least at twice OA 100 and rho 1.9: 3.032/5.086.
    const [least, most] = reduced("vine-black");
    expect(least).toBeCloseTo(0.596, 2);
    expect(most).toBeCloseTo(0.962, 2);
  });
});

test("nothing that follows goes by what the weight of lots takes the place of", () => {
  const colour = RECORDS.colours.get("bone-black");
  if (colour === undefined) throw new Error("bone-black is a colour of the demonstration");
  const { inFilm } = paintAsMade(colour, RECORDS);
  const weighed = asWeighed(inFilm, colour, RECORDS);
  const replaced = Object.keys(weighed).filter(
    (key) => weighed[key as keyof typeof weighed] !== inFilm[key as keyof typeof inFilm],
  );
  expect(replaced).toEqual(["paintDensityGPerCm3", "pigmentGPerMl", "contradictions"]);
  const members: Readonly<
    Record<string, Declared & { readonly example?: Example<string, unknown> }>
  > = OIL.shape.members;
  for (const [name, { example: [values] = [{}] }] of Object.entries(members))
    for (const from of Object.keys(values))
      expect(replaced, `${name} follows from ${from}`).not.toContain(from);
});
