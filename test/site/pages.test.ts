import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { describe, expect, inject, test } from "vitest";
import { htmlFaults } from "../support/html-faults.ts";
import { pagesOfEachKind, siteFiles, sitePages } from "./site-pages.ts";
import { assetFile } from "../support/asset-file.ts";

const PAGES = sitePages();
const POLICY = `<meta http-equiv="Content-Security-Policy" content="default-src 'self'; object-src 'none'; base-uri 'none'; form-action 'none'">`;

test("there is a page of every kind that templates/pages draws", () => {
  const drawn = new Set(PAGES.map(({ kind }) => kind));
  expect([...drawn].sort()).toEqual(
    readdirSync("templates/pages")
      .map((file) => file.replace(/\.njk$/, ""))
      // Written beside the site and never published.
      .filter((kind) => !["workshop", "batch-sheet"].includes(kind))
      .sort(),
  );
});

describe.each(pagesOfEachKind())("$file", ({ html }) => {
  test("is valid HTML, and sound by the static rules of accessibility (html-validate)", async () => {
    expect(await htmlFaults(html)).toEqual([]);
  });
});

describe("every page", () => {
  test("has the content security policy before anything that it rules", () => {
    for (const { file, html } of PAGES) {
      expect(html.split(POLICY), file).toHaveLength(2);
      expect(html.indexOf(POLICY), file).toBeLessThan(html.search(/<(?:link|script|style|img)\b/));
    }
  });

  test("keeps to it: no style attribute or element, no handler, no script of its own but data", () => {
    for (const { file, html } of PAGES) {
      expect(html.match(/<[^>]+\sstyle=|<style|<[^>]+\son[a-z]+=|javascript:/gi), file).toBeNull();
      const inline = [...html.matchAll(/<script(?![^>]*\ssrc=)[^>]*>/g)].map(([tag]) => tag);
      expect(
        inline.filter((tag) => tag !== `<script type="application/ld+json">`),
        file,
      ).toEqual([]);
    }
  });

  test("says that the workshop and its readings are invented, and what oily rags do", () => {
    for (const { file, html } of PAGES) {
      expect(html, file).toMatch(/invented/);
      expect(html, file).toMatch(/rags?\b[^<]*can catch fire by themselves/i);
    }
  });

  test("holds no figure that went wrong", () => {
    for (const { file, html } of PAGES)
      expect(
        html
          .replace(/<[^>]*>/g, " ")
          .match(/\b(?:NaN|undefined|null|Infinity|\[object Object\])\b/g),
        file,
      ).toBeNull();
  });
});

test("no cell of a table says the unit again that its column's head has said", () => {
  const cells = PAGES.flatMap(({ file, html }) =>
    [...html.replaceAll("\u00a0", " ").matchAll(/data-head="[^"]*, ([^"]+)">([^<]*)/g)].map(
      ([, unit = "", text = ""]) => ({
        file,
        unit,
        text,
      }),
    ),
  );
  expect(cells.length).toBeGreaterThan(100);
  expect(cells.filter(({ unit, text }) => text.trim().endsWith(unit))).toEqual([]);
});

describe("what a page weighs", () => {
  const elements = (html: string): number => (html.match(/<[a-z]/g) ?? []).length;

  test.each(PAGES.filter(({ kind }) => kind === "sheet"))(
    "$file: less than 60 kB gzipped, and 1,500 elements",
    ({ html }) => {
      expect(gzipSync(html).length).toBeLessThan(60_000);
      expect(elements(html)).toBeLessThan(1500);
    },
  );

  test.each(PAGES.filter(({ kind }) => kind === "bench"))(
    "$file: less than 60 kB gzipped",
    ({ html }) => {
      expect(gzipSync(html).length).toBeLessThan(60_000);
    },
  );

  test("styles, gzipped, and fonts together: less than 100 kB", () => {
    // The fonts' licences lie beside them, and no page asks for those.
    const files = siteFiles().filter((file) =>
      /^assets\/(?:styles|fonts)\/.*\.(?:css|woff2)$/.test(file),
    );
    expect(files).toContain(assetFile(inject("siteDir"), "assets/styles/site.css"));
    const sent = files
      .map((file) => readFileSync(join(inject("siteDir"), file)))
      .map((bytes, i) => (files[i]?.endsWith(".css") === true ? gzipSync(bytes) : bytes).length);
    expect(sent.reduce((sum, size) => sum + size, 0)).toBeLessThan(100_000);
  });
});

test("no file names the machine that it was built on", () => {
  const named = siteFiles().filter(
    (file) =>
      /\.(?:html|json|css|js|csv|xml)$/.test(file) &&
      new RegExp(`${process.cwd()}|${inject("scratch")}|node_modules`).test(
        readFileSync(join(inject("siteDir"), file), "utf8"),
      ),
  );
  expect(named).toEqual([]);
});
