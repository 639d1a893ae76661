import type { RecordTexts } from "../support/content-folder.ts";

const WAVELENGTHS = Array.from({ length: 31 }, (_, i) => 400 + 10 * i);
const BLACK = WAVELENGTHS.map((_, i) => (0.012 + 0.0001 * i).toFixed(4));
const GREY = WAVELENGTHS.map((_, i) => (0.18 + 0.001 * i).toFixed(4));
const WHITE = WAVELENGTHS.map((_, i) => Math.min(0.4 + 0.08 * i, 0.92).toFixed(4));

const csv = (columns: Readonly<Record<string, readonly string[]>>): string =>
  `${[
    `nm,${Object.keys(columns).join(",")}`,
    ...WAVELENGTHS.map((nm, i) =>
      [nm, ...Object.values(columns).map((values) => values[i])].join(","),
    ),
  ].join("\n")}\n`;

const cgats = (name: string, values: readonly string[]): string => `CGATS.17
MEASUREMENT_GEOMETRY "d/8 excluded"
NUMBER_OF_FIELDS 32
BEGIN_DATA_FORMAT
SAMPLE_NAME ${WAVELENGTHS.map((nm) => `SPECTRAL_NM${nm}`).join(" ")}
END_DATA_FORMAT
NUMBER_OF_SETS 1
BEGIN_DATA
"${name}" ${values.join(" ")}
END_DATA
`;

const cxf = (name: string, values: readonly string[]): string => `<?xml version="1.0"?>
<cc:CxF xmlns:cc="http://colorexchangeformat.com/CxF3-core"><cc:Resources><cc:ObjectCollection>
<cc:Object ObjectType="Standard" Name="${name}" Id="r1"><cc:ColorValues>
<cc:ReflectanceSpectrum ColorSpecification="s" StartWL="400">${values.join(" ")}</cc:ReflectanceSpectrum>
</cc:ColorValues></cc:Object></cc:ObjectCollection><cc:ColorSpecificationCollection>
<cc:ColorSpecification Id="s"><cc:MeasurementSpec><cc:MeasurementType>Spectrum_Reflectance</cc:MeasurementType>
<cc:GeometryChoice><cc:Sphere><cc:Specular>Excluded</cc:Specular></cc:Sphere></cc:GeometryChoice>
<cc:WavelengthRange StartWL="400" Increment="10"/></cc:MeasurementSpec></cc:ColorSpecification>
</cc:ColorSpecificationCollection></cc:Resources></cc:CxF>
`;

/** Workshops of a few lines a record, which are spoilt and read in a millisecond or two; their colours are nobody's. */
export const SMALL_WORKSHOPS: readonly RecordTexts[] = [
  {
    "workshop.yaml": `name: Small
markets: [EU, US]
vehicle: oil
filmThicknessUm: 75
currency: EUR
readings: { scale: factor, geometry: d/8 excluded }
cards: [{ name: a, widthMm: 90, heightMm: 55 }]
`,
    "pigments/black.yaml": `name: Carbon
colourIndexName: PBk 7
casNumber: 1333-86-4
densityGPerCm3: { value: 1.8, uncertainty: 0.05, standing: measured, method: pycnometer, date: 2026-01-02 }
oilAbsorptionGPer100g: { value: [60, 90], standing: estimated }
particle: { sizeUm: 0.09 }
pricePerKg: 20
hazards: []
`,
    "pigments/white.yaml": `name: Rutile
colourIndexName: PW 6
densityGPerCm3: 4.1
oilAbsorptionGPer100g: 20
hazards: []
`,
    "vehicles/oil.yaml": `name: Linseed oil
kind: oil
oil: linseed
densityGPerCm3: 0.931
pricePerKg: 14
hazards: []
`,
    "colours/black.md": `---
name: Black
pigments: [{ pigment: black, parts: 1 }]
family: black
oilIndexGPer100g: { value: 90, uncertainty: 2 }
gloss60: 20
finenessOfGrindUm: 20
masstone: { reading: small.csv, column: black }
tints: [{ white: white, massRatio: "1:20", ratioKind: paint, reading: small.csv, column: grey }]
dryingTrials: [{ touchDryDays: 8, filmThicknessUm: 75, temperatureC: 20, humidityPercent: 55 }]
exposures: [{ deltaEab: 0.9, form: tint, standard: one, exposure: a window }]
sizes: [{ ml: 40, price: 9 }]
date: 2026-05-18
---
Some *notes*.
`,
    "colours/white.md": `---
name: White
pigments: [{ pigment: white }]
oilIndexGPer100g: 24
masstone: { reading: small.csv, column: white }
---
`,
    "readings/small.csv": csv({ black: BLACK, grey: GREY, white: WHITE }),
    "prices.csv": "colour,ml,price\nwhite,40,8\n",
    "answers/why.md": `---
question: Why so much oil?
summary: It takes {% figure black.oil.oilIndexGPer100g %}.
colours: [black]
claims: [{ figure: black.oil.oilIndexGPer100g, between: [5, 150] }]
---
{% figure black.oil.oilIndexGPer100g %} against {% colour white %}.
`,
  },
  {
    "workshop.yaml":
      "name: Small\nmarkets: [EU, GB, US, other]\nlanguages: [en, de]\nvehicle: oil\n",
    "pigments/lead.yaml": `name: Lead carbonate
colourIndexName: PW 1
densityGPerCm3: 6.7
metals: [{ metal: lead, percent: 80 }]
hazards:
  - { statement: H302, hazardClass: Acute Tox. 4, route: oral, ate: 500 }
  - { statement: H360Df, hazardClass: Repr. 1A, countedAs: lead, limits: [{ hazardClass: Repr. 2, from: 0.025, statement: H361f }] }
  - { statement: H410, hazardClass: Aquatic Chronic 1, mFactor: 1 }
lightfastness: { category: I, blueWool: 8 }
`,
    "pigments/umber.yaml": `name: Umber
colourIndexName: PBr 7
densityGPerCm3: { value: [3.2, 3.8], standing: estimated }
manganeseDioxideFraction: 0.08
respirableQuartzPercent: 0.4
bulkDensityLooseGPerMl: 0.5
bulkDensityTappedGPerMl: 0.8
hazards: []
components: [{ name: manganese dioxide, casNumber: 1313-13-9, massFraction: 0.08, hazards: [{ statement: H302, hazardClass: Acute Tox. 4, route: oral }] }]
`,
    "vehicles/oil.yaml":
      "name: Walnut oil\nkind: oil\noil: walnut\ndensityGPerCm3: 0.926\nhazards: []\n",
    "vehicles/drier.yaml": `name: Drier
kind: drier
metals: [{ metal: cobalt, percent: 4 }]
densityGPerCm3: 0.95
flashPointC: 41
kinematicViscosityMm2PerS: 1.4
hazards: [{ statement: H226, hazardClass: Flam. Liq. 3 }]
`,
    "colours/lead-white.md": `---
name: Lead White
pigments: [{ pigment: lead }]
oilIndexGPer100g: 13
masstone: { munsell: N 9.2/ }
legalBasis:
  - { market: EU, basis: restoration, buyers: studios, date: 2026-01-05 }
  - { market: GB, basis: restoration, buyers: conservators, date: 2026-01-05 }
sizes: [{ ml: 60, price: 38 }]
---
`,
    "colours/umber.md": `---
name: Umber
pigments: [{ pigment: umber, parts: 9 }, { pigment: lead, parts: 1 }]
additions: [{ vehicle: drier, percentOfOil: 0.4 }]
oilIndexGPer100g: 60
masstone: { munsell: 5YR 2/1 }
legalBasis:
  - { market: EU, basis: restoration, buyers: studios, date: 2026-01-05 }
  - { market: GB, basis: restoration, buyers: conservators, date: 2026-01-05 }
---
`,
  },
  {
    "workshop.yaml":
      "name: Small\nfilmThicknessUm: 100\nreadings: { scale: factor, geometry: d/8 excluded }\n",
    "pigments/red.yaml": "name: Red earth\ncolourIndexName: PR 102\ndensityGPerCm3: 4.2\n",
    "colours/red.md": `---
name: Red
pigments: [{ pigment: red }]
masstone: { reading: one.txt, column: red }
films:
  - { ground: black, filmThicknessUm: 50, lab: [30, 20, 15], illuminant: D65, observer: 10, geometry: d/8 excluded }
  - { ground: white, filmThicknessUm: 50, lab: [34, 22, 17], illuminant: D65, observer: 10, geometry: d/8 excluded }
---
`,
    "colours/dark-red.md": `---
name: Dark red
pigments: [{ pigment: red }]
masstone: { reading: two.cxf, column: dark, surface: { k1: 0.03, k2: 0.5 } }
---
`,
    "colours/pale-red.md": `---
name: Pale red
pigments: [{ pigment: red }]
masstone: { lab: [60, 20, 15], illuminant: D50, observer: 2, geometry: "45/0", uncertainty: 0.3 }
---
`,
    "readings/one.txt": cgats("red", GREY),
    "readings/two.cxf": cxf("dark", BLACK),
  },
];
