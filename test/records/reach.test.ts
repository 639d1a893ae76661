import { describe, expect, test } from "vitest";
import { yamlRecord } from "../../lib/records/yaml-record.ts";
import { contentFolder, SMALLEST_WORKSHOP, type RecordTexts } from "../support/content-folder.ts";
import { toldOf } from "./told.ts";

const told = (files: RecordTexts): readonly string[] =>
  toldOf(contentFolder({ ...SMALLEST_WORKSHOP, ...files })).lines;

const FIGURES: Readonly<Record<string, readonly string[]>> = {
  "pigments/lamp-black.yaml": [
    "densityGPerCm3: FIGURE",
    "oilAbsorptionGPer100g: FIGURE",
    "bulkDensityLooseGPerMl: FIGURE",
    "bulkDensityTappedGPerMl: FIGURE",
    "particle: { sizeUm: FIGURE }",
    "particle: { refractiveIndex: FIGURE }",
    "particle: { absorptionIndex: FIGURE }",
  ],
  "colours/lamp-black.md": [
    "oilIndexGPer100g: FIGURE",
    "finenessOfGrindUm: FIGURE",
    "gloss60: FIGURE",
    "dryingTrials: [{ touchDryDays: FIGURE }]",
    "dryingTrials: [{ touchDryDays: 3, throughDryDays: FIGURE }]",
    "dryingTrials: [{ touchDryDays: 3, filmThicknessUm: FIGURE }]",
    "dryingTrials: [{ touchDryDays: 3, humidityPercent: FIGURE }]",
    "exposures: [{ deltaEab: FIGURE, form: tint, standard: x, exposure: x }]",
  ],
};
const ROWS = Object.entries(FIGURES).flatMap(([path, keys]) => keys.map((key) => ({ path, key })));
const LIMITLESS = ["1e300", "1.7e308", "{ value: 1e300 }", "{ value: 10, uncertainty: 1e300 }"];
const NEXT_TO_NOTHING = ["{ value: 10, uncertainty: 1e-300 }", "{ value: [1e-300, 1e300] }"];

describe.each(ROWS)("$key", ({ path, key }) => {
  test.each([...LIMITLESS, ...NEXT_TO_NOTHING])("takes no %s", (figure) => {
    const line = key.replace("FIGURE", figure);
    const text = SMALLEST_WORKSHOP[path as keyof typeof SMALLEST_WORKSHOP];
    const spoiled = path.endsWith(".md")
      ? text.replace("---\nNotes", `${line}\n---\nNotes`)
      : `${text}${line}\n`;
    const complaints = told({ [path]: spoiled }).filter((one) => one.includes(" error "));
    expect(complaints.length).toBeGreaterThan(0);
    for (const complaint of complaints) {
      expect(complaint).toMatch(new RegExp(`^content/${path}:\\d+:\\d+ error `));
      expect(complaint.length).toBeLessThan(400);
    }
  });
});

test("past a reach stand the unit that the key takes, and what the figure is in it", () => {
  expect(
    told({ "pigments/lamp-black.yaml": "name: Lamp black\nparticle: { sizeUm: 2300 }\n" }),
  ).toContain(
    "content/pigments/lamp-black.yaml:2:21 error particle.sizeUm is 2300, and takes 1000 or less; in um: 2300 nm are 2.3 records/schema",
  );
});

describe("a record that no hand writes", () => {
  const yaml = (text: string): string[] =>
    yamlRecord("x.yaml", text).diagnostics.map(({ message }) => message);

  test.each([
    ["an alias that holds itself", "a: &a [*a]\n", /alias stands inside what it repeats/],
    ["the whole in itself", "&a\nname: x\nb: *a\n", /alias stands inside what it repeats/],
    ["1,000 dashes in a line", `a:\n  ${"- ".repeat(1000)}x\n`, /stand too deep/],
    ["50 dashes in a line", `a:\n  ${"- ".repeat(50)}x\n`, /stand too deep/],
    ["5,000 brackets", `a: ${"[".repeat(5000)}`, /stand too deep/],
  ])("%s", (_, text, complaint) => {
    const found = yaml(text);
    expect(found).toHaveLength(1);
    expect(found[0]).toMatch(complaint);
  });

  test("an alias beside what it repeats is nothing wrong", () => {
    expect(yaml("a: &a [1, 2]\nb: *a\n")).toEqual([]);
  });

  const colour = SMALLEST_WORKSHOP["colours/lamp-black.md"];
  const withFrontMatter = (lines: string): string =>
    colour.replace("---\nNotes", `${lines}---\nNotes`);

  test.each([
    [
      "7 MB of notes",
      `${colour}${"All of it. ".repeat(640_000)}`,
      /The text below the record has \d+ letters, and at most 250000 are read/,
    ],
    ["300,000 shortcodes begun", `${colour}${"{% ".repeat(300_000)}`, /at most 250000 are read/],
    [
      "100,000 unknown keys",
      withFrontMatter(Array.from({ length: 100_000 }, (_, i) => `k${i}: 1\n`).join("")),
      /The record has \d+ letters/,
    ],
    [
      "3,000 tints",
      withFrontMatter(`tints:\n${"  - { white: w, massRatio: '1:2' }\n".repeat(3000)}`),
      /tints is too long: it takes at most 200 entries|And 2,9\d\d more faults of this kind/,
    ],
  ])("%s is told in few lines", (_, text, complaint) => {
    const found = told({ "colours/lamp-black.md": text });
    expect(found.length).toBeLessThan(30);
    expect(found.join("\n")).toMatch(complaint);
    expect(found.join("\n").length).toBeLessThan(10_000);
  });

  test("of 5,000 unknown keys the first twenty are named, and the rest counted", () => {
    const keys = Array.from({ length: 5_000 }, (_, i) => `k${i}: 1\n`).join("");
    const found = told({ "colours/lamp-black.md": withFrontMatter(keys) });
    expect(found.filter((line) => line.includes("There is no key"))).toHaveLength(20);
    expect(found.join("\n")).toContain("And 4,980 more unknown keys of this kind in the record");
  });

  test("of 50,000 faults the first twenty are named, and the rest counted", () => {
    const letters = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ".split("");
    const keys = letters
      .flatMap((a) => letters.flatMap((b) => letters.map((c) => `${a}${b}${c}`)))
      .slice(0, 50_000);
    const before = process.cpuUsage();
    const found = told({ "pigments/lamp-black.yaml": `{name: Lamp black,${keys.join(",")}}` });
    expect(process.cpuUsage(before).user / 1e6).toBeLessThan(10);
    const unknown = found.filter((line) => line.includes("There is no key"));
    expect(unknown).toHaveLength(20);
    expect(unknown[0]).toMatch(
      /^content\/pigments\/lamp-black.yaml:1:19 error There is no key aaa /,
    );
    expect(found.join("\n")).toContain("And 49,980 more unknown keys of this kind in the record");
    expect(found.join("\n").length).toBeLessThan(15_000);
  });

  test("a key of 5,000 letters is cut at 80", () => {
    const [line = ""] = told({
      "colours/lamp-black.md": withFrontMatter(`${"k".repeat(900)}: 1\n`),
    });
    expect(line).toContain(`There is no key ${"k".repeat(80)}... in this record`);
  });

  test.each(["\u202e", "\u200b", "\u2066", "\u200f"])(
    "a mark that turns the writing round or has no width is refused at its line: %j",
    (mark) => {
      expect(told({ "colours/lamp-black.md": colour.replace("Notes", `No${mark}tes`) })).toEqual([
        expect.stringMatching(
          /^content\/colours\/lamp-black\.md:7:3 error The file is not saved as UTF-8 text, or holds a control character here/,
        ),
      ]);
    },
  );
});
