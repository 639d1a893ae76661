import { deltaE00 } from "../../colorimetry/difference.ts";
import { munsellOfLab } from "../../colorimetry/munsell.ts";
import { readingNotations } from "../../colorimetry/reading-notations.ts";
import type { Lab } from "../../colorimetry/viewing.ts";
import { axisUncertainty } from "../../optics/fit/prediction-uncertainty.ts";
import {
  expectedLadder,
  expectedRuling,
  expectedTint,
  palestExpected,
  type ExpectedTint,
} from "../../optics/tints/expected-ladder.ts";
import { computedFigure } from "../../quantities/figure.ts";
import type { Quantity } from "../../quantities/interval.ts";
import type { Spectrum } from "../../quantities/spectrum.ts";
import { isStatement } from "../../quantities/statement.ts";
import type { Colour, Records } from "../../records/records.ts";
import type { Origin } from "../notations/lab-figures.ts";
import { GLOSS_TAKEN_OFF, masstoneSurface, withoutGloss } from "../notations/gloss-excluded.ts";
import { munsellFigures, screenFigures } from "../notations/munsell-figures.ts";
import { drawdownRecords } from "../record-inputs.ts";
import { whiteColour } from "./drawdown-set.ts";
import type { ExpectedStep, ExpectedTintSection, LabRange } from "./expected-figures.ts";
import type { FitAmongOthers, OtherWhite } from "./other-whites.ts";
import type { Fits } from "./strength.ts";
import { TOLD_FROM_MASSTONE } from "./tint-steps.ts";

/** Let-downs that are told, as far as the colour's own ladder reaches. */
const TOLD_STEPS = ["1:1", "1:2", "1:5", "1:10", "1:20", "1:50", "1:100", "1:200", "1:500"];

/** Further off than this [Delta-E00, 90 %] a let-down may be anything. Our own limit. */
const WORTH_TELLING = 12;

/** What a colour is expected to do in each white of the range that it was not let down in, where other colours tell. */
export function expectedSections(
  colour: Colour,
  fits: Fits,
  records: Records,
): ExpectedTintSection[] {
  const fit = fits.get(colour.slug);
  if (fit?.kind !== "fit") return [];
  return fit.otherWhites
    .filter(
      ({ change: { white } }) =>
        white !== colour.slug && colour.tints.every((tint) => tint.white !== white),
    )
    .flatMap((other) => expectedIn(other, colour, fit, records));
}

function expectedIn(
  { change, through: slugs }: OtherWhite,
  colour: Colour,
  fit: FitAmongOthers,
  records: Records,
): ExpectedTintSection[] {
  const ladder = expectedLadder(fit, change);
  const surface = masstoneSurface(colour.masstone);
  const through = slugs.flatMap((slug) => records.colours.get(slug) ?? []);
  const origin: Origin = {
    standing: "estimated",
    method: "its own K and S, the white's S by what other colours do in both whites",
    source: "duncan-1940",
    inputs: [colour, ...through].flatMap((one) => drawdownRecords(one, records)),
  };
  const least = palestExpected(ladder);
  const tints = TOLD_STEPS.map((massRatio) => ({
    massRatio,
    share: 1 / Number(massRatio.split(":")[1]),
  }))
    .filter(({ share }) => share >= least)
    .map(({ massRatio, share }) => ({ massRatio, tint: expectedTint(ladder, share) }))
    .filter(
      ({ tint }) =>
        deltaE00(tint.lab, fit.masstone.lab) >= TOLD_FROM_MASSTONE &&
        tint.uncertainty.p90 <= WORTH_TELLING,
    );
  if (tints.length === 0) return [];
  const { name } = whiteColour(change.white, records);
  return [
    {
      white: { slug: change.white, name },
      massRatioKind: ladder.from.white.ratioKind,
      steps: tints.map(({ massRatio, tint }) =>
        expectedStep(
          massRatio,
          tint,
          withoutGloss({ spectrum: tint.spectrum, geometry: fit.geometry }, surface),
          origin,
        ),
      ),
      sentence: expectedRuling(
        name,
        whiteColour(ladder.from.white.slug, records).name,
        through.map(({ record }) => record.name),
        tints.map(({ tint }) => tint),
      ),
    },
  ];
}

/** @param beneath the tint without its gloss, where it holds any: what a screen shows. */
function expectedStep(
  massRatio: string,
  tint: ExpectedTint,
  beneath: Spectrum | undefined,
  origin: Origin,
): ExpectedStep {
  const notations = readingNotations(tint.spectrum);
  const u = axisUncertainty(tint.uncertainty.p68, tint.lab);
  const munsell = munsellOfLab(notations.lab["C/2"], u);
  return {
    massRatio,
    colourShare: tint.massRatio,
    lab: {
      "D65/10": labRange(tint.lab, axisUncertainty(tint.uncertainty.p90, tint.lab), origin),
    },
    ...(!isStatement(munsell) && { munsell: munsellFigures(munsell, origin) }),
    ...(beneath === undefined
      ? screenFigures(notations.screen, origin)
      : screenFigures(readingNotations(beneath).screen, {
          ...origin,
          method: `${origin.method}; ${GLOSS_TAKEN_OFF}`,
        })),
    uncertainty: tint.uncertainty.p68,
  };
}

function labRange(lab: Lab, half: Lab, { standing, ...details }: Origin): LabRange {
  const range = (key: keyof Lab, [least, most]: readonly [number, number]) =>
    computedFigure<Quantity>(
      standing,
      [Math.max(lab[key] - half[key], least), Math.min(lab[key] + half[key], most)],
      { unit: "1", ...details },
    );
  return {
    L: range("L", [0, 100]),
    a: range("a", [-Infinity, Infinity]),
    b: range("b", [-Infinity, Infinity]),
  };
}
