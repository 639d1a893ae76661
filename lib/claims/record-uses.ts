import { nearestWord } from "../diagnostics/nearest-word.ts";
import type { Records } from "../records/records.ts";
import type { FigureIndex } from "./figure-index.ts";
import { pathParts } from "./figure-index.ts";
import type { HeldAnswer, HeldClaim } from "./held-claims.ts";
import type { RecordRoot, RootKind, RootsOf } from "./record-roots.ts";
import { madeFrom, paintOfWhite } from "./section-roots.ts";

/** What must be looked at again when one record changes. */
export interface RecordUses {
  readonly kind: RootKind;
  readonly slug: string;
  /** Colours by slug, mixtures among them, in order. */
  readonly colours: readonly string[];
  /** Answers, each with the claims that rest on it; none where only a colour that it names does. */
  readonly answers: readonly { readonly slug: string; readonly claims: readonly { readonly index: number; readonly claim: HeldClaim }[] }[];
}

export interface UsesRoom {
  readonly records: Records;
  readonly index: FigureIndex;
  readonly rootsOf: RootsOf;
  readonly held: readonly HeldAnswer[];
  /** Colours that an answer names. */
  readonly namedBy: (answer: HeldAnswer) => readonly string[];
}

/**
 * What rests on the pigment, vehicle, reading, source or colour of a slug, which may be
 * several of them at once. Pigments and oils count for everything about the paints made
 * from them, since a new lot makes another paint; readings and sources for the figures
 * that were worked out of them.
 * @returns none for a slug that no record has.
 */
export function recordUses(slug: string, room: UsesRoom): RecordUses[] {
  return kindsOf(slug, room).map((kind) => {
    const isIt = (root: RecordRoot): boolean => root.kind === kind && root.slug === slug;
    const colours = new Set([...room.records.colours.keys()].filter((colour) => restsOnIt(colour, isIt, room)));
    const answers = room.held.flatMap((held) => {
      const claims = held.claims.flatMap((claim, index) => (claimRests(claim, isIt, room) ? [{ index, claim }] : []));
      const names = room.namedBy(held).some((colour) => colours.has(colour));
      return claims.length > 0 || names ? [{ slug: held.answer.slug, claims }] : [];
    });
    return { kind, slug, colours: [...colours], answers };
  });
}

/** The nearest slug of any record, for one that no record has. */
export function nearestRecord(slug: string, room: UsesRoom): string | undefined {
  const { records: { pigments, vehicles, colours, sources } } = room;
  return nearestWord(slug, new Set([...pigments.keys(), ...vehicles.keys(), ...colours.keys(), ...readingsOf(room), ...sources.keys()]));
}

function kindsOf(slug: string, room: UsesRoom): RootKind[] {
  const { records: { pigments, vehicles, colours, sources } } = room;
  const known: readonly (readonly [RootKind, boolean])[] = [
    ["pigment", pigments.has(slug)], ["vehicle", vehicles.has(slug)], ["reading", readingsOf(room).has(slug)], ["source", sources.has(slug)], ["colour", colours.has(slug)],
  ];
  return known.filter(([, has]) => has).map(([kind]) => kind);
}

function readingsOf({ index, rootsOf }: UsesRoom): ReadonlySet<string> {
  return new Set(index.sheets.flatMap((sheet) => index.paths(sheet.slug).flatMap((path) => rootsOf(`${sheet.slug}.${path}`).flatMap(({ kind, slug }) => (kind === "reading" ? [slug] : [])))));
}

function restsOnIt(colour: string, isIt: (root: RecordRoot) => boolean, { records, index, rootsOf }: UsesRoom): boolean {
  return paintRoots(colour, records).some(isIt) || [...index.paths(colour), "cautions"].some((path) => rootsOf(`${colour}.${path}`).some(isIt));
}

function claimRests({ claim, roots, colours }: HeldClaim, isIt: (root: RecordRoot) => boolean, { records }: UsesRoom): boolean {
  const spoken = new Set([...colours, pathParts("fact" in claim ? claim.fact : claim.figure).colour]);
  if (roots.some(isIt)) return true;
  // A white is part of a claim only where its figures say so.
  const whites = "fact" in claim ? [] : [...new Set(pathParts(claim.figure).figure.split("."))].flatMap((key) => paintOfWhite(key, records)?.slug ?? []);
  return [...spoken, ...whites].some((slug) => {
    const colour = records.colours.get(slug);
    return colour !== undefined && madeFrom(colour, records).some(isIt);
  });
}

/** A paint's own pigments and oils, those of the whites that it was let down in, and itself. */
function paintRoots(slug: string, records: Records): RecordRoot[] {
  const colour = records.colours.get(slug);
  if (colour === undefined) return [];
  const whites = new Set([...(colour.record.tints ?? []).map(({ white }) => white), ...(colour.record.dryingTrials ?? []).flatMap(({ tintedWith }) => tintedWith ?? [])]);
  return [{ kind: "colour", slug }, ...madeFrom(colour, records), ...[...whites].flatMap((white) => {
    const paint = paintOfWhite(white, records);
    return paint === undefined ? [] : [{ kind: "colour" as const, slug: paint.slug }, ...madeFrom(paint, records)];
  })];
}
