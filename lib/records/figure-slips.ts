import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { DrierRow } from "../drying/added-drier.ts";
import { oilIndexOfShare } from "../formulation/oil-share.ts";
import { WORKING_OIL_RATIO, WORKING_OIL_REACH } from "../formulation/working-oil.ts";
import { metalShares } from "../hazard/studio/metal-content.ts";
import { specialEffect } from "../optics/special-effect.ts";
import { namedMaterials } from "../knowledge/material-names.ts";
import type { Tables } from "../knowledge/tables.ts";
import { amountEnds } from "./amount-ends.ts";
import { drierMetals } from "./drier-metals.ts";
import { fractionHint, warningAt, type Faults } from "./fault.ts";
import type { OwnRule } from "./own-faults.ts";
import type { ParsedFiles } from "./parsed-files.ts";
import type { Parsed } from "./parsed-record.ts";
import { LEAST_DRIER_METAL_PERCENT } from "./vehicle-faults.ts";
import type { ColourRecord } from "./schema/colour.ts";
import type { PigmentRecord } from "./schema/pigment.ts";

/** Up to so much of a metal [%] that a pigment is made of, or of what is added to the oil, a figure was most likely a fraction. Our own limits. */
const LEAST_PERCENT = { metal: 1, addition: 0.2 } as const;
/** What a paper rounds or finds besides, over the share that a formula tells [1]. Our own limit. */
const MOST_OF_FORMULA = 1.1;
/** From so much of a metal [%] on it is no trace in a powder of another. Our own limit. */
const LEAST_OF_FLAKES = 0.3;
/** Gloss at 60 degrees [gloss units] of the most matte films. Common practice. */
const LEAST_GLOSS = 1;
/** Respirable quartz [%] below which no supplier's laboratory tells it. Common practice. */
const LEAST_QUARTZ_PERCENT = 0.1;
/** Of the least metal on oil that is customary, the part [1] that dries nothing. Our own limit. */
const DOSE_PART = 0.1;

/** Figures that can be true, and far more often are another figure's share, unit or digit: told, and never refused. */
export function* figureSlips(files: ParsedFiles, tables: Tables): Faults {
  for (const colour of files.colours.values()) {
    yield* oilOfPaintFaults(colour, files);
    yield* additionFaults(colour, files, tables.driers);
  }
}

/** An oil index just below the rub-out figure of its only pigment, which as a share of oil in the paint would be one above it. */
function* oilOfPaintFaults(
  { record: { oilIndexGPer100g, pigments }, yaml }: Parsed<ColourRecord>,
  files: ParsedFiles,
): Faults {
  const [only, ...others] = pigments;
  const pigment = others.length > 0 ? undefined : files.pigments.get(only?.pigment ?? "")?.record;
  const [rubOut] = amountEnds(pigment?.oilAbsorptionGPer100g, []);
  const index = amountEnds(oilIndexGPer100g, ["oilIndexGPer100g"]).at(-1);
  if (rubOut === undefined || index === undefined || index.value >= 100) return;
  const ratio = index.value / rubOut.value;
  const meant = oilIndexOfShare(index.value);
  // Below that reach the sheet itself finds that the two contradict each other.
  if (!(ratio >= WORKING_OIL_REACH[0] && ratio < 1 && meant / rubOut.value >= WORKING_OIL_RATIO[0]))
    return;
  yield warningAt(yaml.place(index.path), "records/oil-index", {
    message: `The oil index of ${index.value} g/100 g lies below the rub-out figure of its pigment, ${rubOut.value} g/100 g`,
    actual: `${index.value} g/100 g`,
    expected: `${rubOut.value} g/100 g or more`,
    hint: `${meant} g/100 g, if it was given in percent of the paint`,
  });
}

/** So little of an addition that nothing would come of it. */
function* additionFaults(
  { record: { additions = [] }, yaml }: Parsed<ColourRecord>,
  { vehicles }: ParsedFiles,
  driers: readonly DrierRow[],
): Faults {
  for (const [i, { vehicle, percentOfOil }] of additions.entries()) {
    const added = vehicles.get(vehicle)?.record;
    if (added === undefined) continue;
    const metals = drierMetals(added);
    const isTooLittle =
      metals.length === 0
        ? percentOfOil <= LEAST_PERCENT.addition
        : metals.every(({ metal, percent }) => {
            const least = driers.find((row) => row.metal === metal)?.customaryPercent[0];
            return (
              percent !== undefined &&
              // A drier with next to no metal in it is told at its own record.
              percent >= LEAST_DRIER_METAL_PERCENT &&
              least !== undefined &&
              (percentOfOil * percent) / 100 < DOSE_PART * least
            );
          });
    if (isTooLittle)
      yield ofFraction(
        yaml.place(["additions", i, "percentOfOil"]),
        percentOfOil,
        `So little of ${vehicle}, ${percentOfOil} % of the oil, does nothing in a paint`,
        "a share in percent of the oil",
      );
  }
}

/** A pigment whose Colour Index name, CAS number or own name is that of a metal's compound, and which states hardly any of it. */
export const metalFaults: OwnRule<PigmentRecord> = function* (
  { record, yaml },
  { hazard, knowledge },
) {
  const shares: Readonly<Record<string, unknown>> = metalShares(record, hazard.metals);
  const told = new Set(Object.keys(shares));
  const named = new Set(namedMaterials(record.name, "metal", knowledge.tables.materialNames));
  const isFlake = specialEffect(record.effect, record.colourIndexName) === "metallic";
  for (const [i, { metal, percent }] of (record.metals ?? []).entries()) {
    const share = shares[metal];
    if (
      percent !== undefined &&
      typeof share === "number" &&
      percent > MOST_OF_FORMULA * 100 * share
    )
      yield warningAt(yaml.place(["metals", i, "percent"]), "records/percent", {
        message: `${record.name} is stated to hold ${percent} % of ${metal}, and by the formula of its CAS number ${Number((100 * share).toPrecision(3))} % of it is ${metal}`,
        actual: `${percent} %`,
        expected: `at most ${Number((100 * share).toPrecision(3))} %`,
        hint: "the share of the compound, not of the metal?",
      });
  }
  for (const [i, { metal, percent }] of (record.metals ?? []).entries())
    if (
      percent !== undefined &&
      percent <= LEAST_PERCENT.metal &&
      (told.has(metal) || named.has(metal) || (isFlake && percent >= LEAST_OF_FLAKES))
    )
      yield ofFraction(
        yaml.place(["metals", i, "percent"]),
        percent,
        told.has(metal)
          ? `${record.name} is made of ${metal} by its numbers, and ${percent} % of it is next to none`
          : named.has(metal)
            ? `${record.name} has ${metal} in its name, and ${percent} % of it is next to none`
            : `${record.name} is a metal powder, and ${percent} % of ${metal} is neither what it is made of nor a trace`,
        "the metal's share in percent",
      );
};

/** A component whose formula tells so much of a metal, and which states a hundredth of that. */
export const componentMetalFaults: OwnRule<Pick<PigmentRecord, "components">> = function* (
  { record, yaml },
  { hazard },
) {
  for (const [i, { name, casNumber, metals = [] }] of (record.components ?? []).entries()) {
    const told = metalShares({ casNumber }, hazard.metals);
    for (const [j, { metal, percent }] of metals.entries())
      if (percent !== undefined && percent <= LEAST_PERCENT.metal && Object.hasOwn(told, metal))
        yield ofFraction(
          yaml.place(["components", i, "metals", j, "percent"]),
          percent,
          `${name} is made of ${metal} by its CAS number, and ${percent} % of it is next to none`,
          "the metal's share in percent",
        );
  }
};

/** A gloss at 60 degrees that no film of oil falls to, however matte. */
export const matteGlossFaults: OwnRule<ColourRecord> = function* ({ record: { gloss60 }, yaml }) {
  const end = amountEnds(gloss60, ["gloss60"]).at(-1);
  if (end === undefined || end.value >= LEAST_GLOSS || end.value === 0) return;
  yield warningAt(yaml.place(end.path), "records/gloss", {
    message: `A gloss of ${end.value} gloss units is less than any film of oil has: the most matte read ${LEAST_GLOSS} and more`,
    actual: String(end.value),
    expected: `${LEAST_GLOSS} gloss units or more`,
    hint: `${Number((100 * end.value).toPrecision(3))} gloss units, if it was given as a fraction`,
  });
};

export const quartzFaults: OwnRule<PigmentRecord> = function* ({ record, yaml }) {
  const { respirableQuartzPercent: percent = 0 } = record;
  if (percent !== 0 && percent < LEAST_QUARTZ_PERCENT)
    yield ofFraction(
      yaml.place(["respirableQuartzPercent"]),
      percent,
      `Respirable quartz of ${percent} % is less than a laboratory tells, ${LEAST_QUARTZ_PERCENT} %`,
      `${LEAST_QUARTZ_PERCENT} % or more, or 0`,
    );
};

function ofFraction(
  place: Diagnostic["place"],
  percent: number,
  message: string,
  expected: string,
): Diagnostic {
  return warningAt(place, "records/percent", {
    message,
    actual: `${percent} %`,
    expected,
    hint: fractionHint(percent),
  });
}
