import type { CautionsBlock } from "../blocks/block.ts";
import type { CautionView } from "../present/handling-views.ts";
import { statementText } from "../present/statement-text.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { Words } from "../words/words.ts";
import type { SheetPage } from "./page-of-sheet.ts";
import { isPoison } from "../hazard/studio/studio-material.ts";
import { grouped } from "../quantities/grouped.ts";

type Cautions = Sheet["cautions"]["studio"];

/** What is done before the colour is paint: it belongs to the bench. */
const AT_THE_BENCH = "weighing and mulling";

export function isAtTheBench(operation: string): boolean {
  return operation === AT_THE_BENCH;
}

/** Whether the dry pigment calls for more than the mask that does for any. */
export function isGraveDust(cautions: Cautions): boolean {
  return cautions.some(({ rule }) => rule === "respirator-p3");
}

/** Cautions of one colour by operation, but for what holds of every colour, each reason once; no block for none. */
export function studioCautions(
  { sheet, words }: SheetPage,
  wanted: (operation: string) => boolean,
): CautionsBlock[] {
  const own = sheet.cautions.studio.filter(({ general }) => !general);
  const operations = [...new Set(own.map(({ operation }) => operation))].filter(wanted);
  if (operations.length === 0) return [];
  const told = new Set<string>();
  const withNewReason = ({ sentences, reason, ...grave }: ReasonedCaution): CautionView => {
    if (told.has(reason)) return { sentences };
    told.add(reason);
    return { sentences, reason, ...grave };
  };
  return [
    {
      kind: "cautions",
      operations: operations.map((operation) => ({
        operation: words.operations[operation] ?? operation,
        cautions: cautionsByReason(
          own.filter((caution) => caution.operation === operation),
          words,
        ).map(withNewReason),
      })),
    },
  ];
}

type ReasonedCaution = CautionView & Required<Pick<CautionView, "reason">>;

/** Sentences that share a reason, in the order of the first of them. */
export function cautionsByReason(cautions: Cautions, words: Words): ReasonedCaution[] {
  const told = cautions.map((caution) => [statementText(caution.reason, words), caution] as const);
  return [...grouped(told)].map(([reason, alike]) => ({
    sentences: alike.map((caution) => statementText(caution, words)),
    reason,
    ...(alike.some((caution) => isPoison(caution.reason)) && { isGrave: true }),
  }));
}

/** What to mind before the pigment is paint, one sentence each: what holds for every colour too. */
export function mullingCautions({ sheet, words }: SheetPage): string[] {
  const sentences = sheet.cautions.studio
    .filter(({ operation }) => isAtTheBench(operation))
    .map((caution) => statementText(caution, words));
  return [...new Set(sentences)];
}
