import { existsSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { claimDiagnostics } from "../../lib/claims/held-claims.ts";
import { formatDiagnostic } from "../../lib/diagnostics/diagnostic.ts";
import { contentFolder } from "../support/content-folder.ts";
import { commandHere } from "../support/command-here.ts";
import { answerOf, heldWorkshop, TWO_BLACKS } from "./two-blacks.ts";

/** The claim that holds, and the same broken in one way: what is said of it, from its key on. */
const BROKEN: readonly (readonly [string, string, string, string])[] = [
  [
    "a value that is passed",
    "figure: lamp-black.oil.oilIndexGPer100g, below: 100",
    "figure: lamp-black.oil.oilIndexGPer100g, below: 90",
    "55 error lamp-black.oil.oilIndexGPer100g is 99; the claim wants it below 90; newest record that it rests on: colour lamp-black, 2026-05-04 claims/value",
  ],
  [
    "a standing that is not met",
    "figure: lamp-black.oil.oilIndexGPer100g, above: 10, standing: measured",
    "figure: bone-black.oil.oilIndexGPer100g, above: 10, standing: measured",
    "69 error bone-black.oil.oilIndexGPer100g is stated; the claim needs it measured to the root claims/standing",
  ],
  [
    "a figure that is not stated",
    "figure: lamp-black.oil.gloss60, is: not stated",
    "figure: lamp-black.oil.gloss60, above: 3",
    "15 error lamp-black.oil.gloss60 is not stated, and the claim needs its figure; not in the records claims/not-stated",
  ],
  [
    "a path that leads nowhere",
    "figure: lamp-black.oil.oilIndexGPer100g, above: 90",
    "figure: lamp-black.oil.oilIndxGPer100g, above: 90",
    "15 error No sheet has a figure lamp-black.oil.oilIndxGPer100g; nearest: lamp-black.oil.oilIndexGPer100g claims/unknown-figure",
  ],
  [
    "a path that is near to none, with what its part of the sheet has",
    "figure: lamp-black.oil.oilIndexGPer100g, above: 90",
    "figure: lamp-black.permanence.lightfastness, above: 90",
    "15 error No sheet has a figure lamp-black.permanence.lightfastness; there are permanence.category, permanence.expectation, permanence.blueWool, permanence.deltaEab claims/unknown-figure",
  ],
  [
    "a path into a part that there is not, with what the part above it has",
    "figure: lamp-black.oil.oilIndexGPer100g, above: 90",
    "figure: lamp-black.permanence.light.tint, above: 90",
    "15 error No sheet has a figure lamp-black.permanence.light.tint; there are permanence.category, permanence.expectation, permanence.blueWool, permanence.deltaEab claims/unknown-figure",
  ],
  [
    "a path into a section that there is not, with the sections that there are",
    "figure: lamp-black.oil.oilIndexGPer100g, above: 90",
    "figure: lamp-black.lightfastness.tint, above: 90",
    "15 error No sheet has a figure lamp-black.lightfastness.tint; there are vehicle, pigments, notations, optics, oil, batch and 2 more claims/unknown-figure",
  ],
  [
    "a rank that is lost",
    "figure: bone-black.oil.oilIndexGPer100g, lowestOf: black",
    "figure: lamp-black.oil.oilIndexGPer100g, lowestOf: black",
    "58 error lamp-black.oil.oilIndexGPer100g is 99; the claim wants it below every rival, and bone-black.oil.oilIndexGPer100g is 60; newest record that it rests on: colour lamp-black, 2026-05-04 claims/rank",
  ],
  [
    "a margin of a rank that is lost",
    "figure: bone-black.oil.oilIndexGPer100g, lowestOf: black, by: 39",
    "figure: bone-black.oil.oilIndexGPer100g, lowestOf: black, by: 40",
    "58 error bone-black.oil.oilIndexGPer100g is 60; the claim wants it below every rival by 40, and lamp-black.oil.oilIndexGPer100g is 99; newest record that it rests on: colour lamp-black, 2026-05-04 claims/rank",
  ],
  [
    "a margin of a comparison that is lost",
    "figure: lamp-black.oil.oilIndexGPer100g, above: bone-black.oil.oilIndexGPer100g, by: 39",
    "figure: lamp-black.oil.oilIndexGPer100g, above: bone-black.oil.oilIndexGPer100g, by: 40",
    "55 error lamp-black.oil.oilIndexGPer100g is 99; the claim wants it above bone-black.oil.oilIndexGPer100g, 60, by 40; newest record that it rests on: colour lamp-black, 2026-05-04 claims/order",
  ],
  [
    "a colour that is not there",
    "figure: lamp-black.oil.oilIndexGPer100g, between: [99, 99]",
    "figure: lamp-blak.oil.oilIndexGPer100g, above: 90",
    "15 error There is no colour lamp-blak in colours/; nearest: lamp-black claims/unknown-colour",
  ],
  [
    "a fact that is another",
    "fact: lamp-black.pigments, includes: lamp-black",
    "fact: lamp-black.pigments, includes: bone-black",
    "44 error lamp-black.pigments is lamp-black; the claim wants bone-black among them claims/fact",
  ],
];

const ANSWER = "answers/which-is-leaner.md";

test("each claim holds before it is broken", () => {
  const { held } = heldWorkshop({
    ...TWO_BLACKS,
    [ANSWER]: answerOf(BROKEN.map(([, sound]) => sound)),
  });
  expect(held.flatMap(claimDiagnostics).map(formatDiagnostic)).toEqual([]);
  expect(held[0]?.claims).toHaveLength(BROKEN.length);
});

describe("each claim, once it is broken", () => {
  const { held } = heldWorkshop({
    ...TWO_BLACKS,
    [ANSWER]: answerOf(BROKEN.map(([, , broken]) => broken)),
  });
  const lines = held.flatMap(claimDiagnostics).map(formatDiagnostic);
  test.each(BROKEN.map(([what, , , told], i) => [what, told, i] as const))(
    "%s is told at its line and column, with both values",
    (_, told, i) => {
      expect(lines.filter((line) => line.startsWith(`content/${ANSWER}:${5 + i}:`))).toEqual([
        `content/${ANSWER}:${5 + i}:${told}`,
      ]);
    },
  );
});

test("a build with claims that do not hold fails and writes nothing; with --claims warn it warns and writes", async () => {
  const { home } = contentFolder({
    ...TWO_BLACKS,
    [ANSWER]: answerOf(BROKEN.map(([, , broken]) => broken)),
  });
  const failed = await commandHere(["build"], { cwd: home });
  expect([failed.code, existsSync(join(home, "_site"))]).toEqual([1, false]);
  const lines = failed.complaints.split("\n").filter((line) => line.includes("claims/"));
  expect(lines.map((line) => line.split(" ")[0])).toEqual(
    BROKEN.map(([, , , told], i) => `content/${ANSWER}:${5 + i}:${told.split(" ")[0] ?? ""}`),
  );
  const warned = await commandHere(["build", "--claims", "warn"], { cwd: home });
  expect([warned.code, existsSync(join(home, "_site/answers/which-is-leaner/index.html"))]).toEqual(
    [0, true],
  );
  expect(
    warned.complaints.split("\n").filter((line) => / warning .* claims\//.test(line)),
  ).toHaveLength(BROKEN.length);
});
