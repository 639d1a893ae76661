import { deltaE00 } from "../colorimetry/difference.ts";
import { nearestWord } from "../diagnostics/nearest-word.ts";
import { amountEnds } from "./amount-ends.ts";
import { masstoneLab } from "./colour-faults.ts";
import { errorAt, noteAt, warningAt, type Faults } from "./fault.ts";
import { OLDEST_YEARS } from "./amount-faults.ts";
import { lotColumnFaults } from "./lot-column-faults.ts";
import { densityByWeights, lotFillingFaults } from "./lot-filling-faults.ts";
import { lotWeightFaults, PAINT_DENSITY } from "./lot-weights.ts";
import type { ParsedFiles } from "./parsed-files.ts";
import type { Parsed } from "./parsed-record.ts";
import { readDrawdowns, type ReadDrawdown } from "./read-drawdowns.ts";
import type { Colour, Lot, Reading, TintReading } from "./records.ts";
import { standardLetDowns } from "./standard-let-downs.ts";
import type { LotRecord } from "./schema/lot.ts";
import type { RecordPath } from "./yaml-record.ts";
import { vehiclesOf, weighedInG } from "./made-of.ts";

/** So many years before all other dates of a workshop, where it has so many, a lot's is doubted. Our own limits. */
const YEARS_BEFORE = 5;
const MANY_DATES = 3;
/** Of what was weighed in, less than this share [1] seldom reaches the jar. Our own limit, wide. */
const LEAST_YIELD = 0.6;
/** Nor can more come out than went in, but for the last digit of the balance. */
const MOST_YIELD = 1.001;
/** What all tubes hold may pass the yield by this share [1]: a tube is filled by eye. */
const TUBES_OVER_YIELD = 0.05;

/**
 * Faults of lots that no schema sees: numbers given twice, readings that no standard can be held against, weights that do not add up, days out of order.
 * @param dates those that each record states.
 */
export function* lotFaults(
  lots: readonly Lot[],
  files: ParsedFiles,
  colours: ReadonlyMap<string, Colour>,
  dates: ReadonlyMap<Parsed<object>, readonly string[]>,
): Faults {
  yield* numberFaults(files);
  yield* dateFaults(files, dates);
  for (const lot of files.lots.values()) {
    yield* weighedFaults(lot, files);
    yield* lotFillingFaults(lot, files);
    yield* recipeFaults(lot, files);
    yield* plannedFaults(lot);
    yield* grindFaults(lot, files);
    yield* readBeforeMade(lot);
    yield* madeBeforeDelivery(lot, files);
    yield* deliveryFaults(lot, files);
  }
  yield* lotColumnFaults(files);
  const bySlug = new Map(lots.map((lot) => [lot.slug, lot]));
  for (const lot of lots) {
    const colour = colours.get(lot.record.colour);
    yield* geometryFaults(lot, colour);
    yield* letDownFaults(lot, colour, bySlug);
    yield* ratioFaults(lot, colour, bySlug);
  }
  yield* standardFaults(files);
}

/** Lots that the workshop ruled of: to be seen whenever records are checked. */
export function* lotStateNotes({ lots }: ParsedFiles): Faults {
  for (const { record, yaml } of lots.values()) {
    const { number, date, state } = record;
    if (state === undefined) continue;
    yield noteAt(yaml.place(["state"]), "records/lot-state", {
      message: `Lot ${number} is ${state.is} since ${state.since}: ${state.why.trim()}`,
      actual: state.is,
      expected: "seen to",
      ...(state.since < date && { hint: `${state.since} lies before the lot was made` }),
    });
  }
}

function* numberFaults({ lots }: ParsedFiles): Faults {
  const [first, alike] = [new Map<string, string>(), new Map<string, Parsed<LotRecord>>()];
  for (const lot of lots.values()) {
    const { file, record, yaml } = lot;
    const number = record.number.toLowerCase();
    const twin = first.get(number);
    const signs = number.replace(/[^\p{L}\p{N}]/gu, "");
    const double = alike.get(signs);
    if (twin === undefined) first.set(number, file);
    if (double === undefined) alike.set(signs, lot);
    if (twin === undefined && double !== undefined)
      yield warningAt(yaml.place(["number"]), "records/lot-number", {
        message: `The lot number ${record.number} is told from ${double.record.number} of ${double.file} by nothing but its blanks and signs`,
        actual: record.number,
        expected: "a number that nobody takes for another lot's",
      });
    if (twin !== undefined)
      yield errorAt(yaml.place(["number"]), "records/lot-number", {
        message: `The lot number ${record.number} is that of ${twin} already`,
        actual: record.number,
        expected: "a number that no other lot has",
      });
  }
}

/** A lot years before all else that these records date. */
function* dateFaults(
  { colours, lots, trials }: ParsedFiles,
  dates: ReadonlyMap<Parsed<object>, readonly string[]>,
): Faults {
  const dated = [...colours.values(), ...lots.values(), ...trials.values()]
    .flatMap((of: Parsed<object>) => (dates.get(of) ?? []).map((day) => ({ of, day })))
    .toSorted((one, other) => (one.day < other.day ? -1 : one.day > other.day ? 1 : 0));
  for (const lot of lots.values()) {
    const { date } = lot.record;
    const isOwn = ({ of, day }: (typeof dated)[number]): boolean => of === lot && day === date;
    const first = dated.find((one) => !isOwn(one))?.day;
    const count = dated.length - dated.filter(isOwn).length;
    const years = first === undefined ? 0 : Number(first.slice(0, 4)) - Number(date.slice(0, 4));
    // A year that nobody alive wrote is told by itself.
    if (first !== undefined && count >= MANY_DATES && years >= YEARS_BEFORE && years < OLDEST_YEARS)
      yield warningAt(lot.yaml.place(["date"]), "records/lot-date", {
        message: `The lot's date, ${date}, lies ${years} years before every other of colours, lots and trials, the first of which is ${first}`,
        actual: date,
        expected: `a day nearer to ${first}`,
        hint: "a digit of the year?",
      });
  }
}

/** A slip of one weight is told once: where the recipe tells which, there, and else by what came out. */
function weighedFaults(lot: Parsed<LotRecord>, files: ParsedFiles): Faults {
  const [byYield, byRecipe] = [[...yieldFaults(lot, files)], [...lotWeightFaults(lot, files)]];
  const isImpossible = byYield.some(({ severity }) => severity === "error");
  return byYield.length === 0 || (byRecipe.length > 0 && !isImpossible) ? byRecipe : byYield;
}

function* yieldFaults({ record, yaml }: Parsed<LotRecord>, files: ParsedFiles): Faults {
  const { yieldG, tubes = [] } = record;
  if (yieldG === undefined) return;
  const weighed = weighedInG(record);
  if (yieldG > weighed * MOST_YIELD) {
    const inKg = weighedInKg(record, yieldG);
    yield errorAt(yaml.place(inKg?.path ?? ["yieldG"]), "records/lot-yield", {
      message: `The yield of ${yieldG} g is more than the ${grams(weighed)} g that were weighed in`,
      actual: String(yieldG),
      expected: `at most ${grams(weighed)}`,
      hint: inKg && `${grams(inKg.massG * 1000)} g, if ${grams(inKg.massG)} is in kg`,
    });
  }
  if (yieldG < weighed * LEAST_YIELD)
    yield warningAt(yaml.place(["yieldG"]), "records/lot-yield", {
      message: `The yield of ${yieldG} g leaves ${Math.round((1 - yieldG / weighed) * 100)} % of the ${grams(weighed)} g that were weighed in`,
      actual: String(yieldG),
      expected: `at least ${grams(weighed * LEAST_YIELD)}`,
      hint: "a weight left out, or a digit exchanged?",
    });
  const density = record.densityGPerCm3 ?? densityByWeights(record, files) ?? PAINT_DENSITY[0];
  const filledG = tubes.reduce(
    (sum, { ml, count, massG }) => sum + count * (massG ?? ml * density),
    0,
  );
  const emptyG = tubes.reduce((sum, { count, tareG = 0 }) => sum + count * tareG, 0);
  const isFilledSo = (netG: number): boolean =>
    netG <= yieldG * (1 + TUBES_OVER_YIELD) && netG >= yieldG * LEAST_YIELD;
  if (filledG > yieldG * (1 + TUBES_OVER_YIELD))
    yield errorAt(yaml.place(["tubes"]), "records/lot-tubes", {
      message: `The tubes hold ${grams(filledG)} g together, and the yield is ${yieldG} g`,
      actual: grams(filledG),
      expected: `at most ${yieldG}`,
      hint:
        emptyG > 0 && isFilledSo(filledG - emptyG)
          ? `${grams(filledG - emptyG)} g without the empty tubes: massG is what is in one`
          : undefined,
    });
}

/** The weight that, taken for kilograms, or with all others taken so, would give such a yield. */
function weighedInKg(
  { pigments, oil, additions = [] }: LotRecord,
  yieldG: number,
): { readonly massG: number; readonly path: RecordPath } | undefined {
  const weights = [
    ...pigments.map(({ massG }, i) => ({ massG, path: ["pigments", i, "massG"] })),
    ...(oil === undefined ? [] : [{ massG: oil.massG, path: ["oil", "massG"] }]),
    ...additions.map(({ massG }, i) => ({ massG, path: ["additions", i, "massG"] })),
  ];
  const total = weights.reduce((sum, { massG }) => sum + massG, 0);
  const gives = (whole: number): boolean =>
    yieldG <= whole * MOST_YIELD && yieldG >= whole * LEAST_YIELD;
  return gives(1000 * total) ? weights[0] : weights.find(({ massG }) => gives(total + 999 * massG));
}

function grams(massG: number): string {
  return String(Number(massG.toPrecision(4)));
}

/** A pigment that the colour is not made of is another paint; the colour itself may be faulty and absent. */
function* recipeFaults({ record, yaml }: Parsed<LotRecord>, files: ParsedFiles): Faults {
  const colour = files.colours.get(record.colour)?.record;
  if (colour === undefined) return;
  const known = colour.pigments.map(({ pigment }) => pigment);
  for (const [i, { pigment }] of record.pigments.entries())
    // A name that no pigment bears is told by itself, and nothing that follows from that slip.
    if (!known.includes(pigment) && [pigment, ...known].every((one) => files.pigments.has(one)))
      yield errorAt(yaml.place(["pigments", i, "pigment"]), "records/lot-recipe", {
        message: `The colour ${record.colour} is not made of ${pigment}`,
        actual: pigment,
        expected: known.join(" | "),
      });
  if (
    record.dispersion !== undefined &&
    (colour.dispersion ?? record.dispersion) !== record.dispersion
  )
    yield warningAt(yaml.place(["dispersion"]), "records/lot-recipe", {
      message: `Lot ${record.number} was ${record.dispersion}, and the record of ${record.colour} says ${colour.dispersion ?? ""}: the two differ in strength and oil`,
      actual: record.dispersion,
      expected: colour.dispersion ?? "",
    });
  const named = vehiclesOf(colour, files);
  for (const { vehicle, path } of [
    ...(record.oil === undefined ? [] : [{ ...record.oil, path: ["oil", "vehicle"] }]),
    ...(record.additions ?? []).map((one, i) => ({ ...one, path: ["additions", i, "vehicle"] })),
  ])
    // A name that no vehicle bears is told by itself.
    if (named[0] !== undefined && files.vehicles.has(named[0]) && !named.includes(vehicle))
      yield warningAt(yaml.place(path), "records/lot-recipe", {
        message: `Lot ${record.number} holds ${vehicle}, and the record of ${record.colour} does not name it: sheet and label go by ${named.join(" and ")}`,
        actual: vehicle,
        expected: named.join(" | "),
      });
}

/** A lot that is not made yet has nothing to read or to fill, and what its record says of that is passed over. */
function* plannedFaults({ record, yaml }: Parsed<LotRecord>): Faults {
  if (record.planned !== true) return;
  const { masstone, tints = [], yieldG, tubes = [], densityGPerCm3, finenessOfGrindUm } = record;
  const made = [
    { key: "masstone", is: masstone !== undefined },
    { key: "tints", is: tints.length > 0 },
    { key: "yieldG", is: yieldG !== undefined },
    { key: "tubes", is: tubes.length > 0 },
    { key: "densityGPerCm3", is: densityGPerCm3 !== undefined },
    { key: "finenessOfGrindUm", is: finenessOfGrindUm !== undefined },
  ].flatMap(({ key, is }) => (is ? [key] : []));
  if (made.length === 0) return;
  yield warningAt(yaml.place(["planned"]), "records/lot-planned", {
    message: `Lot ${record.number} is planned, and its record has ${made.join(", ")}, which only a lot that was made has`,
    actual: "planned: true",
    expected: "a lot without them, or one that is not planned",
    hint: "without planned, once it is made",
  });
}

/** So many times coarser or finer than its colour's is another grind, or a decimal lost. Our own limit. */
const ANOTHER_GRIND = 5;

/** A gauge reads to a few micrometres, and one recipe comes out alike. */
function* grindFaults({ record, yaml }: Parsed<LotRecord>, { colours }: ParsedFiles): Faults {
  const own = record.finenessOfGrindUm;
  const usual = amountEnds(colours.get(record.colour)?.record.finenessOfGrindUm, []).map(
    ({ value }) => value,
  );
  if (own === undefined || usual.length === 0) return;
  const [finest, coarsest] = [Math.min(...usual), Math.max(...usual)];
  const isCoarse = own >= coarsest * ANOTHER_GRIND;
  if (!isCoarse && own * ANOTHER_GRIND > finest) return;
  const recipe = usual.length === 1 ? String(finest) : `${finest} to ${coarsest}`;
  yield warningAt(yaml.place(["finenessOfGrindUm"]), "records/lot-grind", {
    message: `Lot ${record.number} is ground to ${own} um, and the record of ${record.colour} says ${recipe} um: ${isCoarse ? "so coarse" : "so fine"} a lot is another paint`,
    actual: `${own} um`,
    expected: `about ${recipe} um`,
    hint: "a digit too many or a decimal lost?",
  });
}

/** The number of a delivery that stands in no list, and is one slip away from one that does. */
function* deliveryFaults({ record, yaml }: Parsed<LotRecord>, { pigments }: ParsedFiles): Faults {
  for (const [i, { pigment, supplierLot }] of record.pigments.entries()) {
    const known = (pigments.get(pigment)?.record.supplierLots ?? []).map(({ number }) => number);
    if (supplierLot === undefined || known.includes(supplierLot)) continue;
    const meant = nearestWord(supplierLot, known);
    if (meant === undefined) continue;
    yield warningAt(yaml.place(["pigments", i, "supplierLot"]), "records/supplier-lot", {
      message: `The delivery ${supplierLot} is none of those of ${pigment} that were rubbed out, ${known.join(", ")}: the batch sheet goes by the pigment's own figure`,
      actual: supplierLot,
      expected: known.join(" | "),
      hint: `nearest: ${meant}`,
    });
  }
}

/** A drawdown is made of a paint that is there: one of the two days is wrong. */
function* readBeforeMade({ record, yaml }: Parsed<LotRecord>): Faults {
  for (const { path, date } of [
    { path: ["masstone", "date"], date: record.masstone?.date },
    ...(record.tints ?? []).map((tint, i) => ({ path: ["tints", i, "date"], date: tint.date })),
  ])
    if (date !== undefined && date < record.date)
      yield warningAt(yaml.place(path), "records/lot-date", {
        message: `Lot ${record.number} was read on ${date}, and made on ${record.date}`,
        actual: date,
        expected: `${record.date} or later`,
        hint: "day and month exchanged, or the date of a record that was copied?",
      });
}

/** What was ground into a lot had been delivered by then. */
function* madeBeforeDelivery(
  { record, yaml }: Parsed<LotRecord>,
  { pigments }: ParsedFiles,
): Faults {
  for (const [i, { pigment, supplierLot }] of record.pigments.entries()) {
    const delivery = pigments
      .get(pigment)
      ?.record.supplierLots?.find(({ number }) => number === supplierLot);
    if (delivery?.date === undefined || delivery.date <= record.date) continue;
    yield warningAt(yaml.place(["pigments", i, "supplierLot"]), "records/lot-date", {
      message: `Lot ${record.number} was made on ${record.date}, and the delivery ${delivery.number} of ${pigment} in it is of ${delivery.date}`,
      actual: record.date,
      expected: `${delivery.date} or later`,
      hint: "another delivery, or day and month exchanged?",
    });
  }
}

function* geometryFaults(lot: Lot, colour: Colour | undefined): Faults {
  const [standard] = colour === undefined ? [] : readDrawdowns({ ...colour, films: [] });
  const standards = standard && geometryOf(standard.reading);
  if (standards === undefined) return;
  for (const { path, reading } of [
    ...lotDrawdowns(lot),
    ...lotDrawdowns(lot.standard, "standard"),
  ]) {
    const own = geometryOf(reading);
    if (own !== undefined && own !== standards)
      yield errorAt(lot.place(path), "records/lot-geometry", {
        message: `${path[0] === "standard" ? `The standard was read again ${own}, and before` : `The lot was read ${own}, and its standard`} ${standards}: the two can't be held against each other`,
        actual: own,
        expected: standards,
      });
  }
}

function lotDrawdowns(
  read: Pick<Lot, "masstone" | "letDowns"> | undefined,
  ...above: readonly string[]
): ReadDrawdown[] {
  return read === undefined ? [] : readDrawdowns({ ...read, tints: read.letDowns }, above);
}

/** A let-down that the standard has none like tells nothing of strength. */
function* letDownFaults(
  lot: Lot,
  colour: Colour | undefined,
  lots: ReadonlyMap<string, Lot>,
): Faults {
  if (colour === undefined || colour.record.standard === lot.slug) return;
  // What of the standard could not be read is told by itself.
  if (colour.tints.length < (colour.record.tints?.length ?? 0)) return;
  const retained = lots.get(colour.record.standard ?? "");
  const standards = [...(lot.standard?.letDowns ?? []), ...standardLetDowns(colour, retained)];
  const [first] = lot.letDowns;
  if (first === undefined || lot.letDowns.some((own) => standards.some((one) => isAlike(one, own))))
    return;
  const inWhite = standards.filter(({ white }) => white === first.white);
  const has = [...new Set((inWhite.length > 0 ? inWhite : standards).map(letDownName))].join(", ");
  yield warningAt(lot.place(["tints", 0]), "records/lot-let-down", {
    message: `The lot ${lot.record.number} is let down ${letDownName(first)} and its standard ${has === "" ? "not at all" : has}: its strength can't be judged, and the lot does not pass`,
    actual: letDownName(first),
    expected: has === "" ? "a let-down of the standard like it" : has,
  });
}

/** Of a let-down under a wrong ratio, ΔE00 to the standard's of that ratio at least, and to its own at most. Our own limits. */
const WRONG_RATIO = { apart: 6, near: 2 } as const;

/** A let-down that reads as the standard does in another ratio: the wrong one was written down. */
function* ratioFaults(
  lot: Lot,
  colour: Colour | undefined,
  lots: ReadonlyMap<string, Lot>,
): Faults {
  if (colour === undefined || colour.record.standard === lot.slug) return;
  const standards = [
    ...(lot.standard?.letDowns ?? []),
    ...standardLetDowns(colour, lots.get(colour.record.standard ?? "")),
  ];
  for (const [i, own] of lot.letDowns.entries()) {
    const lab = masstoneLab(own.reading);
    if (lab === undefined) continue;
    const held = standards
      .filter(({ white, ratioKind }) => white === own.white && ratioKind === own.ratioKind)
      .flatMap(({ massRatio, reading }) => {
        const other = masstoneLab(reading);
        return other === undefined ? [] : [{ massRatio, apart: deltaE00(lab, other) }];
      });
    const same = held.filter(({ massRatio }) => massRatio === own.massRatio);
    const near = held.find(({ apart }) => apart <= WRONG_RATIO.near);
    if (near === undefined || same.length === 0) continue;
    const apart = Math.min(...same.map((one) => one.apart));
    if (apart < WRONG_RATIO.apart) continue;
    yield warningAt(lot.place(["tints", i, "massRatio"]), "records/lot-ratio", {
      message: `The lot ${lot.record.number} is let down ${own.massRatio} in ${own.white} and reads as its standard does ${near.massRatio} (dE00 ${near.apart.toFixed(1)}, and ${apart.toFixed(1)} from the standard ${own.massRatio}): another ratio was weighed than written down`,
      actual: own.massRatio,
      expected: near.massRatio,
      hint: `massRatio: "${near.massRatio}"?`,
    });
  }
}

function isAlike(one: TintReading, other: TintReading): boolean {
  return (
    one.white === other.white &&
    one.massRatio === other.massRatio &&
    one.ratioKind === other.ratioKind
  );
}

function letDownName({ massRatio, white, ratioKind }: TintReading): string {
  return `${massRatio} in ${white} (${ratioKind})`;
}

function geometryOf(reading: Reading): string | undefined {
  return reading.form === "chip" ? undefined : reading.geometry;
}

function* standardFaults({ colours, lots }: ParsedFiles): Faults {
  for (const { slug, record, yaml } of colours.values()) {
    const lot = record.standard === undefined ? undefined : lots.get(record.standard);
    if (lot !== undefined && lot.record.colour !== slug)
      yield errorAt(yaml.place(["standard"]), "records/lot-standard", {
        message: `The standard ${lot.slug} is a lot of ${lot.record.colour}`,
        actual: lot.record.colour,
        expected: `a lot of ${slug}`,
      });
  }
}
