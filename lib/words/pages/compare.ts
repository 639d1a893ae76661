import { de, en, es, fr } from "../phrases-in-each.ts";
import type { Compared } from "../../collection/side-by-side.ts";
import { alike, type Texts } from "../texts.ts";
import { SIDE_BY_SIDE } from "../shared-rows.ts";

const OTHER_COLOURS = {
  en: "Choose other colours",
  de: "Andere Farben wählen",
  fr: "Choisir d’autres couleurs",
  es: "Elegir otros colores",
};

/** The pages that set colours side by side; their script carries these words too. */
export const COMPARE = {
  heading: SIDE_BY_SIDE,
  lead: {
    en: "Two to four colours, alone and in each white; then what differs, what is too close to call, and what is the same.",
    de: "Zwei bis vier Farben, allein und in jedem Weiß; dann, was sich unterscheidet, was für ein Urteil zu ähnlich ist und was gleich ist.",
    fr: "De deux à quatre couleurs, pures et dans chaque blanc\u202f; puis ce qui diffère, ce qui est trop proche pour trancher, et ce qui est identique.",
    es: "De dos a cuatro colores, puros y en cada blanco; luego qué difiere, qué es demasiado parecido para decidir, y qué es igual.",
  },
  description: (names: readonly string[]) => ({
    en: `${en.listed(names)} side by side: in the whites, strength, oil, drying, permanence, cautions and pigments.`,
    de: `${de.listed(names)} nebeneinander: in Weiß, Farbstärke, Öl, Trocknung, Beständigkeit, Warnhinweise und Pigmente.`,
    fr: `${fr.listed(names)} côte à côte\u202f: dans les blancs, force, huile, séchage, permanence, précautions et pigments.`,
    es: `${es.listed(names)} lado a lado: en los blancos, fuerza, aceite, secado, permanencia, precauciones y pigmentos.`,
  }),
  pairHeading: (names: readonly string[]) => ({
    en: en.listed(names),
    de: de.listed(names),
    fr: fr.listed(names),
    es: es.listed(names),
  }),
  panelTitle: (names: readonly string[]) => ({
    en: `Side by side: ${en.listed(names)}`,
    de: `Nebeneinander: ${de.listed(names)}`,
    fr: `Côte à côte\u202f: ${fr.listed(names)}`,
    es: `Lado a lado: ${es.listed(names)}`,
  }),
  missing: { en: "not stated", de: "keine Angabe", fr: "non indiqué", es: "no indicado" },
  swatches: {
    alone: { en: "Alone", de: "Allein", fr: "Pure", es: "Puro" },
    notRead: { en: "not read", de: "nicht gemessen", fr: "non mesuré", es: "no medido" },
    notTried: { en: "not tried", de: "nicht erprobt", fr: "non essayé", es: "no probado" },
    notReached: { en: "not reached", de: "nicht erreicht", fr: "non atteint", es: "no alcanzado" },
    same: { en: "The same.", de: "Gleich.", fr: "Identique.", es: "Igual." },
  },
  /** What differs and what is too close to call, before any figure. */
  summary: {
    differ: (names: readonly string[]) => ({
      en: `They differ in ${en.listed(names)}.`,
      de: `Unterschiede: ${de.listed(names)}.`,
      fr: `Ce qui les distingue\u202f: ${fr.listed(names)}.`,
      es: `Difieren en ${es.listed(names)}.`,
    }),
    nothing: {
      en: "Nothing that we know tells them apart.",
      de: "Nichts, was wir wissen, unterscheidet sie.",
      fr: "Rien de ce que nous savons ne les distingue.",
      es: "Nada de lo que sabemos los distingue.",
    },
    tooClose: (names: readonly string[]) => ({
      en: `Too close to call: ${en.listed(names)}.`,
      de: `Zu ähnlich für ein Urteil: ${de.listed(names)}.`,
      fr: `Trop proches pour trancher\u202f: ${fr.listed(names)}.`,
      es: `Demasiado parecido para decidir: ${es.listed(names)}.`,
    }),
    /** What a row is about, in a word within these sentences. */
    inShort: {
      masstone: { en: "masstone", de: "Vollton", fr: "le ton plein", es: "el tono pleno" },
      white: {
        en: "what they do in white",
        de: "das Verhalten in Weiß",
        fr: "ce qu’elles donnent dans un blanc",
        es: "cómo quedan en un blanco",
      },
      strength: { en: "strength", de: "Farbstärke", fr: "la force", es: "la fuerza" },
      whitens: {
        en: "whitening",
        de: "Aufhellvermögen",
        fr: "le pouvoir blanchissant",
        es: "el poder blanqueador",
      },
      parts: { en: "strength", de: "Farbstärke", fr: "la force", es: "la fuerza" },
      opacity: { en: "hiding", de: "Deckvermögen", fr: "l’opacité", es: "la opacidad" },
      oilByMass: { en: "oil", de: "Öl", fr: "l’huile", es: "el aceite" },
      oilByVolume: { en: "oil", de: "Öl", fr: "l’huile", es: "el aceite" },
      finish: { en: "finish", de: "Glanzgrad", fr: "l’aspect", es: "el acabado" },
      drying: { en: "drying", de: "Trocknung", fr: "le séchage", es: "el secado" },
      lightfastness: {
        en: "how well they last",
        de: "Lichtechtheit",
        fr: "la tenue à la lumière",
        es: "lo que duran",
      },
      label: {
        en: "warnings",
        de: "Warnhinweise",
        fr: "les avertissements",
        es: "las advertencias",
      },
      sale: {
        en: "where they may be sold",
        de: "Verkaufsbeschränkungen",
        fr: "les pays où la vente est permise",
        es: "dónde pueden venderse",
      },
      pigments: { en: "pigments", de: "Pigmente", fr: "les pigments", es: "los pigmentos" },
      vehicle: { en: "vehicle", de: "Bindemittel", fr: "le liant", es: "el aglutinante" },
      dispersion: {
        en: "how they are ground",
        de: "Anreiben",
        fr: "le broyage",
        es: "la molienda",
      },
    } satisfies Readonly<Record<Compared, Texts[string]>>,
  },
  parts: {
    differs: {
      id: alike("differs"),
      heading: {
        en: "What differs",
        de: "Was sich unterscheidet",
        fr: "Ce qui diffère",
        es: "Qué difiere",
      },
    },
    "not told": {
      id: alike("not-told"),
      heading: {
        en: "Too close to call",
        de: "Zu ähnlich für ein Urteil",
        fr: "Trop proche pour trancher",
        es: "Demasiado parecido para decidir",
      },
    },
    same: {
      id: alike("same"),
      heading: {
        en: "What is the same",
        de: "Was gleich ist",
        fr: "Ce qui est identique",
        es: "Qué es igual",
      },
    },
    "not stated": {
      id: alike("not-stated"),
      heading: {
        en: "Not known of one of them",
        de: "Nicht von allen bekannt",
        fr: "Inconnu pour l’une d’elles",
        es: "No se sabe de uno de ellos",
      },
    },
    figures: {
      id: alike("in-figures"),
      heading: {
        en: "The swatches in figures",
        de: "Die Farbfelder in Zahlen",
        fr: "Les échantillons en chiffres",
        es: "Las muestras en cifras",
      },
    },
  },
  foldedFigures: {
    en: "Munsell notations, a* and b*, parts of white",
    de: "Munsell-Notationen, a* und b*, Teile Weiß",
    fr: "Notations Munsell, a* et b*, parts de blanc",
    es: "Notaciones Munsell, a* y b*, partes de blanco",
  },
  folded: (heads: readonly string[]) => ({
    en: lowerLater(heads).join(", "),
    de: heads.join(", "),
    fr: lowerLater(heads).join(", "),
    es: lowerLater(heads).join(", "),
  }),
  unstated: (heads: readonly string[]) => ({
    en: `Not known of any of them: ${en.listed(heads.map(lowered))}.`,
    de: `Von keiner bekannt: ${de.listed(heads)}.`,
    fr: `Inconnu pour toutes\u202f: ${fr.listed(heads.map(lowered))}.`,
    es: `No se sabe de ninguno: ${es.listed(heads.map(lowered))}.`,
  }),
  property: { en: "Property", de: "Eigenschaft", fr: "Propriété", es: "Propiedad" },
  finding: {
    en: "What that means",
    de: "Was das heißt",
    fr: "Ce que cela veut dire",
    es: "Qué quiere decir",
  },
  rows: {
    masstone: {
      head: { en: "Alone", de: "Allein", fr: "Pure", es: "Puro" },
      unit: alike("Munsell"),
    },
    strength: {
      head: { en: "Strength", de: "Farbstärke", fr: "Force", es: "Fuerza" },
    },
    whitens: {
      head: {
        en: "Whitens",
        de: "Aufhellvermögen",
        fr: "Pouvoir blanchissant",
        es: "Poder blanqueador",
      },
    },
    opacity: {
      head: { en: "Opacity", de: "Deckvermögen", fr: "Opacité", es: "Opacidad" },
    },
    oilByMass: {
      head: { en: "Oil", de: "Öl", fr: "Huile", es: "Aceite" },
      unit: {
        en: "to 100 g of pigment",
        de: "auf 100\u00a0g Pigment",
        fr: "pour 100\u00a0g de pigment",
        es: "por 100\u00a0g de pigmento",
      },
    },
    oilByVolume: {
      head: {
        en: "Oil by volume",
        de: "Öl nach Volumen",
        fr: "Huile en volume",
        es: "Aceite en volumen",
      },
      unit: {
        en: "to 100 cm\u00b3 of pigment",
        de: "auf 100\u00a0cm\u00b3 Pigment",
        fr: "pour 100\u00a0cm\u00b3 de pigment",
        es: "por 100\u00a0cm\u00b3 de pigmento",
      },
    },
    finish: {
      head: { en: "Finish", de: "Glanzgrad", fr: "Aspect", es: "Acabado" },
    },
    drying: {
      head: { en: "Dries", de: "Trocknet", fr: "Séchage", es: "Secado" },
      unit: { en: "to the touch", de: "bis grifftrocken", fr: "au toucher", es: "al tacto" },
    },
    lightfastness: {
      head: { en: "Lasts", de: "Lichtechtheit", fr: "Tenue", es: "Solidez" },
    },
    label: {
      head: { en: "Warning", de: "Warnhinweis", fr: "Avertissement", es: "Advertencia" },
    },
    sale: {
      head: {
        en: "Limits on sale",
        de: "Verkaufsbeschränkungen",
        fr: "Restrictions de vente",
        es: "Restricciones de venta",
      },
    },
    pigments: {
      head: { en: "Pigments", de: "Pigmente", fr: "Pigments", es: "Pigmentos" },
    },
    vehicle: {
      head: { en: "Vehicle", de: "Bindemittel", fr: "Liant", es: "Aglutinante" },
    },
    dispersion: {
      head: { en: "Ground", de: "Anreiben", fr: "Broyage", es: "Molienda" },
    },
  },
  white: {
    head: (white: string) => ({
      en: `In ${en.within(white)}`,
      de: `In ${de.within(white)}`,
      fr: `Dans ${fr.within(white)}`,
      es: `En ${es.within(white)}`,
    }),
    unit: (level: string) => ({
      en: `at L*\u00a0${level}`,
      de: `bei L*\u00a0${level}`,
      fr: `à L*\u00a0${level}`,
      es: `a L*\u00a0${level}`,
    }),
  },
  partsOfWhite: {
    head: {
      en: "White for a middle tone",
      de: "Weiß für einen Mittelton",
      fr: "Blanc pour un ton moyen",
      es: "Blanco para un tono medio",
    },
    unit: (white: string) => ({
      en: `parts of ${en.within(white)} to 1 part of the colour, tube to tube`,
      de: `Teile ${de.within(white)} auf 1 Teil der Farbe, Tube zu Tube`,
      fr: `parts ${fr.of(fr.within(white))} pour 1 part de la couleur, tube pour tube`,
      es: `partes de ${es.within(white)} por 1 parte del color, tubo a tubo`,
    }),
  },
  cells: {
    tint: (a: string, b: string) => alike(`a*\u00a0${a}, b*\u00a0${b}`),
    strength: (reference: string) => ({
      en: `of ${en.within(reference)}, tube to tube`,
      de: `von ${de.within(reference)}, Tube zu Tube`,
      fr: `${fr.of(fr.within(reference))}, tube pour tube`,
      es: `de ${es.within(reference)}, tubo a tubo`,
    }),
    isReference: {
      en: "the reference itself",
      de: "die Bezugsfarbe selbst",
      fr: "la référence elle-même",
      es: "la propia referencia",
    },
    gloss: (gloss: string) => ({
      en: `${gloss} at 60\u00b0`,
      de: `${gloss} bei 60\u00b0`,
      fr: `${gloss} à 60\u00b0`,
      es: `${gloss} a 60\u00b0`,
    }),
    nothingClassified: {
      en: "None needed",
      de: "Keiner nötig",
      fr: "Aucun nécessaire",
      es: "No hace falta",
    },
    noData: {
      en: "No hazard data",
      de: "Keine Gefahrendaten",
      fr: "Aucune donnée de danger",
      es: "Sin datos de peligro",
    },
    noLimit: {
      en: "None recorded",
      de: "Keine aufgezeichnet",
      fr: "Aucune consignée",
      es: "Ninguna registrada",
    },
    limited: (markets: readonly string[]) => ({
      en: `only on a legal basis in ${en.listed(markets.map(withThe))}`,
      de: `nur mit Rechtsgrundlage: ${de.listed(markets)}`,
      fr: `seulement sur base légale\u202f: ${fr.listed(markets)}`,
      es: `solo con base legal: ${es.listed(markets)}`,
    }),
    asked: (markets: readonly string[]) => ({
      en: `conditions in ${en.listed(markets.map(withThe))}`,
      de: `mit Auflagen: ${de.listed(markets)}`,
      fr: `sous conditions\u202f: ${fr.listed(markets)}`,
      es: `con condiciones: ${es.listed(markets)}`,
    }),
    share: (name: string, share: string) => alike(`${name}, ${share}`),
    dispersion: {
      mulled: {
        en: "Mulled by hand",
        de: "Von Hand angerieben",
        fr: "À la molette",
        es: "Con moleta",
      },
      milled: { en: "Milled", de: "Gewalzt", fr: "À la machine", es: "A máquina" },
    },
    pictograms: (names: readonly string[]) => ({
      en: `Pictograms: ${en.listed(names.map((name) => name.toLowerCase()))}`,
      de: `Piktogramme: ${de.listed(names)}`,
      fr: `Pictogrammes\u202f: ${fr.listed(names.map((name) => name.toLowerCase()))}`,
      es: `Pictogramas: ${es.listed(names.map((name) => name.toLowerCase()))}`,
    }),
  },
  form: {
    heading: {
      en: "Press two, three or four colours",
      de: "Zwei, drei oder vier Farben wählen",
      fr: "Choisir deux, trois ou quatre couleurs",
      es: "Elija dos, tres o cuatro colores",
    },
    fold: OTHER_COLOURS,
    result: { en: "Side by side", de: "Nebeneinander", fr: "Côte à côte", es: "Lado a lado" },
    without: {
      en: "Choosing colours here needs the page\u2019s script and a web server. The comparisons below need neither.",
      de: "Um hier Farben zu wählen, sind das Skript der Seite und ein Webserver nötig. Die Vergleiche unten kommen ohne beides aus.",
      fr: "Pour choisir ici des couleurs, il faut le script de la page et un serveur web. Les comparaisons ci-dessous s’en passent.",
      es: "Para elegir colores aquí hacen falta el script de la página y un servidor web. Las comparaciones de abajo no necesitan ninguno.",
    },
    tooFew: (first: string | undefined) =>
      first === undefined
        ? {
            en: "Press two colours or more.",
            de: "Wählen Sie zwei Farben oder mehr.",
            fr: "Choisir deux couleurs ou plus.",
            es: "Elija dos colores o más.",
          }
        : {
            en: `${first}, and which other?`,
            de: `${first}, und welche noch?`,
            fr: `${first}, et quelle autre\u202f?`,
            es: `${first}, ¿y cuál más?`,
          },
    unknown: (slug: string, near: string | undefined) => ({
      en: `There is no colour \u201c${slug}\u201d here${near === undefined ? "" : `; perhaps ${near} was meant`}.`,
      de: `Eine Farbe „${slug}“ gibt es hier nicht${near === undefined ? "" : `; vielleicht war ${near} gemeint`}.`,
      fr: `Il n’y a pas ici de couleur «\u202f${slug}\u202f»${near === undefined ? "" : `\u202f; peut-être ${near}`}.`,
      es: `Aquí no hay ningún color «${slug}»${near === undefined ? "" : `; quizá ${near}`}.`,
    }),
    some: (shown: number, all: number) => ({
      en: `Here are ${shown} of ${all} colours. Any other comes along from its own sheet, by its way to comparing.`,
      de: `Hier sind ${shown} von ${all} Farben. Jede andere lässt sich von ihrem eigenen Blatt aus in den Vergleich nehmen.`,
      fr: `Voici ${shown} des ${all} couleurs. Toute autre vient de sa propre fiche, par le lien pour comparer.`,
      es: `Aquí hay ${shown} de los ${all} colores. Cualquier otro viene desde su propia ficha, por el enlace para comparar.`,
    }),
    tooMany: {
      en: "Four fit side by side; take one away first.",
      de: "Mehr als vier passen nicht nebeneinander; nehmen Sie erst eine weg.",
      fr: "Quatre tiennent côte à côte\u202f; en retirer une d’abord.",
      es: "Caben cuatro lado a lado; quite uno antes.",
    },
    leftOut: {
      en: "Four fit side by side; the others are left out.",
      de: "Mehr als vier passen nicht nebeneinander; die übrigen bleiben weg.",
      fr: "Quatre tiennent côte à côte\u202f; les autres sont laissées de côté.",
      es: "Caben cuatro lado a lado; los demás se dejan fuera.",
    },
    failed: {
      en: "The figures could not be fetched. Opened from a folder, a page may not read other files: open the site through a web server.",
      de: "Die Werte ließen sich nicht laden. Eine Seite, die aus einem Ordner geöffnet wird, darf andere Dateien oft nicht lesen: Öffnen Sie die Seite über einen Webserver.",
      fr: "Les chiffres n’ont pas pu être chargés. Ouverte depuis un dossier, une page ne peut pas lire d’autres fichiers\u202f: ouvrir le site par un serveur web.",
      es: "No se pudieron cargar las cifras. Abierta desde una carpeta, una página no puede leer otros archivos: abra el sitio con un servidor web.",
    },
  },
  pairs: {
    en: "Often asked about",
    de: "Oft verglichen",
    fr: "Souvent comparées",
    es: "Se comparan a menudo",
  },
  more: OTHER_COLOURS,
  besides: { en: "Compare", de: "Vergleichen", fr: "Comparer", es: "Comparar" },
  beside: (name: string) => ({
    en: `With ${en.within(name)}`,
    de: `Mit ${de.within(name)}`,
    fr: `Avec ${fr.within(name)}`,
    es: `Con ${es.within(name)}`,
  }),
  besideAny: {
    en: "With another colour",
    de: "Mit einer anderen Farbe",
    fr: "Avec une autre couleur",
    es: "Con otro color",
  },
  fromCatalogue: {
    en: "Set two to four of them side by side",
    de: "Zwei bis vier davon nebeneinanderstellen",
    fr: "En mettre de deux à quatre côte à côte",
    es: "Poner de dos a cuatro lado a lado",
  },
} satisfies Texts;

function lowered(head: string): string {
  return head.charAt(0).toLowerCase() + head.slice(1);
}

/** All but the first with a small first letter, as they stand in a line. */
function lowerLater(heads: readonly string[]): string[] {
  return heads.map((head, i) => (i === 0 ? head : lowered(head)));
}

function withThe(market: string): string {
  return /^(?:European|United)/.test(market) ? `the ${market}` : market;
}
