import { expect, test } from "vitest";
import { firstColumn } from "../package/readme.ts";
import { siteFiles } from "./site-pages.ts";

/** Each row of the README's table of what comes out, and the files that it speaks of. */
const ROWS = firstColumn("## What comes out").map((code): readonly [string, RegExp] => {
  const own = code.replaceAll(".", "\\.").replaceAll("NAME", "[a-z0-9-]+");
  if (code === "assets/") return [code, /^assets\//];
  return [
    code,
    new RegExp(code.endsWith("/") ? `^${own}(?:by-[a-z]+/)?index\\.html$` : `^${own}$`),
  ];
});

test("every file of a build is in the README's table of what comes out", () => {
  const files = siteFiles();
  expect(files.filter((file) => !ROWS.some(([, row]) => row.test(file)))).toEqual([]);
});

test("and nothing is in that table that does not come out, but for the feed, which wants an earlier manifest", () => {
  const files = siteFiles();
  expect(
    ROWS.filter(([, row]) => !files.some((file) => row.test(file))).map(([code]) => code),
  ).toEqual(["feed.xml"]);
});
