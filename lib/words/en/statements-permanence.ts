import type { StatementWording } from "../words.ts";
import {
  bracketed,
  decimals,
  listed,
  namesWithin,
  sentence,
  within,
} from "./statements-phrases.ts";
import { hasValue, numberOf, textOf, textsOf, wordOf, type Values } from "./statement-params.ts";

/** What the pigment does, of one and of several. */
const EFFECTS = {
  bleaches: ["bleaches", "bleach"],
  darkens: ["darkens", "darken"],
  browns: ["turns brown", "turn brown"],
  reddens: ["reddens", "redden"],
  whitens: ["whitens", "whiten"],
  "turns violet": ["turns violet", "turn violet"],
  dissolves: ["dissolves", "dissolve"],
  "loses its ash": [
    "loses its bone ash, and keeps its carbon,",
    "lose their bone ash, and keep their carbon,",
  ],
  fades: ["fades", "fade"],
} as const;
const IN_OIL = {
  shielded: "oil shields",
  "partly shielded": "oil shields in part",
  "not shielded": "oil does not shield",
} as const;

/** Lightfastness and what else harms a colour. A category is only ever an exposure's or somebody's word; an estimate is an expectation. */
export const PERMANENCE_RULINGS = {
  "exposed-under-standard": (v) =>
    `Category ${textOf(v, "category")}: the ${textOf(v, "form")} changed by ${change(v)}${limit(v)}, exposed by ${sources(v)}.`,
  "exposed-not-under-standard": (v) =>
    `The ${textOf(v, "form")} changed by ${change(v)}, as in category ${textOf(v, "category")}${limit(v)}; the exposure (${sources(v)}) is not the whole of the standard's.`,
  "exposure-better-than-stated": (v) =>
    `Exposed here, the ${textOf(v, "form")} held better (as in category ${textOf(v, "exposed")}, ${change(v)}) than the category ${textOf(v, "stated")} that is stated; the exposure counts.`,
  "exposure-worse-than-stated": (v) =>
    `Exposed here, the ${textOf(v, "form")} held less well (as in category ${textOf(v, "exposed")}, ${change(v)}) than the category ${textOf(v, "stated")} that is stated; the exposure counts.`,
  "exposure-better-than-expected": (v) =>
    `Exposed here, the ${textOf(v, "form")} held better (as in category ${textOf(v, "exposed")}, ${change(v)}) than its pigments lead one to expect (${textOf(v, "expectation")}); the exposure counts.`,
  "exposure-worse-than-expected": (v) =>
    `Exposed here, the ${textOf(v, "form")} held less well (as in category ${textOf(v, "exposed")}, ${change(v)}) than its pigments lead one to expect (${textOf(v, "expectation")}); the exposure counts.`,
  "category-stated": (v) =>
    `Category ${textOf(v, "category")} is stated for the colour${form(v)}; not tested here.`,
  "pigment-category-stated": (v) =>
    `Category ${textOf(v, "category")} is the supplier's word for ${within(textOf(v, "pigment"))}${form(v)}; not tested here.`,
  "expected-by-colour-index-name": (v) =>
    sentence(
      `${within(textOf(v, "pigment"))}${bracketed(textOf(v, "colourIndexName"), kindsBeside(v))}: expected ${textOf(v, "expectation")}; not tested here`,
    ),
  "pigment-exposed-in-its-own-paint": (v) =>
    sentence(
      `${within(textOf(v, "pigment"))} in a paint of its own was exposed here: its ${textOf(v, "form")} changed by \u0394E*ab ${decimals(numberOf(v, "deltaEab"), 1)}, as in category ${textOf(v, "category")}`,
    ),
  "weaker-in-tints": (v) =>
    `In tints and thin glazes ${within(textOf(v, "pigment"))} stands less well: expected ${textOf(v, "expectation")}; not tested here.`,
  "mixture-with-unknown-pigment": (v) =>
    `How ${namesWithin(textsOf(v, "pigments"))} ${textsOf(v, "pigments").length > 1 ? "stand" : "stands"} in light is not known, and a mixture is as good as its weakest: so its lightfastness is not stated.`,
  "pigments-alike": (v) =>
    `Its pigments are alike in light: ${namesWithin(textsOf(v, "pigments"))}.`,
  "weakest-pigment-decides": (v) =>
    `The least lightfast pigment decides: ${namesWithin(textsOf(v, "pigments"))}.`,
  "lightfastness-of-pigment-unknown": (v) =>
    `How ${namesWithin(textsOf(v, "pigments"))} ${textsOf(v, "pigments").length > 1 ? "stand" : "stands"} in light is not known here.`,
  "least-lightfast-by-exposure": (v) =>
    leastLightfast(
      v,
      hasValue(v, "deltaEab")
        ? `\u0394E*ab ${decimals(numberOf(v, "deltaEab"), 1)} where its own paint was exposed`
        : undefined,
    ),
  "least-lightfast-as-stated": (v) =>
    leastLightfast(
      v,
      hasValue(v, "category") ? `category ${textOf(v, "category")}, as stated` : undefined,
    ),
  "least-lightfast-expected": (v) => leastLightfast(v, "expected, not tested"),
  "components-alike-in-light": (v) =>
    `${sentence(`${namesWithin(textsOf(v, "pigments"))} are alike in light, as far as is known`).replace(/\.$/, "")}: none of them is the likelier to go first.`,
  "components-in-light-not-known": (v) =>
    `How ${namesWithin(textsOf(v, "pigments"))} ${textsOf(v, "pigments").length > 1 ? "stand" : "stands"} in light is not known, so neither is which component goes first.`,
  "blue-wool-is-another-scale": (v) =>
    `Blue wool ${numberOf(v, "reference")} is on a scale of its own; custom sets it beside category ${textOf(v, "category")}, no standard does.`,
  "change-beside-grey-scale": (v) =>
    `A change of \u0394E*ab ${decimals(numberOf(v, "deltaEab"), 1)} is nearest grade ${textOf(v, "grade")} of the grey scale, where 5 is no change.`,

  "label-not-tested": () => "Lightfastness not tested here.",
  "label-category-as-stated": (v) =>
    `Lightfastness ${textOf(v, "category")} as stated by others; not tested here.`,
  "label-category-under-standard": (v) =>
    `Lightfastness ${textOf(v, "category")} by ASTM D4303${bracketed(listed(textsOf(v, "forms")))}.`,
  "label-own-exposure": (v) =>
    `Lightfastness: changed as in category ${textOf(v, "category")} in our own exposure${bracketed(listed(textsOf(v, "forms")))}, not the standard's.`,
  "listed-as-suitable": (v) =>
    `Category ${textOf(v, "category")} is one of the two that the specification for artists' oil paints lists.`,
  "below-suitable": (v) =>
    `Category ${textOf(v, "category")} lies below the two that the specification for artists' oil paints lists.`,

  "harmed-by-alkali": (v) => harm(v, "in alkali"),
  "harmed-by-acid": (v) => harm(v, "in acid"),
  "harmed-by-sulphur": (v) => harm(v, "in sulphurous air"),
  "harmed-by-heat": (v) => harm(v, "when heated"),
  "harmed-by-damp": (v) => harm(v, "in strong light with damp"),
  "harmed-by-light": (v) => harm(v, "in strong light, slowly or suddenly"),
  "said-to-be-harmed": (v) =>
    sentence(
      `old books say that ${namesWithin(textsOf(v, "pigments"))} ${EFFECTS[wordOf(v, "effect", EFFECTS)][textsOf(v, "pigments").length < 2 ? 0 : 1]} beside colours that hold sulphides; whether that happens in oil is disputed`,
    ),
} as const satisfies Record<string, StatementWording>;

function change(values: Values): string {
  return `\u0394E*ab ${decimals(numberOf(values, "meanDeltaEab"), 1)}`;
}

/** The last category has no upper limit to name. */
function limit(values: Values): string {
  return hasValue(values, "deltaEabMax")
    ? bracketed(`up to ${decimals(numberOf(values, "deltaEabMax"), 0)}`)
    : "";
}

function sources(values: Values): string {
  return [...textsOf(values, "standards"), listed(textsOf(values, "exposures"))].join(", ");
}

/** What the pigment stands among in the list, unless that is its own name. */
function kindsBeside(values: Values): string | undefined {
  const kinds = textOf(values, "kinds");
  return kinds.toLowerCase() === textOf(values, "pigment").toLowerCase()
    ? undefined
    : `among ${kinds}`;
}

function form(values: Values): string {
  return hasValue(values, "form") ? bracketed(textOf(values, "form")) : "";
}

/** Of the components of a mixture: the one whose loss is the likeliest. */
function leastLightfast(values: Values, ground: string | undefined): string {
  const pigments = textsOf(values, "pigments");
  const [verb, watched] =
    pigments.length > 1 ? ["are", "the ones to watch"] : ["is", "the one to watch"];
  return sentence(
    `${namesWithin(pigments)} ${verb} the least lightfast as far as is known${bracketed(ground)}: ${watched}`,
  );
}

function harm(values: Values, where: string): string {
  const pigments = textsOf(values, "pigments");
  const [one, several] = EFFECTS[wordOf(values, "effect", EFFECTS)];
  const isOne = pigments.length < 2;
  const shield = IN_OIL[wordOf(values, "inOil", IN_OIL)].replace(
    /^(oil (?:shields|does not shield))/,
    `$1 ${isOne ? "it" : "them"}`,
  );
  return sentence(`${namesWithin(pigments)} ${isOne ? one : several} ${where}; ${shield}`);
}
