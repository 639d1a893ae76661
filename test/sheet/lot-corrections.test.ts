import { describe, expect, test } from "vitest";
import { absorptionOf, type Bench } from "../../lib/lots/let-down-absorption.ts";
import type { LotReading } from "../../lib/lots/difference-uncertainty.ts";
import { benchOf } from "../../lib/lots/read-alike.ts";
import { masstoneReflectance } from "../../lib/optics/kubelka-munk.ts";
import { measuredReflectance } from "../../lib/optics/surface/surface.ts";
import { at } from "../../lib/quantities/at.ts";
import type { Lot, Records } from "../../lib/records/records.ts";
import { lotCorrections } from "../../lib/sheet/lots/lot-corrections.ts";
import { readSpectra } from "../../lib/sheet/lots/read-spectra.ts";
import { whiteColour } from "../../lib/sheet/tints/drawdown-set.ts";
import { RECORDS } from "../support/demonstration.ts";

/** Lots that the demonstration does not have: a quarter too strong, as if a quarter more of it had been let down. */
function tooStrong(slug: string): ReturnType<typeof lotCorrections> {
  const colour = RECORDS.colours.get(slug);
  const lot = [...RECORDS.lots.values()].find(({ record }) => record.colour === slug);
  if (colour === undefined || lot === undefined) throw new Error(`There is no lot of ${slug}`);
  const standard = readSpectra(colour.masstone, colour.tints);
  const own = standard.letDowns.find(
    ({ white, massRatio }) => white === "titanium-white" && massRatio === "1:10",
  );
  const white = whiteColour("titanium-white", RECORDS).masstone;
  if (own === undefined || white === undefined || standard.masstone === undefined)
    throw new Error(`${slug} was not let down 1:10 in titanium white`);
  const bench = benchOf(own.reading);
  const figures = {
    masstone: standard.masstone,
    letDowns: [{ ...own, reading: strengthened(own.reading, white, bench, 1.25) }],
  };
  return lotCorrections(
    colour,
    lot,
    figures,
    { ...standard, letDowns: [own] },
    new Map([["titanium-white", white]]),
    withoutOtherLots(lot),
  );
}

function withoutOtherLots(lot: Lot): Records {
  return { ...RECORDS, lots: new Map([[lot.slug, lot]]) };
}

/** What a let-down would read with more colour in it: its K/S above the white's times a factor. */
function strengthened(
  reading: LotReading,
  white: LotReading,
  bench: Bench,
  factor: number,
): LotReading {
  const ofWhite = absorptionOf(white, bench.surface);
  const values = absorptionOf(reading, bench.surface).map((theta, i) =>
    measuredReflectance(
      masstoneReflectance(at(ofWhite, i) + factor * (theta - at(ofWhite, i))),
      bench.geometry,
      bench.surface,
    ),
  );
  return { ...reading, spectrum: { grid: reading.spectrum.grid, values } };
}

describe("a lot that is a quarter too strong", () => {
  const corrections = tooStrong("ultramarine-blue");

  test("is brought back with an extender that was never let down, known by its films alone", () => {
    const extenders = corrections.filter(({ candidate: { kind } }) => kind === "extender");
    expect(extenders.length).toBeGreaterThan(0);
    for (const { gramsPer100g, predicted } of extenders) {
      // An extender that neither absorbs nor scatters thins 125 % to 100 % at a quarter of the lot.
      expect(gramsPer100g).toBeGreaterThan(15);
      expect(gramsPer100g).toBeLessThan(35);
      expect(predicted.letDownDeltaE00).toBeLessThan(1);
      expect(Math.abs(predicted.strengthPercent - 100)).toBeLessThan(4);
    }
  });

  test("what is known by films alone has the wider range", () => {
    for (const { candidate, range } of corrections)
      if (candidate.kind === "extender") {
        expect(candidate.spread).toBeGreaterThan(0.1);
        const [low, high] = range.strengthPercent;
        expect(high - low).toBeGreaterThan(4);
      }
  });
});
