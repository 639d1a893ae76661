import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, inject, test } from "vitest";
import { siteFiles, sitePages } from "./site-pages.ts";
import { assetFile } from "../support/asset-file.ts";

const FILES = new Set(siteFiles());
const PAGES = sitePages();
const IDS = new Map(
  PAGES.map(({ file, html }) => [
    file,
    new Set([...html.matchAll(/\sid="([^"]+)"/g)].map((match) => match[1])),
  ]),
);
const HOST = "http://site.example/";

/** Where a link of a page leads, as a file of the site and an anchor in it; nothing for a link to elsewhere. */
function target(
  file: string,
  href: string,
): { readonly file: string; readonly anchor: string } | undefined {
  const url = new URL(href.replaceAll("&amp;", "&"), HOST + file);
  if (!url.href.startsWith(HOST)) return undefined;
  const path = decodeURIComponent(url.pathname.slice(1));
  return {
    file: path === "" || path.endsWith("/") ? `${path}index.html` : path,
    anchor: decodeURIComponent(url.hash.slice(1)),
  };
}

/** Every address that a page names: links, styles, scripts, pictures, drawings within the page. */
function addresses(html: string): string[] {
  return [...html.matchAll(/\s(href|src|srcset|poster|data|action)="([^"]*)"/g)].flatMap(
    ([, name, value = ""]) =>
      name === "srcset" ? value.split(",").map((one) => one.trim().replace(/ \d+w$/, "")) : [value],
  );
}

test("every address of a page leads to a file of the site, and its anchor to an id there", () => {
  const astray = PAGES.flatMap(({ file, html }) =>
    [...new Set(addresses(html))].flatMap((href) => {
      const to = target(file, href);
      if (to === undefined) return [];
      const found =
        FILES.has(to.file) && (to.anchor === "" || IDS.get(to.file)?.has(to.anchor) === true);
      return found ? [] : [`${file} -> ${href}`];
    }),
  );
  expect(astray).toEqual([]);
});

test("links to elsewhere are http, https or mailto, and nothing is fetched from elsewhere", () => {
  for (const { file, html } of PAGES) {
    const elsewhere = addresses(html).filter((href) => target(file, href) === undefined);
    expect(
      elsewhere.filter((href) => !/^(?:https?:\/\/|mailto:)/.test(href)),
      file,
    ).toEqual([]);
    const fetched = [
      ...html.matchAll(
        /<(?:script|img|iframe|object|embed|source|video|audio|link rel="(?:stylesheet|icon|preload)")[^>]*>/g,
      ),
    ].flatMap(([tag]) => addresses(tag));
    expect(
      fetched.filter((href) => target(file, href) === undefined),
      file,
    ).toEqual([]);
  }
});

test("every address of the style sheet leads to a file of the site", () => {
  const file = assetFile(inject("siteDir"), "assets/styles/site.css") ?? "";
  const urls = [
    ...readFileSync(join(inject("siteDir"), file), "utf8").matchAll(/url\(["']?([^"')]+)["']?\)/g),
  ].map((match) => match[1] ?? "");
  expect(urls.length).toBeGreaterThan(0);
  expect(urls.filter((url) => !FILES.has(target(file, url)?.file ?? ""))).toEqual([]);
});

test("every page is reached from the first one by links", () => {
  const reached = new Set<string>(["index.html"]);
  for (const file of reached) {
    const html = PAGES.find((page) => page.file === file)?.html ?? "";
    for (const href of addresses(html)) {
      const to = target(file, href);
      if (to?.file.endsWith(".html") === true && FILES.has(to.file)) reached.add(to.file);
    }
  }
  expect(PAGES.map(({ file }) => file).filter((file) => !reached.has(file))).toEqual(["404.html"]);
});

describe("sitemap.xml", () => {
  const text = readFileSync(join(inject("siteDir"), "sitemap.xml"), "utf8");

  test("names every page but the one for lost visitors, by the workshop's own address", () => {
    const locations = [...text.matchAll(/<loc>([^<]+)<\/loc>/g)].map((match) => match[1] ?? "");
    expect(
      locations.filter((location) => !location.startsWith("https://saltreach.example/")),
    ).toEqual([]);
    const files = locations.map(
      (location) =>
        target("index.html", location.replace("https://saltreach.example/", HOST))?.file,
    );
    expect(files.toSorted()).toEqual(
      PAGES.map(({ file }) => file).filter((file) => file !== "404.html"),
    );
  });
});

test("a page's canonical address is its own", () => {
  for (const { file, html } of PAGES.filter(({ file: name }) => name !== "404.html")) {
    expect(/<link rel="canonical" href="([^"]+)">/.exec(html)?.[1], file).toBe(
      `https://saltreach.example/${file.replace(/index\.html$/, "")}`,
    );
  }
});
