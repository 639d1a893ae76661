import { isMap, isScalar, isSeq, LineCounter, parseDocument } from "yaml";
import { tableFault, type Place, type WrittenTable } from "./written-table.ts";

/** The rows of a YAML text: a list, each row of it keys and values. @param file as complaints name it. */
export function yamlTable(file: string, text: string): WrittenTable {
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines, prettyErrors: false });
  const at = (offset: number, path = ""): Place => {
    const { line, col } = lines.linePos(offset);
    return { file, line: Math.max(line, 1), column: Math.max(col, 1), path };
  };
  const [error] = [...document.errors, ...document.warnings];
  if (error !== undefined)
    return broken(at(error.pos[0]), error.message.split("\n")[0] ?? error.code, "well-formed YAML");
  const list = document.contents;
  if (!isSeq(list)) return broken(at(0), "no list", "a list of rows");
  const odd = list.items.find((item) => !isMap(item));
  if (odd !== undefined)
    return broken(at(odd.range[0]), "a row without keys", "keys and values in each row");
  return {
    diagnostics: [],
    rows: list.items
      .filter((item) => isMap(item))
      .map((row) => ({
        cells: row.toJS(document) as Record<string, unknown>,
        place: (column) => {
          const pair = row.items.find(({ key }) => isScalar(key) && key.value === column);
          const node = pair?.value ?? pair?.key ?? row;
          return at(node.range[0], column);
        },
      })),
  };
}

function broken(place: Place, actual: string, expected: string): WrittenTable {
  return { rows: [], diagnostics: [tableFault(place, { subject: "table", actual, expected })] };
}
