import { worded } from "../by-rule.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import type { MixingStatement } from "../en/statements-mixing.ts";
import { listed, within } from "./phrases.ts";

/** Why a mix is not predicted, not shown as a film, or not understood; the pages' scripts carry these too. */
export const MIXING_STATEMENTS: WordingsOf<MixingStatement> = {
  "nothing-mixed": () => "Noch ist nichts gemischt: geben Sie einer Farbe einen Teil oder mehr.",
  "paint-not-fitted": ({ paint, reason }) =>
    `${paint} lässt sich in einer Mischung nicht vorhersagen.${reason === "" ? "" : ` ${reason}`}`,
  "paint-not-let-down-in": ({ paint, white }) =>
    `${paint} wurde in ${within(white)} nicht erprobt, daher ist dort nichts bekannt. Wählen Sie ein anderes Weiß.`,
  "white-not-read": ({ white }) =>
    `${white} selbst wurde nicht gemessen und lässt sich daher nicht allein zeigen.`,
  "paints-read-unlike": ({ first, other }) =>
    `${first} und ${within(other)} wurden mit Geräten verschiedener Geometrie gemessen und lassen sich daher nicht zusammenrechnen.`,
  "density-not-recorded": ({ paints }) =>
    `Wie schwer ein Milliliter von ${listed(paints.map(within))} ist, ist nicht aufgezeichnet. Mischen Sie stattdessen nach Gewicht.`,
  "pigment-share-not-recorded": ({ paint }) =>
    `Wie viel Pigment in ${within(paint)} ist, ist nicht aufgezeichnet; als Farbe lässt es sich daher nicht mischen.`,
  "white-films-not-read": ({ white }) =>
    `Von ${within(white)} wurden keine dünnen Filme gemessen, daher lässt sich nur ein deckender Auftrag zeigen.`,
  "medium-films-not-read": ({ medium }) =>
    `Von ${within(medium)} wurden keine dünnen Filme gemessen; was es mit der Farbe macht, ist daher nicht bekannt.`,
  "grounds-not-read": () =>
    "Keine Prüfkarte ist aufgezeichnet, daher lässt sich nur ein deckender Auftrag zeigen.",
  "film-needs-let-downs": () =>
    "Eine dieser Farben wurde in diesem Weiß nie aufgehellt, daher lässt sich nur ein deckender Auftrag zeigen.",
  "no-such-paint": ({ slug, near }) =>
    `Eine Farbe „${slug}“ gibt es hier nicht${near === undefined ? "" : `; vielleicht war ${near} gemeint`}.`,
  "no-such-parts": ({ paint, parts }) =>
    `„${parts}“ ist keine Zahl von Teilen; ${within(paint)} zählt als ein Teil.`,
  "too-many-colours": ({ most }) =>
    `Mehr als ${most} Farben werden nicht gemischt; die übrigen bleiben weg.`,
  "no-such-choice": ({ key, value }) =>
    `„${value}“ steht für „${key}“ nicht zur Wahl; gezeigt wird das Übliche.`,
  "no-colour-notation": ({ text }) =>
    text === ""
      ? "Schreiben Sie eine Farbe: eine Munsell-Notation (5PB 4/2), L*a*b* (42 \u22121 \u22127) oder eine Bildschirmfarbe (#6b6f76)."
      : `„${text}“ ist keine Farbe, die diese Seite lesen kann: versuchen Sie 5PB 4/2, 42 \u22121 \u22127 oder #6b6f76.`,
  "no-surface-colour": ({ text }) =>
    `Keine Farbe kann ${text} haben: das liegt außerhalb dessen, was eine Oberfläche zurückwirft.`,
};

export const mixingSentence = (statement: MixingStatement): string =>
  worded(MIXING_STATEMENTS, statement);
