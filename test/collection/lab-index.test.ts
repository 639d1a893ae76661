import { expect, test } from "vitest";
import { deltaE00 } from "../../lib/colorimetry/difference.ts";
import { nearestColours, type LabEntry } from "../../lib/collection/lab-index.ts";

/** A small generator of the textbooks (Park & Miller 1988), so that the crowd is the same each time. */
function* crowd(count: number): Generator<LabEntry> {
  let state = 20261125;
  const next = (): number => (state = (state * 16807) % 2147483647) / 2147483647;
  for (let i = 0; i < count; i++)
    yield {
      slug: `c${String(i).padStart(3, "0")}`,
      lab: { L: 100 * next(), a: 60 * next() - 30, b: 60 * next() - 30 },
    };
}

test("finds the neighbours that a search of the whole range finds", () => {
  const entries = [...crowd(400)];
  const found = nearestColours(entries, 3);
  for (const entry of entries.slice(0, 60)) {
    const all = entries
      .filter(({ slug }) => slug !== entry.slug)
      .map(({ slug, lab }) => ({ slug, deltaE00: deltaE00(entry.lab, lab) }))
      .sort((a, b) => a.deltaE00 - b.deltaE00);
    expect(found.get(entry.slug)?.[0]).toEqual(all[0]);
  }
});

test("a colour alone has no neighbour", () => {
  expect(nearestColours([{ slug: "only", lab: { L: 50, a: 0, b: 0 } }], 3).get("only")).toEqual([]);
});
