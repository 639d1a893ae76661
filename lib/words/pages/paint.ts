import { isSuitableCategory } from "../../permanence/lightfastness-on-label.ts";
import { de, en, es, fr } from "../phrases-in-each.ts";
import { alike, type Texts } from "../texts.ts";
import type { InEach } from "../in-each.ts";
import { AMOUNT_ABOVE_NOUGHT, inWhite } from "../shared-rows.ts";

function enOrdinal(place: number): string {
  const tens = place % 100;
  const ending = tens > 10 && tens < 14 ? "th" : (["th", "st", "nd", "rd"][place % 10] ?? "th");
  return `${place}${ending}`;
}

function frOrdinal(place: number): string {
  return place === 1 ? "1re" : `${place}e`;
}

/** What the sheet says of the paint as made: batch, fill, drying in figures, lightfastness by what it rests on, label text. */
export const PAINT = {
  oilLists: {
    paste: {
      en: "The paste, as seen",
      de: "Die Paste, wie sie aussieht",
      fr: "La pâte, telle qu’on la voit",
      es: "La pasta, tal como se ve",
    },
    slab: {
      en: "At slab and mill",
      de: "Auf Reibplatte und Walzwerk",
      fr: "Au marbre et à la broyeuse",
      es: "En la losa y el molino",
    },
    range: { en: "In the range", de: "Im Sortiment", fr: "Dans la gamme", es: "En la gama" },
  },
  places: (name: string, byMass: number, byVolume: number, of: number) => ({
    en: `Counted from the leanest, ${name} is ${enOrdinal(byMass)} of ${of} colours by weight, and ${enOrdinal(byVolume)} by volume.`,
    de: `Von der magersten an gezählt steht ${name} nach Gewicht an ${byMass}. Stelle von ${of} Farben, nach Volumen an ${byVolume}.`,
    fr: `En comptant depuis la plus maigre, ${name} est ${frOrdinal(byMass)} sur ${of} couleurs en poids, et ${frOrdinal(byVolume)} en volume.`,
    es: `Contando desde el más magro, ${name} es el ${byMass}.\u00ba de ${of} colores en peso, y el ${byVolume}.\u00ba en volumen.`,
  }),
  batch: {
    caption: {
      en: "What to weigh, and what comes out",
      de: "Was abzuwiegen ist und was herauskommt",
      fr: "Ce qu’il faut peser, et ce qui en sort",
      es: "Qué pesar, y qué sale",
    },
    columns: {
      what: { en: "Pigment", de: "Pigment", fr: "Pigment", es: "Pigmento" },
      size: (pigmentG: number) => ({
        en: pigmentG >= 1000 ? `${pigmentG / 1000}\u00a0kg` : `${pigmentG}\u00a0g`,
        de: pigmentG >= 1000 ? `${pigmentG / 1000}\u00a0kg` : `${pigmentG}\u00a0g`,
        fr: pigmentG >= 1000 ? `${pigmentG / 1000}\u00a0kg` : `${pigmentG}\u00a0g`,
        es: pigmentG >= 1000 ? `${pigmentG / 1000}\u00a0kg` : `${pigmentG}\u00a0g`,
      }),
    },
    rows: {
      pigment: (name: string) => alike(`${name}, g`),
      oil: (name: string) => alike(`${name}, g`),
      atFirst: {
        en: "Oil to start with, g",
        de: "Öl zu Beginn, g",
        fr: "Huile pour commencer, g",
        es: "Aceite para empezar, g",
      },
      heldBack: {
        en: "Oil to keep back, g",
        de: "Zurückzuhaltendes Öl, g",
        fr: "Huile à garder en réserve, g",
        es: "Aceite para reservar, g",
      },
      addition: (name: string) => alike(`${name}, g`),
      paintG: { en: "Paint, g", de: "Farbe, g", fr: "Peinture, g", es: "Pintura, g" },
      paintMl: { en: "Paint, ml", de: "Farbe, ml", fr: "Peinture, ml", es: "Pintura, ml" },
      loss: {
        en: "Lost at slab or mill, ml",
        de: "Verlust auf Reibplatte oder Walzwerk, ml",
        fr: "Perte au marbre ou à la broyeuse, ml",
        es: "Pérdida en la losa o el molino, ml",
      },
      yield: {
        en: "To fill, ml",
        de: "Abzufüllen, ml",
        fr: "À conditionner, ml",
        es: "Para envasar, ml",
      },
      tubes: (ml: string) => ({
        en: `Tubes of ${ml}\u00a0ml`,
        de: `Tuben zu ${ml}\u00a0ml`,
        fr: `Tubes de ${ml}\u00a0ml`,
        es: `Tubos de ${ml}\u00a0ml`,
      }),
      cost: (currency: string) => ({
        en: `Cost, ${currency}`,
        de: `Kosten, ${currency}`,
        fr: `Coût, ${currency}`,
        es: `Coste, ${currency}`,
      }),
      tubesAny: { en: "Tubes", de: "Tuben", fr: "Tubes", es: "Tubos" },
    },
    ofTubes: (parts: readonly string[]) => ({
      en: `Its record weighs it from tubes: for 100\u00a0g, ${en.listed(parts)}, with nothing to grind. The weights here are of the same paint made from dry pigment.`,
      de: `Nach den Aufzeichnungen wird die Farbe aus Tuben gemischt: für 100\u00a0g ${de.listed(parts)}, anzureiben ist nichts. Die Gewichte hier gelten für dieselbe Farbe aus trockenem Pigment.`,
      fr: `Son relevé la compose à partir de tubes\u202f: pour 100\u00a0g, ${fr.listed(parts)}, sans rien broyer. Les poids donnés ici sont ceux de la même couleur faite de pigment sec.`,
      es: `Su registro la compone a partir de tubos: para 100\u00a0g, ${es.listed(parts)}, sin nada que moler. Los pesos de aquí son los de la misma pintura hecha de pigmento seco.`,
    }),
    unpriced: (names: readonly string[]) => ({
      en: `The cost leaves out ${names.join(", ")}: we have no price for it.`,
      de: `Nicht in den Kosten, weil uns ein Preis fehlt: ${names.join(", ")}.`,
      fr: `Le coût ne compte pas ${names.join(", ")}\u202f: nous n’en avons pas le prix.`,
      es: `El coste no cuenta ${names.join(", ")}: no tenemos su precio.`,
    }),
    noTubes: {
      en: "No size of tube is on record, so tubes are not counted.",
      de: "Es ist keine Tubengröße aufgezeichnet; die Zahl der Tuben fehlt daher.",
      fr: "Aucune taille de tube n’est consignée\u202f; les tubes ne sont donc pas comptés.",
      es: "No hay registrado ningún tamaño de tubo, así que los tubos no se cuentan.",
    },
    none: (because: string) => ({
      en: `No batch can be worked out. ${because}`,
      de: `Ein Ansatz lässt sich nicht errechnen. ${because}`,
      fr: `Aucune fabrication ne peut être calculée. ${because}`,
      es: `No puede calcularse ninguna fabricación. ${because}`,
    }),
    any: {
      heading: { en: "Any size", de: "Jede Größe", fr: "Autre quantité", es: "Otra cantidad" },
      amount: { en: "Amount", de: "Menge", fr: "Quantité", es: "Cantidad" },
      by: { en: "Unit", de: "Einheit", fr: "Unité", es: "Unidad" },
      tube: { en: "Tube, ml", de: "Tube, ml", fr: "Tube, ml", es: "Tubo, ml" },
      caption: {
        en: "This batch",
        de: "Dieser Ansatz",
        fr: "Cette fabrication",
        es: "Esta fabricación",
      },
      fault: AMOUNT_ABOVE_NOUGHT,
      sizes: {
        pigmentG: { en: "g of pigment", de: "g Pigment", fr: "g de pigment", es: "g de pigmento" },
        paintG: { en: "g of paint", de: "g Farbe", fr: "g de peinture", es: "g de pintura" },
        paintMl: { en: "ml of paint", de: "ml Farbe", fr: "ml de peinture", es: "ml de pintura" },
        tubes: { en: "tubes", de: "Tuben", fr: "tubes", es: "tubos" },
      },
      figure: {
        en: "To weigh, and what comes out",
        de: "Abzuwiegen und was herauskommt",
        fr: "À peser, et ce qui en sort",
        es: "Para pesar, y qué sale",
      },
      value: { en: "Amount", de: "Menge", fr: "Quantité", es: "Cantidad" },
    },
  },
  fill: {
    caption: {
      en: "What jars and tubes hold, in grams",
      de: "Was Gläser und Tuben fassen, in Gramm",
      fr: "Ce que contiennent pots et tubes, en grammes",
      es: "Lo que contienen tarros y tubos, en gramos",
    },
    columns: {
      filling: { en: "Filling", de: "Füllung", fr: "Contenu", es: "Contenido" },
      takes: {
        en: "100 g take, ml",
        de: "100\u00a0g nehmen ein, ml",
        fr: "100\u00a0g occupent, ml",
        es: "100\u00a0g ocupan, ml",
      },
      container: (ml: string) => alike(`${ml}\u00a0ml`),
    },
    fillings: {
      paint: { en: "Paint", de: "Farbe", fr: "Peinture", es: "Pintura" },
      poured: (name: string) => ({
        en: `${name}, dry, as poured`,
        de: `${name}, trocken, geschüttet`,
        fr: `${name}, sec, non tassé`,
        es: `${name}, seco, sin compactar`,
      }),
      tapped: (name: string) => ({
        en: `${name}, dry, tapped`,
        de: `${name}, trocken, gestampft`,
        fr: `${name}, sec, tassé`,
        es: `${name}, seco, compactado`,
      }),
    },
    note: {
      en: "118 ml is a jar of 4 US fluid ounces. Dry pigment settles: a jar poured full is no longer full a week later.",
      de: "118\u00a0ml fasst ein Glas von 4 US-Flüssigunzen. Trockenes Pigment setzt sich: Ein voll geschüttetes Glas ist eine Woche später nicht mehr voll.",
      fr: "118\u00a0ml font un pot de 4 onces liquides américaines. Un pigment sec se tasse\u202f: un pot rempli en versant n’est plus plein une semaine après.",
      es: "118\u00a0ml es un tarro de 4 onzas líquidas estadounidenses. El pigmento seco se asienta: un tarro lleno recién vertido ya no lo está una semana después.",
    },
  },
  drying: {
    contributions: {
      en: "What speeds or slows it",
      de: "Was die Trocknung beschleunigt oder verlangsamt",
      fr: "Ce qui l’accélère ou le ralentit",
      es: "Qué lo acelera o lo retarda",
    },
    columns: {
      what: { en: "What", de: "Was", fr: "Quoi", es: "Qué" },
      effect: { en: "Effect", de: "Wirkung", fr: "Effet", es: "Efecto" },
      times: { en: "Factor", de: "Faktor", fr: "Facteur", es: "Factor" },
      standing: { en: "Standing", de: "Herkunft", fr: "Origine", es: "Origen" },
    },
    signs: {
      faster: { en: "faster", de: "schneller", fr: "accélère", es: "acelera" },
      none: {
        en: "no\u00a0change",
        de: "keine\u00a0Änderung",
        fr: "sans\u00a0effet",
        es: "sin\u00a0cambio",
      },
      slower: { en: "slower", de: "langsamer", fr: "ralentit", es: "retarda" },
      "either way": {
        en: "either\u00a0way",
        de: "beides\u00a0möglich",
        fr: "l’un\u00a0ou\u00a0l’autre",
        es: "lo\u00a0uno\u00a0o\u00a0lo\u00a0otro",
      },
    },
    base: {
      en: "Linseed oil alone",
      de: "Leinöl allein",
      fr: "Huile de lin seule",
      es: "Aceite de linaza solo",
    },
    baseValue: (days: string) => ({
      en: `${days} to touch`,
      de: `${days} bis grifftrocken`,
      fr: `${days} au toucher`,
      es: `${days} al tacto`,
    }),
    note: {
      en: "Multiply, and you get the expected days.",
      de: "Miteinander multipliziert ergeben sich die zu erwartenden Tage.",
      fr: "En multipliant, on obtient les jours à prévoir.",
      es: "Multiplicando se obtienen los días previsibles.",
    },
    trials: {
      caption: {
        en: "Our own trials",
        de: "Unsere eigenen Versuche",
        fr: "Nos propres essais",
        es: "Nuestros propios ensayos",
      },
      alone: {
        en: "The colour alone",
        de: "Die Farbe allein",
        fr: "La couleur seule",
        es: "El color solo",
      },
      inWhite: inWhite,
      columns: {
        of: { en: "Film of", de: "Film aus", fr: "Film de", es: "Película de" },
        touch: { en: "Touch dry", de: "Grifftrocken", fr: "Sec au toucher", es: "Seco al tacto" },
        through: {
          en: "Through dry",
          de: "Durchgetrocknet",
          fr: "Sec à cœur",
          es: "Seco en profundidad",
        },
        film: { en: "Wet film", de: "Nassfilm", fr: "Film humide", es: "Película húmeda" },
        temperature: { en: "Temperature", de: "Temperatur", fr: "Température", es: "Temperatura" },
        humidity: { en: "Humidity", de: "Luftfeuchte", fr: "Humidité", es: "Humedad" },
        date: { en: "Date", de: "Datum", fr: "Date", es: "Fecha" },
      },
      none: alike("\u2013"),
    },
    inWhites: {
      caption: {
        en: "Mixed with white",
        de: "Mit Weiß gemischt",
        fr: "Mélangée à du blanc",
        es: "Mezclado con blanco",
      },
      columns: {
        white: { en: "White", de: "Weiß", fr: "Blanc", es: "Blanco" },
        class: { en: "Drying", de: "Trocknung", fr: "Séchage", es: "Secado" },
        days: { en: "Touch dry", de: "Grifftrocken", fr: "Sec au toucher", es: "Seco al tacto" },
      },
      note: (parts: number) => ({
        en: `Worked out for 1 part of the colour to ${parts} of white by weight of paint, the oils and any drier in proportion. Our own trial replaces the estimate.`,
        de: `Errechnet für 1 Teil der Farbe auf ${parts} Teile Weiß nach Gewicht, die Öle und ein etwaiges Sikkativ anteilig. Unser eigener Versuch ersetzt die Schätzung.`,
        fr: `Calculé pour 1 part de la couleur et ${parts} de blanc en poids de peinture, les huiles et le siccatif éventuel en proportion. Notre propre essai remplace l’estimation.`,
        es: `Calculado para 1 parte del color y ${parts} de blanco en peso de pintura, los aceites y el secante, si lo hay, en proporción. Nuestro propio ensayo sustituye la estimación.`,
      }),
    },
    grounds: { en: "Grounds", de: "Malgründe", fr: "Préparations", es: "Imprimaciones" },
  },
  permanence: {
    ownExposure: (category: string) => ({
      en: `In our own exposure it changed ${isSuitableCategory(category) ? "no more than" : "visibly, as much as"} category ${category} allows; that is not the full standard test.`,
      de: `In unserer eigenen Belichtung änderte sich die Farbe ${isSuitableCategory(category) ? "nicht stärker, als" : "sichtbar, so stark, wie"} Kategorie\u00a0${category} zulässt; das ist nicht die vollständige Prüfung nach der Norm.`,
      fr: `Dans notre propre exposition, elle a changé ${isSuitableCategory(category) ? "dans les" : "visiblement, jusqu’aux"} limites de la catégorie\u00a0${category}\u202f; ce n’est pas l’essai complet de la norme.`,
      es: `En nuestra propia exposición cambió ${isSuitableCategory(category) ? "dentro de los" : "visiblemente, hasta los"} límites de la categoría\u00a0${category}; no es el ensayo completo de la norma.`,
    }),
    names: {
      "own exposure": {
        en: "Colour change as in category",
        de: "Farbänderung wie in Kategorie",
        fr: "Changement de couleur comme en catégorie",
        es: "Cambio de color como en la categoría",
      },
    } as Readonly<Record<string, InEach>>,
    orders: {
      own: (category: string) => ({
        en: `As category ${category}, in our own test`,
        de: `Wie Kategorie\u00a0${category}, in unserer eigenen Prüfung`,
        fr: `Comme catégorie\u00a0${category}, dans notre propre essai`,
        es: `Como la categoría\u00a0${category}, en nuestro propio ensayo`,
      }),
      stated: (category: string) => ({
        en: `Category ${category}, as stated; not tested here`,
        de: `Kategorie\u00a0${category}, wie angegeben; hier nicht geprüft`,
        fr: `Catégorie\u00a0${category}, déclarée\u202f; non testée ici`,
        es: `Categoría\u00a0${category}, declarada; no ensayada aquí`,
      }),
    },
    cell: { en: "own test", de: "eigene Prüfung", fr: "essai de l’atelier", es: "ensayo propio" },
    forms: {
      caption: {
        en: "The colour alone and in a tint",
        de: "Die Farbe allein und in einer Aufhellung",
        fr: "La couleur seule et en dégradé",
        es: "El color solo y rebajado",
      },
      columns: {
        form: { en: "Form", de: "Form", fr: "Forme", es: "Forma" },
        change: {
          en: "Change, \u0394E*ab",
          de: "Änderung, \u0394E*ab",
          fr: "Changement, \u0394E*ab",
          es: "Cambio, \u0394E*ab",
        },
        category: {
          en: "As in category",
          de: "Wie in Kategorie",
          fr: "Comme en catégorie",
          es: "Como en la categoría",
        },
        standard: { en: "Standard", de: "Norm", fr: "Norme", es: "Norma" },
        exposure: { en: "Exposure", de: "Belichtung", fr: "Exposition", es: "Exposición" },
      },
      names: {
        masstone: { en: "Alone", de: "Allein", fr: "Seule", es: "Solo" },
        tint: { en: "In a tint", de: "In einer Aufhellung", fr: "En dégradé", es: "Rebajado" },
      } as Readonly<Record<string, InEach>>,
      stated: { en: "as stated", de: "wie angegeben", fr: "déclarée", es: "declarada" },
      notExposed: {
        en: "not exposed",
        de: "nicht belichtet",
        fr: "non exposée",
        es: "no expuesto",
      },
      note: {
        en: "A rating holds for what was exposed; the other may differ by a category or more.",
        de: "Ein Wert gilt für das, was belichtet wurde; die andere Form kann um eine Kategorie oder mehr abweichen.",
        fr: "Une note vaut pour ce qui a été exposé\u202f; l’autre forme peut différer d’une catégorie ou plus.",
        es: "Una calificación vale para lo que se expuso; la otra forma puede diferir en una categoría o más.",
      },
    },
    contradictions: {
      en: "Where our exposure and the supplier\u2019s word disagree",
      de: "Wo unsere Belichtung der Angabe des Lieferanten widerspricht",
      fr: "En quoi notre exposition et l’indication du fournisseur se contredisent",
      es: "En qué no concuerdan nuestra exposición y el dato del proveedor",
    },
  },
  labelText: {
    lead: {
      en: "To copy onto a label: see that the lot is the one that is filled. Worked out from these records: the maker answers for the label, the law of each market decides what it must carry.",
      de: "Zum Übertragen auf ein Etikett: Achten Sie darauf, dass die Charge die abgefüllte ist. Errechnet aus diesen Aufzeichnungen: Für das Etikett steht der Hersteller ein, und das Recht jedes Marktes bestimmt, was darauf stehen muss.",
      fr: "À recopier sur une étiquette\u202f: vérifier que le lot est bien celui qu’on remplit. Calculé d’après ces relevés\u202f: le fabricant répond de l’étiquette, et la loi de chaque marché décide de ce qu’elle doit porter.",
      es: "Para copiar en una etiqueta: compruebe que el lote es el que se envasa. Calculado a partir de estos registros: el fabricante responde de la etiqueta, y la ley de cada mercado decide lo que debe llevar.",
    },
    vehicle: { en: "Vehicle: ", de: "Bindemittel: ", fr: "Liant\u202f: ", es: "Aglutinante: " },
    pigment: { en: "Pigment: ", de: "Pigment: ", fr: "Pigment\u202f: ", es: "Pigmento: " },
    pigments: { en: "Pigments: ", de: "Pigmente: ", fr: "Pigments\u202f: ", es: "Pigmentos: " },
    with: alike(", "),
    contents: { en: "Contents: ", de: "Inhalt: ", fr: "Contenu\u202f: ", es: "Contenido: " },
    ml: alike(" ml"),
    blank: alike("______"),
    lot: { en: "Lot: ", de: "Charge: ", fr: "Lot\u202f: ", es: "Lote: " },
    notForSale: {
      en: "Not yet classified, so not yet for sale.",
      de: "Noch nicht eingestuft, daher noch nicht im Verkauf.",
      fr: "Pas encore classé, donc pas encore en vente.",
      es: "Aún sin clasificar, así que aún no está a la venta.",
    },
    pictograms: {
      en: "Pictograms: ",
      de: "Piktogramme: ",
      fr: "Pictogrammes\u202f: ",
      es: "Pictogramas: ",
    },
    frame: (frame: string) => ({
      en: `Label elements by ${frame}.`,
      de: `Kennzeichnungselemente nach ${frame}.`,
      fr: `Éléments d’étiquetage selon ${frame}.`,
      es: `Elementos de la etiqueta según ${frame}.`,
    }),
  },
  byOil: {
    mass: {
      en: "By mass of pigment",
      de: "Nach Masse des Pigments",
      fr: "Par masse de pigment",
      es: "Por masa de pigmento",
    },
    volume: {
      en: "By volume of pigment",
      de: "Nach Volumen des Pigments",
      fr: "Par volume de pigment",
      es: "Por volumen de pigmento",
    },
    lead: {
      en: "The leanest first. By weight light pigments look greedy; by volume they are much alike.",
      de: "Die magerste zuerst. Nach Gewicht scheinen leichte Pigmente viel Öl aufzunehmen; nach Volumen sind sich alle sehr ähnlich.",
      fr: "La plus maigre d’abord. En poids, les pigments légers paraissent gourmands en huile\u202f; en volume, ils se ressemblent beaucoup.",
      es: "El más magro primero. En peso, los pigmentos ligeros parecen pedir mucho aceite; en volumen se parecen mucho.",
    },
    columns: {
      place: { en: "Place", de: "Rang", fr: "Rang", es: "Puesto" },
      colour: { en: "Colour", de: "Farbe", fr: "Couleur", es: "Color" },
      oilIndex: { en: "By mass", de: "Nach Masse", fr: "En masse", es: "En masa" },
      byVolume: { en: "By volume", de: "Nach Volumen", fr: "En volume", es: "En volumen" },
    },
    notStated: {
      en: "Oil not known yet",
      de: "Öl noch nicht bekannt",
      fr: "Huile pas encore connue",
      es: "Aceite aún sin conocer",
    },
  },
} satisfies Texts;
