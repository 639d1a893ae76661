/** The tables that formulation goes by, but for those looked up by a pigment's name. */
import { z } from "zod";
import { OILS } from "../drying/oils.ts";
import { REACHED_FIGURES, type ReachRow } from "../formulation/plausibility.ts";
import type { OilDensityRow } from "../formulation/oil-density.ts";
import { ends } from "../quantities/interval.ts";
import { evidence, listCell, quantityCell, wording } from "./cells.ts";
import type { EvidencedRow, TableForm } from "./loaded-table.ts";

const rule = z
  .templateLiteral(["formulation/", z.string()])
  .describe("a rule of formulation, such as formulation/density-reach");

/** "kg/m3 x 0.001": the unit that a figure may have been given in, and what mends it. */
const slip = z
  .string()
  .regex(/^\S.* x \d*\.?\d+$/, "a unit and what mends it, such as kg/m3 x 0.001")
  .transform((text) => {
    const [givenIn = "", times = ""] = text.split(" x ");
    return { givenIn, times: Number(times) };
  });

export const FORMULATION_TABLES = {
  oilDensities: {
    file: "formulation/oil-density.csv",
    row: z.strictObject({
      oil: z.enum(OILS),
      gPerCm3: quantityCell(0.8, 1.1, "g/cm3").transform(ends),
      ...evidence,
    }),
    names: ({ oil }) => [oil],
    all: OILS,
  } satisfies TableForm<OilDensityRow & EvidencedRow>,
  reaches: {
    file: "formulation/reaches.csv",
    row: z.strictObject({
      figure: z.enum(REACHED_FIGURES),
      subject: wording,
      unit: wording,
      rule,
      possible: quantityCell(0, 10_000, "").transform(ends),
      usual: quantityCell(0, 10_000, "").transform(ends),
      slips: listCell(slip).optional(),
      ...evidence,
    }),
    names: ({ figure }) => [figure],
    all: REACHED_FIGURES,
  } satisfies TableForm<ReachRow & EvidencedRow>,
};
