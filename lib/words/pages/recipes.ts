import { METALS, wordOf } from "../closed-sets.ts";
import * as en from "../en/phrases.ts";
import * as de from "../de/phrases.ts";
import * as fr from "../fr/phrases.ts";
import * as es from "../es/phrases.ts";
import type { Interval } from "../../quantities/interval.ts";
import { alike, type Texts } from "../texts.ts";

/** Recipes for a colour, and what replaces one that goes or is avoided. */
export const RECIPES = {
  colon: { en: en.COLON, de: de.COLON, fr: fr.COLON, es: es.COLON },
  heading: {
    en: "Find a recipe",
    de: "Rezept finden",
    fr: "Trouver une recette",
    es: "Buscar una receta",
  },
  lead: {
    en: "Name a colour; we look through every mixture of our paints for those that come near it.",
    de: "Nennen Sie eine Farbe; wir gehen alle Mischungen unserer Farben durch und suchen, was ihr nahekommt.",
    fr: "Nommer une couleur\u202f; nous cherchons dans tous les mélanges de nos peintures ceux qui en approchent.",
    es: "Nombre un color; buscamos en todas las mezclas de nuestras pinturas las que se le acercan.",
  },
  description: {
    en: "All mixtures of a few colours of the range that come near a colour, with what lasts, dries and hides.",
    de: "Alle Mischungen weniger Farben des Sortiments, die einer Farbe nahekommen, mit Lichtechtheit, Trocknung und Deckvermögen.",
    fr: "Tous les mélanges de quelques couleurs de la gamme qui approchent d’une couleur, avec leur tenue, leur séchage et leur opacité.",
    es: "Todas las mezclas de unos pocos colores de la gama que se acercan a un color, con lo que duran, secan y cubren.",
  },
  without: {
    en: "Looking for recipes needs the page\u2019s script. What we looked up beforehand is in the tables below.",
    de: "Um Rezepte zu suchen, ist das Skript der Seite nötig. Was wir im Voraus gesucht haben, steht in den Tabellen unten.",
    fr: "Pour chercher des recettes, il faut le script de la page. Ce que nous avons cherché d’avance est dans les tableaux ci-dessous.",
    es: "Para buscar recetas hace falta el script de la página. Lo que buscamos de antemano está en las tablas de abajo.",
  },
  target: {
    en: "The colour that is wanted",
    de: "Die gesuchte Farbe",
    fr: "La couleur voulue",
    es: "El color que se quiere",
  },
  text: {
    en: "A notation: 5PB 4/2, or L*a*b* 42 \u22121 \u22127, or a screen colour #6b6f76",
    de: "Eine Notation: 5PB 4/2, oder L*a*b* 42 \u22121 \u22127, oder eine Bildschirmfarbe #6b6f76",
    fr: "Une notation\u202f: 5PB 4/2, ou L*a*b* 42 \u22121 \u22127, ou une couleur d’écran #6b6f76",
    es: "Una notación: 5PB 4/2, o L*a*b* 42 \u22121 \u22127, o un color de pantalla #6b6f76",
  },
  colour: {
    en: "Or a colour of the range",
    de: "Oder eine Farbe des Sortiments",
    fr: "Ou une couleur de la gamme",
    es: "O un color de la gama",
  },
  file: {
    en: "Or a reading of your own (.csv, .cgats, .txt, .cxf)",
    de: "Oder eine eigene Messung (.csv, .cgats, .txt, .cxf)",
    fr: "Ou votre propre mesure (.csv, .cgats, .txt, .cxf)",
    es: "O una medición suya (.csv, .cgats, .txt, .cxf)",
  },
  column: {
    en: "Which reading of the file",
    de: "Welche Messung der Datei",
    fr: "Quelle mesure du fichier",
    es: "Qué medición del archivo",
  },
  percent: {
    en: "The file gives percent",
    de: "Die Datei gibt Prozent an",
    fr: "Le fichier est en pour cent",
    es: "El archivo está en tanto por ciento",
  },
  choose: { en: "choose", de: "wählen", fr: "choisir", es: "elegir" },
  origin: {
    range: {
      en: "as we read it",
      de: "wie wir sie gemessen haben",
      fr: "telle que nous l’avons mesurée",
      es: "tal como lo medimos",
    },
    reading: {
      en: "as your file reads",
      de: "wie in Ihrer Datei gemessen",
      fr: "telle que la donne votre fichier",
      es: "tal como lo da su archivo",
    },
    munsell: {
      en: "a chip by eye",
      de: "ein Muster nach Augenmaß",
      fr: "un échantillon, à l’œil",
      es: "una muestra, a ojo",
    },
    lab: alike("D65, 10\u00b0"),
    screen: {
      en: "a screen\u2019s colour: only near",
      de: "eine Bildschirmfarbe: nur ungefähr",
      fr: "une couleur d’écran\u202f: approchante seulement",
      es: "un color de pantalla: solo aproximado",
    },
  },
  targetName: (name: string, origin: string) => alike(`${name} (${origin})`),
  limits: {
    en: "What it has to be",
    de: "Was sie erfüllen muss",
    fr: "Ce qu’elle doit être",
    es: "Lo que tiene que cumplir",
  },
  white: { en: "White", de: "Weiß", fr: "Blanc", es: "Blanco" },
  anyWhite: {
    en: "any of our whites",
    de: "beliebiges Weiß von uns",
    fr: "l’un de nos blancs",
    es: "cualquiera de nuestros blancos",
  },
  withoutMetals: { en: "Without", de: "Ohne", fr: "Sans", es: "Sin" },
  metals: {
    lead: { en: "lead", de: METALS.lead.de, fr: "plomb", es: "plomo" },
    cadmium: { en: "cadmium", de: METALS.cadmium.de, fr: "cadmium", es: "cadmio" },
    cobalt: { en: "cobalt", de: METALS.cobalt.de, fr: "cobalt", es: "cobalto" },
    nickel: { en: "nickel", de: METALS.nickel.de, fr: "nickel", es: "níquel" },
  },
  unlabelled: {
    en: "no paint that carries a hazard warning",
    de: "keine Farbe, die einen Gefahrenhinweis trägt",
    fr: "aucune peinture qui porte un avertissement de danger",
    es: "ninguna pintura que lleve una advertencia de peligro",
  },
  lightfastness: {
    en: "Lasts at least",
    de: "Lichtechtheit mindestens",
    fr: "Tenue minimale",
    es: "Solidez mínima",
  },
  lightfastnessChoices: [
    alike(""),
    { en: "excellent", de: "ausgezeichnet", fr: "excellente", es: "excelente" },
    { en: "very good", de: "sehr gut", fr: "très bonne", es: "muy buena" },
    { en: "fair", de: "mäßig", fr: "moyenne", es: "mediana" },
    { en: "poor", de: "gering", fr: "faible", es: "escasa" },
  ],
  any: { en: "any", de: "beliebig", fr: "sans condition", es: "cualquiera" },
  days: {
    en: "Touch dry within (days)",
    de: "Grifftrocken binnen (Tage)",
    fr: "Sèche au toucher en (jours)",
    es: "Seco al tacto en (días)",
  },
  opacity: {
    en: "Hides at least",
    de: "Deckt mindestens",
    fr: "Couvre au moins",
    es: "Cubre al menos",
  },
  opacityChoices: [
    alike(""),
    { en: "opaque", de: "deckend", fr: "opaque", es: "opaca" },
    { en: "semi-opaque", de: "halbdeckend", fr: "semi-opaque", es: "semiopaca" },
    {
      en: "semi-transparent",
      de: "halblasierend",
      fr: "semi-transparent",
      es: "semitransparente",
    },
  ],
  price: {
    en: "At most, for 10 ml",
    de: "Höchstens, für 10\u00a0ml",
    fr: "Au plus, pour 10\u00a0ml",
    es: "Como máximo, por 10\u00a0ml",
  },
  four: {
    en: "up to four colours (slower)",
    de: "bis zu vier Farben (langsamer)",
    fr: "jusqu’à quatre couleurs (plus lent)",
    es: "hasta cuatro colores (más lento)",
  },
  whiteFree: {
    en: "also without white",
    de: "auch ohne Weiß",
    fr: "aussi sans blanc",
    es: "también sin blanco",
  },
  leaveOut: { en: "Leave out", de: "Weglassen", fr: "Laisser de côté", es: "Dejar fuera" },
  mustHold: { en: "Must hold", de: "Muss enthalten", fr: "Doit contenir", es: "Debe contener" },
  order: { en: "First come", de: "Zuerst", fr: "D’abord", es: "Primero" },
  orders: {
    fewest: {
      en: "the fewest paints",
      de: "die mit den wenigsten Farben",
      fr: "le moins de peintures",
      es: "las de menos pinturas",
    },
    nearest: {
      en: "the nearest",
      de: "die nächsten",
      fr: "les plus proches",
      es: "las más próximas",
    },
    drying: {
      en: "the quickest to dry",
      de: "die am schnellsten trocknenden",
      fr: "les plus rapides à sécher",
      es: "las más rápidas en secar",
    },
    lightfastness: {
      en: "the most lightfast",
      de: "die lichtechtesten",
      fr: "les plus solides à la lumière",
      es: "las más sólidas a la luz",
    },
    lamps: {
      en: "those that hold under lamps",
      de: "die unter Lampen halten",
      fr: "celles qui gardent leur couleur à la lampe",
      es: "las que mantienen su color a la luz de lámparas",
    },
    price: {
      en: "the cheapest",
      de: "die günstigsten",
      fr: "les moins chères",
      es: "las más baratas",
    },
  },
  find: {
    en: "Look for recipes",
    de: "Rezepte suchen",
    fr: "Chercher des recettes",
    es: "Buscar recetas",
  },
  looking: (tried: number) => ({
    en: `Looking\u2026 ${tried} mixtures tried.`,
    de: `Suche läuft\u00a0… ${tried} Mischungen durchgerechnet.`,
    fr: `Recherche\u2026 ${tried} mélanges examinés.`,
    es: `Buscando\u2026 ${tried} mezclas probadas.`,
  }),
  found: (within: number, near: number, tried: number, isAtLeast: boolean) =>
    within > 0
      ? {
          en: `${within === 1 ? "One mixture" : `${isAtLeast ? "At least " : ""}${within} mixtures`} may be this colour, as far as we can tell; ${near === 1 ? "one more comes" : `${near} more come`} near. ${tried} were tried.`,
          de: `${within === 1 ? "Eine Mischung kann" : `${isAtLeast ? "Mindestens " : ""}${within} Mischungen können`} diese Farbe sein, soweit sich das sagen lässt; ${near === 1 ? "eine weitere kommt" : `${near} weitere kommen`} nahe. ${tried} wurden durchgerechnet.`,
          fr: `${within === 1 ? "Un mélange peut" : `${isAtLeast ? "Au moins " : ""}${within} mélanges peuvent`} être cette couleur, pour autant que nous puissions le dire\u202f; ${near === 1 ? "un de plus en approche" : `${near} de plus en approchent`}. ${tried} ont été examinés.`,
          es: `${within === 1 ? "Una mezcla puede" : `${isAtLeast ? "Al menos " : ""}${within} mezclas pueden`} ser este color, hasta donde podemos decir; ${near === 1 ? "otra se acerca" : `otras ${near} se acercan`}. Se probaron ${tried}.`,
        }
      : near > 0
        ? {
            en: `None is this colour; ${near === 1 ? "one comes" : `${near} come`} near. ${tried} were tried.`,
            de: `Keine Mischung ist genau diese Farbe; ${near === 1 ? "eine kommt" : `${near} kommen`} nahe. ${tried} wurden durchgerechnet.`,
            fr: `Aucun n’est cette couleur\u202f; ${near === 1 ? "un seul en approche" : `${near} en approchent`}. ${tried} ont été examinés.`,
            es: `Ninguna es este color; ${near === 1 ? "una se acerca" : `${near} se acercan`}. Se probaron ${tried}.`,
          }
        : {
            en: `None comes near. ${tried} were tried.`,
            de: `Keine Mischung kommt nahe. ${tried} wurden durchgerechnet.`,
            fr: `Aucun n’en approche. ${tried} ont été examinés.`,
            es: `Ninguna se acerca. Se probaron ${tried}.`,
          },
  quickest: (days: Interval) => ({
    en: `The quickest that comes near and keeps to your other wishes is touch dry in ${en.dayCount(days)}, an estimate.`,
    de: `Die am schnellsten trocknende Mischung, die nahekommt und Ihre übrigen Wünsche erfüllt, ist in ${de.dayCount(days, "dative")} grifftrocken (Schätzung).`,
    fr: `La plus rapide de celles qui approchent et respectent vos autres souhaits est sèche au toucher en ${fr.dayCount(days)}, estimés.`,
    es: `La más rápida de las que se acercan y cumplen sus demás deseos está seca al tacto en ${es.dayCount(days)}, estimados.`,
  }),
  shown: (shown: number) => ({
    en: `The first ${shown} are listed.`,
    de: `Die ersten ${shown} sind aufgeführt.`,
    fr: `Les ${shown} premiers sont donnés.`,
    es: `Se muestran las primeras ${shown}.`,
  }),
  nothingMixes: {
    en: "No colours are left to mix with these wishes.",
    de: "Mit diesen Wünschen bleiben keine Farben zum Mischen.",
    fr: "Avec ces souhaits, il ne reste aucune couleur à mélanger.",
    es: "Con estos deseos no quedan colores que mezclar.",
  },
  within: {
    en: "These may be it: nearer than we can tell",
    de: "Diese können es sein: näher, als sich unterscheiden lässt",
    fr: "Ceux-ci peuvent l’être\u202f: nous ne pouvons pas les en distinguer",
    es: "Estas pueden serlo: no podemos distinguirlas de él",
  },
  near: {
    en: "These come near",
    de: "Diese kommen nahe",
    fr: "Ceux-ci en approchent",
    es: "Estas se acercan",
  },
  none: {
    en: "No mixture of our paints comes near this colour with these wishes.",
    de: "Keine Mischung unserer Farben, die diese Wünsche erfüllt, kommt der Farbe nahe.",
    fr: "Aucun mélange de nos peintures n’approche de cette couleur avec ces souhaits.",
    es: "Ninguna mezcla de nuestras pinturas se acerca a este color con estos deseos.",
  },
  tryIt: {
    en: "On the tint bench",
    de: "Am Mischtisch",
    fr: "Au banc de mélange",
    es: "En el banco de mezcla",
  },
  failed: {
    en: "The search stopped by an error of ours. Load the page again.",
    de: "Die Suche wurde wegen eines Fehlers bei uns abgebrochen. Laden Sie die Seite neu.",
    fr: "La recherche s’est arrêtée à cause d’une erreur de notre part. Recharger la page.",
    es: "La búsqueda se detuvo por un error nuestro. Vuelva a cargar la página.",
  },
  more: { en: "Show more", de: "Mehr zeigen", fr: "En montrer plus", es: "Mostrar más" },
  lamps: { en: "Lamps", de: "Lampen", fr: "Lampes", es: "Lámparas" },
  lightfast: { en: "Lasts", de: "Lichtechtheit", fr: "Tenue", es: "Solidez" },
  parts: {
    en: "Parts by volume",
    de: "Volumenteile",
    fr: "Parts en volume",
    es: "Partes en volumen",
  },
  partsMass: {
    en: "Parts by weight",
    de: "Gewichtsteile",
    fr: "Parts en poids",
    es: "Partes en peso",
  },
  replaces: {
    heading: {
      en: "What replaces it",
      de: "Ersatz",
      fr: "Ce qui la remplace",
      es: "Qué lo sustituye",
    },
    onRecipes: (name: string) => ({
      en: `In place of ${en.within(name)}`,
      de: `Anstelle von ${de.within(name)}`,
      fr: `À la place ${fr.of(fr.within(name))}`,
      es: `En lugar de ${es.within(name)}`,
    }),
    because: (name: string, metals: readonly string[], isNone: boolean) => ({
      en: `${name} contains ${en.listed(metals)}.${isNone ? "" : " Nearest to it among our paints without lead and cadmium:"}`,
      de: `${name} enthält ${de.listed(metals.map((metal) => wordOf(METALS, metal, "de")))}.${isNone ? "" : " Am nächsten unter unseren Farben ohne Blei und Cadmium:"}`,
      fr: `${name} contient\u202f: ${fr.listed(metals.map((metal) => wordOf(METALS, metal, "fr")))}.${isNone ? "" : " Au plus près parmi nos peintures sans plomb ni cadmium\u202f:"}`,
      es: `${name} contiene ${es.listed(metals.map((metal) => wordOf(METALS, metal, "es")))}.${isNone ? "" : " Lo más próximo entre nuestras pinturas sin plomo ni cadmio:"}`,
    }),
    discontinued: (name: string, date: string, isNone: boolean) => ({
      en: `${name} is discontinued from ${date}.${isNone ? "" : " Nearest to it among our paints:"}`,
      de: `${name} wird ab dem ${date} nicht mehr hergestellt.${isNone ? "" : " Am nächsten unter unseren Farben:"}`,
      fr: `${name}\u202f: fabrication arrêtée au ${date}.${isNone ? "" : " Au plus près parmi nos peintures\u202f:"}`,
      es: `${name} se deja de fabricar el ${date}.${isNone ? "" : " Lo más próximo entre nuestras pinturas:"}`,
    }),
    caption: (name: string) => ({
      en: `In place of ${en.within(name)}, and what changes`,
      de: `Anstelle von ${de.within(name)} und was sich dadurch ändert`,
      fr: `À la place ${fr.of(fr.within(name))}, et ce qui change`,
      es: `En lugar de ${es.within(name)}, y qué cambia`,
    }),
    columns: {
      what: { en: "Instead", de: "Stattdessen", fr: "À la place", es: "En su lugar" },
      difference: {
        en: "How far off",
        de: "Wie weit entfernt",
        fr: "À quel écart",
        es: "A qué distancia",
      },
      lasts: { en: "Lasts", de: "Lichtechtheit", fr: "Tenue", es: "Solidez" },
      dries: {
        en: "Dries to the touch",
        de: "Grifftrocken",
        fr: "Sèche au toucher",
        es: "Seca al tacto",
      },
      hides: { en: "Opacity", de: "Deckvermögen", fr: "Opacité", es: "Opacidad" },
    },
    itself: { en: "itself", de: "sie selbst", fr: "elle-même", es: "él mismo" },
    single: { en: "alone", de: "allein", fr: "seule", es: "solo" },
    none: {
      en: "Nothing of ours comes near it.",
      de: "Keine unserer Farben kommt ihr nahe.",
      fr: "Aucune de nos couleurs n’en approche.",
      es: "Ninguno de nuestros colores se le acerca.",
    },
    noneKnown: {
      en: "We have no colour near it that is known to be free of lead and cadmium; what is not classified yet was left out.",
      de: "Von unseren Farben, die nach unseren Unterlagen weder Blei noch Cadmium enthalten, kommt ihr keine nahe; was noch nicht eingestuft ist, wurde nicht berücksichtigt.",
      fr: "Aucune de nos couleurs que nous savons exemptes de plomb et de cadmium n’en approche\u202f; ce qui n’est pas encore classé est laissé de côté.",
      es: "Ninguno de nuestros colores que sabemos sin plomo ni cadmio se le acerca; lo que aún no está clasificado queda fuera.",
    },
    note: {
      en: "Compared are the masstones: a \u0394E00 of about 1 is hard to see side by side. In tints the strength may be another. Single tubes are as read, mixtures predicted.",
      de: "Verglichen sind die Volltöne: Ein \u0394E00 von etwa 1 ist nebeneinander kaum zu sehen. In Aufhellungen kann die Farbstärke eine andere sein. Einzelne Tuben sind gemessen, Mischungen vorhergesagt.",
      fr: "On compare les tons pleins\u202f: un \u0394E00 d’environ 1 se voit à peine côte à côte. Dans les dégradés, la force peut différer. Les tubes simples sont donnés tels que mesurés, les mélanges sont prévus.",
      es: "Se comparan los tonos plenos: un \u0394E00 de 1 más o menos apenas se ve lado a lado. En los rebajes la fuerza puede ser otra. Los tubos solos se dan tal como se midieron; las mezclas, previstas.",
    },
    more: {
      en: "Other recipes, by your own wishes",
      de: "Andere Rezepte, nach Ihren eigenen Wünschen",
      fr: "D’autres recettes, selon vos propres souhaits",
      es: "Otras recetas, según sus propios deseos",
    },
  },
} satisfies Texts;
