import type { Page } from "playwright-core";
import { describe, expect, inject, test } from "vitest";
import { startedBrowser } from "../support/started-browser.ts";
import { visitedPage } from "../support/visited-page.ts";

const SITE = inject("siteAddress");

async function on(path: string, width: number, use: (page: Page) => Promise<void>): Promise<void> {
  await visitedPage(SITE, async (page) => {
    await page.setViewportSize({ width, height: 900 });
    await page.goto(`${SITE}/${path}`);
    await page.evaluate("document.fonts.ready.then(() => true)");
    await use(page);
  });
}

describe("folds", () => {
  test.each([
    ["answers/which-black-for-a-neutral-grey/#claims-heading", "#claims"],
    ["colours/in-the-whites/#in-lead-white", "#in-lead-white details"],
  ])("the address %s opens the fold", async (path, fold) => {
    await on(path, 1440, async (page) => {
      expect(await page.locator(fold).getAttribute("open")).not.toBeNull();
    });
  });
  test("are opened and shut by keyboard", async () => {
    await on("colours/lead-white/", 390, async (page) => {
      const summary = page.locator("#handling summary").first();
      await summary.focus();
      await page.keyboard.press("Enter");
      const isOpen = "document.querySelector('#handling details').open";
      expect(await page.evaluate(isOpen)).toBe(true);
      await page.keyboard.press("Enter");
      expect(await page.evaluate(isOpen)).toBe(false);
    });
  });
});

/** A telephone's, a tablet's, a screen's [px]. */
const WIDTHS = [390, 820, 1440];

test.each(["colours/by-hue/", "colours/by-value/"])(
  "the chart of %s names every colour of the range, and has points that a finger meets (WCAG 2.2 SC 2.5.8)",
  async (path) => {
    await on(path, 390, async (page) => {
      for (const width of WIDTHS) {
        await page.setViewportSize({ width, height: 900 });
        const named = await page.evaluate<string[]>(
          "[...document.querySelectorAll('.picture text.plot__label')].filter((one) => one.getClientRects().length > 0 && getComputedStyle(one).visibility === 'visible').map((one) => one.textContent)",
        );
        const drawn = await page.evaluate<string[]>(
          "[...new Set([...document.querySelectorAll('.picture .plot__point title')].map((one) => one.textContent))]",
        );
        expect(drawn.length).toBeGreaterThan(30);
        expect(
          drawn.filter((name) => !named.includes(name)),
          `${width} px`,
        ).toEqual([]);
        const small = await page.evaluate<string[]>(
          "[...document.querySelectorAll('.plot__hit')].filter((one) => { const { width, height } = one.getBoundingClientRect(); return width > 0 && Math.min(width, height) < 23.9; }).map((one) => one.parentElement.getAttribute('href'))",
        );
        expect(small, `${width} px`).toEqual([]);
      }
    });
  },
);

test("a point of the hue circle shows its name when pointed at and when it has the focus", async () => {
  await on("colours/by-hue/", 1440, async (page) => {
    const shown = (): Promise<string> =>
      page.evaluate<string>(
        "getComputedStyle(document.querySelector(\".plot__point[href$='cadmium-red/'] .plot__name\")).visibility",
      );
    const point = page.locator(".picture__wide .plot__point[href$='cadmium-red/']");
    expect(await shown()).toBe("hidden");
    await point.locator(".plot__hit").hover();
    expect(await shown()).toBe("visible");
    await page.mouse.move(0, 0);
    expect(await shown()).toBe("hidden");
    await page.keyboard.press("Tab");
    await point.focus();
    expect(await shown()).toBe("visible");
  });
});

test.each(["colours/", "colours/by-family/", "colours/by-hue/"])(
  "%s does not scroll sideways at 390 px with a long list of pigments",
  async (path) => {
    await on(path, 390, async (page) => {
      await page.evaluate(
        "for (const one of document.querySelectorAll(\".index-name, td[data-head='Pigments']\")) one.textContent = 'PBk 9, PBr 7, PV 19, PW 6:1, PB 15:3, PY 42, PR 101, PG 18, Dibromanthanthronediarylidecomplex';",
      );
      expect(await page.evaluate("document.documentElement.scrollWidth")).toBe(390);
    });
  },
);

describe("filters of the range", () => {
  const shown =
    "document.querySelectorAll('.family:not([hidden]) .colour-card:not([hidden])').length";

  test("a family, then what it has to be; unticked all are there again", async () => {
    await on("colours/", 1440, async (page) => {
      const all = await page.evaluate<number>(shown);
      const box = (name: string) => page.getByRole("checkbox", { name, exact: true });
      await page.locator(".filters > summary").click();
      await box("Blacks").check();
      const blacks = await page.evaluate<number>(shown);
      expect(blacks).toBeGreaterThan(5);
      expect(blacks).toBeLessThan(all);
      await box("Blues").check();
      expect(await page.evaluate<number>(shown)).toBeGreaterThan(blacks);
      await box("Blues").uncheck();
      await box("hide").check();
      expect(await page.evaluate<number>(shown)).toBeLessThan(blacks);
      expect(await page.locator(".filters [data-status]").textContent()).toContain(` of ${all} `);
      await box("Blacks").uncheck();
      await box("hide").uncheck();
      expect(await page.evaluate<number>(shown)).toBe(all);
    });
  });
});

/** Fonts are there, and the frame after them is drawn and counted: a shift is told once its frame is over. */
const DRAWN_WHOLE = `document.fonts.ready.then(async () => {
  for (let frame = 0; frame < 3; frame++) await new Promise((done) => requestAnimationFrame(done));
})`;

describe("layout shift", () => {
  const WATCHED = [
    "",
    "colours/bone-black/",
    "compare/bone-black-and-spinel-black/",
    "answers/which-black-for-a-neutral-grey/",
  ];

  // Cumulative layout shift counts as good up to 0.1 (web.dev/articles/cls); ours is held to a tenth of it.
  test.each(WATCHED.flatMap((path) => [390, 1440].map((width) => [path, width] as const)))(
    "%s at %s px holds still while it loads",
    async (path, width) => {
      const page = await (await startedBrowser()).newPage({ viewport: { width, height: 844 } });
      try {
        await page.addInitScript(
          "globalThis.shift = 0; const add = (entries) => { for (const { value } of entries) globalThis.shift += value; }; globalThis.shifts = new PerformanceObserver((list) => add(list.getEntries())); globalThis.shifts.observe({ type: 'layout-shift', buffered: true }); globalThis.shiftSoFar = () => { add(globalThis.shifts.takeRecords()); return globalThis.shift; };",
        );
        await page.goto(`${SITE}/${path}`);
        await page.evaluate(DRAWN_WHOLE);
        expect(await page.evaluate<number>("globalThis.shiftSoFar()")).toBeLessThan(0.01);
      } finally {
        await page.close();
      }
    },
  );
});
