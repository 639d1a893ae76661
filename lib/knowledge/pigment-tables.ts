/** The tables that are looked up by a pigment's Colour Index generic name. */
import { z } from "zod";
import type { HandbookRow } from "../formulation/handbook-estimate.ts";
import type { Quantity } from "../quantities/interval.ts";
import { evidence, listCell, quantityCell, wording } from "./cells.ts";
import type { TableForm } from "./loaded-table.ts";
import type { RowStanding } from "./cells.ts";

/** "PB 15:3": usage and hue, number, and the suffix of a variant. */
export const COLOUR_INDEX_NAME = /^[PN](?:Bk|Br|B|G|M|O|R|V|W|Y) \d{1,3}(?::\d)?$/;

/** Colour Index names, or chemical classes of pigments.csv: a row stands for all that it lists. */
const pigments = listCell(z.string().min(1));

type FigureRow = HandbookRow & { readonly standing: RowStanding };

/** @param column the figure's, named by its unit. */
function figureTable(
  file: string,
  column: string,
  figure: z.ZodType<Quantity>,
): TableForm<FigureRow> {
  return {
    file,
    row: z
      .strictObject({ kind: wording, pigments, [column]: figure, ...evidence })
      .transform((row: Omit<FigureRow, "figure">): FigureRow => ({
        ...row,
        figure: (row as unknown as Record<string, Quantity>)[column] as Quantity,
      })),
    names: ({ kind, pigments: names, source }) =>
      names.map((name) => `${kind}, ${name}, by ${source}`),
  };
}

export const PIGMENT_TABLES = {
  densities: figureTable("formulation/density.csv", "gPerCm3", quantityCell(0.5, 12, "g/cm3")),
  oilAbsorptions: figureTable(
    "formulation/oil-absorption.csv",
    "gPer100g",
    quantityCell(3, 400, "g/100 g"),
  ),
  looseDensities: figureTable(
    "formulation/bulk-density-loose.csv",
    "gPerMl",
    quantityCell(0.02, 6, "g/ml"),
  ),
  tappedDensities: figureTable(
    "formulation/bulk-density-tapped.csv",
    "gPerMl",
    quantityCell(0.02, 6, "g/ml"),
  ),
};
