import { HtmlValidate } from "html-validate";
import { describe, expect, test } from "vitest";
import { sheet } from "./block-fixtures.ts";
import { BLOCK_PARTS, PAGES, site } from "./fixtures.ts";
import { rendered } from "./rendered.ts";

const htmlValidate = new HtmlValidate({
  extends: ["html-validate:standard", "html-validate:a11y", "html-validate:document"],
  // Our own style sheet, from the same folder: nothing to check it against.
  rules: { "require-sri": "off" },
});

const SHEET = sheet(BLOCK_PARTS);
const DRAWN = PAGES.map((page) => ({
  ...page,
  html: rendered(site(page.root, page.current), page.view),
}));

describe.each(DRAWN)("$name", ({ html, root }) => {
  test("is valid HTML and passes the static checks of accessibility (html-validate)", async () => {
    const report = await htmlValidate.validateString(html);
    expect(
      report.results.flatMap(({ messages }) =>
        messages.map(({ ruleId, message, line }) => `${line} ${ruleId} ${message}`),
      ),
    ).toEqual([]);
  });

  test("holds no inline style, script or handler, and asks nothing of another site (the page's own content security policy)", () => {
    expect(html).toContain(
      `content="default-src 'self'; object-src 'none'; base-uri 'none'; form-action 'none'"`,
    );
    expect(html).not.toMatch(/\sstyle=|<style|\son[a-z]+=|javascript:/i);
    expect(
      [...html.matchAll(/<script[^>]*>/g)]
        .map(([tag]) => tag)
        .filter(
          (tag) =>
            tag !== `<script type="application/ld+json">` &&
            !tag.startsWith(`<script defer src="${root}assets/scripts/`),
        ),
    ).toEqual([]);
    expect(
      [
        ...html.matchAll(
          /<(?:link rel="(?:stylesheet|icon)" href|img src|use href|script src)="([^"]*)"/g,
        ),
      ]
        .map((match) => match[1])
        .filter((href) => !href?.startsWith("#") && !href?.startsWith(`${root}assets/`)),
    ).toEqual([]);
  });

  test("has one h1, headings that skip no level, and the landmarks", () => {
    const levels = [...html.matchAll(/<h([1-6])[ >]/g)].map((match) => Number(match[1]));
    expect(levels.filter((level) => level === 1)).toEqual([1]);
    levels.forEach((level, i) =>
      expect(level, `heading ${i + 1} after h${levels[i - 1] ?? 1}`).toBeLessThanOrEqual(
        (levels[i - 1] ?? 0) + 1,
      ),
    );
    for (const landmark of [
      `<header class="site-head">`,
      "<main ",
      `<footer class="site-foot">`,
      `<html lang="en">`,
    ])
      expect(html).toContain(landmark);
  });

  test("links only to anchors that it has", () => {
    const ids = new Set([...html.matchAll(/\sid="([^"]+)"/g)].map((match) => match[1]));
    expect(
      [...html.matchAll(/href="#([^"]+)"/g)].map((match) => match[1]).filter((id) => !ids.has(id)),
    ).toEqual([]);
  });

  test("says that the workshop is invented, and what oily rags do", () => {
    expect(html).toContain("this workshop, its colours and its readings are invented");
    expect(html).toContain("Oily rags can catch fire by themselves");
  });
});

test.each([["sentence"], ["name"]] as const)("a sheet without its %s stops the build", (field) => {
  expect(() => rendered(site("../../"), { ...SHEET, [field]: undefined })).toThrow(
    /null or undefined/,
  );
});

describe("the first screen of a sheet", () => {
  const html = rendered(site("../../"), SHEET);

  test("comes in the order: name, what it is made of, masstone, tints, sentence, sizes, facts", () => {
    const places = [
      "<h1>",
      "hero__made-of",
      "hero__masstone",
      "hero__tints",
      "hero__sentence",
      "hero__offer",
      'class="wrap facts"',
      'class="contents"',
    ].map((mark) => html.indexOf(mark));
    expect(places).toEqual(places.toSorted((one, other) => one - other));
    expect(places).not.toContain(-1);
  });

  test("marks a fact only where how it is known is news", () => {
    const facts = html.slice(html.indexOf('class="wrap facts"'), html.indexOf('class="contents"'));
    expect(facts).toContain("#mark-stated");
    // The word is a dash already.
    expect(facts).not.toContain("#mark-not-stated");
    expect(facts).not.toContain("#mark-measured");
  });

  test("holds every statement of a label before the swatches, only where there is a hazard", () => {
    const head = (page: string): string => page.slice(0, page.indexOf("hero__masstone"));
    const hazardous = DRAWN.find(({ name }) => name === "sheet-hazardous")?.html ?? "";
    expect(head(html)).not.toContain("hazard--strip");
    expect(head(hazardous)).toContain("hazard--strip");
    for (const statement of [
      "Danger",
      "Harmful if swallowed.",
      "H360Df",
      `aria-label="Health hazard"`,
    ])
      expect(head(hazardous)).toContain(statement);
    expect(head(DRAWN.find(({ name }) => name === "sheet-bare")?.html ?? "")).toContain(
      "treat as hazardous",
    );
  });
});
