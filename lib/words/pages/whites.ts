import { STEP_COLUMNS } from "./step-columns.ts";
import { alike, type Texts } from "../texts.ts";

/** A colour in each of its whites. */
export const WHITES = {
  heading: (name: string, index: string | undefined) => ({
    en: `In ${name}${index === undefined ? "" : ` (${index})`}`,
    de: `In ${name}${index === undefined ? "" : ` (${index})`}`,
    fr: `Dans ${name}${index === undefined ? "" : ` (${index})`}`,
    es: `En ${name}${index === undefined ? "" : ` (${index})`}`,
  }),
  ladderTitle: (white: string) => ({
    en: `With ${white}, from the strongest mixture to the palest`,
    de: `Mit ${white}, von der kräftigsten Mischung zur hellsten`,
    fr: `Avec ${white}, du mélange le plus fort au plus pâle`,
    es: `Con ${white}, de la mezcla más fuerte a la más pálida`,
  }),
  ladderDescription: (steps: readonly string[]) => ({
    en: `${steps.join("; ")}.`,
    de: `${steps.join("; ")}.`,
    fr: `${steps.join("\u202f; ")}.`,
    es: `${steps.join("; ")}.`,
  }),
  stepDescription: (ratio: string, standing: string, L: string, a: string, b: string) =>
    alike(`${ratio}, ${standing}, L* ${L}, a* ${a}, b* ${b}`),
  suspect: { en: "doubtful", de: "zweifelhaft", fr: "douteux", es: "dudoso" },
  steps: (count: number) => ({
    en: count === 1 ? "The one step in figures" : `The ${count} steps in figures`,
    de: count === 1 ? "Die eine Stufe in Zahlen" : `Die ${count} Stufen in Zahlen`,
    fr: count === 1 ? "Le degré en chiffres" : `Les ${count} degrés en chiffres`,
    es: count === 1 ? "El único paso en cifras" : `Los ${count} pasos en cifras`,
  }),
  stepsCaption: (white: string, kind: "pigment" | "paint") => ({
    en: `Colour to ${white} by mass of ${kind === "paint" ? "paint" : "dry pigment"}`,
    de: `Farbe zu ${white} nach Masse ${kind === "paint" ? "der Farbe" : "des trockenen Pigments"}`,
    fr: `Couleur/${white}, en masse de ${kind === "paint" ? "peinture" : "pigment sec"}`,
    es: `Color/${white}, en masa de ${kind === "paint" ? "pintura" : "pigmento seco"}`,
  }),
  columns: {
    ...STEP_COLUMNS,
    misfit: {
      en: "\u00b1 or missed by",
      de: "\u00b1 oder Abweichung",
      fr: "\u00b1 ou écart",
      es: "\u00b1 o error",
    },
  },
  note: {
    en: "L* a* b* under D65, 10\u00b0 observer. Last column, in \u0394E00: for a predicted step, what about 68\u00a0% of predictions stay within; for a drawdown, how far the fit misses it, and in brackets how far when that drawdown is left out.",
    de: "L* a* b* unter D65, 10\u00b0-Beobachter. Letzte Spalte, in \u0394E00: bei einer vorhergesagten Stufe die Abweichung, unter der etwa 68\u00a0% der Vorhersagen bleiben; bei einem Aufstrich, wie weit die Anpassung ihn verfehlt, und in Klammern, wie weit, wenn dieser Aufstrich weggelassen wird.",
    fr: "L* a* b* sous D65, observateur 10\u00b0. Dernière colonne, en \u0394E00\u202f: pour un degré prévu, l’écart que n’excèdent pas environ 68\u00a0% des prévisions\u202f; pour une application, de combien l’ajustement s’en écarte, et entre parenthèses de combien si on l’écarte.",
    es: "L* a* b* bajo D65, observador de 10\u00b0. Última columna, en \u0394E00: en un paso previsto, el error que no superan alrededor del 68\u00a0% de las previsiones; en una aplicación, cuánto se aparta de ella el ajuste, y entre paréntesis cuánto si se deja fuera.",
  },
  expectedNote: {
    en: "Expected, not painted out: L* a* b* (D65, 10\u00b0 observer) as the range in which nine of ten such let-downs lie, Munsell in the middle of it. Last column, in \u0394E00: what about 68\u00a0% stay within.",
    de: "Zu erwarten, nicht aufgestrichen: L* a* b* (D65, 10\u00b0-Beobachter) als der Bereich, in dem neun von zehn solchen Aufhellungen liegen, Munsell in dessen Mitte. Letzte Spalte, in \u0394E00: die Abweichung, unter der etwa 68\u00a0% bleiben.",
    fr: "À prévoir, non peint\u202f: L* a* b* (D65, observateur 10\u00b0) donnés par l’intervalle où tombent neuf dégradés de cette sorte sur dix, Munsell en son milieu. Dernière colonne, en \u0394E00\u202f: l’écart que n’excèdent pas environ 68\u00a0% des cas.",
    es: "Previsible, no pintado: L* a* b* (D65, observador de 10\u00b0) como el intervalo en que caen nueve de cada diez rebajes así, Munsell en su centro. Última columna, en \u0394E00: el error que no superan alrededor del 68\u00a0% de los casos.",
  },
  range: (low: string, high: string) => ({
    en: low === high ? low : `${low} to ${high}`,
    de: low === high ? low : `${low} bis ${high}`,
    fr: low === high ? low : `${low} à ${high}`,
    es: low === high ? low : `${low} a ${high}`,
  }),
  trailEnds: {
    plusA: { en: "red", de: "Rot", fr: "rouge", es: "rojo" },
    minusA: { en: "green", de: "Grün", fr: "vert", es: "verde" },
    plusB: { en: "yellow", de: "Gelb", fr: "jaune", es: "amarillo" },
    minusB: { en: "blue", de: "Blau", fr: "bleu", es: "azul" },
  },
  trailTitle: {
    en: "Where each white takes the colour: a* and b* of the mixtures",
    de: "Wohin jedes Weiß die Farbe führt: a* und b* der Mischungen",
    fr: "Où chaque blanc mène la couleur\u202f: a* et b* des mélanges",
    es: "Adónde lleva cada blanco el color: a* y b* de las mezclas",
  },
  trailDescription: (whites: readonly string[]) => ({
    en: `One line for each white, from the colour alone to the palest mixture: ${whites.join(", ")}.`,
    de: `Eine Linie für jedes Weiß, von der Farbe allein bis zur hellsten Mischung: ${whites.join(", ")}.`,
    fr: `Une ligne pour chaque blanc, de la couleur pure au mélange le plus pâle\u202f: ${whites.join(", ")}.`,
    es: `Una línea por blanco, del color puro a la mezcla más pálida: ${whites.join(", ")}.`,
  }),
} satisfies Texts;
