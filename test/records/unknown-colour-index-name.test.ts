import { describe, expect, test } from "vitest";
import { contentFolder, SMALLEST_WORKSHOP } from "../support/content-folder.ts";
import { checkTold, toldOf } from "./told.ts";

const named = (colourIndexName: string): Record<string, string> => ({
  "pigments/lamp-black.yaml": `name: Some pigment\ncolourIndexName: "${colourIndexName}"\n`,
});

describe("a Colour Index name that no table knows is a warning, with the nearest that one knows", () => {
  checkTold([
    {
      what: "a slip of one digit",
      files: named("PR 263"),
      told: "content/pigments/lamp-black.yaml:2:18 warning Nothing is known here of a pigment by the Colour Index name PR 263; nearest: PR 264 records/unknown-colour-index-name",
    },
    {
      what: "letters of another hue",
      files: named("PBk 79"),
      told: "content/pigments/lamp-black.yaml:2:18 warning Nothing is known here of a pigment by the Colour Index name PBk 79; nearest: PBk 7 records/unknown-colour-index-name",
    },
  ]);
});

test.each(["PR 254", "PB 15:3", "PR 108:9", "PW 18:1", "PY 35:1", "PM 2"])(
  "%s is known, by itself or by its parent, and nothing is said",
  (name) =>
    expect(toldOf(contentFolder({ ...SMALLEST_WORKSHOP, ...named(name) })).lines).toEqual([]),
);
