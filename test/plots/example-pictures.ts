/**
 * Pictures that the tests hold as snapshots and the gallery shows. All figures are
 * invented for the demonstration workshop: they look like paints, and measure none.
 */
import { bluenessRows } from "../../lib/plots/blueness-rows.ts";
import { relativeScattering } from "../../lib/plots/relative-scattering.ts";
import { formatCss, formatHex, converter } from "culori";
import { coefficientCurves } from "../../lib/plots/coefficient-curves.ts";
import { colourStrip } from "../../lib/plots/colour-strip.ts";
import { hidingCurve } from "../../lib/plots/hiding-curve.ts";
import { hueCircle } from "../../lib/plots/hue-circle.ts";
import type { RowStep } from "../../lib/plots/swatch-row.ts";
import { swatchStrip } from "../../lib/plots/swatch-strip.ts";
import { lotChart } from "../../lib/plots/lot-chart.ts";
import { spreadOf } from "../../lib/collection/spread.ts";
import { certain } from "../../lib/quantities/at.ts";
import { rangeRows } from "../../lib/plots/range-rows.ts";
import { placeInRange } from "../../lib/plots/place-in-range.ts";
import type { ScreenColour } from "../../lib/plots/screen-colour.ts";
import { spectralCurve } from "../../lib/plots/spectral-curve.ts";
import type { ShownStanding } from "../../lib/plots/standing-mark.ts";
import { tintTrail, type TintTrail, type Trail } from "../../lib/plots/tint-trail.ts";
import { valueChromaSlice } from "../../lib/plots/value-chroma-slice.ts";

const p3 = converter("p3");

/** A screen colour from CIE L*a*b* (D65), clipped. */
export function lab(l: number, a: number, b: number): ScreenColour {
  const colour = { mode: "lab65", l, a, b } as const;
  const { r, g, b: blue } = p3(colour);
  const clipped = (channel: number): number => Number(Math.min(1, Math.max(0, channel)).toFixed(4));
  return {
    hex: formatHex(colour),
    displayP3: formatCss({ mode: "p3", r: clipped(r), g: clipped(g), b: clipped(blue) }),
  };
}

export function words(
  idPrefix: string,
  title: string,
): { idPrefix: string; title: string; description: string } {
  return { idPrefix, title, description: `${title}. Invented figures.` };
}

const BLACK = lab(9, 0.4, -0.6);
const ULTRAMARINE = lab(22, 34, -62);
const OCHRE = lab(60, 14, 46);

const ratios: readonly (readonly [number, ShownStanding])[] = [
  [0, "measured"],
  [1, "derived"],
  [2, "derived"],
  [5, "measured"],
  [10, "derived"],
  [20, "measured"],
  [50, "derived"],
  [100, "measured"],
  [200, "estimated"],
];
function ladderSteps(a: number, b: number): RowStep[] {
  return ratios.map(([whiteParts, standing]) => {
    const L = whiteParts === 0 ? 9 : 24 + 27 * Math.log10(whiteParts + 0.6);
    const turn = Math.sin((Math.PI * (L - 9)) / 90);
    return {
      standing,
      lines: [whiteParts === 0 ? "masstone" : `1:${whiteParts}`],
      colour: lab(L, a * turn, b * turn),
      ...(whiteParts === 20 ? { flag: "suspect" } : {}),
    };
  });
}

function blackTrail(label: string, a: number, b: number): Trail {
  const at = (L: number): { a: number; b: number } => ({
    a: 0.4 + a * Math.sin((Math.PI * (L - 9)) / 90),
    b: -0.6 + b * Math.sin((Math.PI * (L - 9)) / 90),
  });
  return {
    label,
    points: [9, 33, 50, 70, 86].map((L, i) => ({
      ...at(L),
      colour: lab(L, at(L).a, at(L).b),
      standing: i % 2 === 0 ? "measured" : "derived",
    })),
    predicted: Array.from({ length: 27 }, (_, i) => at(9 + 3 * i)),
  };
}

const ENDS: Pick<TintTrail, "ends"> = {
  ends: { plusA: "red", minusA: "green", plusB: "yellow", minusB: "blue" },
};

const GRID = { startNm: 400, stepNm: 10, count: 31 };
function spectrum(at: (nm: number) => number): { grid: typeof GRID; values: number[] } {
  return {
    grid: GRID,
    values: Array.from({ length: GRID.count }, (_, i) => at(GRID.startNm + i * GRID.stepNm)),
  };
}
const rising =
  (from: number, to: number, middle: number, width: number) =>
  (nm: number): number =>
    from + (to - from) / (1 + Math.exp((middle - nm) / width));
const REFLECTANCE = {
  wavelengthLabel: "wavelength, nm",
  reflectanceLabel: (end: number) => `reflectance factor, 0 to ${end}`,
} as const;

const RANGE: readonly (readonly [string, number | null, number, number, number, number, number])[] =
  [
    // name, hue of 100, value, chroma, L*, a*, b*
    ["Lamp black", null, 0.6, 0.02, 6, 0, 0],
    ["Bone black", 22, 0.9, 0.2, 9, 0, 1],
    ["Iron black", 65, 1.1, 0.3, 11, 0, -1],
    ["Ultramarine", 75, 2.0, 12, 20, 34, -62],
    ["Cobalt blue", 72, 3.4, 11, 35, 12, -52],
    ["Viridian", 46, 3.0, 6, 31, -38, 2],
    ["Chromium green", 38, 4.2, 4.5, 43, -20, 18],
    ["Yellow ochre", 20, 6.1, 8, 62, 14, 48],
    ["Raw sienna", 18, 4.6, 6, 47, 14, 36],
    ["Red ochre", 10, 3.6, 7, 37, 34, 26],
    ["Vermilion", 7, 4.9, 14.5, 50, 62, 44],
    ["Lead white", null, 9.5, 0.04, 95, 0, 2],
  ];
const rangePoints = RANGE.map(([label, hue, value, chroma, L, a, b]) => ({
  label,
  hue,
  value,
  chroma,
  colour: lab(L, a, b),
  href: `../${label.toLowerCase().replace(" ", "-")}/`,
}));

const hiding =
  (perUm: number, base: number) =>
  (filmUm: number): { filmUm: number; contrastRatio: number } => ({
    filmUm,
    contrastRatio: base + (1 - base) * (1 - Math.exp(-perUm * filmUm)),
  });
const films = (
  at: (filmUm: number) => { filmUm: number; contrastRatio: number },
  most: number,
): { filmUm: number; contrastRatio: number }[] =>
  Array.from({ length: 41 }, (_, i) => at((most * i) / 40));

/** Every picture by the name of its snapshot. */
export const EXAMPLE_PICTURES: Readonly<Record<string, string>> = {
  "ladder-strip": swatchStrip("ladder-strip", {
    ...words("lad", "Turns blue from 1:5 on"),
    axisLabel: "colour : white, paint by mass",
    missing: "not stated",
    steps: ladderSteps(-1.5, -6),
  }),
  "ladder-strip-wide": swatchStrip("ladder-strip", {
    ...words("ladw", "Turns blue from 1:5 on"),
    width: 640,
    axisLabel: "colour : white, paint by mass",
    missing: "not stated",
    steps: ladderSteps(-1.5, -6),
  }),
  "ladder-strip-short": swatchStrip("ladder-strip", {
    ...words("lads", "Only two drawdowns"),
    axisLabel: "colour : white, pigment by mass",
    missing: "no reading",
    steps: [
      { lines: ["1:10"], colour: lab(52, 0, -1), standing: "measured" },
      { lines: ["1:40"], colour: undefined, standing: "not stated" },
    ],
  }),
  "blueness-rows-read": bluenessRows({
    ...words("brr", "Bluer in titanium than in lead"),
    axisLabel: "b* at equal lightness",
    ends: { minus: "blue", plus: "yellow" },
    domain: [-15, 10],
    rows: [
      {
        label: "Lamp black",
        lanes: [
          {
            kind: "point",
            label: "titanium",
            b: -2.7,
            uncertainty: 0.7,
            colour: lab(50, -0.6, -2.7),
          },
          { kind: "point", label: "lead", b: 2.8, uncertainty: 1.4, colour: lab(50, 0.6, 2.8) },
        ],
      },
      {
        label: "A mixed black",
        lanes: [
          {
            kind: "point",
            label: "titanium",
            b: -14.6,
            uncertainty: 1.2,
            colour: lab(50, 3, -14.6),
          },
        ],
      },
    ],
  }),
  "blueness-rows-theory": bluenessRows({
    ...words("brt", "What theory allows"),
    axisLabel: "b*, four cases in five",
    ends: { minus: "blue", plus: "yellow" },
    domain: [-15, 10],
    rows: [
      {
        label: "Lamp black",
        lanes: [
          { kind: "band", label: "titanium", low: -1.4, middle: 1.2, high: 4 },
          { kind: "band", label: "lead", low: 1.5, middle: 4.5, high: 7.3 },
        ],
      },
    ],
  }),
  "relative-scattering": relativeScattering({
    ...words("rs", "Falls towards red"),
    wavelengthLabel: "Wavelength, nm",
    axisLabel: "Scattering beside 560 nm",
    most: 2,
    read: [
      [510, 530, 550].map((nm) => ({ nm, value: (560 / nm) ** 1.4 })),
      [590, 640, 700].map((nm) => ({ nm, value: (560 / nm) ** 1.4 })),
    ],
    band: [440, 500, 560, 620, 700].map((nm) => ({
      nm,
      low: Math.min((560 / nm) ** 1.1, (560 / nm) ** 1.8),
      high: Math.max((560 / nm) ** 1.1, (560 / nm) ** 1.8),
    })),
  }),
  "tint-trail-loose": tintTrail({
    ...words("trl", "Blacks side by side"),
    ...ENDS,
    trails: [
      {
        label: "blacks of one pigment",
        isLoose: true,
        points: [
          { a: -1, b: -4, standing: "derived", label: "bone black" },
          { a: 6, b: 3, standing: "derived", colour: lab(50, 6, 3) },
        ],
      },
    ],
  }),
  "tint-trail-whites": tintTrail({
    ...words("trw", "Bluest in titanium white, nearly neutral in lead white"),
    ...ENDS,
    trails: [
      blackTrail("titanium white", -1.8, -6),
      blackTrail("zinc white", -1, -3.6),
      blackTrail("lead white", 0.2, -1.2),
    ],
  }),
  "tint-trail-colours": tintTrail({
    ...words("trk", "Ultramarine keeps its hue, ochre turns yellower"),
    ...ENDS,
    width: 640,
    trails: [
      {
        label: "Ultramarine",
        points: (
          [
            [22, 34, -62, "masstone"],
            [40, 18, -52, "1:5"],
            [60, 6, -36, "1:20"],
            [78, 0, -18, "1:80"],
          ] as const
        ).map(([L, a, b, label]) => ({ a, b, label, colour: lab(L, a, b), standing: "measured" })),
      },
      {
        label: "Yellow ochre",
        points: (
          [
            [60, 14, 46, "measured"],
            [74, 9, 38, "estimated"],
            [85, 4, 22, "derived"],
          ] as const
        ).map(([L, a, b, standing]) => ({ a, b, colour: lab(L, a, b), standing })),
      },
    ],
  }),
  "spectral-curve-black": spectralCurve({
    ...words("scb", "Two blacks: one falls, one rises to the red"),
    ...REFLECTANCE,
    curves: [
      {
        label: "Lamp black",
        spectrum: spectrum((nm) => 0.006 - (0.000_01 * (nm - 400)) / 3),
        colour: BLACK,
        standing: "measured",
      },
      {
        label: "Bone black",
        spectrum: spectrum((nm) => 0.012 + 0.000_04 * (nm - 400)),
        colour: lab(14, 1, 2),
        standing: "derived",
      },
    ],
  }),
  "spectral-curve-tints": spectralCurve({
    ...words("sct", "An ochre rises at 520 nm; a panel-grey tint stays visible"),
    ...REFLECTANCE,
    curves: [
      {
        label: "Ochre",
        spectrum: spectrum(rising(0.06, 0.46, 545, 22)),
        colour: OCHRE,
        standing: "measured",
      },
      {
        label: "Lead white",
        spectrum: spectrum(rising(0.72, 0.93, 420, 14)),
        colour: lab(96, 0, 3),
        standing: "measured",
      },
      {
        label: "Ultramarine",
        spectrum: spectrum(
          (nm) => 0.04 + 0.4 * Math.exp(-(((nm - 445) / 40) ** 2)) + rising(0, 0.22, 690, 12)(nm),
        ),
        colour: ULTRAMARINE,
        standing: "measured",
      },
      {
        label: "N 6 grey",
        spectrum: spectrum(() => 0.42),
        colour: { hex: "#939393" },
        standing: "estimated",
      },
    ],
  }),
  "place-in-range-measured": placeInRange({
    ...words("prm", "Among the thirstiest of the range"),
    heading: "Oil index, g of oil to 100 g of pigment",
    domain: [0, 180],
    own: { value: 112, standing: "measured", text: "112, high" },
    range: certain(
      spreadOf([16, 19, 21, 27, 34, [35, 60], 44, 56, 59, 63, 72, 72, 88, 96, [130, 170], 147]),
    ),
    legend: "box: the middle half of the range",
    ends: { low: "least: lead white, 16", high: "most: raw sienna, 147" },
  }),
  "place-in-range-estimate": placeInRange({
    ...words("pre", "Slow to dry"),
    heading: "Days to touch dry, 75 µm film at 20 °C",
    domain: [0, 20],
    own: { value: [12, 19], standing: "estimated", text: "12 to 19 days, very slow" },
    range: certain(spreadOf([2, 2.5, 3, [3, 6], [4, 6], 5, [6, 12], 9])),
    legend: "box: the middle half of the range",
    ends: { low: "fastest: raw umber, 2", high: "slowest: lamp black" },
  }),
  "value-chroma-slice": valueChromaSlice({
    ...words("vcs", "Viridian stands alone among the greens"),
    points: rangePoints,
    width: 960,
    areaHeight: 500,
    crowdBelow: 1,
    chromaLabel: "Munsell chroma",
    valueLabel: "Munsell value",
  }),
  "value-chroma-slice-blacks": valueChromaSlice({
    ...words("vcb", "Three blacks"),
    points: rangePoints.slice(0, 3),
    chromaLabel: "Munsell chroma",
    valueLabel: "Munsell value",
  }),
  "range-rows": rangeRows({
    ...words("rows", "From the darkest to the lightest"),
    rows: rangePoints
      .toSorted((one, other) => one.value - other.value)
      .map((point) => ({ ...point, at: point.value, group: point.value < 5 ? "dark" : "light" })),
    domain: [0, 10],
    tickStep: 2,
    axisLabel: "Munsell value",
    width: 340,
  }),
  "hue-circle-wide": hueCircle({
    ...words("huw", "Two blues, two greens, many earths, with room"),
    points: rangePoints,
    chromaLabel: "Munsell chroma from the middle outwards",
    neutralLabel: "neutral",
    width: 960,
    diameter: 620,
  }),
  "hue-circle": hueCircle({
    ...words("hue", "Two blues, two greens, many earths"),
    points: rangePoints,
    chromaLabel: "Munsell chroma from the middle outwards",
    neutralLabel: "neutral",
  }),
  "hiding-curve": hidingCurve({
    ...words("hid", "Hides at about 60 micrometres"),
    filmLabel: "wet film, µm",
    contrastLabel: "contrast ratio",
    label: "Yellow ochre",
    colour: OCHRE,
    standing: "derived",
    points: films(hiding(0.06, 0.05), 150),
    limit: { contrastRatio: 0.98, label: "hides: 0.98" },
  }),
  "hiding-curve-black": hidingCurve({
    ...words("hidb", "Hides at 8 micrometres"),
    filmLabel: "wet film, µm",
    contrastLabel: "contrast ratio",
    label: "Lamp black",
    colour: BLACK,
    standing: "derived",
    points: films(hiding(0.5, 0.05), 20),
    limit: { contrastRatio: 0.98, label: "hides: 0.98" },
  }),
  "glaze-strip": swatchStrip("glaze-strip", {
    ...words("gla", "From a pale pink to a deep red"),
    axisLabel: "dry film, µm",
    missing: "not stated",
    steps: [0, 5, 10, 20, 40, 80].map((filmUm) => ({
      lines: [String(filmUm)],
      colour: lab(
        94 - 9.5 * Math.log2(1 + filmUm / 2.2),
        70 * (1 - Math.exp(-filmUm / 18)),
        30 * (1 - Math.exp(-filmUm / 30)),
      ),
      standing: filmUm === 20 || filmUm === 0 ? "measured" : "derived",
    })),
  }),
  "colour-strip": colourStrip({
    ...words("cst", "Two of three blacks go blue in one white"),
    axisLabel: "Let down in titanium white to L* 50",
    missing: "not stated",
    colours: [
      {
        name: "Furnace Black",
        detail: "b* \u22120.7",
        colour: lab(50, 0, -0.7),
        standing: "derived",
      },
      {
        name: "Umber-Ultramarine Black",
        detail: "b* \u221210.8",
        colour: lab(50, -2, -10.8),
        standing: "measured",
      },
      { name: "Vine Black", detail: "", colour: undefined, standing: "not stated" },
    ],
  }),
  "gloss-strip": swatchStrip("gloss-strip", {
    ...words("glo", "Gloss is worth eighteen L* in this black"),
    axisLabel: "L* with the gloss shut out or spread",
    missing: "not stated",
    steps: [
      { lines: ["matte", "L* 25"], colour: lab(25, 0, -0.5), standing: "derived" },
      { lines: ["satin", "L* 16"], colour: lab(16, 0, -0.5), standing: "estimated" },
      { lines: ["gloss", "L* 7"], colour: lab(7, 0, -0.5), standing: "measured" },
    ],
  }),
  "coefficient-curves": coefficientCurves({
    ...words("kas", "Absorbs evenly, scatters little"),
    wavelengthLabel: "wavelength, nm",
    absorption: {
      axisLabel: "absorption K, titanium white's S = 1",
      curves: [
        {
          label: "Lamp black",
          colour: BLACK,
          standing: "derived",
          grid: GRID,
          values: spectrum((nm) => 38 * (550 / nm)).values,
          bounds: spectrum((nm) => 38 * (550 / nm)).values.map(
            (value) => [value * 0.9, value * 1.1] as const,
          ),
        },
      ],
    },
    scattering: {
      axisLabel: "scattering S, titanium white's S = 1",
      curves: [
        {
          label: "at most",
          colour: BLACK,
          standing: "estimated",
          grid: GRID,
          values: undefined,
          bounds: spectrum((nm) => 0.14 * (550 / nm)).values.map((value) => [0, value] as const),
        },
      ],
    },
  }),
  "lot-chart": lotChart({
    ...words("lots", "Strength, lot by lot"),
    lots: [106.8, 105, 104.8, 103.2, 100, 91].map((value, i) => ({
      place: i < 5 ? i + 1 : i + 2,
      value,
      isMarked: i === 5,
    })),
    places: 7,
    mean: 101.8,
    limits: [94, 109.6],
    tolerance: [95, 105],
    leastReach: 10,
    valueLabel: "Tinting strength, % of the standard",
    orderLabel: "Lots in order of date",
    lineLabels: { mean: "mean", limits: "control limits", tolerance: "tolerance" },
    width: 480,
  }),
  "lot-chart-ranges": lotChart({
    ...words("ranges", "From each lot to the next"),
    lots: [1.8, 0.2, 1.6, 3.2, 9].map((value, i) => ({
      place: i + 2,
      value,
      isMarked: value > 8,
    })),
    places: 7,
    mean: 3.2,
    limits: [0, 10.3],
    leastReach: 5,
    floor: 0,
    valueLabel: "Difference of two neighbours, %",
    orderLabel: "Lots in order of date",
    lineLabels: { mean: "mean", limits: "limit", tolerance: "tolerance" },
    width: 320,
  }),
};
