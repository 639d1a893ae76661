import { nearestWord } from "../diagnostics/nearest-word.ts";
import type { Colour, Records } from "../records/records.ts";
import type { ReadingForm } from "../records/schema/reading-form.ts";
import type { ClaimRecord } from "../records/schema/answer.ts";
import type { FigureIndex } from "./figure-index.ts";
import type { HeldAnswer } from "./held-claims.ts";
import { madeFrom, type RootsOf } from "./record-roots.ts";

/** What can change under a workshop's hands: a supplier's pigment or oil, a spectrum read again, a text withdrawn. */
export type UsedKind = "pigment" | "vehicle" | "reading" | "source";

/** What has to be looked at again when one record changes. */
export interface Uses {
  readonly kind: UsedKind;
  readonly slug: string;
  /** Slugs of colours of one pigment, in order. */
  readonly colours: readonly string[];
  /** Slugs of colours of several pigments. */
  readonly mixtures: readonly string[];
  /** Slugs of answers of which a claim, or a figure that they show, rests on it. */
  readonly answers: readonly string[];
  readonly claims: readonly UsedClaim[];
  /** Slugs of colours of which the shelf card rests on it. */
  readonly cards: readonly string[];
}

export interface UsedClaim {
  readonly answer: HeldAnswer["answer"];
  /** From 0, in the order of the front matter. */
  readonly number: number;
  readonly claim: ClaimRecord;
}

/** A workshop with everything that can rest on a record worked out. */
export interface UsesRoom {
  readonly records: Records;
  readonly index: FigureIndex;
  readonly rootsOf: RootsOf;
  readonly held: readonly HeldAnswer[];
  /** Paths that the text and the reply of an answer show, by its slug. */
  readonly shown: ReadonlyMap<string, readonly string[]>;
  /** Slugs of the colours that have a shelf card. */
  readonly cards: readonly string[];
}

/** What of a sheet its card states. */
const ON_CARDS = /^(?:pigments|vehicle|additions|notations|tints|cautions|offer)\b|^optics\.(?:opacityClass|tintingStrength)$|^drying\.(?:class|touchDryDays)$|^permanence\.(?:category|expectation)$/;

/** Parts of every sheet that are no figures. */
const FACTS = ["pigments", "vehicle", "cautions", "offer"];

/**
 * What rests on the records of a slug: one entry for each kind that has it, since a pigment and a
 * reading may share a name. For a slug that none has, the nearest that one has.
 */
export function usesOf(slug: string, room: UsesRoom): readonly Uses[] | { readonly nearest: string | undefined } {
  const known = knownSlugs(room);
  const kinds = [...known].filter(([, slugs]) => slugs.has(slug)).map(([kind]) => kind);
  if (kinds.length === 0) return { nearest: nearestWord(slug, new Set([...known.values()].flatMap((slugs) => [...slugs]))) };
  return kinds.map((kind) => usesOfKind(kind, slug, room));
}

function usesOfKind(kind: UsedKind, slug: string, { records, index, rootsOf, held, shown, cards }: UsesRoom): Uses {
  const isIt = (root: { readonly kind: string; readonly slug: string }): boolean => root.kind === kind && root.slug === slug;
  const rests = (path: string): boolean => rootsOf(path).some(isIt);
  const pathsOf = (colour: string): string[] => [...FACTS, ...index.paths(colour)];
  const cites = (colour: Colour): boolean => kind === "source" && ingredientsOf(colour, records).some((record) => citesSource(record, slug));
  const found = [...records.colours.values()].filter((colour) => madeFrom(colour, records).some(isIt) || cites(colour) || pathsOf(colour.slug).some((path) => rests(`${colour.slug}.${path}`)));
  const slugs = found.map((colour) => colour.slug);
  const claims = held.flatMap(({ answer, claims: all }) => all.flatMap(({ claim, roots }, number) => (roots.some(isIt) ? [{ answer, number, claim }] : [])));
  return {
    kind, slug, claims,
    colours: found.filter(({ record }) => record.pigments.length <= 1).map((colour) => colour.slug),
    mixtures: found.filter(({ record }) => record.pigments.length > 1).map((colour) => colour.slug),
    answers: held.map(({ answer }) => answer.slug).filter((answer) => claims.some((one) => one.answer.slug === answer) || (shown.get(answer) ?? []).some(rests)),
    cards: slugs.filter((colour) => cards.includes(colour) && pathsOf(colour).some((path) => ON_CARDS.test(path) && rests(`${colour}.${path}`))),
  };
}

function knownSlugs({ records: { pigments, vehicles, sources, colours, workshop } }: UsesRoom): ReadonlyMap<UsedKind, ReadonlySet<string>> {
  const forms = [...colours.values()].flatMap(({ record }) => [record.masstone, ...record.tints ?? [], ...record.films ?? []]);
  return new Map([
    ["pigment", new Set(pigments.keys())], ["vehicle", new Set(vehicles.keys())],
    ["reading", new Set([...forms, workshop.grounds?.black, workshop.grounds?.white].flatMap(readingOf))], ["source", new Set(sources.keys())],
  ]);
}

function readingOf(form: ReadingForm | undefined): string[] {
  return form !== undefined && "reading" in form ? [form.reading.replace(/\.[^.]+$/, "")] : [];
}

function ingredientsOf(colour: Colour, records: Records): unknown[] {
  return [colour.record, ...madeFrom(colour, records).map(({ kind, slug }) => (kind === "pigment" ? records.pigments : records.vehicles).get(slug)?.record)];
}

/** A `source:` at any depth of a record. */
function citesSource(value: unknown, slug: string): boolean {
  if (typeof value !== "object" || value === null) return false;
  return Object.entries(value).some(([key, entry]) => (key === "source" && entry === slug) || citesSource(entry, slug));
}
