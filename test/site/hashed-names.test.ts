import { createHash } from "node:crypto";
import { describe, expect, test } from "vitest";
import { hashedAssets, withHashedNames, type Asset } from "../../lib/site/hashed-names.ts";

const asset = (path: string, text: string): Asset => ({ path, bytes: Buffer.from(text) });
const FONT = asset("assets/fonts/a.woff2", "font");
const STYLE = asset("assets/styles/site.css", `src: url("../fonts/a.woff2")`);
const WORKER = asset("assets/scripts/worker.js", "english");
const GERMAN_WORKER = asset("de/assets/scripts/worker.js", "german");
const SCRIPT = asset("assets/scripts/site.js", "new Worker(`${root}assets/scripts/worker.js`)");
const GERMAN = asset(
  "de/assets/scripts/site.js",
  "new Worker(`${root}assets/scripts/worker.js`) //",
);
const LICENCE = asset("assets/fonts/a-licence.txt", "licence");

const made = hashedAssets([STYLE, SCRIPT, GERMAN, FONT, WORKER, GERMAN_WORKER, LICENCE]);
const textAt = (path: string | undefined): string =>
  Buffer.from(made.files.find((file) => file.path === path)?.bytes ?? []).toString();

describe("assets under names that change with what they hold", () => {
  test("a name changes with a byte and with nothing else", () => {
    const named = (text: string): string | undefined =>
      hashedAssets([asset("assets/scripts/x.js", text)]).files[0]?.path;
    expect(named("one")).toBe(named("one"));
    expect(named("one")).not.toBe(named("two"));
    expect(named("one")).toMatch(/^assets\/scripts\/x\.[0-9a-f]{10}\.js$/);
  });

  // basis: derived. FIPS 180-4 by Node's own hash of the length, a colon and the bytes.
  test("the hash is of the bytes", () => {
    const hash = createHash("sha256").update("4:font").digest("hex").slice(0, 10);
    expect(made.paths.get("assets/fonts/a.woff2")).toBe(`assets/fonts/a.${hash}.woff2`);
  });

  test("what a style or script names of the others, it names by the new name", () => {
    const font = made.paths.get("assets/fonts/a.woff2") ?? "";
    expect(textAt(made.paths.get("assets/styles/site.css"))).toBe(
      `src: url("../${font.slice("assets/".length)}")`,
    );
    expect(textAt(made.paths.get("assets/scripts/site.js"))).toContain(
      made.paths.get("assets/scripts/worker.js"),
    );
  });

  test("scripts of all languages lie in one folder, and name those of their own", () => {
    const german = made.paths.get("de/assets/scripts/worker.js");
    expect(german).toMatch(/^assets\/scripts\/worker\.[0-9a-f]{10}\.js$/);
    expect(german).not.toBe(made.paths.get("assets/scripts/worker.js"));
    expect(textAt(made.paths.get("de/assets/scripts/site.js"))).toContain(german);
  });

  test("a style whose font has changed changes its name as well", () => {
    const other = hashedAssets([STYLE, asset("assets/fonts/a.woff2", "another font")]);
    expect(other.paths.get("assets/styles/site.css")).not.toBe(
      made.paths.get("assets/styles/site.css"),
    );
  });

  test("a licence keeps its name", () => {
    expect(made.paths.get("assets/fonts/a-licence.txt")).toBe("assets/fonts/a-licence.txt");
  });

  test("files that name one another in a circle are refused", () => {
    expect(() =>
      hashedAssets([
        asset("assets/scripts/a.js", "assets/scripts/b.js"),
        asset("assets/scripts/b.js", "assets/scripts/a.js"),
      ]),
    ).toThrow("Assets name one another in a circle: assets/scripts/a.js, assets/scripts/b.js");
  });
});

describe("a page's addresses", () => {
  const style = made.paths.get("assets/styles/site.css");
  test.each([
    ["", "/", "assets/styles/site.css", style],
    ["colours/lamp-black/", "/", "../../assets/styles/site.css", `../../${style}`],
    ["de/colours/", "/", "../../assets/styles/site.css", `../../${style}`],
    ["404.html", "/colours/", "/colours/assets/styles/site.css", `/colours/${style}`],
    [
      "de/bench/",
      "/",
      "../assets/scripts/site.js",
      `../../${made.paths.get("de/assets/scripts/site.js")}`,
    ],
    ["", "/", "assets/styles/none.css", "assets/styles/none.css"],
    [
      "",
      "/",
      "https://elsewhere.example/assets/styles/site.css",
      "https://elsewhere.example/assets/styles/site.css",
    ],
  ])("of %s below %s: %s", (page, base, address, expected) => {
    expect(withHashedNames(`<link href="${address}">`, page, base, made)).toBe(
      `<link href="${expected}">`,
    );
  });
});
