import { describe, expect, test } from "vitest";
import { usesOf } from "../../lib/claims/uses.ts";
import { contentFolder } from "../support/content-folder.ts";
import { mullstone } from "../support/mullstone.ts";
import { answerOf, heldWorkshop, TWO_BLACKS } from "./two-blacks.ts";

const TEXTS = {
  ...TWO_BLACKS,
  "colours/both-blacks.md": '---\nname: Both Blacks\npigments:\n  - { pigment: lamp-black, parts: 1 }\n  - { pigment: bone-black, parts: 1 }\nmasstone: { lab: [24, 0, 1], illuminant: D65, observer: 10, geometry: "45/0" }\n---\nNotes.\n',
  "answers/leaner.md": answerOf(["figure: bone-black.oil.oilIndexGPer100g, below: 61", "figure: lamp-black.notations.masstone.lab.D65/10.L, below: 30"]),
};

describe("what rests on a record", () => {
  const workshop = heldWorkshop(TEXTS);
  const uses = (slug: string): unknown => {
    const found = usesOf(slug, { ...workshop, shown: new Map([["leaner", ["lamp-black.oil.oilIndexGPer100g"]]]), cards: ["bone-black", "both-blacks", "lamp-black"] });
    return "nearest" in found ? found : found.map(({ claims, ...rest }) => ({ ...rest, claims: claims.map(({ number }) => number) }));
  };

  test("a pigment and a reading of one name are told apart; of a mixture, as such", () => {
    expect(uses("lamp-black")).toEqual([
      { kind: "pigment", slug: "lamp-black", colours: ["lamp-black"], mixtures: ["both-blacks"], answers: ["leaner"], claims: [], cards: ["both-blacks", "lamp-black"] },
      { kind: "reading", slug: "lamp-black", colours: ["lamp-black"], mixtures: [], answers: ["leaner"], claims: [1], cards: ["lamp-black"] },
    ]);
  });

  test("a source by what cites it; a card where it states something that rests on it", () => {
    expect(uses("supplier-paper")).toEqual([{ kind: "source", slug: "supplier-paper", colours: ["bone-black"], mixtures: [], answers: ["leaner"], claims: [0], cards: [] }]);
  });

  test("a vehicle by every colour ground in it", () => {
    expect(uses("linseed")).toMatchObject([{ kind: "vehicle", colours: ["bone-black", "lamp-black"], mixtures: ["both-blacks"] }]);
  });

  test("what none has, by the nearest; what nothing rests on, by nothing", () => {
    expect(uses("lamp-blak")).toEqual({ nearest: "lamp-black" });
    expect(uses("kubelka-munk-1931")).toMatchObject([{ kind: "source", answers: [], claims: [] }]);
  });
});

test("check --uses lists them a line each and exits 0; 1 with the nearest for a slug that none has", async () => {
  const { home } = contentFolder(TEXTS);
  const [found, lost] = await Promise.all([mullstone(["check", "--uses", "bone-black"], { cwd: home }), mullstone(["check", "--uses", "bone-blak"], { cwd: home })]);
  expect([found.code, lost.code]).toEqual([0, 1]);
  expect(found.output.split("\n")).toEqual([
    "pigment bone-black: 1 colour, 1 mixture, 1 answer, 1 claim, 2 cards", "  colour bone-black", "  mixture both-blacks", "  answer leaner",
    "  claim content/answers/leaner.md:5:5 bone-black.oil.oilIndexGPer100g", "  shelf card of Bone Black", "  shelf card of Both Blacks",
    "reading bone-black: 1 colour, 0 mixtures, 0 answers, 0 claims, 1 card", "  colour bone-black", "  shelf card of Bone Black", "",
  ]);
  expect([lost.output, lost.complaints.split("\n").at(-2)]).toEqual(["", "Unexpected --uses `bone-blak`, expected `the slug of a pigment, vehicle, reading or source`; nearest `bone-black`"]);
});
