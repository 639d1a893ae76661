import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { workCacheOf } from "../../lib/kept/work-cache.ts";
import { loadRecords } from "../../lib/records/load-records.ts";
import { keptParsers } from "../../lib/records/kept-parsers.ts";
import { contentFolder, SMALLEST_WORKSHOP } from "../support/content-folder.ts";

test("records read again are those of the files as they are now, and what was not edited is not parsed again", () => {
  const { content, home } = contentFolder(SMALLEST_WORKSHOP);
  const parsers = keptParsers();
  const read = () => loadRecords(content, home, undefined, parsers);
  const write = (path: string, text: string): void => writeFileSync(join(content, path), text);
  const [first, again] = [read().records, read().records];
  expect(again?.pigments.get("lamp-black")?.record).toBe(first?.pigments.get("lamp-black")?.record);

  write("pigments/lamp-black.yaml", "name: Soot\n");
  expect(read().records?.pigments.get("lamp-black")?.record.name).toBe("Soot");
  expect(read().records?.colours.get("lamp-black")?.record).toBe(
    first?.colours.get("lamp-black")?.record,
  );

  write("pigments/lamp-black.yaml", "name: [Soot\n");
  expect(read().records).toBeUndefined();
  expect(read().diagnostics).toEqual(loadRecords(content, home).diagnostics);

  write("pigments/lamp-black.yaml", SMALLEST_WORKSHOP["pigments/lamp-black.yaml"]);
  const readings = readFileSync(join(content, "readings/lamp-black.csv"), "utf8");
  write("readings/lamp-black.csv", readings.replaceAll("0.02", "0.03"));
  expect(read().records?.colours.get("lamp-black")?.masstone).toEqual(
    loadRecords(content, home).records?.colours.get("lamp-black")?.masstone,
  );
});

test("a record that says what it said before is the same one, price and all, until something of it is edited", () => {
  const { content, home } = contentFolder({
    ...SMALLEST_WORKSHOP,
    "prices.csv": "colour,ml,price\nlamp-black,40,5\n",
  });
  const parsers = keptParsers();
  const black = () =>
    loadRecords(content, home, undefined, parsers).records?.colours.get("lamp-black");
  const write = (path: string, text: string): void => writeFileSync(join(content, path), text);
  const first = black();
  expect(first?.sizes.map(({ price }) => price)).toEqual([5]);
  expect(black()).toBe(first);
  write("prices.csv", "colour,ml,price\nlamp-black,40,6\n");
  const dearer = black();
  expect(dearer?.sizes.map(({ price }) => price)).toEqual([6]);
  expect(black()).toBe(dearer);
  const readings = readFileSync(join(content, "readings/lamp-black.csv"), "utf8");
  write("readings/lamp-black.csv", readings.replaceAll("0.02", "0.03"));
  const lighter = black();
  expect(lighter).not.toBe(dearer);
  expect(lighter?.masstone).toEqual(
    loadRecords(content, home).records?.colours.get("lamp-black")?.masstone,
  );
});

test("what is wrong is told at its line as it is now, however often the files were read before", () => {
  const { content, home } = contentFolder(SMALLEST_WORKSHOP);
  const parsers = keptParsers();
  const write = (path: string, text: string): void => writeFileSync(join(content, path), text);
  const told = () => {
    const { diagnostics } = loadRecords(content, home, "2026-01-01", parsers);
    expect(diagnostics).toEqual(loadRecords(content, home, "2026-01-01").diagnostics);
    return diagnostics.map(({ rule, place }) => `${rule} ${place.line}`);
  };
  const rows = ["lamp-black,40,5", "lamp-black,40,6", "soot,40,5", "lamp-black,60,free"];
  const list = (...more: readonly string[]): string =>
    `${["colour,ml,price", ...more, ...rows].join("\n")}\n`;
  write("prices.csv", list());
  const first = told();
  expect(first).toContain("records/price 5");
  expect(told()).toEqual(first);
  write("prices.csv", list("lamp-black,80,7"));
  expect(told()).toContain("records/price 6");
  const pigment = SMALLEST_WORKSHOP["pigments/lamp-black.yaml"];
  write("prices.csv", "colour,ml,price\nlamp-black,40,5\n");
  write("pigments/lamp-black.yaml", `${pigment}source: nobody\n`);
  const unknown = told();
  write("pigments/lamp-black.yaml", `# A line more.\n${pigment}source: nobody\n`);
  expect(told()).not.toEqual(unknown);
  write("pigments/lamp-black.yaml", pigment);
  expect(told()).toEqual(
    loadRecords(content, home, "2026-01-01").diagnostics.map(
      ({ rule, place }) => `${rule} ${place.line}`,
    ),
  );
});

test("what is wrong with a record by itself goes by the day and by the languages of labels, however often it was told", () => {
  const { content, home } = contentFolder({
    ...SMALLEST_WORKSHOP,
    "pigments/lamp-black.yaml": "name: Lamp black\nwhatItIs: Soot, ungiftig.\ndate: 2026-05-01\n",
  });
  const cache = { ...workCacheOf(content), programPart: () => "of this test" };
  const told = (today: string, languages: string): string[] => {
    writeFileSync(
      join(content, "workshop.yaml"),
      `${SMALLEST_WORKSHOP["workshop.yaml"]}languages: ${languages}\n`,
    );
    // Each is a run of its own, out of what the last one kept.
    const parsers = keptParsers();
    parsers.begin(cache);
    const found = loadRecords(content, home, today, parsers).diagnostics;
    parsers.keep(cache);
    expect(found).toEqual(loadRecords(content, home, today).diagnostics);
    return found
      .filter(({ place }) => place.file === "content/pigments/lamp-black.yaml")
      .map(({ rule }) => rule);
  };
  for (const _ of [1, 2]) {
    expect(told("2026-06-01", "[en]")).toEqual([]);
    expect(told("2026-04-01", "[en]")).toEqual(["records/date-to-come"]);
    expect(told("2026-06-01", "[en, de]")).toEqual(["records/claim"]);
  }
});
