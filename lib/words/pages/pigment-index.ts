import type { DryingEffect } from "../../drying/chemistry-drying.ts";
import type { ExpectedLightfastnessRow } from "../../permanence/expected-lightfastness.ts";
import type { PigmentNature } from "../../hazard/studio/pigment-nature.ts";
import { upperFirst } from "../letter-case.ts";
import { CHEMISTRIES, EXPECTED, wordOf } from "../closed-sets.ts";
import { alike, type Texts } from "../texts.ts";
import type { InEach } from "../in-each.ts";
import { LIGHTFASTNESS } from "../shared-rows.ts";

const EFFECTS: Readonly<Record<DryingEffect, InEach>> = {
  drier: {
    en: "speeds drying",
    de: "beschleunigt die Trocknung",
    fr: "accélère le séchage",
    es: "acelera el secado",
  },
  neutral: {
    en: "takes no part in drying",
    de: "ist an der Trocknung unbeteiligt",
    fr: "n’intervient pas dans le séchage",
    es: "no interviene en el secado",
  },
  retarder: {
    en: "slows drying",
    de: "verlangsamt die Trocknung",
    fr: "ralentit le séchage",
    es: "retarda el secado",
  },
};

const DUST: Readonly<Record<PigmentNature, InEach>> = {
  "fine carbon": {
    en: "fine carbon, which can burn",
    de: "feiner Kohlenstoff, kann brennen",
    fr: "carbone fin, qui peut brûler",
    es: "carbono fino, que puede arder",
  },
  organic: {
    en: "organic, which can burn",
    de: "organisch, kann brennen",
    fr: "organique, qui peut brûler",
    es: "orgánico, que puede arder",
  },
  mineral: {
    en: "mineral, which does not burn",
    de: "mineralisch, brennt nicht",
    fr: "minérale, qui ne brûle pas",
    es: "mineral, que no arde",
  },
};

/** The page of pigments: the workshop's own, then what the engine knows of every Colour Index name. */
export const PIGMENT_INDEX = {
  lead: {
    en: "What the colours are made from, and what we know of every Colour Index name used in artists' oil colours.",
    de: "Woraus die Farben bestehen und was wir von jedem Colour-Index-Namen wissen, der in Künstler-Ölfarben vorkommt.",
    fr: "De quoi sont faites les couleurs, et ce que nous savons de chaque nom du Colour Index employé dans les couleurs à l’huile pour artistes.",
    es: "De qué están hechos los colores, y lo que sabemos de cada nombre del Colour Index que se usa en los óleos para artistas.",
  },
  known: {
    en: "Open a name for its chemistry, density, oil absorption, drying, light, opacity and what harms it. Most of it is recalled from handbooks, so it is a wide range or a class: plan by it, promise nothing by it. Our own figures are on the page of each pigment.",
    de: "Öffnen Sie einen Namen für Chemie, Dichte, Ölzahl, Trocknung, Lichtechtheit, Deckvermögen und Empfindlichkeit. Das meiste ist aus dem Gedächtnis nach Handbüchern angegeben und daher ein weiter Bereich oder eine Klasse: gut zum Planen, nicht zum Versprechen. Unsere eigenen Werte stehen auf der Seite jedes Pigments.",
    fr: "Ouvrir un nom pour sa chimie, sa masse volumique, sa prise d’huile, son séchage, sa tenue à la lumière, son opacité et ce qui lui nuit. La plupart de ces données viennent des manuels, de mémoire\u202f: ce sont de larges intervalles ou des classes. Elles servent à prévoir, non à promettre. Nos propres chiffres sont sur la page de chaque pigment.",
    es: "Abra un nombre para ver su química, densidad, absorción de aceite, secado, solidez a la luz, opacidad y lo que le perjudica. La mayor parte de estos datos viene de manuales, de memoria, así que son intervalos amplios o clases: sirven para planear, no para prometer. Nuestras propias cifras están en la página de cada pigmento.",
  },
  knownHeading: (count: number) => ({
    en: `Known by Colour Index name (${count})`,
    de: `Nach Colour-Index-Name bekannt (${count})`,
    fr: `Connus par leur nom du Colour Index (${count})`,
    es: `Conocidos por su nombre del Colour Index (${count})`,
  }),
  ownOne: {
    en: "one of ours",
    de: "eines von unseren",
    fr: "l’un des nôtres",
    es: "uno de los nuestros",
  },
  nothing: {
    en: "We know no more than its name.",
    de: "Wir wissen nicht mehr als den Namen.",
    fr: "Nous n’en savons que le nom.",
    es: "No sabemos más que su nombre.",
  },
  notStated: (names: readonly string[]) => ({
    en: `Not stated: ${names.join(", ")}.`,
    de: `Keine Angabe: ${names.join(", ")}.`,
    fr: `Non indiqué\u202f: ${names.join(", ")}.`,
    es: `No indicado: ${names.join(", ")}.`,
  }),
  facts: {
    alsoCalled: { en: "Also called", de: "Auch genannt", fr: "Autres noms", es: "Otros nombres" },
    chemistry: { en: "Chemistry", de: "Chemie", fr: "Chimie", es: "Química" },
    metals: { en: "Metals", de: "Metalle", fr: "Métaux", es: "Metales" },
    mineral: { en: "As a mineral", de: "Als Mineral", fr: "Minéral", es: "Mineral" },
    year: { en: "Introduced", de: "Eingeführt", fr: "Introduit en", es: "Introducido en" },
    density: { en: "Density", de: "Dichte", fr: "Masse volumique", es: "Densidad" },
    oilAbsorption: {
      en: "Oil absorption",
      de: "Ölzahl",
      fr: "Prise d’huile",
      es: "Absorción de aceite",
    },
    drying: { en: "Drying", de: "Trocknung", fr: "Séchage", es: "Secado" },
    lightfastness: LIGHTFASTNESS,
    opacity: { en: "Opacity", de: "Deckvermögen", fr: "Opacité", es: "Opacidad" },
    sensitivities: {
      en: "Harmed by",
      de: "Empfindlichkeit",
      fr: "Ce qui lui nuit",
      es: "Le perjudica",
    },
    dust: { en: "Dust", de: "Staub", fr: "Poussière", es: "Polvo" },
  },

  /** What is not stated, within a sentence. */
  missing: {
    chemistry: { en: "chemistry", de: "Chemie", fr: "chimie", es: "química" },
    year: {
      en: "year of introduction",
      de: "Jahr der Einführung",
      fr: "année d’introduction",
      es: "año de introducción",
    },
    density: { en: "density", de: "Dichte", fr: "masse volumique", es: "densidad" },
    oilAbsorption: {
      en: "oil absorption",
      de: "Ölzahl",
      fr: "prise d’huile",
      es: "absorción de aceite",
    },
    drying: { en: "drying", de: "Trocknung", fr: "séchage", es: "secado" },
    lightfastness: {
      en: "lightfastness",
      de: "Lichtechtheit",
      fr: "solidité à la lumière",
      es: "solidez a la luz",
    },
    opacity: { en: "opacity", de: "Deckvermögen", fr: "opacité", es: "opacidad" },
    dust: { en: "dust", de: "Staub", fr: "poussière", es: "polvo" },
  },
  drying: (chemistry: string, effect: DryingEffect, days: string) => ({
    en: `counts as ${chemistry} and ${EFFECTS[effect].en}: alone in linseed oil touch dry in ${days}`,
    de: `gilt als ${wordOf(CHEMISTRIES, chemistry, "de")} und ${EFFECTS[effect].de}: allein in Leinöl ${days} bis grifftrocken`,
    fr: `compte comme ${wordOf(CHEMISTRIES, chemistry, "fr")} et ${EFFECTS[effect].fr}\u202f: seul dans l’huile de lin, sec au toucher en ${days}`,
    es: `cuenta como ${wordOf(CHEMISTRIES, chemistry, "es")} y ${EFFECTS[effect].es}: solo en aceite de linaza, seco al tacto en ${days}`,
  }),
  light: ({ masstone, tint }: Pick<ExpectedLightfastnessRow, "masstone" | "tint">) => ({
    en:
      masstone === tint
        ? `expected ${masstone}, in masstone and in tints`
        : `expected ${masstone} in masstone, ${tint} in tints`,
    de:
      masstone === tint
        ? `voraussichtlich ${EXPECTED[masstone].de}, im Vollton und in Aufhellungen`
        : `voraussichtlich ${EXPECTED[masstone].de} im Vollton, ${EXPECTED[tint].de} in Aufhellungen`,
    fr:
      masstone === tint
        ? `solidité à prévoir ${EXPECTED[masstone].fr}, en ton plein et en dégradé`
        : `solidité à prévoir ${EXPECTED[masstone].fr} en ton plein, ${EXPECTED[tint].fr} en dégradé`,
    es:
      masstone === tint
        ? `solidez previsible ${EXPECTED[masstone].es}, en tono pleno y en rebajes`
        : `solidez previsible ${EXPECTED[masstone].es} en tono pleno, ${EXPECTED[tint].es} en rebajes`,
  }),
  dust: (nature: PigmentNature) => DUST[nature],
  sourced: (text: string, sources: string) => alike(`${upperFirst(text)} (${sources}).`),

  /** A row of a text that was recalled, and of nothing but memory. */
  recalled: (source: string) => ({
    en: `${source}, from memory`,
    de: `${source}, aus dem Gedächtnis`,
    fr: `${source}, de mémoire`,
    es: `${source}, de memoria`,
  }),
  memory: { en: "from memory", de: "aus dem Gedächtnis", fr: "de mémoire", es: "de memoria" },
  workedOut: (source: string) => ({
    en: `worked out from ${source}`,
    de: `errechnet aus ${source}`,
    fr: `calculé d’après ${source}`,
    es: `calculado a partir de ${source}`,
  }),
} satisfies Texts;
