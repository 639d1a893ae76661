import { de, en, es, fr } from "../phrases-in-each.ts";
import { alike, type Texts } from "../texts.ts";
import { IN_WHICH_WHITE, MAP_OF_RANGE, shareAtLightness } from "../shared-rows.ts";

/** Where the range lies in a* and b*, and how far its mixtures reach. */
export const RANGE_MAP = {
  heading: MAP_OF_RANGE,
  headingIn: (white: string) => ({
    en: `Map of the range, in ${en.within(white)}`,
    de: `Karte des Sortiments, in ${de.within(white)}`,
    fr: `Carte de la gamme, dans ${fr.within(white)}`,
    es: `Mapa de la gama, en ${es.within(white)}`,
  }),
  lead: {
    en: "Where our colours lie, how they turn as they are let down, and how far mixtures of them reach.",
    de: "Wo unsere Farben liegen, wie sie sich beim Aufhellen verschieben und wie weit ihre Mischungen reichen.",
    fr: "Où se situent nos couleurs, comment elles virent quand on les coupe de blanc, et jusqu’où vont leurs mélanges.",
    es: "Dónde están nuestros colores, cómo viran al rebajarlos, y hasta dónde llegan sus mezclas.",
  },
  description: {
    en: "The colours of the range by hue, chroma and lightness, and the outline of what can be mixed of them.",
    de: "Die Farben des Sortiments nach Buntton, Chroma und Helligkeit, und der Umriss dessen, was sich aus ihnen mischen lässt.",
    fr: "Les couleurs de la gamme par teinte, chroma et clarté, et le contour de ce qu’on peut en mélanger.",
    es: "Los colores de la gama por matiz, croma y claridad, y el contorno de lo que puede mezclarse con ellos.",
  },
  title: (white: string) => ({
    en: `The range in a* and b*, each colour with its trail in ${en.within(white)}`,
    de: `Das Sortiment in a* und b*, jede Farbe mit ihrem Weg in ${de.within(white)}`,
    fr: `La gamme en a* et b*, chaque couleur avec son chemin dans ${fr.within(white)}`,
    es: `La gama en a* y b*, cada color con su camino en ${es.within(white)}`,
  }),
  describe: (count: number, white: string, area: string) =>
    count === 1
      ? {
          en: `One colour, with its way from the tube to a pale tint in ${en.within(white)}. The outlines go around everything that it and the white can be mixed to, at L* 30, 50 and 70; at L* 50 they hold an area of ${area}.`,
          de: `Eine Farbe, mit ihrem Weg von der Tube bis zu einer blassen Aufhellung in ${de.within(white)}. Die Umrisse umschließen alles, was sich aus ihr und dem Weiß mischen lässt, bei L* 30, 50 und 70; bei L* 50 umfassen sie eine Fläche von ${area}.`,
          fr: `Une couleur, avec son chemin du tube à un ton pâle dans ${fr.within(white)}. Les contours entourent tout ce qu’elle et le blanc peuvent donner, à L* 30, 50 et 70\u202f; à L* 50 leur aire est de ${area}.`,
          es: `Un color, con su camino del tubo a un tono pálido en ${es.within(white)}. Los contornos rodean todo lo que dan él y el blanco, a L* 30, 50 y 70; a L* 50 encierran un área de ${area}.`,
        }
      : {
          en: `${count} colours, each with its way from the tube to a pale tint in ${en.within(white)}. The outlines go around everything that any two of them and the white can be mixed to, at L* 30, 50 and 70; at L* 50 they hold an area of ${area}.`,
          de: `${count} Farben, jede mit ihrem Weg von der Tube bis zu einer blassen Aufhellung in ${de.within(white)}. Die Umrisse umschließen alles, was sich aus je zwei von ihnen und dem Weiß mischen lässt, bei L* 30, 50 und 70; bei L* 50 umfassen sie eine Fläche von ${area}.`,
          fr: `${count} couleurs, chacune avec son chemin du tube à un ton pâle dans ${fr.within(white)}. Les contours entourent tout ce que deux quelconques d’entre elles et le blanc peuvent donner, à L* 30, 50 et 70\u202f; à L* 50 leur aire est de ${area}.`,
          es: `${count} colores, cada uno con su camino del tubo a un tono pálido en ${es.within(white)}. Los contornos rodean todo lo que dan dos cualesquiera de ellos y el blanco, a L* 30, 50 y 70; a L* 50 encierran un área de ${area}.`,
        },
  axes: {
    a: {
      en: "a* (to the right: redder)",
      de: "a* (nach rechts: röter)",
      fr: "a* (à droite\u202f: plus rouge)",
      es: "a* (a la derecha: más rojo)",
    },
    b: {
      en: "b* (upwards: yellower)",
      de: "b* (nach oben: gelber)",
      fr: "b* (en haut\u202f: plus jaune)",
      es: "b* (hacia arriba: más amarillo)",
    },
  },
  outline: (L: number) => alike(`L* ${L}`),
  whites: IN_WHICH_WHITE,
  nearNeutral: {
    en: "near the middle:",
    de: "nahe der Mitte:",
    fr: "près du milieu\u202f:",
    es: "cerca del centro:",
  },
  key: (p68: string) => ({
    en: `Lines without a gap: L* 30; long dashes: L* 50; short dashes: L* 70. What lies inside a line can be mixed; the line itself is a prediction, within \u0394E00 ${p68} two times in three.`,
    de: `Durchgezogene Linien: L* 30; lange Striche: L* 50; kurze Striche: L* 70. Was innerhalb einer Linie liegt, lässt sich mischen; die Linie selbst ist eine Vorhersage, in zwei von drei Fällen innerhalb von \u0394E00 ${p68}.`,
    fr: `Lignes pleines\u202f: L* 30\u202f; longs tirets\u202f: L* 50\u202f; tirets courts\u202f: L* 70. Ce qui est à l’intérieur d’une ligne peut s’obtenir par mélange\u202f; la ligne elle-même est une prévision, à \u0394E00 ${p68} près deux fois sur trois.`,
    es: `Líneas continuas: L* 30; trazos largos: L* 50; trazos cortos: L* 70. Lo que queda dentro de una línea puede obtenerse por mezcla; la línea misma es una previsión, con un error de \u0394E00 ${p68} como máximo dos veces de cada tres.`,
  }),
  without: {
    en: "Without which colour?",
    de: "Ohne welche Farbe?",
    fr: "Sans quelle couleur\u202f?",
    es: "¿Sin qué color?",
  },
  withoutSaid: (name: string, shares: readonly string[]) => ({
    en: `Without ${en.within(name)} the range is smaller (dotted lines) by ${en.listed(shares)}: areas, right two times in three within the \u00b1.`,
    de: `Ohne ${de.within(name)} ist das Sortiment um ${de.listed(shares)} kleiner (gepunktete Linien): Flächen, in zwei von drei Fällen innerhalb des \u00b1 richtig.`,
    fr: `Sans ${fr.within(name)} la gamme est plus petite (lignes pointillées) de ${fr.listed(shares)}\u202f: ce sont des aires, justes deux fois sur trois dans le \u00b1.`,
    es: `Sin ${es.within(name)} la gama es menor (líneas de puntos) en ${es.listed(shares)}: son áreas, acertadas dos veces de cada tres dentro del \u00b1.`,
  }),
  withoutAt: shareAtLightness,
  withoutNothing: (name: string) => ({
    en: `Without ${en.within(name)} the range reaches as far: others make its hues.`,
    de: `Ohne ${de.within(name)} reicht das Sortiment ebenso weit: Andere Farben ergeben dieselben Bunttöne.`,
    fr: `Sans ${fr.within(name)} la gamme va aussi loin\u202f: d’autres donnent ses teintes.`,
    es: `Sin ${es.within(name)} la gama llega igual de lejos: otros dan sus matices.`,
  }),
  adds: {
    heading: {
      en: "What each tube adds",
      de: "Was jede Tube hinzufügt",
      fr: "Ce qu’ajoute chaque tube",
      es: "Qué añade cada tubo",
    },
    caption: {
      en: "How much smaller the range would be without it",
      de: "Wie viel kleiner das Sortiment ohne sie wäre",
      fr: "De combien la gamme serait plus petite sans lui",
      es: "Cuánto menor sería la gama sin él",
    },
    colour: { en: "Without", de: "Ohne", fr: "Sans", es: "Sin" },
    column: (L: number) => ({
      en: `at L* ${L}`,
      de: `bei L* ${L}`,
      fr: `à L* ${L}`,
      es: `a L* ${L}`,
    }),
    note: {
      en: "Share of the area within the outline that only this colour reaches; two times in three within the \u00b1. No less: less than we can tell.",
      de: "Anteil der Fläche im Umriss, den nur diese Farbe erreicht; in zwei von drei Fällen innerhalb des \u00b1. Nicht kleiner: weniger, als sich unterscheiden lässt.",
      fr: "Part de l’aire du contour que seule cette couleur atteint\u202f; deux fois sur trois dans le \u00b1. Pas moins\u202f: moins que ce que nous pouvons distinguer.",
      es: "Proporción del área del contorno que solo alcanza este color; dos veces de cada tres dentro del \u00b1. No menor: menos de lo que podemos distinguir.",
    },
    none: { en: "no less", de: "nicht kleiner", fr: "pas moins", es: "no menor" },
    others: (names: readonly string[]) => ({
      en: `As far as we can tell, the range reaches as far without ${names.length === 1 ? "" : "any one of "}${en.listed(names)}.`,
      de: `Soweit sich das sagen lässt, reicht das Sortiment ebenso weit ohne ${names.length === 1 ? "" : "eine der folgenden: "}${de.listed(names)}.`,
      fr: `Pour autant que nous puissions le dire, la gamme va aussi loin sans ${names.length === 1 ? "" : "l’une quelconque de ces couleurs\u202f: "}${fr.listed(names)}.`,
      es: `Hasta donde podemos decir, la gama llega igual de lejos sin ${names.length === 1 ? "" : "uno cualquiera de estos: "}${es.listed(names)}.`,
    }),
  },
  absent: {
    en: "Not on the map",
    de: "Nicht auf der Karte",
    fr: "Absentes de la carte",
    es: "No están en el mapa",
  },
  untried: (names: readonly string[]) => ({
    en: `Not let down in this white, and so not on the map: ${en.listed(names)}.`,
    de: `In diesem Weiß nicht aufgehellt und darum nicht auf der Karte: ${de.listed(names)}.`,
    fr: `Absentes de la carte, faute de dégradé dans ce blanc\u202f: ${fr.listed(names)}.`,
    es: `Sin rebaje en este blanco, y por eso fuera del mapa: ${es.listed(names)}.`,
  }),
  readOtherwise: (names: readonly string[]) => ({
    en: `Read in another way than the others, and so not on the map: ${en.listed(names)}.`,
    de: `Anders gemessen als die übrigen und darum nicht auf der Karte: ${de.listed(names)}.`,
    fr: `Absentes de la carte, car mesurées autrement que les autres\u202f: ${fr.listed(names)}.`,
    es: `Medidos de otro modo que los demás, y por eso fuera del mapa: ${es.listed(names)}.`,
  }),
} satisfies Texts;
