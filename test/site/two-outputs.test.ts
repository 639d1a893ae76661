import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, inject, test } from "vitest";
import { parse } from "yaml";
import { recordSchemas } from "../../lib/records/json-schemas.ts";
import { FIGURE_TABLE } from "../../lib/sheet/figure-table.ts";
import {
  contentFolder,
  flatReadings,
  SMALLEST_WORKSHOP,
  type RecordTexts,
} from "../support/content-folder.ts";
import { commandHere } from "../support/command-here.ts";
import { pageText, readPdf } from "../support/read-pdf.ts";
import { siteFiles, sitePages, workshopFiles, workshopPages } from "./site-pages.ts";
import { assetFile } from "../support/asset-file.ts";

interface Schema {
  readonly private?: boolean;
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly anyOf?: readonly Schema[];
  readonly items?: Schema;
}

/** Paths of the keys that a record schema marks as private: `pricePerKg`, `readings.*.note`. */
function privatePaths(schema: Schema, path: readonly string[] = []): string[] {
  if (schema.private === true) return [path.join(".")];
  return [
    ...Object.entries(schema.properties ?? {}).flatMap(([key, part]) =>
      privatePaths(part, [...path, key]),
    ),
    ...(schema.anyOf ?? []).flatMap((part) => privatePaths(part, path)),
    ...(schema.items === undefined ? [] : privatePaths(schema.items, [...path, "*"])),
  ];
}

function valuesAt(value: unknown, [key, ...rest]: readonly string[]): unknown[] {
  if (key === undefined) return value === undefined ? [] : plainValues(value);
  if (key === "*")
    return Array.isArray(value) ? value.flatMap((entry) => valuesAt(entry, rest)) : [];
  return typeof value === "object" && value !== null
    ? valuesAt((value as Record<string, unknown>)[key], rest)
    : [];
}

function plainValues(value: unknown): unknown[] {
  return typeof value === "object" && value !== null
    ? Object.values(value).flatMap(plainValues)
    : [value];
}

const FOLDERS: Readonly<Record<string, string>> = {
  pigment: "pigments/",
  vehicle: "vehicles/",
  colour: "colours/",
  answer: "answers/",
  source: "sources/",
  workshop: "workshop.yaml",
  lot: "lots/",
  trial: "trials/",
};

/** Every private key with a value that stands for nothing else. */
const RECORDS: RecordTexts = {
  ...SMALLEST_WORKSHOP,
  "workshop.yaml": "name: Test Workshop\ncurrency: GBP\nvehicle: linseed-oil\n",
  "pigments/lamp-black.yaml":
    "name: Lamp black\nsupplier: Quillfeather Merchants\npricePerKg: 7391.37\ndensityGPerCm3: 1.8\nsupplierLots: [{ number: Ferrowhistle 77-Q, oilAbsorptionGPer100g: 87.319, date: 2025-11-13 }]\n",
  "vehicles/linseed-oil.yaml":
    "name: Linseed oil\nkind: oil\noil: linseed\ndensityGPerCm3: 0.931\npricePerKg: 6143.29\n",
  "vehicles/drier.yaml": "name: Drier\nkind: drier\nmetals: [{ metal: zinc, percent: 8 }]\n",
  "lots/lb-2601.yaml": `number: LB-2601
colour: lamp-black
date: 2026-01-05
pigments: [{ pigment: lamp-black, massG: 5431.71, supplierLot: Ferrowhistle 77-Q }]
oil: { vehicle: linseed-oil, massG: 4887.39 }
additions: [{ vehicle: drier, massG: 48.87 }]
finenessOfGrindUm: 23.71
densityGPerCm3: 1.2713
state: { is: conceded, since: 2026-05-01, why: Marrowstone let-down 4711 }
retainedSample: Shelfmark 88-Z
yieldG: 9876.13
tubes: [{ ml: 1, count: 7163, massG: 1.3759, tareG: 0.7193 }]
masstone: { reading: lamp-black, column: again, scale: factor, geometry: "45/0" }
note: Thistledown settled in the hopper.
`,
  "trials/window.yaml": `kind: exposure
colour: lamp-black
started: 2026-01-06
form: masstone
standard: after ASTM D4303
exposure: south window
readings: [{ date: 2026-02-06, deltaEab: 0.4 }]
note: Marjoram kept the dark half.
`,
  "trials/drying.yaml": `kind: drying
colour: lamp-black
started: 2026-01-06
touched: [{ date: 2026-01-09, found: tacky }]
note: Marjoram kept the dark half.
`,
  "readings/lamp-black.csv": flatReadings({ masstone: 0.02, again: 0.02 }),
  "colours/lamp-black.md": SMALLEST_WORKSHOP["colours/lamp-black.md"].replace(
    "\n---\nNotes",
    "\noilIndexGPer100g: { value: 90, standing: measured, method: weighed }\nsizes: [{ ml: 37, price: 11 }]\nadditions: [{ vehicle: drier, percentOfOil: 1 }]\n---\nNotes",
  ),
};

const PRIVATE = recordSchemas().flatMap(({ name, schema }) =>
  privatePaths(schema as Schema).map((path) => ({ kind: name, path })),
);

function privateValues({ kind, path }: { readonly kind: string; readonly path: string }): string[] {
  const folder = FOLDERS[kind] ?? "nowhere";
  return Object.entries(RECORDS)
    .filter(([file]) => file.startsWith(folder))
    .flatMap(([, text]) =>
      valuesAt(parse(text.replace(/^---\n|\n---[\s\S]*$/g, "")), path.split(".")),
    )
    .map(String);
}

/** Text of a file as a reader or a program finds it, a PDF's as printed; none of fonts and pictures. */
async function textOf(file: string): Promise<string> {
  if (/\.(?:woff2|png)$/.test(file)) return "";
  return file.endsWith(".pdf")
    ? (await readPdf(readFileSync(file))).pages.map(pageText).join("\n")
    : readFileSync(file, "utf8");
}

/** Every file that records have a part in: styles, scripts and fonts are the same for every workshop. */
function filesBelow(dir: string): string[] {
  return readdirSync(dir, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .filter((file) => !file.startsWith(join(dir, "assets")));
}

/** Whether a text states a value: a number as a number of its own, and not within another. */
function states(text: string, value: string): boolean {
  return /^[\d.]+$/.test(value)
    ? new RegExp(`(?<![\\d.])${value.replaceAll(".", "\\.")}(?!\\d)`).test(text)
    : text.includes(value);
}

/** A number as it may be printed: as written, and where that still tells, to one place and whole. */
function forms(value: string): string[] {
  const number = Number(value);
  return Number.isNaN(number) || number < 1000
    ? [value]
    : [...new Set([value, number.toFixed(1), number.toFixed(0)])];
}

describe("what a record keeps in the workshop", () => {
  const { home } = contentFolder(RECORDS);
  let published: string;
  let own: string;
  beforeAll(async () => {
    const { code, complaints } = await commandHere(["build"], { cwd: home });
    expect([code, complaints]).toEqual([0, ""]);
    [published, own] = (await Promise.all(
      ["_site", "_workshop"].map(async (dir) =>
        (await Promise.all(filesBelow(join(home, dir)).map(textOf))).join("\n"),
      ),
    )) as [string, string];
  });

  test("is marked in the schemas, and has a value in these records for each mark", () => {
    expect(PRIVATE.length).toBeGreaterThanOrEqual(15);
    expect(
      PRIVATE.filter((key) => privateValues(key).length === 0).map(
        ({ kind, path }) => `${kind} ${path}`,
      ),
    ).toEqual([]);
  });

  test.each(PRIVATE)("$kind $path: stands in no public file", (key) => {
    for (const value of privateValues(key).flatMap(forms))
      expect(states(published, value), value).toBe(false);
  });

  test("stands on the workshop's pages: suppliers, prices, and 500 g of pigment with 450 g of oil at their cost", () => {
    for (const value of ["Quillfeather Merchants", "7391.37", "6143.29", "Thistledown", "9876.1"])
      expect(own, value).toContain(value);
    // 0.5 kg x 7391.37 + 0.45 kg x 6143.29 = 3695.685 + 2764.4805, worked by hand.
    expect(own).toContain("6460.17");
    expect(published).not.toContain("6460");
  });

  test("the public site names the workshop's folder, pages and figures nowhere", () => {
    expect(published).not.toMatch(/_workshop|in the workshop<|batch\.sizes|"batch"/);
  });
});

describe("the demonstration's two outputs", () => {
  test("figures of the workshop's alone are in no sheet.json and on no page", () => {
    const patterns = FIGURE_TABLE.filter(({ isPrivate }) => isPrivate).map(
      ({ pattern }) => new RegExp(pattern.replaceAll(".", "\\.").replaceAll("*", "[a-z0-9-]+")),
    );
    expect(patterns.length).toBeGreaterThan(10);
    const found = siteFiles()
      .filter((file) => /(?:sheet\.json|\.html)$/.test(file))
      .filter((file) => {
        const text = readFileSync(join(inject("siteDir"), file), "utf8");
        return patterns.some((pattern) => pattern.test(text));
      });
    expect(found).toEqual([]);
  });

  test("no public figure was worked out of one that stays in the workshop", () => {
    const isPrivate = new Set(
      FIGURE_TABLE.filter((row) => row.isPrivate).map(({ pattern }) => pattern),
    );
    expect(isPrivate.has("pigments.*.pricePerKg") && isPrivate.has("batch.sizes.*.cost")).toBe(
      true,
    );
    const sheets = siteFiles().filter((file) => file.endsWith("sheet.json"));
    expect(sheets.length).toBeGreaterThan(30);
    for (const file of sheets)
      expect(readFileSync(join(inject("siteDir"), file), "utf8"), file).not.toMatch(
        /pricePerKg|batch\./,
      );
  });

  test("a page of the workshop is kept from searchers and has no address outside, and every link of it leads to a page there", () => {
    const files = new Set(workshopFiles());
    const pages = workshopPages();
    expect(pages.length).toBeGreaterThan(50);
    for (const { file, html, kind } of pages) {
      expect(["workshop", "batch-sheet"], file).toContain(kind);
      expect(html, file).toContain('<meta name="robots" content="noindex, nofollow">');
      expect(html, file).not.toMatch(/rel="canonical"|og:url/);
      for (const [, href = ""] of html.matchAll(/\s(?:href|src)="([^"#]+)(?:#[^"]*)?"/g)) {
        const to = new URL(href, `http://workshop.example/${file}`).pathname.slice(1);
        expect(
          files.has(to === "" || to.endsWith("/") ? `${to}index.html` : to),
          `${file}: ${href}`,
        ).toBe(true);
      }
    }
  });

  test("scripts of the workshop are not copied into the site", () => {
    for (const script of ["batch.js", "reply.js"]) {
      expect(assetFile(inject("siteDir"), `assets/scripts/${script}`), script).toBeUndefined();
      expect(assetFile(inject("workshopDir"), `assets/scripts/${script}`), script).toBeDefined();
    }
    for (const { file, html } of sitePages())
      expect(html, file).not.toMatch(/data-reply|data-batch/);
  });

  test("an answer's claim on a buying price is held, and listed in the workshop alone", () => {
    const path = "answers/why-does-it-cost-that/index.html";
    const [page, own] = [sitePages(), workshopPages()].map(
      (pages) => pages.find(({ file }) => file === path)?.html ?? "",
    );
    expect(own).toContain("Held, and kept out of the published answer");
    expect(own).toMatch(/Price of the pigment|Price/);
    expect(page).not.toMatch(/GBP\/kg|Price/);
  });
});
