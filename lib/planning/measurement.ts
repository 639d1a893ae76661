import { remembered } from "../quantities/remembered.ts";
import type { Records } from "../records/records.ts";
import type { ColourRecord } from "../records/schema/colour.ts";
import { isLightener } from "../sheet/colour-family.ts";
import type { PigmentRecord } from "../records/schema/pigment.ts";
import type { VehicleRecord } from "../records/schema/vehicle.ts";
import { TRIED_RATIOS, triedColour } from "./tried-colour.ts";

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

/** What is written, which hands it takes [h], and the value that it is tried with. */
interface Form<R> {
  /** Hands, not waiting: a drying trial takes minutes on several days. Common practice of our own, to be put right by who does it. */
  readonly hours: number;
  /** The line of the record, with figures that stand for whatever is found. */
  readonly line: string;
  /** Undefined where the record has it already. */
  readonly value: (record: R, records: Records, slug: string) => Partial<R> | undefined;
  readonly refits?: true;
}

const DATE = "2000-01-01";

const HAZARDS: Form<Pick<PigmentRecord & VehicleRecord, "hazards" | "components">> = {
  hours: 0.5,
  line: "hazards: []   # or each statement of its safety data sheet, section 2",
  value: ({ hazards, components }) =>
    hazards === undefined && components === undefined ? { hazards: [] } : undefined,
};

const PIGMENT = {
  densityGPerCm3: {
    hours: 1,
    line: "densityGPerCm3: { value: 3.2, method: pycnometer, date: DATE }",
    value: ({ densityGPerCm3, colourIndexName }) =>
      densityGPerCm3 === undefined
        ? { densityGPerCm3: { value: densityOf(colourIndexName), method: "tried", date: DATE } }
        : undefined,
  },
  oilAbsorptionGPer100g: {
    hours: 1,
    line: "oilAbsorptionGPer100g: { value: 30, method: ISO 787-5, date: DATE }",
    value: ({ oilAbsorptionGPer100g }) =>
      oilAbsorptionGPer100g === undefined
        ? { oilAbsorptionGPer100g: { value: 30, method: "ISO 787-5", date: DATE } }
        : undefined,
  },
  bulkDensities: {
    hours: 0.5,
    line: "bulkDensityLooseGPerMl: 0.4\nbulkDensityTappedGPerMl: 0.7",
    // Pouring and tapping raises dust, for what a bag or a jar of the powder holds: of no use where none is sold.
    value: ({ bulkDensityLooseGPerMl: loose, bulkDensityTappedGPerMl: tapped, soldDry }) =>
      soldDry === true && (loose === undefined || tapped === undefined)
        ? { bulkDensityLooseGPerMl: loose ?? 0.2, bulkDensityTappedGPerMl: tapped ?? 0.9 }
        : undefined,
  },
  lightfastness: {
    hours: 0.25,
    line: "lightfastness: { blueWool: 7, form: masstone, source: SUPPLIER-PAPER }",
    value: ({ lightfastness }) =>
      lightfastness === undefined
        ? { lightfastness: { blueWool: 7, form: "masstone" } }
        : undefined,
  },
  hazards: HAZARDS,
} satisfies Readonly<Record<string, Form<PigmentRecord>>>;

const VEHICLE = {
  densityGPerCm3: {
    hours: 0.5,
    line: "densityGPerCm3: { value: 0.93, method: weighed in a measure, date: DATE }",
    value: ({ densityGPerCm3 }) =>
      densityGPerCm3 === undefined
        ? { densityGPerCm3: { value: 0.93, method: "tried", date: DATE } }
        : undefined,
  },
  hazards: HAZARDS,
} satisfies Readonly<Record<string, Form<VehicleRecord>>>;

const COLOUR = {
  parts: {
    hours: 0.25,
    line: "pigments: [{ pigment: NAME, parts: 3 }, { pigment: NAME, parts: 1 }]",
    value: ({ pigments }) =>
      pigments.length > 1 && pigments[0]?.parts === undefined
        ? { pigments: pigments.map((part) => ({ ...part, parts: 1 })) }
        : undefined,
  },
  oilIndexGPer100g: {
    hours: 0.25,
    line: "oilIndexGPer100g: { value: 40, method: batch book, date: DATE }",
    value: ({ oilIndexGPer100g }) =>
      oilIndexGPer100g === undefined
        ? { oilIndexGPer100g: { value: 45, method: "batch book", date: DATE } }
        : undefined,
  },
  masstone: {
    hours: 1,
    line: "masstone: { reading: FILE, column: masstone }",
    value: ({ masstone }) =>
      masstone === undefined ? { masstone: { reading: "tried", column: "tried" } } : undefined,
    refits: true,
  },
  tints: {
    hours: 3,
    line: 'tints:\n  - { white: WHITE, massRatio: "1:1", ratioKind: paint, reading: FILE, column: "1:1" }\n  - { white: WHITE, massRatio: "1:5", ratioKind: paint, reading: FILE, column: "1:5" }\n  - { white: WHITE, massRatio: "1:20", ratioKind: paint, reading: FILE, column: "1:20" }',
    value: ({ tints, masstone }, records, slug) => {
      const [white, colour] = [usualWhite(records), records.colours.get(slug)];
      // A white let down in another tells of neither: what wants letting down in it is a dark colour.
      if (colour === undefined || isLightener(colour, records)) return undefined;
      return tints === undefined && masstone !== undefined && white !== undefined && white !== slug
        ? {
            tints: TRIED_RATIOS.map(([colour, whiteParts]) => ({
              white,
              massRatio: `${colour}:${whiteParts}`,
              ratioKind: "paint" as const,
              reading: "tried",
              column: "tried",
            })),
          }
        : undefined;
    },
    refits: true,
  },
  films: {
    hours: 1.5,
    line: "films:\n  - { ground: black, filmThicknessUm: 50, reading: FILE, column: film on black }\n  - { ground: white, filmThicknessUm: 50, reading: FILE, column: film on white }",
    value: ({ films, masstone }) =>
      films === undefined && masstone !== undefined
        ? {
            films: (["black", "white"] as const).map((ground) => ({
              ground,
              filmThicknessUm: 50,
              reading: "tried",
              column: "tried",
            })),
          }
        : undefined,
    refits: true,
  },
  dryingTrials: {
    hours: 1,
    line: "dryingTrials:\n  - { touchDryDays: 6, throughDryDays: 20, filmThicknessUm: 75, temperatureC: 20, humidityPercent: 50, date: DATE }",
    value: ({ dryingTrials }, records, slug) =>
      dryingTrials === undefined && !isOnTrial("drying", slug, records)
        ? {
            dryingTrials: [
              {
                touchDryDays: 6,
                throughDryDays: 20,
                filmThicknessUm: 75,
                temperatureC: 20,
                humidityPercent: 50,
                date: DATE,
              },
            ],
          }
        : undefined,
  },
  exposures: {
    hours: 2,
    line: 'exposures:\n  - { deltaEab: 2, form: masstone, standard: after ASTM D4303, exposure: "window, under glass, 12 months", date: DATE }\n  - { deltaEab: 2, form: tint, standard: after ASTM D4303, exposure: "window, under glass, 12 months", date: DATE }',
    value: ({ exposures }, records, slug) =>
      exposures === undefined && !isOnTrial("exposure", slug, records)
        ? {
            exposures: (["masstone", "tint"] as const).map((form) => ({
              deltaEab: 2,
              form,
              standard: "after ASTM D4303",
              exposure: "tried",
              date: DATE,
            })),
          }
        : undefined,
  },
  gloss60: {
    hours: 0.25,
    line: "gloss60: { value: 45, method: ISO 2813, date: DATE }",
    value: ({ gloss60 }) =>
      gloss60 === undefined
        ? { gloss60: { value: 45, method: "ISO 2813", date: DATE } }
        : undefined,
  },
  finenessOfGrindUm: {
    hours: 0.25,
    line: "finenessOfGrindUm: 20",
    value: ({ finenessOfGrindUm }) =>
      finenessOfGrindUm === undefined ? { finenessOfGrindUm: 20 } : undefined,
  },
  bodyAndSeparation: {
    hours: 0.25,
    line: "body: short\noilSeparation: none",
    value: ({ body, oilSeparation }) =>
      body === undefined || oilSeparation === undefined
        ? { body: body ?? "short", oilSeparation: oilSeparation ?? "none" }
        : undefined,
  },
} satisfies Readonly<Record<string, Form<ColourRecord>>>;

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
  return formOf(kind, key).line;
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

function formOf(kind: MeasuredKind, key: MeasurementKey): Pick<Form<unknown>, "hours" | "line"> {
  const forms: Readonly<Record<string, Pick<Form<unknown>, "hours" | "line">>> = {
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
      measurements("vehicle", VEHICLE, slug, one.record, records, (patch) => ({
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

function measurements<R>(
  kind: MeasuredKind,
  forms: Readonly<Record<string, Form<R>>>,
  slug: string,
  record: R,
  records: Records,
  put: (patch: Partial<R>) => Records,
): Measurement[] {
  return Object.entries(forms).flatMap(([key, { value, refits = false }]): Measurement[] => {
    const patch = (): Partial<R> | undefined => value(record, records, slug);
    if (patch() === undefined) return [];
    // Asked for anew by whoever tries it, who has read what it goes by then.
    const tried = (): Records => put(patch() ?? {});
    return [{ kind, slug, key: key as MeasurementKey, tried, refits }];
  });
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

/** Of a white as of titanium dioxide, of others as of most [g/cm3]: any value in reach clears the same lines. */
function densityOf(colourIndexName: string | undefined): number {
  return colourIndexName?.startsWith("PW") === true ? 4 : 3;
}
