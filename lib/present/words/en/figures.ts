/** Name of each figure, by its key in the figure table. */
export const FIGURES = {
  massFraction: "Share of the dry pigment",
  density: "Density of the pigment",
  oilDensity: "Density of the oil",
  particleSize: "Particle size", price: "Price", percentOfOil: "Share on the oil", additionDensity: "Density", metalPercentOfOil: "Metal on the oil",
  bulkDensityLoose: "Bulk density, as poured",
  bulkDensityTapped: "Bulk density, tapped",
  xyzX: "X", xyzY: "Y", xyzZ: "Z",
  labL: "L*", labA: "a*", labB: "b*",
  munsell: "Munsell", munsellHue: "Munsell hue", munsellValue: "Munsell value", munsellChroma: "Munsell chroma",
  srgb: "sRGB", displayP3: "Display P3", oklch: "OKLCH", nbsName: "ISCC-NBS name",
  glossExcludedL: "L* with gloss excluded", lamplight: "Change in lamplight",
  residual: "Missed by the fit", leaveOneOut: "Missed when left out", massRatio: "Colour to white, by mass",
  strengthByMass: "White to L* 50, by mass of paint", strengthByVolume: "White to L* 50, tube to tube",
  tintingStrength: "Tinting strength", contrastRatio: "Contrast ratio", hidingFilm: "Film that hides", opacityClass: "Opacity",
  glossyL: "L* of a glossy film", matteL: "L* of the same film matte", glossyValue: "Munsell value, glossy", matteValue: "Munsell value, matte",
  oilAbsorption: "Oil absorption (rub-out)", oilIndex: "Oil index", oilIndexClass: "Oil demand", oilByVolume: "Oil by volume of pigment",
  cpvc: "CPVC", dispersionFactor: "Dispersion factor", effectiveCpvc: "Effective CPVC", pvc: "PVC", reducedPvc: "PVC over CPVC", effectiveReducedPvc: "PVC over effective CPVC",
  paintDensity: "Density of the paint", finish: "Finish", gloss60: "Gloss at 60\u00b0",
  finenessOfGrind: "Fineness of grind", oilVolumeFraction: "Oil of the dry film, by volume", volumeSolids: "Volume solids", body: "Body", oilSeparation: "Oil separation",
  holdBack: "Oil to hold back", batchLoss: "Lost on slab or mill", batchPigment: "Pigment to weigh", batchOil: "Oil in all", batchOilAtFirst: "Oil at first", batchOilHeldBack: "Oil held back",
  batchAddition: "Added", batchPaint: "Paint, by mass", batchVolume: "Paint, by volume", batchLossMl: "Lost", batchYield: "To fill", batchTubes: "Tubes filled", batchCost: "Cost",
  fillHolds: "Holds", fillTakes: "100 g take",
  dryingClass: "Drying", touchDryDays: "Touch dry", throughDryDays: "Through dry",
  expectedDays: "Touch dry, by the rules", linseedDays: "Linseed oil alone, touch dry", dryingFactor: "Times the days", filmThickness: "Wet film", temperature: "Temperature", humidity: "Humidity",
  lightfastnessCategory: "Lightfastness category", lightfastnessExpectation: "Lightfastness, expected", blueWool: "Blue wool", deltaEab: "Colour change on exposure",
} as const satisfies Record<string, string>;

/** Gloss of a figure whose name a painter may not know, by the same key. */
export const FIGURE_GLOSSES: Readonly<Record<string, string>> = {
  oilIndex: "grams of oil to 100 g of pigment, in the paint as made",
  oilAbsorption: "grams of oil that just bind 100 g of pigment on the slab",
  oilByVolume: "the same for 100 cm\u00b3 of pigment, so that light and heavy pigments compare",
  cpvc: "the share of pigment in the dry film at which the oil only just fills the gaps",
  effectiveCpvc: "the CPVC that the paste acts by, since clumps hold oil",
  pvc: "the share of pigment in the dry film, by volume",
  effectiveReducedPvc: "below 1 oil is in excess and the film is glossy; above 1 it holds voids and is matte",
  contrastRatio: "light thrown back over black against over white: 1 hides wholly",
  hidingFilm: "dried film of which the contrast ratio is 0.98",
  finenessOfGrind: "depth on the gauge at which the coarsest grains begin to show (ISO 1524)",
  volumeSolids: "the share of the wet paint that stays in the film",
  tintingStrength: "how much it colours a white against the workshop's reference, by mass",
  deltaEab: "CIE 1976 \u0394E*ab between the part exposed and the part kept dark",
  blueWool: "1 (most fugitive) to 8, another scale than the categories",
  lightfastnessCategory: "I (excellent) to V, by colour change in the exposures of a standard",
  lamplight: "\u0394E00 between daylight and lamplight, to an eye used to each",
  nbsName: "the nearest of 267 names of colours",
};

export const UNITS: Readonly<Record<string, string>> = {
  "1": "", "": "", "g/cm3": "g/cm\u00b3", "g/100 g": "g/100 g", "g/100 cm3": "g/100 cm\u00b3", "g/ml": "g/ml", "um": "\u00b5m", "d": "days", "GU": "GU", "degC": "\u00b0C",
};
