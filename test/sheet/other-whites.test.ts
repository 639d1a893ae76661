/** What a sheet reads of others' let-downs, in a few of the demonstration's colours: each is let down in titanium white, burnt sienna in lead white too. */
import { describe, expect, test } from "vitest";
import { readBy } from "../../lib/kept/reads.ts";
import { followedRecords } from "../../lib/records/followed-records.ts";
import type { Colour, Records } from "../../lib/records/records.ts";
import { allFits } from "../../lib/sheet/all-sheets.ts";
import { colourSheet } from "../../lib/sheet/colour-sheet.ts";
import { RECORDS } from "../support/demonstration.ts";

const FEW = ["alizarin-crimson", "burnt-sienna", "lead-white", "titanium-white"];

function colourOf(slug: string, { colours }: Records): Colour {
  const colour = colours.get(slug);
  if (colour === undefined) throw new Error(`Unexpected demonstration without ${slug}`);
  return colour;
}

function withOilIndex(oilIndexGPer100g: number): Records {
  const colours = FEW.map((slug) => colourOf(slug, RECORDS)).map((colour) =>
    colour.slug === "burnt-sienna"
      ? { ...colour, record: { ...colour.record, oilIndexGPer100g } }
      : colour,
  );
  return { ...RECORDS, colours: new Map(colours.map((colour) => [colour.slug, colour])) };
}

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
