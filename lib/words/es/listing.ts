import type { PageWords } from "../en/pages.ts";

/** What goes along with pictures of a colour into a shop. */
export const LISTING: PageWords["listing"] = {
  made: "Composición",
  sizes: "Tamaños y precios",
  noSizes: "No hay ningún tamaño registrado.",
  label: "En la etiqueta",
  said: "Lo que puede decirse del color",
  pictures: "Imágenes",
  screen:
    "Las muestras enseñan una medición de la pintura seca tal como una pantalla puede enseñarla, y ninguna pantalla enseña una pintura con exactitud: se juzga y se iguala por la pintura misma, nunca por una imagen.",
  estimated:
    "Ningún instrumento ha medido el color. Se estimó a partir de una fotografía: dígalo dondequiera que se muestre.",
  outside:
    "El color queda más allá de lo que abarca el sRGB: las pantallas lo muestran más apagado de lo que es.",
  predicted: "Los rebajes que no se pintaron están previstos.",
  alone: (name: string) => `${name}, el color solo.`,
  strip: (name: string, white: string) =>
    `${name}, solo y rebajado con ${white}, de fuerte a pálido.`,
  beside: (names: readonly string[]) => `${names.join(", ")}, uno junto a otro.`,
};
