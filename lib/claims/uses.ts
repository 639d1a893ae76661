import type { Records } from "../records/records.ts";
import { isOffered } from "../sheet/handling/offer-section.ts";
import { readingRecords } from "../sheet/record-inputs.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { figureEntries } from "../sheet/figure-entries.ts";
import { pathParts } from "./figure-index.ts";
import type { HeldAnswer } from "./held-claims.ts";
import type { RootKind, RootsOf } from "./record-roots.ts";
import { given } from "../quantities/given.ts";

/** What can change under a sheet: a record of one of these kinds, by its file name. */
export interface UsedRecord {
  readonly kind: Exclude<RootKind, "workshop" | "lot">;
  readonly slug: string;
}

/** One colour that rests on a record, and what of its sheet does. */
export interface ColourUse {
  readonly slug: string;
  readonly name: string;
  /** Sections with a figure or label that rests on it: "tints", "oil". */
  readonly sections: readonly string[];
  readonly isMixture: boolean;
  /** Whether a shelf card tells of it: every colour that may be sold has one. */
  readonly hasCard: boolean;
}

/** All that has to be looked at again when a record changes. */
export interface Uses {
  readonly record: UsedRecord;
  readonly colours: readonly ColourUse[];
  /** Answers that rest on it: by claims, each by its number from 1, or by figures that their text, pictures or reply show. */
  readonly answers: readonly { readonly slug: string; readonly claims: readonly number[] }[];
}

/** Records of this name: a slug may name a pigment and the colour made of it, which are two things. */
export function recordsNamed(slug: string, records: Records): UsedRecord[] {
  return namedRecords(records).filter((record) => record.slug === slug);
}

/** Everything that a sheet may rest on, by kind and file name. */
export function namedRecords({
  colours,
  pigments,
  vehicles,
  sources,
  workshop,
}: Records): UsedRecord[] {
  const forms = [...colours.values()].flatMap(({ record }) => [
    record.masstone,
    ...(record.tints ?? []),
    ...(record.films ?? []),
  ]);
  const read = new Set(
    readingRecords([...forms, workshop.grounds?.black, workshop.grounds?.white]).map(
      ({ slug }) => slug,
    ),
  );
  const rooms = [
    ["colour", colours.keys()],
    ["pigment", pigments.keys()],
    ["vehicle", vehicles.keys()],
    ["reading", read],
    ["source", sources.keys()],
  ] as const;
  return rooms.flatMap(([kind, slugs]) => [...slugs].map((slug) => ({ kind, slug })));
}

/** An answer with the paths, colour first, of what it shows beside its claims. */
export interface ShownAnswer extends HeldAnswer {
  readonly shown: readonly string[];
}

/** Every colour, answer, claim and card that rests on a record. */
export function usesOf(
  record: UsedRecord,
  sheets: readonly Sheet[],
  answers: readonly ShownAnswer[],
  rootsOf: RootsOf,
): Uses {
  const rests = restsOn(record, sheets, rootsOf);
  const colours = sheets.flatMap((sheet): ColourUse[] => {
    const sections = sectionsOn(sheet, rests);
    if (sections.length === 0) return [];
    return [
      {
        slug: sheet.slug,
        name: sheet.name,
        sections,
        isMixture: sheet.pigments.length > 1,
        hasCard: isOffered(sheet.cautions),
      },
    ];
  });
  return {
    record,
    colours,
    answers: answers.flatMap(({ answer: { slug }, claims, shown }) => {
      const resting = claims.flatMap((held, i) => (held.paths.some(rests) ? [i + 1] : []));
      return resting.length > 0 || shown.some(rests) ? [{ slug, claims: resting }] : [];
    }),
  };
}

/** By what a path rests on; and with another pigment, oil or drier all of a paint that is made from it is to be read again. */
function restsOn(
  record: UsedRecord,
  sheets: readonly Sheet[],
  rootsOf: RootsOf,
): (path: string) => boolean {
  const made = new Set(
    sheets
      .filter((sheet) => ingredientsOf(sheet, record.kind).includes(record.slug))
      .map(({ slug }) => slug),
  );
  return (path) =>
    made.has(pathParts(path).colour) ||
    rootsOf(path).some(({ kind, slug }) => kind === record.kind && slug === record.slug);
}

function ingredientsOf(
  { pigments, vehicle, additions }: Sheet,
  kind: UsedRecord["kind"],
): string[] {
  if (kind === "pigment") return pigments.map(({ slug }) => slug);
  return kind === "vehicle" ? given([vehicle?.slug, ...additions.map(({ slug }) => slug)]) : [];
}

function sectionsOn(sheet: Sheet, rests: (path: string) => boolean): string[] {
  const paths = [...figureEntries(sheet).map(({ path }) => path), "cautions.hazardStatements"];
  return [
    ...new Set(
      paths
        .filter((path) => rests(`${sheet.slug}.${path}`))
        .map((path) => path.split(".")[0] ?? path),
    ),
  ];
}
