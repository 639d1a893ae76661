import { describe, expect, test } from "vitest";
import { chosenPairs } from "../../lib/records/chosen-pairs.ts";
import { checkTold } from "./told.ts";

const LINE = "content/workshop.yaml";
const BONE = {
  "pigments/bone-black.yaml": "name: Bone black\n",
  "colours/bone-black.md": "---\nname: Bone Black\npigments: [{ pigment: bone-black }]\n---\n",
};
const workshop = (...pairs: string[]) => ({
  ...BONE,
  "workshop.yaml": `name: Test Workshop\npairs:\n${pairs.map((pair) => `  - ${pair}\n`).join("")}`,
});

describe("pairs of workshop.yaml", () => {
  checkTold([
    {
      what: "as a list, or with a heading and why",
      files: workshop("[bone-black, lamp-black]"),
      told: [],
    },
    {
      what: "with a heading and why",
      files: workshop(
        "{ colours: [lamp-black, bone-black], heading: Two carbons, why: One is bluer. }",
      ),
      told: [],
    },
    {
      what: "a colour that is not there, with the nearest",
      files: workshop("[lamp-black, bone-balck]"),
      told: `${LINE}:3:18 error There is no bone-balck in colours/; nearest: bone-black records/missing-reference`,
    },
    {
      what: "the same under colours",
      files: workshop("colours: [lamp-black, bone-balck]"),
      told: `${LINE}:3:27 error There is no bone-balck in colours/; nearest: bone-black records/missing-reference`,
    },
    {
      what: "a pigment for a colour",
      files: {
        ...workshop("[lamp-black, bone-char]"),
        "pigments/bone-char.yaml": "name: Bone char\n",
        "colours/bone-black.md":
          "---\nname: Bone Black\npigments: [{ pigment: bone-char }, { pigment: bone-black }]\n---\n",
      },
      told: `${LINE}:3:18 error There is no bone-char in colours/; there is one in pigments/ records/missing-reference`,
    },
    {
      what: "a colour beside itself",
      files: workshop("[lamp-black, lamp-black]"),
      told: `${LINE}:3:18 error The colour lamp-black stands twice in one pair records/duplicate`,
    },
    {
      what: "a leading colour beside itself",
      files: {
        ...BONE,
        "workshop.yaml": "name: Test Workshop\nleadingPair: [bone-black, bone-black]\n",
      },
      told: `${LINE}:2:27 error The colour bone-black stands twice in one pair records/duplicate`,
    },
    {
      what: "one pair twice, in another order",
      files: workshop("[lamp-black, bone-black]", "colours: [bone-black, lamp-black]"),
      told: `${LINE}:4:5 error The pair bone-black, lamp-black is listed twice records/duplicate`,
    },
    {
      what: "a colour alone",
      files: workshop("[lamp-black]"),
      told: `${LINE}:3:5 error pairs[0] is too short: it takes at least 2 entries records/schema`,
    },
    {
      what: "five",
      files: workshop("[a, b, c, d, e]"),
      told: `${LINE}:3:5 error pairs[0] is too long: it takes at most 4 entries records/schema`,
    },
    {
      what: "an unknown key, with the nearest",
      files: workshop("{ colours: [lamp-black, bone-black], whi: One is bluer. }"),
      told: `${LINE}:3:42 error There is no key whi under pairs[0]; nearest: why records/unknown-key`,
    },
    {
      what: "a word that no page may say",
      files: workshop("{ colours: [lamp-black, bone-black], why: Both are non-toxic. }"),
      told: `${LINE}:3:47 error A sheet never says "non-toxic" on its own authority: say what was found, in plain words; a dated review may be quoted under label.review.wording records/claim`,
    },
  ]);

  test("are one kind of thing, however written, in their order", () => {
    expect(
      chosenPairs({
        name: "W",
        pairs: [["a", "b"], { colours: ["c", "d", "e"], why: "Asked for." }],
      }),
    ).toEqual([{ colours: ["a", "b"] }, { colours: ["c", "d", "e"], why: "Asked for." }]);
    expect(chosenPairs({ name: "W" })).toEqual([]);
  });

  test("begin with the leading one, with its heading where it is listed, in whatever order", () => {
    const pairs = [["a", "b"], { colours: ["c", "d"], why: "Asked for." }, ["c", "d", "e"]];
    expect(chosenPairs({ name: "W", leadingPair: ["d", "c"], pairs })).toEqual([
      { colours: ["c", "d"], why: "Asked for." },
      { colours: ["a", "b"] },
      { colours: ["c", "d", "e"] },
    ]);
    expect(chosenPairs({ name: "W", leadingPair: ["a", "c"], pairs })).toEqual([
      { colours: ["a", "c"] },
      ...chosenPairs({ name: "W", pairs }),
    ]);
  });
});
