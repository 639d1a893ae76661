/**
 * What is expected of a pigment's lightfastness by its Colour Index generic name,
 * where nothing was exposed and nothing is stated. It is worded as an expectation
 * ("expected excellent; not tested here"), never as a category under a standard.
 *
 * @source memory-permanence : which pigment stands where is recalled, and no list of a standard is quoted for it.
 */
import type { SourceKey } from "../sources/source.ts";
import type { LightfastnessCategory } from "./lightfastness.ts";

export type Expectation = "excellent" | "very good" | "fair" | "poor" | "fugitive";

/** The words, best first; `category` is only what the word would answer to, for comparing. */
export const EXPECTATIONS: readonly {
  readonly expectation: Expectation;
  readonly category: LightfastnessCategory;
}[] = [
  { expectation: "excellent", category: "I" },
  { expectation: "very good", category: "II" },
  { expectation: "fair", category: "III" },
  { expectation: "poor", category: "IV" },
  { expectation: "fugitive", category: "V" },
];

export interface ExpectedLightfastnessRow {
  /** Of the masstone. */
  readonly expectation: Expectation;
  /** Of a tint or a thin glaze, where it stands less well, and by which text. */
  readonly tint?: { readonly expectation: Expectation; readonly source: SourceKey };
  readonly kinds: string;
  readonly colourIndexNames: readonly string[];
  readonly source: SourceKey;
}

const RECALLED = "memory-permanence";
/** Where lists and painters' experience part, the trade's more careful word. */
const TRADE = "memory-permanence";

export const EXPECTED_LIGHTFASTNESS: readonly ExpectedLightfastnessRow[] = [
  {
    expectation: "excellent",
    kinds: "whites and extenders",
    source: RECALLED,
    colourIndexNames: [
      "PW 1",
      "PW 4",
      "PW 5",
      "PW 6",
      "PW 18",
      "PW 19",
      "PW 20",
      "PW 21",
      "PW 22",
      "PW 24",
      "PW 27",
    ],
  },
  {
    expectation: "excellent",
    kinds: "carbons and mineral blacks",
    source: RECALLED,
    colourIndexNames: [
      "PBk 6",
      "PBk 7",
      "PBk 8",
      "PBk 9",
      "PBk 10",
      "PBk 11",
      "PBk 14",
      "PBk 26",
      "PBk 27",
      "PBk 28",
    ],
  },
  {
    expectation: "excellent",
    kinds: "perylenes",
    source: RECALLED,
    colourIndexNames: ["PBk 31", "PBk 32", "PR 149", "PR 178", "PR 179"],
  },
  {
    expectation: "excellent",
    kinds: "earths and iron oxides",
    source: RECALLED,
    colourIndexNames: ["PR 101", "PR 102", "PY 42", "PY 43", "PBr 6", "PBr 7", "PG 23"],
  },
  {
    expectation: "excellent",
    kinds: "mixed metal oxides",
    source: RECALLED,
    colourIndexNames: [
      "PBr 24",
      "PY 53",
      "PB 28",
      "PB 35",
      "PB 36",
      "PG 19",
      "PG 26",
      "PG 50",
      "PV 14",
      "PG 17",
      "PG 18",
    ],
  },
  {
    expectation: "excellent",
    kinds: "ultramarines",
    source: RECALLED,
    colourIndexNames: ["PB 29", "PV 15"],
  },
  {
    expectation: "excellent",
    kinds: "manganese colours",
    source: RECALLED,
    colourIndexNames: ["PV 16", "PB 33"],
  },
  {
    expectation: "excellent",
    tint: { expectation: "fair", source: "kirby-saunders-2004" },
    kinds: "Prussian blue",
    source: RECALLED,
    colourIndexNames: ["PB 27"],
  },
  {
    expectation: "excellent",
    kinds: "cadmiums",
    source: RECALLED,
    colourIndexNames: ["PY 35", "PY 37", "PO 20", "PR 108"],
  },
  {
    expectation: "excellent",
    kinds: "phthalocyanines",
    source: RECALLED,
    colourIndexNames: ["PB 15", "PB 16", "PG 7", "PG 36"],
  },
  {
    expectation: "excellent",
    kinds: "quinacridones",
    source: RECALLED,
    colourIndexNames: ["PV 19", "PR 202", "PR 206", "PR 207", "PR 209"],
  },
  {
    expectation: "excellent",
    kinds: "fast organic pigments",
    source: RECALLED,
    colourIndexNames: ["PB 60", "PR 254", "PR 264", "PY 110", "PY 150", "PY 151", "PY 154"],
  },
  {
    expectation: "very good",
    kinds: "quinacridone magenta",
    source: RECALLED,
    colourIndexNames: ["PR 122"],
  },
  {
    expectation: "very good",
    tint: { expectation: "fair", source: TRADE },
    kinds: "dioxazine violet",
    source: RECALLED,
    colourIndexNames: ["PV 23"],
  },
  {
    expectation: "very good",
    kinds: "arylide yellows and naphthol reds",
    source: RECALLED,
    colourIndexNames: ["PY 3", "PY 74", "PY 97", "PR 112", "PR 170"],
  },
  {
    expectation: "very good",
    kinds: "cobalt yellow",
    source: RECALLED,
    colourIndexNames: ["PY 40"],
  },
  {
    expectation: "very good",
    kinds: "anthraquinone red",
    source: RECALLED,
    colourIndexNames: ["PR 177"],
  },
  {
    expectation: "fair",
    tint: { expectation: "poor", source: TRADE },
    kinds: "alizarin lake",
    source: RECALLED,
    colourIndexNames: ["PR 83"],
  },
  {
    expectation: "fair",
    tint: { expectation: "poor", source: TRADE },
    kinds: "madder lake",
    source: TRADE,
    colourIndexNames: ["NR 9"],
  },
  {
    expectation: "fair",
    kinds: "vermilion, which may blacken",
    source: TRADE,
    colourIndexNames: ["PR 106"],
  },
  { expectation: "fair", kinds: "indigo", source: TRADE, colourIndexNames: ["PB 66", "NB 1"] },
  { expectation: "poor", kinds: "gamboge", source: TRADE, colourIndexNames: ["NY 24"] },
  { expectation: "fugitive", kinds: "cochineal lake", source: TRADE, colourIndexNames: ["NR 4"] },
  {
    expectation: "fugitive",
    kinds: "rhodamine lakes",
    source: TRADE,
    colourIndexNames: ["PV 1", "PR 81"],
  },
];

/**
 * @param colourIndexName "PB 15:3" is looked up as it stands, then as "PB 15".
 * @returns undefined for a name that the table lacks: nothing is expected of it.
 */
export function expectedLightfastness(
  colourIndexName: string,
): ExpectedLightfastnessRow | undefined {
  const bare = colourIndexName.replace(/:\d+$/, "");
  return [colourIndexName, bare].flatMap((name) =>
    EXPECTED_LIGHTFASTNESS.filter((row) => row.colourIndexNames.includes(name)),
  )[0];
}

/** Expectation word that answers to a category. */
export function expectationOf(category: LightfastnessCategory): Expectation {
  const row = EXPECTATIONS.find((candidate) => candidate.category === category);
  if (row === undefined) throw new Error(`Unreachable: no expectation for ${category}`);
  return row.expectation;
}

/** Category that an expectation word would answer to, for comparing alone. */
export function categoryOf(expectation: Expectation): LightfastnessCategory {
  const row = EXPECTATIONS.find((candidate) => candidate.expectation === expectation);
  if (row === undefined) throw new Error(`Unreachable: no category for ${expectation}`);
  return row.category;
}
