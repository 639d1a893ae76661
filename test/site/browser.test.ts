import type { Page } from "playwright-core";
import { expect, inject, test } from "vitest";
import { colourViolations, wcagViolations } from "../support/axe-violations.ts";
import { visitedPage } from "../support/visited-page.ts";
import { pagesOfEachKind, workshopPagesOfEachKind } from "./site-pages.ts";

const SITE = inject("siteAddress");
const KINDS = pagesOfEachKind();

/** Open a page of the site with everything that is folded unfolded and its fonts there. */
async function opened(page: Page, file: string): Promise<void> {
  await page.goto(`${SITE}/${file}`);
  await unfolded(page);
}

async function unfolded(page: Page): Promise<void> {
  await page.evaluate(
    "document.querySelectorAll('details').forEach((one) => { one.open = true; }); document.fonts.ready.then(() => true)",
  );
}

test("a visitor gets from the first page to a colour's sheet and to a section of it", async () => {
  await visitedPage(SITE, async (page, complaints) => {
    await page.goto(`${SITE}/`);
    expect(await page.title()).toContain("Saltreach Colourworks");
    await page
      .getByRole("navigation", { name: "Site" })
      .getByRole("link", { name: "Colours" })
      .click();
    await page.waitForURL(`${SITE}/colours/`);
    await page
      .getByRole("main")
      .getByRole("link", { name: "Lamp Black", exact: true })
      .first()
      .click();
    await page.waitForURL(`${SITE}/colours/lamp-black/`);
    expect(await page.getByRole("heading", { level: 1 }).textContent()).toContain("Lamp Black");
    const section = page.locator(".contents a[href^='#']").nth(2);
    const anchor = (await section.getAttribute("href")) ?? "";
    await section.click();
    await page.waitForURL(`${SITE}/colours/lamp-black/${anchor}`);
    expect(await page.locator(anchor).boundingBox()).toMatchObject({
      height: expect.any(Number) as number,
    });
    const top = await page.evaluate<number>(
      `document.querySelector(${JSON.stringify(anchor)}).getBoundingClientRect().top`,
    );
    expect(Math.abs(top)).toBeLessThan(200);
    expect(complaints).toEqual([]);
  });
});

test.each(["alizarin-crimson", "phthalocyanine-blue", "vine-black"])(
  "what %s is, in a word each, stands on the first screen of a laptop",
  async (slug) => {
    await visitedPage(SITE, async (page, complaints) => {
      await page.setViewportSize({ width: 1440, height: 900 });
      await opened(page, `colours/${slug}/`);
      const words = await page.locator(".fact__word").all();
      expect(words.length).toBe(6);
      for (const word of words) {
        const { y, height } = (await word.boundingBox()) ?? { y: Infinity, height: 0 };
        expect(y + height).toBeLessThan(900);
      }
      // A mark beside the word that it is about, never on a line of its own.
      for (const width of [1440, 1280, 390]) {
        await page.setViewportSize({ width, height: 900 });
        const apart = await page.evaluate<number[]>(
          "[...document.querySelectorAll('.marked')].map((one) => one.getClientRects().length)",
        );
        expect(apart.filter((lines) => lines > 1)).toEqual([]);
      }
      expect(complaints).toEqual([]);
    });
  },
);

/** Ways in which texts were drawn that axe has looked at. */
const drawn = { light: new Set<string>(), dark: new Set<string>() };

// WCAG 2.2 A and AA, of which SC 1.4.10 asks that nothing scrolls sideways at 320 px.
test.each(KINDS)(
  "$file opens without an error, asks nothing of another host, passes axe light and dark, and fits a phone and a tablet with all unfolded",
  async ({ file }) => {
    await visitedPage(SITE, async (page, complaints) => {
      await opened(page, file);
      expect(await page.evaluate("[...document.styleSheets].length")).toBeGreaterThan(0);
      expect(await wcagViolations(page)).toEqual([]);
      expect(await colourViolations(page, drawn.light), "light").toEqual([]);
      await page.emulateMedia({ colorScheme: "dark" });
      expect(await colourViolations(page, drawn.dark), "dark").toEqual([]);
      expect(await scrollsSideways(page)).toEqual([]);
      expect(complaints).toEqual([]);
    });
  },
);

test("the workshop's own pages fit a phone and a tablet with all unfolded", async () => {
  const address = inject("workshopAddress");
  await visitedPage(address, async (page) => {
    for (const { file } of workshopPagesOfEachKind()) {
      await page.goto(`${address}/${file}`);
      await unfolded(page);
      expect(await scrollsSideways(page), file).toEqual([]);
    }
  });
});

/** Widths, of a phone and of a tablet held upright [px], at which the page is wider than its window. */
async function scrollsSideways(page: Page): Promise<number[]> {
  const wide: number[] = [];
  for (const width of [320, 768]) {
    await page.setViewportSize({ width, height: 640 });
    if ((await page.evaluate<number>("document.documentElement.scrollWidth")) > width)
      wide.push(width);
  }
  return wide;
}
