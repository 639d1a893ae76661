import { describe, expect, test } from "vitest";
import { nameComplaint } from "../../lib/permanence/traditional-names.ts";
import { KNOWN } from "../support/known.ts";

const { traditionalNames } = KNOWN.tables;

describe("a paint named for a pigment that it does not hold", () => {
  /** Colour Index constitution names, memory: natural madder is NR 9, synthetic alizarin PR 83. */
  test.each([
    ["Madder Lake", ["PR 83"], "PR 83 is alizarin crimson"],
    ["Rose Madder", ["PR 83:1"], "PR 83 is alizarin crimson"],
    ["Vermilion", ["PR 108"], "PR 108 is cadmium red"],
    ["Viridian", ["PG 7"], "PG 7 is phthalocyanine green"],
    ["Lead White", ["PW 6"], "PW 6 is titanium white"],
    ["Cadmium Yellow", ["PY 74"], "takes the word hue"],
  ])("%s of %o is warned of", (name, pigments, hint) =>
    expect(nameComplaint(name, pigments, traditionalNames)).toMatchObject({
      severity: "warning",
      rule: "permanence/name-and-pigment",
      hint: expect.stringContaining(hint) as string,
    }),
  );
  test.each([
    ["Madder Lake", ["NR 9"]],
    ["Rose Madder", ["NR 8"]],
    ["Indigo", ["NB 2"]],
    ["Alizarin Crimson", ["PR 83"]],
    ["Cadmium Orange", ["PO 20:1"]],
    ["Cadmium Yellow Hue", ["PY 74"]],
    ["Viridian-Quinacridone Black", ["PG 18", "PV 19"]],
    ["Madder Lake", [undefined]],
    ["Madder Lake", ["PW 21", undefined]],
    ["Madder Lake", []],
    ["Madderhorn Grey", ["PBk 6"]],
  ])("%s of %o is not", (name, pigments) =>
    expect(nameComplaint(name, pigments, traditionalNames)).toBeUndefined(),
  );
});
