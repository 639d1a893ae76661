/**
 * Signal words and pictograms of a label.
 * @source clp-1272-2008 : signal words of Annex I; pictograms as Annex V has them in French, from memory.
 */
export const SIGNAL_WORDS = { Danger: "Danger", Warning: "Attention" } as const;

export const PICTOGRAMS = {
  GHS01: "Bombe explosant",
  GHS02: "Flamme",
  GHS03: "Flamme au-dessus d’un cercle",
  GHS04: "Bouteille à gaz",
  GHS05: "Corrosion",
  GHS06: "Tête de mort sur deux tibias",
  GHS07: "Point d’exclamation",
  GHS08: "Danger pour la santé",
  GHS09: "Environnement",
} as const;
