import { hazardEffects } from "../../hazard/texts/hazard-effect.ts";
import type { BenchTestUse } from "../../hazard/studio/bench-test.ts";
import type { Quantity } from "../../quantities/interval.ts";
import { METALS, wordOf } from "../closed-sets.ts";
import { HAZARD_EFFECTS } from "../hazard-effects.ts";
import {
  listed,
  micrometres,
  namesWithin,
  of as ofName,
  significant,
  withUnit,
} from "./phrases.ts";

export const DUSTINESS = {
  "very dusty": "Une poudre qui dégage beaucoup de poussière",
  dusty: "Une poudre qui dégage de la poussière",
  "less dusty": "Une poudre lourde, qui dégage moins de poussière que la plupart",
  "not known":
    "On n’a pas consigné combien la poudre dégage de poussière\u202f; la traiter comme si elle en dégageait beaucoup",
} as const;
export const NATURES = {
  "fine carbon": "La poussière de carbone fin peut brûler.",
  organic: "La poussière d’un pigment organique peut brûler.",
  "not known":
    "On ne sait pas si sa poussière peut brûler\u202f; la traiter comme si elle le pouvait.",
} as const;

/** What makes each kind of test hold no harm. */
export const BENCH_CARE: Readonly<Record<BenchTestUse, string>> = {
  heat: "À la chaleur\u202f: sous aspiration à la source ou dehors, sur une cuiller métallique tenue à la pince, et jamais avec un pigment de plomb, de cadmium, de mercure, d’arsenic, de chromate, d’antimoine ou de cuivre.",
  acid: "À l’acide\u202f: une goutte et pas plus, dans un endroit bien aéré, avec des gants\u202f; jamais sur un sulfure, un cyanure ou un pigment d’arsenic, en quelque quantité que ce soit.",
  lye: "À la soude caustique ou au carbonate de soude\u202f: avec des gants, et loin des yeux.",
  peroxide:
    "À l’eau oxygénée\u202f: à trois pour cent, pas davantage, avec des gants, jamais dans un récipient fermé.",
  solvent: "Au solvant\u202f: dans une pièce bien aérée, sans aucune flamme.",
};

/** What the hazards of a label do, after a subject. */
export function effects(statements: readonly string[]): string {
  return listed(hazardEffects(statements).map((effect) => HAZARD_EFFECTS[effect].fr));
}

export function sentence(words: string): string {
  return words.charAt(0).toLocaleUpperCase("fr") + words.slice(1);
}

interface OfPigments {
  readonly pigments?: readonly string[];
}

export function pigments({ pigments: of }: OfPigments): string {
  return of === undefined ? "le pigment" : namesWithin(of);
}

/** ": Lamp black" where a caution names pigments. */
export function named({ pigments: of }: OfPigments): string {
  return of === undefined ? "" : `\u202f: ${namesWithin(of)}`;
}

/** The pigments that a caution names, or the paint when it names none. */
export function it({ pigments: of }: OfPigments): string {
  return of === undefined ? "la peinture" : namesWithin(of);
}

export function ofIt(v: OfPigments): string {
  return v.pigments === undefined ? "de la peinture" : ofName(it(v));
}

/** As a reader knows it. */
export function metalWord(metal: string): string {
  return wordOf(METALS, metal, "fr");
}

export function bulk(density: Quantity | undefined, how: string): string | undefined {
  return density === undefined ? undefined : `${withUnit(significant(density, 2), "g/ml")} ${how}`;
}

export function grain(um: Quantity | undefined): string | undefined {
  return um === undefined ? undefined : `grain ${micrometres(um)}`;
}
