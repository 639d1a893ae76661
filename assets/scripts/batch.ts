/**
 * A batch of any size on a sheet. The page carries the recipe and the lines; this
 * works them out with the same rules as the table above, and shows them.
 */
import {
  batchBetween,
  type SpannedBatch,
  type SpannedRecipe,
} from "../../lib/formulation/batch-between.ts";
import type { BatchSize } from "../../lib/formulation/batch.ts";
import { batchFigureText } from "../../lib/present/batch-figure-text.ts";
import { printedNumbers, type DecimalMark } from "../../lib/words/number-text.ts";
import type { Quantity } from "../../lib/quantities/interval.ts";

interface Carried {
  readonly recipe: SpannedRecipe;
  readonly about: string;
  readonly mark: DecimalMark;
}

for (const root of document.querySelectorAll<HTMLElement>("[data-batch]")) reckon(root);

function reckon(root: HTMLElement): void {
  const carried = JSON.parse(root.dataset["batch"] ?? "") as Carried;
  const numbers = printedNumbers(carried.mark);
  const amount = root.querySelector<HTMLInputElement>("[data-amount]");
  const by = root.querySelector<HTMLSelectElement>("[data-by]");
  const tube = root.querySelector<HTMLInputElement>("[data-tube]");
  const fault = root.querySelector<HTMLElement>("[data-fault]");
  if (amount === null || by === null || tube === null || fault === null) return;

  const show = (): void => {
    const batch = batchOf(carried.recipe, by.value, amount.valueAsNumber, tube.valueAsNumber);
    fault.textContent = batch === undefined ? (fault.dataset["fault"] ?? "") : "";
    for (const cell of root.querySelectorAll<HTMLElement>("[data-figure]")) {
      const key = cell.dataset["figure"] ?? "";
      const quantity = batch === undefined ? undefined : figureOf(batch, key);
      cell.textContent =
        quantity === undefined ? "\u2013" : batchFigureText(key, quantity, carried.about, numbers);
    }
  };
  for (const field of [amount, by, tube]) field.addEventListener("input", show);
  show();
  // A browser that comes back to a page fills in what stood there.
  window.addEventListener("pageshow", show);
  root.hidden = false;
}

/** Nothing for an amount or a tube that is none, or for millilitres of what has no density. */
function batchOf(
  recipe: SpannedRecipe,
  by: string,
  amount: number,
  tubeMl: number,
): SpannedBatch | undefined {
  const size: BatchSize =
    by === "tubes"
      ? { tubes: amount }
      : by === "paintMl"
        ? { paintMl: amount }
        : by === "paintG"
          ? { paintG: amount }
          : { pigmentG: amount };
  try {
    return batchBetween(recipe, size, tubeMl);
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

function figureOf(batch: SpannedBatch, key: string): Quantity | undefined {
  const [name, index] = key.split(".");
  const found = batch[name as keyof SpannedBatch];
  return index === undefined
    ? (found as Quantity | undefined)
    : (found as readonly Quantity[] | undefined)?.[Number(index)];
}
