import type { Texts } from "../texts.ts";
import { SIZES_AND_PRICES } from "../shared-rows.ts";

/** What goes along with pictures of a colour into a shop. */
export const LISTING = {
  made: { en: "Made of", de: "Besteht aus", fr: "Composition", es: "Composición" },
  sizes: SIZES_AND_PRICES,
  noSizes: {
    en: "No size is on record.",
    de: "Es ist keine Größe aufgezeichnet.",
    fr: "Aucune contenance n’est consignée.",
    es: "No hay ningún tamaño registrado.",
  },
  label: { en: "On the label", de: "Auf dem Etikett", fr: "Sur l’étiquette", es: "En la etiqueta" },
  said: {
    en: "What may be said of the colour",
    de: "Was sich über die Farbe sagen lässt",
    fr: "Ce que l’on peut dire de la couleur",
    es: "Lo que puede decirse del color",
  },
  pictures: { en: "Pictures", de: "Bilder", fr: "Images", es: "Imágenes" },
  screen: {
    en: "The swatches show a reading of the dry paint as a screen can show it, and no screen shows paint exactly: judge and match by the paint itself, never by a picture.",
    de: "Die Farbfelder zeigen eine Messung der trockenen Farbe, wie ein Bildschirm sie zeigen kann, und kein Bildschirm zeigt Farbe genau: Beurteilt und abgemustert wird nach der Farbe selbst, nie nach einem Bild.",
    fr: "Les échantillons montrent une mesure de la peinture sèche telle qu’un écran peut la montrer, et aucun écran ne montre exactement une peinture\u202f: on juge et on contretype sur la peinture elle-même, jamais sur une image.",
    es: "Las muestras enseñan una medición de la pintura seca tal como una pantalla puede enseñarla, y ninguna pantalla enseña una pintura con exactitud: se juzga y se iguala por la pintura misma, nunca por una imagen.",
  },
  estimated: {
    en: "No instrument has read the colour. It was estimated from a photograph: say so wherever it is shown.",
    de: "Kein Gerät hat die Farbe gemessen. Sie ist nach einem Foto geschätzt: Das gehört überall dazugesagt, wo sie gezeigt wird.",
    fr: "Aucun instrument n’a mesuré la couleur. Elle est estimée d’après une photographie\u202f: il faut le dire partout où elle est montrée.",
    es: "Ningún instrumento ha medido el color. Se estimó a partir de una fotografía: dígalo dondequiera que se muestre.",
  },
  outside: {
    en: "The colour lies beyond what sRGB holds: screens show it duller than it is.",
    de: "Die Farbe liegt außerhalb von sRGB: Bildschirme zeigen sie stumpfer, als sie ist.",
    fr: "La couleur dépasse ce que contient le sRGB\u202f: les écrans la montrent plus terne qu’elle n’est.",
    es: "El color queda más allá de lo que abarca el sRGB: las pantallas lo muestran más apagado de lo que es.",
  },
  predicted: {
    en: "Let-downs that were not painted out are predicted.",
    de: "Aufhellungen, die nicht aufgestrichen wurden, sind vorhergesagt.",
    fr: "Les dégradés qui n’ont pas été peints sont prévus.",
    es: "Los rebajes que no se pintaron están previstos.",
  },
  alone: (name: string) => ({
    en: `${name}, the colour alone.`,
    de: `${name}, die Farbe allein.`,
    fr: `${name}, la couleur seule.`,
    es: `${name}, el color solo.`,
  }),
  strip: (name: string, white: string) => ({
    en: `${name}, alone and let down in ${white}, from strong to pale.`,
    de: `${name}, allein und aufgehellt mit ${white}, von kräftig bis blass.`,
    fr: `${name}, seule et coupée avec ${white}, du plus fort au plus pâle.`,
    es: `${name}, solo y rebajado con ${white}, de fuerte a pálido.`,
  }),
  beside: (names: readonly string[]) => ({
    en: `${names.join(", ")}, beside each other.`,
    de: `${names.join(", ")}, nebeneinander.`,
    fr: `${names.join(", ")}, côte à côte.`,
    es: `${names.join(", ")}, uno junto a otro.`,
  }),
} satisfies Texts;
