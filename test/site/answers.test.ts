import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { describe, expect, inject, test } from "vitest";
import type { StandingKind } from "../../lib/quantities/figure.ts";
import { ENGLISH } from "../../lib/words/en/english.ts";
import type { ReplyMaterial } from "../../lib/answers/reply-text.ts";
import { connectedBrowser } from "../support/connected-browser.ts";
import { visitedPage } from "../support/visited-page.ts";
import { pagesOfEachKind, sitePages } from "./site-pages.ts";

const browser = connectedBrowser();
const SITE = inject("siteAddress");
const QUESTION = "Which black gives a neutral grey in titanium white?";
const ANSWER = "/answers/which-black-for-a-neutral-grey/";

const visit = (
  use: Parameters<typeof visitedPage>[2],
  options?: Parameters<typeof visitedPage>[3],
): Promise<void> => visitedPage(browser(), SITE, use, options);
const path = (page: Page): string => page.url().replace(SITE, "");
const reply = (page: Page): Promise<string> => page.locator("[data-text]").inputValue();

describe("from the catalogue to a sheet to an answer, and a reply to send", () => {
  test("by mouse: colours and figures are chosen, and the reply is copied", async () => {
    await visit(
      async (page, complaints) => {
        await page.goto(`${SITE}/colours/`);
        await page
          .getByRole("main")
          .getByRole("link", { name: "Lamp Black", exact: true })
          .first()
          .click();
        await page.getByRole("main").getByRole("link", { name: QUESTION }).first().click();
        expect(path(page)).toBe(ANSWER);
        expect(await page.getByRole("heading", { level: 1 }).textContent()).toBe(QUESTION);
        await page.getByText("A reply to send").click();
        const stock = await reply(page);
        expect(stock).toContain(`You asked: ${QUESTION}`);
        const colours = page.getByRole("group", { name: "Colours" }).getByRole("checkbox");
        for (let i = 1; i < (await colours.count()); i++) await colours.nth(i).uncheck();
        const name = (
          (await page
            .getByRole("group", { name: "Colours" })
            .locator("label")
            .first()
            .textContent()) ?? ""
        ).trim();
        const figures = page.getByRole("group", { name: "Figures" }).getByRole("checkbox");
        for (let i = 0; i < (await figures.count()); i++)
          await figures
            .nth(i)
            .setChecked((await figures.nth(i).inputValue()) === "oil.oilIndexGPer100g");
        await page.getByLabel("What was asked").fill("Which one, then?");
        const chosen = await reply(page);
        expect(chosen.match(/^- .*/gm)).toEqual([
          expect.stringMatching(/^- Oil index: .+ \(.+\)$/),
        ]);
        expect(chosen).toMatch(new RegExp(`^${name}\\n- `, "m"));
        expect(chosen).toContain("You asked: Which one, then?");
        await page.getByRole("button", { name: "Copy the reply" }).click();
        await page.getByText("Copied.").waitFor();
        expect(await page.evaluate("navigator.clipboard.readText()")).toBe(chosen);
        expect(complaints).toEqual([]);
      },
      { permissions: ["clipboard-read", "clipboard-write"] },
    );
  });

  test("by keyboard", async () => {
    await visit(async (page, complaints) => {
      await page.goto(`${SITE}/colours/`);
      await page
        .getByRole("main")
        .getByRole("link", { name: "Lamp Black", exact: true })
        .first()
        .focus();
      await page.keyboard.press("Enter");
      await page.waitForURL("**/colours/lamp-black/");
      await page.getByRole("main").getByRole("link", { name: QUESTION }).first().focus();
      await page.keyboard.press("Enter");
      await page.waitForURL(`**${ANSWER}`);
      await page.getByText("A reply to send").focus();
      await page.keyboard.press("Enter");
      const stock = await reply(page);
      await page.getByLabel("What was asked").focus();
      await page.keyboard.press("Tab");
      expect(await page.evaluate("document.activeElement.matches('[data-colour]')")).toBe(true);
      const first = await page.evaluate<string>(
        "document.activeElement.parentElement.textContent.trim()",
      );
      await page.keyboard.press("Space");
      const without = await reply(page);
      expect([stock, without].map((text) => text.split("\n").includes(first))).toEqual([
        true,
        false,
      ]);
      await page.keyboard.press("Space");
      expect(await reply(page)).toBe(stock);
      expect(complaints).toEqual([]);
    });
  });

  test("without script: the reply stands there whole, and nothing that would do nothing", async () => {
    await visit(
      async (page, complaints) => {
        await page.goto(`${SITE}/colours/`);
        await page
          .getByRole("main")
          .getByRole("link", { name: "Lamp Black", exact: true })
          .first()
          .click();
        await page.getByRole("link", { name: "Lamp Black at the bench" }).click();
        expect(await reply(page)).toContain("What should I know of Lamp Black?");
        await page.getByRole("link", { name: "Lamp Black, for the painter" }).click();
        await page.getByRole("main").getByRole("link", { name: QUESTION }).first().click();
        expect(path(page)).toBe(ANSWER);
        expect((await reply(page)).match(/^- .+: .+ \(.+\)$/gm)?.length).toBeGreaterThan(2);
        expect(await page.locator("[data-fields]").isVisible()).toBe(false);
        expect(await page.locator("[data-copy-row]").isVisible()).toBe(false);
        expect(complaints).toEqual([]);
      },
      { javaScriptEnabled: false },
    );
  });
});

test("the list of answers and an answer are among those held against axe, HTML and links", () => {
  expect(pagesOfEachKind().map(({ kind }) => kind)).toEqual(
    expect.arrayContaining(["answer", "answer-index"]),
  );
});

interface PublishedFigure {
  readonly figure: string;
  readonly text: string;
  readonly standing: StandingKind;
}

const evidence = new Map<string, ReadonlyMap<string, PublishedFigure>>();
function publishedFigures(slug: string): ReadonlyMap<string, PublishedFigure> {
  const known = evidence.get(slug);
  if (known !== undefined) return known;
  const sheet = JSON.parse(
    readFileSync(join(inject("siteDir"), "colours", slug, "sheet.json"), "utf8"),
  ) as { evidence: PublishedFigure[] };
  const read = new Map(sheet.evidence.map((one) => [one.figure, one]));
  evidence.set(slug, read);
  return read;
}

const REPLIES = sitePages().filter(({ kind }) => kind === "answer" || kind === "bench");

test("every answer and every bench page has a reply", () => {
  expect(REPLIES.length).toBeGreaterThan(40);
  expect(
    REPLIES.filter(({ html }) => !html.includes("data-reply=")).map(({ file }) => file),
  ).toEqual([]);
});

test.each(REPLIES)(
  "$file: figures of its reply read as in sheet.json, with their standing",
  ({ html }) => {
    const material = JSON.parse(
      unescaped(/data-reply="([^"]*)"/.exec(html)?.[1] ?? ""),
    ) as ReplyMaterial;
    const stock = unescaped(/<textarea[^>]*data-text>([^<]*)<\/textarea>/.exec(html)?.[1] ?? "");
    const lines = material.colours.flatMap(({ slug, lines: own }) =>
      Object.entries(own)
        .filter(([figure]) => figure !== "permanence.label")
        .map(([figure, line]) => ({ slug, figure, line })),
    );
    expect(lines.length).toBeGreaterThan(0);
    for (const { slug, figure, line } of lines) {
      const found = publishedFigures(slug).get(figure);
      // What is not stated has no evidence, and the reply gives no number for it.
      if (found === undefined || found.standing === "not stated")
        expect(line, `${slug}.${figure}`).toMatch(/: not stated$/);
      else
        expect(line, `${slug}.${figure}`).toContain(
          `: ${found.text} (${ENGLISH.standings[found.standing].word}`,
        );
    }
    const offered = new Set(material.colours.flatMap(({ lines: own }) => Object.values(own)));
    expect(
      [...stock.matchAll(/^- (.*)$/gm)]
        .map(([, line]) => line)
        .filter((line) => !offered.has(line ?? "")),
    ).toEqual([]);
  },
);

function unescaped(html: string): string {
  return html
    .replaceAll("&quot;", '"')
    .replaceAll("&#39;", "'")
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&amp;", "&");
}
