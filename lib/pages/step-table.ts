import { numberColumns, tableView } from "../present/table-view.ts";
import type { CellView, TableView } from "../present/views.ts";
import { isKnown, type Figure } from "../quantities/figure.ts";
import { NO_VALUE } from "../words/no-value.ts";

/** A let-down in figures: read, predicted or expected. */
interface ToldStep {
  readonly ratio: CellView;
  /** L*, a* and b* as printed. */
  readonly lab: readonly string[];
  readonly munsell: Figure<string> | undefined;
  /** How far it may be off, or is. */
  readonly off: readonly string[];
}

/** The let-downs in one white step by step. @param off heads of the columns that say how far each is off. */
export function stepTable(
  { caption, note }: { readonly caption: string; readonly note: string },
  heads: Readonly<Record<"ratio" | "L" | "a" | "b" | "munsell", string>>,
  off: readonly string[],
  steps: readonly ToldStep[],
): TableView {
  return tableView({
    caption,
    note,
    compact: true,
    columns: [
      heads.ratio,
      ...numberColumns(heads.L, heads.a, heads.b),
      heads.munsell,
      ...off.map((head) => ({ head, unit: "\u0394E00", numeric: true })),
    ],
    rows: steps.map((step) => {
      const { munsell } = step;
      const notation = munsell !== undefined && isKnown(munsell) ? munsell.value : NO_VALUE;
      return [step.ratio, ...step.lab, notation, ...step.off];
    }),
  });
}
