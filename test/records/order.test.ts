import { expect, test } from "vitest";
import { loadRecords } from "../../lib/records/load-records.ts";
import { contentFolder, flatReadings, SMALLEST_WORKSHOP } from "../support/content-folder.ts";

const ochre = (nth: string): string =>
  `---\nname: Ochre ${nth}\npigments: [{ pigment: ochre }]\n---\n`;

test("colours stand in the order that a reader looks for them in: 2 before 10, and before both what has no figure", () => {
  const { content, home } = contentFolder({
    ...SMALLEST_WORKSHOP,
    "pigments/ochre.yaml": "name: Ochre\n",
    ...Object.fromEntries(
      ["10", "2", "21", "1"].map((nth) => [`colours/ochre-${nth}.md`, ochre(nth)]),
    ),
    "colours/ochre.md": ochre(""),
    "readings/lamp-black.csv": flatReadings({ masstone: 0.04 }),
  });
  const { records } = loadRecords(content, home);
  expect([...(records?.colours.keys() ?? [])]).toEqual([
    "lamp-black",
    "ochre",
    "ochre-1",
    "ochre-2",
    "ochre-10",
    "ochre-21",
  ]);
});

test("so do complaints: by file, line and column", () => {
  const { content, home } = contentFolder({
    ...SMALLEST_WORKSHOP,
    ...Object.fromEntries(
      ["10", "2"].map((nth) => [`pigments/ochre-${nth}.yaml`, "nmae: Ochre\n"]),
    ),
  });
  const files = loadRecords(content, home).diagnostics.map(({ place }) => place.file);
  const own = [...new Set(files.filter((file) => file.includes("ochre")))];
  expect(own).toEqual(["content/pigments/ochre-2.yaml", "content/pigments/ochre-10.yaml"]);
});
