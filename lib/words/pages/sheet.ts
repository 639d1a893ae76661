import { EXPECTATIONS } from "../../permanence/expected-lightfastness.ts";
import { EXPECTED } from "../closed-sets.ts";
import { de, en, es, fr } from "../phrases-in-each.ts";
import { expectationsIn } from "../fact-words.ts";
import { alike, type Texts } from "../texts.ts";
import { NOT_TRIED } from "../shared-rows.ts";

/** What a sheet says of its colour as a whole. */
export const SHEET = {
  description: (name: string, madeOf: string) => ({
    en: `${name}: ${madeOf}. What it does in each white, whether it lasts, when it dries and how to handle it.`,
    de: `${name}: ${madeOf}. Wie sie sich in jedem Weiß verhält, wie beständig sie ist, wann sie trocknet und wie man mit ihr umgeht.`,
    fr: `${name}\u202f: ${madeOf}. Ce qu’elle donne dans chaque blanc, si elle tient, quand elle sèche et comment la manipuler.`,
    es: `${name}: ${madeOf}. Cómo queda en cada blanco, si dura, cuándo seca y cómo manipularlo.`,
  }),
  madeOf: {
    mulled: (vehicle: string) => ({
      en: `${vehicle}, mulled`,
      de: `${vehicle}, von Hand angerieben`,
      fr: `${vehicle}, broyé à la molette`,
      es: `${vehicle}, molido con moleta`,
    }),
    milled: (vehicle: string) => ({
      en: `${vehicle}, milled`,
      de: `${vehicle}, gewalzt`,
      fr: `${vehicle}, broyé à la machine`,
      es: `${vehicle}, molido a máquina`,
    }),
    plain: (vehicle: string) => alike(vehicle),
    /** Between things that each begin with a capital, which behind a comma or semicolon would read as a slip. */
    between: alike("\u00a0\u00b7 "),
  },
  holdsMediums: (mediums: readonly string[]) => ({
    en: `It also holds ${en.listed(mediums)}: what that does to drying, finish and yellowing we have not tried.`,
    de: `Die Farbe enthält auch ${de.listed(mediums)}: Wie sich das auf Trocknung, Glanzgrad und Vergilbung auswirkt, haben wir nicht erprobt.`,
    fr: `Contient aussi ${fr.listed(mediums)}\u202f: nous n’avons pas essayé quel en est l’effet sur le séchage, l’aspect et le jaunissement.`,
    es: `Contiene además ${es.listed(mediums)}: no hemos probado qué efecto tiene eso sobre el secado, el acabado y el amarilleo.`,
  }),
  noPanel: {
    en: "No colour is shown: no drawdown of it has been read or matched yet.",
    de: "Es wird keine Farbe gezeigt: Noch ist kein Aufstrich davon gemessen oder nach Augenmaß verglichen worden.",
    fr: "Aucune couleur n’est montrée\u202f: aucune application n’en a encore été mesurée ni comparée à l’œil.",
    es: "No se muestra ningún color: aún no se ha medido ni igualado a ojo ninguna aplicación.",
  },
  tintDescription: (level: string, a: string, b: string) => alike(`L* ${level}, a* ${a}, b* ${b}`),
  missing: { en: "not stated", de: "keine Angabe", fr: "non indiqué", es: "no indicado" },
  approximateColour: {
    en: "Only near on screen: worked out from a reading under another light.",
    de: "Auf dem Bildschirm nur ungefähr: errechnet aus einer Messung unter anderem Licht.",
    fr: "Approchante seulement à l’écran\u202f: calculée d’après une mesure sous une autre lumière.",
    es: "Solo aproximado en pantalla: calculado a partir de una medición bajo otra luz.",
  },
  outOfGamut: {
    en: "A common screen cannot show this colour; the swatch is the nearest it can.",
    de: "Ein gewöhnlicher Bildschirm kann diese Farbe nicht zeigen; das Farbfeld kommt ihr so nahe, wie er kann.",
    fr: "Un écran ordinaire ne peut pas montrer cette couleur\u202f; l’échantillon s’en approche autant que possible.",
    es: "Una pantalla corriente no puede mostrar este color; la muestra se le acerca cuanto puede.",
  },
  factDetail: {
    category: (category: string) => ({
      en: `category ${category}`,
      de: `Kategorie\u00a0${category}`,
      fr: `catégorie\u00a0${category}`,
      es: `categoría\u00a0${category}`,
    }),
    asCategory: (category: string) => ({
      en: `within category ${category}`,
      de: `im Bereich der Kategorie\u00a0${category}`,
      fr: `dans les limites de la catégorie\u00a0${category}`,
      es: `dentro de la categoría\u00a0${category}`,
    }),
    notTested: {
      en: "not tested here",
      de: "hier nicht geprüft",
      fr: "non testée ici",
      es: "no ensayada aquí",
    },
    notTestedInTints: {
      en: "by its tints, which last less well; not tested here",
      de: "nach den Aufhellungen, die weniger beständig sind; hier nicht geprüft",
      fr: "d’après ses dégradés, qui tiennent moins bien\u202f; non testée ici",
      es: "por sus rebajes, que resisten menos; no ensayada aquí",
    },
  },
  expectation: {
    en: expectationsIn("en"),
    de: expectationsIn("de"),
    fr: expectationsIn("fr"),
    es: expectationsIn("es"),
  },

  /** A category in a word. */
  categories: {
    en: Object.fromEntries(
      EXPECTATIONS.map(({ category, expectation }) => [category, expectation]),
    ) as Record<string, string>,
    de: Object.fromEntries(
      EXPECTATIONS.map(({ category, expectation }) => [category, EXPECTED[expectation].de]),
    ) as Record<string, string>,
    fr: Object.fromEntries(
      EXPECTATIONS.map(({ category, expectation }) => [category, EXPECTED[expectation].fr]),
    ),
    es: Object.fromEntries(
      EXPECTATIONS.map(({ category, expectation }) => [category, EXPECTED[expectation].es]),
    ),
  },
  revision: (revision: string, date: string | undefined) => ({
    en: `Revision ${revision}${date === undefined ? "" : `, from records of ${date}`}`,
    de: `Fassung ${revision}${date === undefined ? "" : `, aus Aufzeichnungen vom ${date}`}`,
    fr: `Révision ${revision}${date === undefined ? "" : `, d’après les relevés du ${date}`}`,
    es: `Revisión ${revision}${date === undefined ? "" : `, de registros del ${date}`}`,
  }),
  whiteSentence: (count: number) => ({
    en:
      count === 1
        ? "A white. One colour of the range was tried in it."
        : `A white. ${count} colours of the range were tried in it.`,
    de:
      count === 1
        ? "Ein Weiß. Eine Farbe des Sortiments wurde darin erprobt."
        : `Ein Weiß. ${count} Farben des Sortiments wurden darin erprobt.`,
    fr:
      count === 1
        ? "Un blanc. Une couleur de la gamme y a été essayée."
        : `Un blanc. ${count} couleurs de la gamme y ont été essayées.`,
    es:
      count === 1
        ? "Un blanco. Se probó en él un color de la gama."
        : `Un blanco. Se probaron en él ${count} colores de la gama.`,
  }),
  noSentence: NOT_TRIED,
} satisfies Texts;
