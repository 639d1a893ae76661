import { hazardEffects } from "../../hazard/texts/hazard-effect.ts";
import type { BenchTestUse } from "../../hazard/studio/bench-test.ts";
import type { Quantity } from "../../quantities/interval.ts";
import { METALS, wordOf } from "../closed-sets.ts";
import { HAZARD_EFFECTS } from "../hazard-effects.ts";
import { listed, micrometres, namesWithin, significant, withUnit } from "./phrases.ts";

export const DUSTINESS = {
  "very dusty": "Un pigmento que levanta mucho polvo",
  dusty: "Un pigmento que levanta polvo",
  "less dusty": "Un pigmento pesado, que levanta menos polvo que la mayoría",
  "not known": "No está registrado cuánto polvo levanta; tratarlo como si levantara mucho",
} as const;
export const NATURES = {
  "fine carbon": "El polvo de carbono fino puede arder.",
  organic: "El polvo de un pigmento orgánico puede arder.",
  "not known": "No se sabe si su polvo puede arder; tratarlo como si pudiera.",
} as const;

/** What makes each kind of test hold no harm. */
export const BENCH_CARE: Readonly<Record<BenchTestUse, string>> = {
  heat: "Con calor: bajo extracción localizada o al aire libre, en una cuchara metálica sujeta con pinzas, y nunca con un pigmento de plomo, cadmio, mercurio, arsénico, cromato, antimonio o cobre.",
  acid: "Con ácido: una gota y no más, en un lugar bien ventilado, con guantes; nunca sobre un sulfuro, un cianuro o un pigmento de arsénico, sea cual sea la cantidad.",
  lye: "Con sosa cáustica o carbonato sódico: con guantes, y lejos de los ojos.",
  peroxide:
    "Con agua oxigenada: al tres por ciento y no más concentrada, con guantes, nunca en un recipiente cerrado.",
  solvent: "Con un disolvente: sala bien ventilada y ninguna llama.",
};

/** What the hazards of a label do, after a subject. */
export function effects(statements: readonly string[]): string {
  return listed(hazardEffects(statements).map((effect) => HAZARD_EFFECTS[effect].es));
}

export function sentence(words: string): string {
  return words.charAt(0).toLocaleUpperCase("es") + words.slice(1);
}

interface OfPigments {
  readonly pigments?: readonly string[];
}

export function pigments({ pigments: of }: OfPigments): string {
  return of === undefined ? "el pigmento" : namesWithin(of);
}

/** ": Lamp black" where a caution names pigments. */
export function named({ pigments: of }: OfPigments): string {
  return of === undefined ? "" : `: ${namesWithin(of)}`;
}

/** The pigments that a caution names, or the paint when it names none. */
export function it({ pigments: of }: OfPigments): string {
  return of === undefined ? "la pintura" : namesWithin(of);
}

/** As a reader knows it. */
export function metalWord(metal: string): string {
  return wordOf(METALS, metal, "es");
}

export function bulk(density: Quantity | undefined, how: string): string | undefined {
  return density === undefined ? undefined : `${withUnit(significant(density, 2), "g/ml")} ${how}`;
}

export function grain(um: Quantity | undefined): string | undefined {
  return um === undefined ? undefined : `grano ${micrometres(um)}`;
}
