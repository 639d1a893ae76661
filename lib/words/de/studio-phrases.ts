import { hazardEffects } from "../../hazard/texts/hazard-effect.ts";
import type { BenchTestUse } from "../../hazard/studio/bench-test.ts";
import type { Quantity } from "../../quantities/interval.ts";
import { METALS, wordOf } from "../closed-sets.ts";
import { HAZARD_EFFECTS } from "../hazard-effects.ts";
import {
  bracketed,
  listed,
  micrometres,
  namesWithin,
  sentence,
  significant,
  withUnit,
} from "./phrases.ts";

export const DUSTINESS = {
  "very dusty": "Ein stark staubendes Pulver",
  dusty: "Ein staubendes Pulver",
  "less dusty": "Ein schweres Pulver, das weniger staubt als die meisten",
  "not known":
    "Wie stark das Pulver staubt, ist nicht aufgezeichnet; behandeln Sie das Pigment als stark staubend",
} as const;
export const NATURES = {
  "fine carbon": "Der Staub von feinem Kohlenstoff kann brennen.",
  organic: "Der Staub eines organischen Pigments kann brennen.",
  "not known": "Ob der Staub brennen kann, ist nicht bekannt; behandeln Sie ihn, als könnte er es.",
} as const;

/** What makes each kind of test hold no harm. */
export const BENCH_CARE: Readonly<Record<BenchTestUse, string>> = {
  heat: "Mit Hitze: unter Absaugung oder im Freien, auf einem Metalllöffel, den eine Zange hält, und niemals mit einem Pigment aus Blei, Cadmium, Quecksilber, Arsen, Chromat, Antimon oder Kupfer.",
  acid: "Mit Säure: ein Tropfen und nicht mehr, an frischer Luft, mit Handschuhen; niemals auf ein Sulfid-, Cyanid- oder Arsenpigment, auch nicht in kleinster Menge.",
  lye: "Mit Lauge oder Soda: mit Handschuhen, und nicht in die Nähe der Augen.",
  peroxide:
    "Mit Peroxid: höchstens dreiprozentig, mit Handschuhen, niemals in einem geschlossenen Gefäß.",
  solvent: "Mit Lösemittel: an frischer Luft, und keine Flamme im Raum.",
};

/** What the hazards of a label do, after a subject. */
export function effects(statements: readonly string[]): string {
  return listed(hazardEffects(statements).map((effect) => HAZARD_EFFECTS[effect].de));
}

interface OfPigments {
  readonly pigments?: readonly string[];
}

/** A caution, and behind it the pigments that it is of: their names are not bent, and so stand by themselves. */
export function caution({ pigments: of = [] }: OfPigments, text: string): string {
  return sentence(`${text}${bracketed(namesWithin(of))}`);
}

/** The pigments that a caution names, or the paint when it names none. */
export function it({ pigments: of }: OfPigments): string {
  return of === undefined ? "die Farbe" : namesWithin(of);
}

/** As a reader knows it. */
export function metalWord(metal: string): string {
  return wordOf(METALS, metal, "de");
}

export function bulk(density: Quantity | undefined, how: string): string | undefined {
  return density === undefined ? undefined : `${withUnit(significant(density, 2), "g/ml")} ${how}`;
}

export function grain(um: Quantity | undefined): string | undefined {
  return um === undefined ? undefined : `Korn ${micrometres(um)}`;
}
