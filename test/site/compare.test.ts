import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, inject, test } from "vitest";
import type { Page } from "playwright-core";
import type { ShownColour } from "../../lib/present/comparison-types.ts";
import { colourViolations, wcagViolations } from "../support/axe-violations.ts";
import { visitedPage } from "../support/visited-page.ts";
import { siteFiles } from "./site-pages.ts";
import { assetFile } from "../support/asset-file.ts";

const SITE = inject("siteAddress");

const visit = (
  use: Parameters<typeof visitedPage>[1],
  options?: Parameters<typeof visitedPage>[2],
): Promise<void> => visitedPage(SITE, use, options);
const path = (page: Page): string => page.url().replace(SITE, "");
const columns = (page: Page): Promise<string[]> =>
  page.locator(".comparison").first().locator("thead a").allTextContents();
const swatch = (page: Page, name: string) => page.getByRole("button", { name, exact: true });
const query = (...slugs: string[]): string => `${SITE}/compare/?colours=${slugs.join(",")}`;

describe("from the catalogue to a sheet to a comparison", () => {
  test("by mouse", async () => {
    await visit(async (page, complaints) => {
      await page.goto(`${SITE}/colours/`);
      await page.getByRole("main").getByRole("link", { name: "Bone Black", exact: true }).click();
      await page.waitForURL(`${SITE}/colours/bone-black/`);
      await page.getByRole("link", { name: "With another colour" }).click();
      await page.waitForURL(query("bone-black"));
      await page.locator("[data-status]:not(:empty)").waitFor();
      expect(await swatch(page, "Bone Black").getAttribute("aria-pressed")).toBe("true");
      expect(await page.locator("[data-status]").textContent()).toBe(
        "Bone Black, and which other?",
      );
      await swatch(page, "Raw Umber").click();
      await page.locator(".comparison").first().waitFor();
      expect(path(page)).toBe("/compare/?colours=bone-black,raw-umber");
      expect(await columns(page)).toEqual(["Bone Black", "Raw Umber"]);
      expect(await page.getByRole("heading", { level: 2 }).allTextContents()).toContain(
        "What differs",
      );
      expect(complaints).toEqual([]);
    });
  });

  test("by keyboard", async () => {
    await visit(async (page, complaints) => {
      await page.goto(`${SITE}/colours/bone-black/`);
      const link = page.getByRole("link", { name: "With another colour" });
      await link.focus();
      await page.keyboard.press("Enter");
      await swatch(page, "Bone Black").waitFor();
      await swatch(page, "Bone Black").focus();
      await page.keyboard.press("Tab");
      const chosen = await page.evaluate<string>("document.activeElement.textContent.trim()");
      await page.keyboard.press("Space");
      await page.locator(".comparison").first().waitFor();
      expect(await columns(page)).toEqual(["Bone Black", chosen]);
      expect(complaints).toEqual([]);
    });
  });

  test("without script, by the pairs that the workshop chose", async () => {
    await visit(
      async (page, complaints) => {
        await page.goto(`${SITE}/colours/`);
        await page.getByRole("main").getByRole("link", { name: "Bone Black", exact: true }).click();
        await page.waitForURL(`${SITE}/colours/bone-black/`);
        await page.getByRole("link", { name: "Bone Black and Spinel Black" }).click();
        await page.waitForURL(`${SITE}/compare/bone-black-and-spinel-black/`);
        expect(await columns(page)).toEqual(["Bone Black", "Spinel Black"]);
        await page.getByRole("link", { name: "Choose other colours" }).click();
        await page.waitForURL(query("bone-black", "spinel-black"));
        expect(await page.locator("[data-without]").isVisible()).toBe(true);
        expect(await page.locator("[data-picker]").isVisible()).toBe(false);
        await page.getByRole("link", { name: "Raw Umber and Burnt Umber" }).click();
        await page.waitForURL(`${SITE}/compare/raw-umber-and-burnt-umber/`);
        expect(await columns(page)).toEqual(["Raw Umber", "Burnt Umber"]);
        expect(complaints).toEqual([]);
      },
      { javaScriptEnabled: false },
    );
  });
});

test("the address holds the choice: through a reload, and Back and Forward", async () => {
  await visit(async (page, complaints) => {
    await page.goto(query("lamp-black", "bone-black"));
    await page.locator(".comparison").first().waitFor();
    await page.getByText("Choose other colours").click();
    await swatch(page, "Iron Oxide Black").click();
    await page.locator(".comparison--3").first().waitFor();
    const three = ["Lamp Black", "Bone Black", "Iron Oxide Black"];
    expect(await columns(page)).toEqual(three);
    await page.reload();
    await page.locator(".comparison--3").first().waitFor();
    expect(await columns(page)).toEqual(three);
    expect(await page.title()).toMatch(/^Lamp Black, Bone Black and Iron Oxide Black \u2013 /);
    await page.goBack();
    await page.locator(".comparison--2").first().waitFor();
    expect(await columns(page)).toEqual(three.slice(0, 2));
    await page.goForward();
    await page.locator(".comparison--3").first().waitFor();
    await page.getByText("Choose other colours").click();
    await swatch(page, "Bone Black").click();
    await page.locator(".comparison--2").first().waitFor();
    expect(await columns(page)).toEqual(["Lamp Black", "Iron Oxide Black"]);
    expect(complaints).toEqual([]);
  });
});

test("the script draws what the build drew, letter for letter", async () => {
  const tables = (page: Page): Promise<string> =>
    page.evaluate<string>(
      "[...document.querySelectorAll('.side-by-side > *')].map((one) => one.outerHTML.replaceAll('../../', '../').replace(/>\\s+</g, '><').trim()).join('')",
    );
  await visit(async (page) => {
    await page.goto(`${SITE}/compare/lamp-black-and-bone-black-and-iron-oxide-black/`);
    const built = await tables(page);
    await page.goto(query("lamp-black", "bone-black", "iron-oxide-black"));
    await page.locator(".comparison").first().waitFor();
    expect(await tables(page)).toBe(built);
    expect(built.length).toBeGreaterThan(5000);
  });
});

test.each([
  [
    "lamp-blak,bone-black",
    "There is no colour \u201clamp-blak\u201d here; perhaps Lamp Black was meant. Bone Black, and which other?",
  ],
  ["lamp-black,lamp-black", "Lamp Black, and which other?"],
  [
    "lamp-black,bone-black,raw-umber,zinc-white,vine-black",
    "Four fit side by side; the others are left out.",
  ],
  [
    encodeURIComponent(`"><img src=x>`),
    'There is no colour \u201c"><img src=x>\u201d here. Press two colours or more.',
  ],
])("an address that asks for %s is told what is wrong with it", async (asked, told) => {
  await visit(async (page, complaints) => {
    await page.goto(`${SITE}/compare/?colours=${asked}`);
    await page.locator("[data-status]:not(:empty)").waitFor();
    expect(await page.locator("[data-status]").textContent()).toBe(told);
    expect(complaints).toEqual([]);
  });
});

test("figures that cannot be fetched are said so, and are asked for again the next time", async () => {
  await visit(async (page) => {
    await page.route("**/compare/bone-black.json", (route) => route.abort());
    await page.goto(query("lamp-black", "bone-black"));
    await page.locator("[data-status]:not(:empty)").waitFor();
    expect(await page.locator("[data-status]").textContent()).toMatch(
      /could not be fetched.*web server/,
    );
    await page.unroute("**/compare/bone-black.json");
    await page.reload();
    await page.locator(".comparison").first().waitFor();
    expect(await page.locator("[data-status]").textContent()).toBe("");
  });
});

/** Ways in which texts were drawn that axe has looked at. */
const drawn = new Set<string>();

test.each([2, 4])(
  "%i colours pass axe, and do not scroll sideways at 320 or 768 px",
  async (count) => {
    await visit(async (page) => {
      await page.goto(
        query(
          ...["viridian-quinacridone-black", "lead-white", "slate-grey", "lamp-black"].slice(
            0,
            count,
          ),
        ),
      );
      await page.locator(".comparison").first().waitFor();
      await page.evaluate(
        "document.querySelectorAll('details').forEach((one) => { one.open = true; })",
      );
      for (const width of [320, 768]) {
        await page.setViewportSize({ width, height: 700 });
        expect(await page.evaluate("document.documentElement.scrollWidth")).toBeLessThanOrEqual(
          width,
        );
      }
      expect(await wcagViolations(page)).toEqual([]);
      expect(await colourViolations(page, drawn)).toEqual([]);
    });
  },
);

describe("what the page carries of a colour", () => {
  const read = (file: string): unknown =>
    JSON.parse(readFileSync(join(inject("siteDir"), file), "utf8"));
  const slugs = siteFiles().flatMap(
    (file) => /^compare\/([a-z0-9-]+)\.json$/.exec(file)?.[1] ?? [],
  );

  test("is there for every sheet", () => {
    const { colours } = read("catalogue.json") as { colours: { slug: string }[] };
    expect(slugs.toSorted()).toEqual(colours.map(({ slug }) => slug).toSorted());
  });

  test.each(slugs)("%s: figures read as in sheet.json, with the same standing", (slug) => {
    const { cells } = read(`compare/${slug}.json`) as ShownColour;
    const { evidence } = read(`colours/${slug}/sheet.json`) as {
      evidence: { figure: string; text: string; standing: string }[];
    };
    const PATHS = {
      masstone: "notations.masstone.munsell.text",
      strength: "optics.tintingStrengthByVolume",
      oilByMass: "oil.oilIndexGPer100g",
      oilByVolume: "oil.oilGPer100cm3",
      drying: "drying.touchDryDays",
    };
    for (const [key, path] of Object.entries(PATHS)) {
      const found = evidence.find(({ figure }) => figure === path);
      expect([cells[key]?.text, cells[key]?.standing?.kind], key).toEqual([
        found?.text,
        found?.standing,
      ]);
    }
  });
});

test("the script weighs less than 12 kB gzipped, with neither a colour library nor a renotation in it", async () => {
  const { gzipSync } = await import("node:zlib");
  const file = assetFile(inject("siteDir"), "assets/scripts/compare.js") ?? "";
  const script = readFileSync(join(inject("siteDir"), file), "utf8");
  expect(gzipSync(script).length).toBeLessThan(12_000);
  expect(script).not.toMatch(/lab65|renotation|ciede/i);
});
