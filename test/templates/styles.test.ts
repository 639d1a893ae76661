import { gzipSync } from "node:zlib";
import { readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { build } from "esbuild";
import { describe, expect, test } from "vitest";

const FOLDER = "assets/styles";
const SHEETS = readdirSync(FOLDER)
  .filter((file) => file.endsWith(".css"))
  .map((file) => ({
    file,
    css: readFileSync(join(FOLDER, file), "utf8").replace(/\/\*[\s\S]*?\*\//g, ""),
  }));

/** Value of a custom property in :root, the first or, in the dark, the second time it is set. */
function token(name: string, inTheDark = false): string {
  const values = [
    ...(SHEETS.find(({ file }) => file === "ground.css")?.css ?? "").matchAll(
      new RegExp(`--${name}: ([^;]+);`, "g"),
    ),
  ].map((match) => match[1] ?? "");
  const value = values[inTheDark ? 1 : 0];
  if (value === undefined) throw new Error(`Unexpected absence of --${name}`);
  return value;
}

/** Relative luminance and contrast ratio as WCAG 2.2 defines them ("contrast ratio", "relative luminance"). */
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5]
    .map((at) => parseInt(hex.slice(at, at + 2), 16) / 255)
    .map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
function contrast(one: string, other: string): number {
  const [darker = 0, lighter = 0] = [luminance(one), luminance(other)].toSorted((a, b) => a - b);
  return (lighter + 0.05) / (darker + 0.05);
}

test("contrast as WCAG 2.2 states it: black on white 21, #767676 on white just over 4.5 (Understanding SC 1.4.3)", () => {
  expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 6);
  expect(contrast("#767676", "#ffffff")).toBeGreaterThan(4.5);
  expect(contrast("#777777", "#ffffff")).toBeLessThan(4.5);
});

describe("the ground", () => {
  test.each(SHEETS)(
    "$file: every colour is a neutral grey, R = G = B, so that a* = b* = 0",
    ({ css }) => {
      const colours = [...css.matchAll(/#[0-9a-f]{3,8}\b/gi)].map(([colour]) => colour);
      for (const colour of colours) expect(colour).toMatch(/^#([0-9a-f]{2})\1\1$/i);
      expect(css).not.toMatch(/\b(?:rgb|hsl|oklch|lab|color)\(/);
    },
  );

  test("there are colours that are held to it", () => {
    expect(SHEETS.flatMap(({ css }) => [...css.matchAll(/#[0-9a-f]{6}/gi)]).length).toBeGreaterThan(
      10,
    );
  });

  test.each(SHEETS)(
    "$file: no shadow, round corner, gradient, animation or transition",
    ({ css }) => {
      expect(css).not.toMatch(
        /box-shadow|text-shadow|border-radius|gradient|animation|transition|!important/,
      );
    },
  );

  test.each([[false], [true]])(
    "text and quiet text reach 4.5 : 1 on the page (WCAG 2.2 SC 1.4.3), dark %s",
    (inTheDark) => {
      for (const text of ["text", "quiet"])
        expect(
          contrast(token(text, inTheDark), token("ground", inTheDark)),
          text,
        ).toBeGreaterThanOrEqual(4.5);
    },
  );

  test("text on N 6 reaches 4.5 : 1, and N 6 is set once, the same in light and dark", () => {
    expect(contrast(token("on-panel"), token("panel"))).toBeGreaterThanOrEqual(4.5);
    expect(() => token("panel", true)).toThrow();
  });

  test("the panel is Munsell N 6: Y by the value function of ASTM D1535 at V = 6, within half an 8-bit step", () => {
    const V = 6;
    const Y =
      1.1914 * V - 0.22533 * V ** 2 + 0.23352 * V ** 3 - 0.020484 * V ** 4 + 0.00081939 * V ** 5;
    const step = luminance("#949494") - luminance("#939393");
    expect(Math.abs(luminance(token("panel")) - Y / 100)).toBeLessThanOrEqual(step / 2);
  });
});

describe("what a page weighs", () => {
  const faces = [
    ...(SHEETS.find(({ file }) => file === "fonts.css")?.css ?? "").matchAll(
      /url\("\.\.\/fonts\/([^"]+)"\)/g,
    ),
  ].map((match) => match[1] ?? "");
  const pathOf = (file: string): string =>
    `node_modules/@fontsource/${file.replace(/-(?:latin|greek)-.*/, "")}/files/${file}`;

  test("the fonts are files of the two packages, and there are no others", () => {
    expect(faces.length).toBeGreaterThan(0);
    for (const face of faces) expect(statSync(pathOf(face)).size).toBeGreaterThan(0);
  });

  test("style sheet as it is sent, gzipped, and all fonts together stay under 100 kB (the project's own limit)", async () => {
    const { outputFiles } = await build({
      entryPoints: [`${FOLDER}/site.css`],
      bundle: true,
      minify: true,
      write: false,
      external: ["../fonts/*"],
    });
    const bytes = faces.reduce(
      (sum, face) => sum + statSync(pathOf(face)).size,
      gzipSync(outputFiles[0]?.contents ?? "").length,
    );
    expect(bytes).toBeLessThan(100_000);
  });

  test("nothing is fetched from another site", () => {
    for (const { css } of SHEETS)
      for (const [, address] of css.matchAll(/url\("([^"]+)"\)/g))
        expect(address).not.toMatch(/^(?:https?:)?\/\//);
  });
});

test("every class that the templates print has a rule, so that a slip of the pen shows", () => {
  /** Names for the reader of the page's source, and for tests. */
  const hooks = new Set(["sheet", "fact", "first-screen__name"]);
  const css = SHEETS.map((sheet) => sheet.css).join("\n");
  const files = readdirSync("templates", { recursive: true, encoding: "utf8" }).filter((file) =>
    file.endsWith(".njk"),
  );
  const classes = new Set(
    files.flatMap((file) =>
      [
        ...readFileSync(join("templates", file), "utf8").matchAll(/class="([^"{]+)(?:"|\{)/g),
      ].flatMap((match) => (match[1] ?? "").trim().split(/\s+/)),
    ),
  );
  expect(
    [...classes].filter(
      (name) => !hooks.has(name) && !css.includes(`.${name}`) && !name.endsWith("-"),
    ),
  ).toEqual([]);
});
