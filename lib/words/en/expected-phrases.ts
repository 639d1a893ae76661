import { namesWithin, within } from "./phrases.ts";

/** By name as long as a reader takes them in. */
const NAMED_MAX = 3;

export function named(colours: readonly string[]): string {
  const [first] = colours;
  if (colours.length === 1 && first !== undefined) return `${within(first)} does`;
  return colours.length > NAMED_MAX
    ? `${colours.length} other colours do`
    : `${namesWithin(colours)} do`;
}
