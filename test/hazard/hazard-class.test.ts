/** The table of hazard classes, row by row. */
import { describe, expect, test } from "vitest";
import {
  HAZARD_CLASSES,
  sameSeverity,
  type ClassElements,
} from "../../lib/hazard/classify/hazard-class.ts";

const CLASSES = Object.entries<ClassElements>(HAZARD_CLASSES).map(([name, elements]) => ({
  name,
  ...elements,
}));

// basis: memory, clp-1272-2008-memory: a category is numbered by its severity, 1 the gravest; 2B irritates the eye less than 2.
test.each(CLASSES)("$name ranks by the number of its category", ({ name, rank }) => {
  const category = name === "Eye Irrit. 2B" ? 3 : Number(/\d/.exec(name)?.[0] ?? 1);
  expect(rank).toBe(category);
});

// basis: practice, no source; an effect on the body that may be final weighs most, on waters alone little, a remote one least.
describe("gravity", () => {
  const ENVIRONMENT = /^(?:Aquatic|Ozone|ED ENV|PBT|vPvB|PMT|vPvM)/;
  const MORTAL =
    /^(?:Acute Tox\. [12]$|Skin Corr\.|Resp\. Sens\.|STOT [SR]E 1|Muta\. 1|Carc\. 1|Repr\. 1|ED HH 1)/;

  test.each(CLASSES)("of $name lies where others of its kind do", (one) => {
    const { name, gravity, signalWord } = one;
    const [least, most] = MORTAL.test(name)
      ? [8, 8]
      : ENVIRONMENT.test(name)
        ? [1, 3]
        : signalWord === "Danger"
          ? [5, 6]
          : [1, 4];
    expect(gravity).toBeGreaterThanOrEqual(least);
    expect(gravity).toBeLessThanOrEqual(most);
  });

  test.each(CLASSES)("of $name is no less than that of a lower category", (one) => {
    const lower = CLASSES.filter(({ family, rank }) => family === one.family && rank > one.rank);
    for (const { gravity } of lower) expect(gravity).toBeLessThanOrEqual(one.gravity);
  });

  // What a warning is of, from what hardly shows to what stays.
  test.each([
    [1, ["Acute Tox. 5", "Skin Irrit. 3", "Met. Corr. 1"]],
    [2, ["Eye Irrit. 2B", "Flam. Liq. 4", "Aerosol 3"]],
    [3, ["Acute Tox. 4", "Skin Irrit. 2", "Eye Irrit. 2", "STOT SE 3"]],
    [4, ["Skin Sens. 1", "STOT SE 2", "STOT RE 2", "Muta. 2", "Carc. 2", "Repr. 2", "Asp. Tox. 2"]],
    [4, ["Flam. Liq. 3", "Flam. Sol. 2", "Self-heat. 2", "Water-react. 3", "Ox. Sol. 3"]],
  ])("of a warning: %i for %j", (step, names) => {
    const found = CLASSES.filter(({ name }) => (names as readonly string[]).includes(name));
    expect(found.map(({ name, gravity }) => [name, gravity]).toSorted()).toEqual(
      names.map((name) => [name, step]).toSorted(),
    );
  });

  test("is a whole number from 1 to 8", () => {
    for (const { name, gravity } of CLASSES) {
      expect(Number.isInteger(gravity), name).toBe(true);
      expect(gravity, name).toBeGreaterThanOrEqual(1);
    }
  });
});

test("classes are as severe as each other within one family alone", () => {
  expect(sameSeverity("Repr. 1A", "Repr. 1B")).toBe(true);
  expect(sameSeverity("Repr. 1B", "Repr. 2")).toBe(false);
  expect(sameSeverity("Repr. 2", "Muta. 2")).toBe(false);
});
