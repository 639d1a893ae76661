import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { nearestWord } from "../../lib/diagnostics/nearest-word.ts";

const WHITES = ["zinc-white", "titanium-white", "lead-white"];

describe("nearestWord", () => {
  test.each([
    ["titanium-whtie", "titanium-white", "two neighbours swapped"],
    ["titanum-white", "titanium-white", "a letter left out"],
    ["zinc-whitte", "zinc-white", "a letter added"],
    ["read-white", "lead-white", "a letter changed"],
    ["Lead-White", "lead-white", "letter case does not count"],
    ["lead_white", "lead-white", "another separator"],
  ])("%s -> %s (%s)", (word, meant) => {
    expect(nearestWord(word, WHITES)).toBe(meant);
  });

  // Damerau (1964), Commun. ACM 7(3), 171: one insertion, deletion, substitution or swap is one slip.
  // Three letters allow one slip and no more, six allow two.
  test.each([
    ["abc", "acb", true],
    ["abc", "cab", false],
    ["abc", "abd", true],
    ["abc", "ade", false],
    ["ab", "ba", false],
    ["abcdef", "badcef", true],
    ["abcdef", "badcfe", false],
    ["kitten", "sitting", false],
    ["ca", "abc", false],
  ])("%s is near to %s: %s", (word, known, near) => {
    expect(nearestWord(word, [known])).toBe(near ? known : undefined);
    expect(nearestWord(known, [word])).toBe(near ? word : undefined);
  });

  test("gives the nearest, and of equals the first", () => {
    expect(nearestWord("opqaues", ["opague", "opaque"])).toBe("opaque");
    expect(nearestWord("aaaaaa", ["aaaaab", "baaaaa"])).toBe("aaaaab");
  });

  test("of equals one of the same letters, else one with more or fewer, else the one that begins alike", () => {
    expect(nearestWord("H431", ["H331", "H413"])).toBe("H413");
    expect(nearestWord("H431", ["H341", "H413"])).toBe("H413");
    expect(nearestWord("PB 6x", ["PW 6x", "PBk 6x"])).toBe("PBk 6x");
  });

  test.each(["", "x", "ultramarine", "z".repeat(1_000_000)])(
    "gives nothing for a word like no other",
    (word) => {
      expect(nearestWord(word, WHITES)).toBeUndefined();
    },
  );

  test("gives nothing when nothing is known", () => {
    expect(nearestWord("factor", [])).toBeUndefined();
  });

  test("a known word is nearest to itself, whatever else is known", () => {
    const word = fc.string({ minLength: 1, maxLength: 20 });
    fc.assert(
      fc.property(word, fc.array(word), (known, others) => {
        expect(nearestWord(known, [...others, known])?.toLowerCase()).toBe(known.toLowerCase());
      }),
      { seed: 1, numRuns: 200 },
    );
  });
});
