import { describe, expect, test } from "vitest";
import { statementText } from "../../lib/present/statement-text.ts";
import { WORDED } from "../support/worded.ts";
import { LANGUAGES } from "../../lib/quantities/languages.ts";

describe.each(LANGUAGES)("words of hazards in %s", (language) => {
  const words = WORDED[language];

  test("a claim on a dry pigment's label says that it is not the paint's", () => {
    const of = (path: string) => words.pages.answers.fact(path);
    const ofPigment = of("cautions.dryPigment.burnt-umber.hazardStatements");
    expect(ofPigment).not.toBe(of("cautions.hazardStatements"));
    expect(ofPigment.startsWith(of("cautions.hazardStatements"))).toBe(true);
  });

  test("an acute toxicity of a package has its route in words", () => {
    const text = statementText(
      { rule: "tactile-warning", values: { classes: ["Acute Tox. 2 dermal", "STOT RE 2"] } },
      words,
    );
    expect(text).toContain("Acute Tox. 2 (");
    expect(text).not.toContain("dermal");
    expect(text).toContain("STOT RE 2");
  });
});
