import { chosen, index, type Chance } from "../chance.ts";
import type { Mutation } from "./text.ts";

const PATHS = [
  "oil.oilIndexGPer100g",
  "drying.touchDryDays",
  "drying.class",
  "notations.masstone.munsell.text",
  "notations.masstone.lab.D65/10",
  "tints.titanium-white.atL.50.b",
  "optics.hidingFilmUm",
  "oil",
  "",
  "__proto__.x",
  "tints.0.steps",
  "permanence.category",
] as const;

const SLUGS = [
  "lamp-black",
  "titanium-white",
  "cerulean-blue",
  "green-earth",
  "zinc-white",
  "chromium-oxide-green",
  "no-such",
  "constructor",
  "Lamp Black",
] as const;

const SHORTCODES: readonly ((chance: Chance) => string)[] = [
  (chance) => `{% figure ${chosen(chance, SLUGS)}.${chosen(chance, PATHS)} %}`,
  (chance) => `{% colour ${chosen(chance, SLUGS)} %}`,
  (chance) => `{% answer ${chosen(chance, SLUGS)} %}`,
  (chance) =>
    `{% table colours="${chosen(chance, SLUGS)}, ${chosen(chance, SLUGS)}" figures="${chosen(chance, PATHS)}" %}`,
  (chance) => `{% swatches colours="${chosen(chance, SLUGS)}" %}`,
  (chance) => `{% ladder ${chosen(chance, SLUGS)} ${chosen(chance, SLUGS)} %}`,
  (chance) => `{% trail ${chosen(chance, SLUGS)} %}`,
  () => "{% blacks %}",
  () => "{% scattering %}",
  () => "{% theory %}",
  () => '{% fold "x" %}',
  () => "{% endfold %}",
  () => "{% fold %}",
  () => '{% figure "',
  () => "{% %}",
  () => "{%figure x%}{%",
];

const CLAIMS: readonly ((chance: Chance) => string)[] = [
  (chance) => `between: [${chosen(chance, ["1e300", "-1e300", "0", "5"])}, 1e-300]`,
  (chance) => `above: ${chosen(chance, ["1e300", "-1e300", "0", "lamp-black.oil.cpvc"])}`,
  (chance) => `below: ${chosen(chance, SLUGS)}.${chosen(chance, PATHS)}`,
  () => "is: not stated",
  (chance) => `lowestOf: ${chosen(chance, ["black", "white", "[lamp-black]", "[]"])}`,
  () => "highestOf: black, by: 1e300",
];

/** Shortcodes and claims that lead nowhere, or somewhere else; folds that do not close. */
export const ANSWER_MUTATIONS: readonly Mutation[] = [
  (text, chance) => {
    const at = text.indexOf("\n---\n", 4) + 5 + index(chance, 300);
    return `${text.slice(0, at)}${chosen(chance, SHORTCODES)(chance)}${text.slice(at)}`;
  },
  (text, chance) => {
    const all = [...text.matchAll(/\{%.*?%\}/g)];
    if (all.length === 0) return text;
    const found = chosen(chance, all);
    return (
      text.slice(0, found.index) +
      chosen(chance, ["", ...SHORTCODES.map((made) => made(chance))]) +
      text.slice(found.index + found[0].length)
    );
  },
  (text, chance) =>
    text.replace(/figure: [\w.-]+/, `figure: ${chosen(chance, SLUGS)}.${chosen(chance, PATHS)}`),
  (text, chance) => text.replace(/between: \[.*?\]/, chosen(chance, CLAIMS)(chance)),
  (text, chance) => text.replace(/above: [\w.-]+/, chosen(chance, CLAIMS)(chance)),
  (text, chance) =>
    text.replace(
      /figures: \[.*?\]/,
      `figures: [${chosen(chance, PATHS)}, "${chosen(chance, PATHS)}"]`,
    ),
  (text, chance) => text.replace(/colours: \[.*?\]/, `colours: [${chosen(chance, SLUGS)}]`),
];
