/** What sheets say of films, held against what the script of the demonstration's readings knows, and against integrated films. */
import { differenceCiede2000 } from "culori";
import { describe, expect, test } from "vitest";
import { readingNotations } from "../../lib/colorimetry/reading-notations.ts";
import { tristimulus } from "../../lib/colorimetry/tristimulus.ts";
import { spectrumLab } from "../../lib/colorimetry/spectrum-lab.ts";
import { OIL_SURFACE } from "../../lib/optics/surface/surface.ts";
import { at, certain } from "../../lib/quantities/at.ts";
import { isKnown, type Figure } from "../../lib/quantities/figure.ts";
import { wavelengthsNm } from "../../lib/quantities/spectrum.ts";
import { allSheets } from "../../lib/sheet/all-sheets.ts";
import { trueReflectance } from "../demonstration/drawdown-reflectance.ts";
import { INVENTED_PAINTS, type PaintKey } from "../demonstration/invented-paints.ts";
import { INVENTED_SETS, type InventedSet } from "../demonstration/invented-sets.ts";
import { flatReadings } from "../support/content-folder.ts";
import { soundRecords } from "../support/sound-records.ts";
import { hidingErrors } from "../published/demonstration-errors.ts";
import { bounced } from "../optics/synthetic-drawdowns.ts";
import { integratedMasstone, integratedReflectance } from "../optics/two-flux.ts";
import { SHEETS, sheetOf } from "./demonstration-sheets.ts";

const GRID = { startNm: 380, stepNm: 10, count: 36 };
const isPaint = (slug: string): slug is PaintKey => slug in INVENTED_PAINTS;

function known<T extends number | string>(figure: Figure<T> | undefined): T {
  if (figure === undefined || !isKnown(figure)) throw new Error("Unexpected figure not stated");
  return figure.value;
}

// basis: derived; kubelka-munk-1931, layers integrated by the demonstration's own script: films over white, gloss shut out.
describe("undertones", () => {
  const apart = differenceCiede2000();
  const films = SHEETS.flatMap(({ slug, optics }) =>
    isPaint(slug)
      ? (optics.glaze ?? []).map(({ filmUm, srgb }) => {
          const shown = (drawn: number): string => {
            const film = { thicknessUm: filmUm, ground: "white" } as const;
            const seen = { paint: slug, geometry: "d/8 excluded", film } as const;
            const values = trueReflectance(seen, wavelengthsNm(GRID), 1, drawn);
            return readingNotations({ grid: GRID, values }).screen.srgb.hex;
          };
          const truth = shown(1);
          const figure = srgb?.hex;
          const method = figure !== undefined && isKnown(figure) ? figure.method : "";
          return {
            slug,
            filmUm,
            method,
            deltaE00: apart(known(figure), truth),
            byThickness: apart(shown(1.05), truth),
          };
        })
      : [],
  )
    // A film of 5 um is thinner than any that was read, and shows most of the card through another surface.
    .filter(({ filmUm }) => filmUm >= 10);

  test.each([
    ["from a colour's own films", /^K and S from its films/, 40],
    ["from its let-downs, where its films hid their grounds", /^K and S from its let-downs in/, 60],
  ])("%s are those of the true film", (_, method, least) => {
    const told = films.filter((film) => method.test(film.method));
    expect(told.length).toBeGreaterThanOrEqual(least);
    // Within three standard uncertainties of its thickness, and 4 that a screen costs where it clips one of two strong yellows.
    for (const { slug, filmUm, deltaE00, byThickness } of told)
      expect(deltaE00, `${slug} at ${filmUm} um`).toBeLessThan(4 + 3 * byThickness);
  });
});

describe("a paint whose films hid, or nearly hid, their grounds", () => {
  const { hidingFilmUm } = hidingErrors(SHEETS);
  const thinnest = (slug: string): number => {
    const set: InventedSet = INVENTED_SETS[slug as keyof typeof INVENTED_SETS];
    return Math.min(...(set.filmsUm ?? []));
  };
  const opaque = hidingFilmUm.filter(({ id, truth }) => truth < thinnest(id) / 2);

  // basis: derived; a film that reads the same over both grounds tells only that it is thick enough (Kubelka 1948).
  test.each(opaque)("$id is said to hide at a thickness at most", ({ bound }) => {
    expect(opaque.length).toBeGreaterThan(4);
    expect(bound).toBe("at most");
  });
});

describe("an extender", () => {
  // basis: derived; the same ten volumes of medium to one of lamp black, layer by layer by the demonstration's script.
  test.each(["chalk-medium", "barytes-medium"] as const)(
    "%s lifts the strength reference as the true mixture does",
    (medium) => {
      const extender = certain(sheetOf(medium).optics.extender);
      const density = (slug: string): number => {
        const { oil } = sheetOf(slug);
        return known(oil.paintDensityGPerCm3 as Figure<number>);
      };
      const lightness = (volumes: number): number =>
        spectrumLab({
          grid: GRID,
          values: trueReflectance(
            {
              paint: "lamp-black",
              geometry: "d/8 included",
              ...(volumes === 0
                ? {}
                : {
                    into: {
                      white: medium,
                      parts: (volumes * density(medium)) / density("lamp-black"),
                      kind: "paint",
                    },
                  }),
            },
            wavelengthsNm(GRID),
          ),
        }).L;
      const { rule, values } = extender.sentence;
      const [fromL = NaN, change = NaN] = Object.entries({
        fromL: 0,
        change: 0,
        ...values,
      }).flatMap(([key, value]) => (key === "fromL" || key === "change" ? [value] : []));
      expect(rule).toBe("extender-hardly-lightens");
      // The surface taken off is an oil film's, of k1 .04, and the script's is of .037: L* 1.2 of a black.
      expect(Math.abs(fromL - lightness(0))).toBeLessThan(1.5);
      expect(Math.abs(change - (lightness(10) - lightness(0)))).toBeLessThan(0.5);
    },
  );
});

describe("the surface of films", () => {
  // basis: derived; kubelka-munk-1931 integrated, and light thrown about under a surface of k1 .03 until nothing is left.
  test("is thin enough for a dark film read with its gloss: contrast and hiding are those of the integrated film", () => {
    const surface = { k1: 0.03, k2: OIL_SURFACE.k2 };
    const [K, S] = [0.05, 0.004];
    const reads = (R: number): number => bounced(R, "d/8 included", surface);
    const film = (um: number, ground: number): number =>
      reads(integratedReflectance(K, S, um, ground));
    const [black, white] = [0.01, 0.8];
    const records = soundRecords({
      "workshop.yaml": `name: Test
readings: { scale: factor, geometry: d/8 included }
grounds: { black: { reading: films, column: bare black }, white: { reading: films, column: bare white } }
`,
      "pigments/dark.yaml": "name: Dark\n",
      "colours/dark.md": `---
name: Dark
pigments: [{ pigment: dark }]
masstone: { reading: films, column: coat }
films:
  - { ground: black, filmThicknessUm: 25, reading: films, column: over black }
  - { ground: white, filmThicknessUm: 25, reading: films, column: over white }
---
`,
      "readings/films.csv": flatReadings({
        "bare black": reads(black),
        "bare white": reads(white),
        "over black": film(25, black),
        "over white": film(25, white),
        coat: reads(integratedMasstone(K, S)),
      }),
    });
    const { contrastRatio, hidingFilmUm } = at(allSheets(records), 0).optics;
    const Y = (R: number): number =>
      tristimulus({ grid: GRID, values: GRID_VALUES.map(() => R) }, "D65/10").Y;
    const contrast = (um: number): number => Y(film(um, black)) / Y(film(um, white));
    expect(known(contrastRatio as Figure<number>)).toBeCloseTo(contrast(75), 2);
    expect(contrast(known(hidingFilmUm as Figure<number>))).toBeCloseTo(0.98, 2);
  });
});

const GRID_VALUES = wavelengthsNm(GRID);
