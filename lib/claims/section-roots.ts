import type { Colour, Records } from "../records/records.ts";
import { readingStem } from "../records/readings/reading-stem.ts";
import type { ColourRecord } from "../records/schema/colour.ts";
import type { ReadingForm } from "../records/schema/reading-form.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { RecordRoot } from "./record-roots.ts";

interface Place {
  readonly colour: Colour;
  readonly records: Records;
  readonly sheet: Sheet | undefined;
  /** What the form of the path caught: a pigment, a white, a ratio. */
  readonly names: readonly string[];
}

type Roots = (place: Place) => Iterable<RecordRoot>;

/** By the form of a path, the first that fits: what stands behind a figure beside the inputs that its evidence names. */
const SECTIONS: readonly (readonly [RegExp, Roots])[] = [
  [/^pigments\.([^.]+)\.massFraction$/, ({ colour }) => own(colour, "pigments")],
  [/^pigments\.([^.]+)\./, ({ names: [slug = ""] }) => [{ kind: "pigment", slug }]],
  [/^pigments$/, ({ colour }) => own(colour, "pigments")],
  [
    /^vehicle\b/,
    ({ colour, records }) => [...own(colour, "vehicle"), ...vehicles(colour, records, false)],
  ],
  [
    /^additions\.([^.]+)\./,
    ({ colour, names: [slug = ""] }) => [...own(colour, "additions"), { kind: "vehicle", slug }],
  ],
  [/^notations\b/, ({ colour }) => masstone(colour)],
  [/^tints\.([^.]+)\.steps\.(.+)\.(?:lab|munsell|srgb|displayP3|oklch)\b/, stepRoots],
  [/^tints\.[^.]+\.strengthParts\b/, () => []],
  [/^tints\b/, ({ colour, records }) => drawdowns(colour, records)],
  [
    /^optics\.tintingStrength/,
    ({ colour, records }) => [
      ...drawdowns(colour, records),
      ...drawdowns(reference(records), records),
      WORKSHOP,
    ],
  ],
  [/^optics\.fit\b/, ({ colour, records }) => drawdowns(colour, records)],
  [
    /^optics\.dispersion\b/,
    ({ colour, records, sheet }) => [
      ...drawdowns(colour, records),
      ...drawdowns(records.colours.get(sheet?.optics.dispersion?.other.slug ?? ""), records),
    ],
  ],
  [/^optics\.gloss\b/, ({ colour }) => masstone(colour)],
  [/^optics\.extender\b/, extenderRoots],
  [/^optics\.scatteringPower$/, scatteringRoots],
  [/^optics\b/, ({ colour, records }) => films(colour, records)],
  [/^mixture\.components\b/, () => []],
  [/^mixture\b.*\.singleBlack\b/, singleBlackRoots],
  [/^mixture\b/, mixtureRoots],
  [/^oil\.(oilIndexGPer100g|finenessOfGrindUm|gloss60|body|oilSeparation)$/, recordedOil],
  [/^oil\.finish$/, ({ colour }) => own(colour, "gloss60")],
  [
    /^oil\b/,
    ({ colour }) => [...own(colour, "dispersion", "finenessOfGrindUm"), ...pigments(colour)],
  ],
  [
    /^drying\.inWhites\.([^.]+)/,
    ({ colour, records, names: [white = ""] }) => [
      ...dryingRoots(colour, records),
      ...dryingRoots(paintOfWhite(white, records), records),
    ],
  ],
  [/^drying\b/, ({ colour, records }) => dryingRoots(colour, records)],
  [
    /^permanence\b/,
    ({ colour }) => [...own(colour, "exposures", "lightfastness"), ...pigments(colour)],
  ],
  [/^cautions\b/, ({ colour, records }) => cautionRoots(colour, records)],
  [/^batch\b/, ({ colour }) => [...own(colour, "sizes"), ...pigments(colour)]],
  [/^offer\b/, ({ colour }) => [...own(colour, "sizes", "legalBasis"), WORKSHOP]],
];

const WORKSHOP: RecordRoot = { kind: "workshop", slug: "workshop" };

/** The records behind the section that a path of a colour's sheet stands in; a path of no known form rests on the colour's record. */
export function sectionRoots(
  figure: string,
  colour: Colour,
  records: Records,
  sheet: Sheet | undefined,
): Iterable<RecordRoot> {
  for (const [form, roots] of SECTIONS) {
    const names = form.exec(figure);
    if (names !== null) return roots({ colour, records, sheet, names: names.slice(1) });
  }
  return [{ kind: "colour", slug: colour.slug }];
}

function own({ slug, record }: Colour, ...fields: (keyof ColourRecord)[]): RecordRoot[] {
  const recorded = fields.filter((field) => record[field] !== undefined);
  return recorded.length === 0
    ? [{ kind: "colour", slug }]
    : recorded.map((field) => ({ kind: "colour", slug, field }));
}

function readings(forms: readonly (ReadingForm | undefined)[] = []): RecordRoot[] {
  return forms.flatMap((form) =>
    form !== undefined && "reading" in form
      ? [{ kind: "reading" as const, slug: readingStem(form.reading) }]
      : [],
  );
}

function masstone(colour: Colour): RecordRoot[] {
  return [...own(colour, "masstone"), ...readings([colour.record.masstone])];
}

/** A measured step rests on its own drawdown, a predicted one on all that the fit took in. */
function stepRoots({ colour, records, names: [white, ratio] }: Place): RecordRoot[] {
  const measured = colour.record.tints?.find(
    (tint) => tint.white === white && tint.massRatio === ratio,
  );
  return measured === undefined
    ? drawdowns(colour, records)
    : [...own(colour, "tints"), ...readings([measured])];
}

/** All drawdowns of a colour and the masstones of its whites: K and S are fitted to them at once. */
function drawdowns(colour: Colour | undefined, records: Records): RecordRoot[] {
  if (colour === undefined) return [];
  const whites = new Set((colour.record.tints ?? []).map(({ white }) => white));
  return [
    ...masstone(colour),
    ...own(colour, "tints"),
    ...readings(colour.record.tints),
    ...[...whites].flatMap((white) => {
      const paint = paintOfWhite(white, records);
      return paint === undefined ? [] : masstone(paint);
    }),
  ];
}

/** As recorded; an oil index that is not follows from the pigments and how they were ground. */
function recordedOil({ colour, names: [field] }: Place): RecordRoot[] {
  const key = field as keyof ColourRecord;
  return colour.record[key] === undefined
    ? [...own(colour, "dispersion", "finenessOfGrindUm"), ...pigments(colour)]
    : own(colour, key);
}

/** Films over black and white, with the chart that they were drawn down on. */
function films(colour: Colour, { workshop }: Records): RecordRoot[] {
  const chart =
    workshop.grounds === undefined
      ? []
      : [WORKSHOP, ...readings([workshop.grounds.black, workshop.grounds.white])];
  return [...masstone(colour), ...own(colour, "films"), ...readings(colour.record.films), ...chart];
}

function reference({ colours, workshop }: Records): Colour | undefined {
  return colours.get(workshop.strengthReference ?? "");
}

/** The medium by its films, the strength reference by its let-downs and density, its whites by their films and densities. */
function extenderRoots({ colour, records }: Place): RecordRoot[] {
  const strong = reference(records);
  const whites = new Set((strong?.record.tints ?? []).map(({ white }) => white));
  return [
    ...films(colour, records),
    ...drawdowns(strong, records),
    ...[...whites].flatMap((white) => {
      const paint = paintOfWhite(white, records);
      return paint === undefined
        ? []
        : [
            ...films(paint, records),
            ...madeFrom(paint, records),
            ...own(paint, "oilIndexGPer100g"),
          ];
    }),
    ...(strong === undefined
      ? []
      : [...madeFrom(strong, records), ...own(strong, "oilIndexGPer100g")]),
    WORKSHOP,
  ];
}

/** A colour by its own films, or by its let-downs and density in whites of which films and density are known. */
function scatteringRoots({ colour, records }: Place): RecordRoot[] {
  const whites = new Set((colour.record.tints ?? []).map(({ white }) => white));
  const paints = [...whites].flatMap((white) => paintOfWhite(white, records) ?? []);
  return [
    ...drawdowns(colour, records),
    ...[colour, ...paints].flatMap((paint) => [
      ...films(paint, records),
      ...madeFrom(paint, records),
      ...own(paint, "oilIndexGPer100g"),
    ]),
  ];
}

/** The paints of its single pigments, and the mixture's own let-downs that they are held against. */
function mixtureRoots({ colour, records, sheet }: Place): RecordRoot[] {
  return mixed(
    [colour.slug, ...(sheet?.mixture?.components ?? []).flatMap(({ paint }) => paint?.slug ?? [])],
    records,
  );
}

function singleBlackRoots({ records, sheet }: Place): RecordRoot[] {
  return mixed(
    (sheet?.mixture?.whites ?? []).flatMap(({ singleBlack }) => singleBlack?.slug ?? []),
    records,
  );
}

function mixed(paints: readonly string[], records: Records): RecordRoot[] {
  return [...new Set(paints)].flatMap((slug) => {
    const paint = records.colours.get(slug);
    return paint === undefined
      ? []
      : [...drawdowns(paint, records), ...own(paint, "pigments", "oilIndexGPer100g")];
  });
}

/** The paint of a white that tints name by its own slug or by its pigment's. */
export function paintOfWhite(slug: string, { colours }: Records): Colour | undefined {
  return (
    colours.get(slug) ??
    [...colours.values()].find(
      ({ record }) => record.pigments.length === 1 && record.pigments[0]?.pigment === slug,
    )
  );
}

function pigments({ record }: Colour): RecordRoot[] {
  return record.pigments.map(({ pigment: slug }) => ({ kind: "pigment", slug }));
}

function vehicles({ record }: Colour, { workshop }: Records, withAdditions = true): RecordRoot[] {
  const oil = record.vehicle ?? workshop.vehicle;
  return [
    ...(oil === undefined ? [] : [oil]),
    ...(withAdditions ? (record.additions ?? []).map(({ vehicle }) => vehicle) : []),
  ].map((slug) => ({ kind: "vehicle", slug }));
}

function dryingRoots(colour: Colour | undefined, records: Records): RecordRoot[] {
  if (colour === undefined) return [];
  return [
    ...own(colour, "dryingTrials", "additions", "pigments", "oilIndexGPer100g"),
    ...madeFrom(colour, records),
  ];
}

function cautionRoots(colour: Colour, records: Records): RecordRoot[] {
  const classified = [
    ...colour.record.pigments.map(({ pigment }) => records.pigments.get(pigment)?.record),
    ...vehicles(colour, records).map(({ slug }) => records.vehicles.get(slug)?.record),
  ];
  const sources = classified.flatMap((record) =>
    (record?.hazards ?? []).flatMap((hazard) =>
      typeof hazard === "string" || hazard.source === undefined ? [] : [hazard.source],
    ),
  );
  return [
    ...own(colour, "label", "legalBasis", "pigments", "additions"),
    ...madeFrom(colour, records),
    WORKSHOP,
    ...sources.map((slug) => ({ kind: "source" as const, slug })),
  ];
}

/** What a paint is made from: when one of them changes, everything about it is to be looked at again. */
export function madeFrom(colour: Colour, records: Records): RecordRoot[] {
  return [...pigments(colour), ...vehicles(colour, records)];
}
