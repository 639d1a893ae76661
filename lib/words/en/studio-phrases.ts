import { hazardEffects } from "../../hazard/texts/hazard-effect.ts";
import type { BenchTestUse } from "../../hazard/studio/bench-test.ts";
import type { Quantity } from "../../quantities/interval.ts";
import { HAZARD_EFFECTS } from "../hazard-effects.ts";
import { listed, micrometres, namesWithin, significant, withUnit } from "./phrases.ts";

export const DUSTINESS = {
  "very dusty": "A very dusty powder",
  dusty: "A dusty powder",
  "less dusty": "A heavy powder, less dusty than most",
  "not known": "How dusty the powder is has not been recorded; treat it as very dusty",
} as const;
export const NATURES = {
  "fine carbon": "The dust of fine carbon can burn.",
  organic: "The dust of an organic pigment can burn.",
  "not known": "Whether its dust can burn is not known; treat it as if it could.",
} as const;

/** What makes each kind of test hold no harm. */
export const BENCH_CARE: Readonly<Record<BenchTestUse, string>> = {
  heat: "With heat: under captured exhaust or outdoors, on a metal spoon held with tongs, and never with a pigment of lead, cadmium, mercury, arsenic, chromate, antimony or copper.",
  acid: "With acid: a drop and no more, in fresh air, gloves on; never on a sulphide, a cyanide or an arsenic pigment in any quantity.",
  lye: "With lye or soda: gloves on, and not near the eyes.",
  peroxide: "With peroxide: three per cent and no stronger, gloves on, never in a closed vessel.",
  solvent: "With a solvent: in fresh air, and no flame in the room.",
};

/** What the hazards of a label do, after a subject. */
export function effects(statements: readonly string[]): string {
  return listed(hazardEffects(statements).map((effect) => HAZARD_EFFECTS[effect].en));
}

interface OfPigments {
  readonly pigments?: readonly string[];
}

export function withArticle(what: string): string {
  return /^(kaolin|mica|gypsum|talc|silica|green earth|natural chalk)/.test(what)
    ? what
    : `a ${what}`;
}

export function pigments({ pigments: of }: OfPigments): string {
  return of === undefined ? "the pigment" : namesWithin(of);
}

/** The pigments that a caution names, or the paint when it names none. */
export function it({ pigments: of }: OfPigments): string {
  return of === undefined ? "the paint" : namesWithin(of);
}

/** As a reader knows it. */
export function metalWord(metal: string): string {
  if (metal === "chromate") return "hexavalent chromium";
  return metal === "barium" ? "soluble barium" : metal;
}

export function bulk(density: Quantity | undefined, how: string): string | undefined {
  return density === undefined ? undefined : `${withUnit(significant(density, 2), "g/ml")} ${how}`;
}

export function grain(um: Quantity | undefined): string | undefined {
  return um === undefined ? undefined : `grain ${micrometres(um)}`;
}
