import { describe, expect, test } from "vitest";
import { keysOf } from "../../lib/quantities/members.ts";
import { METALS } from "../../lib/hazard/studio/metal-content.ts";
import { handbookEstimate, type HandbookRow } from "../../lib/formulation/handbook-estimate.ts";
import type { Expectation } from "../../lib/permanence/expected-lightfastness.ts";
import { EXPECTED_OPACITIES } from "../../lib/optics/films/expected-opacity.ts";
import type { ToldOfPigment } from "../../lib/knowledge/pigment-tables.ts";
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
    ["PW 6", 4, "van Driel et al. 2018, titanium dioxide"],
    ["PW 22", 4.5, "van Driel et al. 2018, barium sulphate"],
    ["PW 18", 2.9, "van Driel et al. 2018, calcium carbonate"],
    ["PW 4", 5.6, "van Driel et al. 2018, zinc oxide"],
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
    ["PR 49", "Stenger 2010, abstract: poor light stability within paint systems"],
    ["PR 49:2", "the same abstract, of the calcium salt too"],
  ])("%s is expected to change (%s)", (name) => {
    const row = KNOWN.pigment(name).lightfastness;
    expect([row?.masstone, row?.tint].some((word) => word && FADES.includes(word))).toBe(true);
    expect(KNOWN.pigment(name).sensitivities.map(({ agent }) => agent)).toContain("light");
  });
  test.each([
    ["PB 28", "Farnsworth: cobalt blue is quite permanent"],
    ["PB 35", "Farnsworth: cerulean is permanent"],
    ["PB 29", "Farnsworth: ultramarine is permanent"],
    ["PV 14", "Farnsworth: cobalt violet is quite permanent"],
    ["PR 101", "Notes on Building Construction: not among those that fade"],
  ])("%s is expected to hold (%s)", (name) => {
    expect(KNOWN.pigment(name).lightfastness).toMatchObject({
      masstone: "excellent",
      tint: "excellent",
    });
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
  const MANUAL = "The Painter's Manual, in Scientific American, 17 December 1859";
  const NOTES = "Notes on Building Construction";
  const SAITZYK = "Saitzyk, Art Hardware (1987)";
  test.each([
    ["PW 22", "Gardner 1911: barytes is transparent in oil"],
    ["PW 26", "Gardner 1911: talc is transparent in oil"],
    ["PW 25", "Gardner 1911: gypsum lacks hiding in oil"],
    ["NY 24", `Radford; ${MANUAL}: gamboge is transparent`],
    ["PB 29", `${NOTES}: French ultramarine is more or less transparent`],
    ["NR 4", `${MANUAL}: carmine and all lakes are transparent`],
    ["NR 9", `${SAITZYK}: madder is transparent`],
    ["PR 83", `${SAITZYK}: alizarin crimson is transparent`],
    ["PG 18", "Gettens & Stout 1942: the transparent one of the two chromium greens"],
    ["PB 27", `${SAITZYK}: most blues are transparent`],
    [
      "PB 32",
      "Pigments through the Ages (web page): smalt refracts by 1.46 to 1.55, about as oil does",
    ],
    ["NBr 9", `${NOTES}: sepia is more or less transparent`],
  ])("%s is transparent (%s)", (name) =>
    expect(KNOWN.pigment(name).opacity?.opacity).toBe("transparent"),
  );
  test.each([
    ["PBr 7", `${NOTES}: umbers and siennas are more or less transparent`],
    ["PBr 7", `${MANUAL}: umber is semi-transparent`],
    ["PBr 7", `${SAITZYK}: earths range from semi-transparent to semi-opaque`],
    ["PW 4", `${SAITZYK}: of the whites zinc is the most transparent`],
    ["PY 43", `${SAITZYK}: earths range from semi-transparent to semi-opaque`],
    ["PBk 9", `${NOTES}: blacks are more or less transparent`],
    ["PW 1", `${SAITZYK}: lead white stands between zinc and titanium`],
  ])("%s is between (%s)", (name) =>
    expect(KNOWN.pigment(name).opacity?.opacity).toMatch(/^semi-/),
  );
  test.each([
    ["PW 6", `${SAITZYK}: titanium is the most opaque of the whites`],
    ["PG 17", "Gettens & Stout 1942: chromium oxide green, opaque"],
    ["PR 108", `${SAITZYK}: all cadmium colours are opaque`],
    ["PY 35", `${SAITZYK}: all cadmium colours are opaque`],
    ["PY 34", `${SAITZYK}: all chrome colours are opaque`],
    ["PR 106", `${SAITZYK}: genuine vermilion is opaque`],
  ])("%s is opaque (%s)", (name) => expect(KNOWN.pigment(name).opacity?.opacity).toBe("opaque"));
  test("titanium hides more than lead white, and lead white more than zinc (Saitzyk 1987)", () => {
    const steps = ["PW 4", "PW 1", "PW 6"].map((name) =>
      EXPECTED_OPACITIES.findIndex((word) => word === KNOWN.pigment(name).opacity?.opacity),
    );
    expect(steps).toEqual(steps.toSorted((one, other) => one - other));
    expect(new Set(steps).size).toBe(3);
  });
});

describe("years, between the first making and the first sale that texts print", () => {
  const GETTENS = "Gettens & Stout 1942, p. 142";
  test.each([
    ["PY 37", 1817, 1817, `${GETTENS}: cadmium yellow by Stromeyer`],
    [
      "PB 29",
      1824,
      1828,
      `${GETTENS}: artificial ultramarine by Guimet, 1824; 1828 in a timeline of blues`,
    ],
    ["PG 18", 1838, 1859, `${GETTENS}: viridian, 1838; made in quantity by Guignet from 1859`],
    ["PY 34", 1809, 1809, `${GETTENS}: memoir of Vauquelin`],
    ["PW 5", 1870, 1879, `${GETTENS}: lithopone in the 1870s`],
    ["PR 108", 1910, 1910, `${GETTENS}: cadmium reds about 1910`],
    [
      "PW 6",
      1916,
      1920,
      "mass production from about 1916; usually dated 1920 (a chronology of titanium white)",
    ],
    ["PB 27", 1704, 1704, "a timeline of blue pigments"],
    ["PB 28", 1802, 1804, "Th\u00e9nard 1802; 1804 in a timeline of blues"],
    ["PB 35", 1805, 1860, "1805 in a timeline of blues; sold from 1860 (memory)"],
    ["PG 19", 1780, 1780, "Rinmann, in a database of artists' materials"],
    ["PG 21", 1814, 1814, "emerald green, in a history of greens"],
  ])("%s: %d to %d (%s)", (name, from, to) => {
    const year = KNOWN.pigment(name).identity?.year ?? NaN;
    expect(year).toBeGreaterThanOrEqual(from);
    expect(year).toBeLessThanOrEqual(to);
  });
});

/** Paper of a working group on dust explosions, UN/SCEGHS/26/INF.16 (2013), paragraphs 5 and 6; carbons: Group F of combustible dusts in the National Electrical Code. */
describe("dust that can burn and dust that does not, published", () => {
  test.each([
    ["PW 18", "carbonates"],
    ["PW 1", "carbonates"],
    ["PG 39", "carbonates"],
    ["PW 22", "sulphates"],
    ["PW 3", "sulphates"],
    ["PW 25", "gypsum"],
    ["PW 19", "silicates"],
    ["PW 26", "silicates"],
    ["PB 29", "silicates"],
    ["PG 23", "silicates"],
    ["PB 73", "silicates"],
    ["PB 32", "silicates"],
    ["PV 14", "phosphates"],
    ["PV 16", "phosphates"],
    ["PW 27", "sand"],
  ])("%s does not burn (%s)", (name) => expect(KNOWN.pigment(name).nature).toBe("mineral"));
  test.each([
    ["PBk 7", "fine carbon", "carbon black"],
    ["PBk 8", "fine carbon", "charcoal"],
    ["PR 254", "organic", "organic materials"],
    ["PV 19", "organic", "organic materials"],
    ["PB 15:3", "organic", "organic materials"],
    ["NB 1", "organic", "organic materials"],
  ])("%s is %s, which can (%s)", (name, nature) => expect(KNOWN.pigment(name).nature).toBe(nature));
});

describe("what acid, alkali and lime do, published", () => {
  const agents = (name: string): string[] =>
    KNOWN.pigment(name).sensitivities.map(({ agent, effect }) => `${agent} ${effect}`);
  const TERRY = "Terry, Pigments, Paint and Painting (1893)";
  const FRESCO = "Notes on Building Construction: fit for fresco";
  test.each([
    ["PB 29", "acid bleaches", "Field: acid is the great test for ultramarine"],
    [
      "PB 27",
      "alkali browns",
      `${TERRY}: caustic soda destroys Prussian blue and leaves it brownish`,
    ],
    [
      "PY 34",
      "alkali reddens",
      `${TERRY}: by alkalies a green of chrome yellow takes a reddish hue`,
    ],
    ["PY 34", "sulphur darkens", `${TERRY}: darkened by sulphuretted hydrogen`],
    ["PY 40", "alkali fades", "memory"],
  ])("%s: %s (%s)", (name, harm) => expect(agents(name)).toContain(harm));
  test.each([
    ["PW 22", `${FRESCO}: sulphate of baryta`],
    ["PW 18", `${FRESCO}: carbonate of lime`],
    ["PW 25", `${FRESCO}: sulphate of lime`],
    ["PY 43", `${FRESCO}: all the ochres`],
    ["PR 102", `${FRESCO}: the reds that are earths`],
    ["PBr 7", `${FRESCO}: browns`],
    ["PBk 9", `${FRESCO}: blacks`],
    ["PBk 6", `${FRESCO}: blacks`],
    ["PBk 8", `${FRESCO}: blacks`],
    ["PB 35", `${TERRY}: coeruleum is proof against caustic potash`],
    ["PG 17", "a painter's handbook of greens: unaffected by lime"],
    ["PG 18", "a painter's handbook of greens: unaffected by lime"],
  ])("%s bears alkali (%s)", (name) =>
    expect(agents(name).filter((harm) => harm.startsWith("alkali"))).toEqual([]),
  );
});

describe("what acid sets free", () => {
  const STOUT = "Gettens & Stout (1942), page";
  test.each([
    [
      "PY 37",
      "strong acid",
      "hydrogen sulphide",
      `${STOUT} 102: by concentrated mineral acids, not by cold dilute ones`,
    ],
    [
      "PR 108",
      "strong acid",
      "hydrogen sulphide and hydrogen selenide",
      "memory: of its selenide too",
    ],
    ["PB 29", "any acid", "hydrogen sulphide", "Haz-Map, after Ullmann: after contact with acid"],
    [
      "PW 5",
      "any acid",
      "hydrogen sulphide",
      "Uebele (1913): wetted with dilute hydrochloric acid, at once",
    ],
    ["PB 27", "strong heat or strong acid", "hydrogen cyanide", "common practice, no source"],
  ])("%s: under %s %s (%s)", (name, release, gas) =>
    expect(KNOWN.pigment(name).givesOff).toMatchObject({ release, gas }),
  );
  test.each([
    ["PR 106", "Britannica (1911): vermilion is unaffected by acid fumes"],
    ["PW 4", "Uebele (1913): wetted with dilute hydrochloric acid zinc oxide gives off nothing"],
    ["PW 22", "common practice, no source: barium sulphate does not dissolve in acid"],
  ])("%s gives off nothing (%s)", (name) => expect(KNOWN.pigment(name).givesOff).toBeUndefined());
});

/** A metal that a formula of Gettens & Stout (1942, table of pigments) holds is in the table of metals; a formula without one is not. */
describe("metals, by the formulae that Gettens & Stout (1942) print", () => {
  const metals = (name: string): string[] =>
    KNOWN.pigment(name).rows.metalsByColourIndex.map(({ metal }) => metal);
  test.each([
    ["PW 1", "2PbCO3.Pb(OH)2", ["lead"]],
    ["PR 105", "Pb3O4", ["lead"]],
    ["PY 46", "PbO", ["lead"]],
    ["PY 41", "Pb3(SbO4)2", ["lead", "antimony"]],
    ["PY 34", "PbCrO4", ["lead", "chromate"]],
    ["PR 106", "HgS", ["mercury"]],
    ["PY 39", "As2S3", ["arsenic"]],
    ["PY 37", "CdS", ["cadmium"]],
    ["PR 108", "CdS(Se)", ["cadmium"]],
    ["PY 32", "SrCrO4", ["chromate"]],
    ["PB 28", "CoO.Al2O3", ["cobalt"]],
    ["PB 35", "CoO.nSnO2", ["cobalt"]],
    ["PY 40", "CoK3(NO2)6.H2O", ["cobalt"]],
    ["PV 16", "(NH4)2Mn2(P2O7)2", ["manganese"]],
    ["PG 21", "Cu(C2H3O2)2.3Cu(AsO2)2", ["arsenic", "copper"]],
    ["PG 39", "CuCO3.Cu(OH)2", ["copper"]],
    ["PW 18", "CaCO3", []],
    ["PW 6", "TiO2", []],
    ["PB 27", "Fe4[Fe(CN)6]3", []],
    ["PW 22", "BaSO4", []],
    ["PBk 6", "C", []],
  ])("%s, %s: %o", (name, _, expected) =>
    expect(metals(name).toSorted()).toEqual(expected.toSorted()),
  );
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

/** What of a pigment a table may tell; where none does, its row of pigments.csv says that it is not known. */
const KNOWN_OF: Readonly<
  Record<ToldOfPigment, (known: ReturnType<typeof KNOWN.pigment>) => boolean>
> = {
  lightfastness: ({ lightfastness }) => lightfastness !== undefined,
  density: ({ densities }) => densities.length > 0,
  "oil absorption": ({ oilAbsorptions }) => oilAbsorptions.length > 0,
  "drying chemistry": ({ chemistry }) => chemistry !== undefined,
  opacity: ({ opacity }) => opacity !== undefined,
};

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
  /** Crystal or molecule holds the metal fast: common practice, no source. */
  const HELD_FAST = [
    "barium sulphate",
    "copper azomethine",
    "copper chromite",
    "copper phthalocyanine",
    "copper silicate",
  ];
  test("a pigment of a class named for a metal has its row of that metal", () => {
    const lacking = pigments
      .filter((row) => row.class !== undefined && !HELD_FAST.includes(row.class))
      .flatMap(({ colourIndexName, class: of = "" }) => {
        const held = KNOWN.pigment(colourIndexName).rows.metalsByColourIndex;
        return METALS.filter(
          (metal) => of.split(" ").includes(metal) && !held.some((row) => row.metal === metal),
        ).map((metal) => `${colourIndexName}, ${metal}`);
      });
    expect(lacking).toEqual([]);
  });
  const SYMBOLS = {
    Pb: "lead",
    Cd: "cadmium",
    Hg: "mercury",
    As: "arsenic",
    Ni: "nickel",
    Co: "cobalt",
    Sb: "antimony",
    Ba: "barium",
    Mn: "manganese",
    Cu: "copper",
  } as const;
  /** Barium that sulphate holds; manganese that a crystal holds, or of which an earth's own record says how much. */
  const NOT_CAUTIONED = [/BaSO4/, /^Y\(In,Mn\)O3$/, /^Fe2O3 with MnO2/];
  test("a pigment whose formula names a metal has its row of it in metals-by-colour-index.csv: no class gives it one", () => {
    const lacking = pigments
      .filter((row) => row.class === undefined || !HELD_FAST.includes(row.class))
      .flatMap(({ colourIndexName, formula = "" }) => {
        const held = KNOWN.pigment(colourIndexName).rows.metalsByColourIndex;
        return keysOf(SYMBOLS)
          .filter((symbol) => new RegExp(`${symbol}(?![a-z])`).test(formula))
          .filter(
            (symbol) =>
              !NOT_CAUTIONED.some((one) => one.test(formula) && one.source.includes(symbol)),
          )
          .filter((symbol) => !held.some(({ metal }) => metal === SYMBOLS[symbol]))
          .map((symbol) => `${colourIndexName}, ${SYMBOLS[symbol]}`);
      });
    expect(lacking).toEqual([]);
  });
  test("of one pigment alone no class is known, and so not whether its dust burns", () => {
    const lacking = (has: (known: ReturnType<typeof KNOWN.pigment>) => boolean): string[] =>
      KNOWN.names.filter((name) => !has(KNOWN.pigment(name)));
    expect(lacking(({ identity }) => identity?.class !== undefined)).toEqual(["PO 86"]);
    expect(lacking(({ nature }) => nature !== undefined)).toEqual(["PO 86"]);
  });
  test.each(keysOf(KNOWN_OF))(
    "the %s of a pigment is told by a row with its source, or its own row says that it is not known",
    (what) => {
      const unknown = KNOWN.names.filter((name) => !KNOWN_OF[what](KNOWN.pigment(name)));
      const said = pigments
        .filter(({ notKnown = [] }) => notKnown.includes(what))
        .map(({ colourIndexName }) => colourIndexName);
      expect(
        unknown.filter((name) => !said.includes(name)),
        `not known; a row of its table, or ${what} in the column notKnown of its own row`,
      ).toEqual([]);
      expect(
        said.filter((name) => !unknown.includes(name)),
        "known by now",
      ).toEqual([]);
    },
  );
});
