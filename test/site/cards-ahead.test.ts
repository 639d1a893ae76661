import { mkdtempSync } from "node:fs";
import { join } from "node:path";
import { expect, inject, test } from "vitest";
import { keepIn, type Keep } from "../../lib/kept/kept-result.ts";
import { workCacheOf, type WorkCache } from "../../lib/kept/work-cache.ts";
import { cardSizes } from "../../lib/print/card-size.ts";
import { completeCards, laidCard } from "../../lib/print/range-cards.ts";
import { layCardsAhead } from "../../lib/site/cards-ahead.ts";
import type { PackedSheet, RangeToPrint } from "../../lib/site/site.ts";
import {
  workedOut,
  type Asked,
  type WorkedOut,
  type WorkName,
} from "../../lib/site/thread-work.ts";
import { WORTH_A_THREAD, type WorkThreads } from "../../lib/site/work-threads.ts";
import { PRINTS } from "../print/demonstration-prints.ts";

const cards = completeCards(PRINTS.cards().cards);
const sizes = cardSizes(PRINTS.context.records.workshop);

/** The range with so many of its records edited. */
const edited = (count: number): RangeToPrint => ({
  ...PRINTS,
  sheets: PRINTS.sheets.map(
    (sheet, i) =>
      Object.create(sheet, {
        isEdited: { value: i < count },
        key: { value: () => sheet.slug },
      }) as PackedSheet,
  ),
});

const emptyCache = (): WorkCache => ({
  ...workCacheOf(join(mkdtempSync(join(inject("scratch"), "cards-ahead-")), "content")),
  programPart: () => "of this test",
});

/** A thread that does what it is asked, in this one, and counts it. */
function countingThread(): { readonly threads: WorkThreads; readonly count: () => number } {
  let count = 0;
  const threads: WorkThreads = {
    areThere: true,
    ask: <N extends WorkName>(name: N, asked: Asked<N>) => {
      count += 1;
      const result = workedOut(name, asked);
      return { result, here: async (): Promise<WorkedOut<N>> => result };
    },
    atRest: async () => Promise.resolve(),
    end: async () => Promise.resolve(),
  };
  return { threads, count: () => count };
}

test("cards of edited colours are laid out ahead, each once, and found as they would be laid out", async () => {
  const cache = emptyCache();
  const prints = edited(WORTH_A_THREAD);
  const { threads, count } = countingThread();
  await layCardsAhead({ prints }, cache, threads);
  const slugs = new Set(prints.sheets.slice(0, WORTH_A_THREAD).map(({ slug }) => slug));
  const ahead = cards.filter(({ slug }) => slugs.has(slug));
  expect(ahead.length).toBeGreaterThan(0);
  expect(count()).toBe(ahead.length * sizes.length);
  let madeAgain = 0;
  const kept: Keep = (origin, made) =>
    keepIn(cache)(origin, () => {
      madeAgain += 1;
      return made();
    });
  for (const card of ahead)
    for (const size of sizes)
      expect(laidCard(card, size, { ...PRINTS.context, kept })).toEqual(
        laidCard(card, size, PRINTS.context),
      );
  expect(madeAgain).toBe(0);
  await layCardsAhead({ prints }, cache, threads);
  expect(count()).toBe(ahead.length * sizes.length);
});

test("where few records are new, or nothing is kept, no card is laid out ahead", async () => {
  const { threads, count } = countingThread();
  await layCardsAhead({ prints: edited(WORTH_A_THREAD - 1) }, emptyCache(), threads);
  await layCardsAhead({ prints: edited(39) }, { ...emptyCache(), keeps: false }, threads);
  await layCardsAhead({ prints: edited(39) }, emptyCache(), { ...threads, areThere: false });
  expect(count()).toBe(0);
});
