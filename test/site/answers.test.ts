import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Locator, Page } from "playwright-core";
import { describe, expect, inject, test } from "vitest";
import type { StandingKind } from "../../lib/quantities/figure.ts";
import { ENGLISH } from "../../lib/words/english.ts";
import { REPLY_LOTS } from "../../lib/answers/reply-material.ts";
import type { ReplyMaterial } from "../../lib/answers/reply-text.ts";
import { visitedPage } from "../support/visited-page.ts";
import { replyFigure, type Published } from "./reply-figure.ts";
import { pagesOfEachKind, sitePages, workshopPages } from "./site-pages.ts";

const SITE = inject("siteAddress");
const WORKSHOP = inject("workshopAddress");
const QUESTION = "Which black gives a neutral grey in titanium white?";
const ANSWER = "/answers/which-black-for-a-neutral-grey/";

type Use = Parameters<typeof visitedPage>[1];
type Options = Parameters<typeof visitedPage>[2];
const visit = (use: Use, options?: Options): Promise<void> => visitedPage(SITE, use, options);
const visitWorkshop = (use: Use, options?: Options): Promise<void> =>
  visitedPage(WORKSHOP, use, options);
const path = (page: Page): string => page.url().replace(SITE, "").replace(WORKSHOP, "");
const reply = (page: Page): Promise<string> => page.locator("[data-text]").inputValue();
const link = (page: Page, name: string): Locator =>
  page.getByRole("main").getByRole("link", { name, exact: true }).first();

async function followByMouse(page: Page, name: string, to: string): Promise<void> {
  await link(page, name).click();
  await page.waitForURL(`**${to}`);
}

async function followByKeyboard(page: Page, name: string, to: string): Promise<void> {
  await link(page, name).focus();
  await page.keyboard.press("Enter");
  await page.waitForURL(`**${to}`);
}

describe("from the catalogue to a sheet to an answer, on the public site", () => {
  const walk =
    (follow: typeof followByMouse): Use =>
    async (page, complaints) => {
      await page.goto(`${SITE}/colours/`);
      await follow(page, "Lamp Black", "/colours/lamp-black/");
      await follow(page, QUESTION, ANSWER);
      expect(path(page)).toBe(ANSWER);
      expect(await page.getByRole("heading", { level: 1 }).textContent()).toBe(QUESTION);
      expect(complaints).toEqual([]);
    };

  test("by mouse", async () => {
    await visit(walk(followByMouse));
  });

  test("by keyboard", async () => {
    await visit(walk(followByKeyboard));
  });

  test("without script, by the bench page too", async () => {
    await visit(
      async (page, complaints) => {
        await page.goto(`${SITE}/colours/`);
        await followByMouse(page, "Lamp Black", "/colours/lamp-black/");
        await followByMouse(page, "Lamp Black at the bench", "/colours/lamp-black/bench/");
        await followByMouse(page, "Lamp Black, for the painter", "/colours/lamp-black/");
        await followByMouse(page, QUESTION, ANSWER);
        expect(complaints).toEqual([]);
      },
      { javaScriptEnabled: false },
    );
  });
});

describe("from the workshop's first page to a colour and a question, and a reply to send", () => {
  test("by mouse: colours and figures are chosen, and the reply is copied", async () => {
    await visitWorkshop(
      async (page, complaints) => {
        await page.goto(`${WORKSHOP}/`);
        await followByMouse(page, "Lamp Black", "/colours/lamp-black/");
        await link(page, "The workshop").click();
        await page.waitForURL(`${WORKSHOP}/`);
        await followByMouse(page, QUESTION, ANSWER);
        expect(await page.getByRole("heading", { level: 1 }).textContent()).toBe(QUESTION);
        await link(page, "A reply to send").click();
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
    await visitWorkshop(async (page, complaints) => {
      await page.goto(`${WORKSHOP}/`);
      await followByKeyboard(page, QUESTION, ANSWER);
      await link(page, "A reply to send").focus();
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
    await visitWorkshop(
      async (page, complaints) => {
        await page.goto(`${WORKSHOP}/`);
        await followByMouse(page, "Lamp Black", "/colours/lamp-black/");
        expect(await reply(page)).toContain("What should I know of Lamp Black?");
        await link(page, "The workshop").click();
        await page.waitForURL(`${WORKSHOP}/`);
        await followByMouse(page, QUESTION, ANSWER);
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
  const held = pagesOfEachKind();
  expect(held.map(({ kind }) => kind)).toContain("answer");
  expect(held.map(({ file }) => file)).toContain("answers/index.html");
});

test("beside a claim on a colour's list stands whether it is among them, in the words of the claim", () => {
  const row = /<th scope="row">([^<]*) is (not )?among them<[^]*?<td[^>]*>([^<]*)</g;
  const told = sitePages()
    .filter(({ kind }) => kind === "answer")
    .flatMap(({ html }) => [...html.matchAll(row)])
    .filter(([, claim = ""]) => !claim.startsWith("All colours"))
    .map(([, , not = "", today = ""]) => [`${not}among them`, today.trim()]);
  expect(told.length).toBeGreaterThan(20);
  expect(told.filter(([claimed, today]) => claimed !== today)).toEqual([]);
});

interface PublishedFigure extends Published {
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

/** Which lots the figures describe is no figure: a reply says it as the published bench page does. */
function benchPage(slug: string): string {
  const file = join(inject("siteDir"), "colours", slug, "bench/index.html");
  return unescaped(readFileSync(file, "utf8"));
}

const REPLIES = workshopPages().filter(({ file }) =>
  /^(?:answers|colours)\/[^/]+\/index\.html$/.test(file),
);

test("every answer and every colour has a reply in the workshop, and no public page has one", () => {
  const published = sitePages();
  const wanted = published
    .filter(({ kind }) => kind === "answer" || kind === "bench")
    .map(({ file }) => file.replace("/bench/", "/"));
  expect(wanted.length).toBeGreaterThan(40);
  expect(
    REPLIES.filter(({ html }) => html.includes("data-reply=")).map(({ file }) => file),
  ).toEqual(wanted.sort());
  expect(
    published.filter(({ html }) => /data-reply|A reply to send/.test(html)).map(({ file }) => file),
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
        .filter(([figure]) => figure !== "permanence.label" && figure !== REPLY_LOTS)
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
          `: ${replyFigure(found)} (${ENGLISH.standings[found.standing].word}`,
        );
    }
    for (const { slug, lines: own } of material.colours) {
      const lots = own[REPLY_LOTS];
      if (lots !== undefined) expect(benchPage(slug), `${slug}.${REPLY_LOTS}`).toContain(lots);
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
