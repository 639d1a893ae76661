/**
 * What a sheet is declared with, as `d.quantity(...)`: sections import all of it under one letter, as a schema of
 * records does with `z`.
 */
import type { Figure, FigurePath } from "../quantities/figure.ts";
import type { Interval, Quantity } from "../quantities/interval.ts";
import type { Statement } from "../quantities/statement.ts";
import { NUMBER, TEXT, TEXTS, type Schema } from "./json-schema.ts";

/**
 * How a figure reads: `decimal` to fixed places, `significant` to so many digits,
 * `share` a fraction 0-1 shown in percent, `days` whole or half days, `word` one of a closed set, `notation`
 * a text that is its own finished form, `series` numbers over a grid.
 */
export type FigureKind =
  "decimal" | "significant" | "share" | "days" | "word" | "notation" | "series";

/** What a row may have nothing to say at: a number, or where the figure is not stated. */
export type Silent = number | "not stated";

/** What is said of a figure once, beside its place. */
export interface FigureForm<W extends string = string> {
  /** Unit symbol, "1" for a plain number, "" for a word. */
  readonly unit: string;
  readonly kind: FigureKind;
  /** Decimal places, significant digits or places of a percentage; 0 for words. */
  readonly digits: number;
  /** Decimal places of one that was worked out, where no uncertainty tells more: it is known no better than what was weighed. */
  readonly workedOutPlaces?: number;
  /** Key of its name in lib/words/figures. */
  readonly word: W;
  /** Whether it is a row of the table of its section's page, and where that is not in the order of the declaration, after which. */
  readonly isListed?: boolean;
  readonly listedAfter?: FigurePath;
  /** At these it says nothing, and its row is left out. */
  readonly silentAt?: readonly Silent[];
}

/** What stands at a place of a sheet, as data: the walk over a sheet, its schema and its figure table read it. */
export type Shape =
  | { readonly form: "figure"; readonly figure: FigureForm }
  | { readonly form: "plain"; readonly schema: Schema }
  | { readonly form: "members"; readonly members: Readonly<Record<string, Declared>> }
  | { readonly form: "list"; readonly member: Declared }
  | { readonly form: "map"; readonly keys: readonly string[]; readonly member: Declared };

declare const TYPE: unique symbol;
declare const WORD: unique symbol;

/** One declared part of a sheet. `T` is its type, `W` the words that its figures are named by; neither is there when it runs. */
export interface Declared<T = unknown, W extends string = string> {
  readonly shape: Shape;
  /** Its key is left out where nothing is known of it. */
  readonly isOptional: boolean;
  /** Every sheet.json has it: a plain part that a record cannot leave open. A figure may be not stated. */
  readonly isAlwaysThere: boolean;
  /** The workshop's alone: on no public page, card or data file. */
  readonly isPrivate: boolean;
  readonly [TYPE]?: T;
  readonly [WORD]?: W;
}
export interface Optional<T, W extends string> extends Declared<T, W> {
  readonly isOptional: true;
}
export interface Required<T, W extends string> extends Declared<T, W> {
  readonly isOptional: false;
}

export type Members = Readonly<Record<string, Declared>>;
type TypeIn<D> = D extends Declared<infer T> ? T : never;
type WordIn<D> = D extends Declared<unknown, infer W> ? W : never;
type RequiredKeys<M> = { [K in keyof M]: M[K] extends { isOptional: true } ? never : K }[keyof M];
type Flat<T> = { readonly [K in keyof T]: T[K] };
type MembersOf<M> = Flat<
  { readonly [K in keyof M as K extends RequiredKeys<M> ? K : never]: TypeIn<M[K]> } & {
    readonly [K in keyof M as K extends RequiredKeys<M> ? never : K]?: TypeIn<M[K]>;
  }
>;

/** The TypeScript type of a declared part: `type OilSection = SectionOf<typeof OIL>`. */
export type SectionOf<D extends Declared> = TypeIn<D>;
/** The type of parts that a section takes up beside its own. */
export type PartsOf<M extends Members> = MembersOf<M>;
/** Keys of the words that the figures of a declared part are named by. */
export type WordsOf<D extends Declared> = WordIn<D>;

function declared<T, W extends string = never>(shape: Shape): Required<T, W> {
  return { shape, isOptional: false, isAlwaysThere: shape.form !== "figure", isPrivate: false };
}

/** The same part, kept in the workshop: its pages there show it, and nothing that is published does. */
export function workshopAlone<D extends Declared>(part: D): D {
  return { ...part, isPrivate: true };
}

/**
 * The same figure as a row of its section's table, in the order of the declaration.
 * @param place where it stands `after` another by its path, and at what it says nothing.
 */
export function listed<D extends Declared>(
  part: D,
  { after, silentAt }: { readonly after?: FigurePath; readonly silentAt?: readonly Silent[] } = {},
): D {
  const figure: FigureForm = {
    ...figureForm(part),
    isListed: true,
    ...(after !== undefined && { listedAfter: after }),
    ...(silentAt !== undefined && { silentAt }),
  };
  return { ...part, shape: { form: "figure", figure } };
}

/** A plain number to one place, as coordinates and differences of colours are told. */
export const ONE_PLACE = { unit: "1", kind: "decimal", digits: 1 } as const;
/** A fraction, in whole percent. */
export const SHARE = { unit: "1", kind: "share", digits: 0 } as const;

function figure<V extends Quantity | string | readonly number[], W extends string>(
  form: FigureForm<W>,
): Required<Figure<V>, W> {
  return declared({ form: "figure", figure: form });
}

/** A number, or an estimate's two ends. */
export function quantity<const W extends string>(
  form: FigureForm<W>,
): Required<Figure<Quantity>, W> {
  return figure(form);
}

/** One number and never an interval. */
export function number<const W extends string>(form: FigureForm<W>): Required<Figure<number>, W> {
  return figure(form);
}

/** Days as two ends, alike where one trial told them. */
export function days<const W extends string>(word: W): Required<Figure<Interval>, W> {
  return figure({ unit: "d", kind: "days", digits: 0, word });
}

/** What something multiplies by, as two ends. */
export function interval<const W extends string>(
  form: FigureForm<W>,
): Required<Figure<Interval>, W> {
  return figure(form);
}

/** One word of a closed set, worded in each language. */
export function word<const W extends string>(name: W): Required<Figure<string>, W> {
  return figure({ unit: "", kind: "word", digits: 0, word: name });
}

/** A text that is its own finished form in every language. */
export function notation<const W extends string>(name: W): Required<Figure<string>, W> {
  return figure({ unit: "", kind: "notation", digits: 0, word: name });
}

/** Numbers over the wavelengths of a grid. */
export function series<const W extends string>(name: W): Required<Figure<readonly number[]>, W> {
  return figure({ unit: "1", kind: "series", digits: 0, word: name });
}

/** A fact of the record or a setting of the picture, published as it is, with its JSON Schema. */
export function plain<T>(schema: Schema): Required<T, never> {
  return declared({ form: "plain", schema });
}

export const text = plain<string>(TEXT);
export const texts = plain<readonly string[]>(TEXTS);
export const flag = plain<boolean>({ type: "boolean" });
export const plainNumber = plain<number>(NUMBER);
/** A sentence that a science chose, published as words. */
export const statement = plain<Statement>(TEXT);

/** The same of a closed set of statements. */
export function statementAmong<S extends Statement>(): Required<S, never> {
  return plain<S>(TEXT);
}

export const statements = plain<readonly Statement[]>(TEXTS);

/** Of several, the same of a closed set. */
export function statementsAmong<S extends Statement>(): Required<readonly S[], never> {
  return plain<readonly S[]>(TEXTS);
}

/** One of a closed set of words, published as it is. */
export function oneOf<const T extends string | null>(values: readonly T[]): Required<T, never> {
  return plain({ enum: values });
}

/** Named parts, of which some may say how they are found: `filled` of found.ts works these out. */
export type Section<M extends Members, Heading extends string = string> = Required<
  MembersOf<M>,
  WordIn<M[keyof M]> | Heading
> & {
  readonly shape: { readonly form: "members"; readonly members: M };
};

/** Named parts of a section. */
export function section<const M extends Members>(members: M): Section<M, never> {
  return declared({ form: "members", members }) as Section<M, never>;
}

/** The same of what has a place on a page of its colour. @param _heading key of what heads it there, beside the names of its figures. */
export function headed<const W extends string, const M extends Members>(
  _heading: W,
  members: M,
): Section<M, W> {
  return declared({ form: "members", members }) as Section<M, W>;
}

/** Another record of the range, as a sheet names it. */
export const NAMED = section({ slug: text, name: text });

/** Members that go by their slug, a tint by its white's, a step by its ratio, a film by its micrometres. */
export function list<T, W extends string>(member: Declared<T, W>): Required<readonly T[], W> {
  return declared({ form: "list", member });
}

/** Alike parts by a key of a closed set, of which some may be missing: viewings, equal lightnesses. */
export function map<const K extends string, T, W extends string>(
  keys: readonly K[],
  member: Declared<T, W>,
): Required<{ readonly [P in K]?: T }, W> {
  return declared({ form: "map", keys, member });
}

/** The same with every key of the set there. */
export function fullMap<const K extends string, T, W extends string>(
  keys: readonly K[],
  member: Declared<T, W>,
): Required<{ readonly [P in K]: T }, W> {
  return declared({ form: "map", keys, member });
}

/** A part that is left out where nothing is known of it. */
export function optional<T, W extends string>({
  shape,
  isPrivate,
}: Declared<T, W>): Optional<T, W> {
  return { shape, isOptional: true, isAlwaysThere: false, isPrivate };
}

/** A part of which there may be none although its neighbours are there, such as the hue of a grey. */
export function orNull<T, W extends string>({
  shape,
  isPrivate,
}: Declared<T, W>): Required<T | null, W> {
  return { shape, isOptional: false, isAlwaysThere: false, isPrivate };
}

/** A part that the record may leave open: its key is there, its value may be undefined. */
export function orUndefined<T, W extends string>({
  shape,
  isPrivate,
}: Declared<T, W>): Required<T | undefined, W> {
  return { shape, isOptional: false, isAlwaysThere: false, isPrivate };
}

/** The same parts, each left out where nothing is known of it. */
export function optionally<M extends Members>(
  members: M,
): { readonly [K in keyof M]: Optional<TypeIn<M[K]>, WordIn<M[K]>> } {
  return Object.fromEntries(
    Object.entries(members).map(([key, part]) => [key, optional(part)]),
  ) as { readonly [K in keyof M]: Optional<TypeIn<M[K]>, WordIn<M[K]>> };
}

/** How a declared figure reads. @throws RangeError for what is no figure. */
export function figureForm({ shape }: Declared): FigureForm {
  if (shape.form !== "figure") throw new RangeError(`a ${shape.form} is no figure`);
  return shape.figure;
}
