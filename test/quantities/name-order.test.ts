import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fileOrder, nameOrder, slugOrder } from "../../lib/quantities/name-order.ts";

/** Rows in the order that is right; each is given the other way round. */
const ROWS = [
  {
    basis: "published",
    source: "UTS 35, part 5, collation settings: kn, for example A-21 before A-123",
    language: "en",
    names: ["A-21", "A-123"],
  },
  {
    basis: "practice",
    source: "a shop's list: what has no figure first, then by the figure's size",
    language: "en",
    names: ["Ochre", "Ochre 2", "Ochre 10", "Ochre 21", "Ochre light"],
  },
  {
    basis: "memory",
    source: "DIN 5007-1, sorting of words: an umlaut as its plain letter",
    language: "de",
    names: ["Ägyptisch Blau 2", "Ägyptisch Blau 10", "Ahornbraun", "Azurit"],
  },
  {
    basis: "memory",
    source: "the Spanish alphabet: ñ is a letter of its own after n",
    language: "es",
    names: ["Nácar", "Nube", "Ñandú", "Ocre"],
  },
  {
    basis: "memory",
    source: "French dictionaries: an accent as its plain letter",
    language: "fr",
    names: ["Écarlate", "Ecru", "Émeraude", "Orpiment"],
  },
  {
    basis: "memory",
    source:
      "English dictionaries: a foreign tilde as its plain letter, capitals beside small letters",
    language: "en",
    names: ["lamp black", "Lamp Black, milled", "Ñandu", "Nickel yellow"],
  },
] as const;

describe("names for a reader", () => {
  test.each(ROWS)("$names in $language ($basis: $source)", ({ language, names }) => {
    expect(names.toReversed().sort(nameOrder(language))).toEqual(names);
  });

  test("are in one order only: none equals another", () => {
    fc.assert(
      fc.property(fc.string(), fc.string(), (one, other) => {
        const [there, back] = [slugOrder(one, other), slugOrder(other, one)];
        expect(Math.sign(there) + Math.sign(back)).toBe(0);
        expect(there === 0).toBe(one === other);
      }),
      { seed: 52 },
    );
    expect([slugOrder("ochre-02", "ochre-2"), slugOrder("ochre-2", "ochre-2")]).toEqual([-1, 0]);
  });
});

test("files are in the order of their names without the ending", () => {
  const files = ["ochre.md", "ochre-2.md", "ochre-10.md", "ochre-light.md", "umber.md"];
  expect(files.toReversed().sort(fileOrder)).toEqual(files);
});
