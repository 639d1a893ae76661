import { isKnown } from "../quantities/figure.ts";
import { valueText } from "../present/figure-text.ts";
import { standingView } from "../present/standing-view.ts";
import type { CellView, PictureView, TableView } from "../present/views.ts";
import { numberColumns, tableView } from "../present/table-view.ts";
import { swatchStrip } from "../plots/swatch-strip.ts";
import type { FinishDepth } from "../sheet/optics/gloss-figures.ts";
import { ownColour } from "./screen-swatch.ts";
import { NO_VALUE } from "../words/no-value.ts";
import type { SheetPage } from "./page-of-sheet.ts";
import { given } from "../quantities/given.ts";

/** The masstone glossy, satin and matte as an eye sees it, and beside them what an instrument reads with the gloss let in. */
export function glossPicture(page: SheetPage): PictureView[] {
  const { sheet, words } = page;
  const { gloss } = sheet.optics;
  if (gloss === undefined) return [];
  const text = words.pages.optics.strength;
  const included = gloss.depths.find(
    ({ finish, specular }) => finish === "glossy" && specular === "included",
  );
  const seen = gloss.depths.filter(({ specular }) => specular === "excluded");
  const steps = given([
    ...seen.map((depth) => ({ depth, label: text.finishes[depth.finish] ?? depth.finish })),
    included !== undefined && { depth: included, label: text.glossIncluded },
  ]);
  const svg = swatchStrip("gloss-strip", {
    idPrefix: "gloss",
    title: text.glossTitle,
    axisLabel: text.glossAxis,
    missing: words.pages.sheet.missing,
    steps: steps.map(({ depth, label }) => ({
      lines: [label, text.glossLabelDepth(textAt(page, depth, "L"))],
      colour: ownColour(depth),
      standing: depth.L.standing,
    })),
    description: text.glossDescription(
      steps.map(
        ({ depth, label }) =>
          `${label} ${text.glossDepth(textAt(page, depth, "L"), textAt(page, depth, "value"))}`,
      ),
    ),
  });
  return [{ svg: svg, caption: text.glossTitle }];
}

/** The same as figures: a row a finish, gloss excluded and included. */
export function glossTable(page: SheetPage): TableView[] {
  const { sheet, words } = page;
  const { gloss } = sheet.optics;
  if (gloss === undefined) return [];
  const { glossTitle, glossColumns: columns, finishes, glossNote } = words.pages.optics.strength;
  const cell = (
    finish: FinishDepth["finish"],
    specular: FinishDepth["specular"],
    kind: "L" | "value",
  ): CellView => {
    const depth = gloss.depths.find((one) => one.finish === finish && one.specular === specular);
    return depth === undefined || !isKnown(depth[kind])
      ? { text: NO_VALUE }
      : { text: textAt(page, depth, kind), standing: standingView(depth[kind], words) };
  };
  return [
    tableView({
      caption: glossTitle,
      compact: true,
      note: glossNote,
      columns: [
        columns.finish,
        ...numberColumns(
          columns.excludedL,
          columns.excludedValue,
          columns.includedL,
          columns.includedValue,
        ),
      ],
      rows: (["glossy", "satin", "matte"] as const).map((finish) => [
        finishes[finish] ?? finish,
        cell(finish, "excluded", "L"),
        cell(finish, "excluded", "value"),
        cell(finish, "included", "L"),
        cell(finish, "included", "value"),
      ]),
    }),
  ];
}

function textAt({ worded, words }: SheetPage, { slug }: FinishDepth, kind: "L" | "value"): string {
  const { row, figure } = worded.leaf(`optics.gloss.depths.${slug}.${kind}`);
  return isKnown(figure) ? valueText(row, figure, words) : NO_VALUE;
}
