import { isKnown } from "../quantities/figure.ts";
import type { Colour, Records } from "../records/records.ts";
import type { ColourRecord } from "../records/schema/colour.ts";
import type { ReadingForm } from "../records/schema/reading-form.ts";
import { pathParts, type FigureIndex } from "./figure-index.ts";

export type RootKind = "colour" | "pigment" | "vehicle" | "reading" | "source" | "workshop";

/** A record that figures are worked out of; of a colour's own record, by its key. */
export interface RecordRoot {
  readonly kind: RootKind;
  readonly slug: string;
  readonly field?: keyof ColourRecord;
}

/** The records that figures and plain facts of the sheets rest on, down to readings and sources. */
export type RootsOf = (path: string) => readonly RecordRoot[];

/**
 * What a path rests on: by the inputs that its evidence names, and, where a figure is a root
 * or a fit, by the section that it stands in. One look-up serves a whole range, and remembers.
 */
export function recordRoots(index: FigureIndex, records: Records): RootsOf {
  const known = new Map<string, ReadonlyMap<string, RecordRoot>>();
  return (path) => [...visit(path).values()];

  function visit(path: string): ReadonlyMap<string, RecordRoot> {
    const before = known.get(path);
    if (before !== undefined) return before;
    const found = new Map<string, RecordRoot>();
    known.set(path, found);
    const { colour: slug, figure } = pathParts(path);
    const colour = records.colours.get(slug);
    if (colour === undefined) return found;
    const add = (roots: Iterable<RecordRoot>): void => {
      for (const root of roots) found.set(`${root.kind}/${root.slug}/${root.field ?? ""}`, root);
    };
    add(sectionRoots(figure, colour, records));
    const at = index.figure(path);
    if ("leaf" in at && isKnown(at.leaf.figure)) {
      const { source, inputs } = at.leaf.figure;
      if (source !== undefined) add([{ kind: "source", slug: source }]);
      for (const input of inputs) add(visit(inputPath(slug, input)).values());
    }
    return found;
  }
}

/** An input of the own sheet, or `colours.titanium-white.paintDensityGPerCm3` of another's oil section. */
function inputPath(slug: string, input: string): string {
  const [folder, other, ...rest] = input.split(".");
  return folder === "colours" && other !== undefined ? `${other}.oil.${rest.join(".")}` : `${slug}.${input}`;
}

type Roots = (colour: Colour, records: Records, names: readonly string[]) => Iterable<RecordRoot>;

/** By the form of a path, the first that fits: what stands behind a figure beside its named inputs. */
const SECTIONS: readonly (readonly [RegExp, Roots])[] = [
  [/^pigments\.([^.]+)\.massFraction$/, (colour) => own(colour, "pigments")],
  [/^pigments\.([^.]+)\./, (_, __, [slug = ""]) => [{ kind: "pigment", slug }]],
  [/^pigments$/, (colour) => own(colour, "pigments")],
  [/^vehicle\b/, (colour, records) => [...own(colour, "vehicle"), ...vehicles(colour, records, false)]],
  [/^additions\.([^.]+)\./, (colour, _, [slug = ""]) => [...own(colour, "additions"), { kind: "vehicle", slug }]],
  [/^notations\b/, (colour) => masstone(colour)],
  [/^tints\.([^.]+)\.steps\.(\d[^.]*(?:\.\d+)?(?::\d+(?:\.\d+)?)?)\.(?:lab|munsell|srgb|displayP3|oklch)\b/, stepRoots],
  [/^tints\.[^.]+\.strengthParts\b/, () => []],
  [/^tints\b/, drawdowns],
  [/^optics\.tintingStrength$/, (colour, records) => [...drawdowns(colour, records), ...drawdowns(records.colours.get(records.workshop.strengthReference ?? ""), records), { kind: "workshop", slug: "workshop" }]],
  [/^optics\.gloss\b/, (colour) => masstone(colour)],
  [/^optics\b/, (colour) => [...masstone(colour), ...own(colour, "films"), ...readings(colour.record.films)]],
  [/^oil\.(?:oilIndexGPer100g|finenessOfGrindUm|dispersionFactor|gloss60|body|oilSeparation|finish)$/, (colour, _, __) => [...own(colour, "oilIndexGPer100g", "dispersion", "finenessOfGrindUm", "gloss60", "body", "oilSeparation"), ...pigments(colour)]],
  [/^drying\.inWhites\.([^.]+)/, (colour, records, [white = ""]) => [...dryingRoots(colour, records), ...dryingRoots(whiteOf(white, records), records)]],
  [/^drying\b/, dryingRoots],
  [/^permanence\b/, (colour) => [...own(colour, "exposures", "lightfastness"), ...pigments(colour)]],
  [/^cautions\b/, cautionRoots],
];

function sectionRoots(figure: string, colour: Colour, records: Records): Iterable<RecordRoot> {
  for (const [form, roots] of SECTIONS) {
    const names = form.exec(figure);
    if (names !== null) return roots(colour, records, names.slice(1));
  }
  return [];
}

function own({ slug, record }: Colour, ...fields: (keyof ColourRecord)[]): RecordRoot[] {
  const recorded = fields.filter((field) => record[field] !== undefined);
  return recorded.length === 0 ? [{ kind: "colour", slug }] : recorded.map((field) => ({ kind: "colour", slug, field }));
}

function readings(forms: readonly (ReadingForm | undefined)[] = []): RecordRoot[] {
  return forms.flatMap((form) => (form !== undefined && "reading" in form ? [{ kind: "reading" as const, slug: form.reading.replace(/\.[^.]+$/, "") }] : []));
}

function masstone(colour: Colour): RecordRoot[] {
  return [...own(colour, "masstone"), ...readings([colour.record.masstone])];
}

/** A measured step rests on its own drawdown, a predicted one on all that the fit took in. */
function stepRoots(colour: Colour, records: Records, [white, ratio]: readonly string[]): RecordRoot[] {
  const measured = colour.record.tints?.find((tint) => tint.white === white && tint.massRatio === ratio);
  return measured === undefined ? drawdowns(colour, records) : [...own(colour, "tints"), ...readings([measured])];
}

/** All drawdowns of a colour and the masstones of its whites: K and S are fitted to them at once. */
function drawdowns(colour: Colour | undefined, records: Records): RecordRoot[] {
  if (colour === undefined) return [];
  const whites = new Set((colour.record.tints ?? []).map(({ white }) => white));
  return [...masstone(colour), ...own(colour, "tints"), ...readings(colour.record.tints), ...[...whites].flatMap((white) => {
    const paint = whiteOf(white, records);
    return paint === undefined ? [] : masstone(paint);
  })];
}

/** The paint of a white that tints name by its own slug or by its pigment's. */
function whiteOf(slug: string, { colours }: Records): Colour | undefined {
  return colours.get(slug) ?? [...colours.values()].find(({ record }) => record.pigments.length === 1 && record.pigments[0]?.pigment === slug);
}

function pigments({ record }: Colour): RecordRoot[] {
  return record.pigments.map(({ pigment: slug }) => ({ kind: "pigment", slug }));
}

function vehicles({ record }: Colour, { workshop }: Records, withAdditions = true): RecordRoot[] {
  const oil = record.vehicle ?? workshop.vehicle;
  return [...(oil === undefined ? [] : [oil]), ...(withAdditions ? (record.additions ?? []).map(({ vehicle }) => vehicle) : [])].map((slug) => ({ kind: "vehicle", slug }));
}

function dryingRoots(colour: Colour | undefined, records: Records): RecordRoot[] {
  if (colour === undefined) return [];
  return [...own(colour, "dryingTrials", "additions", "pigments", "oilIndexGPer100g"), ...madeFrom(colour, records)];
}

function cautionRoots(colour: Colour, records: Records): RecordRoot[] {
  const classified = [...colour.record.pigments.map(({ pigment }) => records.pigments.get(pigment)?.record), ...vehicles(colour, records).map(({ slug }) => records.vehicles.get(slug)?.record)];
  const sources = classified.flatMap((record) => (record?.hazards ?? []).flatMap((hazard) => (typeof hazard === "string" || hazard.source === undefined ? [] : [hazard.source])));
  return [
    ...own(colour, "label", "legalBasis", "pigments", "additions"), ...madeFrom(colour, records), { kind: "workshop", slug: "workshop" },
    ...sources.map((slug) => ({ kind: "source" as const, slug })),
  ];
}

/** What a paint is made from: when one of them changes, everything about it is to be looked at again. */
export function madeFrom(colour: Colour, records: Records): RecordRoot[] {
  return [...pigments(colour), ...vehicles(colour, records)];
}
