import { describe, expect, test } from "vitest";
import { formatDiagnostic } from "../../lib/diagnostics/diagnostic.ts";
import { loadRecords } from "../../lib/records/load-records.ts";
import { contentFolder, flatReadings, type RecordTexts } from "../support/content-folder.ts";
import { toldOf } from "./told.ts";

const COLOUR =
  '---\nname: Bone Black\npigments: [{ pigment: bone-black }]\nmasstone: { reading: bone, column: masstone, scale: factor, geometry: "45/0" }\n---\n';
const SOUND: RecordTexts = {
  "workshop.yaml": "name: My workshop\n",
  "pigments/bone-black.yaml": "name: Bone black\n",
  "colours/bone-black.md": COLOUR,
  "readings/bone.csv": flatReadings({ masstone: 0.01 }),
};

function told(but: RecordTexts): readonly string[] {
  return toldOf(contentFolder({ ...SOUND, ...but })).lines;
}

describe("slips that a schema does not see", () => {
  test("a sound folder is told nothing", () => expect(told({})).toEqual([]));

  const IN_PERCENT = COLOUR.replace("scale: factor", "scale: percent");

  test("a black in percent is doubted, once a file", () => {
    expect(
      told({
        "colours/bone-black.md": IN_PERCENT,
        "readings/bone.csv": flatReadings({ masstone: 0.35, again: 0.4 }),
      }),
    ).toEqual([
      "content/colours/bone-black.md:4:11 warning The record says scale: percent, and no value in content/readings/bone.csv passes 0.4; a reading in factors says scale: factor records/scale",
    ]);
  });

  test.each([
    ["a black", { masstone: 0.01 }, "0.01"],
    ["a black beside a white", { masstone: 0.055, white: 1.15 }, "0.055 to 1.15"],
    ["a grey beside a white", { masstone: 0.04, white: 0.83 }, "0.04 to 0.83"],
    ["two darks, as percent may be", { masstone: 0.06, other: 1.2 }, undefined],
  ])("factors of %s declared as percent", (_of, columns: Record<string, number>, reads) => {
    const said =
      reads === undefined
        ? "warning The record says scale: percent, and no value in content/readings/bone.csv passes 1.2"
        : `error The record says scale: percent, and content/readings/bone.csv holds factors: in percent no paint reads ${reads}`;
    const lines = told({
      "colours/bone-black.md": IN_PERCENT,
      "readings/bone.csv": flatReadings(columns),
    });
    expect(lines).toEqual([
      `content/colours/bone-black.md:4:11 ${said}; a reading in factors says scale: factor records/scale`,
    ]);
  });

  test("an oil's density in kg/m3 is refused", () => {
    expect(
      told({
        "vehicles/linseed.yaml":
          "name: Linseed oil\noil: linseed\nkind: oil\ndensityGPerCm3: 930\n",
        "colours/bone-black.md": COLOUR.replace("masstone:", "vehicle: linseed\nmasstone:"),
      }),
    ).toEqual([
      "content/vehicles/linseed.yaml:4:17 error The density of this vehicle is 930 g/cm3, and vehicles lie between 0.6 and 1.4 g/cm3; 0.93 g/cm3, if it was given in kg/m3 records/vehicle-density",
    ]);
  });

  test.each([
    ["0.6", true],
    ["0.59", false],
    ["1.4", true],
    ["1.41", false],
  ])("a vehicle of density %s passes: %s", (density, passes) => {
    const lines = told({
      "vehicles/linseed.yaml": `name: Medium\nkind: medium\ndensityGPerCm3: ${density}\n`,
      "colours/bone-black.md": COLOUR.replace("masstone:", "vehicle: linseed\nmasstone:"),
    });
    expect(lines.length === 0).toBe(passes);
  });

  test("a drier is no vehicle", () => {
    expect(
      told({
        "vehicles/drier.yaml": "name: Drier\nkind: drier\n",
        "colours/bone-black.md": COLOUR.replace("masstone:", "vehicle: drier\nmasstone:"),
      })[0],
    ).toContain(
      "content/colours/bone-black.md:4:10 error The vehicle drier is a drier: name an oil or a medium here",
    );
  });

  test("a colour is not let down in itself", () => {
    const tint =
      '\ntints: [{ white: bone-black, massRatio: "1:5", ratioKind: paint, reading: bone, column: masstone, scale: factor, geometry: "45/0" }]\n---\n';
    expect(told({ "colours/bone-black.md": COLOUR.replace("\n---\n", tint) })[0]).toContain(
      "error bone-black is let down in itself: name the white records/tint",
    );
  });

  test("the catalogue's own addresses are not a colour's", () => {
    const lines = told({ "colours/by-value.md": COLOUR });
    expect(lines[0]).toMatch(
      /^content\/colours\/by-value\.md:2:1 error A page of the catalogue has the address by-value/,
    );
    expect(told({ "colours/in-the-whites.md": COLOUR })[0]).toMatch(
      /^content\/colours\/in-the-whites\.md:2:1 error A page of the catalogue has the address in-the-whites/,
    );
  });

  test("a leading pair names colours that are there", () => {
    expect(
      told({ "workshop.yaml": "name: My workshop\nleadingPair: [bone-black, bone-blak]\n" }),
    ).toEqual([
      "content/workshop.yaml:2:27 error There is no bone-blak in colours/; nearest: bone-black records/missing-reference",
    ]);
  });

  test("first questions are answers that are there, each once", () => {
    const asking = (slugs: string) =>
      told({ "workshop.yaml": `name: My workshop\nfirstQuestions: ${slugs}\n` });
    expect(asking("[why-so-dark]")).toEqual([
      "content/workshop.yaml:2:18 error There is no why-so-dark in answers/ records/missing-reference",
    ]);
    expect(asking("[bone-black, bone-black]")[0]).toMatch(
      /^content\/workshop\.yaml:2:17 error .*each answer once/,
    );
  });

  test("a Lab without an observer is told both that there are", () => {
    expect(
      told({
        "colours/bone-black.md": COLOUR.replace(
          /masstone:.*/,
          'masstone: { lab: [20, 0, 0], illuminant: D65, geometry: "45/0" }',
        ),
      })[0],
    ).toContain("it takes 2 or 10");
  });

  test.each([
    [
      "colourIndexNumber: 77267",
      `colourIndexNumber can't be 77267: it takes text; in quotes: "77267"`,
    ],
    [
      "particle: { sizeUm: [1, 3] }",
      "particle.sizeUm can't be [1,3]: it takes a number; a range is { value: [1, 3] }",
    ],
  ])("%s is told how it is written", (line, complaint) => {
    const lines = told({ "pigments/bone-black.yaml": `name: Bone black\n${line}\n` });
    expect(lines).toHaveLength(1);
    expect(lines[0]).toContain(complaint);
  });

  test("a faulty workshop.yaml is told of once, not at every reading too", () => {
    const lines = told({
      "workshop.yaml":
        "name: My workshop\nreadings: { scale: factor, geometry: 45/0 }\nmarkts: [EU]\n",
      "colours/bone-black.md": COLOUR.replace(', scale: factor, geometry: "45/0"', ""),
    });
    expect(lines).toHaveLength(1);
    expect(lines[0]).toContain("content/workshop.yaml:3:1 error There is no key markts");
  });
});

describe("what was weighed into let-downs", () => {
  const READINGS = flatReadings({ masstone: 0.03, tint: 0.3 });
  /** Colours of which each says of its one let-down that this was weighed. */
  const notesOf = (kinds: Readonly<Record<string, "paint" | "pigment">>): string[] => {
    const files = Object.entries(kinds).flatMap(([slug, kind]): [string, string][] => [
      [`readings/${slug}.csv`, READINGS],
      [
        `colours/${slug}.md`,
        `---\nname: ${slug}\npigments: [{ pigment: bone-black }]\nmasstone: { reading: ${slug}, column: masstone, scale: factor, geometry: "45/0" }\ntints:\n  - { white: bone-black, massRatio: "1:5", ratioKind: ${kind}, reading: ${slug}, column: tint, scale: factor, geometry: "45/0" }\n---\n`,
      ],
    ]);
    const { content, home } = contentFolder({ ...SOUND, ...Object.fromEntries(files) });
    return loadRecords(content, home).notes.map(formatDiagnostic);
  };

  test("one colour that says otherwise than two others is told", () =>
    expect(notesOf({ one: "paint", other: "pigment", third: "paint" })).toEqual([
      "content/colours/other.md:6:55 note The let-downs of this colour alone say that pigment was weighed: those of the 2 others say paint records/ratio-kind",
    ]));

  test.each([
    [{ one: "paint", other: "pigment" }],
    [{ one: "paint", other: "pigment", third: "paint", fourth: "pigment" }],
    [{ one: "pigment", other: "pigment", third: "pigment" }],
  ] as const)("of %o none is told", (kinds) => expect(notesOf(kinds)).toEqual([]));
});
