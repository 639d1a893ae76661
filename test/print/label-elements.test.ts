import { describe, expect, test } from "vitest";
import { labelElements } from "../../lib/print/label-elements.ts";
import { marksOf } from "../../lib/print/mark.ts";

const LOOK = { sideMm: 12, sizePt: 8, wordPt: 11 };
const PICTOGRAMS = ["GHS07", "GHS08", "GHS09"].map((code) => ({ code, name: code }));
const LEAD = {
  signalWord: "Danger",
  pictograms: PICTOGRAMS,
  statements: [
    { code: "H302", text: "Harmful if swallowed." },
    { code: "H360Df", text: "May damage the unborn child. Suspected of damaging fertility." },
    {
      code: "H373",
      text: "May cause damage to organs through prolonged or repeated exposure.",
    },
    { code: "H410", text: "Very toxic to aquatic life with long lasting effects." },
  ],
};

function laid(elements: typeof LEAD, widthMm: number) {
  const piece = labelElements(elements, { widthMm }, LOOK);
  const words = marksOf(piece.content).filter((mark) => mark.kind === "text");
  return {
    heightMm: piece.heightMm,
    leftMm: Math.min(...words.map(({ xMm }) => xMm)),
    bottomMm: Math.max(...words.map(({ yMm }) => yMm)),
  };
}

describe("the words of a label", () => {
  test("stand beside the pictograms where the paper is wide, and are no higher for it", () => {
    const { leftMm, heightMm } = laid(LEAD, 178);
    expect(leftMm).toBeGreaterThan(3 * LOOK.sideMm);
    expect(heightMm).toBeLessThan(25);
  });

  test("stand below the pictograms in a column that would break each of them in three", () => {
    expect(laid(LEAD, 83).leftMm).toBe(0);
  });

  test("stand beside the pictograms in a column where they are few", () => {
    expect(laid({ ...LEAD, statements: LEAD.statements.slice(0, 1) }, 83).leftMm).toBeGreaterThan(
      3 * LOOK.sideMm,
    );
  });

  test("keep within the height told, and whatever the width no other order is less high", () => {
    for (let widthMm = 30; widthMm <= 180; widthMm += 5) {
      const { heightMm, bottomMm } = laid(LEAD, widthMm);
      expect(bottomMm).toBeLessThanOrEqual(heightMm);
      const rows = Math.ceil(3 / Math.max(1, Math.floor((widthMm + 1) / (LOOK.sideMm + 1))));
      const alone = laid({ ...LEAD, pictograms: [] }, widthMm).heightMm;
      expect(heightMm).toBeLessThanOrEqual(alone + rows * (LOOK.sideMm + 1) + 1e-9);
    }
  });
});
