import { mkdtempSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, inject, test } from "vitest";
import { contentHash } from "../../lib/kept/content-hash.ts";
import type { Records } from "../../lib/records/records.ts";
import { askedPapers, printedSite } from "../../lib/site/printed-site.ts";
import { siteOf } from "../../lib/site/site-of-records.ts";
import type { Site } from "../../lib/site/site.ts";
import { writeData } from "../../lib/site/write-site.ts";
import { WORKED_HERE, workThreads, type WorkThreads } from "../../lib/site/work-threads.ts";
import { writtenFiles } from "../../lib/site/written-files.ts";
import { contentKey } from "../../lib/sheet/revision.ts";
import { partOfDemonstration } from "../commands/demonstration-part.ts";
import type { WorkCache } from "../../lib/kept/work-cache.ts";
import { packedText } from "../../lib/print/packed-pages.ts";
import { RECORDS as DEMONSTRATION } from "../support/demonstration.ts";
import { pdfStructure } from "../support/pdf-structure.ts";
import { pageText, readPdf } from "../support/read-pdf.ts";
import { dataAt } from "../support/site-data.ts";
import { soundRecords } from "../support/sound-records.ts";

const home = mkdtempSync(join(inject("scratch"), "printed-"));

const CARDS = ["cards/cards.pdf", "cards/strip/cards.pdf"];
const COLOURS = ["green-earth", "titanium-white"];

/** Two colours of the demonstration, with cards of two sizes. */
const RECORDS: Records = twoColours();

function twoColours(): Records {
  const texts = partOfDemonstration(COLOURS);
  const prices = readFileSync("content/prices.csv", "utf8").split("\n");
  return soundRecords({
    ...texts,
    "prices.csv": prices
      .filter((row, i) => i < 2 || COLOURS.includes(row.split(",")[0] ?? ""))
      .join("\n"),
    "workshop.yaml": (texts["workshop.yaml"] ?? "").replace(/^ {2}- \{ name: 105x74,.*\n/m, ""),
  });
}

const siteAt = (date: string): Site => siteOf(RECORDS, date).site;

const paperAt = (site: Site, path: string): Uint8Array => {
  const found = site.papers?.find((paper) => paper.path === path);
  if (found === undefined) throw new Error(`Unexpected site without ${path}`);
  return found.bytes;
};

describe("papers of a build", async () => {
  const site = siteAt("2026-05-18");
  const cache: WorkCache = {
    folder: join(home, "cache"),
    keeps: true,
    programPart: () => undefined,
  };
  const { site: fresh } = await printedSite(site, join(home, "nothing-there"), cache);
  const out = join(home, "out");
  writeData(fresh, writtenFiles(out));

  test("are brought by their hashes where nothing that they are drawn from has changed, and told as they were", async () => {
    const brought = new Map<string, string>();
    const asked = askedPapers(site, {
      previousDir: join(home, "nothing-there"),
      cache,
      threads: WORKED_HERE,
      put: ({ path }) => {
        throw new Error(`Unexpected drawing of ${path}`);
      },
      bring: (path, hash) => brought.set(path, hash).has(path),
    });
    const { papers } = await asked.printed();
    const told = papers.map(({ path, hash, size }) => [path, hash, size]);
    expect(told).toEqual(
      (fresh.papers ?? []).map(({ path, bytes }) => [path, contentKey(bytes), bytes.length]),
    );
    for (const { path, bytes } of fresh.papers ?? [])
      expect(brought.get(path), path).toBe(contentHash([bytes]).toString("base64url"));
  });

  test("are a sheet for each colour and the range", () => {
    expect(fresh.papers?.map(({ path }) => path)).toEqual([
      ...COLOURS.map((slug) => `colours/${slug}/sheet.pdf`),
      "range.pdf",
      ...CARDS,
    ]);
  });

  test("are the same bytes drawn anew, and taken from the earlier output", async () => {
    for (const again of [
      (await printedSite(site, join(home, "nothing-there"))).site,
      (await printedSite(site, out, cache)).site,
    ]) {
      for (const { path, bytes } of fresh.papers ?? [])
        expect(Buffer.compare(paperAt(again, path), bytes), path).toBe(0);
      expect(dataAt(again, "manifest.json")).toBe(dataAt(fresh, "manifest.json"));
    }
  });

  test("are the same bytes drawn in threads", async () => {
    const threads = workThreads(1);
    const inThreads: WorkThreads = {
      ...threads,
      ask: (name, asked) => {
        const { result } = threads.ask(name, asked);
        return { result, here: () => result };
      },
    };
    const { site: again } = await printedSite(site, join(home, "nothing-there"), cache, inThreads);
    await threads.end();
    expect(again.papers?.map(({ path }) => path)).toEqual(fresh.papers?.map(({ path }) => path));
    for (const { path, bytes } of fresh.papers ?? [])
      expect(Buffer.compare(paperAt(again, path), bytes), path).toBe(0);
  });

  describe("with another file in the earlier output", () => {
    const path = "colours/green-earth/sheet.pdf";
    const planted = Buffer.from("%PDF-1.7 as if drawn before");
    const other = join(home, "other");
    writeData(fresh, writtenFiles(other));
    writeFileSync(join(other, path), planted);

    const drawnAgain = async (): Promise<void> => {
      const { site: again } = await printedSite(site, other, cache);
      expect(Buffer.compare(paperAt(again, path), paperAt(fresh, path))).toBe(0);
    };

    test("draw anew what is no longer as it was written", drawnAgain);

    test("draw anew what was put there together with its hash in the manifest", async () => {
      const manifest = join(other, "manifest.json");
      const stated = readFileSync(manifest, "utf8");
      const forged = stated.replace(contentKey(paperAt(fresh, path)), contentKey(planted));
      expect(forged).not.toBe(stated);
      writeFileSync(manifest, forged);
      await drawnAgain();
    });

    test("draw anew when anything that is printed has changed: here the date", async () => {
      const { site: later } = await printedSite(siteAt("2026-05-19"), other, cache);
      expect(Buffer.compare(paperAt(later, path), planted)).not.toBe(0);
    });
  });

  test("are files of their own, never links to the earlier ones", async () => {
    const next = join(home, "next");
    const { site: again } = await printedSite(site, out, cache);
    writeData(again, writtenFiles(next));
    for (const { path } of fresh.papers ?? []) {
      expect(statSync(join(next, path)).nlink, path).toBe(1);
      expect(statSync(join(next, path)).ino, path).not.toBe(statSync(join(out, path)).ino);
    }
  });

  test("lose no paper to a letter that no font has: the sheet that shows it shows [?]", async () => {
    const { prints } = site;
    if (prints === undefined) throw new Error("Unexpected site without sheets to print");
    const sheets = prints.sheets.map((sheet, i) => {
      if (i > 0) return sheet;
      const named = packedText(JSON.stringify({ ...sheet.sheet, name: "\u9ed2 Kuro" }));
      return { ...sheet, packed: () => ({ ...sheet.packed(), sheet: named }) };
    });
    const { site: printed, warnings } = await printedSite(
      { ...site, prints: { ...prints, sheets } },
      join(home, "nothing-there"),
    );
    expect(warnings).toEqual([]);
    expect(printed.papers?.map(({ path }) => path)).toEqual([
      ...COLOURS.map((slug) => `colours/${slug}/sheet.pdf`),
      "range.pdf",
      ...CARDS,
    ]);
    const shown = printed.papers?.find(
      ({ path }) => path === `colours/${COLOURS[0] ?? ""}/sheet.pdf`,
    );
    const { pages } = await readPdf(shown?.bytes ?? new Uint8Array());
    expect(pages.map(pageText).join(" ")).toContain("[?] Kuro");
  });
});

describe("the demonstration as built", () => {
  const read = (path: string): string => readFileSync(join(inject("siteDir"), path), "utf8");
  const kilobytes = (path: string): number => statSync(join(inject("siteDir"), path)).size / 1000;

  test("links each sheet's PDF from its page, with its size in words", () => {
    expect(read("colours/bone-black/index.html")).toMatch(/href="sheet\.pdf">Sheet to print</);
    const page = read("colours/bone-black/bench/index.html");
    expect(page).toMatch(/href="\.\.\/sheet\.pdf"/);
    expect(page).toContain(
      `this sheet to print, ${Math.round(kilobytes("colours/bone-black/sheet.pdf"))} kB`,
    );
  });

  test("links the range from the catalogue", () => {
    const page = read("colours/index.html");
    expect(page).toMatch(/href="\.\.\/range\.pdf"/);
    expect(page).toContain(
      `every sheet in one file to print, ${(kilobytes("range.pdf") / 1000).toFixed(1)} MB`,
    );
  });

  test("has every colour in the range, once, behind a bookmark", async () => {
    const { bookmarks, elements } = await pdfStructure(
      readFileSync(join(inject("siteDir"), "range.pdf")),
    );
    const names = [...DEMONSTRATION.colours.values()].map(({ record }) => record.name).sort();
    expect(
      bookmarks
        .filter(({ depth }) => depth === 1)
        .map(({ title }) => title)
        .sort(),
    ).toEqual(names);
    expect(
      elements
        .filter(({ role }) => role === "H1")
        .map(({ text }) => text)
        .slice(1)
        .sort(),
    ).toEqual(names);
  });
});
