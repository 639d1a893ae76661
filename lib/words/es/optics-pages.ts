import type { OPTICS_PAGES as ENGLISH_PAGES } from "../en/optics-pages.ts";
import type { AnyWords } from "../any-words.ts";
import { listed } from "./phrases.ts";

/** Words of the pages on what colours do in whites, in films and under gloss. */
export const OPTICS_PAGES: AnyWords<typeof ENGLISH_PAGES> = {
  strength: {
    byPigment: "Por masa de pigmento seco",
    dispersion: "Con moleta y a máquina",
    glossTitle: "Brillo y profundidad: el mismo color brillante, satinado y mate",
    glossAxis: "Tal como se ve, apartado del brillo; el último con el brillo incluido",
    glossIncluded: "incluido",
    glossDepth: (L, value) => `L* ${L}, valor ${value}`,
    glossLabelDepth: (L) => `L* ${L}`,
    glossDescription: (parts) => `${parts.join("; ")}.`,
    finishes: { glossy: "brillante", satin: "satinado", matte: "mate" },
    glossColumns: {
      finish: "Acabado",
      excludedL: "Apartado del brillo: L*",
      excludedValue: "Apartado del brillo: valor",
      includedL: "Brillo incluido: L*",
      includedValue: "Brillo incluido: valor",
    },
    glossNote:
      "Apartado del brillo es como se mira un cuadro. Un instrumento que cuenta el brillo mide igual todos los acabados. El valor es el de Munsell.",
  },
  fit: {
    title: "Absorción K y dispersión S a lo largo del espectro",
    wavelength: "Longitud de onda, nm",
    K: "Absorción K, en unidades de la dispersión propia de cada blanco",
    S: "Dispersión S, en las mismas unidades",
    SUpper:
      "Dispersión S, en las mismas unidades: solo se conoce un límite, está por debajo de la línea",
    description: (parts) => `${parts.join("; ")}.`,
    part: (white, least, greatest) => `En ${white}, K de ${least} a ${greatest}`,
    list: "Cómo se ajustaron K y S",
    leftOut: "Aplicaciones dejadas fuera del ajuste",
    series: (count, least, greatest) => `${least} a ${greatest} en ${count} longitudes de onda`,
  },
  whites: {
    linkToAll: "Todos nuestros negros y grises en cada blanco",
  },
  byStrength: {
    ranked: (reference) => `Frente a ${reference}, el más fuerte primero`,
    notCompared: "No comparados en fuerza",
    lead: "Cuánto colorea cada uno un blanco, tubo a tubo, frente a nuestro color de referencia; y cuánto blanco hace falta hasta un tono medio. Un color oscuro pide para ello mucho blanco y no por eso es más fuerte: entre dos tonos, las partes de blanco no dicen cuál colorea más.",
    columns: {
      colour: "Color",
      byMass: "En masa",
      byVolume: "Tubo a tubo",
      white: "Blanco hasta L* 50, tubo a tubo",
    },
    inWhite: (white) => `en ${white}`,
  },
  inTheWhites: {
    heading: "Negros y grises en cada blanco",
    lead: "Un negro se juzga por su gris, no por el tubo: aquí están todos los nuestros, mezclados con cada blanco hasta el mismo gris medio.",
    orders: "Negros y grises",
    sections: {
      swatches: "Lado a lado",
      trails: "Adónde los lleva cada blanco",
      figures: "En cifras",
    },
    board: {
      caption:
        "Negros y grises puros, y mezclados con cada blanco hasta L* 50; los más azules primero",
      alone: "Puro",
      said: "En palabras",
      notRead: "no medido",
      notTried: "no probado",
      figures: (a, b) => `a*\u00a0${a}, b*\u00a0${b}`,
    },
    readWithGloss: (names) =>
      `Medidos con el brillo incluido: ${listed(names)}; los demás sin él. Tal como se midieron, las dos clases no se comparan.`,
    group: (white, index) => `${white}${index === undefined ? "" : ` (${index})`}`,
    picture: (white) => `En ${white}`,
    description: (parts) => `A L* 50: ${parts.join("; ")}.`,
    descriptionPart: (name, a, b) => `${name} a* ${a}, b* ${b}`,
    key: "La cruz es el neutro: arriba el amarillo, abajo el azul, a la izquierda el verde, a la derecha el rojo. Las marcas llenas son lo que pintamos y medimos, de L* 30 a lo más pálido; las líneas de trazos están calculadas entre ellas. Una flecha en el borde nombra un negro que sale de los grises, con su a* y su b*.",
    caption: (white) => `En ${white}, el más azul a L* 50 primero`,
    columns: {
      colour: "Color",
      a: "a* a L* 50",
      b: "b* a L* 50",
      b70: "b* a L* 70",
      b30: "b* a L* 30",
    },
    note: "D65, observador de 10\u00b0. Una raya: no a esa claridad.",
    none: "Aún no se ha probado en un blanco ningún negro ni gris de la gama.",
  },
};
