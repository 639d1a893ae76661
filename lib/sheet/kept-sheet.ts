/**
 * A sheet as it is kept: with everything that its figures were made from, so that it is the same
 * sheet when it is read again, evidence and all.
 */
import {
  inputsOf,
  isFigure,
  keptFigure,
  type Figure,
  type Input,
  type RecordRoot,
} from "../quantities/figure.ts";
import { partText, textHash } from "../kept/part-hashes.ts";
import { keptPlace, placeOf, type Place } from "./figure-places.ts";
import { restingOn, sameRoot, sectionInputs } from "./record-inputs.ts";
import type { Sheet } from "./sheet.ts";

/** Figures and sections by themselves: what is one thing here is one thing when it is read again. */
interface Packed<Part> {
  readonly part: Part;
  readonly figures: readonly {
    readonly figure: Figure;
    readonly inputs: readonly Input[];
    readonly place: Place | undefined;
  }[];
  readonly sections: readonly (readonly [section: object, inputs: readonly RecordRoot[]])[];
}

export type PackedSheet = Packed<Sheet>;

/** Once all sheets of the range are worked out: only then stands every figure where it belongs. */
export function packedSheet(sheet: Sheet): PackedSheet {
  return packed(sheet);
}

function packed<Part>(part: Part): Packed<Part> {
  const figures = new Map<Figure, readonly Input[]>();
  const sections: (readonly [object, readonly RecordRoot[]])[] = [];
  const addFigure = (figure: Figure): void => {
    if (figures.has(figure)) return;
    const inputs = inputsOf(figure);
    figures.set(figure, inputs);
    for (const input of inputs) if (isFigure(input)) addFigure(input);
  };
  const seen = new Set<object>();
  const visit = (node: unknown): void => {
    if (typeof node !== "object" || node === null || seen.has(node)) return;
    seen.add(node);
    if (isFigure(node)) return addFigure(node);
    const inputs = sectionInputs(node);
    if (inputs.length > 0) sections.push([node, inputs]);
    for (const own of Object.values(node)) visit(own);
  };
  visit(part);
  return {
    part,
    figures: [...figures].map(([figure, inputs]) => ({ figure, inputs, place: placeOf(figure) })),
    sections,
  };
}

export function unpackedSheet({ part: sheet, figures, sections }: PackedSheet): Sheet {
  for (const { figure, inputs, place } of figures) {
    keptFigure(figure, inputs);
    if (place !== undefined) keptPlace(figure, place);
  }
  // Once each figure is known as one.
  const sameInputs = withSameRoots();
  for (const { figure, inputs } of figures) keptFigure(figure, sameInputs(inputs));
  for (const [section, inputs] of sections) restingOn(inputs.map(sameRoot), section);
  return sheet;
}

/** Lists of inputs with the roots that all sheets rest on; what is one list stays one. */
function withSameRoots(): (inputs: readonly Input[]) => readonly Input[] {
  const known = new Map<readonly Input[], readonly Input[]>();
  return (inputs) => {
    const same =
      known.get(inputs) ?? inputs.map((input) => (isFigure(input) ? input : sameRoot(input)));
    known.set(inputs, same);
    return same;
  };
}

/**
 * The hash of a part of a sheet with all that its figures were made from: two that differ in any
 * of it differ. A figure is hashed once, however many others rest on it.
 */
export function evidenceHash(part: unknown): string {
  return textHash([evidenceText(part)]);
}

function evidenceText(part: unknown): string {
  if (Array.isArray(part))
    return part.every(isPlainNumber)
      ? JSON.stringify(part)
      : `[${part.map(evidenceText).join(",")}]`;
  if (typeof part !== "object" || part === null || ArrayBuffer.isView(part) || part instanceof Map)
    return partText(part);
  if (isFigure(part)) return `figure ${figureHash(part)}`;
  const inputs = sectionInputs(part);
  const own = plainText(part);
  return inputs.length === 0 ? own : `${own} of ${JSON.stringify(inputs)}`;
}

function plainText(part: object): string {
  return `{${Object.entries(part)
    .map(([key, own]) => `${JSON.stringify(key)}:${evidenceText(own)}`)
    .join(",")}}`;
}

function isPlainNumber(value: unknown): boolean {
  return typeof value === "number" && Number.isFinite(value);
}

const FIGURES = new WeakMap<Figure, string>();

function figureHash(figure: Figure): string {
  const known = FIGURES.get(figure);
  if (known !== undefined) return known;
  const hash = textHash([
    partText(figure),
    partText(placeOf(figure)),
    ...inputTexts(inputsOf(figure)),
  ]);
  FIGURES.set(figure, hash);
  return hash;
}

/** Of more inputs than these the texts are hashed once for all figures that were made from the same list of them. */
const FEW_INPUTS = 8;
const LISTS = new WeakMap<readonly Input[], string>();

function inputTexts(inputs: readonly Input[]): readonly string[] {
  if (inputs.length <= FEW_INPUTS) return inputs.map(inputText);
  const hash = LISTS.get(inputs) ?? textHash(inputs.map(inputText));
  LISTS.set(inputs, hash);
  return [`${inputs.length} inputs`, hash];
}

function inputText(input: Input): string {
  return isFigure(input)
    ? `figure ${figureHash(input)}`
    : `${input.kind}\0${input.slug}\0${input.field ?? ""}`;
}
