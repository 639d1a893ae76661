import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { gzipSync } from "node:zlib";
import { readFileSync } from "node:fs";
import { buildSync } from "esbuild";
import type { Page } from "playwright-core";
import { describe, expect, inject, test } from "vitest";
import { assetFile } from "../support/asset-file.ts";
import { axeViolations, colourViolations } from "../support/axe-violations.ts";
import { visitedPage } from "../support/visited-page.ts";

const ROOT = join(import.meta.dirname, "../..");

/** Of L*, a*, b* and Delta-E00, as the unit tests have it. */
const PACKED_TO = 1e-3;
const SCRIPT_UP_TO = 60_000;

/** What compares the bench with a sheet.json, for a browser. */
function comparison(): string {
  const [file] = buildSync({
    stdin: {
      contents: `import { mixingRange } from "./lib/mixing/mixing-range.ts";
import { stepErrors } from "./test/mixing/published-steps.ts";
globalThis.stepErrorsOf = (sheet) => stepErrors(sheet, mixingRange(globalThis.mixingPaints));`,
      resolveDir: ROOT,
      loader: "ts",
    },
    bundle: true,
    write: false,
    format: "iife",
    platform: "browser",
    target: "es2022",
    tsconfigRaw: {},
  }).outputFiles;
  if (file === undefined) throw new Error("Unexpected bundle of nothing");
  return file.text;
}

describe("the tint bench in a browser", () => {
  test("says what every sheet.json publishes", async () => {
    const site = inject("siteAddress");
    await visitedPage(site, async (page, complaints) => {
      await page.goto(`${site}/bench/`);
      await page.evaluate(comparison());
      const errors = await page.evaluate<{ step: string; error: number }[]>(`(async () => {
        const { colours } = await (await fetch("../catalogue.json")).json();
        const sheets = await Promise.all(colours.map(async ({ sheet }) => (await fetch("../" + sheet)).json()));
        return sheets.flatMap((sheet) => globalThis.stepErrorsOf(sheet));
      })()`);
      expect(errors.length).toBeGreaterThan(200);
      expect(errors.filter(({ error }) => !(error < PACKED_TO))).toEqual([]);
      expect(complaints).toEqual([]);
    });
  });

  test("shows what the address asks for, and says what of it there is not", async () => {
    const site = inject("siteAddress");
    await visitedPage(site, async (page, complaints) => {
      await page.goto(
        `${site}/bench/?mix=bone-black:1,nobodys-blue:2&white=titanium-white:20&light=moon`,
      );
      await page.waitForSelector("[data-tint-bench]:not([hidden])");
      expect(await page.textContent("[data-status]")).toMatch(
        /no paint \u201cnobodys-blue\u201d.*no choice for \u201clight\u201d/,
      );
      expect(await page.textContent("[data-trust]")).toMatch(/^A prediction\. Two times in three/);
      expect(await page.textContent("[data-figures]")).toMatch(/L\*a\*b\*.*\u00b1/);
      expect(complaints).toEqual([]);
    });
  });

  test("its script is light", () => {
    for (const name of ["tint-bench", "recipes", "recipe-worker", "range-map", "palette"]) {
      const file = assetFile(inject("siteDir"), `assets/scripts/${name}.js`) ?? "";
      const text = readFileSync(join(inject("siteDir"), file));
      expect(gzipSync(text).length, name).toBeLessThan(SCRIPT_UP_TO);
    }
  });
});

/** A search that has come to its end. */
async function searched(page: Page): Promise<void> {
  await page.locator("[data-status]", { hasText: "were tried" }).waitFor();
}

describe("a reading of the visitor's own", () => {
  const csv = (name: string): string =>
    readFileSync(join(ROOT, "content/readings", `${name}.csv`), "utf8");
  const file = (name: string, text: string) => ({
    name,
    mimeType: "text/csv",
    buffer: Buffer.from(text),
  });

  test("is read in the browser, and recipes are found for it", async () => {
    const site = inject("siteAddress");
    await visitedPage(site, async (page, complaints) => {
      await page.goto(`${site}/bench/recipes/?white=titanium-white`);
      await page.waitForSelector("[data-recipes]:not([hidden])");
      await page.setInputFiles("[data-file]", file("own.csv", csv("raw-umber")));
      await searched(page);
      expect(await page.textContent("[data-target]")).toMatch(/^masstone .*as your file reads/);
      await page.selectOption("[data-column]", { label: "titanium-white 1:5" });
      await page.locator("[data-target]", { hasText: "titanium-white 1:5" }).waitFor();
      await page.locator(".recipe__parts", { hasText: "Raw Umber" }).first().waitFor();
      expect(complaints).toEqual([]);
    });
  });

  test("that is none, or lacks a part of the range, is told in a sentence, and the page goes on", async () => {
    const site = inject("siteAddress");
    await visitedPage(site, async (page, complaints) => {
      await page.goto(`${site}/bench/recipes/?white=titanium-white`);
      await page.waitForSelector("[data-recipes]:not([hidden])");
      let before = "nothing yet";
      for (const text of ["hello", "nm,mine\n500,0.2\n510,0.2\n520,0.2\n"]) {
        await page.setInputFiles("[data-file]", file("own.csv", text));
        const status = page.locator("[data-status]", { hasText: /\S/, hasNotText: before });
        await status.waitFor();
        before = (await status.textContent()) ?? "";
        expect(before).toMatch(/^\S.{20,}/);
        expect(before).not.toMatch(/were tried|undefined|NaN/);
      }
      await page.fill("input[name=target]", "N 5/");
      await page.keyboard.press("Enter");
      await searched(page);
      expect(await page.locator(".recipe").count()).toBeGreaterThan(3);
      expect(complaints).toEqual([]);
    });
  });
});

describe("opened from a folder", () => {
  const pages: readonly (readonly [string, string, RegExp])[] = [
    ["bench/index.html?mix=bone-black:1&white=titanium-white:20", "[data-trust]", /prediction/],
    ["bench/recipes/index.html?target=N+5/&white=zinc-white", "[data-status]", /were tried/],
    ["bench/map/index.html?without=cadmium-yellow", "[data-said]", /smaller/],
    [
      "bench/palette/index.html?set=bone-black,raw-umber,titanium-white&L=70",
      "[data-share]",
      /%.*\u00b1.*L\* 70/,
    ],
  ];

  const folder = pathToFileURL(inject("siteDir")).href;

  test.each(pages)("%s works", async (path, selector, said) => {
    await visitedPage("null", async (page, complaints) => {
      await page.goto(`${folder}/${path}`);
      await page.locator(selector, { hasText: said }).waitFor();
      // A browser says that it gives no fonts to pages of a folder.
      expect(complaints.filter((one) => one.startsWith("exception: "))).toEqual([]);
    });
  });

  test.each(pages)("%s says what it would do without script, and shows figures", async (path) => {
    await visitedPage(
      "null",
      async (page) => {
        await page.goto(`${folder}/${path}`);
        const text = await page.innerText("main");
        if (!path.includes("map")) expect(text).toMatch(/needs the page\u2019s script/);
        expect(text).toMatch(/\d/);
        expect(await page.locator("main :is(table, svg)").count()).toBeGreaterThan(0);
      },
      { javaScriptEnabled: false },
    );
  });
});

test("the map has a page in each white, and tells what is left without a colour", async () => {
  const site = inject("siteAddress");
  await visitedPage(site, async (page, complaints) => {
    await page.goto(`${site}/bench/map/`);
    await page.getByRole("link", { name: "Lead White", exact: true }).first().click();
    await page.waitForURL(/\/bench\/map\/lead-white\/$/);
    await page.selectOption("[data-without-colour]", { label: "Ultramarine Blue" });
    expect(await page.textContent("[data-said]")).toMatch(/\d\u00a0% \u00b1\d+ at L\* 50/);
    expect(await page.getAttribute(".picture__wide .plot__without", "d")).toMatch(/Z$/);
    expect(complaints).toEqual([]);
  });
});

test("a palette keeps its tubes, white and level in the address, and says what it cannot use of one", async () => {
  const site = inject("siteAddress");
  await visitedPage(site, async (page, complaints) => {
    await page.goto(`${site}/bench/palette/?set=bone-black,nobodys-blue,raw-umber&white=moon&L=7`);
    await page.waitForSelector("[data-body]:not([hidden])");
    const said = (await page.textContent("[data-status]")) ?? "";
    for (const word of ["nobodys-blue", "moon", "\u201c7\u201d"]) expect(said).toContain(word);
    await page.click("button[value=ultramarine-blue]");
    await page.selectOption("[data-white]", "lead-white");
    await page.check("input[name=L][value='30']");
    await page.waitForURL(
      `${site}/bench/palette/?set=bone-black,raw-umber,ultramarine-blue&white=lead-white&L=30`,
    );
    expect(await page.textContent("main")).toContain(
      "Over one that holds more oil add a little medium to it.",
    );
    const gaps = (await page.textContent("[data-gaps]")) ?? "";
    expect(gaps).toMatch(/\u0394E00\u00a0\d+\.\d\u00a0\u00b1\d+\.\d/);
    expect(complaints).toEqual([]);
  });
});

test("by keyboard alone from the range to a recipe and to its card", async () => {
  const site = inject("siteAddress");
  await visitedPage(site, async (page, complaints) => {
    await page.goto(`${site}/`);
    const tabTo = async (selector: string): Promise<void> => {
      for (let press = 0; press < 200; press++) {
        if (
          await page.evaluate(
            `document.activeElement?.matches(${JSON.stringify(selector)}) ?? false`,
          )
        )
          return;
        await page.keyboard.press("Tab");
      }
      throw new Error(`${selector} is not reached by Tab`);
    };
    await tabTo('.site-head a[href$="bench/"]');
    await page.keyboard.press("Enter");
    await page.waitForURL(/\/bench\/$/);
    await tabTo('.link-row a[href$="recipes/"]');
    await page.keyboard.press("Enter");
    await page.waitForURL(/\/bench\/recipes\/$/);
    await page.waitForSelector("[data-recipes]:not([hidden])");
    await tabTo("input[name=target]");
    await page.keyboard.type("N 5/");
    await tabTo("input[name=metal][value=lead]");
    await page.keyboard.press("Space");
    await searched(page);
    await tabTo(".recipe a");
    await page.keyboard.press("Enter");
    await page.waitForURL(/\/bench\/\?mix=/);
    await page.waitForSelector("[data-tint-bench]:not([hidden])");
    await page.evaluate(
      `globalThis.print = () => { globalThis.printed = document.body.className; }`,
    );
    await tabTo("[data-print]");
    await page.keyboard.press("Enter");
    expect(await page.evaluate("globalThis.printed")).toContain("card-alone");
    expect(await page.textContent("[data-card]")).toMatch(/by weight/);
    expect(complaints).toEqual([]);
  });
});

test("moving a slider costs little more than an empty frame", async () => {
  const site = inject("siteAddress");
  await visitedPage(site, async (page) => {
    await page.goto(
      `${site}/bench/?mix=bone-black:1,raw-umber:1,ultramarine-blue:1&white=titanium-white:20`,
    );
    await page.waitForSelector("[data-tint-bench]:not([hidden])");
    const frames = await page.evaluate<{ empty: number; moved: number }>(`(async () => {
      const slider = document.querySelector("[data-slider]");
      const frame = () => new Promise((done) => requestAnimationFrame(done));
      const time = async (each) => {
        const taken = [];
        for (let i = 0; i < 31; i++) {
          const from = performance.now();
          each(i);
          await frame();
          await frame();
          taken.push(performance.now() - from);
        }
        return taken.sort((one, other) => one - other)[15];
      };
      const empty = await time(() => {});
      const moved = await time((i) => { slider.value = String(300 + i * 10); slider.dispatchEvent(new Event("input")); });
      return { empty, moved };
    })()`);
    // A ratio travels between machines, and the middle one of many between hours; four empty frames leave 15 a second where 60 are drawn.
    expect(frames.moved / frames.empty).toBeLessThan(4);
  });
});

/** Ways in which texts were drawn that axe has looked at. */
const drawn = { light: new Set<string>(), dark: new Set<string>() };

test.each([
  "bench/",
  "bench/recipes/?target=N+5/&white=titanium-white",
  "bench/map/lead-white/?without=ultramarine-blue",
  "bench/palette/?set=bone-black,raw-umber,ultramarine-blue,titanium-white",
])(
  "%s is accessible as far as axe tells, and fits a wide light page and a narrow dark one",
  async (path) => {
    const site = inject("siteAddress");
    await visitedPage(site, async (page, complaints) => {
      await page.setViewportSize({ width: 1440, height: 900 });
      await page.goto(`${site}/${path}`);
      if (path.includes("target")) await searched(page);
      for (const [width, colorScheme] of [
        [1440, "light"],
        [390, "dark"],
      ] as const) {
        await page.setViewportSize({ width, height: 900 });
        await page.emulateMedia({ colorScheme });
        expect(await colourViolations(page, drawn[colorScheme]), colorScheme).toEqual([]);
        expect(await page.evaluate<number>("document.documentElement.scrollWidth")).toBe(width);
      }
      // Where what is pressed stands closest.
      expect(await axeViolations(page)).toEqual([]);
      expect(complaints).toEqual([]);
    });
  },
);
