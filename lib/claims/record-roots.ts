import { isKnown } from "../quantities/figure.ts";
import type { Records } from "../records/records.ts";
import type { ColourRecord } from "../records/schema/colour.ts";
import { pathParts, type FigureIndex } from "./figure-index.ts";
import { sectionRoots } from "./section-roots.ts";

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
    add(sectionRoots(figure, colour, records, index.sheet(slug)));
    const at = index.figure(path);
    if ("leaf" in at && isKnown(at.leaf.figure)) {
      const { source, inputs } = at.leaf.figure;
      if (source !== undefined) add([{ kind: "source", slug: source }]);
      for (const input of inputs) add(visit(inputPath(slug, input)).values());
    }
    return found;
  }
}

/** An input of the own sheet, or another's: `colours.titanium-white.oil.oilIndexGPer100g`, with the section or without. */
function inputPath(slug: string, input: string): string {
  const [folder, other, ...rest] = input.split(".");
  if (folder !== "colours" || other === undefined) return `${slug}.${input}`;
  return rest[0] === "oil" ? `${other}.${rest.join(".")}` : `${other}.oil.${rest.join(".")}`;
}
