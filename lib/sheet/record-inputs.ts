import { inputsOf, isFigure, isKnown, type Figure, type RecordRoot } from "../quantities/figure.ts";
import { remembered } from "../quantities/remembered.ts";
import { grouped } from "../quantities/grouped.ts";
import { readingStem } from "../records/readings/reading-endings.ts";
import type { Colour, Records } from "../records/records.ts";
import type { ColourRecord } from "../records/schema/colour.ts";
import type { ReadingForm } from "../records/schema/reading-form.ts";
import { given } from "../quantities/given.ts";

const ROOTS = new Map<string, RecordRoot>();

/** A root is one thing, however many figures rest on it: what is expected of a colour in a white rests on hundreds. */
function root(kind: RecordRoot["kind"], slug: string, field?: string): RecordRoot {
  const name = `${kind}/${slug}/${field ?? ""}`;
  const known = ROOTS.get(name) ?? { kind, slug, ...(field !== undefined && { field }) };
  ROOTS.set(name, known);
  return known;
}

/** The one thing that stands for a root, for one that was read again. */
export function sameRoot({ kind, slug, field }: RecordRoot): RecordRoot {
  return root(kind, slug, field);
}

/** The records that a section reads, as inputs of the figures that it makes of them. */
export const WORKSHOP: RecordRoot = root("workshop", "workshop");

export function pigmentRecord(slug: string): RecordRoot {
  return root("pigment", slug);
}

export function vehicleRecord(slug: string): RecordRoot {
  return root("vehicle", slug);
}

/** Keys of a colour's own record; the record itself where it has none of them. */
export function colourRecord(
  { slug, record }: Pick<Colour, "slug" | "record">,
  ...fields: (keyof ColourRecord)[]
): RecordRoot[] {
  // Not what it says but whether it is there: what names a record among its inputs has read no more of it by that.
  const recorded = fields.filter((field) => field in record);
  return recorded.length === 0
    ? [root("colour", slug)]
    : recorded.map((field) => root("colour", slug, field));
}

/** Reading files that drawdowns name, those over black too. */
export function readingRecords(forms: readonly (ReadingForm | undefined)[] = []): RecordRoot[] {
  return forms.flatMap((form) =>
    form !== undefined && "reading" in form
      ? [
          form,
          ...("overBlack" in form && form.overBlack !== undefined ? [form.overBlack] : []),
        ].map(({ reading }) => root("reading", readingStem(reading)))
      : [],
  );
}

export function masstoneRecords(colour: Colour): RecordRoot[] {
  return [...colourRecord(colour, "masstone"), ...readingRecords([colour.record.masstone])];
}

/** One let-down as it was drawn down. */
export function tintRecords(colour: Colour, white: string, massRatio: string): RecordRoot[] {
  const drawn = colour.record.tints?.find(
    (tint) => tint.white === white && tint.massRatio === massRatio,
  );
  return [...colourRecord(colour, "tints"), ...readingRecords([drawn])];
}

/** All drawdowns of a colour, its films, the masstones and films of its whites, and the chart: K and S are fitted to them at once. */
export function drawdownRecords(colour: Colour | undefined, records: Records): RecordRoot[] {
  if (colour === undefined) return [];
  const whites = new Set((colour.record.tints ?? []).map(({ white }) => white));
  return [
    ...masstoneRecords(colour),
    ...colourRecord(colour, "tints"),
    ...readingRecords(colour.record.tints),
    ...filmsOfFit(colour, records),
    ...[...whites].flatMap((white) => {
      const paint = paintOfWhite(white, records);
      return paint === undefined ? [] : [...masstoneRecords(paint), ...filmsOfFit(paint, records)];
    }),
    ...chartOfFit(colour, records),
  ];
}

/** Films as a fit takes them, only over a chart that was read, with what the density of their paint goes by. */
function filmsOfFit(colour: Colour, records: Records): RecordRoot[] {
  const { films } = colour.record;
  const isOverBoth = colour.masstoneOverBlack !== undefined;
  if (records.workshop.grounds === undefined || (films === undefined && !isOverBoth)) return [];
  return [
    ...(films === undefined ? [] : colourRecord(colour, "films")),
    ...readingRecords(films),
    ...ingredientRecords(colour, records),
    ...colourRecord(colour, "pigments", "vehicle", "additions", "oilIndexGPer100g"),
  ];
}

/** The chart, where a drawdown of the colour or of one of its whites was read over both halves. */
function chartOfFit({ record }: Colour, records: Records): RecordRoot[] {
  const whites = (record.tints ?? []).flatMap(
    ({ white }) => paintOfWhite(white, records)?.record ?? [],
  );
  const isOverBoth = (form: ReadingForm | undefined): boolean =>
    form !== undefined && "overBlack" in form && form.overBlack !== undefined;
  const isUsed =
    [record, ...whites].some(
      ({ films, masstone }) => films !== undefined || isOverBoth(masstone),
    ) || (record.tints ?? []).some(isOverBoth);
  return isUsed ? chartRecords(records) : [];
}

function chartRecords({ workshop: { grounds } }: Records): RecordRoot[] {
  return grounds === undefined ? [] : [WORKSHOP, ...readingRecords([grounds.black, grounds.white])];
}

/** Films over black and white, with the chart that they were drawn down on. */
export function filmRecords(colour: Colour, records: Records): RecordRoot[] {
  return [
    ...masstoneRecords(colour),
    ...colourRecord(colour, "films"),
    ...readingRecords(colour.record.films),
    ...chartRecords(records),
  ];
}

/** The paint of a white that tints name by its own slug or by its pigment's. */
export function paintOfWhite(slug: string, { colours }: Records): Colour | undefined {
  return colours.get(slug) ?? paintsOfPigment(slug, colours)[0];
}

/** Paints of one pigment alone, in order of slug. */
export function paintsOfPigment(pigment: string, colours: Records["colours"]): readonly Colour[] {
  return byOnlyPigment(colours).get(pigment) ?? [];
}

const byOnlyPigment = remembered((colours: Records["colours"]) =>
  grouped(
    [...colours.values()].flatMap((colour) => {
      const [only, ...others] = colour.record.pigments;
      return only === undefined || others.length > 0 ? [] : [[only.pigment, colour] as const];
    }),
  ),
);

/** What a paint is made from: its pigments, its oil, and what was added to it. */
export function ingredientRecords(
  { record }: Pick<Colour, "record">,
  { workshop }: Records,
): RecordRoot[] {
  const oil = record.vehicle ?? workshop.vehicle;
  return given([
    ...record.pigments.map(({ pigment }) => pigmentRecord(pigment)),
    oil !== undefined && vehicleRecord(oil),
    ...(record.additions ?? []).map(({ vehicle }) => vehicleRecord(vehicle)),
  ]);
}

/** The records and sources that figures were made from, for a section that goes by these figures and has none itself. */
export function recordsUnder(figures: readonly Figure[]): RecordRoot[] {
  const found = new Map<string, RecordRoot>();
  const seen = new Set<Figure>();
  const add = (root: RecordRoot): unknown =>
    found.set(`${root.kind}/${root.slug}/${root.field ?? ""}`, root);
  const visit = (figure: Figure): void => {
    if (seen.has(figure)) return;
    seen.add(figure);
    if (isKnown(figure) && figure.source !== undefined) add(root("source", figure.source));
    for (const input of inputsOf(figure))
      if (isFigure(input)) visit(input);
      else add(input);
  };
  figures.forEach(visit);
  return [...found.values()];
}

const RESTING = new WeakMap<object, readonly RecordRoot[]>();

/** A section without figures, such as a label's elements, with the records that it was made from. */
export function restingOn<S extends object>(inputs: readonly RecordRoot[], section: S): S {
  RESTING.set(section, inputs);
  return section;
}

/** What a section was said to be made from. */
export function sectionInputs(section: object): readonly RecordRoot[] {
  return RESTING.get(section) ?? [];
}
