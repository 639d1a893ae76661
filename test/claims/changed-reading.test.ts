import { expect, test } from "vitest";
import { isKnown } from "../../lib/quantities/figure.ts";
import { figureEntries } from "../../lib/sheet/figure-entries.ts";
import {
  answerOf,
  heldWorkshop,
  slopedReadings,
  TWO_BLACKS,
  type HeldWorkshop,
} from "./two-blacks.ts";

/** A claim on every number of the sheets, which any change of it turns. */
function claimsOnAll({ index }: HeldWorkshop): string[] {
  return index.sheets.flatMap((sheet) =>
    figureEntries(sheet).flatMap(({ path, figure }) => {
      const value = isKnown(figure) ? figure.value : undefined;
      if (typeof value !== "number") return [];
      const reach = Math.abs(value) * 1e-9 + 1e-9;
      return [`figure: "${sheet.slug}.${path}", between: [${value - reach}, ${value + reach}]`];
    }),
  );
}

const CLAIMS = claimsOnAll(heldWorkshop(TWO_BLACKS));
const TEXTS = {
  ...TWO_BLACKS,
  // At most a hundred claims stand in one answer.
  ...Object.fromEntries(
    Array.from({ length: Math.ceil(CLAIMS.length / 100) }, (_, i) => [
      `answers/part-${i}.md`,
      answerOf(CLAIMS.slice(100 * i, 100 * (i + 1))),
    ]),
  ),
};
const claimed = (claim: object): string => ("figure" in claim ? String(claim.figure) : "");

test("every claim holds before a reading changes, and those on two readings are told apart", () => {
  const { held } = heldWorkshop(TEXTS);
  expect(held.flatMap(({ claims }) => claims.flatMap(({ faults }) => faults))).toEqual([]);
  expect(held.flatMap(({ claims }) => claims)).toHaveLength(CLAIMS.length);
});

test.each(["bone-black", "lamp-black"])(
  "a reading of %s taken again turns exactly the claims that rest on it",
  (reading) => {
    const before = heldWorkshop(TEXTS);
    const resting = before.held.flatMap(({ claims }) =>
      claims
        .filter(({ roots }) =>
          roots.some(({ kind, slug }) => kind === "reading" && slug === reading),
        )
        .map(({ claim }) => claimed(claim)),
    );
    const after = heldWorkshop({
      ...TEXTS,
      [`readings/${reading}.csv`]: slopedReadings(0.032, 0.029),
    });
    const turned = after.held.flatMap(({ claims }) =>
      claims.filter(({ faults }) => faults.length > 0).map(({ claim }) => claimed(claim)),
    );
    expect(turned.length).toBeGreaterThan(3);
    expect(turned.length).toBeLessThan(CLAIMS.length / 2);
    expect(turned.toSorted()).toEqual(resting.toSorted());
  },
);
