import { namesWithin } from "./phrases.ts";

/** By name as long as a reader takes them in. */
const NAMED_MAX = 3;

export function named(colours: readonly string[]): string {
  return colours.length > NAMED_MAX ? `${colours.length} anderen Farben` : namesWithin(colours);
}
