/**
 * Signal words and pictograms of a label.
 * @source clp-1272-2008 : signal words of Annex I; pictograms as Annex V has them in Spanish, from memory.
 */
export const SIGNAL_WORDS = { Danger: "Peligro", Warning: "Atención" } as const;

export const PICTOGRAMS = {
  GHS01: "Bomba explotando",
  GHS02: "Llama",
  GHS03: "Llama sobre círculo",
  GHS04: "Bombona de gas",
  GHS05: "Corrosión",
  GHS06: "Calavera y tibias cruzadas",
  GHS07: "Signo de exclamación",
  GHS08: "Peligro para la salud",
  GHS09: "Medio ambiente",
} as const;
