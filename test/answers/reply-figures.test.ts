import { expect, test } from "vitest";
import { replyMaterial } from "../../lib/answers/reply-material.ts";
import { isKnown } from "../../lib/quantities/figure.ts";
import { placesWithin } from "../../lib/words/number-text.ts";
import { worked } from "../support/demonstration.ts";

const { context } = worked();

/** b* at L* 50 of every let-down, of which its uncertainty bears no tenth and of which it does. */
const TINTS = context.sheets.flatMap((worded) =>
  worded.sheet.tints.flatMap(({ white, atL: { "50": at } }) =>
    at !== undefined && isKnown(at.b) && at.b.uncertainty !== undefined
      ? [{ worded, path: `tints.${white.slug}.atL.50.b`, ...at.b }]
      : [],
  ),
);

test("a reply gives b* with the tenth that the sheet's sentence gives, and its \u00b1 where that bears none", () => {
  const rough = TINTS.filter(({ uncertainty = 0 }) => placesWithin(uncertainty, 1) === 0);
  const fine = TINTS.filter(({ uncertainty = 0 }) => placesWithin(uncertainty, 1) === 1);
  expect(Math.min(rough.length, fine.length)).toBeGreaterThan(0);
  for (const [tints, ending] of [
    [rough, / \u00b1\d+\.\d \(/],
    [fine, /\d \(/],
  ] as const)
    for (const { worded, path, value } of tints) {
      const { material } = replyMaterial([worded], [path], "", "answers/x/index.html", context);
      const line = material.colours[0]?.lines[path] ?? "";
      expect(line).toContain(
        value
          .toFixed(1)
          .replace("-", "\u2212")
          .replace(/^\u2212(0\.0)$/, "$1"),
      );
      expect(line).toMatch(ending);
    }
});
