/**
 * Oil to grind a working paint, parts to 100 of pigment by weight, as Church
 * gives them after two authorities. Hand-ground paints of 1900, earths of that day.
 *
 * @source church-1915 (read)
 */
export interface ChurchRow {
  readonly pigment: string;
  readonly colourIndexName: string;
  /** [g/100 g]; where Church names one authority alone, one figure. */
  readonly oilGPer100g: readonly number[];
}

export const CHURCH_OIL: readonly ChurchRow[] = [
  { pigment: "white lead", colourIndexName: "PW 1", oilGPer100g: [16, 15] },
  { pigment: "zinc white", colourIndexName: "PW 4", oilGPer100g: [19, 23] },
  { pigment: "yellow ochre", colourIndexName: "PY 43", oilGPer100g: [59, 63] },
  { pigment: "raw sienna", colourIndexName: "PBr 7", oilGPer100g: [147, 240] },
  { pigment: "vermilion", colourIndexName: "PR 106", oilGPer100g: [23] },
  { pigment: "light red", colourIndexName: "PR 102", oilGPer100g: [69, 70] },
  { pigment: "viridian", colourIndexName: "PG 18", oilGPer100g: [56, 52] },
  { pigment: "Prussian blue", colourIndexName: "PB 27", oilGPer100g: [72, 78] },
  { pigment: "cobalt blue", colourIndexName: "PB 28", oilGPer100g: [50, 90] },
  { pigment: "ultramarine", colourIndexName: "PB 29", oilGPer100g: [34, 43] },
  { pigment: "raw umber", colourIndexName: "PBr 7", oilGPer100g: [97, 95] },
  { pigment: "burnt umber", colourIndexName: "PBr 7", oilGPer100g: [97, 87] },
  { pigment: "burnt sienna", colourIndexName: "PBr 7", oilGPer100g: [138, 150] },
  { pigment: "ivory black", colourIndexName: "PBk 9", oilGPer100g: [88, 112] },
];

/** Church's figure for a pigment: the mean of his authorities [g/100 g]. */
export function churchOilGPer100g({ oilGPer100g }: ChurchRow): number {
  return oilGPer100g.reduce((total, one) => total + one, 0) / oilGPer100g.length;
}
