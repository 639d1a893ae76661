import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
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
