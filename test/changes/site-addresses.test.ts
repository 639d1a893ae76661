import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import formats from "ajv-formats";
import { describe, expect, test } from "vitest";
import { loadRecords } from "../../lib/records/load-records.ts";
import { addressFaults, keptManifests } from "../../lib/site/site-addresses.ts";
import { checkedSite } from "../../lib/site/checked-site.ts";
import { dataSchemas } from "../../lib/site/data-schemas.ts";
import { printedSite } from "../../lib/site/printed-site.ts";
import { siteOf } from "../../lib/site/site-of-records.ts";
import { publishedState } from "../../lib/changes/published-state.ts";
import { readPdf } from "../support/read-pdf.ts";
import { contentFolder, SMALLEST_WORKSHOP, type RecordTexts } from "../support/content-folder.ts";
import { dataAt } from "../support/site-data.ts";

const WORKSHOP = "name: Test Workshop\nsiteAddress: https://saltreach.example/shop\n";
const FORMER = `${WORKSHOP}former:\n  - { address: colours/soot/, name: Soot, replacedBy: colours/lamp-black/, date: 2026-03-01 }\n`;

function loaded(texts: RecordTexts) {
  const { content } = contentFolder({ ...SMALLEST_WORKSHOP, ...texts });
  const { records, diagnostics } = loadRecords(content);
  if (records === undefined) throw new Error(diagnostics.map(({ message }) => message).join("\n"));
  return { content, records };
}

const manifest = (files: readonly string[]): string =>
  JSON.stringify({ kind: "mullstone-manifest", files, sheets: [] });

function keptIn(content: string, files: readonly string[]): string {
  mkdirSync(join(content, "manifests"), { recursive: true });
  writeFileSync(join(content, "manifests", "published.json"), manifest(files));
  return content;
}

describe("a page that was published", () => {
  const { content, records } = loaded({ "workshop.yaml": WORKSHOP });
  const { paths } = siteOf(records, undefined);

  test("is there: nothing is said", () => {
    expect(addressFaults(records, paths, keptManifests(keptIn(content, paths)))).toEqual([]);
  });

  test("is gone: one error for a colour and all its pages in all languages, which check finds by itself", async () => {
    keptIn(content, [
      ...paths,
      "colours/soot/index.html",
      "colours/soot/bench/index.html",
      "colours/soot/evidence/index.html",
      "de/colours/soot/index.html",
      "colours/soot/sheet.json",
      "de/index.html",
    ]);
    const { diagnostics } = await checkedSite({
      contentDir: content,
      date: undefined,
      claims: "error",
    });
    const found = diagnostics
      .filter(({ rule }) => rule === "site/lost-address")
      .map(({ message }) => message.replace(/ was published.*/, ""));
    expect(found).toEqual(["The page colours/soot/", "The page de/"]);
  });

  test("is gone by two manifests: one error, where it can be mended", () => {
    const kept = keptManifests(keptIn(content, [...paths, "colours/soot/index.html"]));
    const elsewhere = join(content, "elsewhere.json");
    writeFileSync(elsewhere, manifest([...paths, "colours/soot/bench/index.html"]));
    expect(
      addressFaults(records, paths, [...kept, elsewhere]).map(({ message, place }) => [
        message.replace(/ was published.*/, ""),
        place.file.replace(/.*\//, ""),
      ]),
    ).toEqual([["The page colours/soot/", "workshop.yaml"]]);
  });
});

describe("a former page", () => {
  const { content, records } = loaded({ "workshop.yaml": FORMER });
  const { site, paths } = siteOf(records, "2026-05-01");

  test("stands at its old addresses and says what took its place", () => {
    const old = ["colours/soot/", "colours/soot/bench/", "colours/soot/evidence/"];
    for (const address of old) {
      const page = site.pages.find(({ path }) => path === `${address}index.html`);
      expect(JSON.stringify(page?.view), address).toMatch(
        /no longer on this site, since 1 March 2026/,
      );
      expect(JSON.stringify(page?.view), address).toContain("In its place: Lamp Black");
      expect(
        new URL(
          /"href":"([^"]*colours\/lamp-black\/)"/.exec(JSON.stringify(page?.view))?.[1] ?? "",
          `https://host/${address}`,
        ).pathname,
        address,
      ).toBe("/colours/lamp-black/");
    }
  });

  test("of a colour has a sheet.json that says where its data is, in the form of its schema", () => {
    const text = dataAt(site, "colours/soot/sheet.json") ?? "";
    const former: unknown = JSON.parse(text);
    expect(former).toEqual({
      schemaVersion: 1,
      kind: "mullstone-former-sheet",
      slug: "soot",
      name: "Soot",
      gone: "2026-03-01",
      replacedBy: {
        name: "Lamp Black",
        url: "colours/lamp-black/",
        sheet: "colours/lamp-black/sheet.json",
      },
    });
    const schema = dataSchemas().find(({ name }) => name === "former-sheet")?.schema ?? false;
    const validate = formats.default(new Ajv2020({ strictTypes: false })).compile(schema);
    expect([validate(former), validate.errors]).toEqual([true, null]);
    expect(validate({ ...(former as object), evidence: [] })).toBe(false);
  });

  test("of a colour has a PDF of one page that says what took its place, and leads there", async () => {
    const { site: printed } = await printedSite(site, join(content, "none"));
    const paper = printed.papers?.find(({ path }) => path === "colours/soot/sheet.pdf");
    const pdf = await readPdf(paper?.bytes ?? new Uint8Array());
    expect([pdf.title, pdf.language, pdf.isTagged]).toEqual([
      "Soot \u2013 Test Workshop",
      "en",
      true,
    ]);
    expect(pdf.pages).toHaveLength(1);
    const words = pdf.pages[0]?.texts.map(({ text }) => text.trim()).join(" ") ?? "";
    expect(words.replaceAll(/\s+/g, " ")).toContain(
      "Soot Soot is no longer on this site, since 1 March 2026. In its place: Lamp Black https://saltreach.example/shop/colours/lamp-black/",
    );
    expect(Buffer.from(paper?.bytes ?? []).toString("latin1")).toContain(
      "https://saltreach.example/shop/colours/lamp-black/",
    );
  });

  test("that is no colour's has neither", () => {
    const { records: own } = loaded({
      "workshop.yaml": `${WORKSHOP}former:\n  - { address: answers/soot/, name: Soot? }\n`,
    });
    const files = [...siteOf(own, undefined).site.files()].map(({ path }) => path);
    expect(files.filter((path) => path.includes("soot"))).toEqual([]);
  });

  test("holds an address of an earlier manifest, and is not in the list for search engines", () => {
    const lost = ["colours/soot/index.html", "colours/soot/bench/index.html"];
    expect(addressFaults(records, paths, keptManifests(keptIn(content, lost)))).toEqual([]);
    const sitemap = dataAt(site, "sitemap.xml") ?? "";
    expect(sitemap).toContain("https://saltreach.example/shop/colours/lamp-black/");
    expect(sitemap).not.toContain("soot");
  });

  test.each([
    [
      "address: colours/lamp-black/, name: Soot",
      "The page colours/lamp-black/ is there today, and can't be a former one",
    ],
    [
      "address: colours/soot/, name: Soot, replacedBy: colours/lamp-blak/",
      "There is no page colours/lamp-blak/ to take the place of colours/soot/",
    ],
  ])("%s is refused", (fields, message) => {
    const { records: own } = loaded({ "workshop.yaml": `${WORKSHOP}former:\n  - { ${fields} }\n` });
    const [fault] = addressFaults(own, siteOf(own, undefined).paths, []);
    expect(fault?.message).toBe(message);
    expect(fault?.place.line).toBe(4);
  });
});

describe("a colour that another replaces", () => {
  const colour = (more: string): RecordTexts => ({
    "colours/soot.md": `---\nname: Soot\npigments: [{ pigment: lamp-black }]\n${more}---\n`,
  });
  test("leads there from its sheet, and says so in the catalogue", () => {
    const { records } = loaded(colour("discontinued: 2026-03-01\nreplacedBy: lamp-black\n"));
    const { site } = siteOf(records, undefined);
    const page = site.pages.find(({ path }) => path === "colours/soot/index.html");
    expect(JSON.stringify(page?.view)).toContain("In its place: Lamp Black");
    const catalogue = dataAt(site, "catalogue.json") ?? "";
    expect(JSON.parse(catalogue)).toMatchObject({
      colours: [{ slug: "lamp-black" }, { slug: "soot", replacedBy: "lamp-black" }],
    });
  });
  test.each([
    ["replacedBy: lamp-black\n", "no discontinued"],
    ["discontinued: 2026-03-01\nreplacedBy: soot\n", "can't be replaced by itself"],
    ["discontinued: 2026-03-01\nreplacedBy: lamp-blak\n", "There is no lamp-blak in colours/"],
  ])("%j is refused", (more, message) => {
    const { content } = contentFolder({ ...SMALLEST_WORKSHOP, ...colour(more) });
    expect(
      loadRecords(content)
        .diagnostics.map((one) => one.message)
        .join("\n"),
    ).toContain(message);
  });
});

describe("the feed of what changed", () => {
  const { records } = loaded({ "workshop.yaml": WORKSHOP });
  const before = publishedState({
    sheets: [{ slug: "soot", name: "Soot & Co", revision: "x", states: {}, cautions: {} }],
    changes: [
      { date: "2026-01-01", address: "colours/soot/", title: "Soot & Co", sentences: ["A <b>."] },
    ],
  });
  const { site } = siteOf(records, "2026-05-01", undefined, () => before);
  const text = dataAt(site, "feed.xml") ?? "";

  // basis: published. RFC 4287, 4.1.1 and 4.1.2: id, title and updated of feed and entry, an author, a link to itself.
  test("has what RFC 4287 asks for, today's entries before those of before", () => {
    const entries = text.match(/<entry>[\s\S]*?<\/entry>/g) ?? [];
    expect(entries).toHaveLength(3);
    for (const part of [text.replace(/<entry>[\s\S]*<\/entry>/, ""), ...entries])
      for (const name of ["id", "title", "updated"])
        expect(part.match(new RegExp(`<${name}>[^<]+</${name}>`, "g")), name).toHaveLength(1);
    expect(text).toMatch(/<author><name>Test Workshop<\/name><\/author>/);
    expect(text).toContain(
      `<link rel="self" type="application/atom+xml" href="https://saltreach.example/shop/feed.xml"/>`,
    );
    expect(entries.map((entry) => /<id>([^<]+)/.exec(entry)?.[1])).toEqual([
      "https://saltreach.example/shop/colours/lamp-black/#2026-05-01",
      "https://saltreach.example/shop/colours/soot/#2026-05-01",
      "https://saltreach.example/shop/colours/soot/#2026-01-01",
    ]);
    expect(entries[2]).toContain("A &lt;b&gt;.");
    expect(text).toContain("Soot &amp; Co");
  });

  test("is named in the head of every page, and handed on in the manifest", () => {
    expect(site.pages.filter((page) => page.site.feed === undefined)).toEqual([]);
    const manifestText = dataAt(site, "manifest.json") ?? "{}";
    expect(publishedState(JSON.parse(manifestText)).past).toHaveLength(3);
  });

  test("is absent where no earlier state is known", () => {
    expect(dataAt(siteOf(records, "2026-05-01").site, "feed.xml")).toBeUndefined();
  });
});
