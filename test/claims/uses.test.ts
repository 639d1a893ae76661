import { describe, expect, test } from "vitest";
import { answerColours } from "../../lib/answers/answer-pages.ts";
import { shownPaths } from "../../lib/answers/shown-paths.ts";
import { recordRoots } from "../../lib/claims/record-roots.ts";
import { recordsNamed, usesOf, type Uses } from "../../lib/claims/uses.ts";
import { soundWorkshops } from "../fuzz/sound-workshops.ts";
import { commandHere } from "../support/command-here.ts";
import { contentFolder } from "../support/content-folder.ts";
import { RECORDS as records, sheets as sheetsOf, worked } from "../support/demonstration.ts";

const { answers } = worked();
const sheets = sheetsOf();
const rootsOf = recordRoots(answers.index, records);
const shown = answers.held.map((one) => ({
  ...one,
  shown: shownPaths(one.answer, answerColours(one.answer, one.claims)),
}));

function used(kind: string, slug: string): Uses {
  const record = recordsNamed(slug, records).find((one) => one.kind === kind);
  if (record === undefined) throw new Error(`Unexpected record ${kind} ${slug}`);
  return usesOf(record, sheets, shown, rootsOf);
}

describe("what rests on a record", () => {
  test.each([
    ["titanium-dioxide", 3],
    ["burnt-umber", 2],
    ["yellow-ochre", 1],
  ])("pigment %s: every colour made of it, no fewer than %i", (slug, count) => {
    const made = [...records.colours.values()]
      .filter(({ record }) => record.pigments.some(({ pigment }) => pigment === slug))
      .map((colour) => colour.slug);
    expect(made).toHaveLength(count);
    expect(used("pigment", slug).colours.map((colour) => colour.slug)).toEqual(
      expect.arrayContaining(made),
    );
  });

  test("a white's reading: each colour that was let down in it, for K and S are fitted to both", () => {
    const letDown = [...records.colours.values()]
      .filter(({ tints }) => tints.some(({ white }) => white === "titanium-white"))
      .map(({ slug }) => slug);
    expect(letDown.length).toBeGreaterThan(5);
    expect(
      used("reading", "titanium-white")
        .colours.filter(({ sections }) => sections.includes("tints"))
        .map(({ slug }) => slug),
    ).toEqual(expect.arrayContaining(letDown));
  });

  test("a colour's own reading bears on no colour that is never laid beside it", () => {
    expect(used("reading", "cadmium-yellow").colours.map(({ slug }) => slug)).toEqual([
      "cadmium-yellow",
    ]);
  });

  test("a mixture by the paints of its parts", () => {
    const mixtures = used("reading", "burnt-umber").colours.filter(({ isMixture }) => isMixture);
    expect(mixtures).toEqual([
      expect.objectContaining({ slug: "umber-ultramarine-black", sections: ["mixture"] }),
    ]);
  });

  test("claims by their number, and those of no other record", () => {
    const { answers: resting } = used("reading", "furnace-black");
    const claims = resting.flatMap((answer) =>
      answer.claims.map(
        (number) =>
          answers.held.find(({ answer: { slug } }) => slug === answer.slug)?.claims[number - 1],
      ),
    );
    expect(claims.length).toBeGreaterThan(0);
    for (const claim of claims)
      expect(claim?.roots).toContainEqual(
        expect.objectContaining({ kind: "reading", slug: "furnace-black" }),
      );
  });

  test("a supplier's new pigment: every claim on the paint made of it, its drawdowns' too", () => {
    const told = used("pigment", "furnace-black").answers.flatMap(({ slug, claims }) =>
      claims.map((number) => `${slug} ${number}`),
    );
    const onPaint = answers.held.flatMap(({ answer, claims }) =>
      claims.flatMap(({ colours }, i) =>
        colours.includes("furnace-black") ? [`${answer.slug} ${i + 1}`] : [],
      ),
    );
    expect(onPaint.length).toBeGreaterThan(3);
    expect(told).toEqual(expect.arrayContaining(onPaint));
  });

  test("an answer by what it shows, where no claim rests on it; and none that does neither", () => {
    const byFigures = used("reading", "zinc-white")
      .answers.concat(used("reading", "furnace-black").answers)
      .filter(({ claims }) => claims.length === 0);
    for (const { slug } of byFigures)
      expect(
        shown
          .find(({ answer }) => answer.slug === slug)
          ?.shown.some((path) => path.startsWith("furnace-black.") || path.includes("zinc-white")),
      ).toBe(true);
    expect(used("pigment", "barytes").answers.map(({ slug }) => slug)).not.toContain(
      "which-black-for-a-neutral-grey",
    );
  });

  test("no card where a market forbids the sale", () => {
    expect(
      used("pigment", "basic-lead-carbonate").colours.find(({ slug }) => slug === "lead-white")
        ?.hasCard,
    ).toBe(false);
  });
});

test("check --uses prints it, and tells an unknown name in one line with the nearest", async () => {
  const { home: cwd } = contentFolder(
    soundWorkshops().find((texts) => "pigments/green-earth.yaml" in texts) ?? {},
  );
  const known = await commandHere(["check", "--uses", "green-earth"], { cwd });
  const unknown = await commandHere(["check", "--uses", "green-erth"], { cwd });
  expect([known.code, known.complaints]).toEqual([0, ""]);
  expect(known.output).toMatch(/^pigment green-earth: 1 colour, /m);
  expect(known.output).toMatch(/^ {4}green-earth: .*\boil\b/m);
  expect([unknown.code, unknown.output, unknown.complaints]).toEqual([
    1,
    "",
    "No colour, pigment, vehicle, reading, source, lot or supplier's lot is called green-erth; nearest: green-earth\n",
  ]);
});
