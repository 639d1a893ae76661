import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { formatDiagnostic } from "../../lib/diagnostics/diagnostic.ts";
import { loadRecords } from "../../lib/records/load-records.ts";
import { contentFolder, flatReadings, type RecordTexts } from "../support/content-folder.ts";

const README = readFileSync(join(import.meta.dirname, "../../README.md"), "utf8");

/** The files that the README tells a newcomer to write: a name in code, then a fenced block. */
function writtenFiles(): Record<string, string> {
  const found = README.matchAll(/^`mine\/([^`]+)`\n\n```\w+\n([\s\S]*?)```/gm);
  return Object.fromEntries([...found].map(([, path = "", text = ""]) => [path, text]));
}

const FILES: RecordTexts = { ...writtenFiles(), "readings/bone-black.csv": flatReadings({ masstone: 0.006 }) };

test("its example is a workshop, a pigment and a colour", () => {
  expect(Object.keys(writtenFiles())).toEqual(["workshop.yaml", "pigments/bone-black.yaml", "colours/bone-black.md"]);
});

test("its example is accepted as it stands", () => {
  const { content, home } = contentFolder(FILES);
  const { records, diagnostics } = loadRecords(content, home);
  expect(diagnostics.map(formatDiagnostic)).toEqual([]);
  expect(records?.colours.get("bone-black")?.masstone?.form).toBe("spectrum");
});

test("the complaint that it prints is the one that comes", () => {
  const colour = (FILES["colours/bone-black.md"] ?? "").replace("masstone:", "mastone:");
  const { content, home } = contentFolder({ ...FILES, "colours/bone-black.md": colour });
  const told = loadRecords(content, home).diagnostics.map(formatDiagnostic).map((line) => line.replace(/^content\//, "mine/"));
  expect(README).toContain(told[0] ?? "nothing was told");
});
