import { labToLch, labToXyz } from "../colorimetry/lab.ts";
import { labOfMunsell } from "../colorimetry/munsell-inversion.ts";
import { parseMunsell } from "../colorimetry/munsell-notation.ts";
import { outsideOptimal } from "../colorimetry/optimal-colours.ts";
import { VIEWINGS, type Lab } from "../colorimetry/viewing.ts";
import { spectrumLab } from "../colorimetry/spectrum-lab.ts";
import type { MasstoneReach } from "../knowledge/colour-tables.ts";
import type { Knowledge } from "../knowledge/pigment-knowledge.ts";
import { errorAt, faultAt, warningAt, type Fault, type Faults } from "./fault.ts";
import type { ParsedFiles } from "./parsed-files.ts";
import { readDrawdowns } from "./read-drawdowns.ts";
import type { ReadColour, Reading } from "./records.ts";
import { hasSpecialEffect } from "./special-effects.ts";
import type { RecordPath } from "./yaml-record.ts";

/** L* under which no paint reads, in whatever geometry: the deepest blacks read 3 and more. Our own limit, wide. */
const DARKEST_L = 1;
/** How far outside the solid [1, on the scale of Y] rounding and another observer may carry a colour. */
const SOLID_TOLERANCE = 0.5;

/** What is read against what can be: colours of no surface, a masstone of another hue than its pigment, gloss told wrongly. */
export function* colourFaults(
  colour: ReadColour,
  files: ParsedFiles,
  knowledge: Knowledge,
): Faults {
  if (!hasSpecialEffect(colour.record, files)) {
    for (const { path, reading } of readDrawdowns(colour))
      yield* solidFaults(colour, path, reading);
    yield* familyFaults(colour, files, knowledge);
    yield* turnedHueFaults(colour);
  }
  yield* glossFaults(colour, files);
}

/** A L*a*b* or a chip that no reflecting surface can have; of a spectrum the limits of a reading see to it. */
function* solidFaults({ place }: ReadColour, path: RecordPath, reading: Reading): Faults {
  if (reading.form === "spectrum") return;
  if (reading.form === "lab" && reading.lab.L < DARKEST_L) {
    yield faultAt(place([...path, "lab"]), darkFault(reading.lab.L));
    return;
  }
  const { lab, viewing } =
    reading.form === "lab" ? reading : { lab: labOfChip(reading.munsell), viewing: "C/2" as const };
  const summed = VIEWINGS.find((known) => known === viewing);
  if (lab === undefined || summed === undefined) return;
  if (outsideOptimal(labToXyz(lab, summed), summed) <= SOLID_TOLERANCE) return;
  const written =
    reading.form === "lab" ? `L* ${lab.L}, a* ${lab.a}, b* ${lab.b}` : reading.munsell;
  yield errorAt(
    place([...path, reading.form === "lab" ? "lab" : "munsell"]),
    "records/beyond-surface-colours",
    {
      message: `${written} is a colour that no reflecting surface has: none so ${lab.L < 50 ? "dark" : "light"} is so strong`,
      actual: written,
      expected: "a colour within the limits of reflecting surfaces",
      hint:
        reading.form === "lab"
          ? "lab is L*, a*, b* in this order; a decimal point may be lost"
          : "a chip is hue, value/chroma, such as 5PB 3/1",
      source: "macadam-1935",
    },
  );
}

function darkFault(L: number): Fault {
  return {
    severity: "warning",
    rule: "records/darkest-lightness",
    message: `L* ${L} is darker than any paint reads`,
    actual: `L* ${L}`,
    expected: `L* ${DARKEST_L} or more, of 100`,
    hint:
      L > 0 ? `L* ${Number((100 * L).toPrecision(4))}, if it was given as a fraction` : undefined,
  };
}

function labOfChip(munsell: string): Lab | undefined {
  const chip = parseMunsell(munsell);
  if (chip === undefined) return undefined;
  try {
    return labOfMunsell(chip);
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

/** Chroma C*ab from which a hue is told by a masstone. */
const HUE_FROM_CHROMA = 12;

/** A masstone that is not of its own family as the record says it, or of its pigment's: another colour's reading, a white's, a L*a*b* with its numbers exchanged. */
function* familyFaults(
  colour: ReadColour,
  { pigments }: ParsedFiles,
  knowledge: Knowledge,
): Faults {
  const own = colour.record.family;
  const known = colour.record.pigments.map(({ pigment }) => {
    const name = pigments.get(pigment)?.record.colourIndexName;
    return name === undefined ? undefined : knowledge.pigment(name);
  });
  const families = own !== undefined ? [own] : known.map((one) => one?.family);
  const [family] = families;
  const lab = masstoneLab(colour.masstone);
  const reachOf = (wanted: string | undefined): MasstoneReach | undefined =>
    knowledge.tables.masstoneReaches.find(({ of }) => of === wanted);
  const ofKind = known.length === 1 ? reachOf(known[0]?.identity?.class) : undefined;
  const reach = ofKind ?? reachOf(family);
  if (
    family === undefined ||
    reach === undefined ||
    lab === undefined ||
    families.some((other) => other !== family)
  )
    return;
  const { C, h } = labToLch(lab);
  const {
    lightness: [dark, light],
    chromaMost = Infinity,
    hueFrom,
    hueTo,
  } = reach;
  const wrong =
    lab.L < dark || lab.L > light
      ? `L* ${lab.L.toFixed(0)}`
      : C > chromaMost
        ? `C* ${C.toFixed(0)}`
        : C >= HUE_FROM_CHROMA && !onArc(h, hueFrom, hueTo)
          ? `hue angle ${h.toFixed(0)}`
          : undefined;
  if (wrong === undefined) return;
  yield warningAt(colour.place(["masstone"]), "records/masstone-of-another-family", {
    message: `The masstone has ${wrong} (L* ${Math.round(lab.L)}, a* ${Math.round(lab.a)}, b* ${Math.round(lab.b)}), which no ${family} has`,
    actual: wrong,
    expected: `the masstone of a ${family}`,
    hint: "another column, another colour's file, or a L*a*b* with its numbers exchanged or a decimal lost",
  });
}

/** Chroma C*ab from which a hue is told well, and how far [degree] a white turns one: of measured paints 31 at the most. Our own limit, wide. */
const TURNED = { fromChroma: 20, degrees: 55 } as const;
/** A L*a*b* whose two last numbers, exchanged, bring its hue this near to a let-down's, was turned by less. */
const EXCHANGED = { fromDegrees: 35, toDegrees: 12 } as const;

/** A masstone of quite another hue than its let-downs: a sign lost, a* and b* exchanged, another paint's column. */
function* turnedHueFaults({ masstone, tints, place }: ReadColour): Faults {
  const own = masstoneLab(masstone);
  if (own === undefined || labToLch(own).C < TURNED.fromChroma) return;
  const { h } = labToLch(own);
  for (const [i, { reading, massRatio, white }] of tints.entries()) {
    const lab = masstoneLab(reading);
    if (lab === undefined || labToLch(lab).C < TURNED.fromChroma) continue;
    const tint = labToLch(lab).h;
    const turned = hueApart(tint, h);
    const isExchanged =
      [masstone, reading].some((one) => one?.form === "lab") &&
      turned >= EXCHANGED.fromDegrees &&
      hueApart(tint, exchanged(h)) <= EXCHANGED.toDegrees;
    if (turned < TURNED.degrees && !isExchanged) continue;
    yield warningAt(place(["tints", i]), "records/turned-hue", {
      message: `The let-down ${massRatio} in ${white} has the hue angle ${tint.toFixed(0)}, and the masstone ${h.toFixed(0)}: no white turns a hue by ${turned.toFixed(0)} degrees`,
      actual: `${turned.toFixed(0)} degrees apart`,
      expected: `within ${TURNED.degrees} degrees of each other`,
      hint: isExchanged
        ? "with a* and b* exchanged in one of the two they agree"
        : "a sign lost or a* and b* exchanged, in one of the two, or another paint's column",
    });
    return;
  }
}

/** Degrees between two hue angles. */
function hueApart(one: number, other: number): number {
  return Math.abs(((one - other + 540) % 360) - 180);
}

/** The hue angle of a* and b* in each other's place. */
function exchanged(hue: number): number {
  return (450 - hue) % 360;
}

/** Whether a hue angle [degree] lies from one to another through 360; any does where no end is told. */
function onArc(hue: number, from = 0, to = 360): boolean {
  return from <= to ? hue >= from && hue <= to : hue >= from || hue <= to;
}

/** CIELAB of a reading, of a spectrum for D65 and 10 degrees; undefined of none, and of a chip that the renotation lacks. */
export function masstoneLab(reading: Reading | undefined): Lab | undefined {
  if (reading === undefined) return undefined;
  if (reading.form === "spectrum") return spectrumLab(reading.spectrum);
  return reading.form === "lab" ? reading.lab : labOfChip(reading.munsell);
}

/**
 * What a smooth surface of oil throws back by itself [1]: with gloss included no reading lies
 * far under the one of the thinnest binder, n 1.46, though real ones err by a hundredth; and a black that
 * never lies under 0.03 has it in.
 */
const SURFACE_ALONE = { least: 0.015, seen: [0.03, 0.06] } as const;

function* glossFaults({ masstone, place, record }: ReadColour, { pigments }: ParsedFiles): Faults {
  if (masstone?.form !== "spectrum") return;
  const { geometry, spectrum } = masstone;
  const darkest = Math.min(...spectrum.values);
  const lightest = Math.max(...spectrum.values);
  const [from, to] = SURFACE_ALONE.seen;
  if (geometry === "d/8 included") {
    if (!(darkest >= SURFACE_ALONE.least))
      yield warningAt(place(["masstone"]), "records/gloss-told-wrongly", {
        message: `The masstone reads ${darkest.toFixed(3)} at its darkest with gloss included, and the surface alone throws back 0.035 or more`,
        actual: "d/8 included",
        expected: `no value under ${SURFACE_ALONE.least}`,
        hint: "geometry: d/8 excluded, if the gloss was shut out",
        source: "fresnel",
      });
    return;
  }
  const isBlack = record.pigments.every(({ pigment }) =>
    /^PBk /.test(pigments.get(pigment)?.record.colourIndexName ?? ""),
  );
  if (isBlack && darkest >= from && lightest <= to)
    yield warningAt(place(["masstone"]), "records/gloss-told-wrongly", {
      message: `This black never reads under ${darkest.toFixed(3)}, about what the gloss alone throws back, and the record says that it was read without gloss (${geometry})`,
      actual: geometry,
      expected: "less than 0.03, where a glossy black is read without its gloss",
      hint: "geometry: d/8 included, unless the film is matte",
      source: "fresnel",
    });
}
