import type { TargetStatement } from "../../mixing/finding/target-text.ts";
import type { AddressStatement } from "../../mixing/mix-address.ts";
import type { FilmStatement, MixStatement } from "../../mixing/mix.ts";
import { de, en, es, fr } from "../phrases-in-each.ts";
import type { RulingsInEach } from "./rulings-in-each.ts";

export type MixingStatement = MixStatement | FilmStatement | AddressStatement | TargetStatement;

/** Why a mix is not predicted, not shown as a film, or not understood: what scripts alone say. */
export const MIXING_RULINGS: RulingsInEach<MixingStatement> = {
  "nothing-mixed": {
    en: "Nothing is mixed yet: give one paint a part or more.",
    de: "Noch ist nichts gemischt: Geben Sie bei einer Farbe einen Teil oder mehr an.",
    fr: "Rien n’est encore mélangé\u202f: donner une part ou plus à une peinture.",
    es: "Aún no se ha mezclado nada: dé a una pintura una parte o más.",
  },
  "paint-not-fitted": ({ paint, reason }) => ({
    en: `${paint} cannot be predicted in a mixture.${reason === "" ? "" : ` ${reason}`}`,
    de: `${paint} lässt sich in einer Mischung nicht vorhersagen.${reason === "" ? "" : ` ${reason}`}`,
    fr: `${paint} ne peut être prévu dans un mélange.${reason === "" ? "" : ` ${reason}`}`,
    es: `${paint} no puede preverse en una mezcla.${reason === "" ? "" : ` ${reason}`}`,
  }),
  "paint-not-let-down-in": ({ paint, white }) => ({
    en: `${paint} was not tried in ${en.within(white)}, so nothing is known of it there. Choose another white.`,
    de: `${paint} wurde in ${de.within(white)} nicht erprobt; was dort geschieht, ist daher nicht bekannt. Wählen Sie ein anderes Weiß.`,
    fr: `${paint} n’a pas été essayé dans ${fr.within(white)}\u202f: on ne sait pas ce que donne ce mélange. Choisir un autre blanc.`,
    es: `${paint} no se probó en ${es.within(white)}, así que no se sabe qué da esa mezcla. Elija otro blanco.`,
  }),
  "white-not-read": ({ white }) => ({
    en: `${white} itself was not read, so it cannot be shown alone.`,
    de: `${white} selbst wurde nicht gemessen und lässt sich daher nicht allein zeigen.`,
    fr: `${white} n’a pas été mesuré, et ne peut être montré seul.`,
    es: `${white} no se midió, así que no puede mostrarse solo.`,
  }),
  "paints-read-unlike": ({ first, other }) => ({
    en: `${first} and ${en.within(other)} were read with instruments of different geometry, so they cannot be added up.`,
    de: `${first} und ${de.within(other)} wurden mit Geräten verschiedener Geometrie gemessen und lassen sich daher nicht zusammenrechnen.`,
    fr: `${first} et ${fr.within(other)} ont été mesurés par des instruments de géométrie différente, et ne peuvent être additionnés.`,
    es: `${first} y ${es.within(other)} se midieron con instrumentos de distinta geometría, así que no pueden sumarse.`,
  }),
  "density-not-recorded": ({ paints }) => ({
    en: `How heavy a millilitre of ${en.listed(paints.map(en.within))} is has not been recorded. Mix by weight instead.`,
    de: `Wie schwer ein Milliliter von ${de.listed(paints.map(de.within))} ist, ist nicht aufgezeichnet. Mischen Sie stattdessen nach Gewicht.`,
    fr: `Ce que pèse un millilitre ${fr.of(fr.listed(paints.map(fr.within)))} n’est pas consigné. Mélanger plutôt au poids.`,
    es: `No está registrado cuánto pesa un mililitro de ${es.listed(paints.map(es.within))}. Mezcle mejor por peso.`,
  }),
  "pigment-share-not-recorded": ({ paint }) => ({
    en: `How much pigment is in ${en.within(paint)} has not been recorded, so it cannot be mixed as paint.`,
    de: `Wie viel Pigment in ${de.within(paint)} enthalten ist, ist nicht aufgezeichnet; als Farbe lässt sich das nicht mischen.`,
    fr: `La part de pigment ${fr.of(fr.within(paint))} n’est pas consignée\u202f: le mélange de cette peinture ne peut être calculé.`,
    es: `No está registrado cuánto pigmento hay en ${es.within(paint)}, así que no puede calcularse su mezcla como pintura.`,
  }),
  "white-films-not-read": ({ white }) => ({
    en: `No thin films of ${en.within(white)} were read, so only a coat that hides can be shown.`,
    de: `Von ${de.within(white)} wurden keine dünnen Filme gemessen; daher lässt sich nur ein deckender Auftrag zeigen.`,
    fr: `Aucun film mince ${fr.of(fr.within(white))} n’a été mesuré\u202f: seule une couche qui couvre peut être montrée.`,
    es: `No se midieron películas finas de ${es.within(white)}: solo puede mostrarse una capa que cubre.`,
  }),
  "medium-films-not-read": ({ medium }) => ({
    en: `No thin films of ${en.within(medium)} were read, so what it does to the colour is not known.`,
    de: `Von ${de.within(medium)} wurden keine dünnen Filme gemessen; die Wirkung auf die Farbe ist daher nicht bekannt.`,
    fr: `Aucun film mince ${fr.of(fr.within(medium))} n’a été mesuré, et son effet sur la couleur n’est pas connu.`,
    es: `No se midieron películas finas de ${es.within(medium)}, así que no se sabe qué efecto tiene sobre el color.`,
  }),
  "grounds-not-read": {
    en: "No opacity chart is on record, so only a coat that hides can be shown.",
    de: "Es ist keine Prüfkarte aufgezeichnet; daher lässt sich nur ein deckender Auftrag zeigen.",
    fr: "Aucune carte de contraste n’est consignée\u202f: seule une couche qui couvre peut être montrée.",
    es: "No hay ninguna carta de contraste registrada: solo puede mostrarse una capa que cubre.",
  },
  "film-needs-let-downs": {
    en: "One of these paints was never let down in this white, so only a coat that hides can be shown.",
    de: "Eine dieser Farben wurde in diesem Weiß nie aufgehellt; daher lässt sich nur ein deckender Auftrag zeigen.",
    fr: "L’une de ces peintures n’a jamais été coupée avec ce blanc\u202f: seule une couche qui couvre peut être montrée.",
    es: "Una de estas pinturas nunca se rebajó con este blanco: solo puede mostrarse una capa que cubre.",
  },
  "no-such-paint": ({ slug, near }) => ({
    en: `There is no paint \u201c${slug}\u201d here${near === undefined ? "" : `; perhaps ${near} was meant`}.`,
    de: `Eine Farbe „${slug}“ gibt es hier nicht${near === undefined ? "" : `; vielleicht war ${near} gemeint`}.`,
    fr: `Il n’y a pas ici de peinture «\u202f${slug}\u202f»${near === undefined ? "" : `\u202f; peut-être ${near}`}.`,
    es: `Aquí no hay ninguna pintura «${slug}»${near === undefined ? "" : `; quizá ${near}`}.`,
  }),
  "no-such-parts": ({ paint, parts }) => ({
    en: `\u201c${parts}\u201d is no number of parts; ${en.within(paint)} counts as one part.`,
    de: `„${parts}“ ist keine Zahl von Teilen; ${de.within(paint)} zählt als ein Teil.`,
    fr: `«\u202f${parts}\u202f» n’est pas un nombre de parts\u202f; ${fr.within(paint)} compte pour une part.`,
    es: `«${parts}» no es un número de partes; ${es.within(paint)} cuenta como una parte.`,
  }),
  "too-many-colours": ({ most }) => ({
    en: `No more than ${most} colours are mixed; the others are left out.`,
    de: `Mehr als ${most} Farben werden nicht gemischt; die übrigen bleiben weg.`,
    fr: `On ne mélange pas plus de ${most} couleurs\u202f; les autres sont laissées de côté.`,
    es: `No se mezclan más de ${most} colores; los demás se dejan fuera.`,
  }),
  "no-such-choice": ({ key, value }) => ({
    en: `\u201c${value}\u201d is no choice for \u201c${key}\u201d; the usual one is shown.`,
    de: `„${value}“ steht für „${key}“ nicht zur Wahl; gezeigt wird die übliche Einstellung.`,
    fr: `«\u202f${value}\u202f» n’est pas un choix pour «\u202f${key}\u202f»\u202f; le choix habituel est montré.`,
    es: `«${value}» no es una opción para «${key}»; se muestra la opción habitual.`,
  }),
  "no-colour-notation": ({ text }) => ({
    en:
      text === ""
        ? "Write a colour: a Munsell notation (5PB 4/2), L*a*b* (42 \u22121 \u22127) or a screen colour (#6b6f76)."
        : `\u201c${text}\u201d is no colour that this page can read: try 5PB 4/2, 42 \u22121 \u22127 or #6b6f76.`,
    de:
      text === ""
        ? "Geben Sie eine Farbe ein: eine Munsell-Notation (5PB 4/2), L*a*b* (42 \u22121 \u22127) oder eine Bildschirmfarbe (#6b6f76)."
        : `„${text}“ ist keine Farbe, die diese Seite lesen kann: Versuchen Sie 5PB 4/2, 42 \u22121 \u22127 oder #6b6f76.`,
    fr:
      text === ""
        ? "Écrire une couleur\u202f: une notation Munsell (5PB 4/2), L*a*b* (42 \u22121 \u22127) ou une couleur d’écran (#6b6f76)."
        : `«\u202f${text}\u202f» n’est pas une couleur que cette page sache lire\u202f: essayer 5PB 4/2, 42 \u22121 \u22127 ou #6b6f76.`,
    es:
      text === ""
        ? "Escriba un color: una notación Munsell (5PB 4/2), L*a*b* (42 \u22121 \u22127) o un color de pantalla (#6b6f76)."
        : `«${text}» no es un color que esta página sepa leer: pruebe con 5PB 4/2, 42 \u22121 \u22127 o #6b6f76.`,
  }),
  "no-surface-colour": ({ text }) => ({
    en: `No paint can have the colour ${text}: it lies outside what a surface throws back.`,
    de: `Keine Farbe kann ${text} haben: Das liegt außerhalb dessen, was eine Oberfläche zurückwirft.`,
    fr: `Aucune peinture ne peut avoir la couleur ${text}\u202f: elle sort de ce qu’une surface peut renvoyer.`,
    es: `Ninguna pintura puede tener el color ${text}: queda fuera de lo que una superficie puede devolver.`,
  }),
};
