import type { AnyWords } from "../any-words.ts";
import type { PageWords } from "../en/pages.ts";
import { listed } from "./phrases.ts";

/** What the sheet says of the paint as made: batch, fill, drying in figures, lightfastness by what it rests on, label text. */
export const PAINT_PAGES: AnyWords<PageWords["paint"]> = {
  oilLists: {
    paste: "Die Paste, wie sie aussieht",
    slab: "An Reibplatte und Walze",
    range: "Im Sortiment",
  },
  places: (name: string, byMass: number, byVolume: number, of: number) =>
    `Von der magersten an gezählt steht ${name} nach Gewicht an ${byMass}. Stelle von ${of} Farben, nach Volumen an ${byVolume}.`,
  batch: {
    caption: "Was abzuwiegen ist, und was herauskommt",
    columns: {
      what: "Pigment",
      size: (pigmentG: number) =>
        pigmentG >= 1000 ? `${pigmentG / 1000}\u00a0kg` : `${pigmentG}\u00a0g`,
    },
    rows: {
      pigment: (name: string) => `${name}, g`,
      oil: (name: string) => `${name}, g`,
      atFirst: "Öl zu Beginn, g",
      heldBack: "Zurückzuhaltendes Öl, g",
      addition: (name: string) => `${name}, g`,
      paintG: "Farbe, g",
      paintMl: "Farbe, ml",
      loss: "Verlust auf Reibplatte oder Walze, ml",
      yield: "Abzufüllen, ml",
      tubes: (ml: string) => `Tuben zu ${ml}\u00a0ml`,
      cost: (currency: string) => `Kosten, ${currency}`,
      tubesAny: "Tuben",
    },
    ofTubes: (parts: readonly string[]) =>
      `Nach ihrer Aufzeichnung wird sie aus Tuben gewogen: auf 100\u00a0g ${listed(parts)}, und nichts ist anzureiben. Die Gewichte hier sind die derselben Farbe aus trockenem Pigment.`,
    unpriced: (names: readonly string[]) =>
      `Nicht in den Kosten, weil uns ein Preis fehlt: ${names.join(", ")}.`,
    noTubes: "Keine Tubengröße ist aufgezeichnet, Tuben werden daher nicht gezählt.",
    none: (because: string) => `Ein Ansatz lässt sich nicht errechnen. ${because}`,
    any: {
      heading: "Jede Größe",
      amount: "Menge",
      by: "Einheit",
      tube: "Tube, ml",
      caption: "Dieser Ansatz",
      fault: "Geben Sie eine Menge über 0 an.",
      sizes: {
        pigmentG: "g Pigment",
        paintG: "g Farbe",
        paintMl: "ml Farbe",
        tubes: "Tuben",
      },
      figure: "Abzuwiegen, und was herauskommt",
      value: "Menge",
    },
  },
  fill: {
    caption: "Was Gläser und Tuben fassen, in Gramm",
    columns: {
      filling: "Füllung",
      takes: "100 g nehmen ein, ml",
      container: (ml: string) => `${ml}\u00a0ml`,
    },
    fillings: {
      paint: "Farbe",
      poured: (name: string) => `${name}, trocken, geschüttet`,
      tapped: (name: string) => `${name}, trocken, gestampft`,
    },
    note: "118 ml ist ein Glas von 4 US-Flüssigunzen. Trockenes Pigment setzt sich: ein voll geschüttetes Glas ist eine Woche später nicht mehr voll.",
  },
  drying: {
    contributions: "Was sie beschleunigt oder verlangsamt",
    columns: { what: "Was", effect: "Wirkung", times: "Faktor", standing: "Herkunft" },
    signs: {
      faster: "schneller",
      none: "keine\u00a0Änderung",
      slower: "langsamer",
      "either way": "beides\u00a0möglich",
    },
    base: "Leinöl allein",
    baseValue: (days: string) => `${days} bis grifftrocken`,
    note: "Miteinander multipliziert ergeben sich die zu erwartenden Tage.",
    trials: {
      caption: "Unsere eigenen Versuche",
      alone: "Die Farbe allein",
      inWhite: (white: string) => `In ${white}`,
      columns: {
        of: "Film aus",
        touch: "Grifftrocken",
        through: "Durchgetrocknet",
        film: "Nassfilm",
        temperature: "Temperatur",
        humidity: "Luftfeuchte",
        date: "Datum",
      },
      none: "\u2013",
    },
    inWhites: {
      caption: "Mit Weiß gemischt",
      columns: { white: "Weiß", class: "Trocknung", days: "Grifftrocken" },
      note: (parts: number) =>
        `Errechnet für 1 Teil der Farbe auf ${parts} Teile Weiß nach Gewicht, die Öle und ein etwaiger Trockenstoff im Verhältnis. Unser eigener Versuch ersetzt die Schätzung.`,
    },
    grounds: "Malgründe",
  },
  permanence: {
    ownExposure: (category: string) =>
      `In unserer eigenen Belichtung änderte sie sich so stark, wie Kategorie\u00a0${category} es zulässt; das ist nicht die ganze Prüfung der Norm.`,
    names: { "own exposure": "Farbänderung wie in Kategorie" },
    orders: {
      own: (category: string) => `Wie Kategorie\u00a0${category}, in unserer eigenen Prüfung`,
      stated: (category: string) => `Kategorie\u00a0${category}, wie angegeben; hier nicht geprüft`,
    },
    cell: "eigene Prüfung",
    forms: {
      caption: "Die Farbe allein und in einer Aufhellung",
      columns: {
        form: "Form",
        change: "Änderung, \u0394E*ab",
        category: "Wie in Kategorie",
        standard: "Norm",
        exposure: "Belichtung",
      },
      names: { masstone: "Allein", tint: "In einer Aufhellung" },
      stated: "wie angegeben",
      notExposed: "nicht belichtet",
      note: "Ein Wert gilt für das, was belichtet wurde; die andere Form kann um eine Kategorie oder mehr abweichen.",
    },
    contradictions: "Wo unsere Belichtung und die Angabe des Lieferanten sich widersprechen",
  },
  labelText: {
    lead: "Zum Übertragen auf ein Etikett: achten Sie darauf, dass die Charge die abgefüllte ist. Errechnet aus diesen Aufzeichnungen: für das Etikett steht der Hersteller ein, und das Recht jedes Marktes bestimmt, was es tragen muss.",
    vehicle: "Bindemittel: ",
    pigment: "Pigment: ",
    pigments: "Pigmente: ",
    with: ", ",
    contents: "Inhalt: ",
    ml: " ml",
    blank: "______",
    lot: "Charge: ",
    notForSale: "Noch nicht eingestuft, daher noch nicht im Verkauf.",
    pictograms: "Piktogramme: ",
    frame: (frame: string) => `Kennzeichnungselemente nach ${frame}.`,
  },
  byOil: {
    mass: "Nach Masse des Pigments",
    volume: "Nach Volumen des Pigments",
    lead: "Die magerste zuerst. Nach Gewicht wirken leichte Pigmente durstig; nach Volumen sind sie einander sehr ähnlich.",
    columns: { place: "Rang", colour: "Farbe", oilIndex: "Nach Masse", byVolume: "Nach Volumen" },
    notStated: "Öl noch nicht bekannt",
  },
};
