/** A site of two languages in a folder of its host, as a browser finds it. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { fourColourWorkshop } from "../commands/demonstration-part.ts";
import { commandHere } from "../support/command-here.ts";
import { contentFolder } from "../support/content-folder.ts";
import { servedFolder, type ServedFolder } from "../support/served-folder.ts";
import { emptyPage } from "../support/visited-page.ts";

const RECORDS = fourColourWorkshop();
const { home } = contentFolder({
  ...RECORDS,
  "workshop.yaml": `${RECORDS["workshop.yaml"] ?? ""}pageLanguages: [en, de]\n`,
});
const HOST = join(home, "host");
const SITE = join(HOST, "colours");
let served: ServedFolder;

beforeAll(async () => {
  const { code, complaints } = await commandHere(
    ["build", "--output", SITE, "--workshop", join(home, "workshop"), "--base", "/colours/"],
    { cwd: home },
  );
  if (code !== 0) throw new Error(complaints);
  served = await servedFolder(HOST);
});
afterAll(() => served.close());

const files = (): string[] =>
  readdirSync(SITE, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(SITE.length + 1));

interface BuiltPage {
  readonly file: string;
  readonly html: string;
  readonly address: string;
}

const builtPages = (): BuiltPage[] =>
  files()
    .filter((file) => file.endsWith(".html"))
    .sort()
    .map((file) => ({
      file,
      html: readFileSync(join(SITE, file), "utf8"),
      address: `${served.address}/colours/${file.replace(/index\.html$/, "")}`,
    }));

/** The first page of each kind, in one language or the other: pages of one kind ask for the same. */
function oneOfEachKind(pages: readonly BuiltPage[]): BuiltPage[] {
  const kindOf = ({ file, html }: BuiltPage): string =>
    /<body class="kind-([a-z-]+)"/.exec(html)?.[1] ?? file;
  const kinds = [...new Set(pages.map(kindOf))];
  return kinds.flatMap((kind, i) => {
    const own = pages.filter((page) => kindOf(page) === kind);
    const isGerman = ({ file }: BuiltPage): boolean => file.startsWith("de/");
    return own.find((page) => isGerman(page) === (i % 2 === 0)) ?? own.slice(0, 1);
  });
}

/** What a page leads to and what it has a browser fetch, each once, as full addresses. */
function addressesIn({ html, address }: BuiltPage): string[] {
  const written = [
    ...[...html.matchAll(/<[a-z][^>]*?\s(?:href|src)="([^"]+)"/g)].map(([, one = ""]) => one),
    ...[...html.matchAll(/\ssrcset="([^"]+)"/g)].flatMap(([, all = ""]) =>
      all.split(",").map((one) => one.trim().split(/\s/)[0] ?? ""),
    ),
  ];
  return [
    ...new Set(written.map((one) => new URL(one, address).href.replace(/[?#].*$/, ""))),
  ].filter((one) => one.startsWith("http"));
}

describe("a site in a folder of its host, in two languages", () => {
  test("nothing that a browser asks for on any page is missing, and every link leads to a file", async () => {
    const { page, complaints } = await emptyPage(served.address);
    const pages = builtPages();
    expect(pages.length).toBeGreaterThan(60);
    const shown = oneOfEachKind(pages);
    expect(shown.length).toBeGreaterThan(10);
    const links = new Set<string>();
    for (const each of shown) {
      await page.goto(each.address);
      // What scripts have drawn leads somewhere too.
      for (const link of addressesIn({ ...each, html: await page.content() })) links.add(link);
    }
    // Beside the folder there is nothing: what is asked for there is missing too.
    expect(complaints).toEqual([]);
    for (const link of pages.flatMap(addressesIn)) links.add(link);
    const own = [...links].filter((link) => link.startsWith(served.address));
    expect(own.length).toBeGreaterThan(100);
    const there = new Set(files());
    expect(
      own.filter((link) => {
        const path = decodeURIComponent(link.slice(`${served.address}/colours/`.length));
        return !there.has(path === "" || path.endsWith("/") ? `${path}index.html` : path);
      }),
    ).toEqual([]);
  });

  test.each(["", "de/"])("the search of %j finds its own pages", async (folder) => {
    const { page, complaints } = await emptyPage(served.address);
    await page.goto(`${served.address}/colours/${folder}colours/lamp-black/`);
    await page.locator("input[type=search]").first().fill("zinc");
    await page.locator("#found a").first().click();
    await page.waitForURL((url) => !url.pathname.endsWith("/lamp-black/"));
    const found = page.url().slice(`${served.address}/colours/`.length);
    expect(found.startsWith("de/"), found).toBe(folder === "de/");
    expect(complaints).toEqual([]);
  });

  test.each(["", "de/"])(
    "recipes of %j are looked for in a worker of that language",
    async (folder) => {
      const { page } = await emptyPage(served.address);
      const worker = page.waitForEvent("worker");
      await page.goto(`${served.address}/colours/${folder}bench/recipes/?colour=lamp-black`);
      const response = await page.request.get((await worker).url());
      expect(response.status()).toBe(200);
    },
  );

  test("the page for lost visitors has its style and its links wherever it is shown", () => {
    const html = readFileSync(join(SITE, "404.html"), "utf8");
    const astray = [...html.matchAll(/\s(?:href|src)="([^"#]+)"/g)]
      .map(([, address = ""]) => address)
      .filter(
        (address) =>
          !/^(?:\/colours\/|https:\/\/saltreach\.example\/colours\/|mailto:)/.test(address),
      );
    expect(astray).toEqual([]);
  });

  test("whole addresses are of that folder: data, sitemap, canonical links", () => {
    const at = (file: string): string => readFileSync(join(SITE, file), "utf8");
    expect(JSON.parse(at("catalogue.json"))).toMatchObject({
      workshop: { siteAddress: "https://saltreach.example/colours/" },
    });
    expect(at("de/colours/lamp-black/index.html")).toContain(
      `<link rel="canonical" href="https://saltreach.example/colours/de/colours/lamp-black/">`,
    );
    for (const file of ["sitemap.xml", "catalogue.csv"]) {
      const whole = at(file).match(/https:\/\/saltreach\.example\/[^\s<,"]*/g) ?? [];
      expect(whole.length, file).toBeGreaterThan(0);
      expect(whole.filter((one) => !one.startsWith("https://saltreach.example/colours/"))).toEqual(
        [],
      );
    }
  });

  // basis: published. RFC 9309, 2.3 and RFC 9116, 3: both stand at the root of a host or nowhere.
  test("robots.txt and security.txt are no files of a folder", () => {
    expect(files().filter((file) => /robots\.txt|security\.txt/.test(file))).toEqual([]);
  });

  test("what a browser may keep for good is listed: each such file bears a hash", () => {
    expect(readFileSync(join(SITE, "_headers"), "utf8")).toBe(
      "/colours/assets/*\n  Cache-Control: public, max-age=31536000, immutable\n",
    );
    const assets = files().filter(
      (file) => file.startsWith("assets/") && !file.endsWith("-licence.txt"),
    );
    expect(assets.length).toBeGreaterThan(20);
    expect(assets.filter((file) => !/\.[0-9a-f]{10}\.\w+$/.test(file))).toEqual([]);
  });
});
