/** What scripts of the pages say. */
export { COMPARE_PAGES } from "./compare-pages.ts";
export { MIXING_PAGES } from "./mixing-pages.ts";
export { COMPARISON_RULINGS } from "./statements-comparison.ts";
export { NUMBERS } from "./phrases.ts";
export { mixingSentence } from "./statements-mixing.ts";

export const LANGUAGE = "es";
