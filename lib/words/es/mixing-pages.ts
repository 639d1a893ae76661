/** The tint bench, and what the pages that mix have in common; their scripts carry these words too. */
import type { Lamp } from "../../colorimetry/lamps.ts";
import type { MixingWords } from "../en/mixing-pages.ts";
import type { AnyWords } from "../any-words.ts";
import { METALS, OPACITIES, wordOf } from "./closed-words.ts";
import { SIGNAL_WORDS } from "./label-words.ts";
import { COLON, SEMICOLON, dayCount, decimals, listed, micrometres, within } from "./phrases.ts";

const LAMP_NAMES: Readonly<Record<Lamp, string>> = {
  incandescent: "luz de lámpara",
  led: "luz de LED blanco",
  fluorescent: "luz de tubo fluorescente",
};

export const MIXING_PAGES: AnyWords<MixingWords> = {
  ways: {
    bench: "Banco de mezcla",
    recipes: "Buscar una receta",
    map: "Mapa de la gama",
    palette: "Paleta",
    label: "Mezclar",
  },
  offered: (offered, all) =>
    `De ${all} colores se pueden elegir aquí ${offered}, los más alejados entre sí; cualquier otro viene desde su propia ficha.`,
  notPredicted: (names) =>
    `No están aquí, pues ni los pigmentos fluorescentes ni las laminillas se pueden prever: ${listed(names)}.`,
  without:
    "Para mezclar aquí hace falta el script de la página. Lo que calculamos de antemano está en la tabla de abajo.",
  olderData:
    "Las cifras de aquí son de otra versión de la página que su script. Vuelva a cargar la página; si eso no ayuda, solo vale la tabla de abajo.",
  noData:
    "Las cifras no se cargaron. Vuelva a cargar la página; la tabla de abajo no necesita script.",
  demonstration: "Cifras inventadas, para mostrar cómo funciona.",
  lamps: LAMP_NAMES,
  bench: {
    heading: "Banco de mezcla",
    lead: "Mezcle hasta tres de nuestros colores con un blanco y vea qué saldría, y con qué seguridad.",
    description:
      "Mezclar colores de la gama con un blanco, y ver el color, sus notaciones y hasta dónde fiarse.",
    swatch: (what) => `La mezcla: ${what}`,
    colourHeads: ["Primer color", "Segundo color", "Tercer color", "Cuarto color"],
    partHeads: [
      "Partes del primer color",
      "Partes del segundo color",
      "Partes del tercer color",
      "Partes del cuarto color",
    ],
    whiteHead: "Partes de blanco",
    noPaint: "ninguno",
    partsShort: "partes",
    white: "Blanco",
    by: { legend: "Partes en", volume: "volumen, tubo a tubo", mass: "peso" },
    medium: "Médium de carga",
    volumes: "Partes de médium por una de la mezcla",
    film: "Grosor de la película en \u00b5m (vacío: una capa que cubre)",
    finish: { legend: "Superficie", glossy: "brillante", matte: "mate" },
    light: {
      legend: "Luz",
      daylight: "luz del día",
      incandescent: "lámpara",
      led: "LED blanco",
      fluorescent: "tubo fluorescente",
    },
    controls: "La mezcla",
    view: "Cómo se mira",
    halo: "O podría ser",
    ways: {
      paler: "más pálido",
      darker: "más oscuro",
      redder: "más rojo",
      greener: "más verde",
      yellower: "más amarillo",
      bluer: "más azul",
    },
    read: (p68) => `Tal como lo medimos, con un error de \u0394E00\u00a0${p68}.`,
    predicted: (p68, p90) =>
      `Una previsión. Dos veces de cada tres acierta dentro de \u0394E00\u00a0${p68}, nueve de cada diez dentro de \u0394E00\u00a0${p90}.`,
    beyond:
      "Mucho más pálido que cualquier mezcla que hayamos probado; nadie ha mirado lo bien que eso se prevé.",
    outOfGamut: "Su pantalla no puede mostrar este color; la muestra es lo más próximo que puede.",
    lampNote: (lamp) => `Mostrado como lo ve un ojo adaptado a esta luz: ${lamp}.`,
    matteNote:
      "Una película mate devuelve la luz de su superficie a todos lados y parece más pálida.",
    overBlack: "sobre negro",
    overWhite: "sobre blanco",
    filmSentence: (um, ratio, p68) =>
      `${um} de pintura seca: relación de contraste ${ratio}, color dentro de \u0394E00\u00a0${p68} dos veces de cada tres.`,
    asCoat: "Mostrado como una capa que cubre.",
    notations: {
      munsell: "Munsell",
      lab: "L*a*b* (D65, 10\u00b0)",
      name: "En palabras",
      lasts: "Solidez",
      dries: "Seca al tacto",
      hides: "Cubre",
      warning: "Advertencia",
      price: "Precio de 10 ml",
    },
    munsellNone: "fuera de la notación",
    munsellUncertain: (value, chroma) => `\u00b1${value} de valor, \u00b1${chroma} de croma`,
    lab: (L, a, b) => `${L}, ${a}, ${b}`,
    spectrumTitle: "Reflectancia de la mezcla",
    wavelength: "longitud de onda, nm",
    reflectance: "reflectancia",
    reflectanceTo: (end) => `reflectancia, 0 a ${end}`,
    find: "Otras mezclas de este color",
    copy: "Copiar su dirección",
    copied: "La dirección está copiada.",
    copyFailed: "La dirección no se pudo copiar: está en la barra de direcciones del navegador.",
    print: "Imprimir como tarjeta de receta",
    keep: "Añadir a la paleta",
    card: {
      heading: "Tarjeta de receta",
      byVolume: "en volumen",
      byMass: "en peso",
      share: (text) => `${text}\u00a0%`,
      part: "Pintura",
      madeOn: "Mezclado el",
      notes: "Notas",
      from: (workshop, revision) => `${workshop}, cifras de la revisión ${revision}`,
      paperNote: "La muestra es solo tan fiel como su impresora.",
    },
    static: {
      heading: (white) => `Calculado de antemano: cada color en ${within(white)}`,
      note: (white) =>
        `Partes en peso de color a ${within(white)}. Previsto a partir de lo que medimos; junto a cada fila, cuánto puede desviarse el más pálido.`,
      caption: (white) => `Cada color rebajado en ${within(white)}`,
      colour: "Color",
      said: "A 1:20, y con qué seguridad",
      finding: (munsell, p68) => `${munsell}, dentro de \u0394E00 ${p68}`,
    },
    fromSheet: "Rebajarlo en el banco de mezcla",
  },
  facts: {
    semicolon: SEMICOLON,
    weakest: (word, by) => `${word} (por ${within(by)})`,
    unknown: (names) => `no se sabe de ${listed(names.map(within))}`,
    notKnown: "no se sabe",
    days: (days) => dayCount(days),
    daysEstimate: "estimado por sus tubos",
    /** @param ratio of the film, from the least to the most that it may be. */
    hiding: {
      hides: (ratio, um) => `cubre una carta a ${um} (relación de contraste ${ratio})`,
      "may hide": (ratio, um) => `quizá cubra una carta a ${um} (relación de contraste ${ratio})`,
      "does not hide": (ratio, um) => `no cubre una carta a ${um} (relación de contraste ${ratio})`,
    },
    dark: (word, um, hides) =>
      `${OPACITIES[word]} a ${um}${hides ? ", aunque su oscuridad cubre una carta" : ""}`,
    warning: (signal, metals) =>
      signal === null && metals.length === 0
        ? "no hace falta"
        : [
            ...(signal === null ? [] : [wordOf(SIGNAL_WORDS, signal)]),
            ...(metals.length === 0
              ? []
              : [`contiene ${listed(metals.map((metal) => wordOf(METALS, metal)))}`]),
          ].join("; "),
    restricted: (names) => `${listed(names)}: no se vende a todos`,
    price: (text) => `alrededor de ${text}`,
    lampsPart: (worst, shifts, p68) =>
      shifts[worst] < 2
        ? "coincide también bajo lámparas"
        : `se aparta en \u0394E00\u00a0${decimals(shifts[worst], 1)} \u00b1${decimals(p68, 1)} con ${LAMP_NAMES[worst]}`,
    lampsShift: (worst, shifts, p68) =>
      shifts[worst] < 2
        ? "mantiene su color bajo lámparas"
        : `cambia en \u0394E00\u00a0${decimals(shifts[worst], 1)} \u00b1${decimals(p68, 1)} con ${LAMP_NAMES[worst]}`,
  },
  micrometres,
  recipes: {
    colon: COLON,
    heading: "Buscar una receta",
    lead: "Nombre un color; buscamos en todas las mezclas de nuestras pinturas las que se le acercan.",
    description:
      "Todas las mezclas de unos pocos colores de la gama que se acercan a un color, con lo que duran, secan y cubren.",
    without:
      "Para buscar recetas hace falta el script de la página. Lo que buscamos de antemano está en las tablas de abajo.",
    target: "El color que se quiere",
    text: "Una notación: 5PB 4/2, o L*a*b* 42 \u22121 \u22127, o un color de pantalla #6b6f76",
    colour: "O un color de la gama",
    file: "O una medición propia (.csv, .cgats, .txt, .cxf)",
    column: "Qué medición del archivo",
    percent: "El archivo da tantos por ciento",
    choose: "elegir",
    origin: {
      range: "tal como lo medimos",
      reading: "tal como lo da su archivo",
      munsell: "una muestra, a ojo",
      lab: "D65, 10\u00b0",
      screen: "un color de pantalla: solo aproximado",
    },
    targetName: (name, origin) => `${name} (${origin})`,
    limits: "Lo que tiene que cumplir",
    white: "Blanco",
    anyWhite: "cualquiera de nuestros blancos",
    withoutMetals: "Sin",
    metals: { lead: "plomo", cadmium: "cadmio", cobalt: "cobalto", nickel: "níquel" },
    unlabelled: "ninguna pintura que lleve una advertencia de peligro",
    lightfastness: "Solidez mínima",
    lightfastnessChoices: ["", "excelente", "muy buena", "mediana", "escasa"],
    any: "cualquiera",
    days: "Seco al tacto en (días)",
    opacity: "Cubre al menos",
    opacityChoices: ["", "opaca", "semiopaca", "semitransparente"],
    price: "Como máximo, por 10 ml",
    four: "hasta cuatro colores (más lento)",
    whiteFree: "también sin blanco",
    leaveOut: "Dejar fuera",
    mustHold: "Debe contener",
    order: "Primero",
    orders: {
      fewest: "las de menos pinturas",
      nearest: "las más próximas",
      drying: "las más rápidas en secar",
      lightfastness: "las más sólidas a la luz",
      lamps: "las que se mantienen bajo lámparas",
      price: "las más baratas",
    },
    find: "Buscar recetas",
    looking: (tried) => `Buscando\u2026 ${tried} mezclas probadas.`,
    found: (matching, near, tried, isAtLeast) =>
      matching > 0
        ? `${matching === 1 ? "Una mezcla puede" : `${isAtLeast ? "Al menos " : ""}${matching} mezclas pueden`} ser este color, hasta donde podemos decir; ${near === 1 ? "otra se acerca" : `otras ${near} se acercan`}. Se probaron ${tried}.`
        : near > 0
          ? `Ninguna es este color; ${near === 1 ? "una se acerca" : `${near} se acercan`}. Se probaron ${tried}.`
          : `Ninguna se acerca. Se probaron ${tried}.`,
    quickest: (days) =>
      `La más rápida de las que se acercan y cumplen sus demás deseos está seca al tacto en ${dayCount(days)}, estimados.`,
    shown: (shown) => `Se muestran las primeras ${shown}.`,
    nothingMixes: "Con estos deseos no quedan colores que mezclar.",
    within: "Estas pueden serlo: más cerca de lo que podemos distinguir",
    near: "Estas se acercan",
    none: "Ninguna mezcla de nuestras pinturas se acerca a este color con estos deseos.",
    tryIt: "En el banco de mezcla",
    failed: "La búsqueda se detuvo por un error nuestro. Vuelva a cargar la página.",
    more: "Mostrar más",
    lamps: "Lámparas",
    lightfast: "Solidez",
    parts: "Partes en volumen",
    partsMass: "Partes en peso",
    replaces: {
      heading: "Qué lo sustituye",
      onRecipes: (name) => `En lugar de ${within(name)}`,
      because: (name, metals, isNone) =>
        `${name} contiene ${listed(metals.map((metal) => wordOf(METALS, metal)))}.${isNone ? "" : " Lo más próximo entre nuestras pinturas sin plomo ni cadmio:"}`,
      discontinued: (name, date, isNone) =>
        `${name} se deja de fabricar el ${date}.${isNone ? "" : " Lo más próximo entre nuestras pinturas:"}`,
      caption: (name) => `En lugar de ${within(name)}, y qué cambia`,
      columns: {
        what: "En su lugar",
        difference: "A qué distancia",
        lasts: "Solidez",
        dries: "Seca al tacto",
        hides: "Opacidad",
      },
      itself: "él mismo",
      single: "solo",
      none: "Ninguno de nuestros colores se le acerca.",
      noneKnown:
        "Ninguno de nuestros colores que sabemos sin plomo ni cadmio se le acerca; lo que aún no está clasificado queda fuera.",
      note: "Se comparan los tonos plenos: un \u0394E00 de 1 más o menos apenas se ve lado a lado. En los rebajes la fuerza puede ser otra. Los tubos solos son tal como se midieron, las mezclas previstas.",
      more: "Otras recetas, según sus propios deseos",
    },
  },
  map: {
    heading: "Mapa de la gama",
    headingIn: (white) => `Mapa de la gama, en ${within(white)}`,
    lead: "Dónde están nuestros colores, cómo viran al rebajarlos, y hasta dónde llegan sus mezclas.",
    description:
      "Los colores de la gama por matiz, croma y claridad, y el contorno de lo que puede mezclarse con ellos.",
    title: (white) => `La gama en a* y b*, cada color con su camino en ${within(white)}`,
    describe: (count, white, area) =>
      count === 1
        ? `Un color, con su camino del tubo a un tono pálido en ${within(white)}. Los contornos rodean todo lo que dan él y el blanco, a L* 30, 50 y 70; a L* 50 encierran un área de ${area}.`
        : `${count} colores, cada uno con su camino del tubo a un tono pálido en ${within(white)}. Los contornos rodean todo lo que dan dos cualesquiera de ellos y el blanco, a L* 30, 50 y 70; a L* 50 encierran un área de ${area}.`,
    axes: { a: "a* (a la derecha: más rojo)", b: "b* (hacia arriba: más amarillo)" },
    outline: (L) => `L* ${L}`,
    whites: "En qué blanco",
    nearNeutral: "cerca del centro:",
    key: (p68) =>
      `Líneas continuas: L* 30; trazos largos: L* 50; trazos cortos: L* 70. Lo que queda dentro de una línea puede mezclarse; la línea misma es una previsión, dentro de \u0394E00 ${p68} dos veces de cada tres.`,
    without: "¿Sin qué color?",
    withoutSaid: (name, shares) =>
      `Sin ${within(name)} la gama es menor (líneas de puntos) en ${listed(shares)}: áreas, acertadas dos veces de cada tres dentro del \u00b1.`,
    withoutAt: (share, L) => `${share} a L* ${L}`,
    withoutNothing: (name) =>
      `Sin ${within(name)} la gama llega igual de lejos: otros dan sus matices.`,
    adds: {
      heading: "Qué añade cada tubo",
      caption: "Cuánto menor sería la gama sin él",
      colour: "Sin",
      column: (L) => `a L* ${L}`,
      note: "Parte del área del contorno que solo alcanza este color; dos veces de cada tres dentro del \u00b1. No menor: menos de lo que distinguimos.",
      none: "no menor",
      others: (names) =>
        `Hasta donde podemos decir, la gama llega igual de lejos sin ${names.length === 1 ? "" : "uno cualquiera de estos: "}${listed(names)}.`,
    },
    absent: "No están en el mapa",
    notMapped: (untried, otherwise) =>
      [
        ...(untried.length === 0
          ? []
          : [`Sin rebaje en este blanco, y por eso fuera del mapa: ${listed(untried)}.`]),
        ...(otherwise.length === 0
          ? []
          : [
              `Medidos de otro modo que los demás, y por eso fuera del mapa: ${listed(otherwise)}.`,
            ]),
      ].join(" "),
  },
  palette: {
    heading: "Paleta",
    lead: "Elija sus tubos: qué alcanzan, qué falta, y en qué orden pintar con ellos.",
    description: "Un conjunto elegido de colores: su mapa, sus huecos, y el orden de las capas.",
    without:
      "Para elegir una paleta hace falta el script de la página. El orden de capas de toda la gama está en la tabla de abajo.",
    choose: "Sus tubos",
    reach: "Qué alcanzan",
    reachTitle: "Sus tubos y lo que puede mezclarse con ellos",
    white: "En qué blanco",
    level: "El mapa a",
    levelName: (L) => `L* ${L}`,
    share: (shares) => `De lo que alcanza toda la gama, los suyos alcanzan ${listed(shares)}.`,
    shown: (white, L) => `Con ${within(white)}; el mapa a L* ${L}.`,
    shareAt: (share, L) => `${share} a L* ${L}`,
    unlike: (names, white) =>
      `${listed(names)}: no probado en ${within(white)} o medido de otro modo, así que no cuenta en lo que se alcanza.`,
    gaps: "Qué falta",
    gapsCaption: "Matices en que la gama va más lejos que sus tubos",
    gapColumns: { hue: "Nada cerca de un matiz limpio", bring: "Qué lo traería" },
    gapHue: (hue) => hue,
    gapAt: (L) => `L* ${L}`,
    gapNone: "cerca",
    gapBy: (names) => listed(names, "or"),
    gapByNone: "varios juntos",
    gapsNote:
      "Cuánto les falta a los suyos para la gama; dos veces de cada tres dentro del \u00b1. Cerca: menos de \u0394E00\u00a08.",
    noGaps: "Ningún hueco que llenara otro de nuestros tubos.",
    tooFew: "Elija dos colores o más.",
    hues: [
      "rojo",
      "naranja",
      "amarillo",
      "verde amarillento",
      "verde",
      "verde azulado",
      "azul",
      "violeta",
      "púrpura",
      "rosa",
    ],
    order: "En qué orden pintar",
    orderNote:
      "Rápido y magro debajo, lento y graso encima: por capas, ponga un color sobre otro que esté antes que él, no debajo. Sobre uno con más aceite, añádale un poco de médium.",
    columns: {
      colour: "Color",
      dries: "Seca al tacto",
      oil: "Aceite de la película seca, en volumen",
      lasts: "Solidez",
    },
    leaner: (below) => `más magro que ${below} debajo: añada un poco de médium`,
    print: "Imprimir esta paleta",
    yours: "la suya",
    wholeRange: "la gama",
  },
};
