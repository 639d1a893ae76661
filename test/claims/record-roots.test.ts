import { describe, expect, test } from "vitest";
import { figureIndex } from "../../lib/claims/figure-index.ts";
import { claimVerdict } from "../../lib/claims/claim-verdict.ts";
import { recordRoots, type RootKind } from "../../lib/claims/record-roots.ts";
import { isKnown } from "../../lib/quantities/figure.ts";
import { keptParsers } from "../../lib/records/kept-parsers.ts";
import { loadRecords } from "../../lib/records/load-records.ts";
import type { Records } from "../../lib/records/records.ts";
import { allSheets } from "../../lib/sheet/all-sheets.ts";
import type { Sheet } from "../../lib/sheet/sheet.ts";
import { figureEntries } from "../../lib/sheet/figure-entries.ts";
import { partOfDemonstration } from "../commands/demonstration-part.ts";
import { contentFolder, type RecordTexts } from "../support/content-folder.ts";

/** Each figure's value, as text. */
function values(sheets: readonly Sheet[]): ReadonlyMap<string, string> {
  return new Map(
    sheets.flatMap((sheet) =>
      figureEntries(sheet).map(
        ({ path, figure }) =>
          [
            `${sheet.slug}.${path}`,
            isKnown(figure) ? JSON.stringify(figure.value) : "not stated",
          ] as const,
      ),
    ),
  );
}

/** Each edit is of one file: the others are parsed once. */
const PARSERS = keptParsers();

/**
 * Colours of the demonstration of every kind: whites, single pigments in all completeness, a mixed one, one
 * milled again, one by eye alone. Its uncertainty is stated: the replicates of every reading tell one noise
 * together, by which each of them would move each fit a little.
 */
const TEXTS: RecordTexts = (() => {
  const part = partOfDemonstration([
    "alizarin-crimson",
    "bone-black",
    "green-earth",
    "lamp-black",
    "lamp-black-milled",
    "lead-white",
    "slate-grey",
    "titanium-white",
    "ultramarine-blue",
    "umber-ultramarine-black",
    "zinc-white",
  ]);
  const settings = part["workshop.yaml"] ?? "";
  return {
    ...part,
    "workshop.yaml": settings.replace(/^readings:$/m, "readings:\n  uncertainty: 0.0005"),
  };
})();

/** These colours with one of their files edited. */
function edited(file: string, edit: (text: string) => string): Records {
  const text = TEXTS[file] ?? "";
  expect(edit(text)).not.toBe(text);
  const { content, home } = contentFolder({ ...TEXTS, [file]: edit(text) });
  const { records, diagnostics } = loadRecords(content, home, undefined, PARSERS);
  if (records === undefined)
    throw new Error(JSON.stringify(diagnostics.filter(({ severity }) => severity === "error")));
  return records;
}

const RECORDS = edited("workshop.yaml", (text) => `${text}\n`);
const SHEETS = allSheets(RECORDS);
const INDEX = figureIndex(SHEETS);
const rootsOf = recordRoots(INDEX, RECORDS);
const TODAY = values(SHEETS);

/** A reading somewhat darker, and more so toward the red: every figure worked out of it moves. */
const darker = (text: string): string =>
  text
    .split("\n")
    .map((line, i) =>
      /^\d/.test(line)
        ? line
            .split(",")
            .map((cell, j) => (j === 0 ? cell : (Number(cell) * (0.97 - 0.0002 * i)).toFixed(6)))
            .join(",")
        : line,
    )
    .join("\n");
const larger =
  (key: string) =>
  (text: string): string =>
    text.replace(
      new RegExp(`(${key}: (?:\\{ value: )?)([\\d.]+)`),
      (_, before: string, value: string) => `${before}${(Number(value) * 1.04).toPrecision(4)}`,
    );

function restingOn(kind: RootKind, slug: string): Set<string> {
  return new Set(
    [...TODAY.keys()].filter((path) =>
      rootsOf(path).some((root) => root.kind === kind && root.slug === slug),
    ),
  );
}

function changed(records: Records): string[] {
  const now = values(allSheets(records));
  return [...TODAY.keys()].filter((path) => now.get(path) !== TODAY.get(path));
}

describe("no figure moves but those that are said to rest on the record", () => {
  test.each<[RootKind, string, string, (text: string) => string]>([
    ["reading", "titanium-white", "readings/titanium-white.csv", darker],
    ["reading", "lamp-black", "readings/lamp-black.csv", darker],
    ["pigment", "lamp-black", "pigments/lamp-black.yaml", larger("densityGPerCm3")],
    [
      "pigment",
      "titanium-dioxide",
      "pigments/titanium-dioxide.yaml",
      larger("oilAbsorptionGPer100g"),
    ],
    [
      "vehicle",
      "linseed-cold-pressed",
      "vehicles/linseed-cold-pressed.yaml",
      larger("densityGPerCm3"),
    ],
    ["colour", "bone-black", "colours/bone-black.md", larger("oilIndexGPer100g")],
  ])("%s %s", (kind, slug, file, edit) => {
    const moved = changed(edited(file, edit));
    const said = restingOn(kind, slug);
    expect(moved.length).toBeGreaterThan(10);
    // A notation has as many places as its ± bears, and every paint of the workshop tells of that.
    const figures = moved.filter((path) => !path.endsWith(".munsell.text"));
    expect(figures.filter((path) => !said.has(path))).toEqual([]);
  });
});

describe("changing one reading turns exactly the claims that rest on it", () => {
  // What is chosen from a list, or so near its end that a darker film leaves it there, need not move.
  const STAYS = /\.optics\.(?:fit\.k[12]|contrastRatio|tintingStrength(?:ByVolume)?)$|\.atL\./;
  /** Every number of the range, pinned to what it is today. */
  const claims = SHEETS.flatMap((sheet) =>
    figureEntries(sheet).flatMap(({ path, figure }) =>
      isKnown(figure) && typeof figure.value === "number"
        ? [
            {
              figure: `${sheet.slug}.${path}`,
              between: [figure.value, figure.value] as [number, number],
            },
          ]
        : [],
    ),
  );

  test.each([
    ["bone-black", "readings/bone-black.csv"],
    ["alizarin-crimson", "readings/alizarin-crimson.csv"],
  ])("%s", (slug, file) => {
    const index = figureIndex(allSheets(edited(file, darker)));
    const turned = claims
      .filter((claim) => claimVerdict(claim, index).faults.length > 0)
      .map(({ figure }) => figure);
    const moved = new Set(turned);
    const resting = restingOn("reading", slug);
    const expected = claims.map(({ figure }) => figure).filter((figure) => resting.has(figure));
    expect(claims.filter((claim) => claimVerdict(claim, INDEX).faults.length > 0)).toEqual([]);
    expect(expected.length).toBeGreaterThan(50);
    expect(turned.filter((figure) => !resting.has(figure))).toEqual([]);
    expect(expected.filter((figure) => !moved.has(figure) && !STAYS.test(figure))).toEqual([]);
  });
});
