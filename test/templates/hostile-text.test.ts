/** Records may hold any text. Each kind of page is tried, as the demonstration has it and as it is invented with what that has not. */
import { readdirSync } from "node:fs";
import { expect, test } from "vitest";
import { pagePlace } from "../../lib/pages/page-context.ts";
import type { AnyPageView } from "../../lib/site/all-pages.ts";
import type { SiteView } from "../../lib/present/views.ts";
import { RECORDS, site as demonstrationSite } from "../support/demonstration.ts";
import { PAGES, site } from "./fixtures.ts";
import { rendered } from "./rendered.ts";

const KINDS = readdirSync("templates/pages").map((file) => file.replace(/\.njk$/, ""));

/** The first page of each kind that is published; of the pages of colours those of one stand for all. */
function firstOfEachKind(): typeof PAGES {
  const [, ...others] = RECORDS.colours.keys();
  const found = new Map<string, (typeof PAGES)[number]>();
  for (const { path, view } of demonstrationSite().pages.filter(
    (page) => !others.some((slug) => page.path.startsWith(`colours/${slug}/`)),
  )) {
    if (!found.has(view.kind))
      found.set(view.kind, { name: path, root: pagePlace(path).root, view });
  }
  return [...found.values()];
}

const ALL = [...PAGES, ...firstOfEachKind()];

test("every kind of page that has a template is tried", () => {
  expect(new Set(ALL.map(({ view }) => view.kind))).toEqual(new Set(KINDS));
});

/** Fields that lib/plots, the Markdown renderer or a closed set fill, or that are addresses. */
const NOT_TEXT = new Set([
  "svg",
  "narrow",
  "swatch",
  "strip",
  "body",
  "comparison",
  "jsonLd",
  "kind",
  "code",
  "href",
  "root",
  "language",
  "id",
  "canonical",
]);
const HOSTILE = `"><b title='x'>&amp; {{ 7919 * 7919 }}`;

/** The same view with a hostile text in every field that a record can fill. */
function hostile<T>(value: T): T {
  if (Array.isArray(value)) return value.map((item: unknown) => hostile(item)) as T;
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, inner]) => [
      key,
      typeof inner === "string" && !NOT_TEXT.has(key)
        ? `${inner}${HOSTILE}`
        : NOT_TEXT.has(key)
          ? (inner as unknown)
          : hostile(inner as unknown),
    ]),
  ) as T;
}

test.each(ALL)(
  "$name shows a record's text as text, never as HTML or template",
  ({ root, current, view }) => {
    const page: SiteView = hostile(site(root, current));
    const html = rendered(page, hostile(view));
    expect(html).toContain("&quot;&gt;&lt;b title=&#39;x&#39;&gt;&amp;amp; {{ 7919 * 7919 }}");
    expect(html).not.toContain("<b title");
    expect(html).not.toContain("62710561");
  },
);

test.each(ALL)("$name stops the build when its heading is missing", ({ root, view }) => {
  const withoutTitle = { ...view, title: undefined } as unknown as AnyPageView;
  expect(() => rendered(site(root), withoutTitle)).toThrow(/null or undefined/);
});
