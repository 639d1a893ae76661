import { remembered } from "../quantities/remembered.ts";
import type { Records } from "../records/records.ts";
import type { ColourRecord } from "../records/schema/colour.ts";
import { isLightener } from "../sheet/colour-family.ts";
import type { PigmentRecord } from "../records/schema/pigment.ts";
import type { VehicleRecord } from "../records/schema/vehicle.ts";
import type { CitedSource } from "../sources/source.ts";
import { TRIED_RATIOS, triedColour } from "./tried-colour.ts";

/** In the place of the key that the workshop gives to what its supplier sent. */
const SUPPLIER_PAPER = "SUPPLIER-PAPER" as CitedSource;

export type MeasuredKind = "pigment" | "vehicle" | "colour";

/** Something that a workshop can find out and has not written down. */
export interface Measurement {
  readonly kind: MeasuredKind;
  readonly slug: string;
  readonly key: MeasurementKey;
  /** The records as they would be with a plausible value in them; made when they are asked for, since few of a large range are. */
  readonly tried: () => Records;
  /** Whether K and S have to be fitted anew. */
  readonly refits: boolean;
}

/** What is written down, which hands it takes [h], and whether it is wanted. */
interface Form<R> {
  /** Hands, not waiting: a drying trial takes minutes on several days. Common practice of our own, to be put right by who does it. */
  readonly hours: number;
  /** What the record would have then, with figures that stand for whatever is found: any in reach clear the same lines. */
  readonly written: (date: string) => Partial<R>;
  /** As it is printed, where that is more than `written`. */
  readonly line?: string;
  /** Where it is not by a key of `written` that the record has not. */
  readonly isWanted?: (record: R, records: Records, slug: string) => boolean;
  /** What it is tried with, where that goes by the record. */
  readonly tried?: (record: R, records: Records) => Partial<R>;
  readonly refits?: true;
}

/** The day of what is tried. */
const DATE = "2000-01-01";

const HAZARDS: Form<Pick<PigmentRecord & VehicleRecord, "hazards" | "components">> = {
  hours: 0.5,
  written: () => ({ hazards: [] }),
  line: "hazards: []   # or each statement of its safety data sheet, section 2",
  isWanted: ({ hazards, components }) => hazards === undefined && components === undefined,
};

const PIGMENT = {
  densityGPerCm3: {
    hours: 1,
    written: (date) => ({ densityGPerCm3: { value: 3.2, method: "pycnometer", date } }),
  },
  oilAbsorptionGPer100g: {
    hours: 1,
    written: (date) => ({ oilAbsorptionGPer100g: { value: 30, method: "ISO 787-5", date } }),
  },
  bulkDensities: {
    hours: 0.5,
    written: () => ({ bulkDensityLooseGPerMl: 0.4, bulkDensityTappedGPerMl: 0.7 }),
    // Pouring and tapping raises dust, for what a bag or a jar of the powder holds: of no use where none is sold.
    isWanted: ({ bulkDensityLooseGPerMl: loose, bulkDensityTappedGPerMl: tapped, soldDry }) =>
      soldDry === true && (loose === undefined || tapped === undefined),
    // Far enough apart for either to agree with the other as it is recorded.
    tried: ({ bulkDensityLooseGPerMl: loose, bulkDensityTappedGPerMl: tapped }) => ({
      bulkDensityLooseGPerMl: loose ?? 0.2,
      bulkDensityTappedGPerMl: tapped ?? 0.9,
    }),
  },
  lightfastness: {
    hours: 0.25,
    written: () => ({
      lightfastness: { blueWool: 7, form: "masstone", source: SUPPLIER_PAPER },
    }),
  },
  hazards: HAZARDS,
} satisfies Readonly<Record<string, Form<PigmentRecord>>>;

const VEHICLE = {
  densityGPerCm3: {
    hours: 0.5,
    written: (date) => ({ densityGPerCm3: { value: 0.93, method: "weighed in a measure", date } }),
  },
  hazards: HAZARDS,
} satisfies Readonly<Record<string, Form<VehicleRecord>>>;

const COLOUR = {
  parts: {
    hours: 0.25,
    written: () => ({}),
    line: "pigments: [{ pigment: NAME, parts: 3 }, { pigment: NAME, parts: 1 }]",
    isWanted: ({ pigments }) => pigments.length > 1 && pigments[0]?.parts === undefined,
    tried: ({ pigments }) => ({ pigments: pigments.map((part) => ({ ...part, parts: 1 })) }),
  },
  oilIndexGPer100g: {
    hours: 0.25,
    written: (date) => ({ oilIndexGPer100g: { value: 40, method: "batch book", date } }),
  },
  masstone: {
    hours: 1,
    written: () => ({ masstone: { reading: "FILE", column: "masstone" } }),
    refits: true,
  },
  tints: {
    hours: 3,
    written: () => ({ tints: letDownIn("WHITE") }),
    isWanted: ({ tints, masstone }, records, slug) => {
      const [white, colour] = [usualWhite(records), records.colours.get(slug)];
      // A white let down in another tells of neither: what wants letting down in it is a dark colour.
      if (colour === undefined || isLightener(colour, records)) return false;
      return tints === undefined && masstone !== undefined && white !== undefined && white !== slug;
    },
    tried: (_, records) => ({ tints: letDownIn(usualWhite(records) ?? "") }),
    refits: true,
  },
  films: {
    hours: 1.5,
    written: () => ({
      films: (["black", "white"] as const).map((ground) => ({
        ground,
        filmThicknessUm: 50,
        reading: "FILE",
        column: `film on ${ground}`,
      })),
    }),
    isWanted: ({ films, masstone }) => films === undefined && masstone !== undefined,
    refits: true,
  },
  dryingTrials: {
    hours: 1,
    written: (date) => ({
      dryingTrials: [
        {
          touchDryDays: 6,
          throughDryDays: 20,
          filmThicknessUm: 75,
          temperatureC: 20,
          humidityPercent: 50,
          date,
        },
      ],
    }),
    isWanted: ({ dryingTrials }, records, slug) =>
      dryingTrials === undefined && !isOnTrial("drying", slug, records),
  },
  exposures: {
    hours: 2,
    written: (date) => ({
      exposures: (["masstone", "tint"] as const).map((form) => ({
        deltaEab: 2,
        form,
        standard: "after ASTM D4303",
        exposure: "window, under glass, 12 months",
        date,
      })),
    }),
    isWanted: ({ exposures }, records, slug) =>
      exposures === undefined && !isOnTrial("exposure", slug, records),
  },
  gloss60: {
    hours: 0.25,
    written: (date) => ({ gloss60: { value: 45, method: "ISO 2813", date } }),
  },
  finenessOfGrindUm: { hours: 0.25, written: () => ({ finenessOfGrindUm: 20 }) },
  bodyAndSeparation: {
    hours: 0.25,
    written: () => ({ body: "short", oilSeparation: "none" }),
    tried: ({ body = "short", oilSeparation = "none" }) => ({ body, oilSeparation }),
  },
} satisfies Readonly<Record<string, Form<ColourRecord>>>;

function letDownIn(white: string): NonNullable<ColourRecord["tints"]> {
  return TRIED_RATIOS.map(([colour, whiteParts]) => ({
    white,
    massRatio: `${colour}:${whiteParts}`,
    ratioKind: "paint",
    reading: "FILE",
    column: `${colour}:${whiteParts}`,
  }));
}

/** Measurements for which a powder is handled by itself, poured or ground. */
export const OF_A_POWDER: ReadonlySet<MeasurementKey> = new Set([
  "bulkDensities",
  "densityGPerCm3",
  "oilAbsorptionGPer100g",
]);

export type MeasurementKey = keyof typeof PIGMENT | keyof typeof VEHICLE | keyof typeof COLOUR;

export function workHours({ kind, key }: Pick<Measurement, "kind" | "key">): number {
  return formOf(kind, key).hours;
}

/** What is to be written into the record, DATE and NAME standing for what belongs there. */
export function recordLine({ kind, key }: Pick<Measurement, "kind" | "key">): string {
  const { line, written } = formOf(kind, key);
  return line ?? asWritten(written("DATE"));
}

/** As a record has it: a key a line, each of several by itself. */
function asWritten(patch: object): string {
  return Object.entries(patch)
    .flatMap(([key, value]: [string, unknown]) =>
      Array.isArray(value)
        ? [`${key}:`, ...value.map((one) => `  - ${inLine(one)}`)]
        : `${key}: ${inLine(value)}`,
    )
    .join("\n");
}

function inLine(value: unknown): string {
  if (typeof value === "object" && value !== null)
    return `{ ${Object.entries(value)
      .map(([key, part]) => `${key}: ${inLine(part)}`)
      .join(", ")} }`;
  return typeof value === "string" && /[,:]/.test(value) ? JSON.stringify(value) : String(value);
}

/** Parts of the paths that a line which is not stated asks for, where they are others than the key. */
const ASKED: Partial<Readonly<Record<MeasurementKey, readonly string[]>>> = {
  bulkDensities: ["bulkDensityLooseGPerMl", "bulkDensityTappedGPerMl"],
  bodyAndSeparation: ["body", "oilSeparation"],
};

/** Whether what a line asks for, `colours.bone-black.films`, is this measurement. */
export function isAskedFor({ kind, slug, key }: Measurement, wanting: string): boolean {
  const [group, name, ...rest] = wanting.split(".");
  const asked = ASKED[key] ?? [key];
  if (key === "parts") return rest[0] === "parts";
  return group === `${kind}s` && name === slug && asked.includes(rest[0] ?? "");
}

/** Whether it is being tried already: what comes of that falls due by itself. */
function isOnTrial(
  kind: "drying" | "exposure",
  colour: string,
  { trials }: Pick<Records, "trials">,
): boolean {
  return [...trials.values()].some(
    ({ record }) => record.kind === kind && record.colour === colour,
  );
}

/** Last part of the path of the figure that a measurement gives, where it is another than the key. */
const GIVES: Partial<Readonly<Record<MeasurementKey, string>>> = { dryingTrials: "touchDryDays" };

/** Whether a figure of a sheet, by its path, is what this measurement gives. */
export function isGivenBy({ kind, slug, key }: Measurement, path: string): boolean {
  return (
    path.endsWith(`.${GIVES[key] ?? key}`) &&
    (kind !== "pigment" || path === `pigments.${slug}.${key}`)
  );
}

const GIVEN: ReadonlySet<string> = new Set(
  [PIGMENT, VEHICLE, COLOUR]
    .flatMap((forms) => Object.keys(forms) as MeasurementKey[])
    .map((key) => GIVES[key] ?? key),
);

/** Whether any measurement gives a figure of a sheet, by its path. */
export function mayBeGiven(path: string): boolean {
  return GIVEN.has(path.slice(path.lastIndexOf(".") + 1));
}

type PrintedForm = Pick<Form<object>, "hours" | "line" | "written">;

function formOf(kind: MeasuredKind, key: MeasurementKey): PrintedForm {
  const forms: Readonly<Record<string, PrintedForm>> = {
    pigment: PIGMENT,
    vehicle: VEHICLE,
    colour: COLOUR,
  }[kind];
  const form = forms[key];
  if (form === undefined)
    throw new RangeError(`The measurement is ${key}; right would be one of a ${kind}`);
  return form;
}

/** Everything that the records of a range lack and a workshop can find out. */
export function possibleMeasurements(records: Records): Measurement[] {
  return [
    ...[...records.pigments].flatMap(([slug, one]) =>
      measurements("pigment", PIGMENT, slug, one.record, records, (patch) => ({
        ...records,
        pigments: new Map(records.pigments).set(slug, {
          ...one,
          record: { ...one.record, ...patch },
        }),
      })),
    ),
    ...[...records.vehicles].flatMap(([slug, one]) =>
      measurements<VehicleRecord>("vehicle", VEHICLE, slug, one.record, records, (patch) => ({
        ...records,
        vehicles: new Map(records.vehicles).set(slug, {
          ...one,
          record: { ...one.record, ...patch },
        }),
      })),
    ),
    ...[...records.colours].flatMap(([slug, one]) =>
      one.record.discontinued === undefined
        ? measurements("colour", COLOUR, slug, one.record, records, (patch) => ({
            ...records,
            colours: new Map(records.colours).set(slug, triedColour(one, patch, records)),
          }))
        : [],
    ),
  ];
}

function measurements<R extends object>(
  kind: MeasuredKind,
  forms: Readonly<Record<string, Form<R>>>,
  slug: string,
  record: R,
  records: Records,
  put: (patch: Partial<R>) => Records,
): Measurement[] {
  return Object.entries(forms).flatMap(([key, form]): Measurement[] => {
    const { written, isWanted = lacks(written), refits = false } = form;
    if (!isWanted(record, records, slug)) return [];
    // Asked for anew by whoever tries it, who has read what it goes by then.
    const tried = (): Records =>
      put(isWanted(record, records, slug) ? triedPatch(form, record, records) : {});
    return [{ kind, slug, key: key as MeasurementKey, tried, refits }];
  });
}

function lacks<R extends object>(written: Form<R>["written"]): (record: R) => boolean {
  const keys = Object.keys(written(DATE)) as (keyof R)[];
  return (record) => keys.some((key) => record[key] === undefined);
}

function triedPatch<R>({ written, tried }: Form<R>, record: R, records: Records): Partial<R> {
  return tried === undefined ? written(DATE) : tried(record, records);
}

/** The white that most colours are let down in. */
const usualWhite = remembered(({ colours }: Records): string | undefined => {
  const counts = new Map<string, number>();
  for (const { record } of colours.values())
    for (const white of new Set((record.tints ?? []).map((tint) => tint.white)))
      counts.set(white, (counts.get(white) ?? 0) + 1);
  return [...counts].sort(
    ([one, many], [other, more]) => more - many || (one < other ? -1 : 1),
  )[0]?.[0];
});
