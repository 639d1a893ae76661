import { expect, test } from "vitest";
import { sitePages } from "../../lib/site/all-pages.ts";
import { worked } from "../support/demonstration.ts";

test("a sheet's revision is asked for where a page is filled, so that the page is known to read it", () => {
  let asked = 0;
  const published = worked().published.map((one) => ({
    worded: one.worded,
    neighbours: one.neighbours,
    get revision() {
      asked++;
      return "as it is now";
    },
  }));
  const pages = sitePages({ ...worked(), published });
  expect(asked).toBe(0);
  const bench = pages.find(({ path }) => path === "colours/bone-black/bench/index.html");
  expect(JSON.stringify(bench?.view)).toContain("as it is now");
});
