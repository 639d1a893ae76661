import { describe, expect, test } from "vitest";
import { formatDiagnostic } from "../../lib/diagnostics/diagnostic.ts";
import { loadRecords } from "../../lib/records/load-records.ts";
import { answerWith, FOUR_PAINTS } from "../claims/answered-workshop.ts";
import { contentFolder } from "../support/content-folder.ts";

function toldOf(claim: string): string[] {
  const { content, home } = contentFolder({ ...FOUR_PAINTS, "answers/so.md": answerWith([claim]) });
  return loadRecords(content, home)
    .diagnostics.map(formatDiagnostic)
    .filter((line) => line.includes("answers/so.md"));
}

// That a misspelt name is in no tube is plain logic and no source.
describe("a claim that nothing could break, since no record is called so, is warned of", () => {
  test.each([
    ["{ every: pigments, lacks: sooot }", "5:31", "sooot in pigments/", "; nearest: soot"],
    ["{ every: additions, lacks: beeswax }", "5:32", "beeswax in vehicles/", ""],
    ["{ fact: soot-black.pigments, lacks: roe }", "5:41", "roe in pigments/", "; nearest: ore"],
  ])("%s", (claim, place, what, near) =>
    expect(toldOf(claim)).toEqual([
      `content/answers/so.md:${place} warning There is no ${what}, so this claim holds whatever is in the tubes${near} records/claimed-name`,
    ]),
  );

  test.each([
    "{ every: pigments, lacks: ore, but: [ore-black, bare-black] }",
    "{ every: additions, lacks: oil }",
    "{ fact: soot-black.pigments, lacks: ore }",
    "{ fact: soot-black.cautions.hazardStatements, lacks: H351 }",
    "{ fact: soot-black.pigments, includes: soot }",
  ])("and %s is not", (claim) => expect(toldOf(claim)).toEqual([]));
});
