import type { DryingEffect } from "../../drying/chemistry-drying.ts";
import type { PigmentNature } from "../../hazard/studio/pigment-nature.ts";
import type { PIGMENT_INDEX as ENGLISH_INDEX } from "../en/pigment-index.ts";
import type { AnyWords } from "../any-words.ts";
import { upperFirst } from "../letter-case.ts";
import { pigmentWord } from "../pigment-words.ts";
import { CHEMISTRIES, EXPECTED, wordOf } from "./closed-words.ts";

const EFFECTS: Readonly<Record<DryingEffect, string>> = {
  drier: "accélère le séchage",
  neutral: "n’intervient pas dans le séchage",
  retarder: "ralentit le séchage",
};
const DUST: Readonly<Record<PigmentNature, string>> = {
  "fine carbon": "carbone fin, qui peut brûler",
  organic: "organique, qui peut brûler",
  mineral: "minérale, qui ne brûle pas",
};

/** The page of pigments: the workshop's own, then what the engine knows of every Colour Index name. */
export const PIGMENT_INDEX: AnyWords<typeof ENGLISH_INDEX> = {
  lead: "De quoi sont faites les couleurs, et ce que nous savons de chaque nom du Colour Index employé dans les couleurs à l’huile pour artistes.",
  known:
    "Ouvrir un nom pour sa chimie, sa masse volumique, sa prise d’huile, son séchage, sa tenue à la lumière, son opacité et ce qui lui nuit. La plupart de cela vient des manuels, de mémoire\u202f: c’est un large intervalle ou une classe\u202f; on peut s’en servir pour prévoir, non pour promettre. Nos propres chiffres sont sur la page de chaque pigment.",
  knownHeading: (count) => `Connus par leur nom au Colour Index (${count})`,
  summary: (name, called, isOwn) =>
    [
      name,
      called === undefined ? undefined : pigmentWord(called, "fr"),
      isOwn ? "l’un des nôtres" : undefined,
    ]
      .filter((part) => part !== undefined)
      .join(" \u00b7 "),
  nothing: "Nous n’en savons que le nom.",
  notStated: (names) => `Non indiqué\u202f: ${names.join(", ")}.`,
  facts: {
    alsoCalled: "Dit aussi",
    chemistry: "Chimie",
    metals: "Métaux",
    mineral: "Comme minéral",
    year: "Introduit en",
    density: "Masse volumique",
    oilAbsorption: "Prise d’huile",
    drying: "Séchage",
    lightfastness: "Solidité à la lumière",
    opacity: "Opacité",
    sensitivities: "Ce qui lui nuit",
    dust: "Poussière",
  },
  missing: {
    chemistry: "chimie",
    year: "année d’introduction",
    density: "masse volumique",
    oilAbsorption: "prise d’huile",
    drying: "séchage",
    lightfastness: "solidité à la lumière",
    opacity: "opacité",
    dust: "poussière",
  },
  drying: (chemistry, effect, days) =>
    `compte comme ${wordOf(CHEMISTRIES, chemistry)} et ${EFFECTS[effect]}\u202f: seul dans l’huile de lin, sec au toucher en ${days}`,
  light: ({ masstone, tint }) =>
    masstone === tint
      ? `solidité à prévoir ${EXPECTED[masstone]}, en ton plein et en dégradé`
      : `solidité à prévoir ${EXPECTED[masstone]} en ton plein, ${EXPECTED[tint]} en dégradé`,
  dust: (nature) => DUST[nature],
  sourced: (text, sources) => `${upperFirst(text)} (${sources}).`,
  recalled: (source) => `${source}, de mémoire`,
  memory: "de mémoire",
  workedOut: (source) => `calculé d’après ${source}`,
};
