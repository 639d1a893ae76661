import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { colourSchema, type ColourRecord } from "../../lib/records/schema/colour.ts";
import { pigmentSchema } from "../../lib/records/schema/pigment.ts";
import { workshopSchema } from "../../lib/records/schema/workshop.ts";
import { INVENTED_PAINTS, type InventedPaint, type PaintKey } from "./invented-paints.ts";
import { columnsOf, INVENTED_SETS, type InventedSet } from "./invented-sets.ts";

const CONTENT = join(import.meta.dirname, "../../content");

const COLOURS = readdirSync(join(CONTENT, "colours")).map((file) => {
  const [, front = "", notes = ""] =
    /^---\n([\s\S]*?)\n---\n([\s\S]*)$/.exec(
      readFileSync(join(CONTENT, "colours", file), "utf8"),
    ) ?? [];
  return { slug: file.replace(/\.md$/, ""), record: colourSchema.parse(parse(front)), notes };
});

function colour(slug: string): ColourRecord {
  const found = COLOURS.find((one) => one.slug === slug);
  if (found === undefined) throw new Error(`Unexpected demonstration without ${slug}`);
  return found.record;
}

function colourIndexNames(record: ColourRecord): (string | undefined)[] {
  return record.pigments.map(
    ({ pigment }) =>
      pigmentSchema.parse(parse(readFileSync(join(CONTENT, "pigments", `${pigment}.yaml`), "utf8")))
        .colourIndexName,
  );
}

describe("the demonstration workshop", () => {
  test("says that it is invented, in the workshop's record and in every colour's notes", () => {
    expect(
      workshopSchema.parse(parse(readFileSync(join(CONTENT, "workshop.yaml"), "utf8")))
        .demonstration,
    ).toBe(true);
    for (const { slug, notes } of COLOURS)
      expect(notes, slug).toContain("invented for the demonstration");
  });

  test("holds thirty colours or more, the six blacks and three whites among them", () => {
    expect(COLOURS.length).toBeGreaterThanOrEqual(30);
    const single = COLOURS.filter(({ record }) => record.pigments.length === 1).flatMap(
      ({ record }) => colourIndexNames(record),
    );
    expect(single).toEqual(
      expect.arrayContaining([
        "PBk 6",
        "PBk 7",
        "PBk 9",
        "PBk 11",
        "PBk 28",
        "PBk 31",
        "PW 1",
        "PW 4",
        "PW 6",
      ]),
    );
  });

  test("shows every level of completeness", () => {
    const forms = COLOURS.map(({ record: { masstone } }) =>
      masstone === undefined
        ? "none"
        : "reading" in masstone
          ? "reading"
          : "lab" in masstone
            ? "lab"
            : "munsell",
    );
    expect(new Set(forms)).toEqual(new Set(["none", "reading", "lab", "munsell"]));
    expect(
      COLOURS.some(
        ({ record }) =>
          record.pigments.length > 1 && record.pigments.every(({ parts }) => parts === undefined),
      ),
    ).toBe(true);
  });

  test("names no rub-out of PBk 6 and PBk 11 without its method, and gives both bulk densities", () => {
    for (const slug of ["lamp-black", "black-iron-oxide"]) {
      const pigment = pigmentSchema.parse(
        parse(readFileSync(join(CONTENT, "pigments", `${slug}.yaml`), "utf8")),
      );
      expect(pigment.oilAbsorptionGPer100g).toMatchObject({
        standing: "measured",
        method: expect.stringMatching(/ISO 787-5|ASTM D281/) as string,
      });
      expect(pigment.bulkDensityLooseGPerMl).toMatchObject({ standing: "measured" });
      expect(pigment.bulkDensityTappedGPerMl).toMatchObject({ standing: "measured" });
    }
  });

  test("sells lead white where it is forbidden only on a legal basis, to named buyers", () => {
    expect(colour("lead-white").legalBasis?.map(({ market }) => market)).toContain("EU");
  });
});

/** The record is what the workshop wrote down; the script made its readings from the same recipe. */
describe.each(Object.entries(INVENTED_SETS) as [PaintKey, InventedSet][])(
  "the record of %s",
  (slug, set) => {
    const record = colour(slug);

    test("gives the recipe that its readings were made from", () => {
      const paint: InventedPaint = INVENTED_PAINTS[slug];
      expect(record.pigments.map(({ parts }) => parts)).toEqual(Object.values(paint.pigments));
      const oil = record.oilIndexGPer100g;
      expect(typeof oil === "object" ? oil.value : oil).toBe(paint.oilGPer100g);
    });

    test("uses every column of its file, and no other, in the geometry it was read in", () => {
      const readings = [record.masstone, ...(record.tints ?? []), ...(record.films ?? [])]
        .filter((one) => one !== undefined)
        .filter((one) => "reading" in one);
      expect(readings.flatMap(({ column }) => column)).toEqual(
        columnsOf(slug, set).map(({ name }) => name),
      );
      for (const reading of readings) {
        expect(reading.geometry ?? "d/8 excluded").toBe(set.geometry ?? "d/8 excluded");
        expect(reading.scale ?? "factor").toBe(set.format === "csv percent" ? "percent" : "factor");
      }
    });
  },
);
