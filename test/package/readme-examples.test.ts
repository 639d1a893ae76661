import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { formatDiagnostic } from "../../lib/diagnostics/diagnostic.ts";
import { loadRecords } from "../../lib/records/load-records.ts";
import { siteOf } from "../../lib/site/site-of-records.ts";
import { commandHere } from "../support/command-here.ts";
import { contentFolder, type RecordTexts } from "../support/content-folder.ts";
import { README, section, steps } from "./readme.ts";

const STEPS = steps();
const [FIRST] = STEPS;
const firstFiles = FIRST?.files ?? {};

/** Complaints as the command prints them, where the folder is called as in the README. */
function told(files: RecordTexts): string[] {
  const { content, home } = contentFolder(files);
  return loadRecords(content, home)
    .diagnostics.map(formatDiagnostic)
    .map((line) => line.replaceAll(/(?<![\w/])content\//g, "../mine/"));
}

interface SheetTexts {
  readonly complaints: readonly string[];
  /** Every text of a site's sheets, its hard blanks as a reader sees them. */
  readonly texts: ReadonlySet<string>;
}

function sheetTexts(files: RecordTexts): SheetTexts {
  const { content, home } = contentFolder(files);
  const { records, diagnostics } = loadRecords(content, home);
  if (records === undefined)
    return { complaints: diagnostics.map(formatDiagnostic), texts: new Set() };
  const { site, warnings } = siteOf(records, undefined);
  const texts = [...site.files()]
    .filter(({ path }) => path.endsWith("sheet.json"))
    .flatMap(({ text }) => strings(JSON.parse(text)));
  return {
    complaints: [...diagnostics, ...warnings].map(formatDiagnostic),
    texts: new Set(texts.map((text) => text.replaceAll("\u00a0", " "))),
  };
}

function strings(value: unknown): string[] {
  if (typeof value === "string") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(strings) : [];
}

test("there is a step for each part of a record, the last of them without files", () => {
  expect(STEPS.map(({ heading }) => heading)).toEqual([
    "1. Four files",
    "2. Oil",
    "3. In a white",
    "4. Hiding",
    "5. Drying and light",
    "6. Hazards and label",
    "Next",
  ]);
  expect(Object.keys(firstFiles)).toEqual([
    "workshop.yaml",
    "pigments/red-earth.yaml",
    "colours/red-earth.md",
    "readings/drawdowns.csv",
  ]);
});

/** What each step comes to, worked out once for itself and for the step after it. */
const TEXTS = new Map(STEPS.map((step) => [step, sheetTexts(step.files)]));
const NOTHING: SheetTexts = { complaints: [], texts: new Set() };

describe.each(STEPS)("$heading", (step) => {
  const { heading, quotes } = step;
  const { complaints, texts } = TEXTS.get(step) ?? NOTHING;

  test("works as pasted, without a complaint", () => {
    expect(complaints).toEqual([]);
    expect(texts.size).toBeGreaterThan(20);
  });

  test("says what the README quotes, and the step before did not", () => {
    if (heading !== "Next") expect(quotes).not.toEqual([]);
    const before = STEPS[STEPS.indexOf(step) - 1];
    const { texts: earlier } = (before && TEXTS.get(before)) ?? NOTHING;
    for (const quote of quotes) {
      expect([...texts]).toContain(quote);
      expect([...earlier]).not.toContain(quote);
    }
  });
});

test("each step's command builds the pages that it names", async () => {
  const { content, home } = contentFolder(STEPS.at(-1)?.files ?? {});
  const run = await commandHere(["build", "--content", content, "--output", "site", "--strict"], {
    cwd: home,
  });
  expect(run.complaints).toBe("");
  expect(run.output).toMatch(/^3 sheets, 0 warnings, /);
  expect(readFileSync(join(home, "site/colours/red-earth/index.html"), "utf8")).toContain(
    "Red Earth",
  );
});

test.each(
  [...section("### 1. Four files").matchAll(/`(\{ (?:lab|munsell): [^`]+\})`/g)].map(
    ([, form = ""]) => form,
  ),
)("%s stands in the place of a reading", (form) => {
  const { "readings/drawdowns.csv": table, ...files } = firstFiles;
  expect(table).toBeDefined();
  expect(
    told({
      ...files,
      "colours/red-earth.md": (files["colours/red-earth.md"] ?? "").replace(
        /masstone: .*/,
        `masstone: ${form}`,
      ),
    }),
  ).toEqual([]);
});

/** The slips whose complaints the README prints, in its order. */
const SLIPS: readonly (readonly [file: string, from: string, to: string])[] = [
  ["colours/red-earth.md", "masstone: {", "mastone: {"],
  ["colours/red-earth.md", "column: masstone", "column: mastone"],
  ["pigments/red-earth.yaml", "PR 102\n", "PR 102\ndensityGPerCm3: 3600\n"],
  ["readings/drawdowns.csv", "\n420,", "\n410,"],
];
const PRINTED =
  /```text\n([\s\S]*?)```/
    .exec(section("## When something is wrong"))?.[1]
    ?.trimEnd()
    .split("\n") ?? [];

test("as many complaints are printed as are tried here", () => {
  expect(PRINTED).toHaveLength(SLIPS.length);
});

test.each(SLIPS)(
  "a slip in %s (%j for %j) brings the complaint that is printed",
  (file, from, to) => {
    const text = firstFiles[file] ?? "";
    expect(text).toContain(from);
    expect(told({ ...firstFiles, [file]: text.replace(from, to) })[0]).toBe(
      PRINTED[SLIPS.findIndex((slip) => slip[2] === to)],
    );
  },
);

test("the picture is there, and small", () => {
  const [, picture = ""] = /!\[[^\]]{40,}\]\(([^)]+)\)/.exec(README) ?? [];
  expect(picture).toBe("assets/readme/sheet.png");
  const bytes = readFileSync(join(import.meta.dirname, "../..", picture));
  expect(bytes.subarray(1, 4).toString("latin1")).toBe("PNG");
  expect(bytes.length).toBeGreaterThan(20_000);
  expect(bytes.length).toBeLessThan(200_000);
});
