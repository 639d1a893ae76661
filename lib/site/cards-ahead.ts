import { setImmediate as turn } from "node:timers/promises";
import { keyOf, readResult, writeResult } from "../kept/kept-result.ts";
import type { WorkCache } from "../kept/work-cache.ts";
import type { CardToLayOut } from "../print/card-layout.ts";
import { cardSizes } from "../print/card-size.ts";
import { completeCards, layoutOrigin } from "../print/range-cards.ts";
import type { RangeToPrint, Site } from "./site.ts";
import { WORTH_A_THREAD, type AskedWork, type WorkThreads } from "./work-threads.ts";

/** Cards that are asked for at a time: of those that wait the thread holds what they are made from. Our own choice. */
const ASKED_AHEAD = 32;

/**
 * Lay out the cards of a range in a thread while this one fills the pages that papers are made of, which comes next:
 * whoever lays out a card later finds it kept. Where few records are new, few cards are laid out, and nothing is done.
 */
export async function layCardsAhead(
  { prints }: Pick<Site, "prints">,
  cache: WorkCache,
  threads: WorkThreads,
): Promise<void> {
  if (prints === undefined || !threads.areThere || !cache.keeps) return;
  const edited = prints.sheets.filter(({ isEdited }) => isEdited);
  if (edited.length < WORTH_A_THREAD) return;
  const left = cardsToLayOut(prints, new Set(edited.map(({ slug }) => slug)), cache);
  const waiting = new Set<AskedWork<Uint8Array | null>>();
  const asker = async (): Promise<void> => {
    for (const { key, card } of left) {
      const asked = threads.ask("card", card);
      waiting.add(asked);
      const layout = await asked.result.finally(() => waiting.delete(asked));
      if (layout !== null) writeResult(cache, key, layout);
    }
  };
  const all = Promise.all(Array.from({ length: ASKED_AHEAD }, asker));
  // Whoever waits for it below is told what stopped it.
  all.catch(() => undefined);
  for (const sheet of prints.sheets) {
    // All are laid out: the pages of the others are filled while papers are drawn.
    if (waiting.size === 0) break;
    sheet.key();
    // What has been laid out meanwhile is heard, and further cards are asked for.
    await turn();
  }
  // The thread goes through them in their order.
  for (let last; (last = [...waiting].at(-1)) !== undefined;) await last.here();
  await all;
}

interface KeyedCard {
  /** What its layout is kept under. */
  readonly key: string;
  readonly card: CardToLayOut;
}

/** In every size, those of edited colours that are not kept yet. */
function* cardsToLayOut(
  { cards, context }: RangeToPrint,
  edited: ReadonlySet<string>,
  cache: WorkCache,
): Generator<KeyedCard> {
  for (const card of completeCards(cards().cards))
    if (edited.has(card.slug))
      for (const size of cardSizes(context.records.workshop)) {
        const origin = layoutOrigin(card, size, context);
        const key = keyOf(cache, origin);
        if (key !== undefined && readResult(cache, key) === undefined)
          yield { key, card: origin.inputs };
      }
}
