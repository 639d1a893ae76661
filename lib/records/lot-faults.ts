import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { ParsedFiles } from "./parsed-files.ts";
import type { Parsed } from "./parsed-record.ts";
import { eachValue } from "./record-values.ts";
import type { Colour, Lot, Reading, TintReading } from "./records.ts";
import { standardLetDowns } from "./standard-let-downs.ts";
import type { LotRecord } from "./schema/lot.ts";
import type { TrialRecord } from "./schema/trial.ts";
import type { RecordPath } from "./yaml-record.ts";

type Fault = Omit<Diagnostic, "place">;

/** So many years before all other dates of a workshop, where it has so many, a lot's is doubted. Our own limits. */
const YEARS_BEFORE = 5;
const MANY_DATES = 3;
/** Of what was weighed in, less than this share [1] seldom reaches the jar. Our own limit, wide. */
const LEAST_YIELD = 0.6;
/** Nor can more come out than went in, but for the last digit of the balance. */
const MOST_YIELD = 1.001;
/** What all tubes hold may pass the yield by this share [1]: a tube is filled by eye. */
const TUBES_OVER_YIELD = 0.05;

/** Faults of lots and trials that no schema sees: numbers given twice, readings that no standard can be held against, weights that do not add up, days out of order. */
export function lotFaults(
  lots: readonly Lot[],
  files: ParsedFiles,
  colours: ReadonlyMap<string, Colour>,
): Diagnostic[] {
  const bySlug = new Map(lots.map((lot) => [lot.slug, lot]));
  return [
    ...numberFaults(files),
    ...dateFaults(files),
    ...[...files.lots.values()].flatMap((lot) => [
      ...yieldFaults(lot),
      ...recipeFaults(lot, files),
    ]),
    ...lots.flatMap((lot) => {
      const colour = colours.get(lot.record.colour);
      return [...geometryFaults(lot, colour), ...letDownFaults(lot, colour, bySlug)];
    }),
    ...standardFaults(files),
    ...[...files.trials.values()].flatMap((trial) => trialFaults(trial, files)),
  ];
}

function at({ yaml }: Parsed<unknown>, path: RecordPath, fault: Fault): Diagnostic {
  return { ...fault, place: yaml.place(path) };
}

function numberFaults({ lots }: ParsedFiles): Diagnostic[] {
  const first = new Map<string, string>();
  return [...lots.values()].flatMap((lot): Diagnostic[] => {
    const number = lot.record.number.toLowerCase();
    const twin = first.get(number);
    if (twin === undefined) {
      first.set(number, lot.file);
      return [];
    }
    return [
      at(lot, ["number"], {
        severity: "error",
        rule: "records/lot-number",
        message: `The lot number ${lot.record.number} is that of ${twin} already`,
        actual: lot.record.number,
        expected: "a number that no other lot has",
      }),
    ];
  });
}

/** A lot years before all else that these records date. */
function dateFaults({ colours, lots, trials }: ParsedFiles): Diagnostic[] {
  const dated = new Map(
    [...colours.values(), ...lots.values(), ...trials.values()].map((one) => [
      one as Parsed<unknown>,
      datesOf(one.record),
    ]),
  );
  return [...lots.values()].flatMap((lot): Diagnostic[] => {
    const { date } = lot.record;
    const others = [
      ...[...dated].flatMap(([one, dates]) => (one === lot ? [] : dates)),
      ...(dated.get(lot) ?? []).filter((own) => own !== date),
    ];
    const [first] = others.sort();
    const years = first === undefined ? 0 : Number(first.slice(0, 4)) - Number(date.slice(0, 4));
    if (first === undefined || others.length < MANY_DATES || years < YEARS_BEFORE) return [];
    return [
      at(lot, ["date"], {
        severity: "warning",
        rule: "records/lot-date",
        message: `The lot's date, ${date}, lies ${years} years before every other of colours, lots and trials, the first of which is ${first}`,
        actual: date,
        expected: `a day nearer to ${first}`,
        hint: "a digit of the year?",
      }),
    ];
  });
}

function datesOf(record: unknown): string[] {
  const dates: string[] = [];
  eachValue(record, (value, path) => {
    if (path.at(-1) === "date" && typeof value === "string") dates.push(value);
  });
  return dates;
}

/** All that was weighed in [g]. */
export function weighedInG({ pigments, oil, additions = [] }: LotRecord): number {
  return [...pigments, ...(oil === undefined ? [] : [oil]), ...additions].reduce(
    (sum, { massG }) => sum + massG,
    0,
  );
}

function yieldFaults(lot: Parsed<LotRecord>): Diagnostic[] {
  const { yieldG, tubes = [], densityGPerCm3 } = lot.record;
  const weighed = weighedInG(lot.record);
  const found: Diagnostic[] = [];
  if (yieldG !== undefined && yieldG > weighed * MOST_YIELD) {
    const inKg = weighedInKg(lot.record, yieldG);
    found.push(
      at(lot, inKg?.path ?? ["yieldG"], {
        severity: "error",
        rule: "records/lot-yield",
        message: `The yield of ${yieldG} g is more than the ${grams(weighed)} g that were weighed in`,
        actual: String(yieldG),
        expected: `at most ${grams(weighed)}`,
        ...(inKg === undefined
          ? {}
          : { hint: `${grams(inKg.massG * 1000)} g, if ${grams(inKg.massG)} is in kg` }),
      }),
    );
  }
  if (yieldG !== undefined && yieldG < weighed * LEAST_YIELD)
    found.push(
      at(lot, ["yieldG"], {
        severity: "warning",
        rule: "records/lot-yield",
        message: `The yield of ${yieldG} g leaves ${Math.round((1 - yieldG / weighed) * 100)} % of the ${grams(weighed)} g that were weighed in`,
        actual: String(yieldG),
        expected: `at least ${grams(weighed * LEAST_YIELD)}`,
        hint: "a weight left out, or a digit exchanged?",
      }),
    );
  const filledG = tubes.reduce(
    (sum, { ml, count, massG }) => sum + count * (massG ?? ml * (densityGPerCm3 ?? 0)),
    0,
  );
  if (yieldG !== undefined && filledG > yieldG * (1 + TUBES_OVER_YIELD))
    found.push(
      at(lot, ["tubes"], {
        severity: "error",
        rule: "records/lot-tubes",
        message: `The tubes hold ${grams(filledG)} g together, and the yield is ${yieldG} g`,
        actual: grams(filledG),
        expected: `at most ${yieldG}`,
      }),
    );
  return found;
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
function recipeFaults(lot: Parsed<LotRecord>, { colours }: ParsedFiles): Diagnostic[] {
  const known = colours.get(lot.record.colour)?.record.pigments.map(({ pigment }) => pigment);
  if (known === undefined) return [];
  return lot.record.pigments.flatMap(({ pigment }, i): Diagnostic[] =>
    known.includes(pigment)
      ? []
      : [
          at(lot, ["pigments", i, "pigment"], {
            severity: "error",
            rule: "records/lot-recipe",
            message: `The colour ${lot.record.colour} is not made of ${pigment}`,
            actual: pigment,
            expected: known.join(" | "),
          }),
        ],
  );
}

function geometryFaults(lot: Lot, colour: Colour | undefined): Diagnostic[] {
  const standard = [colour?.masstone, ...(colour?.tints ?? []).map(({ reading }) => reading)].find(
    (reading) => reading !== undefined,
  );
  const standards = standard === undefined ? undefined : geometryOf(standard);
  if (standards === undefined) return [];
  const readings: readonly (readonly [RecordPath, Reading | undefined])[] = [
    [["masstone"], lot.masstone],
    ...lot.letDowns.map(({ reading }, i): readonly [RecordPath, Reading] => [
      ["tints", i],
      reading,
    ]),
    [["standard", "masstone"], lot.standard?.masstone],
    ...(lot.standard?.letDowns ?? []).map(({ reading }, i): readonly [RecordPath, Reading] => [
      ["standard", "tints", i],
      reading,
    ]),
  ];
  return readings.flatMap(([path, reading]): Diagnostic[] => {
    const own = reading === undefined ? undefined : geometryOf(reading);
    return own === undefined || own === standards
      ? []
      : [
          {
            severity: "error",
            rule: "records/lot-geometry",
            place: lot.place(path),
            message: `${path[0] === "standard" ? `The standard was read again ${own}, and before` : `The lot was read ${own}, and its standard`} ${standards}: the two can't be held against each other`,
            actual: own,
            expected: standards,
          },
        ];
  });
}

/** A let-down that the standard has none like tells nothing of strength. */
function letDownFaults(
  lot: Lot,
  colour: Colour | undefined,
  lots: ReadonlyMap<string, Lot>,
): Diagnostic[] {
  if (colour === undefined || colour.record.standard === lot.slug) return [];
  const retained = lots.get(colour.record.standard ?? "");
  const standards = [...(lot.standard?.letDowns ?? []), ...standardLetDowns(colour, retained)];
  const [first] = lot.letDowns;
  if (first === undefined || lot.letDowns.some((own) => standards.some((one) => isAlike(one, own))))
    return [];
  const inWhite = standards.filter(({ white }) => white === first.white);
  const has = [...new Set((inWhite.length > 0 ? inWhite : standards).map(letDownName))].join(", ");
  return [
    {
      severity: "warning",
      rule: "records/lot-let-down",
      place: lot.place(["tints", 0]),
      message: `The lot ${lot.record.number} is let down ${letDownName(first)} and its standard ${has === "" ? "not at all" : has}: its strength can't be judged, and the lot does not pass`,
      actual: letDownName(first),
      expected: has === "" ? "a let-down of the standard like it" : has,
    },
  ];
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

function standardFaults({ colours, lots }: ParsedFiles): Diagnostic[] {
  return [...colours.values()].flatMap((colour): Diagnostic[] => {
    const lot = colour.record.standard === undefined ? undefined : lots.get(colour.record.standard);
    return lot === undefined || lot.record.colour === colour.slug
      ? []
      : [
          at(colour, ["standard"], {
            severity: "error",
            rule: "records/lot-standard",
            message: `The standard ${lot.slug} is a lot of ${lot.record.colour}`,
            actual: lot.record.colour,
            expected: `a lot of ${colour.slug}`,
          }),
        ];
  });
}

function trialFaults(trial: Parsed<TrialRecord>, { lots }: ParsedFiles): Diagnostic[] {
  const { record } = trial;
  const [key, entries] =
    record.kind === "exposure"
      ? (["readings", record.readings] as const)
      : (["touched", record.touched] as const);
  const lot = record.lot === undefined ? undefined : lots.get(record.lot);
  const disordered = entries.findIndex(
    ({ date }, i) => date <= (entries[i - 1]?.date ?? "") || date < record.started,
  );
  const last = entries.at(-1)?.date ?? record.started;
  return [
    ...(disordered < 0
      ? []
      : [
          at(trial, [key, disordered, "date"], {
            severity: "error",
            rule: "records/trial-order",
            message: `The day ${entries[disordered]?.date ?? ""} does not come after ${entries[disordered - 1]?.date ?? record.started}`,
            actual: entries[disordered]?.date ?? "",
            expected: "days in order, none before the start",
          }),
        ]),
    ...(record.ended !== undefined && record.ended < last
      ? [
          at(trial, ["ended"], {
            severity: "error" as const,
            rule: "records/trial-order" as const,
            message: `The trial ended on ${record.ended}, and was read on ${last}`,
            actual: record.ended,
            expected: `${last} or later`,
          }),
        ]
      : []),
    ...(lot !== undefined && lot.record.colour !== record.colour
      ? [
          at(trial, ["lot"], {
            severity: "error" as const,
            rule: "records/trial-lot" as const,
            message: `The lot ${lot.slug} is one of ${lot.record.colour}`,
            actual: lot.record.colour,
            expected: `a lot of ${record.colour}`,
          }),
        ]
      : []),
  ];
}
