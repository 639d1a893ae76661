import type { ColourFit, FitRefusal } from "../../optics/fit/colour-fit.ts";
import type { RatioKind } from "../../optics/fit/drawdown.ts";
import { predictedAtLightness } from "../../optics/tints/equal-lightness.ts";
import { ladderModel, type LadderModel } from "../../optics/tints/ladder.ts";
import { paintMassRatio, pigmentMassRatio } from "../../optics/mixtures/paint-parts.ts";
import {
  comparedStrength,
  strengthAtRatios,
  strengthResidualRuling,
  type ComparedStrength,
} from "../../optics/tints/tinting-strength.ts";
import { notStated, sourceFigure, type Figure, type RecordRoot } from "../../quantities/figure.ts";
import type { Quantity } from "../../quantities/interval.ts";
import { isStatement, type Statement } from "../../quantities/statement.ts";
import { derivedFigure } from "../../quantities/derived-figure.ts";
import type { Colour, Records } from "../../records/records.ts";
import { drawdownRecords, WORKSHOP } from "../record-inputs.ts";
import { effectOfPigments } from "../pigments/special-effects.ts";
import { isLightener } from "../colour-family.ts";
import { whiteColour } from "./drawdown-set.ts";
import type { FitAmongOthers } from "./other-whites.ts";
import { tintsAsDrawn } from "./tints-as-drawn.ts";
import { weighedPaint, type WeighedPaint } from "./paint-conversion.ts";

export type Fits = ReadonlyMap<string, FitAmongOthers | FitRefusal>;

export interface Strength {
  readonly byMass: Figure<Quantity>;
  readonly byVolume: Figure<Quantity>;
  readonly reasons: readonly Statement[];
}

/** Tinting strength beside the workshop's reference, in the first white that both were let down in. */
export function tintingStrength(
  colour: Colour,
  own: WeighedPaint,
  fits: Fits,
  records: Records,
): Strength {
  const reference = records.workshop.strengthReference;
  const wanting = [`colours.${colour.slug}.tints`];
  if (reference === undefined)
    return absent(
      "the workshop names no colour to reckon strength against",
      ["workshop.strengthReference"],
      [WORKSHOP],
    );
  const drawdowns = [
    ...drawdownRecords(colour, records),
    ...drawdownRecords(records.colours.get(reference), records),
    WORKSHOP,
  ];
  if (fits.get(colour.slug)?.kind !== "fit" && isLightener(colour, records))
    return absent(
      "what a white or an extender does shows in a dark colour let down in it",
      colour.slug === reference ? wanting : [`colours.${reference}.tints`],
      drawdowns,
    );
  const [sample, against] = [fits.get(colour.slug), fits.get(reference)];
  const name = records.colours.get(reference)?.record.name ?? reference;
  if (effectOfPigments(colour, records) !== undefined)
    return absent("two-constant theory does not hold for its pigments", [], drawdowns);
  if (sample?.kind !== "fit")
    return absent("no let-downs from which strength can be fitted", wanting, drawdowns);
  if (against?.kind !== "fit")
    return absent(
      `${name}, which strength is reckoned against, has no let-downs from which it can be fitted`,
      [`colours.${reference}.tints`],
      drawdowns,
    );
  const white = commonWhite(sample, against);
  if (white === undefined)
    return absent("no let-down in a white of the reference", wanting, drawdowns);

  const paint = records.colours.get(reference);
  const reached =
    paint && tintsAsDrawn(paint, fits, records).find((tint) => tint.white.slug === white);
  const pair = comparedLadders(sample, against, white, drawdowns, reached?.atL["50"]?.massRatio);
  if (isStatement(pair))
    return absent(`its strength does not compare with ${name}'s`, [], drawdowns, [pair]);

  const weighed: Weighed = {
    sample: own,
    reference: weighedPaint(reference, records),
    white: weighedPaint(white, records),
  };
  const told = (by: string): string =>
    `K/S of let-downs equal by ${by} in ${whiteColour(white, records).name}, against ${name} = 1`;
  return {
    byMass: strengthByMass(pair, weighed, told),
    byVolume: strengthByVolume(pair, weighed, told("volume of paint")),
    reasons:
      colour.slug === reference
        ? []
        : [strengthResidualRuling(pair.compared, name, whiteColour(white, records).name)],
  };
}

/** Two ladders in one white that compare. */
export interface ComparedLadders {
  readonly sample: LadderModel;
  readonly reference: LadderModel;
  /** Colour to white at which the reference reaches L* 50, in the kind that it was weighed in: there they are held against each other. */
  readonly atL50: Figure<Quantity>;
  /** What both were fitted to. */
  readonly drawdowns: readonly RecordRoot[];
  /** At equal ratios, each of its own kind. */
  readonly compared: ComparedStrength;
  /** 1, with the relative uncertainty of the strength: a factor on it. */
  readonly trust: Figure<Quantity>;
  /** Strength of one against the other at ratios of their own kinds. */
  readonly strength: (sampleRatio: number, referenceRatio: number) => number;
}

/** @returns the ladders; the ruling that says why they do not compare. */
export function comparedLadders(
  one: ColourFit,
  other: ColourFit,
  white: string,
  drawdowns: readonly RecordRoot[],
  reached?: Figure<Quantity>,
): ComparedLadders | Statement {
  const [sample, reference] = [ladderModel(one, white), ladderModel(other, white)];
  const at = predictedAtLightness(reference, 50);
  if (isStatement(at)) return at;
  const found = strengthAtRatios(sample, reference, at.massRatio, at.massRatio);
  if (isStatement(found)) return found;
  const compared = comparedStrength(found.at, sample, reference, at.massRatio, at.massRatio);
  return {
    sample,
    reference,
    drawdowns,
    compared,
    trust: sourceFigure<Quantity>("measured", 1, {
      unit: "1",
      method: "how well the let-downs of both tell it",
      inputs: drawdowns,
      ...(one !== other && { uncertainty: compared.uncertainty }),
    }),
    atL50:
      reached ??
      sourceFigure<Quantity>("measured", at.massRatio, {
        unit: "1",
        method: "the reference's colour to white at L* 50",
        inputs: drawdowns,
      }),
    strength: (sampleRatio, referenceRatio) =>
      one === other && sampleRatio === referenceRatio
        ? 1
        : comparedStrength(found.at, sample, reference, sampleRatio, referenceRatio).strength,
  };
}

interface Weighed {
  readonly sample: WeighedPaint;
  readonly reference: WeighedPaint;
  readonly white: WeighedPaint;
}

/** First white of the second that the first was let down in as well. */
export function commonWhite(one: ColourFit, other: ColourFit): string | undefined {
  return other.whites.find(({ slug }) => one.whites.some((fitted) => fitted.slug === slug))?.slug;
}

function strengthByMass(
  { sample, reference, atL50, strength, trust, drawdowns: beside }: ComparedLadders,
  weighed: Weighed,
  told: (by: string) => string,
): Figure<Quantity> {
  const [own, other] = [sample.white.ratioKind, reference.white.ratioKind];
  if (own === other)
    return derivedFigure(
      { name: told(own === "paint" ? "mass of paint" : "mass of dry pigment"), unit: "1", beside },
      { atL50, trust },
      (v) => v.trust * strength(v.atL50, v.atL50),
    );
  return derivedFigure(
    {
      name: `${told("mass of paint")}, of which one was weighed as dry pigment`,
      unit: "1",
      beside,
    },
    { atL50, trust, ...fractionsOf(weighed) },
    (v) =>
      v.trust *
      strength(
        ofKind(
          paintRatio(v.atL50, other, v.referenceFraction, v.whiteFraction),
          own,
          v.sampleFraction,
          v.whiteFraction,
        ),
        v.atL50,
      ),
  );
}

function strengthByVolume(
  { sample, reference, atL50, strength, trust, drawdowns: beside }: ComparedLadders,
  weighed: Weighed,
  name: string,
): Figure<Quantity> {
  const [own, other] = [sample.white.ratioKind, reference.white.ratioKind];
  // The reference beside itself: one density, however little is known of it, and not two.
  if (sample.fit === reference.fit)
    return derivedFigure({ name, unit: "1", beside }, { atL50, trust }, (v) => v.trust);
  const densities = {
    sampleDensity: weighed.sample.density,
    referenceDensity: weighed.reference.density,
  };
  if (own === "paint" && other === "paint") {
    return derivedFigure(
      { name, unit: "1", beside },
      { atL50, trust, ...densities },
      (v) => v.trust * strength(v.atL50 * (v.sampleDensity / v.referenceDensity), v.atL50),
    );
  }
  return derivedFigure(
    { name, unit: "1", beside },
    { atL50, trust, ...densities, ...fractionsOf(weighed) },
    (v) => {
      const ofReference = paintRatio(v.atL50, other, v.referenceFraction, v.whiteFraction);
      return (
        v.trust *
        strength(
          ofKind(
            ofReference * (v.sampleDensity / v.referenceDensity),
            own,
            v.sampleFraction,
            v.whiteFraction,
          ),
          v.atL50,
        )
      );
    },
  );
}

function fractionsOf({ sample, reference, white }: Weighed) {
  return {
    sampleFraction: sample.pigmentFraction,
    referenceFraction: reference.pigmentFraction,
    whiteFraction: white.pigmentFraction,
  };
}

function paintRatio(
  ratio: number,
  kind: RatioKind,
  colourFraction: number,
  whiteFraction: number,
): number {
  return kind === "paint" ? ratio : paintMassRatio(ratio, colourFraction, whiteFraction);
}

function ofKind(
  ratio: number,
  kind: RatioKind,
  colourFraction: number,
  whiteFraction: number,
): number {
  return kind === "paint" ? ratio : pigmentMassRatio(ratio, colourFraction, whiteFraction);
}

function absent(
  reason: string,
  wanting: readonly string[],
  inputs: readonly RecordRoot[],
  reasons: readonly Statement[] = [],
): Strength {
  const none = notStated(reason, wanting, inputs);
  return { byMass: none, byVolume: none, reasons };
}
