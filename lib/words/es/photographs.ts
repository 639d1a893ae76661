import type { AnyWords } from "../any-words.ts";
import type { PHOTOGRAPHS as ENGLISH } from "../en/photographs.ts";

export const PHOTOGRAPHS: AnyWords<typeof ENGLISH> = {
  heading: "En imagen",
  of: {
    drawdown: "Aplicación sobre negro y blanco",
    "brush stroke": "Pincelada",
    tube: "Tubo",
    "dry pigment": "Pigmento seco",
    impasto: "Empaste",
  },
  alt: (of, name) => `${of}: ${name}, fotografía`,
  lot: (number) => `Lote ${number}`,
  estimated: "estimado según una fotografía",
  notation:
    "Estimado según una fotografía de la pintura, corregida por muestras medidas: ningún instrumento la ha medido.",
};
