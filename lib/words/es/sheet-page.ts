import type { SHEET_PAGE as ENGLISH_PAGE } from "../en/sheet-page.ts";
import type { AnyWords } from "../any-words.ts";
import { MEASURES, wordOf } from "./closed-words.ts";
import { listed } from "./phrases.ts";

/** What a colour's page says to a painter, and its bench page to whoever makes the paint. */
export const SHEET_PAGE: AnyWords<typeof ENGLISH_PAGE> = {
  asOf: (date) => `A fecha de ${date}.`,
  alone: "puro",
  levels: { "70": "pálido", "50": "medio", "30": "oscuro" },
  notReached: "no alcanzado",
  tintsDescription: (name, parts) => `${name} con blanco, por claridad: ${parts.join("; ")}.`,
  tintCell: (level, white, munsell) => `${level} en ${white}, ${munsell}`,
  whiteSentence: (count) =>
    count === 0
      ? "Un blanco. Aún no se ha probado en él ninguno de nuestros colores."
      : count === 1
        ? "Un blanco. Se probó en él un color de la gama."
        : `Un blanco. Se probaron en él ${count} colores de la gama.`,
  extenderSentence: "Un médium para veladuras y para dar cuerpo, no un blanco.",
  notTried: "Aún no probado en blanco.",
  noPrice: (markets) => `Aquí no hay precio: no puede venderse libremente en ${listed(markets)}.`,
  notForSale: "Aún no está a la venta.",
  discontinued: (date) => `Se deja de fabricar el ${date}.`,
  unknownHazard: "Aún sin clasificar: tratar como peligroso.",
  print: "Ficha para imprimir",
  compare: "Comparar",
  facts: {
    lasts: "Solidez",
    hides: "Opacidad",
    dries: "Seca",
    strength: "Fuerza",
    whitens: "Blanquea",
    middleTone: "Hasta tono medio",
    oil: "Aceite",
    safety: "Seguridad",
  },
  asDrawn: {
    "coat-hides-as-drawn": "Cubre tal como se aplicó",
    "masstone-by-both-grounds": "No cubre tal como se aplicó",
    "masstone-is-a-film": "No cubre tal como se aplicó",
  },
  dries: {
    fast: "Deprisa",
    medium: "A ritmo medio",
    slow: "Despacio",
    "very slow": "Muy despacio",
  },
  oil: {
    "very low": "Muy poco",
    low: "Poco",
    medium: "Medio",
    high: "Mucho",
    "very high": "Muchísimo",
  },
  /** In place of a class, where an estimate reaches over several. */
  estimatedOil: "Sin pesar",
  detail: {
    stated: {
      paint: (category) =>
        `categoría\u00a0${category}, declarada para la pintura; no ensayada aquí`,
      pigment: (category) =>
        `categoría\u00a0${category}, según el proveedor de su pigmento; no ensayada aquí`,
      mixture: (category) =>
        `categoría\u00a0${category}, deducida de sus pigmentos; la mezcla no se ensayó aquí`,
    },
    exposed: (category) => `categoría\u00a0${category}, ensayada según la norma`,
    own: (category) =>
      `nuestro propio ensayo en la ventana: cambió lo que permite la categoría\u00a0${category}; vale más que la palabra de un proveedor, menos que el ensayo de la norma`,
    expected: "lo que hace prever su pigmento; no ensayada aquí",
    film: (film) => `${film} de película seca cubren el negro y el blanco`,
    filmUnknown: "una película gruesa cubre el negro y el blanco",
    byDarkness: (hides) => `${hides}, por oscura`,
    contrast: (ratio) => `relación de contraste ${ratio}`,
    asDrawn: "sobre una carta en blanco y negro; el espesor de la película no está registrado",
    days: (touch, through) =>
      through === undefined ? `${touch} al tacto` : `${touch} al tacto, ${through} en profundidad`,
    trial: (days) => `${days}; ensayo nuestro`,
    trialInDoubt: (days) => `${days}; ensayo nuestro, pero otra película tardó más`,
    parts: (parts, white, by) =>
      `${parts} partes de ${white} hasta un tono medio, en ${wordOf(MEASURES, by)}`,
    reference: "los demás se comparan con él",
    oil: (grams) => `${grams} de pigmento`,
    unknown: "aún no se sabe",
    noStrength: "ninguna propia: alarga la pintura",
    lighter: "más claro que un tono medio por sí mismo",
    never: "ninguna película usual cubre el negro y el blanco",
    noWarning: "mantener el pigmento seco fuera del aire; los trapos con aceite pueden prenderse",
    noWarningDryOil: "mantener el pigmento seco fuera del aire",
    seeLabel: "toda la etiqueta en Seguridad",
    unknownHazard: (names) => `sin datos de peligro para ${listed(names)}`,
  },
  brief: {
    stated: "declarada, no ensayada",
    fromPigments: "por sus pigmentos, no ensayada",
    exposed: "ensayado según la norma",
    own: "ensayo propio",
  },
  white: {
    names: { use: "Sirve para", whitens: "Blanquea", bright: "Claridad", yellow: "Amarillo" },
    uses: {
      strongest:
        "El más fuerte de nuestros blancos: para tonos pálidos y para cubrir. Un poco ahoga un color débil.",
      weakest:
        "El más suave de nuestros blancos: para velos finos, y para tonos que un blanco fuerte ahogaría.",
      fastest: "El primero de nuestros blancos en secar: para las capas de debajo.",
      slowest:
        "El último de nuestros blancos en secar: para las capas de encima, y para trabajar en fresco.",
    },
    whitens: (parts, reference, by) =>
      `${parts} partes llevan una de ${reference} a un tono medio, en ${wordOf(MEASURES, by)}; cuantas menos, más fuerte.`,
    bright: (L) => `Claridad L*\u00a0${L} de 100.`,
    yellow: (b) => `b*\u00a0${b}: 0 es neutro, por encima es amarillo.`,
    others: (parts) => `De los demás: ${parts}.`,
    other: (white, value) => `${white} ${value}`,
    tints:
      "Cada color tal como sale del tubo y, debajo, su tono oscuro, medio y pálido en este blanco.",
    tintsMissing: "Un marco vacío: ninguna medida se acerca a esa claridad.",
  },
  strengthOf: (percent, reference) => `${percent} de ${reference}`,
  strengthByWeight: (percent, reference) => `${percent} de ${reference} en peso`,
  whitens: (parts) => `${parts} partes`,
  whitensDetail: (reference, by) =>
    `llevan una de ${reference} a un tono medio, en ${wordOf(MEASURES, by)}`,
  partsOfWhite: (parts) => `${parts} partes de blanco`,
  toMiddle: (white, by) => `de ${white} por una del color, en ${wordOf(MEASURES, by)}`,
  safe: {
    Danger: "Peligro",
    Warning: "Atención",
    care: "Tener cuidado",
    none: "Sin advertencia",
    unknown: "Tratar como peligroso",
  },
  sections: {
    whites: "Rebajado con blanco",
    ofWhite: "Como blanco",
    painting: "Pintar con él",
    permanence: "¿Durará?",
    handling: "Seguridad",
    range: "Junto a otros",
    questions: "Lo que se pregunta",
    unknown: "Aún no se sabe, y qué haría falta",
    bench: "Para la mesa de trabajo",
  },
  ladder: {
    key: "Color a blanco, en peso de pintura. Un punto marca lo que pintamos y medimos; los pasos intermedios están calculados.",
    keyPigment:
      "Color a blanco, en peso de pigmento seco. Un punto marca lo que pintamos y medimos; los pasos intermedios están calculados.",
    noSentence: "Probado en blanco; la medición no basta para decir más.",
    notDrawn: (whites) => `No probado en ${listed(whites)}.`,
    expected: (whites) => `Lo previsible en ${listed(whites)}, no pintado`,
    expectedIn: (white) => `${white}, no pintado`,
  },
  lines: {
    dries: "Seca",
    layers: "Capas",
    hides: "Cubre",
    finish: "Acabado",
    age: "Con la edad",
    whites: "En blanco",
    mixing: "Mezcla",
    oil: "Aceite",
  },
  /** Where it would take more paint than anybody lays. */
  hidesNever: "Nunca cubre por sí mismo: ni siquiera con medio milímetro.",
  hidesLine: (film) =>
    `Hace falta una película seca de ${film} para cubrir una carta en blanco y negro.`,
  hidesByDarkness: (film) =>
    `Una película seca de ${film} cubre una carta en blanco y negro, pero por oscura, no por cuerpo: extendida más fina, vela.`,
  covers: (area) => `Un mililitro salido del tubo cubre ${area.replace(/\/ml$/, "")}.`,
  finishLine: (finish) => `${finish} al secar.`,
  inWhite: (white, days, isTried) =>
    `${days} al tacto en ${white}${isTried ? ", según el ensayo" : ""}`,
  inWhiteParts: (parts) => `Calculado para una parte por ${parts} de blanco.`,
  oilLine: {
    weighed: (grams) => `${grams} de pigmento, tal como lo hacemos.`,
    recorded: (grams) =>
      `${grams} de pigmento según nuestro registro, que no dice cómo lo sabemos.`,
    told: (grams) => `${grams} de pigmento según otros; no pesado aquí.`,
    expected: (grams) => `${grams} de pigmento es lo previsible; no pesado aquí.`,
  },
  unknown: {
    colour: [
      "Su color",
      "Una aplicación medida con un instrumento, o igualada a una muestra Munsell.",
    ],
    whites: ["En blanco", "Tres mezclas con un blanco, 1:1, 1:5 y 1:20, pintadas y medidas."],
    opacity: [
      "Cómo cubre",
      "Una película de espesor conocido sobre una carta en blanco y negro, medida.",
    ],
    filmSpectra: [
      "Cómo cubre",
      "Los espectros de sus películas sobre una carta en blanco y negro: se midieron sin espectro.",
    ],
    oil: ["Su aceite", "Una absorción de aceite, o el aceite pesado en una fabricación."],
    drying: [
      "Cuándo seca",
      "Una película de espesor conocido, y los días hasta que está seca al tacto.",
    ],
    permanence: [
      "Si dura",
      "Una exposición en la ventana con una mitad a oscuras, o el dato del proveedor.",
    ],
    hazard: [
      "Sus peligros",
      "La ficha de datos de seguridad del proveedor, secciones 2 y 3. Hasta entonces, tratar como peligroso.",
    ],
  },
  standingsFold: "Qué quieren decir las marcas",
  benchLead:
    "Aceite y empaquetamiento, el pigmento, notaciones, espectros, y de dónde sale cada cifra.",
  benchLink: (name) => `${name} en la mesa de trabajo`,
  dryPigment: "Pesar, moler y el pigmento seco están en la página de la mesa de trabajo.",
  bench: {
    heading: (name) => `${name} en la mesa de trabajo`,
    description: (name) =>
      `${name} para quien hace esta pintura: aceite, empaquetamiento, pigmento, notaciones y espectros.`,
    back: (name) => `${name}, para el pintor`,
    evidenceLead: "Cada cifra, de dónde sale, a partir de qué se calculó, y las fuentes:",
    evidenceLink: (name) => `las pruebas de ${name}`,
    sections: {
      ladders: "En los blancos, en cifras",
      strength: "Fuerza, opacidad, veladura",
      drying: "El secado en cifras",
      permanence: "La permanencia en cifras",
      mixture: "Como mezcla",
      oil: "Aceite y empaquetamiento",
      dry: "Pigmento seco y añadidos",
      pigment: "El pigmento",
      range: "En la gama",
      notations: "Notaciones",
      evidence: "Pruebas",
      downloads: "Datos",
    },
    weighing: "Pesar y moler",
  },
  evidence: {
    heading: (name) => `Pruebas de ${name}`,
    description: (name) =>
      `Cada cifra de la ficha de ${name}, cómo se halló y a partir de qué se calculó.`,
    back: (name) => `${name} en la mesa de trabajo`,
  },
};
