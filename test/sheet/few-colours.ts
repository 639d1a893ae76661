import type { Colour, Records } from "../../lib/records/records.ts";
import { RECORDS } from "../support/demonstration.ts";

/** Colours of the demonstration: each is let down in titanium white, burnt sienna in lead white too. */
export const FEW = ["alizarin-crimson", "burnt-sienna", "lead-white", "titanium-white"];

export function colourOf(slug: string, { colours }: Records): Colour {
  const colour = colours.get(slug);
  if (colour === undefined) throw new Error(`Unexpected demonstration without ${slug}`);
  return colour;
}

/** These alone, with another oil index of burnt sienna. */
export function withOilIndex(oilIndexGPer100g: number): Records {
  const colours = FEW.map((slug) => colourOf(slug, RECORDS)).map((colour) =>
    colour.slug === "burnt-sienna"
      ? { ...colour, record: { ...colour.record, oilIndexGPer100g } }
      : colour,
  );
  return { ...RECORDS, colours: new Map(colours.map((colour) => [colour.slug, colour])) };
}
