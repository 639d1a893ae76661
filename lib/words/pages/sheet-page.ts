import type { Metal } from "../../hazard/studio/metal-content.ts";
import { isSuitableCategory } from "../../permanence/lightfastness-on-label.ts";
import { upperFirst } from "../letter-case.ts";
import { MEASURES, SIGNAL_WORDS, wordOf } from "../closed-sets.ts";
import { de, en, es, fr, inEach } from "../phrases-in-each.ts";
import { metalWord } from "../rulings/studio-phrases.ts";
import { alike, type Texts } from "../texts.ts";
import type { InEach } from "../in-each.ts";
import type { Language } from "../../quantities/languages.ts";
import {
  discontinuedFrom,
  NOT_TRIED,
  TREAT_AS_HAZARDOUS,
  WEIGHING_AND_MULLING,
  WHAT_IT_WOULD_TAKE,
} from "../shared-rows.ts";

const SHOWS_THROUGH = {
  en: "Shows through as drawn",
  de: "Deckt im Aufstrich nicht",
  fr: "Ne couvre pas telle qu’appliquée",
  es: "No cubre tal como se aplicó",
};

const atTheBench = (name: string) => ({
  en: `${name} at the bench`,
  de: `${name} an der Werkbank`,
  fr: `${name} à l’établi`,
  es: `${name} en la mesa de trabajo`,
});

const HOW_IT_HIDES = {
  en: "How it hides",
  de: "Deckvermögen",
  fr: "Comment elle couvre",
  es: "Cómo cubre",
};

/** Parts of a colour to parts of white, as printed; the lesser of the two is 1. */
export interface PartsToParts {
  readonly colour: string;
  readonly white: string;
}

/** How many parts of it; French counts up to two, and not included, as one, and of two ends by the upper. */
function ofColour({ colour }: PartsToParts): Readonly<Record<Language, string>> {
  const isOne = colour === "1";
  return {
    en: `${colour} ${isOne ? "part" : "parts"}`,
    de: `${colour} ${isOne ? "Teil" : "Teile"}`,
    fr: `${colour} ${/(?:^|[\s\u2013])1(?:,\d+)?$/.test(colour) ? "part" : "parts"}`,
    es: `${colour} ${isOne ? "parte" : "partes"}`,
  };
}

/** What a colour's page says to a painter, and its bench page to whoever makes the paint. */
export const SHEET_PAGE = {
  asOf: (date: string) => ({
    en: `As of ${date}.`,
    de: `Stand ${date}.`,
    fr: `État au ${date}.`,
    es: `A fecha de ${date}.`,
  }),
  alone: { en: "alone", de: "allein", fr: "pur", es: "puro" },
  levels: {
    "70": { en: "pale", de: "hell", fr: "pâle", es: "pálido" },
    "50": { en: "middle", de: "mittel", fr: "moyen", es: "medio" },
    "30": { en: "dark", de: "dunkel", fr: "sombre", es: "oscuro" },
  },
  notReached: { en: "not reached", de: "nicht erreicht", fr: "non atteint", es: "no alcanzado" },
  tintsDescription: (name: string, parts: readonly string[]) => ({
    en: `${name} with white, by lightness: ${parts.join("; ")}.`,
    de: `${name} mit Weiß, nach Helligkeit: ${parts.join("; ")}.`,
    fr: `${name} avec du blanc, par clarté\u202f: ${parts.join("\u202f; ")}.`,
    es: `${name} con blanco, por claridad: ${parts.join("; ")}.`,
  }),
  tintCell: (level: string, white: string, munsell: string) => ({
    en: `${level} in ${white}, ${munsell}`,
    de: `${level} in ${white}, ${munsell}`,
    fr: `${level} dans ${white}, ${munsell}`,
    es: `${level} en ${white}, ${munsell}`,
  }),
  whiteSentence: (count: number) => ({
    en:
      count === 0
        ? "A white. None of our colours has been tried in it yet."
        : count === 1
          ? "A white. One colour of the range was tried in it."
          : `A white. ${count} colours of the range were tried in it.`,
    de:
      count === 0
        ? "Ein Weiß. Noch keine unserer Farben wurde darin erprobt."
        : count === 1
          ? "Ein Weiß. Eine Farbe des Sortiments wurde darin erprobt."
          : `Ein Weiß. ${count} Farben des Sortiments wurden darin erprobt.`,
    fr:
      count === 0
        ? "Un blanc. Aucune de nos couleurs n’y a encore été essayée."
        : count === 1
          ? "Un blanc. Une couleur de la gamme y a été essayée."
          : `Un blanc. ${count} couleurs de la gamme y ont été essayées.`,
    es:
      count === 0
        ? "Un blanco. Aún no se ha probado en él ninguno de nuestros colores."
        : count === 1
          ? "Un blanco. Se probó en él un color de la gama."
          : `Un blanco. Se probaron en él ${count} colores de la gama.`,
  }),
  extenderSentence: {
    en: "A medium for glazes and for body, not a white.",
    de: "Ein Malmittel für Lasuren und für mehr Körper, kein Weiß.",
    fr: "Un médium pour les glacis et pour donner du corps, non un blanc.",
    es: "Un médium para veladuras y para dar cuerpo, no un blanco.",
  },
  notTried: NOT_TRIED,
  noPrice: (markets: readonly string[]) => ({
    en: `No price here: it may not be sold freely in ${en.listed(markets)}.`,
    de: `Kein Preis, da nicht frei verkäuflich (${de.listed(markets)}).`,
    fr: `Pas de prix ici\u202f: la vente n’en est pas libre partout (marchés\u202f: ${fr.listed(markets)}).`,
    es: `Aquí no hay precio: no puede venderse libremente en ${es.listed(markets)}.`,
  }),
  notForSale: {
    en: "Not yet for sale.",
    de: "Noch nicht im Verkauf.",
    fr: "Pas encore en vente.",
    es: "Aún no está a la venta.",
  },
  discontinued: discontinuedFrom,
  /** @param metals that it is known to hold all the same. */
  unknownHazard: (metals: readonly Metal[]) => {
    const held = inEach((p, language) =>
      p.listed(metals.map((metal) => metalWord(metal)[language])),
    );
    return metals.length === 0
      ? {
          en: "Not classified yet: treat as hazardous.",
          de: "Noch nicht eingestuft: als gefährlich behandeln.",
          fr: "Pas encore classé\u202f: à traiter comme dangereux.",
          es: "Aún sin clasificar: tratar como peligroso.",
        }
      : {
          en: `It holds ${held.en}. Not classified yet: treat as hazardous.`,
          de: `Enthält ${held.de}. Noch nicht eingestuft: als gefährlich behandeln.`,
          fr: `Contient\u202f: ${held.fr}. Pas encore classé\u202f: à traiter comme dangereux.`,
          es: `Contiene ${held.es}. Aún sin clasificar: tratar como peligroso.`,
        };
  },
  print: {
    en: "Sheet to print",
    de: "Blatt zum Drucken",
    fr: "Fiche à imprimer",
    es: "Ficha para imprimir",
  },
  compare: { en: "Compare", de: "Vergleichen", fr: "Comparer", es: "Comparar" },
  facts: {
    lasts: { en: "Lasts", de: "Lichtechtheit", fr: "Tenue", es: "Solidez" },
    hides: { en: "Opacity", de: "Deckvermögen", fr: "Opacité", es: "Opacidad" },
    dries: { en: "Dries", de: "Trocknet", fr: "Sèche", es: "Seca" },
    strength: { en: "Strength", de: "Farbstärke", fr: "Force", es: "Fuerza" },
    whitens: { en: "Whitens", de: "Aufhellvermögen", fr: "Blanchit", es: "Blanquea" },
    middleTone: {
      en: "Middle tone",
      de: "Mittelton",
      fr: "Ton moyen",
      es: "Tono medio",
    },
    oil: { en: "Oil", de: "Öl", fr: "Huile", es: "Aceite" },
    safety: { en: "Safety", de: "Sicherheit", fr: "Sécurité", es: "Seguridad" },
  },
  asDrawn: {
    "coat-hides-as-drawn": {
      en: "Hides as drawn",
      de: "Deckt im Aufstrich",
      fr: "Couvre telle qu’appliquée",
      es: "Cubre tal como se aplicó",
    },
    "masstone-by-both-grounds": SHOWS_THROUGH,
    "masstone-is-a-film": SHOWS_THROUGH,
  } as Readonly<Record<string, InEach>>,
  dries: {
    fast: { en: "Fast", de: "Schnell", fr: "Vite", es: "Deprisa" },
    medium: { en: "Moderately fast", de: "Mittelschnell", fr: "Moyennement", es: "A ritmo medio" },
    slow: { en: "Slowly", de: "Langsam", fr: "Lentement", es: "Despacio" },
    "very slow": {
      en: "Very slowly",
      de: "Sehr langsam",
      fr: "Très lentement",
      es: "Muy despacio",
    },
  },
  oil: {
    "very low": { en: "Very low", de: "sehr wenig", fr: "Très peu", es: "Muy poco" },
    low: { en: "Low", de: "wenig", fr: "Peu", es: "Poco" },
    medium: { en: "Medium", de: "mittel", fr: "Moyen", es: "Medio" },
    high: { en: "High", de: "viel", fr: "Beaucoup", es: "Mucho" },
    "very high": { en: "Very high", de: "sehr viel", fr: "Énormément", es: "Muchísimo" },
  },

  /** In place of a strength, of what only lengthens a paint. */
  noStrength: { en: "None", de: "Keine", fr: "Aucune", es: "Ninguna" },

  /** In place of a class, where an estimate reaches over several. */
  estimatedOil: { en: "Not weighed", de: "Nicht gewogen", fr: "Non pesée", es: "Sin pesar" },
  detail: {
    stated: {
      paint: (category: string) => ({
        en: `category ${category} of five, stated for the paint; not tested here`,
        de: `Kategorie\u00a0${category} von fünf, für die Farbe angegeben; hier nicht geprüft`,
        fr: `catégorie\u00a0${category} sur cinq, déclarée pour la peinture\u202f; non testée ici`,
        es: `categoría\u00a0${category} de cinco, declarada para la pintura; no ensayada aquí`,
      }),
      pigment: (category: string) => ({
        en: `category ${category} of five, the supplier\u2019s word for its pigment; not tested here`,
        de: `Kategorie\u00a0${category} von fünf, Angabe des Lieferanten für das Pigment; hier nicht geprüft`,
        fr: `catégorie\u00a0${category} sur cinq, déclarée par le fournisseur pour son pigment\u202f; non testée ici`,
        es: `categoría\u00a0${category} de cinco, según el proveedor de su pigmento; no ensayada aquí`,
      }),
      mixture: (category: string) => ({
        en: `category ${category} of five, taken from its pigments; the mixture was not tested here`,
        de: `Kategorie\u00a0${category} von fünf, aus den Pigmenten geschlossen; die Mischung ist hier nicht geprüft`,
        fr: `catégorie\u00a0${category} sur cinq, déduite de ses pigments\u202f; le mélange n’a pas été testé ici`,
        es: `categoría\u00a0${category} de cinco, deducida de sus pigmentos; la mezcla no se ensayó aquí`,
      }),
    },
    exposed: (category: string) => ({
      en: `category ${category} of five, tested by the standard`,
      de: `Kategorie\u00a0${category} von fünf, nach der Norm geprüft`,
      fr: `catégorie\u00a0${category} sur cinq, testée selon la norme`,
      es: `categoría\u00a0${category} de cinco, ensayada según la norma`,
    }),
    own: (category: string) => ({
      en: `our own window test: ${isSuitableCategory(category) ? "no more change than" : "as much change as"} category ${category} of five allows; not the full standard test`,
      de: `eigene Prüfung am Fenster: ${isSuitableCategory(category) ? "nicht stärker verändert, als" : "so stark verändert, wie"} Kategorie\u00a0${category} von fünf zulässt; keine volle Prüfung nach der Norm`,
      fr: `notre propre essai à la fenêtre\u202f: ${isSuitableCategory(category) ? "dans les" : "changé jusqu’aux"} limites de la catégorie\u00a0${category} sur cinq\u202f; non l’essai complet de la norme`,
      es: `nuestro propio ensayo en la ventana: ${isSuitableCategory(category) ? "dentro de los" : "cambió hasta los"} límites de la categoría\u00a0${category} de cinco; no el ensayo completo de la norma`,
    }),
    expected: {
      en: "what its pigment leads us to expect; not tested here",
      de: "was das Pigment erwarten lässt; hier nicht geprüft",
      fr: "ce que fait prévoir son pigment\u202f; non testée ici",
      es: "lo que hace prever su pigmento; no ensayada aquí",
    },
    film: (film: string) => ({
      en: `${film} of dry film hides black and white`,
      de: `ein trockener Film von ${film} deckt Schwarz und Weiß`,
      fr: `${film} de film sec couvrent le noir et le blanc`,
      es: `${film} de película seca cubren el negro y el blanco`,
    }),
    filmUnknown: {
      en: "a thick film hides black and white",
      de: "ein dicker Film deckt Schwarz und Weiß",
      fr: "un film épais couvre le noir et le blanc",
      es: "una película gruesa cubre el negro y el blanco",
    },
    byDarkness: (hides: string) => ({
      en: `swallows so much light that ${hides}`,
      de: `schluckt viel Licht: ${hides}`,
      fr: `absorbe beaucoup de lumière\u202f: ${hides}`,
      es: `absorbe mucha luz: ${hides}`,
    }),
    contrast: (ratio: string) => ({
      en: `contrast ratio ${ratio}`,
      de: `Kontrastverhältnis ${ratio}`,
      fr: `rapport de contraste ${ratio}`,
      es: `relación de contraste ${ratio}`,
    }),
    asDrawn: {
      en: "over a black-and-white chart; how thick the film was is not recorded",
      de: "über einer schwarzweißen Prüfkarte; wie dick der Film war, ist nicht aufgezeichnet",
      fr: "sur une carte noire et blanche\u202f; l’épaisseur du film n’est pas consignée",
      es: "sobre una carta en blanco y negro; el espesor de la película no está registrado",
    },
    days: (touch: string, through: string | undefined) => ({
      en:
        through === undefined
          ? `${touch} to the touch`
          : `${touch} to the touch, ${through} through`,
      de:
        through === undefined
          ? `${touch} bis grifftrocken`
          : `${touch} bis grifftrocken, ${through} bis durchgetrocknet`,
      fr: through === undefined ? `${touch} au toucher` : `${touch} au toucher, ${through} à cœur`,
      es:
        through === undefined
          ? `${touch} al tacto`
          : `${touch} al tacto, ${through} en profundidad`,
    }),
    trial: (days: string) => ({
      en: `${days}; our trial`,
      de: `${days}; unser Versuch`,
      fr: `${days}\u202f; notre essai`,
      es: `${days}; ensayo nuestro`,
    }),
    trialInDoubt: (days: string) => ({
      en: `${days}; our trial, but another film took longer`,
      de: `${days}; unser Versuch, doch ein anderer Film brauchte länger`,
      fr: `${days}\u202f; notre essai, mais un autre film a mis plus longtemps`,
      es: `${days}; ensayo nuestro, pero otra película tardó más`,
    }),
    /** A mixture, and what it is mixed for. */
    parts: (mix: PartsToParts, white: string, by: string) => ({
      en: `${ofColour(mix).en} to ${mix.white} of ${white} for a middle tone, by ${by}`,
      de: `${ofColour(mix).de} auf ${mix.white} ${white} für einen Mittelton, ${wordOf(MEASURES, by, "de")}`,
      fr: `${ofColour(mix).fr} pour ${mix.white} ${fr.of(white)}, pour un ton moyen, en ${wordOf(MEASURES, by, "fr")}`,
      es: `${ofColour(mix).es} por ${mix.white} de ${white} para un tono medio, en ${wordOf(MEASURES, by, "es")}`,
    }),
    reference: {
      en: "others are measured against it",
      de: "mit ihr werden die anderen verglichen",
      fr: "les autres lui sont comparées",
      es: "los demás se comparan con él",
    },
    oil: (grams: string) => ({
      en: `${grams} of pigment`,
      de: `${grams} Pigment`,
      fr: `${grams} de pigment`,
      es: `${grams} de pigmento`,
    }),
    unknown: {
      en: "not known yet",
      de: "noch nicht bekannt",
      fr: "pas encore connu",
      es: "aún no se sabe",
    },
    lengthens: {
      en: "it lengthens the paint",
      de: "es streckt die Farbe",
      fr: "il allonge la peinture",
      es: "alarga la pintura",
    },
    lighter: {
      en: "lighter than a middle tone by itself",
      de: "von sich aus heller als ein Mittelton",
      fr: "déjà plus claire qu’un ton moyen",
      es: "ya de por sí más claro que un tono medio",
    },
    never: {
      en: "no film that anybody lays hides black and white",
      de: "kein üblicher Film deckt Schwarz und Weiß",
      fr: "aucun film courant ne couvre le noir et le blanc",
      es: "ninguna película corriente cubre el negro y el blanco",
    },
    /** Of what no label warns of: its dust, what acid sets free of it, and its oil. */
    noWarning: (is: { readonly freedByAcid: boolean; readonly ofDryingOil: boolean }) => ({
      en: `keep the dry pigment out of the air${is.freedByAcid ? " and from acid" : ""}${is.ofDryingOil ? "; oily rags can catch fire" : ""}`,
      de: `trockenes Pigment nicht aufwirbeln${is.freedByAcid ? ", von Säure fernhalten" : ""}${is.ofDryingOil ? "; mit Öl getränkte Lappen können sich entzünden" : ""}`,
      fr: `tenir le pigment sec hors de l’air${is.freedByAcid ? " et loin des acides" : ""}${is.ofDryingOil ? "\u202f; les chiffons gras peuvent prendre feu" : ""}`,
      es: `mantener el pigmento seco fuera del aire${is.freedByAcid ? " y lejos de los ácidos" : ""}${is.ofDryingOil ? "; los trapos con aceite pueden prenderse" : ""}`,
    }),
    seeLabel: {
      en: "the whole label is under Safety",
      de: "das ganze Etikett steht unter Sicherheit",
      fr: "toute l’étiquette est sous Sécurité",
      es: "la etiqueta completa está en Seguridad",
    },
    unknownHazard: (names: readonly string[]) => ({
      en: `no hazard data for ${en.listed(names)}`,
      de: `keine Gefahrendaten für ${de.listed(names)}`,
      fr: `aucune donnée de danger pour ${fr.listed(names)}`,
      es: `sin datos de peligro para ${es.listed(names)}`,
    }),
  },
  brief: {
    stated: {
      en: "stated, not tested",
      de: "angegeben, nicht geprüft",
      fr: "déclarée, non testée",
      es: "declarada, no ensayada",
    },
    fromPigments: {
      en: "by its pigments",
      de: "nach den Pigmenten",
      fr: "d’après ses pigments",
      es: "por sus pigmentos",
    },
    exposed: {
      en: "tested by the standard",
      de: "nach der Norm geprüft",
      fr: "testée selon la norme",
      es: "ensayada según la norma",
    },
    own: {
      en: "our own test",
      de: "eigene Prüfung",
      fr: "notre propre essai",
      es: "ensayo propio",
    },
  },
  white: {
    names: {
      whitens: { en: "Whitens", de: "Aufhellvermögen", fr: "Blanchit", es: "Blanquea" },
      bright: { en: "Bright", de: "Helligkeit", fr: "Clarté", es: "Claridad" },
      yellow: { en: "Yellow", de: "Gelb", fr: "Jaune", es: "Amarillo" },
    },
    uses: {
      strongest: {
        en: "The strongest of our whites: for pale tints and for covering. A little floods a weak colour.",
        de: "Unser stärkstes Weiß: für helle Aufhellungen und zum Decken. Schon ein wenig erdrückt eine schwache Farbe.",
        fr: "Le plus fort de nos blancs\u202f: pour les tons pâles et pour couvrir. Il en faut peu pour noyer une couleur faible.",
        es: "El más fuerte de nuestros blancos: para tonos pálidos y para cubrir. Basta un poco para ahogar un color débil.",
      },
      weakest: {
        en: "The gentlest of our whites: for thin veils, and for tints that a strong white would flood.",
        de: "Unser sanftestes Weiß: für dünne Schleier und für Aufhellungen, die ein starkes Weiß erdrücken würde.",
        fr: "Le plus doux de nos blancs\u202f: pour les voiles minces, et pour les tons qu’un blanc fort noierait.",
        es: "El más suave de nuestros blancos: para velos finos, y para tonos que un blanco fuerte ahogaría.",
      },
      fastest: {
        en: "The first of our whites to dry: for the layers below.",
        de: "Das Weiß, das bei uns zuerst trocknet: für die unteren Schichten.",
        fr: "Le premier de nos blancs à sécher\u202f: pour les couches du dessous.",
        es: "El primero de nuestros blancos en secar: para las capas de debajo.",
      },
      slowest: {
        en: "The last of our whites to dry: for the layers on top, and for working wet.",
        de: "Das Weiß, das bei uns zuletzt trocknet: für die oberen Schichten und zum Malen nass in nass.",
        fr: "Le dernier de nos blancs à sécher\u202f: pour les couches du dessus, et pour travailler dans le frais.",
        es: "El último de nuestros blancos en secar: para las capas de encima, y para trabajar en fresco.",
      },
    },
    whitens: (parts: string, reference: string, by: string) => ({
      en: `It takes ${parts} parts to bring one part of ${reference} to a middle tone, by ${by}: the fewer, the stronger the white.`,
      de: `Es braucht ${parts} Teile, um einen Teil ${reference} auf einen Mittelton zu bringen, ${wordOf(MEASURES, by, "de")}: je weniger, desto stärker das Weiß.`,
      fr: `Il en faut ${parts} parts pour mener une part ${fr.of(reference)} à un ton moyen, en ${wordOf(MEASURES, by, "fr")}\u202f: moins il en faut, plus le blanc est fort.`,
      es: `Hacen falta ${parts} partes para llevar una de ${reference} a un tono medio, en ${wordOf(MEASURES, by, "es")}: cuantas menos, más fuerte el blanco.`,
    }),
    bright: (L: string) => ({
      en: `Lightness L*\u00a0${L} of 100.`,
      de: `Helligkeit L*\u00a0${L} von 100.`,
      fr: `Clarté L*\u00a0${L} sur 100.`,
      es: `Claridad L*\u00a0${L} de 100.`,
    }),
    yellow: (b: string) => ({
      en: `b*\u00a0${b}: 0 is neutral, above it is yellow.`,
      de: `b*\u00a0${b}: 0 ist neutral, darüber ist Gelb.`,
      fr: `b*\u00a0${b}\u202f: 0 est neutre, au-dessus tire vers le jaune.`,
      es: `b*\u00a0${b}: 0 es neutro, por encima tira hacia el amarillo.`,
    }),
    others: (parts: string) => ({
      en: `Our other whites: ${parts}.`,
      de: `Unsere anderen Weiß: ${parts}.`,
      fr: `Nos autres blancs\u202f: ${parts}.`,
      es: `Nuestros otros blancos: ${parts}.`,
    }),
    other: (white: string, value: string) => alike(`${white} ${value}`),
    tints: {
      en: "Each from the tube, then its dark, middle and pale tint in this white.",
      de: "Jede Farbe aus der Tube, darunter ihre dunkle, mittlere und helle Aufhellung in diesem Weiß.",
      fr: "Chaque couleur telle qu’elle sort du tube, puis son dégradé foncé, moyen et pâle dans ce blanc.",
      es: "Cada color tal como sale del tubo y, debajo, su rebaje oscuro, medio y pálido en este blanco.",
    },
    tintsMissing: {
      en: "An empty frame: no reading comes near that lightness.",
      de: "Ein leerer Rahmen: Keine Messung kommt dieser Helligkeit nahe.",
      fr: "Un cadre vide\u202f: aucune mesure n’approche de cette clarté.",
      es: "Un marco vacío: ninguna medición se acerca a esa claridad.",
    },
  },
  strengthOf: (percent: string, reference: string) => ({
    en: `${percent} of ${reference}`,
    de: `${percent} von ${reference}`,
    fr: `${percent} ${fr.of(reference)}`,
    es: `${percent} de ${reference}`,
  }),
  strengthByWeight: (percent: string, reference: string) => ({
    en: `${percent} of ${reference} by weight`,
    de: `${percent} von ${reference} nach Gewicht`,
    fr: `${percent} ${fr.of(reference)} en poids`,
    es: `${percent} de ${reference} en peso`,
  }),
  whitens: (parts: string) => ({
    en: `${parts} parts`,
    de: `${parts} Teile`,
    fr: `${parts} parts`,
    es: `${parts} partes`,
  }),
  whitensDetail: (reference: string, by: string) => ({
    en: `of it bring one of ${reference} to a middle tone, by ${by}`,
    de: `davon bringen einen Teil ${reference} auf einen Mittelton, ${wordOf(MEASURES, by, "de")}`,
    fr: `mènent une part ${fr.of(reference)} à un ton moyen, en ${wordOf(MEASURES, by, "fr")}`,
    es: `llevan una de ${reference} a un tono medio, en ${wordOf(MEASURES, by, "es")}`,
  }),
  mixedWithWhite: (mix: PartsToParts) => ({
    en: `${ofColour(mix).en} to ${mix.white} of white`,
    de: `${ofColour(mix).de} auf ${mix.white} Weiß`,
    fr: `${ofColour(mix).fr} pour ${mix.white} de blanc`,
    es: `${ofColour(mix).es} por ${mix.white} de blanco`,
  }),
  withWhite: (white: string, by: string) => ({
    en: `with ${white}, by ${by}`,
    de: `mit ${white}, ${wordOf(MEASURES, by, "de")}`,
    fr: `avec ${white}, en ${wordOf(MEASURES, by, "fr")}`,
    es: `con ${white}, en ${wordOf(MEASURES, by, "es")}`,
  }),
  safe: {
    Danger: { en: "Danger", de: SIGNAL_WORDS.Danger.de, fr: "Danger", es: "Peligro" },
    Warning: { en: "Warning", de: SIGNAL_WORDS.Warning.de, fr: "Attention", es: "Atención" },
    care: { en: "Take care", de: "Vorsicht", fr: "Prendre garde", es: "Tener cuidado" },
    none: {
      en: "No warning",
      de: "Kein Warnhinweis",
      fr: "Sans avertissement",
      es: "Sin advertencia",
    },
    unknown: TREAT_AS_HAZARDOUS,
  },
  sections: {
    whites: { en: "Let it down", de: "Aufhellen", fr: "Coupé de blanc", es: "Rebajado con blanco" },
    ofWhite: { en: "As a white", de: "Als Weiß", fr: "Comme blanc", es: "Como blanco" },
    painting: {
      en: "Painting with it",
      de: "Damit malen",
      fr: "Peindre avec",
      es: "Pintar con él",
    },
    permanence: { en: "Will it last", de: "Beständigkeit", fr: "Sa tenue", es: "¿Durará?" },
    handling: { en: "Safety", de: "Sicherheit", fr: "Sécurité", es: "Seguridad" },
    range: {
      en: "Beside others",
      de: "Neben anderen",
      fr: "À côté des autres",
      es: "Junto a otros",
    },
    questions: {
      en: "Asked about it",
      de: "Fragen dazu",
      fr: "Questions à son sujet",
      es: "Preguntas sobre él",
    },
    unknown: WHAT_IT_WOULD_TAKE,
    bench: {
      en: "For the bench",
      de: "Für die Werkbank",
      fr: "Pour l’établi",
      es: "Para la mesa de trabajo",
    },
  },
  ladder: {
    key: {
      en: "Colour to white, by weight of paint. A dot marks what we painted out and read; the steps between are worked out.",
      de: "Farbe zu Weiß, nach Gewicht der Farbe. Ein Punkt markiert, was wir aufgestrichen und gemessen haben; die Stufen dazwischen sind errechnet.",
      fr: "Couleur pour blanc, en poids de peinture. Un point marque ce que nous avons peint et mesuré\u202f; les degrés intermédiaires sont calculés.",
      es: "Color a blanco, en peso de pintura. Un punto marca lo que pintamos y medimos; los pasos intermedios están calculados.",
    },
    keyPigment: {
      en: "Colour to white, by weight of dry pigment. A dot marks what we painted out and read; the steps between are worked out.",
      de: "Farbe zu Weiß, nach Gewicht des trockenen Pigments. Ein Punkt markiert, was wir aufgestrichen und gemessen haben; die Stufen dazwischen sind errechnet.",
      fr: "Couleur pour blanc, en poids de pigment sec. Un point marque ce que nous avons peint et mesuré\u202f; les degrés intermédiaires sont calculés.",
      es: "Color a blanco, en peso de pigmento seco. Un punto marca lo que pintamos y medimos; los pasos intermedios están calculados.",
    },
    noSentence: {
      en: "Tried in white; the reading is not enough to say more.",
      de: "In Weiß erprobt; für weitere Angaben reicht die Messung nicht aus.",
      fr: "Essayée dans un blanc\u202f; la mesure ne suffit pas pour en dire plus.",
      es: "Probado en un blanco; la medición no basta para decir más.",
    },
    notDrawn: (whites: readonly string[]) => ({
      en: `Not tried in ${en.listed(whites)}.`,
      de: `Nicht erprobt in ${de.listed(whites)}.`,
      fr: `Non essayée dans ${fr.listed(whites)}.`,
      es: `No probado en ${es.listed(whites)}.`,
    }),
    expected: (whites: readonly string[]) => ({
      en: `What to expect in ${en.listed(whites)}, not painted out`,
      de: `Was in ${de.listed(whites)} zu erwarten ist, nicht aufgestrichen`,
      fr: `Ce qu’il faut prévoir dans ${fr.listed(whites)}, non peint`,
      es: `Lo previsible en ${es.listed(whites)}, no pintado`,
    }),
    expectedIn: (white: string) => ({
      en: `${white}, not painted out`,
      de: `${white}, nicht aufgestrichen`,
      fr: `${white}, non peint`,
      es: `${white}, no pintado`,
    }),
  },
  lines: {
    dries: { en: "Dries", de: "Trocknet", fr: "Sèche", es: "Seca" },
    layers: { en: "Layers", de: "Schichten", fr: "Couches", es: "Capas" },
    hides: { en: "Hides", de: "Deckt", fr: "Couvre", es: "Cubre" },
    finish: { en: "Finish", de: "Glanzgrad", fr: "Aspect", es: "Acabado" },
    age: { en: "With age", de: "Mit dem Alter", fr: "Avec l’âge", es: "Con la edad" },
    whites: { en: "In white", de: "In Weiß", fr: "Dans le blanc", es: "En blanco" },
    mixing: { en: "Mixing", de: "Mischen", fr: "Mélange", es: "Mezcla" },
    oil: { en: "Oil", de: "Öl", fr: "Huile", es: "Aceite" },
  },

  /** Where it would take more paint than anybody lays. */
  hidesNever: {
    en: "It never hides by itself: not even a coat of half a millimetre would.",
    de: "Die Farbe deckt nicht von sich aus: Auch eine Schicht von einem halben Millimeter würde nicht decken.",
    fr: "Elle ne couvre jamais à elle seule, pas même en couche d’un demi-millimètre.",
    es: "Nunca cubre por sí solo, ni siquiera en una capa de medio milímetro.",
  },
  hidesLine: (film: string) => ({
    en: `It takes a dry film of ${film} to hide a black-and-white chart.`,
    de: `Um eine schwarzweiße Prüfkarte zu decken, ist ein trockener Film von ${film} nötig.`,
    fr: `Il faut un film sec ${fr.of(film)} pour couvrir une carte noire et blanche.`,
    es: `Para cubrir una carta en blanco y negro hacen falta ${film} de película seca.`,
  }),

  /** Of a colour of little body that swallows much light, a black or a deep green. */
  hidesByDarkness: (film: string) => ({
    en: `A dry film of ${film} hides a black-and-white chart, but by the light it swallows, not by its body: spread thinner, it glazes.`,
    de: `Ein trockener Film von ${film} deckt eine schwarzweiße Prüfkarte, aber weil er Licht schluckt, nicht weil er es zurückwirft: Dünner ausgestrichen lasiert er.`,
    fr: `Un film sec ${fr.of(film)} couvre une carte noire et blanche, mais parce qu’il absorbe la lumière, non parce qu’il a du corps\u202f: étalé plus mince, il sert de glacis.`,
    es: `En película seca, ${film} cubren una carta en blanco y negro, pero por la luz que absorbe, no por cuerpo: más fina, la película sirve de veladura.`,
  }),

  /** @param area with its unit, "360 cm²/ml". */
  covers: (area: string) => ({
    en: `One millilitre from the tube hides ${area.replace(/\/ml$/, "")}.`,
    de: `Ein Milliliter aus der Tube deckt ${area.replace(/\/ml$/, "")}.`,
    fr: `Un millilitre sorti du tube couvre ${area.replace(/\/ml$/, "")}.`,
    es: `Un mililitro salido del tubo cubre ${area.replace(/\/ml$/, "")}.`,
  }),
  finishLine: (finish: string) => ({
    en: `${finish} as it dries.`,
    de: `${upperFirst(finish)} nach dem Trocknen.`,
    fr: `${finish} une fois sec.`,
    es: `${finish} al secar.`,
  }),
  inWhite: (white: string, days: string, isTried: boolean) => ({
    en: `${days} to the touch in ${white}${isTried ? ", as tried" : ""}`,
    de: `${days} bis grifftrocken in ${white}${isTried ? ", nach Versuch" : ""}`,
    fr: `${days} au toucher dans ${white}${isTried ? ", à l’essai" : ""}`,
    es: `${days} al tacto en ${white}${isTried ? ", según el ensayo" : ""}`,
  }),
  inWhiteParts: (parts: number) => ({
    en: `Worked out for one part of the colour to ${parts} of white.`,
    de: `Errechnet für einen Teil Farbe auf ${parts} Teile Weiß.`,
    fr: `Calculé pour une part de couleur dans ${parts} de blanc.`,
    es: `Calculado para una parte de color por ${parts} de blanco.`,
  }),

  /** By who found it; a record may give a figure and not say how. */
  oilLine: {
    weighed: (grams: string) => ({
      en: `${grams} of pigment, as we make it.`,
      de: `${grams} Pigment, so wie wir die Farbe herstellen.`,
      fr: `${grams} de pigment, telle que nous la faisons.`,
      es: `${grams} de pigmento, tal como lo hacemos.`,
    }),
    reckoned: (grams: string) => ({
      en: `${grams} of pigment, worked out from the paints it is mixed of.`,
      de: `${grams} Pigment, errechnet aus den Farben der Mischung.`,
      fr: `${grams} de pigment, calculé à partir des peintures dont elle est faite.`,
      es: `${grams} de pigmento, calculado a partir de las pinturas de que está hecho.`,
    }),
    recorded: (grams: string) => ({
      en: `${grams} of pigment by our record, which does not say how we know.`,
      de: `${grams} Pigment nach unseren Aufzeichnungen, die nicht sagen, woher der Wert stammt.`,
      fr: `${grams} de pigment selon notre relevé, qui ne dit pas comment nous le savons.`,
      es: `${grams} de pigmento según nuestro registro, que no dice cómo lo sabemos.`,
    }),
    told: (grams: string) => ({
      en: `${grams} of pigment, as others state it; not weighed here.`,
      de: `${grams} Pigment nach Angabe anderer; hier nicht gewogen.`,
      fr: `${grams} de pigment selon d’autres\u202f; non pesé ici.`,
      es: `${grams} de pigmento según otros; no pesado aquí.`,
    }),
    expected: (grams: string) => ({
      en: `${grams} of pigment is to be expected; not weighed here.`,
      de: `${grams} Pigment sind zu erwarten; hier nicht gewogen.`,
      fr: `${grams} de pigment, c’est ce qu’il faut prévoir\u202f; non pesé ici.`,
      es: `${grams} de pigmento es lo previsible; no pesado aquí.`,
    }),
  },
  unknown: {
    colour: {
      name: { en: "Its colour", de: "Die Farbe", fr: "Sa couleur", es: "Su color" },
      takes: {
        en: "A drawdown read with an instrument, or matched to a Munsell chip.",
        de: "Ein Aufstrich, mit einem Gerät gemessen oder mit einem Munsell-Muster verglichen.",
        fr: "Une application mesurée à l’instrument, ou comparée à un échantillon Munsell.",
        es: "Una aplicación medida con un instrumento, o igualada a una muestra Munsell.",
      },
    },
    whites: {
      name: { en: "In white", de: "In Weiß", fr: "Dans le blanc", es: "En blanco" },
      takes: {
        en: "Three mixtures with a white, 1:1, 1:5 and 1:20, painted out and read.",
        de: "Drei Mischungen mit einem Weiß, 1:1, 1:5 und 1:20, aufgestrichen und gemessen.",
        fr: "Trois mélanges avec un blanc, 1:1, 1:5 et 1:20, peints et mesurés.",
        es: "Tres mezclas con un blanco, 1:1, 1:5 y 1:20, pintadas y medidas.",
      },
    },
    opacity: {
      name: HOW_IT_HIDES,
      takes: {
        en: "A film of known thickness over a black-and-white chart, read.",
        de: "Ein Film bekannter Dicke über einer schwarzweißen Prüfkarte, gemessen.",
        fr: "Un film d’épaisseur connue sur une carte noire et blanche, mesuré.",
        es: "Una película de espesor conocido sobre una carta en blanco y negro, medida.",
      },
    },
    filmSpectra: {
      name: HOW_IT_HIDES,
      takes: {
        en: "The spectra of its films over a black-and-white chart: these were read without one.",
        de: "Die Spektren der Filme über einer schwarzweißen Prüfkarte: Gemessen wurde bisher ohne Spektrum.",
        fr: "Les spectres de ses films sur une carte noire et blanche\u202f: ils ont été mesurés sans spectre.",
        es: "Los espectros de sus películas sobre una carta en blanco y negro: se midieron sin espectro.",
      },
    },
    filmsOfWhite: {
      name: {
        en: "How transparent it is",
        de: "Die Transparenz",
        fr: "Sa transparence",
        es: "Su transparencia",
      },
      takes: {
        en: "Films of its white over a black-and-white chart, read: its own film hides by being dark, and does not show how much it scatters.",
        de: "Filme des zugehörigen Weiß über einer schwarzweißen Prüfkarte, gemessen: Der eigene Film deckt, weil er dunkel ist, und zeigt nicht, wie stark er streut.",
        fr: "Des films de son blanc sur une carte noire et blanche, mesurés\u202f: le sien couvre parce qu’il est sombre, et ne montre pas combien il diffuse.",
        es: "Películas de su blanco sobre una carta en blanco y negro, medidas: la suya cubre por ser oscura, y no muestra cuánto dispersa.",
      },
    },
    oil: {
      name: { en: "Its oil", de: "Das Öl", fr: "Son huile", es: "Su aceite" },
      takes: {
        en: "A rub-out, or the oil weighed in for a batch.",
        de: "Eine Ölzahl durch Anreiben oder das eingewogene Öl eines Ansatzes.",
        fr: "Une prise d’huile, ou l’huile pesée pour une fabrication.",
        es: "Una absorción de aceite, o el aceite pesado en una fabricación.",
      },
    },
    drying: {
      name: {
        en: "When it dries",
        de: "Die Trocknung",
        fr: "Quand elle sèche",
        es: "Cuándo seca",
      },
      takes: {
        en: "A film of known thickness, and the days until it is dry to the touch.",
        de: "Ein Film bekannter Dicke und die Tage, bis er grifftrocken ist.",
        fr: "Un film d’épaisseur connue, et les jours jusqu’à ce qu’il soit sec au toucher.",
        es: "Una película de espesor conocido, y los días hasta que está seca al tacto.",
      },
    },
    permanence: {
      name: { en: "Whether it lasts", de: "Beständigkeit", fr: "Si elle tient", es: "Si dura" },
      takes: {
        en: "An exposure in the window with a half kept dark, or the supplier\u2019s word.",
        de: "Eine Belichtung am Fenster, bei der eine Hälfte dunkel bleibt, oder die Angabe des Lieferanten.",
        fr: "Une exposition à la fenêtre, une moitié gardée à l’obscurité, ou l’indication du fournisseur.",
        es: "Una exposición en la ventana con una mitad a oscuras, o el dato del proveedor.",
      },
    },
    hazard: {
      name: { en: "Its hazards", de: "Die Gefahren", fr: "Ses dangers", es: "Sus peligros" },
      takes: {
        en: "The supplier\u2019s safety data sheet, sections 2 and 3. Until then treat it as hazardous.",
        de: "Das Sicherheitsdatenblatt des Lieferanten, Abschnitte 2 und 3. Bis dahin als gefährlich behandeln.",
        fr: "La fiche de données de sécurité du fournisseur, rubriques 2 et 3. D’ici là, à traiter comme dangereux.",
        es: "La ficha de datos de seguridad del proveedor, secciones 2 y 3. Hasta entonces, tratar como peligroso.",
      },
    },
  },
  standingsFold: {
    en: "What the marks mean",
    de: "Was die Angaben bedeuten",
    fr: "Ce que veulent dire les marques",
    es: "Qué quieren decir las marcas",
  },
  benchLead: {
    en: "Oil and how the pigment packs, the pigment itself, notations, spectra, and how we came by every figure.",
    de: "Öl und Pigmentpackung, das Pigment, Notationen, Spektren und woher wir jeden Wert haben.",
    fr: "Huile et compacité, pigment, notations, spectres, et d’où nous tenons chaque chiffre.",
    es: "Aceite y empaquetamiento, el pigmento, notaciones, espectros, y de dónde sale cada cifra.",
  },
  benchLink: atTheBench,
  dryPigment: {
    en: "Weighing, mulling and dry pigment are on the bench page.",
    de: "Abwiegen, Anreiben und Umgang mit trockenem Pigment: siehe die Seite für die Werkbank.",
    fr: "Pesée, broyage et pigment sec sont à la page de l’établi.",
    es: "Pesar, moler y el pigmento seco están en la página de la mesa de trabajo.",
  },
  bench: {
    heading: atTheBench,
    description: (name: string) => ({
      en: `${name} for whoever makes such paint: oil, how the pigment packs, the pigment itself, notations and spectra.`,
      de: `${name} für alle, die solche Farbe herstellen: Öl, Pigmentpackung, Pigment, Notationen und Spektren.`,
      fr: `${name} pour qui fabrique une telle peinture\u202f: huile, compacité, pigment, notations et spectres.`,
      es: `${name} para quien fabrica esta pintura: aceite, empaquetamiento, pigmento, notaciones y espectros.`,
    }),
    back: (name: string) => ({
      en: `${name}, for the painter`,
      de: `${name}, für das Malen`,
      fr: `${name}, pour le peintre`,
      es: `${name}, para el pintor`,
    }),
    evidenceLead: {
      en: "Every figure, how we came by it, what it was worked out from, and the sources:",
      de: "Jeder Wert: woher wir ihn haben und woraus er errechnet ist, dazu die Quellen:",
      fr: "Chaque chiffre, d’où nous le tenons, à partir de quoi il est calculé, et les sources\u202f:",
      es: "Cada cifra, de dónde sale, a partir de qué se calculó, y las fuentes:",
    },
    evidenceLink: (name: string) => ({
      en: `the evidence for ${name}`,
      de: `die Nachweise zu ${name}`,
      fr: `l’origine des chiffres ${fr.of(name)}`,
      es: `el origen de las cifras de ${name}`,
    }),
    sections: {
      dry: {
        en: "Dry pigment and additions",
        de: "Trockenes Pigment und Zusätze",
        fr: "Pigment sec et ajouts",
        es: "Pigmento seco y añadidos",
      },
      range: { en: "In the range", de: "Im Sortiment", fr: "Dans la gamme", es: "En la gama" },
      evidence: {
        en: "Evidence",
        de: "Nachweise",
        fr: "Origine des chiffres",
        es: "Origen de las cifras",
      },
      downloads: { en: "Data", de: "Daten", fr: "Données", es: "Datos" },
    },
    weighing: WEIGHING_AND_MULLING,
  },
  evidence: {
    heading: (name: string) => ({
      en: `Evidence for ${name}`,
      de: `Nachweise zu ${name}`,
      fr: `Origine des chiffres ${fr.of(name)}`,
      es: `Origen de las cifras de ${name}`,
    }),
    description: (name: string) => ({
      en: `Every figure on the sheet of ${name}, how it was found and what it was worked out from.`,
      de: `Jeder Wert auf dem Blatt von ${name}: wie er ermittelt und woraus er errechnet wurde.`,
      fr: `Chaque chiffre de la fiche ${fr.of(name)}, comment il a été trouvé et à partir de quoi il est calculé.`,
      es: `Cada cifra de la ficha de ${name}, cómo se halló y a partir de qué se calculó.`,
    }),
    back: atTheBench,
  },
} satisfies Texts;
