import { describe, expect, test } from "vitest";
import { formatDiagnostic } from "../../lib/diagnostics/diagnostic.ts";
import { loadRecords } from "../../lib/records/load-records.ts";
import { claimsAs } from "../../lib/site/claims-as.ts";
import { workedSite } from "../../lib/site/site-context.ts";
import { contentFolder, flatReadings, SMALLEST_WORKSHOP } from "../support/content-folder.ts";

const READINGS = "readings/lamp-black.csv";
/** Two flat blacks: L* is 116 R^1/3 - 16 (CIE 15), 15.49 at R .02 and 23.67 at .04, measured to the root. */
const WORKSHOP = {
  ...SMALLEST_WORKSHOP,
  "pigments/lamp-black.yaml": 'name: Lamp black\nfamily: black\nhazards: []\n',
  "vehicles/linseed.yaml": "name: Linseed oil\nkind: oil\nhazards: []\n",
  "colours/lamp-black.md": colour("Lamp Black", "masstone", "oilIndexGPer100g: 60\nvehicle: linseed\n"),
  "colours/soot-black.md": colour("Soot Black", "soot", "vehicle: linseed\n"),
  [READINGS]: flatReadings({ masstone: 0.02, soot: 0.04 }),
} as const;

function colour(name: string, column: string, more: string): string {
  return `---\nname: ${name}\npigments: [{ pigment: lamp-black }]\n${more}masstone: { reading: lamp-black, column: ${column}, scale: factor, geometry: "45/0" }\n---\nNotes.\n`;
}

function answer(...claims: readonly string[]): string {
  return `---\nquestion: How dark is it?\nsummary: Dark.\nclaims:\n${claims.map((claim) => `  - ${claim}\n`).join("")}---\nAs a black is.\n`;
}

/** What a build is told of an answer with these claims, first line of the claims being line 5. */
function told(claims: readonly string[], files: Readonly<Record<string, string>> = {}, as: "error" | "warning" = "error"): string[] {
  const { content, home } = contentFolder({ ...WORKSHOP, ...files, "answers/how-dark.md": answer(...claims) });
  const { records, diagnostics } = loadRecords(content, home);
  expect(diagnostics.filter(({ severity }) => severity === "error").map(formatDiagnostic)).toEqual([]);
  if (records === undefined) throw new Error("Unexpected faulty workshop");
  return claimsAs(as, workedSite(records, undefined).diagnostics).filter(({ rule }) => rule.startsWith("claims/")).map(formatDiagnostic);
}

const L = "lamp-black.notations.masstone.lab.D65/10.L";
const SOOT_L = "soot-black.notations.masstone.lab.D65/10.L";
const AT = "content/answers/how-dark.md:5:";

describe("claims that hold", () => {
  test.each([
    `{ figure: ${L}, below: 15.5, standing: measured }`, `{ figure: ${L}, above: 15.48 }`, `{ figure: ${L}, between: [15.4, 15.6] }`,
    `{ figure: ${L}, below: ${SOOT_L}, by: 8 }`, `{ figure: ${SOOT_L}, above: ${L}, by: 8.1 }`, `{ figure: ${L}, lowestOf: black, by: 8 }`, `{ figure: ${SOOT_L}, highestOf: [lamp-black] }`,
    "{ figure: soot-black.oil.oilIndexGPer100g, is: not stated }",
    "{ fact: lamp-black.cautions.signalWord, is: null }", "{ fact: lamp-black.cautions.hazardStatements, count: 0 }", "{ fact: lamp-black.cautions.hazardStatements, lacks: H351 }",
  ])("%s", (claim) => expect(told([claim])).toEqual([]));
});

describe("a claim broken on purpose, one for each kind of fault, is told at its line with both values", () => {
  test.each([
    ["a number passed from below", `{ figure: ${L}, below: 15 }`, "`15.49`", "15"],
    ["a number passed from above", `{ figure: ${L}, above: 16 }`, "`15.49`", "16"],
    ["a number out of its range", `{ figure: ${L}, between: [10, 15] }`, "`15.49`", "15"],
    ["a comparison lost", `{ figure: ${SOOT_L}, below: ${L} }`, "`23.67`", "15.49"],
    ["its margin lost", `{ figure: ${L}, below: ${SOOT_L}, by: 9 }`, "`15.49`", "23.67"],
    ["a rank lost", `{ figure: ${SOOT_L}, lowestOf: black }`, "`23.67`", "15.49"],
    ["another word", "{ figure: lamp-black.notations.masstone.munsell.text, is: N 5/ }", "`N 1.5/`", "N 5/"],
    ["a word where a number is compared", "{ figure: lamp-black.notations.masstone.munsell.text, below: 3 }", "`N 1.5/`", "a figure that is a number"],
    ["a figure that is not stated", "{ figure: soot-black.oil.oilIndexGPer100g, below: 100 }", "`not stated`", "a figure that is stated"],
    ["a root too weak for the prose", "{ figure: lamp-black.oil.oilIndexGPer100g, below: 100, standing: measured }", "`stated`", "measured to the root"],
    ["a fact that is another", "{ fact: lamp-black.cautions.signalWord, is: Danger }", "`nothing`", "Danger"],
    ["a statement that is not among them", "{ fact: lamp-black.cautions.hazardStatements, includes: H360 }", "`none`", "H360 among them"],
    ["another count", "{ fact: lamp-black.cautions.hazardStatements, count: 2 }", "`0: none`", "2"],
    ["a colour that is not there", `{ figure: ${L.replace("lamp-black", "lamp-blak")}, below: 20 }`, "`lamp-blak`", "nearest `lamp-black`"],
    ["a figure that no sheet has", "{ figure: lamp-black.oil.oilIndexGPer100, below: 20 }", "`lamp-black.oil.oilIndexGPer100`", "nearest `lamp-black.oil.oilIndexGPer100g`"],
    ["a white that it was not let down in", "{ figure: lamp-black.tints.titanium-white.atL.50.b, below: 0 }", "`lamp-black.tints.titanium-white.atL.50.b`", "a figure that the sheet of lamp-black has"],
  ])("%s: %s", (_, claim, found, expected) => {
    const lines = told([claim]);
    expect(lines).toHaveLength(1);
    expect(lines[0]?.startsWith(AT)).toBe(true);
    expect(lines[0]).toContain(" error Unexpected ");
    expect(lines[0]).toContain(found);
    expect(lines[0]).toContain(expected);
  });

  test("one fault is told at its own line among claims that hold", () => {
    const lines = told([`{ figure: ${L}, below: 16 }`, `{ figure: ${L}, below: 15 }`, `{ figure: ${L}, above: 15 }`]);
    expect(lines.map((line) => line.split(" ")[0])).toEqual([expect.stringMatching(/^content\/answers\/how-dark\.md:6:\d+$/)]);
  });

  test("as warnings where the workshop asks for that", () => {
    expect(told([`{ figure: ${L}, below: 15 }`], {}, "warning")[0]).toContain(" warning Unexpected ");
  });
});

test("a changed reading turns the claims that rest on it, and no other", () => {
  const claims = [`{ figure: ${L}, below: 16 }`, `{ figure: ${SOOT_L}, above: 20 }`, `{ figure: ${SOOT_L}, above: ${L} }`, "{ figure: lamp-black.oil.oilIndexGPer100g, between: [59, 61] }"];
  expect(told(claims)).toEqual([]);
  // L* 116 (.1)^1/3 - 16 = 37.8.
  const lines = told(claims, { [READINGS]: flatReadings({ masstone: 0.1, soot: 0.04 }) });
  expect(lines.map((line) => /^content\/answers\/how-dark\.md:(\d+):/.exec(line)?.[1])).toEqual(["5", "7"]);
  expect(lines.every((line) => line.includes("37.84"))).toBe(true);
});
