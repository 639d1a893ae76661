import fc from "fast-check";
import { expect, test } from "vitest";
import { headedPieces } from "../../lib/print/layout-tree.ts";
import { marksOf } from "../../lib/print/mark.ts";
import { plainTable, propertyTable } from "../../lib/print/paper-table.ts";
import type { PaperStyle } from "../../lib/print/paper-style.ts";
import { ENGLISH } from "../../lib/words/english.ts";

const STYLE = {
  widthMm: 82,
  sizePt: 8,
  paints: new Map(),
  words: ENGLISH.pages.sheetPaper,
} as const;

/** Lines of all cells, as they were set. */
function linesOf(rows: readonly (readonly string[])[]): string[] {
  const columns = (rows[0] ?? []).map((_, i) => ({ head: `Head ${i}` }));
  const table = plainTable(
    { caption: "", columns, rows: rows.map((row) => row.map((text) => ({ text }))) },
    STYLE,
  );
  return headedPieces([table]).flatMap(({ piece }) =>
    marksOf(piece.content).flatMap((mark) => (mark.kind === "text" ? [mark.text.trim()] : [])),
  );
}

/** Words of a to z, so that no hyphen parts them. */
const word = fc.string({
  unit: fc.constantFrom("a", "e", "i", "l", "m", "n", "r", "s", "t"),
  minLength: 1,
  maxLength: 9,
});
const cell = fc.array(word, { minLength: 1, maxLength: 12 }).map((words) => words.join(" "));

// basis: published; CSS 2.1, 17.5.2.2: no column is narrower than the least width of its content, where all have room.
test("no word of a table is broken where all columns hold their longest one", () => {
  fc.assert(
    fc.property(fc.array(fc.tuple(cell, cell, cell), { minLength: 1, maxLength: 4 }), (rows) => {
      const words = linesOf(rows).flatMap((line) => line.split(" "));
      for (const own of rows.flat().flatMap((text) => text.split(" ")))
        expect(words).toContain(own);
    }),
    { seed: 1, numRuns: 100 },
  );
});

test("a short column beside long ones stays whole", () => {
  const lines = linesOf([
    ["Cadmium Red", "itself", "excellent", "10 days", "opaque"],
    [
      "Parts by volume: Yellow Iron Oxide 22, Quinacridone Rose 3.1, Titanium White 1",
      "\u0394E00\u00a010.2 ±1.1",
      "changed (by Quinacridone Rose)",
      "4.3–7.7 days, an estimate from its tubes",
      "contrast ratio 1.00 ±0.01 at 75 µm",
    ],
  ]);
  for (const whole of ["itself", "excellent", "opaque"]) expect(lines).toContain(whole);
  expect(lines.some((line) => line.startsWith("\u0394E00\u00a010.2"))).toBe(true);
});

// basis: practice; a sheet on paper keeps every figure with how it is known, however little room there is.
test("figures run in keep name, value, unit, note and standing, and what is not stated", () => {
  const standing = { kind: "measured", word: "measured" } as const;
  const rows = [
    { name: "Origin", value: "Soot.", isProse: true, standing },
    { name: "Oil index", value: "13", unit: "g/100 g", note: "± 1", standing },
    { name: "Finish", value: "gloss", standing },
    {
      name: "Colour change",
      reason: "not exposed",
      standing: { kind: "not stated", word: "not stated" },
    },
  ] as const;
  const texts = (style: PaperStyle) =>
    headedPieces(propertyTable({ caption: "", rows: [...rows] }, STYLE.words, style))
      .flatMap(({ piece }) => marksOf(piece.content))
      .flatMap((mark) => (mark.kind === "text" ? [mark] : []));
  const text = (style: PaperStyle): string =>
    texts(style)
      .map((mark) => mark.text)
      .join("")
      .replaceAll("\u00a0", " ");
  expect(text({ ...STYLE, isSpare: true, widthMm: 180 })).toBe(
    "Origin: Soot. measured; Oil index: 13 g/100 g ± 1 measured; Finish: gloss measured.Not stated: Colour change.",
  );
  expect(text(STYLE)).not.toContain("Oil index: ");
  for (const style of [STYLE, { ...STYLE, isSpare: true }]) {
    const faces = texts(style).map(({ text: said, face }) => [said.trim(), face]);
    expect(faces).toContainEqual(["gloss", "sans bold"]);
    expect(faces).toContainEqual(["Soot.", "sans"]);
  }
});
