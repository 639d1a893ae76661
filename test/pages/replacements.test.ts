import { parse } from "csv-parse/sync";
import { describe, expect, test } from "vitest";
import type { Block } from "../../lib/blocks/block.ts";
import { searchRecipes, type RecipeReport } from "../../assets/scripts/mixing/recipe-search.ts";
import { targetOfText } from "../../lib/mixing/finding/target-text.ts";
import { readBy } from "../../lib/kept/reads.ts";
import { mixingData } from "../../lib/pages/mixing-data.ts";
import type { PageContext } from "../../lib/pages/page-context.ts";
import { replacementBlocks, replacementsPart } from "../../lib/pages/replacement-blocks.ts";
import { offerViews } from "../../lib/pages/sheet-page.ts";
import { possibleMeasurements } from "../../lib/planning/measurement.ts";
import { isStatement } from "../../lib/quantities/statement.ts";
import { catalogueCsv, CATALOGUE_COLUMNS } from "../../lib/site/catalogue-csv.ts";
import { catalogueJson } from "../../lib/site/published-data.ts";
import { DATA, RANGE, WORKED } from "../mixing/demonstration-range.ts";
import { RECORDS } from "../sheet/demonstration-sheets.ts";

const { context, published } = WORKED;
const OUT = "alizarin-crimson";

function blocksOf(slug: string): readonly Block[] {
  return replacementBlocks(slug, context, { path: `colours/${slug}/index.html`, root: "../../" });
}

/** The same with other sheets, and what is mixed with of these. */
function among(sheets: PageContext["sheets"]): PageContext {
  const others = { ...context, sheets };
  return { ...others, mixing: () => mixingData(others) };
}

/** What the table of replacements names, the colour itself first. */
function named(slug: string): string[] {
  return blocksOf(slug).flatMap((block) =>
    block.kind === "table" ? block.table.rows.map(([first]) => first?.text ?? "") : [],
  );
}

describe("what takes the place of a colour", () => {
  test("is read as a part by itself, and so is among what its recipes are looked for", () => {
    const fresh = among([...context.sheets]);
    const place = { path: `colours/${OUT}/index.html`, root: "../../" };
    const { names } = readBy(() => replacementBlocks(OUT, fresh, place));
    expect([...names]).toEqual([`replacements/${OUT}`]);
    const { names: searched } = readBy(() => replacementsPart(`replacements/${OUT}`, fresh));
    expect([...searched]).toEqual([]);
    const lookedFor = (most: number, slug = OUT): readonly string[] =>
      replacementsPart(`replacements/${slug}/${most}/titanium-white`, fresh) as readonly string[];
    const [ofTwo, ofThree] = [lookedFor(2), lookedFor(3)];
    expect(ofTwo.length).toBeLessThanOrEqual(26);
    expect(ofThree).toHaveLength(16);
    expect(ofTwo).toEqual(expect.arrayContaining([...ofThree]));
    expect(ofTwo.join()).not.toMatch(/alizarin/);
    expect(lookedFor(2, "cadmium-red").join()).not.toMatch(/cadmium|lead/);
  });

  test("that is made and that everybody may use is not asked", () => {
    expect(blocksOf("bone-black")).toEqual([]);
  });

  test("of lead holds neither lead nor cadmium", () => {
    const [itself, ...others] = named("lead-white");
    expect(itself).toBe("Lead White");
    expect(others.length).toBeGreaterThan(1);
    expect(others.join()).not.toMatch(/Cadmium|Lead White/);
  });

  // Derived: neighbouring ISCC-NBS names lie 6 apart in the middle.
  test("is within 6 of it, or nothing is", () => {
    const listed = ["cadmium-red", "cadmium-yellow", "lead-white", OUT].map((slug) => ({
      slug,
      off: blocksOf(slug).flatMap((block) =>
        block.kind === "table"
          ? block.table.rows
              .slice(1)
              .map(([, cell]) => Number(/[\d.]+(?=\u00a0\u00b1)/.exec(cell?.text ?? "")?.[0]))
          : [],
      ),
      said: JSON.stringify(blocksOf(slug)),
    }));
    for (const { off, said } of listed) {
      expect(Math.max(0, ...off)).toBeLessThanOrEqual(6);
      expect(/comes near it|no colour near it/.test(said) && !said.includes("Nearest to it")).toBe(
        off.length === 0,
      );
    }
    expect(listed.some(({ off }) => off.length > 0)).toBe(true);
  });

  test("is none where the only other colours are a black and an ochre", () => {
    const sheets = context.sheets.filter(({ sheet: { slug } }) =>
      ["cadmium-red", "lamp-black", "yellow-ochre", "titanium-white"].includes(slug),
    );
    const place = { path: "colours/cadmium-red/index.html", root: "../../" };
    const said = JSON.stringify(replacementBlocks("cadmium-red", among(sheets), place));
    expect(said).toContain('Cadmium Red contains cadmium."');
    expect(said).toContain("Nothing of ours comes near it.");
    expect(said).not.toContain("Lamp Black");
  });

  // basis: practice, no source: of a paint without a data sheet nobody knows that it holds no lead.
  test("is not said to be far off where paints were left out that nobody classified", () => {
    const sheets = context.sheets.map((one) =>
      one.sheet.slug === "cadmium-red"
        ? one
        : {
            ...one,
            sheet: { ...one.sheet, cautions: { ...one.sheet.cautions, unknown: ["something"] } },
          },
    );
    const place = { path: "colours/cadmium-red/index.html", root: "../../" };
    const said = JSON.stringify(replacementBlocks("cadmium-red", among(sheets), place));
    expect(said).toContain("what is not classified yet was left out");
    expect(said).not.toContain("Nothing of ours comes near it.");
  });

  test("that is made no more says from when, and is no part of its own recipe", () => {
    expect(JSON.stringify(blocksOf(OUT)[0])).toContain(
      "Alizarin Crimson is discontinued from 1 June 2026.",
    );
    const [itself, ...others] = named(OUT);
    expect(itself).toBe("Alizarin Crimson");
    expect(others.length).toBeGreaterThan(1);
    expect(others.join()).not.toContain("Alizarin");
  });
});

test("a search that asks to be dry too soon is told how soon it can be", async () => {
  const target = targetOfText("N 6/");
  if (isStatement(target)) throw new Error(target.rule);
  let last: RecipeReport | undefined;
  await searchRecipes(
    {
      target,
      white: "titanium-white",
      coloursMost: 1,
      isWhiteFree: false,
      leaveOut: [],
      mustHold: [],
      limits: { withoutMetals: ["lead"], days: 1, isUnlabelled: false },
      order: "nearest",
      most: 20,
    },
    RANGE,
    (report) => (last = report),
    () => false,
  );
  expect(last?.reached).toBe(0);
  expect(last?.quickest?.[1]).toBeGreaterThan(1);
});

describe("a colour that is made no more", () => {
  const sheet = context.sheets.find((one) => one.sheet.slug === OUT)?.sheet;

  test("has no price, and its sheet says since when", () => {
    if (sheet === undefined) throw new Error("Unexpected demonstration without it");
    expect(offerViews(sheet, context.words)).toEqual([{ text: "Discontinued from 1 June 2026." }]);
    expect(sheet.offer?.sizes.every(({ price }) => price === undefined)).toBe(true);
  });

  test("is not for sale in the catalogue, which goes on listing it", () => {
    const rows = parse(catalogueCsv(published, RECORDS, context));
    const own = rows.filter(([id = ""]) => id.startsWith(OUT));
    expect(own.length).toBeGreaterThan(0);
    const forSale = CATALOGUE_COLUMNS.indexOf("for_sale");
    expect(own.map((row) => row[forSale])).toEqual(own.map(() => "no"));
    const { colours } = JSON.parse(catalogueJson(published, RECORDS)) as {
      colours: { slug: string; discontinued?: string }[];
    };
    expect(colours.filter(({ discontinued }) => discontinued !== undefined)).toEqual([
      expect.objectContaining({ slug: OUT, discontinued: "2026-06-01" }),
    ]);
  });

  test("has nothing proposed to be found out of it", () => {
    expect(possibleMeasurements(RECORDS).some(({ slug }) => slug === OUT)).toBe(false);
  });

  test("is nobody's recipe", async () => {
    expect(DATA.paints.find(({ slug }) => slug === OUT)?.isDiscontinued).toBe(true);
    const target = targetOfText("5RP 3/6");
    if (isStatement(target)) throw new Error(target.rule);
    const found: string[] = [];
    await searchRecipes(
      {
        target,
        white: "titanium-white",
        coloursMost: 2,
        isWhiteFree: false,
        leaveOut: [],
        mustHold: [],
        limits: { withoutMetals: [], isUnlabelled: false },
        order: "nearest",
        most: 20,
      },
      RANGE,
      ({ recipes }) =>
        found.push(...recipes.flatMap(({ mix }) => mix.colours.map(({ slug }) => slug))),
      () => false,
    );
    expect(found.length).toBeGreaterThan(0);
    expect(found).not.toContain(OUT);
  });
});
