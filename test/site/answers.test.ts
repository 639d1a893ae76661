import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { BrowserContextOptions, Page } from "playwright-core";
import { describe, expect, inject, test } from "vitest";
import { connectedBrowser } from "../support/connected-browser.ts";
import { sitePages } from "./site-pages.ts";

const browser = connectedBrowser();
const SITE = inject("siteAddress");
const GREY = "which-black-for-a-neutral-grey";

/** A page in a context of its own, and all that its console complains of. */
async function visit(options: BrowserContextOptions, use: (page: Page) => Promise<void>): Promise<void> {
  const context = await browser().newContext(options);
  try {
    const page = await context.newPage();
    const faults: string[] = [];
    page.on("console", (message) => message.type() === "error" && faults.push(message.text()));
    page.on("pageerror", (error) => faults.push(error.message));
    page.on("request", (request) => new URL(request.url()).origin !== SITE && faults.push(request.url()));
    await use(page);
    expect(faults).toEqual([]);
  } finally {
    await context.close();
  }
}

/** From the element that has the focus on, to the link of that name, by the tabulator alone. */
async function tabTo(page: Page, name: RegExp): Promise<void> {
  for (let i = 0; i < 400; i++) {
    await page.keyboard.press("Tab");
    if (name.test(await page.evaluate<string>("document.activeElement.textContent.trim()"))) return;
  }
  throw new Error(`Unexpected end of the tab order, expected ${name}`);
}

const path = (page: Page): string => new URL(page.url()).pathname;

describe("from the range to an answer", () => {
  test.each([["with script", true], ["without script", false]])("by mouse, %s", async (_, javaScriptEnabled) => {
    await visit({ javaScriptEnabled }, async (page) => {
      await page.goto(`${SITE}/colours/`);
      await page.getByRole("main").getByRole("link", { name: "Furnace Black", exact: true }).first().click();
      expect(path(page)).toBe("/colours/furnace-black/");
      await page.getByRole("link", { name: "Questions about this colour" }).click();
      await page.locator("#questions").getByRole("link", { name: "Which black gives a neutral grey in titanium white?" }).click();
      expect(path(page)).toBe(`/answers/${GREY}/`);
      expect(await page.locator(".page-head p").first().textContent()).toMatch(/^Furnace black: /);
      await page.getByRole("link", { name: "All answers" }).click();
      expect(path(page)).toBe("/answers/");
    });
  });

  test("by keyboard", async () => {
    await visit({}, async (page) => {
      await page.goto(`${SITE}/colours/furnace-black/`);
      await tabTo(page, /^Which black gives a neutral grey/);
      await page.keyboard.press("Enter");
      await page.waitForURL(`**/answers/${GREY}/`);
      await tabTo(page, /^Copy the reply$/);
    });
  });

  test("from the first page it is one click, and the short answer stands on the first screen", async () => {
    await visit({ viewport: { width: 1280, height: 800 } }, async (page) => {
      await page.goto(`${SITE}/`);
      await page.getByRole("link", { name: "Which black gives a neutral grey in titanium white?" }).click();
      const box = await page.locator(".page-head p").first().boundingBox();
      expect((box?.y ?? Infinity) + (box?.height ?? 0)).toBeLessThan(500);
    });
  });
});

interface Evidence { readonly figure: string; readonly text: string }
const evidence = new Map<string, readonly Evidence[]>();
/** Finished texts of a sheet's figures, from its sheet.json. */
function published(slug: string): readonly Evidence[] {
  const known = evidence.get(slug) ?? (JSON.parse(readFileSync(join(inject("siteDir"), "colours", slug, "sheet.json"), "utf8")) as { evidence: Evidence[] }).evidence;
  evidence.set(slug, known);
  return known;
}

interface Material { readonly colours: readonly { readonly slug: string; readonly name: string; readonly lines: Readonly<Record<string, string>> }[] }
const unescaped = (text: string): string => text.replaceAll("&lt;", "<").replaceAll("&gt;", ">").replaceAll("&quot;", '"').replaceAll("&#39;", "'").replaceAll("&amp;", "&");

describe("replies", () => {
  const pages = sitePages().filter(({ kind }) => kind === "sheet" || kind === "answer");

  test("stand on every sheet and answer, as text that needs no script", () => {
    expect(pages.length).toBeGreaterThan(50);
    for (const { file, html } of pages) expect(/<textarea [^>]*readonly[^>]*>Thank you for asking\.\n/.test(html), file).toBe(true);
  });

  test("give of every figure the text that sheet.json has, whichever is chosen", () => {
    let held = 0;
    for (const { file, html } of pages) {
      const { colours } = JSON.parse(unescaped(/data-reply="([^"]*)"/.exec(html)?.[1] ?? "")) as Material;
      for (const { slug, lines } of colours) {
        for (const [figure, line] of Object.entries(lines)) {
          const text = published(slug).find((entry) => entry.figure === figure)?.text;
          if (figure === "permanence.label") continue;
          if (text === undefined) expect(line, `${file} ${figure}`).toMatch(/: not stated$/);
          else expect(line, `${file} ${figure}`).toContain(`: ${text} (`);
          held++;
        }
      }
    }
    expect(held).toBeGreaterThan(300);
  });

  test("of an answer quote its short answer, its claims' figures among the lines, and the whole address", () => {
    const html = pages.find(({ file }) => file === `answers/${GREY}/index.html`)?.html ?? "";
    const text = unescaped(/<textarea [^>]*>([^<]*)</.exec(html)?.[1] ?? "");
    expect(text).toContain("You asked: Which black gives a neutral grey in titanium white?");
    const own = published("furnace-black").find(({ figure }) => figure === "tints.titanium-white.atL.50.b")?.text ?? "nothing";
    expect(text).toContain(`- b* in titanium white at L* 50: ${own} (derived)`);
    expect(text).toContain(`https://saltreach.example/answers/${GREY}/`);
    expect(text).toContain("invented");
  });

  test("of lead white carry its label in full and defer to it", () => {
    const html = pages.find(({ file }) => file === "colours/lead-white/index.html")?.html ?? "";
    const text = unescaped(/<textarea [^>]*>([^<]*)</.exec(html)?.[1] ?? "");
    for (const part of ["Danger.", "H302 ", "H360Df ", "H373 ", "H410 ", "The label and the safety data sheet prevail"]) expect(text).toContain(part);
  });

  test("can be put together anew with script: other colours and figures, and copied", async () => {
    await visit({ permissions: ["clipboard-read", "clipboard-write"] }, async (page) => {
      await page.goto(`${SITE}/answers/${GREY}/`);
      const text = page.locator("[data-text]");
      const stock = await text.inputValue();
      await page.getByRole("checkbox", { name: "Iron Oxide Black" }).uncheck();
      expect(await text.inputValue()).not.toContain("Iron Oxide Black");
      await page.getByRole("checkbox", { name: "Touch dry", exact: true }).check();
      const days = published("bone-black").find(({ figure }) => figure === "drying.touchDryDays")?.text ?? "nothing";
      expect(await text.inputValue()).toContain(`- Touch dry: ${days} (measured)`);
      await page.getByRole("textbox", { name: "What was asked" }).fill("And for a cold grey?");
      expect(await text.inputValue()).toContain("You asked: And for a cold grey?");
      await page.getByRole("button", { name: "Copy the reply" }).click();
      await page.getByText("Copied.").waitFor();
      expect(await page.evaluate("navigator.clipboard.readText()")).toBe(await text.inputValue());
      await page.reload();
      expect(await text.inputValue()).toBe(stock);
    });
  });

  test("without script offer no buttons that would do nothing", async () => {
    await visit({ javaScriptEnabled: false }, async (page) => {
      await page.goto(`${SITE}/answers/${GREY}/`);
      expect(await page.getByRole("button").count()).toBe(0);
      expect(await page.getByRole("checkbox").count()).toBe(0);
      expect(await page.locator("[data-text]").isVisible()).toBe(true);
    });
  });
});

describe("answers", () => {
  const answers = sitePages().filter(({ kind }) => kind === "answer");

  test("of the demonstration are ten at least, each with claims that hold", () => {
    expect(answers.length).toBeGreaterThanOrEqual(10);
    for (const { file, html } of answers) {
      expect(html, file).toContain(`id="claims-heading"`);
      expect(html, file).not.toContain("does not hold today");
    }
  });

  test("type no decimal number: whatever has one comes from the sheets", () => {
    for (const { file } of answers) {
      const text = readFileSync(join("content", file.replace(/\/index\.html$/, ".md")), "utf8");
      const prose = text.slice(text.indexOf("\n---", 4)).replace(/\{%.*?%\}/gs, "").replace(/\b0\.98\b/g, "");
      expect(prose.match(/[-\u2212]?\d+\.\d+/g), file).toBeNull();
    }
  });
});
