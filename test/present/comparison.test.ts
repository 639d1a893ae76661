import { HtmlValidate } from "html-validate";
import { describe, expect, test } from "vitest";
import { comparisonMarkup } from "../../lib/present/comparison-html.ts";
import { comparisonSummary, comparisonView } from "../../lib/present/comparison-model.ts";
import type { ShownCell, ShownColour } from "../../lib/present/comparison-types.ts";
import { COMPARE_PAGES, COMPARISON_RULINGS } from "../../lib/words/in-browser/compare.ts";
import type { ComparisonStatement } from "../../lib/collection/statements.ts";
import type { ComparedAmount } from "../../lib/collection/compared-colour.ts";
import { sideBySide } from "../../lib/collection/side-by-side.ts";
import { holdSentences } from "./statements-held.ts";

const WORDS = { compare: COMPARE_PAGES, rulings: COMPARISON_RULINGS, notStated: "not stated" };

function shown(
  slug: string,
  name: string,
  amounts: Readonly<Record<string, readonly [ComparedAmount, ShownCell]>>,
  white = "Titanium White",
): ShownColour {
  return {
    slug,
    name,
    address: `colours/${slug}/`,
    index: "PBk 6",
    masstone: { hex: "#111111" },
    whites: [{ slug: "titanium-white", name: white, tints: { 50: { hex: "#73777e" } } }],
    amounts: Object.fromEntries(Object.entries(amounts).map(([key, [amount]]) => [key, amount])),
    cells: Object.fromEntries(Object.entries(amounts).map(([key, [, cell]]) => [key, cell])),
  };
}
const number = (value: number | readonly [number, number]): ComparedAmount => ({
  kind: "number",
  value,
});
const place = (L: number, a: number, b: number): ComparedAmount => ({ kind: "colour", L, a, b });
const tint = (a: number, b: number): ComparedAmount => ({ kind: "tint", atL: { 50: { a, b } } });
const word = (value: string, standing: "measured" | "estimated" = "measured"): ComparedAmount => ({
  kind: "word",
  value,
  standing,
});

const MEASURED = { kind: "measured", word: "measured" } as const;
const LAMP = shown("lamp-black", "Lamp Black", {
  "white.titanium-white": [
    tint(-0.6, -2.7),
    { lead: "Leans blue.", atL: { 50: "a* \u22120.6, b* \u22122.7" }, standing: MEASURED },
  ],
  oilByMass: [number(99), { text: "99 g/100 g", standing: MEASURED, note: "High" }],
  finish: [word("matte"), { text: "Matte" }],
  sale: [
    { kind: "set", members: ["EU"] },
    { text: "Only in part", address: "colours/lamp-black/#handling" },
  ],
  dispersion: [word("mulled"), { text: "Mulled" }],
  masstone: [place(4, 0, 0), { text: "N 0.6/" }],
});
const SPINEL = shown("spinel-black", "Spinel Black", {
  "white.titanium-white": [
    tint(-1.3, -3.8),
    { lead: "Turns clearly blue.", atL: { 50: "a* \u22121.3, b* \u22123.8" } },
  ],
  oilByMass: [number(27), { text: "27 g/100 g" }],
  finish: [word("matte"), { text: "Matte" }],
  masstone: [place(4.4, 0, 0), { text: "N 0.6/" }],
});

describe("a comparison", () => {
  const view = comparisonView([LAMP, SPINEL], WORDS, "../");

  test("shows the colours alone, then in each white, with what is found", () => {
    expect(view.swatches).toEqual([
      {
        head: "Alone",
        isAlone: true,
        swatches: [
          { paint: { hex: "#111111" }, text: "N 0.6/" },
          { paint: { hex: "#111111" }, text: "N 0.6/" },
        ],
        saying:
          "Too close to call (colour difference \u0394E*ab 0.4; our readings tell two colours apart from 1.0 on).",
      },
      {
        head: "In Titanium White",
        isAlone: false,
        swatches: [
          { paint: { hex: "#73777e" }, text: "a* \u22120.6, b* \u22122.7" },
          { paint: { hex: "#73777e" }, text: "a* \u22121.3, b* \u22123.8" },
        ],
        saying:
          "Lamp Black is yellower and redder than Spinel Black (colour difference \u0394E*ab 1.3).",
      },
    ]);
  });

  test("does not call strength unknown where parts of white to a middle tone are told", () => {
    const letDown = (colour: ShownColour, parts: number): ShownColour => ({
      ...colour,
      amounts: { ...colour.amounts, "parts.titanium-white": number(parts) },
      cells: { ...colour.cells, "parts.titanium-white": { text: String(parts) } },
    });
    const told = comparisonView([letDown(LAMP, 36), letDown(SPINEL, 1.8)], WORDS, "../");
    expect(told.summary).toContain("strength");
    expect(told.unstated).toMatch(/^Not known of any of them: warning, opacity, /);
  });

  test("says why a swatch is missing, and never compares one with nothing", () => {
    const unread = Object.fromEntries(
      Object.entries(SPINEL).filter(([key]) => key !== "masstone"),
    ) as unknown as ShownColour;
    const { swatches } = comparisonView([LAMP, { ...unread, whites: [] }], WORDS, "../");
    expect(swatches.map(({ head, swatches: each }) => [head, each[1]])).toEqual([
      ["Alone", { text: "not read" }],
    ]);
  });

  test("calls nothing close that was not held against the other", () => {
    const chip = {
      ...SPINEL,
      amounts: { ...SPINEL.amounts, masstone: { kind: "apart" } as const },
    };
    const { summary, swatches } = comparisonView([LAMP, chip], WORDS, "../");
    expect(swatches.some(({ saying }) => saying?.startsWith("Not compared") === true)).toBe(true);
    expect(summary).not.toContain("masstone");
  });

  test("has what differs first, then what is too close to call; the rest is folded", () => {
    expect(
      view.parts.map(({ id, rows, folded }) => [id, rows.map(({ head }) => head), folded]),
    ).toEqual([
      ["differs", ["Oil"], undefined],
      ["same", ["Finish"], "Finish"],
      ["not-stated", ["Limits on sale", "Ground"], "Limits on sale, ground"],
      ["in-figures", ["In Titanium White", "Alone"], COMPARE_PAGES.foldedFigures],
    ]);
    expect(view.summary).toBe(
      "They differ in what they do in white and oil. Too close to call: masstone.",
    );
    expect(view.unstated).toMatch(
      /^Not known of any of them: warning, strength, opacity, .* and vehicle\.$/,
    );
  });

  test("says by how much, marks only what is news, and what is not stated has its dash and word", () => {
    const [oil] = view.parts[0]?.rows ?? [];
    expect(oil?.saying).toBe("Lamp Black takes 3.7 times the oil of Spinel Black.");
    expect(oil?.cells[0]).toEqual({ text: "99 g/100 g", note: "High", items: [] });
    expect(view.parts[2]?.rows[1]?.cells).toEqual([
      { text: "Mulled", items: [] },
      { standing: { kind: "not stated", word: "not stated" }, items: [] },
    ]);
    expect(view.parts[3]?.rows[0]).toMatchObject({
      unit: "at L*\u00a050",
      cells: [
        { lead: "Leans blue.", text: "a* \u22120.6, b* \u22122.7" },
        { text: "a* \u22121.3, b* \u22123.8" },
      ],
    });
  });

  test("links from where the page stands", () => {
    expect(view.columns).toEqual([
      { text: "Lamp Black", href: "../colours/lamp-black/", index: "PBk 6" },
      { text: "Spinel Black", href: "../colours/spinel-black/", index: "PBk 6" },
    ]);
    expect(comparisonView([LAMP, SPINEL], WORDS, "../../").parts[2]?.rows[0]?.cells[0]?.href).toBe(
      "../../colours/lamp-black/#handling",
    );
  });

  test("names what differs and what is too close to call, each once", () => {
    expect([
      comparisonSummary(["drying"], [], COMPARE_PAGES.summary),
      comparisonSummary([], ["finish", "oilByMass", "oilByVolume"], COMPARE_PAGES.summary),
      comparisonSummary(["white.a", "parts.b", "strength"], ["white.b"], COMPARE_PAGES.summary),
    ]).toEqual([
      "They differ in drying.",
      "Nothing that we know tells them apart. Too close to call: finish and oil.",
      "They differ in what they do in white and strength.",
    ]);
  });
});

describe("its tables", () => {
  const page = (colours: readonly ShownColour[]): string =>
    comparisonMarkup(comparisonView(colours, WORDS, "../"), {
      property: "Property",
      finding: "Finding",
    });
  const faults = async (body: string): Promise<string[]> => {
    const report = await new HtmlValidate({
      extends: ["html-validate:standard", "html-validate:a11y"],
      rules: { "no-inline-style": "error" },
    }).validateString(`<main><h1>Two</h1>${body}</main>`);
    return report.results.flatMap(({ messages }) =>
      messages.map(({ ruleId, message }) => `${ruleId} ${message}`),
    );
  };

  test("are valid HTML with a caption, and a head to each column and row", async () => {
    const html = page([LAMP, SPINEL]);
    expect(await faults(html)).toEqual([]);
    expect(html.match(/<caption class="hidden">/g)).toHaveLength(5);
    expect(html.match(/<th scope="col">/g)).toHaveLength(20);
    expect(html.match(/<th scope="row">/g)).toHaveLength(8);
    expect(html.match(/<td /g)).toHaveLength(24);
  });

  test("let no text of a record become markup", async () => {
    const hostile = `"><img src=x onerror='x'>&amp;\u0000`;
    const cell: ShownCell = {
      lead: hostile,
      text: hostile,
      note: hostile,
      items: [hostile],
      standing: { kind: "stated", word: hostile },
      address: `colours/"${hostile}`,
    };
    const one = shown("a", hostile, { finish: [word("a"), cell] }, hostile);
    const html = page([one, { ...one, slug: "b", amounts: { ...one.amounts, finish: word("b") } }]);
    expect(html).not.toContain("<img");
    expect(html).not.toMatch(/[^=]"[^ >]*onerror/);
    expect(await faults(html)).toEqual([]);
  });
});

/** Rulings that comparing returned, of every rule. */
function rulings(): ComparisonStatement[] {
  const pairs: readonly (readonly [string, ComparedAmount, ComparedAmount | undefined])[] = [
    ["masstone", place(10, 0, 0), place(4, 1, -2)],
    ["masstone", place(4, 0, 0), place(4.4, 0, 0)],
    ["white.w", tint(0, -4), tint(2, 0)],
    ["white.w", tint(0, 0), { kind: "tint", atL: {} }],
    ...(["strength", "parts.w", "oilByMass", "oilByVolume"] as const).flatMap(
      (key) =>
        [
          [key, number(99), number(27)],
          [key, number([20, 30]), number([40, 60])],
        ] as const,
    ),
    ["strength", number(100), number(104)],
    ["oilByMass", number([20, 30]), number([25, 60])],
    ["drying", number([2, 4]), number([6, 9])],
    ["drying", number([2, 2]), number([3, 3])],
    ["lightfastness", word("excellent"), word("excellent", "estimated")],
    ["finish", word("matte"), undefined],
    ["masstone", place(4, 0, 0), { kind: "apart" }],
    ["masstone", place(4, 0, 0), { kind: "apart", isFilm: true }],
  ];
  return pairs.flatMap(([key, one, other]) =>
    sideBySide([
      { slug: "a", name: "Lamp Black, milled", amounts: { [key]: one } },
      { slug: "b", name: "Prussian Blue", amounts: other === undefined ? {} : { [key]: other } },
    ]).rows.flatMap(({ ruling }) => ruling ?? []),
  );
}

holdSentences("sentences of a comparison", COMPARISON_RULINGS, rulings());
