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
  bleaches: ["se decolora", "se decoloran"],
  darkens: ["oscurece", "oscurecen"],
  browns: ["se vuelve pardo", "se vuelven pardos"],
  reddens: ["enrojece", "enrojecen"],
  whitens: ["blanquea", "blanquean"],
  "turns violet": ["vira al violeta", "viran al violeta"],
  dissolves: ["se disuelve", "se disuelven"],
  "loses its ash": [
    "pierde su ceniza de hueso y conserva su carbono",
    "pierden su ceniza de hueso y conservan su carbono",
  ],
  fades: ["se desvanece", "se desvanecen"],
};

/** Of one and of several. */
const IN_OIL: Readonly<
  Record<SensitivityStatement["values"]["inOil"], readonly [one: string, several: string]>
> = {
  shielded: ["el aceite lo protege", "el aceite los protege"],
  "partly shielded": ["el aceite lo protege en parte", "el aceite los protege en parte"],
  "not shielded": ["el aceite no lo protege", "el aceite no los protege"],
};

export function formText(form: string | undefined): string | undefined {
  return form === undefined ? undefined : wordOf(FORMS, form, "es");
}

/** The last category has no upper limit to name. */
export function limit(deltaEabMax: number | undefined): string {
  return deltaEabMax === undefined ? "" : bracketed(`hasta ${decimals(deltaEabMax, 0)}`);
}

export function sources({ standards, exposures }: ExposureStatement["values"]): string {
  return [...standards, listed(exposures)].join(", ");
}

export function contradicted(
  { form, exposed, meanDeltaEab }: StatedContradiction["values"] | ExpectedContradiction["values"],
  held: string,
  than: string,
): string {
  return `Expuesto aquí, el ${wordOf(FORMS, form, "es")} aguantó ${held} (como en la categoría\u00a0${exposed}, ${deltaEabText(meanDeltaEab)}) que ${than}; cuenta la exposición.`;
}

export function holds(pigments: readonly string[]): string {
  return `${pigments.length > 1 ? "aguantan" : "aguanta"} ${namesWithin(pigments)}`;
}

/** What the pigment stands among in the list, unless that is its own name. */
export function kindsBeside(
  kinds: string,
  pigment: string,
  substance: Substance,
): string | undefined {
  return kinds.toLowerCase() === pigment.toLowerCase()
    ? undefined
    : `grupo: ${substance(kinds, "es")}`;
}

/** Of the components of a mixture: the one whose loss is the likeliest. */
export function leastLightfast(pigments: readonly string[], ground: string | undefined): string {
  return pigments.length > 1
    ? `Los menos sólidos a la luz, hasta donde se sabe${bracketed(ground)}: ${namesWithin(pigments)}; son los que hay que vigilar.`
    : `El menos sólido a la luz, hasta donde se sabe${bracketed(ground)}: ${namesWithin(pigments)}; es el que hay que vigilar.`;
}

export function harm(
  { pigments, effect, inOil }: SensitivityStatement["values"],
  where: string,
): string {
  const i = pigments.length < 2 ? 0 : 1;
  return sentence(`${namesWithin(pigments)} ${EFFECTS[effect][i]} ${where}; ${IN_OIL[inOil][i]}`);
}
