import type { ExpectedContradiction } from "../../permanence/expected-contradiction.ts";
import type { ExposureStatement, StatedContradiction } from "../../permanence/exposure.ts";
import type { SensitivityStatement } from "../../permanence/sensitivity.ts";
import type { PermanenceStatement } from "../../permanence/statements.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import {
  bracketed,
  decimals,
  deltaEabText,
  listed,
  namesWithin,
  sentence,
  within,
} from "./phrases.ts";

/** What the pigment does, of one and of several. */
const EFFECTS: Readonly<
  Record<SensitivityStatement["values"]["effect"], readonly [one: string, several: string]>
> = {
  bleaches: ["bleaches", "bleach"],
  darkens: ["darkens", "darken"],
  browns: ["turns brown", "turn brown"],
  reddens: ["reddens", "redden"],
  whitens: ["whitens", "whiten"],
  "turns violet": ["turns violet", "turn violet"],
  dissolves: ["dissolves", "dissolve"],
  "loses its ash": [
    "loses its bone ash and keeps its carbon",
    "lose their bone ash and keep their carbon",
  ],
  fades: ["fades", "fade"],
};
const IN_OIL: Readonly<Record<SensitivityStatement["values"]["inOil"], string>> = {
  shielded: "oil shields",
  "partly shielded": "oil shields in part",
  "not shielded": "oil does not shield",
};

/** Lightfastness and what else harms a colour. A category is only ever an exposure's or somebody's word; an estimate is an expectation. */
export const PERMANENCE_RULINGS: WordingsOf<PermanenceStatement> = {
  "exposed-under-standard": (v) =>
    `Category ${v.category}: the ${v.form} changed by ${deltaEabText(v.meanDeltaEab)}${limit(v.deltaEabMax)}, exposed by ${sources(v)}.`,
  "exposed-not-under-standard": (v) =>
    `The ${v.form} changed by ${deltaEabText(v.meanDeltaEab)}, as in category ${v.category}${limit(v.deltaEabMax)}; the exposure (${sources(v)}) is not all that the standard asks for.`,
  "exposure-as-stated": (v) =>
    `As stated by others, the ${v.form} changed by ${deltaEabText(v.meanDeltaEab)}, as in category ${v.category}${limit(v.deltaEabMax)} (${sources(v)}); not exposed here.`,
  "exposure-better-than-stated": (v) =>
    contradicted(v, "better", `the category ${v.stated} that is stated`),
  "exposure-worse-than-stated": (v) =>
    contradicted(v, "less well", `the category ${v.stated} that is stated`),
  "exposure-better-than-expected": (v) =>
    contradicted(v, "better", `its pigments lead us to expect (${v.expectation})`),
  "exposure-worse-than-expected": (v) =>
    contradicted(v, "less well", `its pigments lead us to expect (${v.expectation})`),
  "category-stated": ({ category, form }) =>
    `Category ${category} is stated for the colour${bracketed(form)}; not tested here.`,
  "pigment-category-stated": ({ category, form, pigment }) =>
    `Category ${category} is the supplier's word for ${within(pigment)}${bracketed(form)}; not tested here.`,
  "expected-by-colour-index-name": ({ pigment, colourIndexName, expectation, kinds }) =>
    sentence(
      `${within(pigment)}${bracketed(colourIndexName, kindsBeside(kinds, pigment))}: expected ${expectation}; not tested here`,
    ),
  "pigment-exposed-in-its-own-paint": ({ pigment, form, deltaEab, category }) =>
    sentence(
      `${within(pigment)} in a paint of its own was exposed here: its ${form} changed by ${deltaEabText(deltaEab)}, as in category ${category}`,
    ),
  "pigment-exposed-as-stated": ({ pigment, form, deltaEab, category }) =>
    sentence(
      `${within(pigment)} in a paint of its own changed in light by ${deltaEabText(deltaEab)} in the ${form}, as in category ${category}, as stated by others`,
    ),
  "weaker-in-tints": ({ pigment, expectation }) =>
    `In tints and thin glazes ${within(pigment)} lasts less well: expected ${expectation}; not tested here.`,
  "mixture-with-unknown-pigment": ({ pigments }) =>
    `We do not know how ${namesWithin(pigments)} ${stand(pigments)} up to light, and a mixture lasts only as long as its weakest pigment: so no lightfastness is given.`,
  "pigments-alike": ({ pigments }) => `Its pigments last alike: ${namesWithin(pigments)}.`,
  "weakest-pigment-decides": ({ pigments }) =>
    `The least lightfast pigment decides: ${namesWithin(pigments)}.`,
  "lightfastness-of-pigment-unknown": ({ pigments }) =>
    `We do not know how ${namesWithin(pigments)} ${stand(pigments)} up to light.`,
  "least-lightfast-by-exposure": ({ pigments, deltaEab }) =>
    leastLightfast(
      pigments,
      deltaEab === undefined
        ? undefined
        : `${deltaEabText(deltaEab)} where its own paint was exposed`,
    ),
  "least-lightfast-as-stated": ({ pigments, category }) =>
    leastLightfast(pigments, `category ${category}, as stated`),
  "least-lightfast-expected": ({ pigments }) => leastLightfast(pigments, "expected, not tested"),
  "components-alike-in-light": ({ pigments }) =>
    `${sentence(`${namesWithin(pigments)} are alike in light, as far as is known`).replace(/\.$/, "")}: none of them is more likely to go first.`,
  "components-in-light-not-known": ({ pigments }) =>
    `We do not know how ${namesWithin(pigments)} ${stand(pigments)} up to light, nor therefore which component goes first.`,
  "blue-wool-is-another-scale": ({ reference, category }) =>
    `Blue wool ${reference} is a supplier's word, and of another scale; by custom it goes with category ${category}, but no standard says so.`,
  "change-beside-grey-scale": ({ deltaEab, grade }) =>
    `A change of ${deltaEabText(deltaEab)} is nearest grade ${grade} of the grey scale, where 5 is no change.`,

  "label-not-tested": () => "Lightfastness not tested here.",
  "label-category-as-stated": ({ category }) =>
    `Lightfastness ${category} as stated by others; not tested here.`,
  "label-category-under-standard": ({ category, forms }) =>
    `Lightfastness ${category} by ASTM D4303${bracketed(listed(forms))}.`,
  "label-own-exposure": ({ category, forms }) =>
    `Lightfastness: changed as in category ${category} in our own exposure${bracketed(listed(forms))}, not the standard's.`,
  "listed-as-suitable": ({ category }) =>
    `Category ${category} is one of the two that the specification for artists' oil paints lists.`,
  "below-suitable": ({ category }) =>
    `Category ${category} lies below the two that the specification for artists' oil paints lists.`,

  "harmed-by-alkali": (v) => harm(v, "in alkali"),
  "harmed-by-acid": (v) => harm(v, "in acid"),
  "harmed-by-sulphur": (v) => harm(v, "in sulphurous air"),
  "harmed-by-heat": (v) => harm(v, "when heated"),
  "harmed-by-damp": (v) => harm(v, "in strong light with damp"),
  "harmed-by-light": (v) => harm(v, v.effect === "fades" ? "in light" : "in strong light"),
  "said-to-be-harmed": ({ pigments, effect }) =>
    sentence(
      `old books say that ${namesWithin(pigments)} ${EFFECTS[effect][pigments.length < 2 ? 0 : 1]} beside colours that hold sulphides; whether that happens in oil is disputed`,
    ),
};

/** The last category has no upper limit to name. */
function limit(deltaEabMax: number | undefined): string {
  return deltaEabMax === undefined ? "" : bracketed(`up to ${decimals(deltaEabMax, 0)}`);
}

function sources({ standards, exposures }: ExposureStatement["values"]): string {
  return [...standards, listed(exposures)].join(", ");
}

function contradicted(
  { form, exposed, meanDeltaEab }: StatedContradiction["values"] | ExpectedContradiction["values"],
  held: string,
  than: string,
): string {
  return `Exposed here, the ${form} held ${held} (as in category ${exposed}, ${deltaEabText(meanDeltaEab)}) than ${than}; the exposure counts.`;
}

function stand(pigments: readonly string[]): string {
  return pigments.length > 1 ? "stand" : "stands";
}

/** What the pigment stands among in the list, unless that is its own name. */
function kindsBeside(kinds: string, pigment: string): string | undefined {
  return kinds.toLowerCase() === pigment.toLowerCase() ? undefined : `among ${kinds}`;
}

/** Of the components of a mixture: the one whose loss is the likeliest. */
function leastLightfast(pigments: readonly string[], ground: string | undefined): string {
  const [verb, watched] =
    pigments.length > 1 ? ["are", "the ones to watch"] : ["is", "the one to watch"];
  return sentence(
    `${namesWithin(pigments)} ${verb} the least lightfast as far as is known${bracketed(ground)}: ${watched}`,
  );
}

function harm({ pigments, effect, inOil }: SensitivityStatement["values"], where: string): string {
  const [one, several] = EFFECTS[effect];
  const isOne = pigments.length < 2;
  const shield = IN_OIL[inOil].replace(
    /^(oil (?:shields|does not shield))/,
    `$1 ${isOne ? "it" : "them"}`,
  );
  return sentence(`${namesWithin(pigments)} ${isOne ? one : several} ${where}; ${shield}`);
}
