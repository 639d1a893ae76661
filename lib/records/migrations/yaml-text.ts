import { isMap, isNode, isScalar, parseDocument, type Node, type Scalar, type YAMLMap } from "yaml";
import type { Change } from "./migration.ts";

/** A key of a map with its value, each with its place in the text. */
export interface WrittenPair {
  readonly key: Scalar;
  readonly value: Node | undefined;
  /** Where the key begins, and where its value ends, or the key where there is none. */
  readonly from: number;
  readonly to: number;
}

/** The map that a record's YAML is; undefined where it is none. */
export function writtenMap(text: string): YAMLMap | undefined {
  const { contents, errors } = parseDocument(text, { uniqueKeys: false });
  return errors.length === 0 && isMap(contents) ? contents : undefined;
}

export function writtenPairs(map: YAMLMap): WrittenPair[] {
  return map.items.flatMap(({ key, value }): WrittenPair[] => {
    if (!isScalar(key) || !key.range) return [];
    const node = isNode(value) ? value : undefined;
    return [{ key, value: node, from: key.range[0], to: node?.range?.[1] ?? key.range[1] }];
  });
}

export function writtenPair(map: YAMLMap, name: string): WrittenPair | undefined {
  return writtenPairs(map).find(({ key }) => key.value === name);
}

/** A key by another name, its value and all around it as they are. */
export function renamedKey(map: YAMLMap, from: string, to: string): Change[] {
  const pair = writtenPair(map, from);
  if (pair === undefined) return [];
  if (writtenPair(map, to) !== undefined)
    return [
      { at: pair.from, refused: `${from} and ${to} stand side by side, and one of them is meant` },
    ];
  return [
    { at: pair.from, edits: [{ from: pair.from, to: pair.key.range?.[1] ?? pair.from, text: to }] },
  ];
}
