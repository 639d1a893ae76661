import * as en from "../en/phrases.ts";
import * as de from "../de/phrases.ts";
import * as fr from "../fr/phrases.ts";
import * as es from "../es/phrases.ts";
import { alike, type Texts } from "../texts.ts";

/** A chosen set of tubes: what they reach, what is missing, in which order to paint with them. */
export const PALETTE = {
  heading: { en: "Palette", de: "Palette", fr: "Palette", es: "Paleta" },
  lead: {
    en: "Choose your tubes: what they reach, what is missing, and in which order to paint with them.",
    de: "Wählen Sie Ihre Tuben und sehen Sie, was sie erreichen, was fehlt und in welcher Reihenfolge damit zu malen ist.",
    fr: "Choisir vos tubes\u202f: ce qu’ils atteignent, ce qui manque, et dans quel ordre les employer.",
    es: "Elija sus tubos: qué alcanzan, qué falta y en qué orden pintar con ellos.",
  },
  description: {
    en: "A chosen set of colours: its map, its gaps, and the order of layering.",
    de: "Eine Auswahl von Farben: ihre Karte, ihre Lücken und die Reihenfolge der Schichten.",
    fr: "Un choix de couleurs\u202f: sa carte, ses manques, et l’ordre des couches.",
    es: "Un conjunto elegido de colores: su mapa, sus huecos, y el orden de las capas.",
  },
  without: {
    en: "Choosing a palette needs the page\u2019s script. The order of layering of the whole range is in the table below.",
    de: "Um eine Palette zu wählen, ist das Skript der Seite nötig. Die Reihenfolge der Schichten für das ganze Sortiment steht in der Tabelle unten.",
    fr: "Pour choisir une palette, il faut le script de la page. L’ordre des couches de toute la gamme est dans le tableau ci-dessous.",
    es: "Para elegir una paleta hace falta el script de la página. El orden de capas de toda la gama está en la tabla de abajo.",
  },
  choose: { en: "Your tubes", de: "Ihre Tuben", fr: "Vos tubes", es: "Sus tubos" },
  reach: {
    en: "What they reach",
    de: "Was sie erreichen",
    fr: "Ce qu’ils atteignent",
    es: "Qué alcanzan",
  },
  reachTitle: {
    en: "Your tubes and what can be mixed of them",
    de: "Ihre Tuben und was sich aus ihnen mischen lässt",
    fr: "Vos tubes et ce qu’on peut en mélanger",
    es: "Sus tubos y lo que puede mezclarse con ellos",
  },
  white: {
    en: "In which white",
    de: "In welchem Weiß",
    fr: "Dans quel blanc",
    es: "En qué blanco",
  },
  level: { en: "The map at", de: "Die Karte bei", fr: "La carte à", es: "El mapa a" },
  levelName: (L: number) => alike(`L* ${L}`),
  share: (shares: readonly string[]) => ({
    en: `Of what the whole range reaches, yours reach ${en.listed(shares)}.`,
    de: `Von dem, was das ganze Sortiment erreicht, erreichen Ihre Tuben ${de.listed(shares)}.`,
    fr: `De ce qu’atteint toute la gamme, vos tubes atteignent ${fr.listed(shares)}.`,
    es: `De lo que alcanza toda la gama, los suyos alcanzan ${es.listed(shares)}.`,
  }),
  shown: (white: string, L: number) => ({
    en: `Mixed with ${en.within(white)}; the map at L* ${L}.`,
    de: `Mit ${de.within(white)} gemischt; die Karte bei L* ${L}.`,
    fr: `Avec ${fr.within(white)}\u202f; la carte à L* ${L}.`,
    es: `Con ${es.within(white)}; el mapa a L* ${L}.`,
  }),
  shareAt: (share: string, L: number) => ({
    en: `${share} at L* ${L}`,
    de: `${share} bei L* ${L}`,
    fr: `${share} à L* ${L}`,
    es: `${share} a L* ${L}`,
  }),
  unlike: (names: readonly string[], white: string) => ({
    en: `${en.listed(names)}: not tried in ${en.within(white)} or read otherwise, so not counted in what is reached.`,
    de: `${de.listed(names)}: in ${de.within(white)} nicht erprobt oder anders gemessen, daher nicht mitgezählt.`,
    fr: `${fr.listed(names)}\u202f: non essayé dans ${fr.within(white)} ou mesuré autrement, donc non compté dans ce qui est atteint.`,
    es: `${es.listed(names)}: no probado en ${es.within(white)} o medido de otro modo, así que no cuenta en lo que se alcanza.`,
  }),
  gaps: { en: "What is missing", de: "Was fehlt", fr: "Ce qui manque", es: "Qué falta" },
  gapsCaption: {
    en: "Hues in which the range goes further than your tubes",
    de: "Bunttöne, in denen das Sortiment weiter reicht als Ihre Tuben",
    fr: "Teintes où la gamme va plus loin que vos tubes",
    es: "Matices en que la gama va más lejos que sus tubos",
  },
  gapColumns: {
    hue: {
      en: "Nothing near",
      de: "Nichts nahe bei",
      fr: "Rien près d’une teinte franche",
      es: "Nada cerca de un matiz limpio",
    },
    bring: {
      en: "What would bring it",
      de: "Was die Lücke schließt",
      fr: "Ce qui l’apporterait",
      es: "Qué lo traería",
    },
  },
  gapHue: (hue: string) => ({ en: `a clean ${hue}`, de: `reinem ${hue}`, fr: hue, es: hue }),
  gapAt: (L: number) => alike(`L* ${L}`),
  gapNone: { en: "near", de: "nahe", fr: "près", es: "cerca" },
  gapBy: (names: readonly string[]) => ({
    en: en.listed(names, "or"),
    de: de.listed(names, "or"),
    fr: fr.listed(names, "or"),
    es: es.listed(names, "or"),
  }),
  gapByNone: {
    en: "several together",
    de: "mehrere zusammen",
    fr: "plusieurs ensemble",
    es: "varios juntos",
  },
  gapsNote: {
    en: "How far yours stop short of the range; two times in three within the \u00b1. Near: by less than \u0394E00\u00a08.",
    de: "Wie weit Ihre Tuben hinter dem Sortiment zurückbleiben; in zwei von drei Fällen innerhalb des \u00b1. Nahe: um weniger als \u0394E00\u00a08.",
    fr: "De combien vos tubes restent en deçà de la gamme\u202f; deux fois sur trois dans le \u00b1. Près\u202f: de moins de \u0394E00\u00a08.",
    es: "Cuánto les falta a los suyos para la gama; dos veces de cada tres dentro del \u00b1. Cerca: menos de \u0394E00\u00a08.",
  },
  noGaps: {
    en: "No gap that another of our tubes would fill.",
    de: "Keine Lücke, die eine andere unserer Tuben füllen würde.",
    fr: "Aucun manque qu’un autre de nos tubes comblerait.",
    es: "Ningún hueco que otro de nuestros tubos llenaría.",
  },
  tooFew: {
    en: "Choose two colours or more.",
    de: "Wählen Sie zwei Farben oder mehr.",
    fr: "Choisir deux couleurs ou plus.",
    es: "Elija dos colores o más.",
  },
  hues: [
    { en: "red", de: "Rot", fr: "rouge", es: "rojo" },
    { en: "orange", de: "Orange", fr: "orange", es: "naranja" },
    { en: "yellow", de: "Gelb", fr: "jaune", es: "amarillo" },
    { en: "yellow green", de: "Gelbgrün", fr: "jaune-vert", es: "verde amarillento" },
    { en: "green", de: "Grün", fr: "vert", es: "verde" },
    { en: "blue green", de: "Blaugrün", fr: "bleu-vert", es: "verde azulado" },
    { en: "blue", de: "Blau", fr: "bleu", es: "azul" },
    { en: "violet", de: "Violett", fr: "violet", es: "violeta" },
    { en: "purple", de: "Purpur", fr: "pourpre", es: "púrpura" },
    { en: "pink", de: "Rosa", fr: "rose", es: "rosa" },
  ],
  order: {
    en: "In which order to paint",
    de: "In welcher Reihenfolge zu malen ist",
    fr: "Dans quel ordre peindre",
    es: "En qué orden pintar",
  },
  orderNote: {
    en: "Fast and lean below, slow and fat above: in layers put a colour over one that stands before it, not under. Over one that holds more oil add a little medium to it.",
    de: "Schnell und mager unten, langsam und fett oben: Legen Sie beim Malen in Schichten eine Farbe über eine, die in der Liste vor ihr steht, nicht darunter. Kommt sie über eine Farbe mit mehr Öl, etwas Malmittel zugeben.",
    fr: "Rapide et maigre dessous, lent et gras dessus\u202f: en couches, mettre une couleur par-dessus celles qui la précèdent ici, non par-dessous. Sur une couleur plus riche en huile, lui ajouter un peu de médium.",
    es: "Rápido y magro debajo, lento y graso encima: por capas, ponga un color encima de los que le preceden aquí, no debajo. Si va sobre uno con más aceite, añádale un poco de médium.",
  },
  columns: {
    colour: { en: "Colour", de: "Farbe", fr: "Couleur", es: "Color" },
    dries: {
      en: "Dries to the touch",
      de: "Grifftrocken",
      fr: "Sèche au toucher",
      es: "Seca al tacto",
    },
    oil: {
      en: "Oil of the dry film, by volume",
      de: "Öl im trockenen Film, nach Volumen",
      fr: "Huile du film sec, en volume",
      es: "Aceite de la película seca, en volumen",
    },
    lasts: { en: "Lasts", de: "Lichtechtheit", fr: "Tenue", es: "Solidez" },
  },
  /** @param below a tube that lies below in the order and is fatter. */
  leaner: (below: string) => ({
    en: `leaner than ${below} below it: add a little medium`,
    de: `magerer als ${below} darunter: etwas Malmittel zugeben`,
    fr: `plus maigre ${fr.than(below)}, qui est dessous\u202f: ajouter un peu de médium`,
    es: `más magro que ${below}, que va debajo: añada un poco de médium`,
  }),
  print: {
    en: "Print this palette",
    de: "Diese Palette drucken",
    fr: "Imprimer cette palette",
    es: "Imprimir esta paleta",
  },
  yours: { en: "yours", de: "Ihre", fr: "la vôtre", es: "la suya" },
  wholeRange: { en: "the range", de: "das Sortiment", fr: "la gamme", es: "la gama" },
} satisfies Texts;
