import type { ExpectedContradiction } from "../../permanence/expected-contradiction.ts";
import type { ExposureStatement, StatedContradiction } from "../../permanence/exposure.ts";
import type { SensitivityStatement } from "../../permanence/sensitivity.ts";
import { bracketed, decimals, deltaEabText, listed, namesWithin, sentence } from "./phrases.ts";

/** What the pigment does, of one and of several. */
export const EFFECTS: Readonly<
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

/** The last category has no upper limit to name. */
export function limit(deltaEabMax: number | undefined): string {
  return deltaEabMax === undefined ? "" : bracketed(`up to ${decimals(deltaEabMax, 0)}`);
}

export function sources({ standards, exposures }: ExposureStatement["values"]): string {
  return [...standards, listed(exposures)].join(", ");
}

export function contradicted(
  { form, exposed, meanDeltaEab }: StatedContradiction["values"] | ExpectedContradiction["values"],
  held: string,
  than: string,
): string {
  return `Exposed here, the ${form} held ${held} (as in category ${exposed}, ${deltaEabText(meanDeltaEab)}) than ${than}; the exposure counts.`;
}

export function stand(pigments: readonly string[]): string {
  return pigments.length > 1 ? "stand" : "stands";
}

/** What the pigment stands among in the list, unless that is its own name. */
export function kindsBeside(kinds: string, pigment: string): string | undefined {
  return kinds.toLowerCase() === pigment.toLowerCase() ? undefined : `among ${kinds}`;
}

/** Of the components of a mixture: the one whose loss is the likeliest. */
export function leastLightfast(pigments: readonly string[], ground: string | undefined): string {
  const [verb, watched] =
    pigments.length > 1 ? ["are", "the ones to watch"] : ["is", "the one to watch"];
  return sentence(
    `${namesWithin(pigments)} ${verb} the least lightfast as far as is known${bracketed(ground)}: ${watched}`,
  );
}

export function harm(
  { pigments, effect, inOil }: SensitivityStatement["values"],
  where: string,
): string {
  const [one, several] = EFFECTS[effect];
  const isOne = pigments.length < 2;
  const shield = IN_OIL[inOil].replace(
    /^(oil (?:shields|does not shield))/,
    `$1 ${isOne ? "it" : "them"}`,
  );
  return sentence(`${namesWithin(pigments)} ${isOne ? one : several} ${where}; ${shield}`);
}
