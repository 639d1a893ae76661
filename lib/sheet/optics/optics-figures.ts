import { EXPECTED_OPACITIES, opacityContradiction } from "../../optics/films/expected-opacity.ts";
import { coverageCm2PerMl } from "../../optics/films/hiding.ts";
import type { OpacityStatement } from "../../optics/films/opacity.ts";
import { derivedFigure } from "../../quantities/derived-figure.ts";
import { bounded, isKnown, type Figure } from "../../quantities/figure.ts";
import type { Interval } from "../../quantities/interval.ts";
import type { Statement } from "../../quantities/statement.ts";
import * as d from "../declaration.ts";
import { filled, foundFrom, type Amounts } from "../found.ts";
import type { PaintOfColour } from "../paint-as-made.ts";
import type { PigmentPart } from "../pigments/pigment-figures.ts";
import { effectOfPigments } from "../pigments/special-effects.ts";
import { drawdownRecords } from "../record-inputs.ts";
import { FIT } from "../tints/fit-figures.ts";
import { weighedAs } from "../tints/paint-conversion.ts";
import { tintingStrength, type Strength } from "../tints/strength.ts";
import type { TintSection } from "../tints/tint-figures.ts";
import type { NotLetDown, WhitesStatement } from "../../optics/tints/tint-statement.ts";
import { acrossWhites } from "./across-whites.ts";
import { DISPERSION, dispersionFigures } from "./dispersion-figures.ts";
import { EXTENDER, extenderFigures } from "./extender-figures.ts";
import { GLOSS_DEPTH, glossFigures, glossReasons } from "./gloss-figures.ts";
import {
  contrastFigure,
  GLAZE_STEP,
  glaze,
  hidingCurve,
  hidingFilmFigure,
  hidingReasons,
  masstoneFilm,
  opacityFigure,
  opacityOf,
} from "./hiding.ts";
import { scatteringPowerFigure } from "./scattering-power.ts";
import { coatReasons, filmsOfColour, type FilmsOfColour } from "./told-films.ts";

/** What the figures of a colour's optics are found from, beside one another. */
export interface OpticsOfColour extends PaintOfColour {
  readonly tints: readonly TintSection[];
  readonly films: FilmsOfColour;
  readonly strength: Strength;
  /** Mulled beside milled. */
  readonly dispersed: ReturnType<typeof dispersionFigures>;
}
const optics = foundFrom<
  OpticsOfColour &
    Amounts<"contrastRatio" | "hidingFilmUm"> & { readonly scatteringPower: Figure<Interval> }
>();

const OPPOSITE = { "at least": "at most", "at most": "at least" } as const;

/** Strength, hiding, glaze, what gloss does to depth, and how K and S were fitted. */
export const OPTICS = d.headed("strengthSection", {
  /** That theory does not hold for a pigment of it, and nothing of it is predicted. */
  notPredicted: optics.found(d.optional(d.statement), ({ colour, records }) =>
    effectOfPigments(colour, records),
  ),
  /** Beside the workshop's reference: by mass, and tube to tube. */
  tintingStrength: optics.found(
    d.listed(d.quantity({ ...d.SHARE, word: "tintingStrength" })),
    ({ strength }) => strength.byMass,
    ["lamp-black.optics.tintingStrength", "it is the workshop's reference", 1],
  ),
  tintingStrengthByVolume: optics.found(
    d.listed(d.quantity({ ...d.SHARE, word: "tintingStrengthByVolume" })),
    ({ strength }) => strength.byVolume,
    ["lamp-black.optics.tintingStrengthByVolume", "it is the workshop's reference", 1],
  ),
  contrastRatio: optics.found(
    d.listed(d.quantity({ unit: "1", kind: "decimal", digits: 2, word: "contrastRatio" })),
    ({ films }) => contrastFigure(films),
  ),
  hidingFilmUm: optics.found(
    d.listed(d.quantity({ unit: "um", kind: "significant", digits: 2, word: "hidingFilm" })),
    ({ films }) => hidingFilmFigure(films),
  ),
  /** Of a millilitre from the tube, in a film that just hides. */
  coverageCm2PerMl: optics.found(
    d.listed(d.quantity({ unit: "cm2/ml", kind: "significant", digits: 2, word: "coverage" })),
    ({ films: { told }, hidingFilmUm: hidingFilm, oil: { volumeSolids } }) => {
      if (told === undefined) return hidingFilm;
      // The thinner the film that hides, the further it goes.
      const bound = told.hides.bound && OPPOSITE[told.hides.bound];
      return bounded(
        derivedFigure(
          { name: "10 000 / film that hides [\u00b5m] x volume solids", unit: "cm2/ml" },
          { hidingFilm, volumeSolids },
          (v) => coverageCm2PerMl(v.hidingFilm) * v.volumeSolids,
        ),
        bound,
      );
    },
    ["lamp-black.optics.coverageCm2PerMl", "10 000 / 5.69147, the film that hides", 1757.015],
  ),
  /** S X of the film that opacity is judged by: what a dark paint's transparency goes by. */
  scatteringPower: optics.found(
    d.listed(d.interval({ unit: "1", kind: "significant", digits: 2, word: "scatteringPower" }), {
      after: "optics.opacityClass",
    }),
    ({ colour, films: { told }, inFilm, fits, records }) =>
      scatteringPowerFigure(
        colour,
        told,
        inFilm.paintDensityGPerCm3,
        fits.get(colour.slug),
        records,
      ),
  ),
  opacityClass: optics.found(
    d.listed(d.word("opacityClass"), { after: "optics.dispersion.strength" }),
    opacityFigure,
  ),
  /** The colour in films over white, thinnest first: its undertone. */
  glaze: optics.found(
    d.optional(d.list(GLAZE_STEP)),
    ({ colour, films: { told }, fits, records }) =>
      told === undefined ? undefined : glaze(told, colour, fits.get(colour.slug), records),
  ),
  /** For the hiding curve, as worked out from its films. */
  hidingCurve: optics.found(
    d.optional(
      d.plain<readonly { readonly filmUm: number; readonly contrastRatio: number }[]>({
        type: "array",
        items: { type: "object", required: ["filmUm", "contrastRatio"] },
      }),
    ),
    ({ films: { told } }) => (told === undefined ? undefined : hidingCurve(told)),
  ),
  /** Flakes that mirror, and light that is given out, are beneath no surface that could be taken off. */
  gloss: optics.found(d.optional(GLOSS_DEPTH), ({ colour, records }) =>
    effectOfPigments(colour, records) === undefined ? glossFigures(colour) : undefined,
  ),
  /** Of an extender medium: how little it lightens. */
  extender: optics.found(d.optional(EXTENDER), ({ colour, family, fits, records }) =>
    extenderFigures(colour, family, fits, records),
  ),
  /** Where the same pigment was drawn down mulled and milled. */
  dispersion: optics.found(d.optional(DISPERSION), ({ dispersed }) => dispersed.figures),
  /** What the white makes of it, at each L* that two whites reach; and whites of the range it was not let down in. */
  acrossWhites: optics.found(
    d.statementsAmong<WhitesStatement | NotLetDown>(),
    ({ tints, records }) => acrossWhites(tints, records),
  ),
  /** Absent where the drawdowns carry none: then each tint says why. */
  fit: optics.found(d.optional(FIT), ({ colour, fits, records }) => {
    const fit = fits.get(colour.slug);
    return fit?.kind === "fit"
      ? filled(FIT, { fit, drawdowns: drawdownRecords(colour, records), records })
      : undefined;
  }),
  reasons: optics.found(d.statements, (of) => {
    const judgedBy = opacityOf(of)?.reason;
    return [
      ...of.strength.reasons,
      ...coatReasons(of.colour),
      ...masstoneFilm(of.colour, of.records),
      ...hidingReasons(of.films, judgedBy),
      ...unlikePigment(judgedBy, of.pigments),
      ...of.dispersed.reasons,
      ...(effectOfPigments(of.colour, of.records) === undefined ? glossReasons(of.colour) : []),
    ];
  }),
});
export type OpticsSection = d.SectionOf<typeof OPTICS>;

export function opticsSection(
  ofColour: PaintOfColour,
  tints: readonly TintSection[],
): OpticsSection {
  const { colour, pigments, oil, fits, records } = ofColour;
  return filled(OPTICS, {
    ...ofColour,
    tints,
    films: filmsOfColour(colour, records),
    strength: tintingStrength(colour, weighedAs(oil), fits, records),
    dispersed: dispersionFigures(colour, pigments, fits, records),
  });
}

/** That a paint of one pigment hides otherwise than is to be expected of the pigment. */
function unlikePigment(
  judgedBy: OpacityStatement | undefined,
  [part, ...others]: readonly PigmentPart[],
): Statement[] {
  const expected = part?.expectedOpacity;
  if (judgedBy === undefined || expected === undefined || !isKnown(expected) || others.length > 0)
    return [];
  const word = EXPECTED_OPACITIES.find((one) => one === expected.value);
  const found = word && opacityContradiction(judgedBy, word);
  return found === undefined ? [] : [found];
}
