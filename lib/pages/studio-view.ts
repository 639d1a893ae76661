import type { CautionView, HandlingSectionView } from "../present/handling-views.ts";
import { statementText } from "../present/statement-text.ts";
import type { Words } from "../words/words.ts";
import type { CautionsSection } from "../sheet/handling/handling-sections.ts";

type Caution = CautionsSection["studio"][number];

/** Cautions by operation; what has one reason stands together, the reason once. */
export function studioView(
  cautions: readonly Caution[],
  words: Words,
): HandlingSectionView["studio"] {
  const seen = new Set<string>();
  return [...new Set(cautions.map(({ operation }) => operation))].map((operation) => {
    const own = cautions.filter((caution) => caution.operation === operation);
    const view = {
      operation: words.operations[operation] ?? operation,
      cautions: byReason(own, words, seen),
    };
    for (const caution of own) seen.add(statementText(caution, words));
    return view;
  });
}

/**
 * Sentences that share a reason, in the order of the first of them.
 * @param said sentences of earlier operations: the long one about rags is not printed a second time, but pointed to.
 */
export function byReason(
  cautions: readonly Caution[],
  words: Words,
  said: ReadonlySet<string> = new Set(),
): CautionView[] {
  const groups = new Map<string, string[]>();
  for (const caution of cautions) {
    const text = statementText(caution, words);
    const reason = statementText(caution.reason, words);
    groups.set(reason, [
      ...(groups.get(reason) ?? []),
      said.has(text) && caution.rule === "oily-rags" ? words.pages.handling.rags : text,
    ]);
  }
  return [...groups].map(([reason, sentences]) => ({ sentences, reason }));
}
