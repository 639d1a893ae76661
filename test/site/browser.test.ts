import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { AxeResults } from "axe-core";
import type { BrowserContext, Page } from "playwright-core";
import { afterAll, expect, inject, test } from "vitest";
import { connectedBrowser } from "../support/connected-browser.ts";
import { pagesOfEachKind } from "./site-pages.ts";

const browser = connectedBrowser();
const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const SITE = inject("siteAddress");
const KINDS = pagesOfEachKind();

/** Every rule is run; of a rule that passes no node is described but the first. */
const RULES_OF_WCAG = `axe.run({
  runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"],
  resultTypes: ["violations"],
})`;

interface Visit {
  readonly page: Page;
  /** Errors of the console, exceptions, what was asked of another host, what came with an error status. */
  readonly faults: readonly string[];
}

let context: BrowserContext | undefined;
afterAll(() => context?.close());

/** A page that keeps account of what goes wrong, by daylight; styles and fonts stay with the browser from one to the next. */
async function visit<T>(use: (visit: Visit) => Promise<T>): Promise<T> {
  context ??= await browser().newContext({ colorScheme: "light" });
  const page = await context.newPage();
  try {
    const faults: string[] = [];
    page.on(
      "console",
      (message) => message.type() === "error" && faults.push(`console: ${message.text()}`),
    );
    page.on("pageerror", (error) => faults.push(`exception: ${error.message}`));
    page.on(
      "request",
      (request) =>
        new URL(request.url()).origin !== SITE &&
        faults.push(`asked of another host: ${request.url()}`),
    );
    page.on(
      "response",
      (response) =>
        response.status() >= 400 && faults.push(`${response.status()} ${response.url()}`),
    );
    return await use({ page, faults });
  } finally {
    await page.close();
  }
}

/** Open a page of the site with everything that is folded unfolded and its fonts there. */
async function opened(page: Page, file: string): Promise<void> {
  await page.goto(`${SITE}/${file}`);
  await page.evaluate(
    "document.querySelectorAll('details').forEach((one) => { one.open = true; }); document.fonts.ready.then(() => true)",
  );
}

test("a visitor gets from the first page to a colour's sheet and to a section of it", async () => {
  await visit(async ({ page, faults }) => {
    await page.goto(`${SITE}/`);
    expect(await page.title()).toContain("Saltreach Colourworks");
    await page
      .getByRole("navigation", { name: "Site" })
      .getByRole("link", { name: "Colours" })
      .click();
    await page
      .getByRole("main")
      .getByRole("link", { name: "Lamp Black", exact: true })
      .first()
      .click();
    expect(new URL(page.url()).pathname).toBe("/colours/lamp-black/");
    expect(await page.getByRole("heading", { level: 1 }).textContent()).toContain("Lamp Black");
    const section = page.locator(".contents a[href^='#']").nth(2);
    const anchor = (await section.getAttribute("href")) ?? "";
    await section.click();
    expect(new URL(page.url()).hash).toBe(anchor);
    expect(await page.locator(anchor).boundingBox()).toMatchObject({
      height: expect.any(Number) as number,
    });
    const top = await page.evaluate<number>(
      `document.querySelector(${JSON.stringify(anchor)}).getBoundingClientRect().top`,
    );
    expect(Math.abs(top)).toBeLessThan(200);
    expect(faults).toEqual([]);
  });
});

/** Rules of axe by which a page that passes in one scheme of colours may fail in the other. */
const RULES_OF_COLOUR = `axe.run({
  runOnly: { type: "rule", values: ["color-contrast", "link-in-text-block"] },
  resultTypes: ["violations"],
})`;

async function violations(page: Page, rules: string): Promise<string[]> {
  const found = await page.evaluate<AxeResults>(rules);
  expect(found.passes.map(({ id }) => id)).toContain("color-contrast");
  return found.violations.flatMap(({ id, nodes }) =>
    nodes
      .slice(0, 5)
      .map(
        ({ target, failureSummary }) =>
          `${id} ${target.join(" ")} ${failureSummary?.replaceAll(/\s+/g, " ") ?? ""}`,
      ),
  );
}

// WCAG 2.2 A and AA, of which SC 1.4.10 asks that nothing scrolls sideways at 320 px.
test.each(KINDS)(
  "$file opens without an error, asks nothing of another host, passes axe light and dark, and fits 320 px with all unfolded",
  async ({ file }) => {
    await visit(async ({ page, faults }) => {
      await opened(page, file);
      expect(await page.evaluate("[...document.styleSheets].length")).toBeGreaterThan(0);
      await page.evaluate(AXE);
      expect(await violations(page, RULES_OF_WCAG), "light").toEqual([]);
      await page.emulateMedia({ colorScheme: "dark" });
      expect(await violations(page, RULES_OF_COLOUR), "dark").toEqual([]);
      await page.setViewportSize({ width: 320, height: 640 });
      expect(
        await page.evaluate("document.documentElement.scrollWidth"),
        "wide",
      ).toBeLessThanOrEqual(320);
      expect(faults).toEqual([]);
    });
  },
);
