import { isFigure, isKnown, type Figure, type RecordRoot } from "../quantities/figure.ts";
import type { Records } from "../records/records.ts";
import { figureEntries } from "../sheet/figure-entries.ts";
import { evidenceOf, noteEvidence } from "../sheet/figure-places.ts";
import { sectionInputs } from "../sheet/record-inputs.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { pathParts, type FigureIndex } from "./figure-index.ts";

export type { RecordRoot, RootKind } from "../quantities/figure.ts";

/** The records that figures and plain facts of the sheets rest on, down to readings and sources. */
export type RootsOf = (path: string) => readonly RecordRoot[];

type Roots = ReadonlyMap<string, RecordRoot>;

/**
 * What a path rests on: a figure on what it was made from, down to the records; a plain fact
 * on what the figures of its section rest on, and its section itself. One look-up serves a
 * whole range, and remembers.
 */
export function recordRoots(index: FigureIndex, records: Records): RootsOf {
  const ofFigures = new Map<Figure, Roots>();
  return (path) => {
    const { colour: slug, figure: place } = pathParts(path);
    const sheet = index.sheet(slug);
    if (sheet === undefined || !records.colours.has(slug)) return [];
    const figure = index.figureIfAny(path)?.leaf.figure;
    const found = figure === undefined ? rootsOfFact(sheet, place) : rootsOfFigure(figure);
    return found.size === 0 ? [{ kind: "colour", slug }] : [...found.values()];
  };

  function rootsOfFigure(figure: Figure): Roots {
    // Whoever is given what was found before has asked for it, too.
    const inputs = evidenceOf(figure);
    const before = ofFigures.get(figure);
    if (before !== undefined) return before;
    const found = new Map<string, RecordRoot>();
    ofFigures.set(figure, found);
    if (isKnown(figure) && figure.source !== undefined)
      add(found, [{ kind: "source", slug: figure.source }]);
    for (const input of inputs)
      add(found, isFigure(input) ? rootsOfFigure(input).values() : [input]);
    return found;
  }

  /** Of a section itself, such as how many pigments there are, only what it was said to be made from. */
  function rootsOfFact(sheet: Sheet, place: string): Roots {
    const found = new Map<string, RecordRoot>();
    const [name = "", ...within] = place.split(".");
    const section = (sheet as Readonly<Record<string, unknown>>)[name];
    if (typeof section !== "object" || section === null) return found;
    noteEvidence(sheet.slug);
    add(found, sectionInputs(section));
    if (within.length === 0 && found.size > 0) return found;
    for (const { figure } of figureEntries({ [name]: section }))
      add(found, rootsOfFigure(figure).values());
    return found;
  }
}

/** Each root once. */
export function distinctRoots(roots: Iterable<RecordRoot>): RecordRoot[] {
  const found = new Map<string, RecordRoot>();
  add(found, roots);
  return [...found.values()];
}

function add(found: Map<string, RecordRoot>, roots: Iterable<RecordRoot>): void {
  for (const root of roots) found.set(`${root.kind}/${root.slug}/${root.field ?? ""}`, root);
}
