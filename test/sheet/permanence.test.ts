import { describe, expect, test } from "vitest";
import { lightfastnessWord } from "../../lib/present/lightfastness-word.ts";
import { sheetTexts, type SheetTexts } from "../../lib/present/sheet-texts.ts";
import { statementText } from "../../lib/present/statement-text.ts";
import { ENGLISH } from "../../lib/words/english.ts";
import { SMALLEST_WORKSHOP, type RecordTexts } from "../support/content-folder.ts";
import { soundSheet } from "../support/sound-records.ts";

const COLOUR = SMALLEST_WORKSHOP["colours/lamp-black.md"];
const TRIAL_PAPER = "citation: A made-up paper on a made-up trial.\n";

/** The smallest workshop's colour with more keys, or other pigments, as its sheet tells it. */
function told(more: string, files: RecordTexts = {}): SheetTexts {
  const sheet = soundSheet({
    ...SMALLEST_WORKSHOP,
    "pigments/lamp-black.yaml": "name: Lamp black\ncolourIndexName: PBk 6\n",
    "sources/trial-paper.yaml": TRIAL_PAPER,
    "colours/lamp-black.md": COLOUR.replace("\n---\nNotes", `\n${more}\n---\nNotes`),
    ...files,
  });
  return sheetTexts(sheet, ENGLISH);
}

const evidence = ({ plain }: SheetTexts, figure: string): unknown =>
  plain.evidence.find((entry) => entry["figure"] === figure);

describe("an exposure that its record calls stated", () => {
  const STATED =
    "{ value: 5.2, uncertainty: 0.7, standing: stated, source: trial-paper, method: ISO 105-A04 }";
  const sheet = told(
    `exposures: [{ deltaEab: ${STATED}, form: tint, standard: none, exposure: a window }]`,
  );

  test.each(["permanence.forms.tint.deltaEab", "permanence.deltaEab"])(
    "keeps source, uncertainty and standing in sheet.json at %s",
    (figure) =>
      expect(evidence(sheet, figure)).toMatchObject({
        value: 5.2,
        standing: "stated",
        restsOn: "stated",
        source: "trial-paper",
        uncertainty: 0.7,
        method: expect.stringContaining("ISO 105-A04") as string,
      }),
  );
  test("gives a category that rests on that word, and is nobody's own exposure", () => {
    expect(sheet.sheet.permanence).toMatchObject({ basis: "stated", standing: "stated" });
    expect(evidence(sheet, "permanence.category")).toMatchObject({
      value: "II",
      restsOn: "stated",
    });
    const sentences = [sheet.sheet.permanence.label, ...sheet.sheet.permanence.reasons].map(
      (statement) => statementText(statement, ENGLISH),
    );
    expect(sentences[0]).toBe("Lightfastness II as stated by others; not tested here.");
    expect(sentences[1]).toBe(
      "As stated by others, the tint changed by \u0394E*ab 5.2, as in category II (up to 8) (none, a window); not exposed here.",
    );
    expect(sentences.join(" ")).not.toMatch(/exposed here[:,] (its|the)|own exposure/i);
  });
  test("is the workshop's own where the record names neither source nor standing", () => {
    const own = told(
      "exposures: [{ deltaEab: 5.2, form: tint, standard: none, exposure: a window }]",
    );
    expect(own.sheet.permanence).toMatchObject({ basis: "own exposure", standing: "measured" });
    expect(evidence(own, "permanence.deltaEab")).not.toHaveProperty("source");
  });
});

describe("a category that is stated keeps its source", () => {
  test("of the colour", () => {
    const sheet = told("lightfastness: { category: II, form: tint, source: trial-paper }");
    for (const figure of ["permanence.category", "permanence.forms.tint.category"])
      expect(evidence(sheet, figure)).toMatchObject({
        value: "II",
        standing: "stated",
        source: "trial-paper",
      });
  });
  test("of its pigment, and the blue wool reference beside it", () => {
    const sheet = told("", {
      "pigments/lamp-black.yaml":
        "name: Lamp black\ncolourIndexName: PBk 6\nlightfastness: { category: I, blueWool: 8, source: trial-paper }\n",
    });
    for (const figure of ["permanence.category", "permanence.blueWool"])
      expect(evidence(sheet, figure)).toMatchObject({ standing: "stated", source: "trial-paper" });
  });
});

describe("a mixture is as good as its weakest (common practice)", () => {
  const MIXED = COLOUR.replace(
    "  - { pigment: lamp-black }",
    "  - { pigment: titanium, parts: 1 }\n  - { pigment: lake, parts: 1 }",
  );
  const mixed = (lake: string): SheetTexts =>
    told("", {
      "pigments/lamp-black.yaml": "name: Lamp black\n",
      "pigments/titanium.yaml": "name: Titanium dioxide\ncolourIndexName: PW 6\n",
      "pigments/lake.yaml": `name: Rose lake\n${lake}`,
      "colours/lamp-black.md": MIXED,
    });

  test("titanium with a lake that nobody knows, 1:1, is not stated anywhere", () => {
    const { sheet, plain } = mixed("");
    expect(lightfastnessWord(sheet.permanence, ENGLISH)).toBeUndefined();
    expect(sheet.permanence.standing).toBe("not stated");
    expect(plain.notStated.map(({ figure }) => figure)).toEqual(
      expect.arrayContaining(["permanence.category", "permanence.expectation"]),
    );
    expect(JSON.stringify(plain.values["permanence"])).not.toMatch(/"excellent"/);
    expect(sheet.permanence.reasons.map((reason) => statementText(reason, ENGLISH))).toContain(
      "We do not know how Rose lake stands up to light, and a mixture lasts only as long as its weakest pigment: so no lightfastness is given.",
    );
  });
  test("with a lake that is known, it is the lake's in its tints", () => {
    const { sheet } = mixed("colourIndexName: PR 83:1\n");
    expect(lightfastnessWord(sheet.permanence, ENGLISH)?.word).toMatch(/poor/i);
  });
});

/** Kirby & Saunders (2004, abstract, read): Prussian blue with white changed more in light than alone. */
describe("a form that nobody vouched for counts where it is expected to be weaker", () => {
  const prussian = (more: string): SheetTexts =>
    told(more, { "pigments/lamp-black.yaml": "name: Prussian blue\ncolourIndexName: PB 27\n" });
  const isWeaker = ({ sheet }: SheetTexts): boolean =>
    sheet.permanence.reasons.some(({ rule }) => rule === "weaker-in-tints");
  const exposed = (form: string): string =>
    `exposures: [{ deltaEab: 1, form: ${form}, standard: none, exposure: a window }]`;

  test("a word for the masstone alone is no category of the colour", () => {
    const sheet = prussian("lightfastness: { category: I, form: masstone }");
    expect(sheet.sheet.permanence).toMatchObject({ basis: "expected", standing: "estimated" });
    expect(lightfastnessWord(sheet.sheet.permanence, ENGLISH)?.word).toMatch(/fair/i);
    expect(isWeaker(sheet)).toBe(true);
  });
  test("a word for the tint, or for no form, is", () => {
    for (const form of ["", ", form: tint"])
      expect(prussian(`lightfastness: { category: II${form} }`).sheet.permanence.basis).toBe(
        "stated",
      );
  });
  test("an exposed masstone leaves the tint to be told; an exposed tint does not", () => {
    expect([exposed("masstone"), exposed("tint")].map((one) => isWeaker(prussian(one)))).toEqual([
      true,
      false,
    ]);
  });
});

/** The names with a suffix that have rows of their own, and one that has its parent's. */
describe("a name with a suffix reaches every table", () => {
  test.each(["PY 35:1", "PR 83:1", "PR 108:1", "PO 20:1", "PW 18:1", "PY 42:7"])("%s", (name) => {
    const { sheet } = told("", {
      "pigments/lamp-black.yaml": `name: Some pigment\ncolourIndexName: "${name}"\n`,
    });
    const [pigment] = sheet.pigments;
    expect([pigment?.densityGPerCm3.standing, pigment?.oilAbsorptionGPer100g.standing]).toEqual([
      "estimated",
      "estimated",
    ]);
    expect(sheet.permanence.expectation.standing).toBe("estimated");
    expect(sheet.drying.reasons.map(({ rule }) => rule).join(" ")).not.toMatch(/unknown|not-known/);
  });
});
