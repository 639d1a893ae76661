/** A PDF that this program printed, read again: one object after another, a table at its end that says where each begins. */
import { certain } from "../quantities/at.ts";

/** An object as it was written. */
export interface PrintedObject {
  /** Its dictionary or array, one character a byte. */
  readonly text: string;
  /** As it was packed. */
  readonly stream?: Uint8Array;
}

export interface PrintedPage {
  readonly number: number;
  /** The stream of all but its foot. */
  readonly body: PrintedObject;
  /** By kind and name, numbers of objects: fonts, pictures, colour spaces. */
  readonly resources: readonly (readonly [kind: string, name: string, object: number])[];
  readonly annotations: readonly number[];
  /** Structure elements by the marks of the page that they hold; undefined of a mark that none holds. */
  readonly elements: readonly (number | undefined)[];
}

/** What another document can take over of it; objects by their numbers. */
export interface PrintedFile {
  readonly object: (number: number) => PrintedObject;
  readonly pages: readonly PrintedPage[];
  /** The structure element that holds all others. */
  readonly root: number;
  /** Structure elements of annotations, by what annotations are known by. */
  readonly elementOf: (annotation: number) => number | undefined;
}

/** Of an object's text: strings, in which brackets are escaped, are passed over. */
const REFERENCE = /(\d+) 0 R/g;

/**
 * @param bytes of a document of `printDocument` whose pages have a foot.
 * @throws RangeError for any other: a fault of ours.
 */
export function printedFile(bytes: Uint8Array): PrintedFile {
  const file = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const text = file.toString("latin1");
  const table = Number(certain(/startxref\n(\d+)\n%%EOF\n?$/.exec(text)?.[1]));
  const starts = [...text.slice(table).matchAll(/^(\d{10}) 00000 n $/gm)].map(([, start]) =>
    Number(start),
  );
  const inOrder = [...starts, table].sort((one, other) => one - other);
  const ends = new Map(inOrder.map((start, i) => [start, inOrder[i + 1]]));
  const object = (number: number): PrintedObject => {
    const start = certain(starts[number - 1]);
    const from = text.indexOf("\n", start) + 1;
    const end = certain(ends.get(start)) - "\nendobj\n".length;
    const packed = text.indexOf("\nstream\n", from);
    return packed === -1 || packed > end
      ? { text: text.slice(from, end) }
      : {
          text: text.slice(from, packed),
          stream: file.subarray(packed + "\nstream\n".length, end - "\nendstream".length),
        };
  };
  const catalogue = object(entry(text.slice(table), "Root")).text;
  const structure = object(entry(catalogue, "StructTreeRoot")).text;
  const held = new Map(
    [...structure.matchAll(/^ +(\d+) (?:\[(.*)\]|(\d+) 0 R)$/gm)].map(
      ([, key, marks, element = ""]) => [
        Number(key),
        marks === undefined
          ? [Number(element)]
          : [...marks.matchAll(/(\d+) 0 R|null/g)].map(([, one]) =>
              one === undefined ? undefined : Number(one),
            ),
      ],
    ),
  );
  return {
    object,
    pages: references(listIn(object(entry(catalogue, "Pages")).text, "Kids")).map((number) => {
      const page = object(number).text;
      const [, body] = references(listIn(page, "Contents"));
      return {
        number,
        body: object(certain(body)),
        resources: resourcesIn(object(entry(page, "Resources")).text),
        annotations: references(listIn(page, "Annots")),
        elements: held.get(Number(/\/StructParents (\d+)/.exec(page)?.[1])) ?? [],
      };
    }),
    root: certain(references(listIn(structure, "K"))[0]),
    elementOf: (annotation) => held.get(annotation)?.[0],
  };
}

/** What an object holds below its dictionary's entry K. */
export function childrenIn(text: string): number[] {
  return references(listIn(text, "K"));
}

function entry(text: string, name: string): number {
  return Number(certain(new RegExp(`/${name} (\\d+) 0 R`).exec(text)?.[1]));
}

/** The entry of a name, a list; empty where there is none. */
function listIn(text: string, name: string): string {
  return new RegExp(`^/${name} \\[(.*)\\]$`, "m").exec(text)?.[1] ?? "";
}

function references(text: string): number[] {
  return [...text.matchAll(REFERENCE)].map(([, number]) => Number(number));
}

function resourcesIn(text: string): PrintedPage["resources"] {
  return [...text.matchAll(/^\/(\w+) <<\n((?:\/\S+ \d+ 0 R\n)*)>>$/gm)].flatMap(
    ([, kind = "", entries = ""]) =>
      [...entries.matchAll(/^\/(\S+) (\d+) 0 R$/gm)].map(
        ([, name = "", object]) => [kind, name, Number(object)] as const,
      ),
  );
}
