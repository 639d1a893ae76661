/** A batch sheet for another amount: the same plan as the page was built with, worked out for what is asked. */
import type { BatchRecipe } from "../../lib/formulation/batch.ts";
import { printedNumbers, quantityText, type DecimalMark } from "../../lib/words/number-text.ts";
import { batchPlan, type BatchPlan, type Wanted } from "../../lib/lots/batch-plan.ts";

interface Carried {
  readonly matter: {
    readonly recipe: Omit<BatchRecipe, "tubeMl">;
    readonly fills: readonly { readonly ml: number; readonly reallyMl: number }[];
    readonly stepG: number;
  };
  readonly places: number;
  readonly mark: DecimalMark;
  readonly texts: { readonly comesOut: string; readonly about: string };
}

for (const root of document.querySelectorAll<HTMLElement>("[data-plan]")) plan(root);
for (const button of document.querySelectorAll("[data-print]"))
  button.addEventListener("click", () => window.print());
for (const bar of document.querySelectorAll<HTMLElement>("[data-wanted]")) bar.hidden = false;

function plan(root: HTMLElement): void {
  const { matter, places, mark, texts } = JSON.parse(root.dataset["plan"] ?? "") as Carried;
  const numbers = printedNumbers(mark);
  const amount = root.querySelector<HTMLInputElement>("[data-amount]");
  const unit = root.querySelector<HTMLSelectElement>("[data-unit]");
  const fault = root.querySelector<HTMLElement>("[data-fault]");
  const comesOut = root.querySelector<HTMLElement>("[data-comes-out]");
  if (amount === null || unit === null || fault === null || comesOut === null) return;

  const show = (): void => {
    const made = planOf(matter, unit.value, amount.valueAsNumber);
    fault.textContent = made === undefined ? (fault.dataset["fault"] ?? "") : "";
    for (const cell of root.querySelectorAll<HTMLElement>("[data-figure]")) {
      const massG = made === undefined ? undefined : massOf(made, cell.dataset["figure"] ?? "");
      cell.textContent = massG === undefined ? "\u2013" : numbers.decimal(massG, places);
    }
    comesOut.textContent =
      made?.yieldMl === undefined
        ? ""
        : texts.comesOut.replace(
            "{ml}",
            quantityText(made.yieldMl, (ml) => numbers.decimal(ml, 0), texts.about),
          );
  };
  for (const field of [amount, unit]) field.addEventListener("input", show);
  // What was asked before this ran, or a browser has filled in again, is worked out as well.
  show();
  window.addEventListener("pageshow", show);
}

/** Nothing for an amount that is none, or for tubes of what has no density. */
function planOf(
  { recipe, fills, stepG }: Carried["matter"],
  unit: string,
  amount: number,
): BatchPlan | undefined {
  const ml = unit.startsWith("tubes ") ? Number(unit.slice("tubes ".length)) : undefined;
  const wanted: Wanted = ml === undefined ? { pigmentG: amount } : { tubes: amount, ml };
  const reallyMl = fills.find((one) => one.ml === ml)?.reallyMl ?? 1;
  try {
    return batchPlan(recipe, wanted, reallyMl, stepG);
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

function massOf(made: BatchPlan, figure: string): number | undefined {
  const [name, index] = figure.split(".");
  if (index !== undefined)
    return (name === "pigments" ? made.pigments : made.additions)[Number(index)]?.massG;
  return name === "oilAtFirstG"
    ? made.oilAtFirstG
    : name === "oilHeldBackG"
      ? made.oilHeldBackG
      : made.paintG;
}
