import { join } from "node:path";
import { readFileSync } from "node:fs";
import { describe, expect, inject, test } from "vitest";
import type { Page } from "playwright-core";
import { axeViolations, colourViolations } from "../support/axe-violations.ts";
import { emptyPage, type Visit } from "../support/visited-page.ts";
import { siteFiles } from "./site-pages.ts";

async function opened(path: string): Promise<Visit> {
  const visit = await emptyPage(inject("workshopAddress"));
  await visit.page.goto(`${inject("workshopAddress")}/${path}`);
  return visit;
}

const textOf = async (page: Page, selector: string): Promise<string> =>
  (await page.locator(selector).first().textContent()) ?? "";

test("from the list of lots to one that failed, to its correction, to the batch sheet, for another amount", async () => {
  const { page, complaints } = await opened("lots/");
  await page.getByRole("link", { name: "IB-2605" }).click();
  await page.waitForURL("**/lots/ib-2605/");
  expect(await textOf(page, "#verdict .summary")).toBe("It fails.");
  expect(await textOf(page, "#verdict")).toMatch(
    /Tinting strength 8\d\.\d ± \d\.\d % is outside 95\.0 to 105\.0 %/,
  );
  expect(await textOf(page, "#correction .summary")).toMatch(
    /^Work \d+\.\d\u00a0g of .+ into each 100\u00a0g of the lot\.$/,
  );
  const lotPage = page.url();
  await page.getByRole("link", { name: "Sheet for the correction of lot IB-2605" }).click();
  await page.waitForURL("**/correction/");
  const [trial = NaN, added = NaN, rest = NaN, more = NaN, all = NaN] = (
    await page.locator("tbody td.number").allTextContents()
  ).map(Number);
  // 20 g on trial, the rest of the 2530 g that came out, the same dose of both.
  expect([trial, rest]).toEqual([20, 2510]);
  expect(more / rest).toBeCloseTo(added / trial, 2);
  expect(trial + added + rest + more).toBeCloseTo(all, 0);
  expect(await textOf(page, ".batch-sheet__cautions")).toMatch(/Lamp Black it holds PBk.6/);
  expect(await page.locator("[data-plan], [data-amount]").count()).toBe(0);
  const paper = await page.pdf({ format: "A4", printBackground: true });
  expect(paper.toString("latin1").match(/\/Type\s*\/Page\b(?!s)/g)).toHaveLength(1);
  await page.goto(lotPage);
  await page.getByRole("link", { name: "Batch sheet of Iron Oxide Black" }).click();
  await page.waitForURL("**/batches/iron-oxide-black/");
  // 33 g of oil to 100 g of pigment, of the record: 1000 g take 330 g.
  await page.locator("[data-amount]").fill("1000");
  const oil = await Promise.all(
    ["oilAtFirstG", "oilHeldBackG"].map(async (figure) =>
      Number(await textOf(page, `[data-figure="${figure}"]`)),
    ),
  );
  expect((oil[0] ?? NaN) + (oil[1] ?? NaN)).toBeCloseTo(330, 6);
  await page.locator("[data-unit]").selectOption("tubes 40");
  await page.locator("[data-amount]").fill("40");
  const [least = NaN] = [...(await textOf(page, "[data-comes-out]")).matchAll(/\d+/g)].map(Number);
  // 40 tubes of what one really takes, a little over 40 ml.
  expect(least).toBeGreaterThan(1600);
  expect(least).toBeLessThan(1700);
  await page.locator("[data-amount]").fill("0");
  expect(await textOf(page, "[data-fault]")).toBe("Give an amount above 0.");
  expect(complaints).toEqual([]);
});

test("a let-down in the wrong white is told as that, and neither judged nor corrected", async () => {
  const { page } = await opened("lots/bb-2606/");
  expect(await textOf(page, "#verdict")).toContain("reads as the standard does in zinc white");
  expect(await textOf(page, "#verdict")).not.toContain("Tinting strength");
  expect(await page.locator("#correction").count()).toBe(0);
  expect(await textOf(page, "#next")).toContain("Let it down in the white and at the ratio");
});

test("the drift of ultramarine is told above its chart", async () => {
  const { page } = await opened("colours/ultramarine-blue/");
  expect(await textOf(page, "#lots")).toContain("Strength has fallen over 6 lots");
});

test("a correction says which pigments it brings into a paint of one", async () => {
  const { page } = await opened("lots/ib-2605/");
  expect(await textOf(page, "#correction")).toMatch(
    /With Lamp Black it holds PBk.\d and Cobalt-zirconium drier as well, which neither its name nor its label says/,
  );
});

test("lots in time by strength, let-down and masstone, each with its moving ranges; a chart in words names its lots", async () => {
  const { page } = await opened("colours/ultramarine-blue/");
  const titles = await page.locator("#lots svg title").allTextContents();
  for (const what of ["Strength", "Let-down", "Masstone"])
    expect(titles.filter((title) => title.startsWith(what)).length, what).toBeGreaterThanOrEqual(2);
  expect(titles.filter((title) => title.includes("from each lot to the next"))).not.toEqual([]);
  const [words = ""] = await page.locator("#lots svg desc").allTextContents();
  expect(words).toMatch(/UB-2407 \d+\.\d, UB-2411/);
});

test("from a colour to what customers ask of it, and to the reply", async () => {
  const { page, complaints } = await opened("colours/ultramarine-blue/");
  const question = page.locator("#answers .section__body a").first();
  const asked = (await question.textContent()) ?? "";
  await question.click();
  await page.waitForURL("**/answers/**");
  expect(await textOf(page, "h1")).toBe(asked);
  expect(await textOf(page, "[data-reply] textarea, #reply textarea")).not.toBe("");
  expect(complaints).toEqual([]);
});

test("labels to stick are there as a PDF, with what is to be known of them", async () => {
  const { page } = await opened("labels/");
  const href = await page.locator("#print .section__body a").getAttribute("href");
  expect(href).toBe("labels.pdf");
  const pdf = await page.request.get(`${inject("workshopAddress")}/labels/labels.pdf`);
  expect((await pdf.body()).subarray(0, 5).toString("latin1")).toBe("%PDF-");
  expect(await textOf(page, "#remarks")).toContain(
    "Lead White, tube-60: pictograms of 10 mm, as 16 mm found no room",
  );
});

test("what to do next tells what falls due apart from what is left open on no day", async () => {
  const { page } = await opened("next/");
  const due = await textOf(page, "#due");
  expect(due).toMatch(/Ultramarine Blue, drying: to be looked at on \d+ \w+ \d{4}/);
  expect(due).toMatch(/kept beside the records, in printed-cards.json/);
  const open = await textOf(page, "#open");
  for (const line of [/review them before they go on a label/, /These have no lot recorded yet/]) {
    expect(open).toMatch(line);
    expect(due).not.toMatch(line);
  }
});

test("without script a batch sheet has no field that would do nothing", async () => {
  const { page } = await emptyPage(inject("workshopAddress"), { javaScriptEnabled: false });
  await page.goto(`${inject("workshopAddress")}/batches/iron-oxide-black/`);
  expect(await page.locator("[data-amount]").isVisible()).toBe(false);
});

test("a batch sheet works out an amount that stood there before its script ran", async () => {
  const { page } = await opened("");
  await page.route("**/batch-sheet*.js", async (route) => {
    await page.evaluate("document.querySelector('[data-amount]').value = 1000");
    await route.continue();
  });
  await page.goto(`${inject("workshopAddress")}/batches/iron-oxide-black/`);
  const oil = async (figure: string): Promise<number> =>
    Number(await textOf(page, `[data-figure="${figure}"]`));
  expect((await oil("oilAtFirstG")) + (await oil("oilHeldBackG"))).toBeCloseTo(330, 6);
});

test("the batch sheet is one page of A4", async () => {
  const { page } = await opened("batches/iron-oxide-black/");
  const pdf = await page.pdf({
    format: "A4",
    margin: { top: "12mm", bottom: "12mm", left: "12mm", right: "12mm" },
  });
  expect(pdf.toString("latin1").match(/\/Type\s*\/Page\b(?!s)/g)).toHaveLength(1);
});

describe("for every reader", () => {
  /** Ways in which texts were drawn that axe has looked at. */
  const drawn = new Set<string>();

  test.each([
    "",
    "lots/",
    "lots/ib-2605/",
    "lots/ib-2605/correction/",
    "colours/ultramarine-blue/",
    "batches/lamp-black/",
    "trials/",
    "labels/",
    "next/",
  ])("/%s has nothing that axe finds", async (path) => {
    const { page } = await opened(path);
    expect(await axeViolations(page)).toEqual([]);
    expect(await colourViolations(page, drawn)).toEqual([]);
  });
});

test("the public bench page says which lots the figures describe, and sheet.json lists them; what failed it does not name", () => {
  const page = readFileSync(
    join(inject("siteDir"), "colours/iron-oxide-black/bench/index.html"),
    "utf8",
  );
  expect(page).toContain("The figures describe lot IB-2602.");
  expect(page).toContain("Lots IB-2408, IB-2505 agree with it within tolerance.");
  const failed = siteFiles()
    .filter((file) => /\.(?:html|json|csv|js)$/.test(file))
    .filter((file) => /IB-2605|BB-2606/.test(readFileSync(join(inject("siteDir"), file), "utf8")));
  expect(failed).toEqual([]);
});
