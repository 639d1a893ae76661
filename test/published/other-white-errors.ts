/** How far let-downs expected in a white lie from those that were read, or are known to be true, there. */
import { deltaE00 } from "../../lib/colorimetry/difference.ts";
import { spectrumLab } from "../../lib/colorimetry/spectrum-lab.ts";
import { filmsOptics } from "../../lib/optics/films/several-films.ts";
import type { ColourFit } from "../../lib/optics/fit/colour-fit.ts";
import type { DrawdownSet, Tint } from "../../lib/optics/fit/drawdown.ts";
import { fittedColours } from "../../lib/optics/fit/fitted-colour.ts";
import { hidingReading } from "../../lib/optics/fit/hiding-reading.ts";
import { expectedLadder, expectedTint } from "../../lib/optics/tints/expected-ladder.ts";
import { changeOfWhite } from "../../lib/optics/tints/white-change.ts";
import { wavelengthsNm } from "../../lib/quantities/spectrum.ts";
import type { Records } from "../../lib/records/records.ts";
import { drawdownSet } from "../../lib/sheet/tints/drawdown-set.ts";
import { trueReflectance } from "../demonstration/drawdown-reflectance.ts";
import { INVENTED_PAINTS, type PaintKey } from "../demonstration/invented-paints.ts";
import { MEASURED_PAINTS, measuredPaint } from "./measured-paints.ts";
import type { PredictionError } from "./prediction-errors.ts";

/** The whites, by the paint that is the white itself. */
const WHITES = new Map([
  ["zinc white", "07A"],
  ["barium sulphate", "16A"],
  ["calcium carbonate", "17A"],
]);
/** Colours that were let down in zinc white and in an extender: masstone and let-downs. */
const COLOURS: readonly (readonly [string, ...string[]])[] = [
  ["07F", "07C", "07D", "07E", "16B", "16C"],
  ["04A", "04B", "04C", "04F", "16D", "17D"],
  ["09A", "09B", "09C", "16E"],
  ["12A", "12B", "12C", "16F", "17F"],
];

/**
 * Every colour expected in barytes and in chalk from its let-downs in zinc white, through each other colour
 * that was let down in both, against its let-down there as it reads where it hides: from both grounds.
 */
export function otherWhiteErrors(): PredictionError[] {
  return ["barium sulphate", "calcium carbonate"].flatMap((white) => {
    const there = COLOURS.filter(([, ...ids]) => ids.some((id) => whiteOf(id).slug === white));
    return there.flatMap((judged) =>
      there
        .filter((bridge) => bridge !== judged)
        .flatMap((bridge) => errorsThrough(judged, bridge, white)),
    );
  });
}

function errorsThrough(
  judged: readonly [string, ...string[]],
  bridge: readonly [string, ...string[]],
  white: string,
): PredictionError[] {
  const inZinc = judged.filter((id, i) => i === 0 || whiteOf(id).slug === "zinc white");
  const fits = fittedColours(
    new Map<string, DrawdownSet>([
      ["judged", setOf(inZinc)],
      ["bridge", setOf(bridge)],
      ...[...MEASURED_PAINTS.values()].map(({ id, overWhite }): [string, DrawdownSet] => [
        `reading ${id}`,
        { masstone: overWhite, whites: [], tints: [] },
      ]),
    ]),
  );
  const [fit, other] = [fits.get("judged"), fits.get("bridge")];
  if (fit?.kind !== "fit" || other?.kind !== "fit") throw new Error("No fit");
  const change = changeOfWhite(fit, white, [other]);
  if (change === undefined) throw new Error(`Nothing expected in ${white}`);
  const ladder = expectedLadder(fit, change);
  return judged.slice(1).flatMap((id): PredictionError[] => {
    const { slug, massRatio } = whiteOf(id);
    if (slug !== white) return [];
    const { lab, uncertainty, distance, own } = expectedTint(ladder, massRatio);
    const { overWhite } = measuredPaint(id);
    const film = filmOf(id);
    const { surface } = fit.surface;
    const hiding = hidingReading(overWhite, film, filmsOptics([film], surface), surface);
    const read = spectrumLab({ grid: fit.grid, values: hiding.measured });
    return [
      {
        id: `${judged[0].slice(0, 2)} in ${id} through ${bridge[0]}`,
        hides: false,
        deltaE00: deltaE00(read, lab),
        uncertainty,
        distance,
        doubts: ladder.doubts,
        own,
        read,
        predicted: lab,
        masstone: fit.masstone.lab,
      },
    ];
  });
}

function setOf(ids: readonly string[]): DrawdownSet {
  const [masstone = "", ...letDowns] = ids;
  const slugs = [...new Set(letDowns.map((id) => whiteOf(id).slug))];
  return {
    masstone: measuredPaint(masstone).overWhite,
    film: filmOf(masstone),
    whites: slugs.map((slug) => {
      const id = WHITES.get(slug) ?? "";
      return { slug, masstone: measuredPaint(id).overWhite, film: filmOf(id) };
    }),
    tints: letDowns.map((id): Tint => {
      const { slug: white, massRatio } = whiteOf(id);
      const { overWhite: reading } = measuredPaint(id);
      return { id, white, massRatio, ratioKind: "paint", reading, film: filmOf(id) };
    }),
  };
}

function whiteOf(id: string): { readonly slug: string; readonly massRatio: number } {
  const found = [...measuredPaint(id).parts].find(([name]) => WHITES.has(name));
  const [slug, share] = found ?? ["", NaN];
  return { slug, massRatio: (1 - share) / share };
}

function filmOf(id: string) {
  const { overBlack, overWhite, chartBlack, chartWhite } = measuredPaint(id);
  return { overBlack, overWhite, black: chartBlack, white: chartWhite };
}

/** Colour to white by mass at which the demonstration's expected let-downs are held. */
const TRIED_RATIOS = [1, 1 / 5, 1 / 20, 1 / 100];

/** Every white that a demonstration colour was let down in, left out and expected through the others, against the true let-downs. */
export function otherWhiteTruthErrors(records: Records): PredictionError[] {
  const colours = [...records.colours.values()];
  return colours.flatMap((colour) => {
    const whites = [...new Set(colour.tints.map(({ white }) => white))];
    if (whites.length < 2) return [];
    return whites.flatMap((white) => {
      const sets = colours.map((one): [string, DrawdownSet] => {
        const set = drawdownSet(one, records);
        return [
          one.slug,
          one === colour
            ? { ...set, tints: set.tints.filter((tint) => tint.white !== white) }
            : set,
        ];
      });
      const fits = fittedColours(new Map(sets));
      const fit = fits.get(colour.slug);
      if (fit?.kind !== "fit" || !isPaint(colour.slug) || !isPaint(white)) return [];
      const others = [...fits].flatMap(([slug, one]): ColourFit[] =>
        slug !== colour.slug && one.kind === "fit" ? [one] : [],
      );
      const change = changeOfWhite(fit, white, others);
      if (change === undefined) return [];
      const ladder = expectedLadder(fit, change);
      const { slug: paint } = colour;
      const kind = ladder.from.white.ratioKind;
      return TRIED_RATIOS.map((massRatio): PredictionError => {
        const { lab, uncertainty, distance, own } = expectedTint(ladder, massRatio);
        const into = { white, parts: 1 / massRatio, kind };
        const truth = trueReflectance(
          { paint, geometry: fit.geometry, into },
          wavelengthsNm(fit.grid),
        );
        const read = spectrumLab({ grid: fit.grid, values: truth });
        return {
          id: `${paint} in ${white} ${massRatio}`,
          hides: true,
          deltaE00: deltaE00(read, lab),
          uncertainty,
          distance,
          doubts: ladder.doubts,
          own,
          read,
          predicted: lab,
          masstone: fit.masstone.lab,
        };
      });
    });
  });
}

function isPaint(slug: string): slug is PaintKey {
  return slug in INVENTED_PAINTS;
}
