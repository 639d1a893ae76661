import { expect, test } from "vitest";
import { siteBase, writtenBase } from "../../lib/records/site-base.ts";

// basis: published, RFC 3986, 3.3 and 2.3: segments of a path, and the characters that need no escape.
test.each([
  ["/colours/", "/colours/"],
  ["colours", "/colours/"],
  ["/shop/colours", "/shop/colours/"],
  ["/", "/"],
  ["", "/"],
  ["/a//b/", "/a/b/"],
  ["/../etc/", undefined],
  ["/./", undefined],
  ["/a b/", undefined],
  ["/colours/?x", undefined],
  ["https://saltreach.example/colours/", undefined],
  [`/"><script>/`, undefined],
])("--base %j is %j", (text, expected) => {
  expect(writtenBase(text)).toBe(expected);
});

test.each([
  [undefined, "/"],
  ["https://saltreach.example", "/"],
  ["https://saltreach.example/", "/"],
  ["https://saltreach.example/colours", "/colours/"],
  ["https://saltreach.example/shop/colours/", "/shop/colours/"],
])("the site of %j stands in %s", (siteAddress, expected) => {
  expect(siteBase(siteAddress === undefined ? {} : { siteAddress })).toBe(expected);
});
