import type { ExpectedContradiction } from "../../permanence/expected-contradiction.ts";
import type { ExposureStatement, StatedContradiction } from "../../permanence/exposure.ts";
import type { SensitivityStatement } from "../../permanence/sensitivity.ts";
import { FORMS, wordOf } from "../closed-sets.ts";
import { bracketed, decimals, deltaEabText, listed, namesWithin, sentence } from "./phrases.ts";
import type { Substance } from "../words.ts";

/** What the pigment does, of one and of several. */
export const EFFECTS: Readonly<
  Record<SensitivityStatement["values"]["effect"], readonly [one: string, several: string]>
> = {
  bleaches: ["se décolore", "se décolorent"],
  darkens: ["fonce", "foncent"],
  browns: ["brunit", "brunissent"],
  reddens: ["rougit", "rougissent"],
  whitens: ["blanchit", "blanchissent"],
  "turns violet": ["vire au violet", "virent au violet"],
  dissolves: ["se dissout", "se dissolvent"],
  "loses its ash": [
    "perd sa cendre d’os et garde son carbone",
    "perdent leur cendre d’os et gardent leur carbone",
  ],
  fades: ["passe", "passent"],
};

/** Of one and of several. */
const IN_OIL: Readonly<
  Record<SensitivityStatement["values"]["inOil"], readonly [one: string, several: string]>
> = {
  shielded: ["l’huile l’en protège", "l’huile les en protège"],
  "partly shielded": ["l’huile l’en protège en partie", "l’huile les en protège en partie"],
  "not shielded": ["l’huile ne l’en protège pas", "l’huile ne les en protège pas"],
};

export function formText(form: string | undefined): string | undefined {
  return form === undefined ? undefined : wordOf(FORMS, form, "fr");
}

/** The last category has no upper limit to name. */
export function limit(deltaEabMax: number | undefined): string {
  return deltaEabMax === undefined ? "" : bracketed(`jusqu’à ${decimals(deltaEabMax, 0)}`);
}

export function sources({ standards, exposures }: ExposureStatement["values"]): string {
  return [...standards, listed(exposures)].join(", ");
}

export function contradicted(
  { form, exposed, meanDeltaEab }: StatedContradiction["values"] | ExpectedContradiction["values"],
  held: string,
  than: string,
): string {
  return `Exposé ici, le ${wordOf(FORMS, form, "fr")} a tenu ${held} (comme en catégorie\u00a0${exposed}, ${deltaEabText(meanDeltaEab)}) que ${than}\u202f; l’exposition fait foi.`;
}

export function holds(pigments: readonly string[]): string {
  return `${namesWithin(pigments)} ${pigments.length > 1 ? "tiennent" : "tient"}`;
}

/** What the pigment stands among in the list, unless that is its own name. */
export function kindsBeside(
  kinds: string,
  pigment: string,
  substance: Substance,
): string | undefined {
  return kinds.toLowerCase() === pigment.toLowerCase()
    ? undefined
    : `groupe\u202f: ${substance(kinds, "fr")}`;
}

/** Of the components of a mixture: the one whose loss is the likeliest. */
export function leastLightfast(pigments: readonly string[], ground: string | undefined): string {
  return pigments.length > 1
    ? `Les moins solides à la lumière, pour autant qu’on sache${bracketed(ground)}\u202f: ${namesWithin(pigments)}\u202f; ce sont eux qu’il faut surveiller.`
    : `Le moins solide à la lumière, pour autant qu’on sache${bracketed(ground)}\u202f: ${namesWithin(pigments)}\u202f; c’est lui qu’il faut surveiller.`;
}

export function harm(
  { pigments, effect, inOil }: SensitivityStatement["values"],
  where: string,
): string {
  const i = pigments.length < 2 ? 0 : 1;
  return sentence(
    `${namesWithin(pigments)} ${EFFECTS[effect][i]} ${where}\u202f; ${IN_OIL[inOil][i]}`,
  );
}
