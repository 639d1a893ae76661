/** The tables that are looked up by a pigment's Colour Index generic name. */
import { z } from "zod";
import { CHEMISTRIES } from "../drying/chemistry-drying.ts";
import type { BlackOrigin } from "../formulation/black-origin.ts";
import type { HandbookRow } from "../formulation/handbook-estimate.ts";
import { GAS_RELEASES, GASES } from "../hazard/studio/gas-given-off.ts";
import { PIGMENT_NATURES } from "../hazard/studio/pigment-nature.ts";
import { EXPECTED_OPACITIES } from "../optics/films/expected-opacity.ts";
import { EXPECTATIONS } from "../permanence/expected-lightfastness.ts";
import { AGENTS, EFFECTS, SHIELDINGS } from "../permanence/sensitivity.ts";
import type { TraditionalName } from "../permanence/traditional-names.ts";
import type { Quantity } from "../quantities/interval.ts";
import {
  casCell,
  evidence,
  listCell,
  numberCell,
  quantityCell,
  wording,
  type RowStanding,
} from "./cells.ts";
import { HUE_FAMILIES } from "./hue-family.ts";
import type { EvidencedRow, TableForm } from "./loaded-table.ts";
import { saidCells, saidColumn, TERMS } from "./said-words.ts";

/** "PB 15:3": usage and hue, number, and the suffix of a variant. */
export const COLOUR_INDEX_NAME = /^[PN](?:Bk|Br|B|G|M|O|R|V|W|Y) \d{1,3}(?::\d)?$/;

const expectation = z.enum(EXPECTATIONS.map((row) => row.expectation));

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
    pigments: ({ pigments: names }) => names,
    said: [{ column: "kind" }],
  };
}

/** A table of which no two rows name one pigment. */
function pigmentTable<Shape extends z.ZodRawShape>(
  file: string,
  shape: Shape,
): TableForm<z.output<z.ZodObject<Shape & typeof OF_PIGMENTS, z.core.$strict>> & PigmentsRow> {
  return {
    file,
    row: z.strictObject({ ...shape, ...OF_PIGMENTS }) as never,
    names: ({ pigments: names }) => names,
    pigments: ({ pigments: names }) => names,
  };
}

const OF_PIGMENTS = { pigments, ...evidence };
type PigmentsRow = z.output<z.ZodObject<typeof OF_PIGMENTS>>;

/** What tables of the sciences tell of a pigment. */
const TOLD = ["lightfastness", "density", "oil absorption", "drying chemistry", "opacity"] as const;
export type ToldOfPigment = (typeof TOLD)[number];

/** "TiO2, with iron", beside "TiO2". */
function isInWords(formula: string): boolean {
  return /\b[a-z]{3}/.test(formula);
}

/** One pigment: what it is. */
const IDENTITY = z.strictObject({
  colourIndexName: z
    .string()
    .regex(COLOUR_INDEX_NAME, 'a Colour Index generic name, such as "PBk 6"'),
  name: wording.optional(),
  ...saidCells(),
  class: wording.optional(),
  formula: wording.optional(),
  mineral: wording.optional(),
  ...saidCells("mineral"),
  year: numberCell(1, 2100, "").optional(),
  /** What no table of a science tells of it: a gap that is known as one. */
  notKnown: listCell(z.enum(TOLD)).optional(),
  ...evidence,
});
export type PigmentRow = z.output<typeof IDENTITY>;

const SENSITIVITY = {
  agent: z.enum(AGENTS),
  effect: z.enum(EFFECTS),
  inOil: z.enum(SHIELDINGS),
  disputed: z
    .literal("yes")
    .transform(() => true)
    .optional(),
};

const HUE_FAMILY = z.strictObject({ of: wording, family: z.enum(HUE_FAMILIES), ...evidence });

export const PIGMENT_TABLES = {
  hueFamilies: {
    file: "knowledge/hue-families.csv",
    row: HUE_FAMILY,
    names: ({ of }) => [of],
  } satisfies TableForm<z.output<typeof HUE_FAMILY>>,
  pigments: {
    file: "knowledge/pigments.csv",
    row: IDENTITY,
    names: ({ colourIndexName }) => [colourIndexName],
    said: [
      saidColumn("name"),
      { column: "class" },
      { column: "formula", isWords: isInWords },
      saidColumn("mineral", "mineral"),
    ],
  } satisfies TableForm<PigmentRow>,
  pigmentTerms: {
    file: TERMS,
    row: z.strictObject({ term: wording, ...saidCells(), ...evidence }),
    names: ({ term }) => [term],
    said: [saidColumn("term")],
  } satisfies TableForm<{ readonly term: string } & EvidencedRow>,
  constitutionNumbers: pigmentTable("knowledge/constitution-numbers.csv", {
    numbers: listCell(z.string().regex(/^\d{5,6}$/, "a constitution number without its suffix")),
  }),
  casNumbers: pigmentTable("knowledge/cas-numbers.csv", { numbers: listCell(casCell) }),
  blackOrigins: {
    file: "formulation/black-origin.csv",
    row: z.strictObject({
      colourIndexName: z.string().min(1),
      called: wording,
      words: listCell(z.string().min(1)),
      ...evidence,
    }),
    names: ({ colourIndexName }) => [colourIndexName],
  } satisfies TableForm<BlackOrigin & EvidencedRow>,
  chemistries: pigmentTable("drying/pigment-chemistry.csv", { chemistry: z.enum(CHEMISTRIES) }),
  lightfastness: {
    ...pigmentTable("permanence/expected-lightfastness.csv", {
      kinds: wording,
      ...saidCells(),
      masstone: expectation,
      tint: expectation,
      tintSource: evidence.source.optional(),
    }),
    said: [saidColumn("kinds")],
  },
  commonNames: {
    ...pigmentTable("knowledge/common-names.csv", { name: wording, ...saidCells() }),
    names: ({ name }: PigmentsRow & { readonly name: string }) => [name],
    said: [saidColumn("name")],
  },
  traditionalNames: {
    ...pigmentTable("permanence/traditional-names.yaml", {
      word: wording,
      standIns: z.record(z.string().regex(COLOUR_INDEX_NAME), wording).optional(),
    }),
    names: ({ word }) => [word],
  } satisfies TableForm<TraditionalName & PigmentsRow>,
  sensitivities: {
    ...pigmentTable("permanence/sensitivities.csv", SENSITIVITY),
    names: ({ agent, pigments: names }: PigmentsRow & { readonly agent: string }) =>
      names.map((name) => `${name}, ${agent}`),
  },
  opacities: pigmentTable("optics/films/expected-opacity.csv", {
    opacity: z.enum(EXPECTED_OPACITIES),
  }),
  dustNatures: pigmentTable("hazard/studio/dust-nature.csv", { nature: z.enum(PIGMENT_NATURES) }),
  gasesGivenOff: pigmentTable("hazard/studio/gases-given-off.csv", {
    gas: z.enum(GASES),
    release: z.enum(GAS_RELEASES),
  }),
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
