import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, inject, test } from "vitest";
import { replyFigure, type Published } from "./reply-figure.ts";
import { sitePages, workshopPages } from "./site-pages.ts";

const GREY = "which-black-for-a-neutral-grey";

const evidence = new Map<string, readonly Published[]>();
/** Finished texts of a sheet's figures, from its sheet.json. */
function published(slug: string): readonly Published[] {
  const known =
    evidence.get(slug) ??
    (
      JSON.parse(readFileSync(join(inject("siteDir"), "colours", slug, "sheet.json"), "utf8")) as {
        evidence: Published[];
      }
    ).evidence;
  evidence.set(slug, known);
  return known;
}

interface Material {
  readonly colours: readonly {
    readonly slug: string;
    readonly name: string;
    readonly lines: Readonly<Record<string, string>>;
  }[];
}
const unescaped = (text: string): string =>
  text
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&quot;", '"')
    .replaceAll("&#39;", "'")
    .replaceAll("&amp;", "&");

describe("replies", () => {
  const pages = workshopPages().filter(({ file }) => /^(?:colours|answers)\//.test(file));

  test("stand on the workshop's page of every colour and answer, as text that needs no script", () => {
    expect(pages.length).toBeGreaterThan(50);
    for (const { file, html } of pages)
      expect(/<textarea [^>]*readonly[^>]*>Thank you for asking\.\n/.test(html), file).toBe(true);
  });

  test("give of every figure the text that sheet.json has, whichever is chosen", () => {
    let held = 0;
    for (const { file, html } of pages) {
      const { colours } = JSON.parse(
        unescaped(/data-reply="([^"]*)"/.exec(html)?.[1] ?? ""),
      ) as Material;
      for (const { slug, lines } of colours) {
        for (const [figure, line] of Object.entries(lines)) {
          const entry = published(slug).find((one) => one.figure === figure);
          if (figure === "permanence.label" || figure === "lots") continue;
          if (entry === undefined) expect(line, `${file} ${figure}`).toMatch(/: not stated$/);
          else expect(line, `${file} ${figure}`).toContain(`: ${replyFigure(entry)} (`);
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
    const own =
      published("furnace-black").find(({ figure }) => figure === "tints.titanium-white.atL.50.b")
        ?.text ?? "nothing";
    expect(text).toContain(`- b* in Titanium White at L* 50: ${own} (worked out)`);
    expect(text).toContain(`https://saltreach.example/answers/${GREY}/`);
    expect(text).toContain("invented");
  });

  test("of lead white carry its label in full and defer to it", () => {
    const html = pages.find(({ file }) => file === "colours/lead-white/index.html")?.html ?? "";
    const text = unescaped(/<textarea [^>]*>([^<]*)</.exec(html)?.[1] ?? "");
    for (const part of [
      "Danger.",
      "H302 ",
      "H360Df ",
      "H373 ",
      "H410 ",
      "The label, the safety data sheet and your local rules come first",
    ])
      expect(text).toContain(part);
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
      const prose = text
        .slice(text.indexOf("\n---", 4))
        .replace(/\{%.*?%\}/gs, "")
        .replace(/\b0\.98\b/g, "");
      expect(prose.match(/[-\u2212]?\d+\.\d+/g), file).toBeNull();
    }
  });
});
