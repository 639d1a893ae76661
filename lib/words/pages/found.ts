import { EXPECTED, NOT_DRY } from "../closed-sets.ts";
import { de, en, es, fr } from "../phrases-in-each.ts";
import type { Lab } from "../../colorimetry/viewing.ts";
import type { Expectation } from "../../permanence/expected-lightfastness.ts";
import type { InEach } from "../in-each.ts";
import type { Texts } from "../texts.ts";

/** A change on exposure, as what category it counts. */
export interface FoundChange {
  readonly deltaEab: number;
  readonly category: string;
}

/** What sheets find against their records, without a full stop: told by the command and on the workshop's first page. */
export const FOUND = {
  notForSale: (market: string) => ({
    en: `The colour may not be sold in ${market} without a legal basis and a class of buyer under legalBasis`,
    de: `Die Farbe darf ohne Rechtsgrundlage und Käuferkreis unter legalBasis in ${market} nicht verkauft werden`,
    fr: `La couleur ne peut être vendue sur le marché ${market} sans base légale ni catégorie d’acheteurs sous legalBasis`,
    es: `El color no puede venderse en el mercado ${market} sin base legal ni clase de comprador en legalBasis`,
  }),

  legalBasisUnneeded: (market: string) => ({
    en: `Nothing known here restricts this colour in ${market}, and its legalBasis takes it off the general sale there`,
    de: `Nichts, was hier bekannt ist, beschränkt den Verkauf dieser Farbe in ${market}, und ihre legalBasis nimmt sie dort aus dem allgemeinen Verkauf`,
    fr: `Rien de connu ici ne restreint cette couleur sur le marché ${market}, et son legalBasis l’y retire de la vente au public`,
    es: `Nada de lo que aquí se sabe restringe este color en el mercado ${market}, y su legalBasis lo retira allí de la venta al público`,
  }),

  /** Of what a statement says in full. */
  labelDiffers: (statement: string) => ({
    en: `The maker's label and the reckoning differ: ${statement}`,
    de: `Das Etikett des Herstellers und unsere Berechnung weichen voneinander ab: ${statement}`,
    fr: `L’étiquette du fabricant et le calcul diffèrent\u202f: ${statement}`,
    es: `La etiqueta del fabricante y el cálculo difieren: ${statement}`,
  }),
  differ: (statement: string) => ({
    en: `Record and estimate differ: ${statement}`,
    de: `Aufzeichnung und Schätzung weichen voneinander ab: ${statement}`,
    fr: `Le relevé et l’estimation diffèrent\u202f: ${statement}`,
    es: `El registro y la estimación difieren: ${statement}`,
  }),
  lotNotJudged: (number: string, statement: string) => ({
    en: `The lot ${number} is not judged. ${statement}`,
    de: `Die Charge ${number} wird nicht beurteilt. ${statement}`,
    fr: `Le lot ${number} n’est pas jugé. ${statement}`,
    es: `El lote ${number} no se juzga. ${statement}`,
  }),

  suspectAlone: (ratio: string, white: string) => ({
    en: `The drawdown ${ratio} in ${white} does not agree with the others: it is shown and not used`,
    de: `Der Aufstrich ${ratio} in ${white} passt nicht zu den anderen: Er wird gezeigt und nicht verwendet`,
    fr: `L’application ${ratio} dans ${white} ne s’accorde pas avec les autres\u202f: elle est montrée, mais non utilisée`,
    es: `La aplicación ${ratio} en ${white} no concuerda con las demás: se muestra y no se usa`,
  }),
  suspectPair: (ratio: string, white: string) => ({
    en: `The drawdown ${ratio} in ${white} and the other in that white contradict each other, and both are used`,
    de: `Der Aufstrich ${ratio} in ${white} und der andere in diesem Weiß widersprechen einander, und beide werden verwendet`,
    fr: `L’application ${ratio} dans ${white} et l’autre dans ce blanc se contredisent, et les deux sont utilisées`,
    es: `La aplicación ${ratio} en ${white} y la otra en ese blanco se contradicen, y ambas se usan`,
  }),
  fitMisses: (times: number) => ({
    en: `The fit misses the drawdowns by ${times} times what reading and weighing explain`,
    de: `Die Anpassung verfehlt die Aufstriche um das ${times}-Fache dessen, was Messen und Wägen erklären`,
    fr: `L’ajustement s’écarte des applications de ${times} fois ce qu’expliquent la mesure et la pesée`,
    es: `El ajuste se aparta de las aplicaciones ${times} veces lo que explican la medición y la pesada`,
  }),

  /** Of a mixture's masstone as recorded, and the nearest that its pigments give; `width` is what such a prediction is missed by nine times in ten. */
  beyondReach: (recorded: Lab, nearest: Lab, apart: number, width: number) => ({
    en: `The masstone is recorded as ${en.labText(recorded)} (D65/10), and the nearest that its pigments give is ${en.labText(nearest)}: ${en.deltaE00Text(apart)} apart, where such a prediction is within ${en.NUMBERS.decimal(width, 1)} nine times in ten`,
    de: `Der Vollton ist als ${de.labText(recorded)} (D65/10) aufgezeichnet, und das Nächste, was die Pigmente ergeben, ist ${de.labText(nearest)}: ein Abstand von ${de.deltaE00Text(apart)}, wo eine solche Vorhersage in neun von zehn Fällen auf ${de.NUMBERS.decimal(width, 1)} genau ist`,
    fr: `Le ton plein est consigné comme ${fr.labText(recorded)} (D65/10), et le plus proche que donnent ses pigments est ${fr.labText(nearest)}\u202f: un écart de ${fr.deltaE00Text(apart)}, alors qu’une telle prévision est juste à ${fr.NUMBERS.decimal(width, 1)} près neuf fois sur dix`,
    es: `El tono pleno está registrado como ${es.labText(recorded)} (D65/10), y lo más próximo que dan sus pigmentos es ${es.labText(nearest)}: una distancia de ${es.deltaE00Text(apart)}, cuando una predicción así acierta con un margen de ${es.NUMBERS.decimal(width, 1)} nueve veces de cada diez`,
  }),

  /** Of a trial that tells a colour worse than its sheet does; `ended` is a date, and nothing while it goes on. */
  toldBetter: {
    exposureInRecord: (
      ended: string | undefined,
      found: FoundChange,
      colour: string,
      told: FoundChange,
    ) => ({
      en: `${trial(ended).en}${changed(found).en}, and ${colour} says ${en.NUMBERS.decimal(told.deltaEab, 1)} (${told.category})${BETTER.en}`,
      de: `${trial(ended).de}${changed(found).de}, und ${colour} nennt ${de.NUMBERS.decimal(told.deltaEab, 1)} (${told.category})${BETTER.de}`,
      fr: `${trial(ended).fr}${changed(found).fr}, et ${colour} indique ${fr.NUMBERS.decimal(told.deltaEab, 1)} (${told.category})${BETTER.fr}`,
      es: `${trial(ended).es}${changed(found).es}, y ${colour} indica ${es.NUMBERS.decimal(told.deltaEab, 1)} (${told.category})${BETTER.es}`,
    }),
    categoryStated: (ended: string | undefined, found: FoundChange, category: string) => ({
      en: `${trial(ended).en}${changed(found).en}, and category ${category} is stated${BETTER.en}`,
      de: `${trial(ended).de}${changed(found).de}, und angegeben ist Kategorie ${category}${BETTER.de}`,
      fr: `${trial(ended).fr}${changed(found).fr}, et la catégorie ${category} est déclarée${BETTER.fr}`,
      es: `${trial(ended).es}${changed(found).es}, y se declara la categoría ${category}${BETTER.es}`,
    }),
    expected: (ended: string | undefined, found: FoundChange, expectation: Expectation) => ({
      en: `${trial(ended).en}${changed(found).en}, and by its pigments alone ${expectation} is expected${BETTER.en}`,
      de: `${trial(ended).de}${changed(found).de}, und allein nach den Pigmenten ist ${EXPECTED[expectation].de} zu erwarten${BETTER.de}`,
      fr: `${trial(ended).fr}${changed(found).fr}, et ses seuls pigments font prévoir\u202f: ${EXPECTED[expectation].fr}${BETTER.fr}`,
      es: `${trial(ended).es}${changed(found).es}, y solo por sus pigmentos cabe prever: ${EXPECTED[expectation].es}${BETTER.es}`,
    }),
    stillWet: (
      ended: string | undefined,
      found: "wet" | "tacky" | "wet or tacky",
      day: number,
      colour: string,
      recordedDays: number,
    ) => ({
      en: `${trial(ended).en}, still ${found} on day ${day}, and ${colour} says dry to the touch in ${recordedDays} days${BETTER.en}`,
      de: `${trial(ended).de}, am Tag ${day} noch ${notDry(found).de}, und ${colour} nennt grifftrocken nach ${de.dayCount(recordedDays, "dative")}${BETTER.de}`,
      fr: `${trial(ended).fr}, le film étant encore ${notDry(found).fr} au jour ${day}, et ${colour} indique sec au toucher en ${fr.dayCount(recordedDays)}${BETTER.fr}`,
      es: `${trial(ended).es}, con la película aún ${notDry(found).es} el día ${day}, y ${colour} indica seco al tacto en ${es.dayCount(recordedDays)}${BETTER.es}`,
    }),
  },

  /** What is likelier than not the slip, or what would help. */
  hints: {
    inNoParts: {
      en: "the reading of another colour, a slip in its L*a*b*, or a pigment that the record does not name",
      de: "die Messung einer anderen Farbe, ein Fehler in ihrem L*a*b* oder ein Pigment, das der Eintrag nicht nennt",
      fr: "la mesure d’une autre couleur, une erreur dans son L*a*b*, ou un pigment que la fiche ne nomme pas",
      es: "la medición de otro color, un error en su L*a*b*, o un pigmento que el registro no nombra",
    },
    inTheseParts: {
      en: "in other parts they may give it: the parts on record, the reading of another colour, or a pigment that the record does not name",
      de: "in anderen Anteilen ergeben sie ihn vielleicht: die aufgezeichneten Anteile, die Messung einer anderen Farbe oder ein Pigment, das der Eintrag nicht nennt",
      fr: "en d’autres parts ils le donnent peut-être\u202f: les parts consignées, la mesure d’une autre couleur, ou un pigment que la fiche ne nomme pas",
      es: "en otras partes quizá lo den: las partes registradas, la medición de otro color, o un pigmento que el registro no nombra",
    },
    misses: {
      en: "let-downs in each other's columns, a ratio written white to colour, or a masstone of another paint",
      de: "Aufhellungen in vertauschten Spalten, ein Verhältnis als Weiß zu Farbe geschrieben oder der Vollton einer anderen Farbe",
      fr: "des dégradés dans les colonnes l’un de l’autre, un rapport écrit blanc sur couleur, ou le ton plein d’une autre peinture",
      es: "rebajes en las columnas uno de otro, una proporción escrita de blanco a color, o el tono pleno de otra pintura",
    },
    opacityByTints: {
      en: "let-downs of another white, the films of that white, or another Colour Index name of the pigment?",
      de: "Aufhellungen eines anderen Weiß, die Filme dieses Weiß oder ein anderer Colour-Index-Name des Pigments?",
      fr: "des dégradés d’un autre blanc, les films de ce blanc, ou un autre nom Colour Index du pigment\u202f?",
      es: "¿rebajes de otro blanco, las películas de ese blanco u otro nombre Colour Index del pigmento?",
    },
    opacityByFilms: {
      en: "a film's thickness, the chart's readings, films in each other's columns, or another Colour Index name of the pigment?",
      de: "die Dicke eines Films, die Messungen der Karte, Filme in vertauschten Spalten oder ein anderer Colour-Index-Name des Pigments?",
      fr: "l’épaisseur d’un film, les mesures de la carte, des films dans les colonnes l’un de l’autre, ou un autre nom Colour Index du pigment\u202f?",
      es: "¿el espesor de una película, las mediciones de la carta, películas en las columnas una de otra u otro nombre Colour Index del pigmento?",
    },
    timedInHours: (days: number) => ({
      en: `${days} days if it was timed in hours`,
      de: `${de.NUMBERS.plain(days)} Tage, falls in Stunden gezählt wurde`,
      fr: `${fr.NUMBERS.plain(days)} jours si le temps a été compté en heures`,
      es: `${es.NUMBERS.plain(days)} días si se contó en horas`,
    }),
    inPercentOfPaint: (oilIndexGPer100g: number) => ({
      en: `${oilIndexGPer100g} g/100 g if it was given in percent of the paint`,
      de: `${de.NUMBERS.plain(oilIndexGPer100g)}\u00a0g/100\u00a0g, falls in Prozent der Farbe angegeben`,
      fr: `${fr.NUMBERS.plain(oilIndexGPer100g)}\u00a0g/100\u00a0g s’il était donné en pour cent de la peinture`,
      es: `${es.NUMBERS.plain(oilIndexGPer100g)}\u00a0g/100\u00a0g si se dio en tanto por ciento de la pintura`,
    }),
    showsGround: (ratio: string, white: string, contrast: string, isChartRead: boolean) => ({
      en: `${ratio} in ${white} lets its ground show (contrast ratio ${contrast}), and no coat that hides reads so; ${isChartRead ? "a thicker film would tell more" : "grounds in workshop.yaml, the chart's two halves read bare, would tell a coat that hides"}`,
      de: `${ratio} in ${white} lässt den Grund durchscheinen (Kontrastverhältnis ${contrast}), und eine deckende Schicht ergäbe keinen solchen Messwert; ${isChartRead ? "ein dickerer Film würde mehr sagen" : "mit grounds in workshop.yaml, den beiden unbestrichenen Hälften der Karte, ließe sich auf eine deckende Schicht schließen"}`,
      fr: `${ratio} dans ${white} laisse voir son fond (rapport de contraste ${contrast}), et aucune couche qui couvre ne donne cette mesure\u202f; ${isChartRead ? "un film plus épais en dirait plus" : "grounds dans workshop.yaml, les deux moitiés nues de la carte, permettraient de reconnaître une couche qui couvre"}`,
      es: `${ratio} en ${white} deja ver el fondo (relación de contraste ${contrast}), y ninguna capa que cubre da esa medición; ${isChartRead ? "una película más gruesa diría más" : "grounds en workshop.yaml, las dos mitades desnudas de la carta, permitirían reconocer una capa que cubre"}`,
    }),
  },
} satisfies Texts;

function trial(ended: string | undefined) {
  return ended === undefined
    ? {
        en: "The trial goes on",
        de: "Der Versuch läuft noch",
        fr: "L’essai continue",
        es: "El ensayo sigue",
      }
    : {
        en: `The trial ended on ${ended}`,
        de: `Der Versuch endete am ${ended}`,
        fr: `L’essai a pris fin le ${ended}`,
        es: `El ensayo terminó el ${ended}`,
      };
}

function changed({ deltaEab, category }: FoundChange) {
  return {
    en: ` at a change of ${en.NUMBERS.decimal(deltaEab, 1)} (as in category ${category})`,
    de: ` bei einer Änderung von ${de.NUMBERS.decimal(deltaEab, 1)} (wie in Kategorie ${category})`,
    fr: `, le changement étant de ${fr.NUMBERS.decimal(deltaEab, 1)} (comme en catégorie ${category})`,
    es: ` con un cambio de ${es.NUMBERS.decimal(deltaEab, 1)} (como en la categoría ${category})`,
  };
}

const BETTER = {
  en: ": the sheet tells it better than it was found",
  de: ": Das Blatt stellt es günstiger dar als der Befund",
  fr: "\u202f: la fiche annonce mieux que ce qui a été trouvé",
  es: ": la ficha promete más de lo que se halló",
};

function notDry(found: "wet" | "tacky" | "wet or tacky"): InEach {
  if (found !== "wet or tacky") return NOT_DRY[found];
  const { wet, tacky } = NOT_DRY;
  return {
    en: found,
    de: `${wet.de} oder ${tacky.de}`,
    fr: `${wet.fr} ou ${tacky.fr}`,
    es: `${wet.es} o ${tacky.es}`,
  };
}
