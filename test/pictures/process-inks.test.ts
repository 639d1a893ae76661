import { describe, expect, test } from "vitest";
import { deltaE00 } from "../../lib/colorimetry/difference.ts";
import type { Lab } from "../../lib/colorimetry/viewing.ts";
import {
  inkProfile,
  processInks,
  SEEN_DELTA_E00,
  shownBy,
} from "../../lib/pictures/process-inks.ts";

interface Patch {
  /** Percent of each ink. */
  readonly inks: readonly number[];
  /** As read, of light from the paper's white. */
  readonly lab: Lab;
}

/** A tag of an ICC profile as text. @source ICC.1:2010, 7.3 (tag table) and 10.22 (textType). */
function tagText(icc: Uint8Array, name: string): string {
  const bytes = Buffer.from(icc);
  const count = bytes.readUInt32BE(128);
  for (let i = 0; i < count; i++) {
    const entry = 132 + 12 * i;
    if (bytes.subarray(entry, entry + 4).toString("latin1") !== name) continue;
    const [from, size] = [bytes.readUInt32BE(entry + 4), bytes.readUInt32BE(entry + 8)];
    return bytes.subarray(from + 8, from + size).toString("latin1");
  }
  return "";
}

/** CIE 15:2018, equations 8.3 to 8.8, by hand: the tests' own L*a*b*. */
function labOf([X, Y, Z]: readonly number[], [Xn, Yn, Zn]: readonly number[]): Lab {
  const f = (share: number): number =>
    share > 216 / 24_389 ? Math.cbrt(share) : ((24_389 / 27) * share + 16) / 116;
  const [x, y, z] = [
    f((X ?? NaN) / (Xn ?? NaN)),
    f((Y ?? NaN) / (Yn ?? NaN)),
    f((Z ?? NaN) / (Zn ?? NaN)),
  ];
  return { L: 116 * y - 16, a: 500 * (x - y), b: 200 * (y - z) };
}

/** What the instrument read of the printed target: the profile carries it. */
function readTarget(icc: Uint8Array): Patch[] {
  const target = tagText(icc, "targ");
  const between = (start: string, end: string): string =>
    target.slice(target.indexOf(start) + start.length, target.indexOf(end)).trim();
  const columns = between("BEGIN_DATA_FORMAT", "END_DATA_FORMAT").split(/\s+/);
  const rows = target
    .slice(target.indexOf("BEGIN_DATA\n") + 11, target.indexOf("END_DATA\n"))
    .trim()
    .split("\n")
    .map((line) => line.trim().split(/\s+/))
    .filter(
      (row) =>
        row.length === columns.length &&
        row.slice(1).every((cell) => cell !== "" && Number.isFinite(Number(cell))),
    );
  const cells = (row: readonly string[], ...names: readonly string[]): number[] =>
    names.map((name) => Number(row[columns.indexOf(name)]));
  const inksOf = (row: readonly string[]): number[] =>
    cells(row, "CMYK_C", "CMYK_M", "CMYK_Y", "CMYK_K");
  const paper = rows.find((row) => inksOf(row).every((share) => share === 0)) ?? [];
  const white = cells(paper, "XYZ_X", "XYZ_Y", "XYZ_Z");
  return rows.map((row) => ({
    inks: inksOf(row),
    lab: labOf(cells(row, "XYZ_X", "XYZ_Y", "XYZ_Z"), white),
  }));
}

test("the profile is what is said of it: one proof, in the public domain, and no standard's condition", async () => {
  const icc = await inkProfile();
  expect(tagText(icc, "desc")).toContain("Chemical proof");
  expect(tagText(icc, "cprt")).toContain("Released into the public domain");
  expect(tagText(icc, "targ")).toContain("Jul 03");
});

test("inks show what an instrument read of them: every tenth patch of the target that the profile was made of", async () => {
  const target = readTarget(await inkProfile());
  expect(target.length).toBeGreaterThan(2000);
  const some = target.filter((_, i) => i % 10 === 0);
  const shown = await shownBy(
    Uint8Array.from(some.flatMap(({ inks }) => inks.map((share) => Math.round(share * 2.55)))),
  );
  const misses = some
    .map(({ lab }, i) => deltaE00(lab, shown[i] ?? { L: NaN, a: NaN, b: NaN }))
    .toSorted((one, other) => one - other);
  // A profile smooths what was read; a channel or a white gone wrong is off by tens.
  expect(misses[misses.length >> 1]).toBeLessThan(1.2);
  expect(misses[Math.floor(misses.length * 0.95)]).toBeLessThan(3);
});

describe("colours in inks", () => {
  test("what was read of printed inks is met again, whichever inks show it", async () => {
    const target = readTarget(await inkProfile());
    // Shares of a middle size: those at an end may lie beyond what the smoothed profile holds.
    const inside = target.filter(
      ({ inks: [c = 0, m = 0, y = 0, k = 0] }) =>
        [c, m, y].every((share) => share >= 10 && share <= 70) && k <= 20,
    );
    expect(inside.length).toBeGreaterThan(20);
    const found = await processInks(inside.map(({ lab }) => lab));
    for (const [i, { deltaE00: off, shown }] of found.entries()) {
      expect(off, String(i)).toBeLessThan(0.8);
      expect(deltaE00(shown, inside[i]?.lab ?? shown)).toBeCloseTo(off, 6);
    }
  });

  test("white is bare paper, and what no ink shows is said by how much", async () => {
    const [white, black, blue, green] = await processInks([
      { L: 100, a: 0, b: 0 },
      { L: 4, a: 0, b: 0 },
      { L: 20, a: 40, b: -70 },
      { L: 60, a: -90, b: 40 },
    ]);
    expect(white?.cmyk).toEqual([0, 0, 0, 0]);
    expect(white?.deltaE00).toBeLessThan(0.1);
    for (const ink of [black, blue, green]) expect(ink?.deltaE00).toBeGreaterThan(SEEN_DELTA_E00);
  });

  test("shares lie between none and all", async () => {
    const labs = Array.from({ length: 60 }, (_, i) => ({
      L: (i * 37) % 101,
      a: ((i * 53) % 240) - 120,
      b: ((i * 71) % 240) - 120,
    }));
    const found = await processInks(labs);
    expect(found).toHaveLength(labs.length);
    for (const { cmyk, deltaE00: off } of found) {
      for (const share of cmyk) expect(share >= 0 && share <= 1).toBe(true);
      expect(Number.isFinite(off)).toBe(true);
    }
  });
});
