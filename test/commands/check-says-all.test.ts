import { mkdtempSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, inject, test } from "vitest";
import { formatDiagnostic } from "../../lib/diagnostics/diagnostic.ts";
import { checkedSite } from "../../lib/site/checked-site.ts";
import { writtenSite } from "../../lib/site/written-site.ts";
import { soundWorkshops } from "../fuzz/sound-workshops.ts";
import { contentFolder, type RecordTexts } from "../support/content-folder.ts";

/** A slip of which nothing is known before a sheet, an answer or a card is made. */
interface Broken {
  readonly what: string;
  readonly file: string;
  readonly edit: readonly [found: string | RegExp, written: string];
  readonly rule: string;
}

const WORKSHOPS = soundWorkshops();
const BLACK = "colours/lamp-black.md";
const ANSWER = "answers/so-much-oil.md";

/** One of the small workshops with all of these slips in it. */
function spoilt(workshop: number, slips: readonly Broken[]): RecordTexts {
  const texts = { ...WORKSHOPS[workshop] };
  for (const {
    file,
    edit: [found, written],
  } of slips) {
    const text = (texts[file] ?? "").replace(found, written);
    if (text === texts[file]) throw new Error(`${file} does not hold ${String(found)}`);
    texts[file] = text;
  }
  return texts;
}

const folder = (): string => mkdtempSync(join(inject("scratch"), "site-"));

/** What `build --strict` tells, which stops it before it writes anything, and what `check` tells of the same folder. */
async function told(records: RecordTexts): Promise<Record<"build" | "check", string[]>> {
  const { content: contentDir } = contentFolder(records);
  const [dir, workshopDir] = [folder(), folder()];
  const options = { contentDir, date: "2026-12-31", claims: "error" } as const;
  const report = await writtenSite(
    {
      ...options,
      base: undefined,
      strict: true,
      dir,
      workshopDir,
      kind: "paper",
      earlierDir: join(dir, "none"),
      earlierWorkshopDir: join(workshopDir, "none"),
      since: undefined,
    },
    { complaints: () => undefined, progress: () => undefined },
  );
  expect(report.sheetCount).toBeUndefined();
  return {
    build: report.diagnostics.map(formatDiagnostic),
    check: (await checkedSite(options)).diagnostics.map(formatDiagnostic),
  };
}

describe("check says what build --strict stops at", () => {
  test.each<readonly [workshop: number, slips: readonly Broken[]]>([
    [
      0,
      [
        {
          what: "a claim that no longer holds",
          file: ANSWER,
          edit: ["between: [5, 150]", "between: [5, 6]"],
          rule: "claims/value",
        },
        {
          what: "a letter that the fonts of paper lack",
          file: BLACK,
          edit: ["lot: LB-2602", "lot: 黒-2602"],
          rule: "print/missing-letter",
        },
        {
          what: "a drawdown that does not agree with the others",
          file: BLACK,
          edit: ['massRatio: "1:5", ratioKind', 'massRatio: "1:1", ratioKind'],
          rule: "sheet/",
        },
        {
          what: "a trial that the estimate contradicts",
          file: BLACK,
          edit: [
            "touchDryDays: { value: 8, standing: measured }, throughDryDays: 21",
            "touchDryDays: 0.2",
          ],
          rule: "sheet/contradiction",
        },
      ],
    ],
    [
      0,
      [
        {
          what: "a claim about a figure that there is not",
          file: ANSWER,
          edit: [
            "figure: lamp-black.oil.oilIndexGPer100g, between",
            "figure: lamp-black.oil.x, between",
          ],
          rule: "claims/unknown-figure",
        },
      ],
    ],
    [
      0,
      [
        {
          what: "a shortcode that leads nowhere",
          file: ANSWER,
          edit: ["{% colour titanium-white %}", "{% colour titanium-whit %}"],
          rule: "answers/",
        },
        {
          what: "a reply of a figure that there is not",
          file: ANSWER,
          edit: ["drying.touchDryDays]", "drying.touchDryDay]"],
          rule: "answers/reply",
        },
      ],
    ],
    [
      2,
      [
        {
          what: "a maker's label that the reckoning differs from",
          file: "colours/zinc-white.md",
          edit: ["signalWord: Warning", "signalWord: Danger"],
          rule: "sheet/label-differs",
        },
      ],
    ],
    [
      4,
      [
        {
          what: "a colour that may not be sold",
          file: "colours/lead-white.md",
          edit: [/legalBasis:\n(?: .*\n)+/, ""],
          rule: "sheet/not-for-sale",
        },
      ],
    ],
    [
      0,
      [
        {
          what: "a pair of a colour that is not there",
          file: "workshop.yaml",
          edit: ["currency: GBP", "currency: GBP\nleadingPair: [lamp-black, bone-black]"],
          rule: "records/missing-reference",
        },
      ],
    ],
  ])("of workshop %i, several slips at once", async (workshop, slips) => {
    const { build, check } = await told(spoilt(workshop, slips));
    for (const { rule, what } of slips) expect(build.join("\n"), what).toContain(` ${rule}`);
    expect(check).toEqual(expect.arrayContaining(build));
  });

  test("a card too small for what it states", async () => {
    const sound = WORKSHOPS[4] ?? {};
    const { build, check } = await told({
      ...sound,
      "workshop.yaml": (sound["workshop.yaml"] ?? "").replace(
        "widthMm: 90, heightMm: 55",
        "widthMm: 70, heightMm: 30, chip: true",
      ),
      "colours/viridian-quinacridone-black.md": (
        sound["colours/viridian-quinacridone-black.md"] ?? ""
      ).replace(/^name: .*$/m, `name: ${"W".repeat(80)}`),
    });
    expect(build.join("\n")).toContain(" print/card");
    expect(check).toEqual(expect.arrayContaining(build));
  });

  /** Of a colour without masstone or of one read as a chip nothing can be drawn; the pages are made without it. */
  test("a leading pair of a colour that is not read yet is no fault, and every page is made", async () => {
    const sound = WORKSHOPS[4] ?? {};
    const { content } = contentFolder({
      ...sound,
      "workshop.yaml": `${sound["workshop.yaml"] ?? ""}leadingPair: [slate-grey, lead-white]\npairs: [[slate-grey, viridian-quinacridone-black]]\n`,
    });
    const { records } = await checkedSite({
      contentDir: content,
      date: "2026-12-31",
      claims: "error",
    });
    expect(records).toBeDefined();
    const [dir, workshopDir] = [folder(), folder()];
    const report = await writtenSite(
      {
        contentDir: content,
        date: "2026-12-31",
        claims: "error",
        base: undefined,
        strict: false,
        dir,
        workshopDir,
        kind: "screen",
        earlierDir: join(dir, "none"),
        earlierWorkshopDir: join(workshopDir, "none"),
        since: undefined,
      },
      { complaints: () => undefined, progress: () => undefined },
    );
    expect(report.sheetCount).toBe(3);
  });
});

test("and a substance that a label has no name for in its language", async () => {
  const { build, check } = await told({
    "workshop.yaml": "name: Test Workshop\nlanguages: [de]\nvehicle: oil\n",
    "vehicles/oil.yaml":
      "name: Linseed oil\nkind: oil\noil: linseed\ndensityGPerCm3: 0.93\nhazards: []\n",
    "pigments/red.yaml":
      "name: Invented red\ncasNumber: 9000-01-5\ndensityGPerCm3: 3\nhazards: [{ statement: H301, hazardClass: Acute Tox. 3 }]\n",
    "colours/red.md":
      "---\nname: Red\npigments: [{ pigment: red }]\noilIndexGPer100g: { value: 30, method: batch book, date: 2026-01-01 }\n---\n",
  });
  expect(build.join("\n")).toContain(" hazard/name-missing");
  expect(check).toEqual(expect.arrayContaining(build));
});
