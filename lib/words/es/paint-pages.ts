import type { PAINT_PAGES as ENGLISH_PAGES } from "../en/paint-pages.ts";
import type { AnyWords } from "../any-words.ts";
import { listed } from "./phrases.ts";

/** What the sheet says of the paint as made: batch, fill, drying in figures, lightfastness by what it rests on, label text. */
export const PAINT_PAGES: AnyWords<typeof ENGLISH_PAGES> = {
  oilLists: {
    paste: "La pasta, tal como se ve",
    slab: "En la losa y el molino",
    range: "En la gama",
  },
  places: (name, byMass, byVolume, of) =>
    `Contando desde el más magro, ${name} es el ${byMass}.\u00ba de ${of} colores en peso, y el ${byVolume}.\u00ba en volumen.`,
  batch: {
    caption: "Qué pesar, y qué sale",
    columns: {
      what: "Pigmento",
      size: (pigmentG) => (pigmentG >= 1000 ? `${pigmentG / 1000}\u00a0kg` : `${pigmentG}\u00a0g`),
    },
    rows: {
      pigment: (name) => `${name}, g`,
      oil: (name) => `${name}, g`,
      atFirst: "Aceite para empezar, g",
      heldBack: "Aceite que se reserva, g",
      addition: (name) => `${name}, g`,
      paintG: "Pintura, g",
      paintMl: "Pintura, ml",
      loss: "Pérdida en la losa o el molino, ml",
      yield: "Para envasar, ml",
      tubes: (ml) => `Tubos de ${ml}\u00a0ml`,
      cost: (currency) => `Coste, ${currency}`,
      tubesAny: "Tubos",
    },
    ofTubes: (parts) =>
      `Su registro la pesa a partir de tubos: para 100\u00a0g, ${listed(parts)}, sin nada que moler. Los pesos de aquí son los de la misma pintura hecha de pigmento seco.`,
    unpriced: (names) => `El coste no cuenta ${names.join(", ")}: no tenemos su precio.`,
    noTubes: "No hay registrado ningún tamaño de tubo, así que los tubos no se cuentan.",
    none: (because) => `No puede calcularse ninguna fabricación. ${because}`,
    any: {
      heading: "Cualquier cantidad",
      amount: "Cantidad",
      by: "Unidad",
      tube: "Tubo, ml",
      caption: "Esta fabricación",
      fault: "Dé una cantidad mayor que 0.",
      sizes: {
        pigmentG: "g de pigmento",
        paintG: "g de pintura",
        paintMl: "ml de pintura",
        tubes: "tubos",
      },
      figure: "Para pesar, y qué sale",
      value: "Cantidad",
    },
  },
  fill: {
    caption: "Lo que contienen tarros y tubos, en gramos",
    columns: {
      filling: "Contenido",
      takes: "100 g ocupan, ml",
      container: (ml) => `${ml}\u00a0ml`,
    },
    fillings: {
      paint: "Pintura",
      poured: (name) => `${name}, seco, sin compactar`,
      tapped: (name) => `${name}, seco, compactado`,
    },
    note: "118\u00a0ml es un tarro de 4 onzas líquidas estadounidenses. El pigmento seco se asienta: un tarro llenado al verter ya no está lleno una semana después.",
  },
  drying: {
    contributions: "Qué lo acelera o lo retarda",
    columns: { what: "Qué", effect: "Efecto", times: "Factor", standing: "Origen" },
    signs: {
      faster: "más rápido",
      none: "sin\u00a0cambio",
      slower: "más lento",
      "either way": "uno\u00a0u\u00a0otro",
    },
    base: "Aceite de linaza solo",
    baseValue: (days) => `${days} al tacto`,
    note: "Multiplicando se obtienen los días previsibles.",
    trials: {
      caption: "Nuestros propios ensayos",
      alone: "El color solo",
      inWhite: (white) => `En ${white}`,
      columns: {
        of: "Película de",
        touch: "Seco al tacto",
        through: "Seco en profundidad",
        film: "Película húmeda",
        temperature: "Temperatura",
        humidity: "Humedad",
        date: "Fecha",
      },
      none: "\u2013",
    },
    inWhites: {
      caption: "Mezclado con blanco",
      columns: { white: "Blanco", class: "Secado", days: "Seco al tacto" },
      note: (parts) =>
        `Calculado para 1 parte del color y ${parts} de blanco en peso de pintura, los aceites y el secante en proporción. Nuestro propio ensayo sustituye la estimación.`,
    },
    grounds: "Imprimaciones",
  },
  permanence: {
    ownExposure: (category) =>
      `Cambió lo que permite la categoría\u00a0${category}, en nuestra propia exposición; no es todo el ensayo de la norma.`,
    names: { "own exposure": "Cambio de color como en la categoría" },
    orders: {
      own: (category) => `Como la categoría\u00a0${category}, en nuestro propio ensayo`,
      stated: (category) => `Categoría\u00a0${category}, declarada; no ensayada aquí`,
    },
    cell: "ensayo propio",
    forms: {
      caption: "El color solo y rebajado",
      columns: {
        form: "Forma",
        change: "Cambio, \u0394E*ab",
        category: "Como en la categoría",
        standard: "Norma",
        exposure: "Exposición",
      },
      names: { masstone: "Solo", tint: "Rebajado" },
      stated: "declarada",
      notExposed: "no expuesto",
      note: "Una calificación vale para lo que se expuso; la otra forma puede diferir en una categoría o más.",
    },
    contradictions: "Dónde no concuerdan nuestra exposición y el dato del proveedor",
  },
  labelText: {
    lead: "Para copiar en una etiqueta: compruebe que el lote es el que se envasa. Calculado a partir de estos registros: el fabricante responde de la etiqueta, la ley de cada mercado decide lo que debe llevar.",
    vehicle: "Aglutinante: ",
    pigment: "Pigmento: ",
    pigments: "Pigmentos: ",
    with: ", ",
    contents: "Contenido: ",
    ml: " ml",
    blank: "______",
    lot: "Lote: ",
    notForSale: "Aún sin clasificar, así que aún no está a la venta.",
    pictograms: "Pictogramas: ",
    frame: (frame) => `Elementos de la etiqueta según ${frame}.`,
  },
  byOil: {
    mass: "Por masa de pigmento",
    volume: "Por volumen de pigmento",
    lead: "El más magro primero. En peso los pigmentos ligeros parecen ávidos; en volumen se parecen mucho.",
    columns: { place: "Puesto", colour: "Color", oilIndex: "En masa", byVolume: "En volumen" },
    notStated: "Aceite aún no conocido",
  },
};
