import { mkdtempSync } from "node:fs";
import { join } from "node:path";
import { expect, inject, test } from "vitest";
import { workCacheOf, type WorkCache } from "../../lib/kept/work-cache.ts";
import { paperThreads, type PaperThreads } from "../../lib/site/paper-threads.ts";
import type { SiteTask } from "../../lib/site/site-task.ts";
import type { AskedWork } from "../../lib/site/work-threads.ts";

const SHAPED = new Uint8Array([1, 2, 3]);

/** Threads of a build in a cache, and what these were asked for; one that was never begun was asked for nothing. */
function threadsIn(
  cache: WorkCache,
  kind: SiteTask["kind"] = "paper",
  shaped: Uint8Array | null = SHAPED,
): { readonly threads: PaperThreads; readonly asked: unknown[]; readonly begun: () => number } {
  const asked: unknown[] = [];
  let count = 0;
  const ask = (name: string, given: unknown): AskedWork<never> => {
    asked.push([name, given]);
    const result = Promise.resolve((name === "words" ? shaped : null) as never);
    return { result, here: async () => result };
  };
  const threads = paperThreads({ kind }, cache, () => {
    count += 1;
    const nothing = async (): Promise<void> => Promise.resolve();
    return { ask, areThere: true, atRest: nothing, end: nothing };
  });
  return { threads, asked, begun: () => count };
}

function emptyCache(): WorkCache {
  const home = mkdtempSync(join(inject("scratch"), "paper-threads-"));
  return { ...workCacheOf(join(home, "content")), programPart: () => "of this test" };
}

test("a thread gets ready at once where the build before had words shaped in one, and begins with these", async () => {
  const cache = emptyCache();
  const first = threadsIn(cache);
  expect(first.begun()).toBe(0);
  expect(first.threads.of(8).areThere).toBe(true);
  await first.threads.keepWords();
  expect(first.asked).toEqual([
    ["ready", null],
    ["words", null],
  ]);
  const next = threadsIn(cache);
  expect(next.asked).toEqual([["ready", Buffer.from(SHAPED)]]);
  next.threads.of(300);
  expect(next.begun()).toBe(1);
});

test("none begins for few colours, for the screen, or for another program's words", async () => {
  const cache = emptyCache();
  const few = threadsIn(cache);
  expect(few.threads.of(7).areThere).toBe(false);
  await few.threads.keepWords();
  expect([few.begun(), threadsIn(cache).begun()]).toEqual([0, 0]);

  const { threads } = threadsIn(cache);
  threads.of(8);
  await threads.keepWords();
  const onScreen = threadsIn(cache, "screen");
  expect([onScreen.threads.of(300).areThere, onScreen.begun()]).toEqual([false, 0]);
  expect(threadsIn({ ...cache, programPart: () => "of another" }).begun()).toBe(0);
  expect(threadsIn(cache).begun()).toBe(1);
});

test("where no word is new, those before stay kept", async () => {
  const cache = emptyCache();
  for (const shaped of [SHAPED, null]) {
    const { threads } = threadsIn(cache, "paper", shaped);
    threads.of(8);
    await threads.keepWords();
  }
  expect(threadsIn(cache).asked).toEqual([["ready", Buffer.from(SHAPED)]]);
});
