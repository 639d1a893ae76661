import { expect, test } from "vitest";
import { contentHash } from "../../lib/kept/content-hash.ts";
import type { KeptSteps } from "../../lib/kept/kept-steps.ts";
import { dataFilesOf } from "../../lib/site/data-files.ts";

/** Steps of which nothing was kept; or of which one was. */
function steps(kept?: unknown): KeptSteps {
  return {
    made: <V>(_: unknown, made: () => V): V => (kept === undefined ? made() : (kept as V)),
  } as unknown as KeptSteps;
}

const TEXTS = { "catalogue.csv": "ochre;34\n", "catalogue.json": '{"ochre":34}\n' };

function counted() {
  const count = { made: 0 };
  const made = () => {
    count.made++;
    return Object.entries(TEXTS).map(([path, text]) => ({ path, text }));
  };
  return { made, count };
}

test("data that was made to be hashed is not made again to be written", () => {
  const { made, count } = counted();
  const files = dataFilesOf(steps(), { name: "files" }, made);
  expect(Object.fromEntries(files.map(({ path, text }) => [path, text]))).toEqual(TEXTS);
  expect(files.map(({ hash }) => hash)).toEqual(
    Object.values(TEXTS).map((text) => contentHash([text]).toString("base64url")),
  );
  expect(count.made).toBe(1);
});

test("data whose hash was kept is made when its text is asked for, all of one step at once", () => {
  const { made, count } = counted();
  const kept = Object.keys(TEXTS).map((path) => ({ path, hash: `of ${path}` }));
  const files = dataFilesOf(steps(kept), { name: "files" }, made);
  expect(files.map(({ hash }) => hash)).toEqual(kept.map(({ hash }) => hash));
  expect(count.made).toBe(0);
  expect(Object.fromEntries(files.map(({ path, text }) => [path, text]))).toEqual(TEXTS);
  expect(count.made).toBe(1);
});
