import { describe, expect, test } from "vitest";
import { RECORDS } from "../support/demonstration.ts";

/** Colours that an answer speaks of, in its summary or by a shortcode in its text. */
const ANSWERS = [...RECORDS.answers.values()].map(({ slug, record, body }) => ({
  slug,
  claims: record.claims ?? [],
  colours: record.colours ?? [],
  shown: [...`${record.summary}\n${body}`.matchAll(/\{% figure ([a-z0-9-]+)\./g)].map(
    ([, colour]) => colour ?? "",
  ),
}));

test("there are forty-one, and each has its claims", () => {
  expect(ANSWERS.length).toBe(41);
  expect(ANSWERS.filter(({ claims }) => claims.length < 3).map(({ slug }) => slug)).toEqual([]);
});

describe.each(ANSWERS)("$slug", ({ claims, colours, shown }) => {
  // A colour counts on either side of a comparison.
  const isHeld = (colour: string): boolean => JSON.stringify(claims).includes(`"${colour}.`);
  test("claims something of each colour whose figure it shows", () =>
    expect([...new Set(shown)].filter((colour) => !isHeld(colour))).toEqual([]));
  test("claims something of most colours that it is about", () =>
    expect(colours.filter(isHeld).length).toBeGreaterThanOrEqual(Math.ceil(colours.length / 2)));
});
