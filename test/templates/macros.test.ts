import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { PICTOGRAM_CODES } from "../../lib/hazard/classify/hazard-class.ts";
import { pictogramSvg } from "../../lib/plots/pictogram.ts";
import type { TableView } from "../../lib/present/views.ts";
import type { StandingKind } from "../../lib/quantities/figure.ts";
import { site } from "./fixtures.ts";
import { renderedMacro } from "./rendered.ts";

const { words } = site("");

describe("standing", () => {
  test.each([["measured"], ["derived"], ["estimated"], ["stated"], ["not stated"]] as const)(
    "%s is a mark and a word",
    (kind: StandingKind) => {
      const html = renderedMacro("standing", "standing", { kind, word: `in words: ${kind}` });
      expect(html).toContain(`<use href="#mark-${kind.replace(" ", "-")}">`);
      expect(html).toContain(`in words: ${kind}`);
      expect(renderedMacro("standing", "standingSymbols", {})).toContain(
        `<symbol id="mark-${kind.replace(" ", "-")}"`,
      );
    },
  );

  test("five marks, no two alike", () => {
    const drawn = [
      ...renderedMacro("standing", "standingSymbols", {}).matchAll(
        /<symbol id="[^"]*"[^>]*>(.*)<\/symbol>/g,
      ),
    ].map((match) => match[1]);
    expect(drawn).toHaveLength(5);
    expect(new Set(drawn).size).toBe(5);
  });

  test("a derived figure says what it rests on", () => {
    expect(
      renderedMacro("standing", "standing", {
        kind: "derived",
        word: "derived",
        restsOn: "rests on an estimate",
      }),
    ).toContain(`derived<span class="standing__rests">, rests on an estimate</span>`);
  });

  test("in brief it keeps its word for screen readers", () => {
    expect(
      renderedMacro("standing", "standingBrief", { kind: "stated", word: "stated" }),
    ).toContain(`<span class="hidden">stated</span>`);
  });
});

describe("propertyTable", () => {
  const table = (rows: readonly object[]): string =>
    renderedMacro("property-table", "propertyTable", { table: { caption: "Oil", rows }, words });

  test("prints name, gloss, value, unit, standing, method and source of a property", () => {
    const html = table([
      {
        name: "Oil absorption",
        gloss: "grams of oil",
        value: "32",
        unit: "g/100 g",
        note: "±2",
        standing: { kind: "measured", word: "measured" },
        method: "ISO 787-5",
        source: { text: "Gettens 1942", href: "#source" },
      },
    ]);
    for (const part of [
      "<dfn>Oil absorption</dfn>",
      "grams of oil",
      `32 <span class="unit">g/100 g</span>`,
      "±2",
      "measured",
      "ISO 787-5",
      `<a href="#source">Gettens 1942</a>`,
    ])
      expect(html).toContain(part);
  });

  test("a property that is not stated prints a dash and its reason, never a blank or a zero", () => {
    const html = table([
      {
        name: "Hiding film",
        standing: { kind: "not stated", word: "not stated" },
        reason: "Needs a film over black and white.",
      },
    ]);
    expect(html).toContain("#mark-not-stated");
    expect(html).toContain("Needs a film over black and white.");
    expect(html).not.toContain("property-table__value");
  });

  test("prints nothing for no rows", () => {
    expect(table([]).trim()).toBe("");
  });

  test("refuses a known property without a value", () => {
    expect(() =>
      table([{ name: "Density", standing: { kind: "stated", word: "stated" } }]),
    ).toThrow(/null or undefined/);
  });
});

describe("dataTable", () => {
  const columns = ["Colour", "L*", "a*", "b*", "Munsell"].map((head, i) => ({
    head,
    numeric: i > 0,
    ...(i === 1 ? { unit: "1" } : {}),
  }));
  const row = ["Bone black", "12", "0", "1", "N 1.2/"].map((text) => ({ text }));
  const table = (more: Partial<TableView> = {}): string =>
    renderedMacro("data-table", "dataTable", { caption: "Colours", columns, rows: [row], ...more });

  test("heads its rows and columns, units in the head", () => {
    expect(table()).toContain(`<th scope="row">`);
    expect(table()).toContain(
      `<th scope="col" class="number">L*, <span class="unit">1</span></th>`,
    );
    expect(table()).toContain(`data-head="L*, 1"`);
  });

  test("folds on a phone from six columns on, later with five or with three of words, never when it is compact", () => {
    const six = { columns: [...columns.slice(0, 5), { head: "more" }], rows: [] };
    expect(table(six)).toContain("data-table--folding");
    expect(table({ columns: columns.slice(0, 5), rows: [] })).toContain("data-table--few");
    expect(table({ columns: columns.slice(0, 4), rows: [row.slice(0, 4)] })).not.toMatch(
      /data-table--(?:folding|few)/,
    );
    expect(
      table({
        columns: [{ head: "Figure" }, { head: "Reason" }, { head: "Needs" }],
        rows: [row.slice(0, 3)],
      }),
    ).toContain("data-table--few");
    expect(table({ ...six, compact: true })).not.toContain("data-table--folding");
  });

  test("a cell without a figure gives its reason", () => {
    expect(
      table({ rows: [[{ text: "Vine black" }, { text: "–", reason: "no reading yet" }]] }),
    ).toContain("no reading yet");
  });
});

describe("picture", () => {
  test("with a narrow drawing holds both, else one", () => {
    const one = renderedMacro("picture", "picture", { svg: '<svg class="wide"></svg>' });
    const two = renderedMacro("picture", "picture", {
      svg: '<svg class="wide"></svg>',
      narrow: '<svg class="narrow"></svg>',
      caption: "a < b",
    });
    expect(one).toMatch(/<figure class="picture">\s*<svg class="wide"><\/svg>\s*<\/figure>/);
    expect(one).not.toContain("figcaption");
    expect(two).toContain(`<div class="picture__narrow"><svg class="narrow"></svg></div>`);
    expect(two).toContain("a &lt; b");
  });
});

describe("pictograms (UN GHS, annex 1: a black symbol on white in a red frame set on a point)", () => {
  test.each(PICTOGRAM_CODES)("%s is drawn, and named in words", (code) => {
    expect(
      renderedMacro("hazard", "pictogramDrawing", {
        code,
        name: "in words",
        svg: pictogramSvg(code),
      }),
    ).toMatch(
      /^<span class="pictogram" role="img" aria-label="in words"><svg [^>]*aria-hidden="true"/,
    );
  });

  test("all nine differ, in red, black and white alone", () => {
    const drawn = PICTOGRAM_CODES.map(pictogramSvg);
    expect(new Set(drawn).size).toBe(9);
    const colours = new Set(
      drawn.flatMap((svg) => [...svg.matchAll(/fill="([^"]+)"/g)].map((match) => match[1])),
    );
    expect([...colours].toSorted()).toEqual(["#000", "#d8001d", "#fff"]);
  });
});

test("only drawings, tables of a comparison, rendered Markdown and JSON-LD are printed unescaped", () => {
  const files = readdirSync("templates", { recursive: true, encoding: "utf8" }).filter((file) =>
    file.endsWith(".njk"),
  );
  const unescaped = files.flatMap((file) =>
    [...readFileSync(join("templates", file), "utf8").matchAll(/\{\{ ([^}]*?) \| safe/g)].map(
      (match) => match[1],
    ),
  );
  expect(new Set(unescaped)).toEqual(
    new Set([
      "params.svg",
      "params.narrow",
      "cell.swatch",
      "colour.swatch",
      "item.body",
      "view.summary.body",
      "face",
      "view.comparison",
      "view.jsonLd",
    ]),
  );
});
