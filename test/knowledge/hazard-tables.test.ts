import { mkdirSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, inject, test } from "vitest";
import { HAZARD_TABLES } from "../../lib/knowledge/hazard-tables.ts";
import {
  loadedTable,
  type EvidencedRow,
  type TableForm,
} from "../../lib/knowledge/loaded-table.ts";

const LIB = join(import.meta.dirname, "../../lib");

/** What is told of a table of the hazard room when one piece of its text is exchanged. */
function told(form: TableForm<EvidencedRow>, piece: string, exchanged: string): readonly string[] {
  const text = readFileSync(join(LIB, form.file), "utf8");
  expect(text).toContain(piece);
  const folder = mkdtempSync(join(inject("scratch"), "hazard-tables-"));
  mkdirSync(join(folder, dirname(form.file)), { recursive: true });
  writeFileSync(join(folder, form.file), text.replace(piece, exchanged));
  return loadedTable(form, folder).diagnostics.map(
    ({ place, message }) => `${place.file}:${place.line} ${message}`,
  );
}

describe("a slip in a table of the hazard room is told at its line", () => {
  test("a class that no precaution can answer", () => {
    expect(
      told(HAZARD_TABLES.precautions as never, "    carcinogenicity: 3", "    carcinogenicty: 3"),
    ).toEqual([
      "lib/hazard/texts/precautions.yaml:31 The answers is carcinogenicty; right would be a hazard class, a family of classes, or any",
    ]);
  });
  test("a substance that no rule names", () => {
    const [fault] = told(HAZARD_TABLES.substances as never, "titanium dioxide,", "titanium white,");
    expect(fault).toMatch(
      /^lib\/hazard\/classify\/substances\.csv:7 The substance is titanium white/,
    );
  });
  test("a name of a substance without its number", () => {
    const [fault] = told(
      HAZARD_TABLES.substanceNames as never,
      "136-52-7,cobalt",
      "cobalt soap,cobalt",
    );
    expect(fault).toMatch(
      /^lib\/hazard\/texts\/substance-names\.csv:2 The casNumber is cobalt soap; right would be a CAS number/,
    );
  });
});
