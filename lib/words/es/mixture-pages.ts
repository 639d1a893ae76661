import type { MIXTURE_PAGES as ENGLISH_PAGES } from "../en/mixture-pages.ts";
import type { AnyWords } from "../any-words.ts";

/** What the sheet says of a colour of several pigments: what its components predict, its greys, and drift. */
export const MIXTURE_PAGES: AnyWords<typeof ENGLISH_PAGES> = {
  caption: "De qué está mezclado",
  columns: {
    pigment: "Pigmento",
    paint: "Pintura de él solo",
    pigmentMass: "Seco, en masa",
    pigmentVolume: "Seco, en volumen",
    paintMass: "Pintura, en masa",
    paintVolume: "Tubo a tubo",
  },
  note: "A la izquierda, el pigmento seco que contiene. A la derecha, qué sacar de los tubos simples para mezclar lo mismo en la paleta.",
  noPaint: "ninguna está hecha de él solo",
  lead: "Todo aquí está calculado a partir de las pinturas de sus pigmentos solos. Donde pintamos la mezcla misma, las dos se muestran lado a lado.",
  heading: (white) => `En ${white}`,
  met: (white, count, middle, largest) =>
    `En ${white} sus componentes prevén ${count === 1 ? "su único rebaje" : `sus ${count} rebajes`} con \u0394E00 ${middle}${count === 1 ? "" : ` de mediana, ${largest} como máximo`}.`,
  metWithMasstone: (white, count, middle, largest) =>
    `En ${white} sus componentes prevén sus ${count} aplicaciones, con el color puro incluido, con \u0394E00 ${middle} de mediana, ${largest} como máximo.`,
  metAlone: (white, miss) =>
    `Por sus rebajes en ${white}, sus componentes prevén el color puro, sin blanco, con \u0394E00 ${miss}.`,
  notMet: (white) => `No lo hemos probado en ${white}: es solo una previsión.`,
  steps: (count) => `Previsión junto a medición: ${count === 1 ? "un paso" : `${count} pasos`}`,
  stepsCaption: (white) => `Color a ${white}, tal como lo prevén sus componentes`,
  masstone: "tono pleno",
  stepColumns: {
    ratio: "Color : blanco",
    L: "L*",
    a: "a*",
    b: "b*",
    munsell: "Munsell",
    uncertainty: "\u00b1",
    miss: "Error",
  },
  stepsNote:
    "L* a* b* bajo D65, observador de 10\u00b0. \u00b1: alrededor del 68\u00a0% de las previsiones quedan dentro, en \u0394E00, por óleos medidos y por nuestros propios rebajes, dejado fuera cada uno por turno. Error: la \u0394E00 a nuestra propia aplicación.",
  drift: {
    heading: "Si uno de sus pigmentos se desvanece",
    figures: "La deriva en cifras",
    caption: (white) => `Un tono medio en ${white}, y el mismo con un pigmento más débil`,
    asMade: "tal como se hizo",
    lost: (name, percent) => `${name}, ${percent}\u00a0% perdido`,
    columns: {
      what: "Rebaje",
      L: "L*",
      a: "a*",
      b: "b*",
      change: "\u0394E00",
      hue: "De ello en a* b*",
    },
    note: "Calculado, no visto: tanto del pigmento quitado. La última columna deja fuera la claridad; es el cambio de matiz.",
    single: (sentence) => `Para comparar, un negro de un solo pigmento: ${sentence}`,
    title: (white) =>
      `Cómo se desplaza su tono medio en ${white} si un pigmento se desvanece un 30 y un 60\u00a0%`,
    description: (paths) => `${paths.join("; ")}.`,
    path: (name, a, b) => `${name} un 60\u00a0% más débil: a* ${a}, b* ${b}`,
    less: (name) => `menos ${name}`,
    percent: (percent) => `${percent}\u00a0%`,
  },
  pair: {
    title: (first, second) =>
      `Tonos medios de ${first} y ${second}, junto a negros de un solo pigmento`,
    description: (first, second, share, chroma, blacks) =>
      `De todo ${second} a todo ${first}, lo más cerca del neutro con ${share} de ${first} en masa, C*ab ${chroma}. ${blacks.join("; ")}.`,
    single: "negros de un solo pigmento",
    black: (name, a, b) => `${name}: a* ${a}, b* ${b}`,
    neutral: (first, second, share, volume, chroma) =>
      `El tono medio más neutro de ${first} y ${second} lleva ${share} de ${first} en peso de pintura${volume === undefined ? "" : ` (${volume} en volumen)`}; C*ab ${chroma}.`,
    share: (percent) => `${percent}\u00a0%`,
  },
  blacks: {
    summary: (count, all) =>
      count === all
        ? `Junto a negros de un solo pigmento: ${count} de la gama`
        : `Junto a negros de un solo pigmento: los ${count} más próximos de ${all}`,
    caption: (white) => `A igual claridad en ${white}: a* y b*`,
    columns: { colour: "Color", at: (level) => `L* ${level}` },
    cell: (a, b) => `${a}, ${b}`,
    note: "a* y b*, bajo D65 para el observador de 10\u00b0. 0, 0 es neutro; b* por debajo de cero es azul, por encima amarillo. Una raya: no a esa claridad.",
  },
};
