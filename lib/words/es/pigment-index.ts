import type { DryingEffect } from "../../drying/chemistry-drying.ts";
import type { PigmentNature } from "../../hazard/studio/pigment-nature.ts";
import type { PIGMENT_INDEX as ENGLISH_INDEX } from "../en/pigment-index.ts";
import type { AnyWords } from "../any-words.ts";
import { upperFirst } from "../letter-case.ts";
import { pigmentWord } from "../pigment-words.ts";
import { CHEMISTRIES, EXPECTED, wordOf } from "./closed-words.ts";

const EFFECTS: Readonly<Record<DryingEffect, string>> = {
  drier: "acelera el secado",
  neutral: "no interviene en el secado",
  retarder: "retarda el secado",
};
const DUST: Readonly<Record<PigmentNature, string>> = {
  "fine carbon": "carbono fino, que puede arder",
  organic: "orgánico, que puede arder",
  mineral: "mineral, que no arde",
};

/** The page of pigments: the workshop's own, then what the engine knows of every Colour Index name. */
export const PIGMENT_INDEX: AnyWords<typeof ENGLISH_INDEX> = {
  lead: "De qué están hechos los colores, y lo que sabemos de cada nombre del Colour Index que se usa en los óleos para artistas.",
  known:
    "Abra un nombre para ver su química, densidad, absorción de aceite, secado, luz, opacidad y lo que le perjudica. La mayor parte viene de manuales, de memoria, así que es un intervalo amplio o una clase: sirve para planear, no para prometer. Nuestras propias cifras están en la página de cada pigmento.",
  knownHeading: (count) => `Conocidos por su nombre del Colour Index (${count})`,
  summary: (name, called, isOwn) =>
    [
      name,
      called === undefined ? undefined : pigmentWord(called, "es"),
      isOwn ? "uno de los nuestros" : undefined,
    ]
      .filter((part) => part !== undefined)
      .join(" \u00b7 "),
  nothing: "No sabemos más que su nombre.",
  notStated: (names) => `No indicado: ${names.join(", ")}.`,
  facts: {
    alsoCalled: "También llamado",
    chemistry: "Química",
    metals: "Metales",
    mineral: "Como mineral",
    year: "Introducido en",
    density: "Densidad",
    oilAbsorption: "Absorción de aceite",
    drying: "Secado",
    lightfastness: "Solidez a la luz",
    opacity: "Opacidad",
    sensitivities: "Le perjudica",
    dust: "Polvo",
  },
  missing: {
    chemistry: "química",
    year: "año de introducción",
    density: "densidad",
    oilAbsorption: "absorción de aceite",
    drying: "secado",
    lightfastness: "solidez a la luz",
    opacity: "opacidad",
    dust: "polvo",
  },
  drying: (chemistry, effect, days) =>
    `cuenta como ${wordOf(CHEMISTRIES, chemistry)} y ${EFFECTS[effect]}: solo en aceite de linaza, seco al tacto en ${days}`,
  light: ({ masstone, tint }) =>
    masstone === tint
      ? `solidez previsible ${EXPECTED[masstone]}, en tono pleno y en rebajes`
      : `solidez previsible ${EXPECTED[masstone]} en tono pleno, ${EXPECTED[tint]} en rebajes`,
  dust: (nature) => DUST[nature],
  sourced: (text, sources) => `${upperFirst(text)} (${sources}).`,
  recalled: (source) => `${source}, de memoria`,
  memory: "de memoria",
  workedOut: (source) => `calculado a partir de ${source}`,
};
