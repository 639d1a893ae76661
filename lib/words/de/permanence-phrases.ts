import type { ExpectedContradiction } from "../../permanence/expected-contradiction.ts";
import type { ExposureStatement, StatedContradiction } from "../../permanence/exposure.ts";
import type { SensitivityStatement } from "../../permanence/sensitivity.ts";
import { EXPECTED, FORMS, wordOf } from "../closed-sets.ts";
import type { Substance } from "../words.ts";
import { bracketed, decimals, deltaEabText, listed, namesWithin, sentence } from "./phrases.ts";

/** What the pigment does, of one and of several; what stands in the third place follows the circumstances. */
const EFFECTS: Readonly<
  Record<
    SensitivityStatement["values"]["effect"],
    readonly [one: string, several: string, after?: string]
  >
> = {
  bleaches: ["bleicht", "bleichen", "aus"],
  darkens: ["dunkelt", "dunkeln", "nach"],
  browns: ["wird", "werden", "braun"],
  reddens: ["wird", "werden", "rot"],
  whitens: ["wird", "werden", "weiß"],
  "turns violet": ["wird", "werden", "violett"],
  dissolves: ["löst sich", "lösen sich", "auf"],
  "loses its ash": ["verliert", "verlieren", "die Knochenasche und behält den Kohlenstoff"],
  fades: ["verblasst", "verblassen"],
};
const IN_OIL: Readonly<Record<SensitivityStatement["values"]["inOil"], string>> = {
  shielded: "Öl schützt davor",
  "partly shielded": "Öl schützt zum Teil davor",
  "not shielded": "Öl schützt nicht davor",
};

/** Gender of the form that was exposed: "der Vollton", "die Aufhellung". */
export const THE_FORM = { masstone: "der Vollton", tint: "die Aufhellung" } as const;
export const ANOTHER_FORM = {
  masstone: "ein anderer Vollton",
  tint: "eine andere Aufhellung",
} as const;

/** The last category has no upper limit to name. */
export function limit(deltaEabMax: number | undefined): string {
  return deltaEabMax === undefined ? "" : bracketed(`bis ${decimals(deltaEabMax, 0)}`);
}

export function sources({ standards, exposures }: ExposureStatement["values"]): string {
  return [...standards, listed(exposures)].join(", ");
}

export function expected({ expectation }: ExpectedContradiction["values"]): string {
  return EXPECTED[expectation].de;
}

export function contradicted(
  { form, exposed, meanDeltaEab }: StatedContradiction["values"] | ExpectedContradiction["values"],
  held: string,
  than: string,
): string {
  return `Hier belichtet hielt sich ${THE_FORM[form]} ${held} (wie in Kategorie\u00a0${exposed}, ${deltaEabText(meanDeltaEab)}) als ${than}; die Belichtung zählt.`;
}

export function formWord(form: string | undefined): string | undefined {
  return form === undefined ? undefined : wordOf(FORMS, form, "de");
}

export function formsListed(forms: readonly string[]): string {
  return listed(forms.map((form) => wordOf(FORMS, form, "de")));
}

export function are(pigments: readonly string[]): string {
  return pigments.length > 1 ? "sind" : "ist";
}

/** What the pigment stands among in the list, unless that is its own name. */
export function kindsBeside(
  kinds: string,
  pigment: string,
  substance: Substance,
): string | undefined {
  return kinds.toLowerCase() === pigment.toLowerCase()
    ? undefined
    : `Gruppe: ${substance(kinds, "de")}`;
}

/** Of the components of a mixture: the one whose loss is the likeliest. */
export function leastLightfast(pigments: readonly string[], ground: string | undefined): string {
  return sentence(
    `${namesWithin(pigments)} ${pigments.length > 1 ? "sind" : "ist"} am wenigsten lichtecht, soweit bekannt${bracketed(ground)}; darauf ist zu achten`,
  );
}

export function does(
  pigments: readonly string[],
  effect: SensitivityStatement["values"]["effect"],
  where: string,
): string {
  const [one, several, after] = EFFECTS[effect];
  const last =
    effect === "loses its ash" && pigments.length > 1
      ? "die Knochenasche und behalten den Kohlenstoff"
      : after;
  return [namesWithin(pigments), pigments.length < 2 ? one : several, where, last]
    .filter((part) => part !== undefined)
    .join(" ");
}

export function harm(
  { pigments, effect, inOil }: SensitivityStatement["values"],
  where: string,
): string {
  return sentence(`${does(pigments, effect, where)}; ${IN_OIL[inOil]}`);
}
