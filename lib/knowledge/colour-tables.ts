/** The tables that colorimetry goes by. */
import { z } from "zod";
import type { IsccNbsBlock } from "../colorimetry/iscc-nbs.ts";
import { parseMunsell } from "../colorimetry/munsell-notation.ts";
import { ends } from "../quantities/interval.ts";
import { evidence, numberCell, quantityCell, wording } from "./cells.ts";
import type { EvidencedRow, TableForm } from "./loaded-table.ts";

/** A hue as its letters say it, "9RP", as its number on the circle of a hundred. */
const hueCell = z.string().transform((cell, context) => {
  const hueNumber = parseMunsell(`${cell} 5/5`)?.hueNumber;
  if (typeof hueNumber === "number") return hueNumber;
  context.addIssue({ code: "custom", message: "a Munsell hue, such as 9RP" });
  return z.NEVER;
});

/** An end that may be open. */
function endCell(most: number, unit: string): z.ZodType<number> {
  return z.union([z.literal("INF").transform(() => Infinity), numberCell(0, most, unit)]);
}

const MASSTONE_REACH = z.strictObject({
  /** A family of colours, or a class of pigments.csv. */
  of: wording,
  /** L* (D65/10). */
  lightness: quantityCell(0, 100, "of L*").transform(ends),
  /** C*ab of the neutral families. */
  chromaMost: numberCell(0, 150, "of C*").optional(),
  /** Hue angle hab [degree], from and to through 360. */
  hueFrom: numberCell(0, 360, "degrees").optional(),
  hueTo: numberCell(0, 360, "degrees").optional(),
  ...evidence,
});
export type MasstoneReach = z.output<typeof MASSTONE_REACH>;

export const COLOUR_TABLES = {
  isccNbsBlocks: {
    file: "colorimetry/iscc-nbs-blocks.csv",
    row: z.strictObject({
      hueFrom: hueCell,
      hueTo: hueCell,
      valueFrom: endCell(10, "of value"),
      valueTo: endCell(10, "of value"),
      chromaFrom: endCell(50, "of chroma"),
      chromaTo: endCell(50, "of chroma"),
      number: numberCell(1, 267, "of SP 440"),
      name: wording,
      ...evidence,
    }),
    names: ({ hueFrom, hueTo, valueFrom, chromaFrom }) => [
      `${hueFrom}-${hueTo} ${valueFrom}/${chromaFrom}`,
    ],
  } satisfies TableForm<IsccNbsBlock & EvidencedRow>,
  masstoneReaches: {
    file: "colorimetry/masstone-reaches.csv",
    row: MASSTONE_REACH,
    names: ({ of }) => [of],
  } satisfies TableForm<MasstoneReach>,
};
