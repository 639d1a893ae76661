import { remembered } from "../../quantities/remembered.ts";
import type { Records } from "../../records/records.ts";

/** Slugs of the whites that some colour was let down in, and of every paint of that family. */
export const whitesOfTheRange = remembered(({ colours }: Records): readonly string[] => {
  const all = [...colours.values()];
  const used = all.flatMap(({ tints }) => tints.map(({ white }) => white));
  const whites = all.filter(({ record }) => record.family === "white").map(({ slug }) => slug);
  return [...new Set([...used, ...whites])];
});
