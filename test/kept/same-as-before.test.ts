import { describe, expect, test } from "vitest";
import { sameAsBefore } from "../../lib/kept/same-as-before.ts";

const place = (): string => "red.md:3";
const red = () => ({ slug: "red", record: { oils: [34, 36] }, place });

describe("a thing that is made again", () => {
  test("is the earlier one where it says the same", () => {
    const again = sameAsBefore();
    const first = again("red", red());
    expect(again("red", red())).toBe(first);
    expect(again("blue", red())).not.toBe(first);
  });

  test.each([
    ["a number", { ...red(), record: { oils: [34, 37] } }],
    ["one more in a list", { ...red(), record: { oils: [34, 36, 36] } }],
    ["a key that came", { ...red(), notes: undefined }],
    ["a key that went", { slug: "red", record: { oils: [34, 36] } }],
    ["another key", { slug: "red", record: { oils: [34, 36] }, film: place }],
    ["a list for its length", { ...red(), record: { oils: { 0: 34, 1: 36 } } }],
    ["another function", { ...red(), place: () => "red.md:3" }],
    ["what is no plain data", { ...red(), record: new Map([["oils", [34, 36]]]) }],
  ])("is another where it does not: %s", (_, other) => {
    const again = sameAsBefore();
    again<unknown>("red", red());
    expect(again<unknown>("red", other)).toBe(other);
    // The newer one is what is held from then on.
    expect(again<unknown>("red", red())).not.toBe(other);
  });

  test("of no plain data is never taken for the earlier", () => {
    const again = sameAsBefore();
    const first = again("red", new Map([["oil", 34]]));
    expect(again("red", new Map([["oil", 36]]))).not.toBe(first);
  });
});
