import { describe, expect, test } from "vitest";
import { handbookEstimate, type HandbookRow } from "../../lib/formulation/handbook-estimate.ts";
import type { Expectation } from "../../lib/permanence/expected-lightfastness.ts";
import { weakerExpectation } from "../../lib/permanence/expected-lightfastness.ts";
import { KNOWN } from "../support/known.ts";

/** Figures of texts that the tables were not made from, each of which the table's range has to hold. */
type Published = readonly [name: string, figure: number, source: string];

function holds(rows: readonly HandbookRow[], name: string, figure: number): void {
  const [least, most] = handbookEstimate(rows, { colourIndexName: name })?.estimate ?? [NaN, NaN];
  expect(figure, `${least} to ${most}`).toBeGreaterThanOrEqual(least);
  expect(figure, `${least} to ${most}`).toBeLessThanOrEqual(most);
}

describe("densities [g/cm3], published", () => {
  test.each<Published>([
    ["PW 21", 4.2, "Gardner 1911, blanc fixe"],
    ["PW 18", 2.74, "Gardner 1911, natural whiting"],
    ["PW 18", 2.5, "Gardner 1911, precipitated chalk"],
    ["PW 25", 2.3, "Gardner 1911, gypsum"],
    ["PW 5", 4.25, "Gardner 1911, lithopone"],
    ["PW 26", 2.7, "Gardner 1911, talcose"],
    ["PB 27", 1.9, "Gardner 1911, Prussian blue"],
    ["PB 29", 2.4, "Gardner 1911, ultramarine"],
    ["PW 6", 4, "van Driel and others 2018, titanium dioxide"],
    ["PW 22", 4.5, "van Driel and others 2018, barium sulphate"],
    ["PW 18", 2.9, "van Driel and others 2018, calcium carbonate"],
    ["PW 4", 5.6, "van Driel and others 2018, zinc oxide"],
    ["PB 30", 3.75, "Hobbs 1912, azurite 3.7 to 3.8"],
    ["PY 43", 3.8, "Hobbs 1912, limonite 3.6 to 4"],
    ["PR 101", 5, "Hobbs 1912, hematite"],
    ["PBk 11", 5, "Hobbs 1912, magnetite"],
  ])("%s: %s lies in the range (%s)", (name, figure) =>
    holds(KNOWN.pigment(name).densities, name, figure),
  );
});

describe("oil absorptions [g/100 g] by ASTM D281, published in a paint chemist's notes (2022)", () => {
  test.each<Published>([
    ["PW 1", 9, "basic lead carbonate 9-12"],
    ["PW 1", 12, "basic lead carbonate 9-12"],
    ["PW 22", 10, "barytes 10-20"],
    ["PW 22", 20, "barytes 10-20"],
    ["PW 21", 15, "blanc fixe"],
    ["PW 18", 16, "calcium carbonate 16-18"],
    ["PW 4", 17, "zinc oxide 17-20"],
    ["PR 101", 20, "red iron oxide"],
    ["PW 6", 11, "uncoated titanium dioxide"],
    ["PW 27", 29, "amorphous silica"],
    ["PW 19", 30, "china clay"],
    ["PB 15", 34, "phthalocyanine blue"],
    ["PB 27", 51, "Milori blue"],
    ["PBk 6", 51, "lampblack"],
    ["PBk 7", 124, "carbon black, medium"],
  ])("%s: %s lies in the range (%s)", (name, figure) =>
    holds(KNOWN.pigment(name).oilAbsorptions, name, figure),
  );
});

describe("what light does, published", () => {
  const FADES: readonly Expectation[] = ["fair", "poor", "fugitive"];
  test.each([
    ["PB 27", "Notes on Building Construction: Prussian blue fades in strong light"],
    ["PB 66", "Notes on Building Construction: indigo fades"],
    ["NB 1", "Notes on Building Construction: indigo fades"],
    ["NBr 8", "Notes on Building Construction: the peaty browns fade"],
    ["NR 9", "Notes on Building Construction: madders fade, in less degree"],
    ["NR 4", "Farnsworth: crimson lake is fugitive"],
    ["PY 39", "Field, Table I: orpiment suffers by light"],
    ["NY 24", "Field, Table I: gamboge"],
    ["NY 10", "Field, Table I: quercitron lake"],
    ["NY 13", "Field, Table I: Dutch pink"],
  ])("%s is expected to change (%s)", (name) => {
    const row = KNOWN.pigment(name).lightfastness;
    expect(FADES).toContain(row && weakerExpectation(row));
    expect(KNOWN.pigment(name).sensitivities.map(({ agent }) => agent)).toContain("light");
  });
  test.each([
    ["PB 28", "Farnsworth: cobalt blue is quite permanent"],
    ["PB 35", "Farnsworth: cerulean is permanent"],
    ["PB 29", "Farnsworth: ultramarine is permanent"],
    ["PV 14", "Farnsworth: cobalt violet is quite permanent"],
    ["PR 101", "Notes on Building Construction: not among those that fade"],
  ])("%s is expected to hold (%s)", (name) => {
    const row = KNOWN.pigment(name).lightfastness;
    expect(row && weakerExpectation(row)).toBe("excellent");
  });
  test("lithopone darkens in the sun (Gardner 1911)", () => {
    expect(KNOWN.pigment("PW 5").sensitivities).toContainEqual(
      expect.objectContaining({ agent: "light", effect: "darkens", source: "gardner-1911" }),
    );
  });
});

describe("sulphuretted air harms these, published (Notes on Building Construction)", () => {
  test.each([
    ["PW 1", "white lead"],
    ["PY 34", "yellows but the ochres: chrome yellow"],
    ["PR 105", "red lead"],
    ["PO 21", "orange salts of lead"],
    ["PG 20", "greens: verdigris"],
    ["PG 21", "greens: emerald green"],
    ["PG 39", "greens: malachite"],
  ])("%s (%s)", (name) => {
    expect(KNOWN.pigment(name).sensitivities.map(({ agent }) => agent)).toContain("sulphur");
  });
});

describe("what hides and what does not, published", () => {
  test.each([
    ["PW 22", "Gardner 1911: barytes is transparent in oil"],
    ["PW 26", "Gardner 1911: talc is transparent in oil"],
    ["PW 25", "Gardner 1911: gypsum lacks hiding in oil"],
    ["NY 24", "Radford: gamboge is a transparent colour"],
    ["PB 29", "Notes on Building Construction: French ultramarine is more or less transparent"],
  ])("%s is transparent (%s)", (name) =>
    expect(KNOWN.pigment(name).opacity?.opacity).toBe("transparent"),
  );
  test.each([
    ["PBr 7", "Notes on Building Construction: umbers and siennas are more or less transparent"],
    ["PW 4", "covers less than lead white (trade notes on oil whites)"],
  ])("%s is semi-transparent (%s)", (name) =>
    expect(KNOWN.pigment(name).opacity?.opacity).toBe("semi-transparent"),
  );
  test.each([
    ["PW 6", "trade notes on oil whites: the greatest opacity of all whites"],
    ["PG 17", "Gettens & Stout 1942: chromium oxide green, opaque"],
    ["PR 108", "common practice"],
    ["PR 106", "common practice"],
    ["PBk 9", "common practice"],
  ])("%s is opaque (%s)", (name) => expect(KNOWN.pigment(name).opacity?.opacity).toBe("opaque"));
  test("viridian is the transparent one of the two chromium greens (Gettens & Stout 1942)", () =>
    expect(KNOWN.pigment("PG 18").opacity?.opacity).toBe("transparent"));
});

describe("formulae as Gettens & Stout (1942) print them", () => {
  test.each([
    ["PW 1", "2PbCO3.Pb(OH)2"],
    ["PW 4", "ZnO"],
    ["PW 24", "Al(OH)3"],
    ["PW 25", "CaSO4.2H2O"],
    ["PB 27", "Fe4[Fe(CN)6]3"],
    ["PB 30", "2CuCO3.Cu(OH)2"],
    ["PG 18", "Cr2O3.2H2O"],
    ["PG 39", "CuCO3.Cu(OH)2"],
    ["PR 105", "Pb3O4"],
    ["PR 106", "HgS"],
    ["PY 31", "BaCrO4"],
    ["PY 32", "SrCrO4"],
    ["PY 39", "As2S3"],
    ["PV 14", "Co3(PO4)2"],
  ])("%s is %s", (name, formula) => expect(KNOWN.pigment(name).identity?.formula).toBe(formula));
});

describe("the one look-up by Colour Index name", () => {
  test.each([
    ["PY 35:1", "cadmium lithopone"],
    ["PR 108:1", "cadmium lithopone"],
    ["PO 20:1", "cadmium lithopone"],
    ["PR 83:1", "alizarin lake"],
    ["PW 18:1", "chalk"],
    ["PB 15:3", "copper phthalocyanine"],
  ])("%s is %s", (name, pigmentClass) => {
    const known = KNOWN.pigment(name);
    expect(known.identity?.class).toBe(pigmentClass);
    expect(known.densities).not.toEqual([]);
    expect(known.oilAbsorptions).not.toEqual([]);
    expect(known.lightfastness).toBeDefined();
    expect(known.chemistry).toBeDefined();
  });
  test("a variant with a row of its own has that, and not its parent's", () => {
    expect(
      handbookEstimate(KNOWN.pigment("PR 108:1").densities, { colourIndexName: "PR 108:1" })
        ?.estimate,
    ).not.toEqual(
      handbookEstimate(KNOWN.pigment("PR 108").densities, { colourIndexName: "PR 108" })?.estimate,
    );
  });
  test("a suffix that nobody gave has what its parent has", () => {
    expect(KNOWN.pigment("PR 108:7")).toEqual(
      expect.objectContaining({ chemistry: KNOWN.pigment("PR 108").chemistry }),
    );
    expect(KNOWN.pigment("PR 106:2").sensitivities).toEqual(KNOWN.pigment("PR 106").sensitivities);
  });
  test("nothing is known of a name that no table has, nor without a name", () => {
    for (const name of ["PY 999", undefined]) {
      const known = KNOWN.pigment(name);
      expect([known.identity, known.chemistry, known.lightfastness, known.opacity]).toEqual(
        Array(4).fill(undefined),
      );
      expect([known.densities, known.oilAbsorptions, known.sensitivities]).toEqual([[], [], []]);
    }
  });
  test.each([
    ["PR 254", "red"],
    ["PBk 9", "black"],
    ["PBr 41", "brown"],
    ["NBr 8", "brown"],
    ["PW 18", "extender"],
    ["PW 1", "white"],
    ["PY 43", "earth"],
    ["NR 9", "red"],
    ["PM 1", undefined],
  ])("%s counts among %s", (name, family) => expect(KNOWN.pigment(name).family).toBe(family));
});

describe("the tables together", () => {
  const { pigments, ...rest } = KNOWN.tables;
  const classes = new Set(pigments.flatMap((row) => row.class ?? []));

  test("know two hundred pigments, and each class from pigments.csv or a name in it", () => {
    expect(pigments.length).toBeGreaterThan(213);
    const named = new Set<string>([...KNOWN.names, ...classes]);
    const strangers = Object.values(rest).flatMap((rows) =>
      rows.flatMap((row) =>
        "pigments" in row ? row.pigments.filter((name) => !named.has(name)) : [],
      ),
    );
    expect(strangers).toEqual([]);
  });
  test("what is not known of each stays empty, and that is counted", () => {
    const lacking = (has: (name: string) => boolean): string[] =>
      KNOWN.names.filter((name) => !has(name));
    const unknown = lacking((name) => KNOWN.pigment(name).identity?.class !== undefined);
    expect(unknown).toEqual(["PO 86"]);
    expect(lacking((name) => KNOWN.pigment(name).nature !== undefined)).toEqual(["PO 86"]);
    expect(
      lacking((name) => KNOWN.pigment(name).lightfastness !== undefined).length,
    ).toBeLessThanOrEqual(20);
    expect(lacking((name) => KNOWN.pigment(name).densities.length > 0).length).toBeLessThan(20);
    expect(lacking((name) => KNOWN.pigment(name).oilAbsorptions.length > 0).length).toBeLessThan(
      26,
    );
    expect(
      lacking((name) => KNOWN.pigment(name).chemistry !== undefined).length,
    ).toBeLessThanOrEqual(25);
    expect(lacking((name) => KNOWN.pigment(name).opacity !== undefined).length).toBeLessThan(50);
  });
});
