import type { RecordTexts } from "../support/content-folder.ts";

const WAVELENGTHS = Array.from({ length: 31 }, (_, i) => 400 + 10 * i);

/** Invented masstones: an edge at a wavelength, between two reflectance factors. */
const edge =
  (atNm: number, low: number, high: number) =>
  (nm: number): number =>
    low + (high - low) / (1 + Math.exp((atNm - nm) / 18));
const MASSTONES = {
  black: edge(520, 0.02, 0.024),
  red: edge(590, 0.03, 0.55),
  blue: (nm: number): number => 0.03 + 0.3 * Math.exp(-(((nm - 450) / 40) ** 2)),
  white: edge(405, 0.55, 0.93),
} as const satisfies Readonly<Record<string, (nm: number) => number>>;
type Paint = keyof typeof MASSTONES;
const COLOURS = ["black", "red", "blue"] as const;
const RATIOS = ["1:1", "1:5", "1:20"] as const;

const ratioOf = (R: number): number => (1 - R) ** 2 / (2 * R);
const reflectanceOf = (ks: number): number => 1 + ks - Math.sqrt(ks * ks + 2 * ks);

/** K/S of both added by mass, as a single constant would have it. */
function letDown(paint: Paint, ratio: (typeof RATIOS)[number]): (nm: number) => number {
  const [colour = NaN, white = NaN] = ratio.split(":").map(Number);
  return (nm) =>
    reflectanceOf(
      (colour * ratioOf(MASSTONES[paint](nm)) + white * ratioOf(MASSTONES.white(nm))) /
        (colour + white),
    );
}

function readings(): string {
  const columns: readonly (readonly [string, (nm: number) => number])[] = [
    ["white", MASSTONES.white],
    ...COLOURS.flatMap((paint) => [
      [paint, MASSTONES[paint]] as const,
      ...RATIOS.map((ratio) => [`${paint} ${ratio}`, letDown(paint, ratio)] as const),
    ]),
  ];
  return `${[
    `nm,${columns.map(([name]) => name).join(",")}`,
    ...WAVELENGTHS.map((nm) => [nm, ...columns.map(([, at]) => at(nm).toFixed(4))].join(",")),
  ].join("\n")}\n`;
}

function colour(paint: (typeof COLOURS)[number], more: string): string {
  return `---
name: ${paint[0]?.toUpperCase()}${paint.slice(1)}
pigments: [{ pigment: ${paint}, parts: 1 }]
masstone: { reading: all.csv, column: ${paint} }
tints:
${RATIOS.map((ratio) => `  - { white: white, massRatio: "${ratio}", ratioKind: paint, reading: all.csv, column: "${paint} ${ratio}" }\n`).join("")}${more}---
Some *notes* on it.
`;
}

/** A small workshop with a record of every kind; its colours are nobody's. */
export const WHOLE_WORKSHOP: RecordTexts = {
  "workshop.yaml": `name: Small
siteAddress: https://paints.example/
markets: [EU, US]
vehicle: oil
strengthReference: black
filmThicknessUm: 75
currency: EUR
readings: { scale: factor, geometry: d/8 excluded }
cards: [{ name: a, widthMm: 90, heightMm: 55 }]
`,
  "pigments/black.yaml": `name: Carbon
colourIndexName: PBk 7
densityGPerCm3: { value: 1.8, uncertainty: 0.05, standing: measured, method: pycnometer, date: 2026-01-02 }
oilAbsorptionGPer100g: { value: [60, 90], standing: estimated }
particle: { sizeUm: 0.09 }
pricePerKg: 20
hazards: []
`,
  "pigments/red.yaml": `name: Selenide
colourIndexName: PR 108
densityGPerCm3: 4.9
oilAbsorptionGPer100g: 20
metals: [{ metal: cadmium, percent: 66 }]
translations: { de: { name: Selenid } }
lightfastness: { category: I, blueWool: 8 }
hazards: []
`,
  "pigments/blue.yaml":
    "name: Sulphide\ncolourIndexName: PB 29\ndensityGPerCm3: 2.35\noilAbsorptionGPer100g: 36\nhazards: []\n",
  "pigments/white.yaml":
    "name: Rutile\ncolourIndexName: PW 6\ndensityGPerCm3: 4.1\noilAbsorptionGPer100g: 20\nhazards: []\n",
  "vehicles/oil.yaml":
    "name: Linseed oil\nkind: oil\noil: linseed\ndensityGPerCm3: 0.931\npricePerKg: 14\nhazards: []\n",
  "vehicles/drier.yaml":
    "name: Drier\nkind: drier\nmetals: [{ metal: cobalt, percent: 4 }]\ndensityGPerCm3: 0.95\nhazards: [{ statement: H226, hazardClass: Flam. Liq. 3 }]\n",
  "colours/black.md": colour(
    "black",
    `oilIndexGPer100g: { value: 90, uncertainty: 2, method: batch book, date: 2026-02-05 }
gloss60: 20
finenessOfGrindUm: 20
dryingTrials: [{ touchDryDays: 8, filmThicknessUm: 75, temperatureC: 20, humidityPercent: 55 }]
exposures: [{ deltaEab: 0.9, form: tint, standard: one, exposure: a window }]
sizes: [{ ml: 40, price: 9 }]
date: 2026-05-18
`,
  ),
  "colours/red.md": colour(
    "red",
    "oilIndexGPer100g: 30\nadditions: [{ vehicle: drier, percentOfOil: 1 }]\n",
  ),
  "colours/blue.md": colour("blue", "oilIndexGPer100g: { value: [30, 40], standing: estimated }\n"),
  "colours/white.md": `---
name: White
pigments: [{ pigment: white }]
oilIndexGPer100g: 24
masstone: { reading: all.csv, column: white }
---
`,
  "colours/purple.md": `---
name: Purple
pigments: [{ pigment: red, parts: 2 }, { pigment: blue, parts: 3 }]
oilIndexGPer100g: 34
---
`,
  "lots/b-1.yaml": `number: B-1
colour: black
date: 2026-03-09
pigments: [{ pigment: black, massG: 500 }]
oil: { vehicle: oil, massG: 450 }
densityGPerCm3: 1.2
yieldG: 930
masstone: { reading: all.csv, column: black }
tints:
  - { white: white, massRatio: "1:5", ratioKind: paint, reading: all.csv, column: "black 1:5" }
`,
  "trials/red-window.yaml": `kind: exposure
colour: red
started: 2025-06-02
form: tint
standard: after ASTM D4303
exposure: south window, under glass
readings: [{ date: 2025-07-02, deltaEab: 0.4 }, { date: 2026-02-02, deltaEab: 1.2 }]
`,
  "sources/paper.yaml": `citation: "A supplier's paper (invented)"\ndate: 2025-08-11\n`,
  "readings/all.csv": readings(),
  "prices.csv": "colour,ml,price\nwhite,40,8\n",
  "answers/why.md": `---
question: Why so much oil?
summary: It takes {% figure black.oil.oilIndexGPer100g %}.
colours: [black]
claims: [{ figure: black.oil.oilIndexGPer100g, between: [5, 150] }]
---
{% figure black.oil.oilIndexGPer100g %} against {% colour white %}.
`,
};

/** The same with its pages in two languages, in one of which a pigment has another name. */
export const IN_TWO_LANGUAGES: RecordTexts = {
  ...WHOLE_WORKSHOP,
  "workshop.yaml": `${WHOLE_WORKSHOP["workshop.yaml"] ?? ""}pageLanguages: [en, de]\n`,
};
