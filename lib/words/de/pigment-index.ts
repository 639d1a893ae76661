import type { AnyWords } from "../any-words.ts";
import type { PageWords } from "../en/pages.ts";
import type { DryingEffect } from "../../drying/chemistry-drying.ts";
import type { PigmentNature } from "../../hazard/studio/pigment-nature.ts";
import type { ExpectedLightfastnessRow } from "../../permanence/expected-lightfastness.ts";
import { upperFirst } from "../letter-case.ts";
import { CHEMISTRY_NAMES, EXPECTATION_WORDS, inGerman } from "./closed-sets.ts";
import { pigmentWord } from "../pigment-words.ts";

const EFFECTS: Readonly<Record<DryingEffect, string>> = {
  drier: "beschleunigt die Trocknung",
  neutral: "ist an der Trocknung unbeteiligt",
  retarder: "verlangsamt die Trocknung",
};
const DUST: Readonly<Record<PigmentNature, string>> = {
  "fine carbon": "feiner Kohlenstoff, kann brennen",
  organic: "organisch, kann brennen",
  mineral: "mineralisch, brennt nicht",
};

/** The page of pigments: the workshop's own, then what the engine knows of every Colour Index name. */
export const PIGMENT_INDEX: AnyWords<PageWords["pigmentIndex"]> = {
  lead: "Woraus die Farben gemacht sind, und was wir von jedem Colour-Index-Namen wissen, der in Künstler-Ölfarben vorkommt.",
  known:
    "Öffnen Sie einen Namen für Chemie, Dichte, Ölzahl, Trocknung, Licht, Deckvermögen und was ihm schadet. Das meiste ist aus dem Gedächtnis nach Handbüchern angegeben und daher ein weiter Bereich oder eine Klasse: gut zum Planen, nicht zum Versprechen. Unsere eigenen Werte stehen auf der Seite jedes Pigments.",
  knownHeading: (count: number) => `Nach Colour-Index-Name bekannt (${count})`,
  summary: (name: string, called: string | undefined, isOwn: boolean) =>
    [
      name,
      called === undefined ? undefined : pigmentWord(called, "de"),
      isOwn ? "eines von unseren" : undefined,
    ]
      .filter((part) => part !== undefined)
      .join(" \u00b7 "),
  nothing: "Wir wissen nicht mehr als den Namen.",
  notStated: (names: readonly string[]) => `Keine Angabe: ${names.join(", ")}.`,
  facts: {
    alsoCalled: "Auch genannt",
    chemistry: "Chemie",
    metals: "Metalle",
    mineral: "Als Mineral",
    year: "Eingeführt",
    density: "Dichte",
    oilAbsorption: "Ölzahl",
    drying: "Trocknung",
    lightfastness: "Lichtechtheit",
    opacity: "Deckvermögen",
    sensitivities: "Empfindlichkeit",
    dust: "Staub",
  },
  /** What is not stated, within a sentence. */
  missing: {
    chemistry: "Chemie",
    year: "Jahr der Einführung",
    density: "Dichte",
    oilAbsorption: "Ölzahl",
    drying: "Trocknung",
    lightfastness: "Lichtechtheit",
    opacity: "Deckvermögen",
    dust: "Staub",
  },
  drying: (chemistry: string, effect: DryingEffect, days: string) =>
    `zählt als ${inGerman(CHEMISTRY_NAMES, chemistry)} und ${EFFECTS[effect]}: allein in Leinöl ${days} bis grifftrocken`,
  light: ({ masstone, tint }: Pick<ExpectedLightfastnessRow, "masstone" | "tint">) =>
    masstone === tint
      ? `voraussichtlich ${EXPECTATION_WORDS[masstone]}, im Vollton und in Aufhellungen`
      : `voraussichtlich ${EXPECTATION_WORDS[masstone]} im Vollton, ${EXPECTATION_WORDS[tint]} in Aufhellungen`,
  dust: (nature: PigmentNature) => DUST[nature],
  sourced: (text: string, sources: string) => `${upperFirst(text)} (${sources}).`,
  /** A row of a text that was recalled, and of nothing but memory. */
  recalled: (source: string) => `${source}, aus dem Gedächtnis`,
  memory: "aus dem Gedächtnis",
  workedOut: (source: string) => `errechnet aus ${source}`,
};
