import type { BLACKS_PAGES as ENGLISH_PAGES } from "../en/blacks-pages.ts";
import type { AnyWords } from "../any-words.ts";
import { shortWhite } from "./short-white.ts";

/** What answers show of the range's blacks in its whites, of the whites themselves, and of what theory says of both. */
export const BLACKS_PAGES: AnyWords<typeof ENGLISH_PAGES> = {
  table: {
    caption: (level) => `Los negros de la gama a L* ${level}: a* y b* en cada blanco`,
    colour: "Negro",
    cell: (a, b) => `${a}, ${b}`,
    note: "a* y b*, bajo D65 para el observador de 10\u00b0. 0, 0 es neutro; b* por debajo de cero es azul, por encima amarillo. Una raya: no probado en ese blanco, o no a esa claridad.",
  },
  picture: {
    title: (level) =>
      `b* de cada negro en cada blanco, todos a L*\u00a0${level}; las barras son una incertidumbre típica`,
    axis: "b* a igual claridad",
    ends: { minus: "\u2039 azul", plus: "amarillo \u203a" },
    description: (parts) => `${parts.join("; ")}.`,
    row: (black, lanes) => `${black}: ${lanes.join(", ")}`,
    lane: (white, b) => `b* ${b} en ${white}`,
    short: shortWhite,
  },
  scattering: {
    title: (white) => `Cómo dispersa ${white} la luz a lo largo del espectro`,
    wavelength: "Longitud de onda, nm",
    axis: "Dispersión frente a 560 nm",
    read: (filmsUm) =>
      `línea: calculada a partir de sus propias películas de ${filmsUm.join(", ")}\u00a0\u00b5m sobre una carta de contraste, mientras no la cubrían`,
    band: "banda: lo que dice la teoría, por el grano y lo que de él no se sabe",
    description: (white, parts) => `${white}: ${parts.join("; ")}.`,
    at: (kind, nm, value) => `${kind} ${value} a ${nm} nm`,
    kinds: { read: "por sus películas", band: "según la teoría" },
    span: (low, high) => `${low} a ${high}`,
  },
  theory: {
    title: (level) =>
      `Lo que permite la teoría a L*\u00a0${level}: intervalos, no una cifra de una pintura`,
    description: (parts) => `${parts.join("; ")}.`,
    row: (black, lanes) => `${black}: ${lanes.join(", ")}`,
    lane: (white, low, high) => `b* ${low} a ${high} en ${white}`,
    axis: "b*, los cuatro quintos centrales de los casos probados",
    statements: (isTold) =>
      isTold ? "Lo que la teoría puede decir" : "Lo que la teoría no puede decir",
    statementsNote: (runs, robust) =>
      `Cada uno de los ${runs} casos toma otros tamaños, otras anchuras, otros índices y otro aceite. La teoría puede decir lo que sale igual en ${robust} de ellos.`,
    pair: (black, white) => `${black} en ${white}`,
    inputs: {
      caption: "Lo que se dio a la teoría",
      pigment: "Pigmento",
      size: "Grano, \u00b5m",
      spread: "Anchura de tamaños",
      indices: "Índice de refracción",
      sizeKinds: { "volume median": "mediana, en volumen", "number mean": "media, en número" },
      note: (oils) =>
        `Aceite de índice ${oils.join(", ")}, al azar. Anchura: la desviación típica geométrica. La teoría es de esferas alejadas entre sí; los granos reales están apretados y tienen otras formas, así que no puede decir cuán fuerte es un color, y de ella no se saca ninguna muestra.`,
    },
  },
};
