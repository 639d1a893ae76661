/** What a sheet reads of others' let-downs, in a few of the demonstration's colours. */
import { describe, expect, test } from "vitest";
import { readBy } from "../../lib/kept/reads.ts";
import { followedRecords } from "../../lib/records/followed-records.ts";
import { allFits } from "../../lib/sheet/all-sheets.ts";
import { colourSheet } from "../../lib/sheet/colour-sheet.ts";
import { colourOf, withOilIndex } from "./few-colours.ts";

describe("a colour expected in a white that another was let down in", () => {
  const [before, after] = [70, 71].map((oilIndex) => allFits(withOilIndex(oilIndex)));

  test("is not moved by the other's oil index, though that moves the other's own fit in the sixth digit", () => {
    const whitesOf = (fits: typeof before) => {
      const fit = fits?.get("alizarin-crimson");
      return fit?.kind === "fit" ? fit.otherWhites : [];
    };
    expect(whitesOf(before).map(({ change, through }) => [change.white, through])).toEqual([
      ["lead-white", ["burnt-sienna"]],
    ]);
    expect(whitesOf(after)).toEqual(whitesOf(before));
    expect(after?.get("burnt-sienna")).not.toEqual(before?.get("burnt-sienna"));
  });

  test("has a sheet that asks whether the other has an oil index, and not what it is", () => {
    const records = withOilIndex(70);
    const { value: followed } = followedRecords(records);
    const { value, names } = readBy(() =>
      colourSheet(colourOf("alizarin-crimson", followed), allFits(records), followed),
    );
    expect(value.expectedTints.map(({ white }) => white.slug)).toEqual(["lead-white"]);
    const index = "records/colours/burnt-sienna/record/oilIndexGPer100g";
    expect([...names].filter((name) => name.startsWith(index))).toEqual([`${index}/?`]);
  });
});
