/**
 * The one registry of figures: a row for each path pattern of a sheet. Claims,
 * shortcodes, the published schema, CSV columns and wording all read it, and a
 * leaf without a row is an error.
 */
import { nearestWord } from "../diagnostics/nearest-word.ts";

/**
 * How a figure reads: `decimal` to fixed places, `significant` to so many digits,
 * `share` a fraction 0-1 shown in percent, `days` whole or half days, `word` one of a closed set, `notation`
 * a text that is its own finished form, `series` numbers over a grid.
 */
export type FigureKind =
  "decimal" | "significant" | "share" | "days" | "word" | "notation" | "series";

export interface FigureRow {
  readonly pattern: string;
  /** Unit symbol, "1" for a plain number, "" for a word. */
  readonly unit: string;
  readonly kind: FigureKind;
  /** Decimal places, significant digits or places of a percentage; 0 for words. */
  readonly digits: number;
  /** Key of its name in words/LANGUAGE. */
  readonly word: string;
}

function row(
  pattern: string,
  unit: string,
  kind: FigureKind,
  digits: number,
  word: string,
): FigureRow {
  return { pattern, unit, kind, digits, word };
}

const SCREEN = (prefix: string): FigureRow[] => [
  row(`${prefix}.srgb.hex`, "", "notation", 0, "srgb"),
  row(`${prefix}.displayP3.css`, "", "notation", 0, "displayP3"),
  row(`${prefix}.oklch.css`, "", "notation", 0, "oklch"),
];
const LAB = (prefix: string): FigureRow[] => [
  row(`${prefix}.lab.*.L`, "1", "decimal", 1, "labL"),
  row(`${prefix}.lab.*.a`, "1", "decimal", 1, "labA"),
  row(`${prefix}.lab.*.b`, "1", "decimal", 1, "labB"),
];
const MUNSELL = (prefix: string): FigureRow[] => [
  row(`${prefix}.munsell.hue`, "", "notation", 0, "munsellHue"),
  row(`${prefix}.munsell.value`, "1", "decimal", 1, "munsellValue"),
  row(`${prefix}.munsell.chroma`, "1", "decimal", 1, "munsellChroma"),
  row(`${prefix}.munsell.text`, "", "notation", 0, "munsell"),
];

export const FIGURE_TABLE: readonly FigureRow[] = [
  row("pigments.*.massFraction", "1", "share", 0, "massFraction"),
  row("pigments.*.densityGPerCm3", "g/cm3", "significant", 3, "density"),
  row("pigments.*.oilAbsorptionGPer100g", "g/100 g", "significant", 3, "oilAbsorption"),
  row("pigments.*.bulkDensityLooseGPerMl", "g/ml", "significant", 2, "bulkDensityLoose"),
  row("pigments.*.bulkDensityTappedGPerMl", "g/ml", "significant", 2, "bulkDensityTapped"),
  row("pigments.*.particleSizeUm", "um", "significant", 2, "particleSize"),
  row("pigments.*.pricePerKg", "currency/kg", "decimal", 2, "price"),

  row("vehicle.densityGPerCm3", "g/cm3", "significant", 3, "oilDensity"),
  row("vehicle.pricePerKg", "currency/kg", "decimal", 2, "price"),
  row("additions.*.percentOfOil", "%", "significant", 2, "percentOfOil"),
  row("additions.*.densityGPerCm3", "g/cm3", "significant", 3, "additionDensity"),
  row("additions.*.metals.*.percentOfOil", "%", "significant", 2, "metalPercentOfOil"),
  row("additions.*.pricePerKg", "currency/kg", "decimal", 2, "price"),

  row("notations.masstone.xyz.*.X", "1", "significant", 4, "xyzX"),
  row("notations.masstone.xyz.*.Y", "1", "significant", 4, "xyzY"),
  row("notations.masstone.xyz.*.Z", "1", "significant", 4, "xyzZ"),
  ...LAB("notations.masstone"),
  ...MUNSELL("notations.masstone"),
  ...SCREEN("notations.masstone"),
  row("notations.masstone.nbsName", "", "notation", 0, "nbsName"),
  row("notations.masstone.glossExcludedL", "1", "decimal", 1, "glossExcludedL"),
  row("notations.masstone.lamplight.deltaE00", "1", "decimal", 1, "lamplight"),

  ...LAB("tints.*.steps.*"),
  ...MUNSELL("tints.*.steps.*"),
  ...SCREEN("tints.*.steps.*"),
  row("tints.*.steps.*.residualDeltaE00", "1", "decimal", 1, "residual"),
  row("tints.*.steps.*.leaveOneOutDeltaE00", "1", "decimal", 1, "leaveOneOut"),
  row("tints.*.atL.*.a", "1", "decimal", 1, "labA"),
  row("tints.*.atL.*.b", "1", "decimal", 1, "labB"),
  row("tints.*.atL.*.massRatio", "1", "significant", 2, "massRatio"),
  ...LAB("tints.*.atL.*"),
  ...SCREEN("tints.*.atL.*"),
  row("tints.*.strengthParts.byMass", "1", "significant", 2, "strengthByMass"),
  row("tints.*.strengthParts.byVolume", "1", "significant", 2, "strengthByVolume"),
  row("tints.*.strengthParts.byPigmentMass", "1", "significant", 2, "strengthByPigmentMass"),

  row("optics.tintingStrength", "1", "share", 0, "tintingStrength"),
  row("optics.tintingStrengthByVolume", "1", "share", 0, "tintingStrengthByVolume"),
  row("optics.contrastRatio", "1", "decimal", 2, "contrastRatio"),
  row("optics.hidingFilmUm", "um", "significant", 2, "hidingFilm"),
  row("optics.coverageCm2PerMl", "cm2/ml", "significant", 2, "coverage"),
  row("optics.scatteringPower", "1", "significant", 2, "scatteringPower"),
  row("optics.opacityClass", "", "word", 0, "opacityClass"),

  ...SCREEN("optics.glaze.*"),
  row("optics.gloss.glossyL", "1", "decimal", 0, "glossyL"),
  row("optics.gloss.matteL", "1", "decimal", 0, "matteL"),
  row("optics.gloss.glossyValue", "1", "decimal", 1, "glossyValue"),
  row("optics.gloss.matteValue", "1", "decimal", 1, "matteValue"),
  row("optics.gloss.depths.*.L", "1", "decimal", 0, "labL"),
  row("optics.gloss.depths.*.value", "1", "decimal", 1, "munsellValue"),
  ...SCREEN("optics.gloss.depths.*"),
  row("optics.extender.fromL", "1", "decimal", 1, "extendedFromL"),
  row("optics.extender.toL", "1", "decimal", 1, "extendedToL"),
  row("optics.dispersion.strength", "1", "share", 0, "mulledStrength"),
  row("optics.fit.k1", "1", "decimal", 3, "surfaceK1"),
  row("optics.fit.k2", "1", "decimal", 3, "surfaceK2"),
  row("optics.fit.weightedResidual", "1", "significant", 2, "weightedResidual"),
  row("optics.fit.masstoneResidualDeltaE00", "1", "decimal", 1, "masstoneResidual"),
  row("optics.fit.whites.*.K", "1", "series", 0, "seriesK"),
  row("optics.fit.whites.*.KUncertainty", "1", "series", 0, "seriesKUncertainty"),
  row("optics.fit.whites.*.S", "1", "series", 0, "seriesS"),
  row("optics.fit.whites.*.SUncertainty", "1", "series", 0, "seriesSUncertainty"),
  row("optics.fit.whites.*.SUpper", "1", "series", 0, "seriesSUpper"),

  row("mixture.components.*.pigmentVolumeFraction", "1", "share", 0, "pigmentVolumeShare"),
  row("mixture.components.*.paintMassFraction", "1", "share", 0, "paintMassShare"),
  row("mixture.components.*.paintVolumeFraction", "1", "share", 0, "paintVolumeShare"),
  ...LAB("mixture.whites.*.steps.*"),
  ...MUNSELL("mixture.whites.*.steps.*"),
  ...SCREEN("mixture.whites.*.steps.*"),
  row("mixture.whites.*.steps.*.missDeltaE00", "1", "decimal", 1, "mixtureMiss"),
  row("mixture.whites.*.middleMissDeltaE00", "1", "decimal", 1, "mixtureMiddleMiss"),
  row("mixture.whites.*.fresh.massRatio", "1", "significant", 2, "massRatio"),
  ...LAB("mixture.whites.*.fresh"),
  ...SCREEN("mixture.whites.*.fresh"),
  row("mixture.whites.*.pair.neutralShare", "1", "share", 0, "neutralShare"),
  row("mixture.whites.*.pair.neutralVolumeShare", "1", "share", 0, "neutralVolumeShare"),
  row("mixture.whites.*.pair.neutralChroma", "1", "decimal", 1, "neutralChroma"),
  ...["drifts.*", "singleBlack"].flatMap((who) => [
    ...LAB(`mixture.whites.*.${who}.losses.*`),
    ...SCREEN(`mixture.whites.*.${who}.losses.*`),
    row(`mixture.whites.*.${who}.losses.*.deltaE00`, "1", "decimal", 1, "driftDeltaE00"),
  ]),

  row("oil.oilAbsorptionGPer100g", "g/100 g", "significant", 3, "oilAbsorption"),
  row("oil.oilIndexGPer100g", "g/100 g", "significant", 3, "oilIndex"),
  row("oil.oilIndexClass", "", "word", 0, "oilIndexClass"),
  row("oil.pigmentDensityGPerCm3", "g/cm3", "significant", 3, "density"),
  row("oil.oilGPer100cm3", "g/100 cm3", "significant", 3, "oilByVolume"),
  row("oil.cpvc", "1", "share", 0, "cpvc"),
  row("oil.finenessOfGrindUm", "um", "significant", 2, "finenessOfGrind"),
  row("oil.dispersionFactor", "1", "decimal", 2, "dispersionFactor"),
  row("oil.effectiveCpvc", "1", "share", 0, "effectiveCpvc"),
  row("oil.pvc", "1", "share", 0, "pvc"),
  row("oil.oilVolumeFraction", "1", "share", 0, "oilVolumeFraction"),
  row("oil.reducedPvc", "1", "decimal", 2, "reducedPvc"),
  row("oil.effectiveReducedPvc", "1", "decimal", 2, "effectiveReducedPvc"),
  row("oil.paintDensityGPerCm3", "g/cm3", "significant", 3, "paintDensity"),
  row("oil.pigmentMassFraction", "1", "share", 0, "pigmentMassFraction"),
  row("oil.volumeSolids", "1", "share", 0, "volumeSolids"),
  row("oil.finish", "", "word", 0, "finish"),
  row("oil.gloss60", "GU", "significant", 2, "gloss60"),
  row("oil.body", "", "word", 0, "body"),
  row("oil.oilSeparation", "", "word", 0, "oilSeparation"),

  row("batch.holdBack", "1", "share", 0, "holdBack"),
  row("batch.loss", "1", "share", 0, "batchLoss"),
  row("batch.sizes.*.pigments.*.massG", "g", "significant", 3, "batchPigment"),
  row("batch.sizes.*.oilG", "g", "significant", 3, "batchOil"),
  row("batch.sizes.*.oilAtFirstG", "g", "significant", 3, "batchOilAtFirst"),
  row("batch.sizes.*.oilHeldBackG", "g", "significant", 3, "batchOilHeldBack"),
  row("batch.sizes.*.additions.*.massG", "g", "significant", 2, "batchAddition"),
  row("batch.sizes.*.paintG", "g", "significant", 3, "batchPaint"),
  row("batch.sizes.*.paintMl", "ml", "decimal", 0, "batchVolume"),
  row("batch.sizes.*.lossMl", "ml", "significant", 2, "batchLossMl"),
  row("batch.sizes.*.yieldMl", "ml", "decimal", 0, "batchYield"),
  row("batch.sizes.*.tubes.*.count", "1", "decimal", 0, "batchTubes"),
  row("batch.sizes.*.cost", "currency", "decimal", 2, "batchCost"),

  row("fill.fillings.*.holds.*.massG", "g", "significant", 2, "fillHolds"),
  row("fill.fillings.*.takesMlPer100g", "ml", "significant", 2, "fillTakes"),

  row("drying.class", "", "word", 0, "dryingClass"),
  row("drying.touchDryDays", "d", "days", 0, "touchDryDays"),
  row("drying.throughDryDays", "d", "days", 0, "throughDryDays"),
  row("drying.expectedDays", "d", "days", 0, "expectedDays"),
  row("drying.linseedDays", "d", "days", 0, "linseedDays"),
  row("drying.contributions.*.factor", "1", "significant", 2, "dryingFactor"),
  row("drying.trials.*.touchDryDays", "d", "days", 0, "touchDryDays"),
  row("drying.trials.*.throughDryDays", "d", "days", 0, "throughDryDays"),
  row("drying.trials.*.filmThicknessUm", "um", "significant", 3, "filmThickness"),
  row("drying.trials.*.temperatureC", "degC", "significant", 2, "temperature"),
  row("drying.trials.*.humidityPercent", "%", "significant", 2, "humidity"),
  row("drying.inWhites.*.class", "", "word", 0, "dryingClass"),
  row("drying.inWhites.*.touchDryDays", "d", "days", 0, "touchDryDays"),
  row("drying.inWhites.*.contributions.*.factor", "1", "significant", 2, "dryingFactor"),

  row("permanence.category", "", "notation", 0, "lightfastnessCategory"),
  row("permanence.expectation", "", "word", 0, "lightfastnessExpectation"),
  row("permanence.blueWool", "1", "significant", 1, "blueWool"),
  row("permanence.deltaEab", "1", "decimal", 1, "deltaEab"),
  row("permanence.forms.*.category", "", "notation", 0, "lightfastnessCategory"),
  row("permanence.forms.*.deltaEab", "1", "decimal", 1, "deltaEab"),
];

const ROWS = new Map(FIGURE_TABLE.map((entry) => [entry.pattern, entry]));

/** The row of a path pattern. @throws RangeError naming the nearest pattern: a figure must have its row. */
export function figureRow(pattern: string): FigureRow {
  const found = ROWS.get(pattern);
  if (found !== undefined) return found;
  const near = nearestWord(pattern, [...ROWS.keys()]);
  throw new RangeError(
    `Unexpected figure \`${pattern}\`, expected \`a row of the figure table\`${near === undefined ? "" : `; nearest \`${near}\``}`,
  );
}
