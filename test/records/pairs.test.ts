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
      told: [
        `${LINE}:3:18 error Unexpected pairs \`bone-balck\` at pairs[0][1], expected \`the file name of a record in colours/\`; nearest \`bone-black\` records/missing-reference`,
      ],
    },
    {
      what: "the same under colours",
      files: workshop("colours: [lamp-black, bone-balck]"),
      told: [
        `${LINE}:3:27 error Unexpected colours \`bone-balck\` at pairs[0].colours[1], expected \`the file name of a record in colours/\`; nearest \`bone-black\` records/missing-reference`,
      ],
    },
    {
      what: "a pigment for a colour",
      files: {
        ...workshop("[lamp-black, bone-char]"),
        "pigments/bone-char.yaml": "name: Bone char\n",
        "colours/bone-black.md":
          "---\nname: Bone Black\npigments: [{ pigment: bone-char }, { pigment: bone-black }]\n---\n",
      },
      told: [
        `${LINE}:3:18 error Unexpected pairs \`bone-char\` at pairs[0][1], expected \`the file name of a record in colours/\` records/missing-reference`,
      ],
    },
    {
      what: "a colour beside itself",
      files: workshop("[lamp-black, lamp-black]"),
      told: [
        `${LINE}:3:18 error Unexpected colour named twice \`lamp-black\` at pairs[0][1], expected \`each colour once\` records/duplicate`,
      ],
    },
    {
      what: "one pair twice, in another order",
      files: workshop("[lamp-black, bone-black]", "colours: [bone-black, lamp-black]"),
      told: [
        `${LINE}:4:5 error Unexpected pair named twice \`bone-black, lamp-black\` at pairs[1], expected \`each pair once\` records/duplicate`,
      ],
    },
    {
      what: "a colour alone",
      files: workshop("[lamp-black]"),
      told: [
        `${LINE}:3:5 error Unexpected pairs \`["lamp-black"]\` at pairs[0], expected \`>= 2 entries\` records/schema`,
      ],
    },
    {
      what: "five",
      files: workshop("[a, b, c, d, e]"),
      told: [
        `${LINE}:3:5 error Unexpected pairs \`["a","b","c","d","e"]\` at pairs[0], expected \`<= 4 entries\` records/schema`,
      ],
    },
    {
      what: "an unknown key, with the nearest",
      files: workshop("{ colours: [lamp-black, bone-black], whi: One is bluer. }"),
      told: [
        `${LINE}:3:42 error Unexpected key \`whi\` at pairs[0].whi, expected \`colours, heading, why\`; nearest known key \`why\` records/unknown-key`,
      ],
    },
    {
      what: "a word that no page may say",
      files: workshop("{ colours: [lamp-black, bone-black], why: Both are non-toxic. }"),
      told: [
        `${LINE}:3:47 error Unexpected words \`non-toxic\` at pairs[0].why, expected \`what was found, in plain words\`; a dated review may be quoted under label.review.wording records/claim`,
      ],
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
});
