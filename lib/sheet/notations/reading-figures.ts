import { isccNbsNames, isccNbsText, type IsccNbsBlock } from "../../colorimetry/iscc-nbs.ts";
import { labNotations, type Followed } from "../../colorimetry/lab-notations.ts";
import { labUnder } from "../../colorimetry/lab-under.ts";
import { PLACE_TO_PLACE } from "../../colorimetry/lab-uncertainty.ts";
import { labToXyz } from "../../colorimetry/lab.ts";
import { labOfMunsell } from "../../colorimetry/munsell-inversion.ts";
import { hueText, parseMunsell } from "../../colorimetry/munsell-notation.ts";
import { munsellOfLab, type Munsell } from "../../colorimetry/munsell.ts";
import { readingNotations } from "../../colorimetry/reading-notations.ts";
import { VIEWINGS, type Lab, type LabViewing, type Viewing } from "../../colorimetry/viewing.ts";
import type { Figure, Input, RecordRoot } from "../../quantities/figure.ts";
import { isStatement, type Statement } from "../../quantities/statement.ts";
import type { ChipReading, LabReading, Reading, SpectrumReading } from "../../records/records.ts";
import { labFigures, notationFigure, xyzFigures, type Origin } from "./lab-figures.ts";
import { munsellFigures, screenFigures } from "./munsell-figures.ts";
import type { LabFigures, MunsellFigures, ScreenFigures, XyzFigures } from "./notation-figures.ts";
import type { SourceKey } from "../../sources/source.ts";

/** Every notation that follows from one reading, and no more. */
export interface ReadingFigures extends Partial<ScreenFigures> {
  readonly xyz: Partial<Record<LabViewing, XyzFigures>>;
  readonly lab: Partial<Record<LabViewing, LabFigures>>;
  readonly munsell?: MunsellFigures;
  readonly nbsName?: Figure<string>;
}

/** Two names where a border lies within the uncertainty of the Munsell notation. */
const BY_BLOCKS = "ISCC-NBS block of the Munsell notation";

/** How far an eye places a chip between its neighbours: half a step of value, one of chroma. */
const EYE_LAB_UNCERTAINTY: Lab = { L: 5, a: 2.5, b: 2.5 };

/**
 * @param read the records that the reading stands in.
 * @param moved what moves a spectrum beside its reading's noise, such as the weighing of a let-down.
 * @param blocks of the ISCC-NBS system; where none are given it has no name.
 * @param shown for which viewings a spectrum's XYZ and Lab stand there; what rests on another names the reading itself.
 */
export function readingFigures(
  reading: Reading,
  read: readonly RecordRoot[],
  blocks: readonly IsccNbsBlock[],
  shown: readonly Viewing[] = VIEWINGS,
  moved: readonly (readonly number[])[] = [],
): ReadingFigures {
  switch (reading.form) {
    case "spectrum":
      return spectrumFigures(reading, read, blocks, shown, moved);
    case "lab":
      return figuresOfLab(
        reading.lab,
        reading.viewing,
        uncertaintyOf(reading),
        reading,
        read,
        blocks,
      );
    case "chip":
      return chipFigures(reading, read, blocks);
  }
}

function axes(lab: LabFigures | undefined): Input[] {
  return lab === undefined ? [] : [lab.L, lab.a, lab.b];
}

function spectrumFigures(
  reading: SpectrumReading,
  read: readonly RecordRoot[],
  blocks: readonly IsccNbsBlock[],
  shown: readonly Viewing[],
  moved: readonly (readonly number[])[],
): ReadingFigures {
  const notations = readingNotations(reading.spectrum, reading.noise, moved, placeOf(reading));
  const summed: Origin = {
    standing: "derived",
    inputs: read,
    method: `CIE sums of ${reading.origin}, ${reading.geometry}`,
    source: "cie-15-2018",
  };
  const lab = each(shown, (viewing) =>
    labFigures(notations.lab[viewing], summed, notations.labUncertainty[viewing]),
  );
  const from = (viewing: Viewing, method: string, source: SourceKey): Origin =>
    shown.includes(viewing)
      ? { ...summed, method, source, inputs: axes(lab[viewing]) }
      : { ...summed, method: `${method}; ${summed.method}`, source };
  return {
    xyz: each(shown, (viewing) => xyzFigures(notations.xyz[viewing], summed)),
    lab,
    ...(!isStatement(notations.munsell) && {
      munsell: munsellFigures(
        notations.munsell,
        from("C/2", "renotation, interpolated in LCHab", "newhall-1943"),
      ),
    }),
    ...(!isStatement(notations.munsell) &&
      blockName(notations.munsell, blocks, from("C/2", BY_BLOCKS, "nbs-sp-440"))),
    ...screenFigures(notations.screen, from("D65/2", "CSS colour from D65/2", "css-color-4")),
  };
}

/** What the place that was read does to each of L*, a* and b*; less of the mean of several readings. */
export function placeOf({ count }: SpectrumReading): number {
  return PLACE_TO_PLACE / Math.sqrt(count);
}

function blockName(
  munsell: Munsell,
  blocks: readonly IsccNbsBlock[],
  origin: Origin,
): Pick<ReadingFigures, "nbsName"> {
  const names = isccNbsNames(munsell, blocks, munsell.uncertainty);
  return names.length === 0 ? {} : { nbsName: notationFigure(isccNbsText(names), "", origin) };
}

/** A range holds what is true in nineteen cases of twenty: two standard uncertainties. */
const UNCERTAINTIES_IN_RANGE = 2;

function uncertaintyOf({ uncertainty = 0, photographed }: LabReading): Lab {
  if (photographed !== undefined)
    return {
      L: photographed.L / UNCERTAINTIES_IN_RANGE,
      a: photographed.a / UNCERTAINTIES_IN_RANGE,
      b: photographed.b / UNCERTAINTIES_IN_RANGE,
    };
  return { L: uncertainty, a: uncertainty, b: uncertainty };
}

/**
 * A chip is a reading in C/2: what the eye can't place is its uncertainty. Its notation is what was seen, its hue
 * among it, and its name is of that.
 */
function chipFigures(
  reading: ChipReading,
  read: readonly RecordRoot[],
  blocks: readonly IsccNbsBlock[],
): ReadingFigures {
  const { munsell, origin } = reading;
  const parsed = parseMunsell(munsell);
  if (parsed === undefined) return { xyz: {}, lab: {} };
  const lab = labOfMunsell(parsed);
  const figures = figuresOfLab(lab, "C/2", EYE_LAB_UNCERTAINTY, reading, read, blocks);
  const worked = munsellOfLab(lab, EYE_LAB_UNCERTAINTY);
  if (isStatement(worked)) return figures;
  const hue = parsed.hueNumber === null ? null : hueText(parsed.hueNumber, 2);
  const seen: Munsell = { ...worked, ...parsed, hue, text: munsell };
  return {
    ...figures,
    munsell: munsellFigures(seen, { standing: "measured", method: origin, inputs: read }),
    ...blockName(seen, blocks, {
      standing: "derived",
      method: BY_BLOCKS,
      source: "nbs-sp-440",
      inputs: read,
    }),
  };
}

function figuresOfLab(
  lab: Lab,
  viewing: LabViewing,
  uncertainty: Lab,
  reading: LabReading | ChipReading,
  read: readonly RecordRoot[],
  blocks: readonly IsccNbsBlock[],
): ReadingFigures {
  const given: Origin =
    reading.form === "lab"
      ? {
          standing: reading.photographed === undefined ? "measured" : "estimated",
          method:
            reading.photographed === undefined
              ? `${reading.origin}, ${reading.geometry}`
              : reading.origin,
          inputs: read,
        }
      : {
          standing: "derived",
          inputs: read,
          method: "renotation of the chip",
          source: "newhall-1943",
        };
  const own = labFigures(lab, given, uncertainty.L > 0 ? uncertainty : undefined);
  const summed: Origin = {
    standing: "derived",
    method: "from Lab",
    source: "cie-15-2018",
    inputs: axes(own),
  };
  const notations = labNotations(lab, viewing, uncertainty);
  const follows = (approximate: boolean, method: string, source: SourceKey): Origin =>
    approximate
      ? {
          standing: "estimated",
          inputs: read,
          method: `${method}, approximate: adapted from ${viewing}`,
          source,
        }
      : { ...summed, method, source };
  const notation = <T>(followed: Followed<T> | Statement): Followed<T> | undefined =>
    isStatement(followed) ? undefined : followed;
  const munsell = notation<Munsell>(notations.munsell);
  const screen = notation(notations.screen);
  return {
    xyz: { [viewing]: xyzFigures(labToXyz(lab, viewing), summed) },
    lab: { [viewing]: own },
    ...(munsell !== undefined && {
      munsell: munsellFigures(
        munsell.notation,
        follows(munsell.approximate, "renotation, interpolated in LCHab", "newhall-1943"),
      ),
    }),
    ...(munsell !== undefined &&
      blockName(munsell.notation, blocks, follows(munsell.approximate, BY_BLOCKS, "nbs-sp-440"))),
    ...(screen !== undefined &&
      screenFigures(screen.notation, follows(screen.approximate, "CSS colour", "css-color-4"))),
  };
}

function each<T>(
  viewings: readonly Viewing[],
  of: (viewing: Viewing) => T,
): Partial<Record<Viewing, T>> {
  return Object.fromEntries(viewings.map((viewing) => [viewing, of(viewing)]));
}

/** Lab under D65/10, the usual report, from whatever the reading gives; approximate where it had to be adapted. */
export function dayLab(reading: Reading): Lab | undefined {
  if (reading.form === "spectrum") return readingNotations(reading.spectrum).lab["D65/10"];
  const parsed = reading.form === "chip" ? parseMunsell(reading.munsell) : undefined;
  const known =
    reading.form === "lab"
      ? { lab: reading.lab, viewing: reading.viewing }
      : parsed && { lab: labOfMunsell(parsed), viewing: "C/2" as const };
  const under = known && labUnder(known.lab, known.viewing, "D65/10");
  return under === undefined || isStatement(under) ? undefined : under.lab;
}
