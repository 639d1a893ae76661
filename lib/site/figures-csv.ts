import { stringify } from "csv-stringify/sync";
import { madeStep, type KeptSteps } from "../kept/kept-steps.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import { isKnown, type FigurePath } from "../quantities/figure.ts";
import { publishedValue } from "../sheet/publish-sheet.ts";
import type { PublishedSheet } from "./published-data.ts";
import type { SheetPath } from "../sheet/sheet-path.ts";

/** Columns of figures.csv: the figures that a sheet is chosen by, each with its standing beside it. */
const FIGURES = [
  "notations.masstone.munsell.text",
  "notations.masstone.lab.D65/10.L",
  "notations.masstone.lab.D65/10.a",
  "notations.masstone.lab.D65/10.b",
  "notations.masstone.srgb.hex",
  "permanence.category",
  "permanence.expectation",
  "optics.opacityClass",
  "optics.tintingStrength",
  "drying.class",
  "drying.touchDryDays",
  "oil.oilIndexGPer100g",
  "oil.oilAbsorptionGPer100g",
  "oil.finish",
] as const satisfies readonly SheetPath[];

/** One line a colour; an estimate is written `3..6`; empty where not stated. A text that a spreadsheet would run as a formula is led by an apostrophe. */
export function figuresCsv(published: readonly PublishedSheet[], steps?: KeptSteps): string {
  const head = [
    "slug",
    "name",
    "pigments",
    "vehicle",
    "signalWord",
    ...FIGURES.flatMap((path) => [path, `${path} standing`]),
    "revision",
  ];
  const rows = published.map((one) => {
    const step = { modules: MODULES, name: "lines of figures.csv", of: one.worded.sheet.slug };
    return madeStep(steps, step, () => lineOf(one));
  });
  return stringify([head, ...rows], { escape_formulas: true });
}

const MODULES = ["lib/site/figures-csv.ts", "lib/words/languages.ts"];

function lineOf({ worded, revision }: PublishedSheet): (string | number)[] {
  const { sheet } = worded;
  return [
    sheet.slug,
    sheet.name,
    sheet.pigments.map(({ colourIndexName, name }) => colourIndexName ?? name).join("; "),
    sheet.vehicle?.name ?? "",
    sheet.cautions.signalWord ?? "",
    ...FIGURES.flatMap((path) => cells(path, worded)),
    revision,
  ];
}

/** What a figure is, and its standing. */
function cells(path: FigurePath, worded: SheetTexts): [string | number, string] {
  if (!worded.has(path)) return ["", ""];
  const { row, figure } = worded.leaf(path);
  return isKnown(figure) ? [written(publishedValue(row, figure)), figure.standing] : ["", ""];
}

/** A number stays one: written as text, a minus would be taken for a formula. */
function written(value: unknown): string | number {
  if (Array.isArray(value)) return value.join("..");
  return typeof value === "string" || typeof value === "number" ? value : "";
}
