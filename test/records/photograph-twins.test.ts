import { describe } from "vitest";
import { SMALLEST_WORKSHOP, type RecordTexts } from "../support/content-folder.ts";
import { checkTold } from "./told.ts";

/** Two colours, each with a photograph; that a file copied under another name shows one paint is common practice. */
function shown(
  files: Readonly<Record<string, string>>,
  [one, other]: readonly [string, string],
): RecordTexts {
  const colour = (name: string, photograph: string, masstone: string): string =>
    SMALLEST_WORKSHOP["colours/lamp-black.md"]
      .replace("name: Lamp Black", `name: ${name}`)
      .replace(/^masstone: .*$/m, `masstone: ${masstone}\nphotographs: [${photograph}]`);
  return {
    ...Object.fromEntries(
      Object.entries(files).map(([name, bytes]) => [`photographs/${name}`, bytes]),
    ),
    "colours/lamp-black.md": colour(
      "Lamp Black",
      one,
      "{ reading: lamp-black, column: masstone, scale: factor, geometry: 45/0 }",
    ),
    "colours/lamp-blacker.md": colour("Lamp Blacker", other, "{ munsell: N 2/ }"),
  };
}

const of = (file: string, further = ""): string => `{ file: ${file}, of: drawdown${further} }`;

const shared = (name: string, what: string): string =>
  `content/colours/lamp-blacker.md:6:23 warning The photograph ${name} is ${what} as one of lamp-black already, and here as one of lamp-blacker; a file copied under another name? Of a picture that shows both, paint says where each lies records/photograph-shared`;

describe("one photograph under two colours", () => {
  checkTold([
    {
      what: "two files of the same bytes",
      files: shown({ "a.jpg": "one picture", "b.jpg": "one picture" }, [of("a.jpg"), of("b.jpg")]),
      told: [shared("b.jpg", "byte for byte a.jpg, which is shown")],
    },
    {
      what: "one file",
      files: shown({ "a.jpg": "one picture" }, [of("a.jpg"), of("a.jpg")]),
      told: [shared("a.jpg", "shown")],
    },
    {
      what: "two files of one size",
      files: shown({ "a.jpg": "one picture", "b.jpg": "two picture" }, [of("a.jpg"), of("b.jpg")]),
      told: [],
    },
    {
      what: "one picture of both, each at its place",
      files: shown({ "a.jpg": "one picture" }, [
        of("a.jpg", ", paint: [0, 0, 9, 9]"),
        of("a.jpg", ", paint: [10, 0, 19, 9]"),
      ]),
      told: [],
    },
  ]);
});
