import { chosen, index, type Chance } from "../chance.ts";
import type { Mutation } from "./text.ts";

const CELLS = [
  "",
  "0",
  "-0.01",
  "-1",
  "1.2",
  "1.21",
  "45.2%",
  "0,5",
  "1e-300",
  "1e300",
  "NaN",
  "inf",
  "n/a",
  "0.0000001",
  "0.5 0.5",
  "#DIV/0!",
  '"',
  "1 000",
] as const;

type Table = string[][];
const ofTable =
  (change: (rows: Table, chance: Chance) => void): Mutation =>
  (text, chance) => {
    const rows = text.split("\n").map((row) => row.split(","));
    change(rows, chance);
    return rows.map((row) => row.join(",")).join("\n");
  };
const cellOf = (rows: Table, chance: Chance): readonly [row: string[], at: number] => {
  const row = chosen(chance, rows);
  return [row, index(chance, row.length)];
};

/** What spreadsheets and instruments do to a table: cells, columns, rows, separators, marks. */
export const CSV_MUTATIONS: readonly Mutation[] = [
  ofTable((rows, chance) => {
    const [row, at] = cellOf(rows, chance);
    row[at] = chosen(chance, CELLS);
  }),
  ofTable((rows, chance) => {
    const [row, at] = cellOf(rows, chance);
    const value = Number(row[at]);
    row[at] = String(value * 10 ** (4 * chance() - 2));
  }),
  ofTable((rows, chance) => {
    const [one, other] = [index(chance, rows[0]?.length ?? 1), index(chance, rows[0]?.length ?? 1)];
    for (const row of rows) {
      const kept = row[one] ?? "";
      row[one] = row[other] ?? "";
      row[other] = kept;
    }
  }),
  ofTable((rows, chance) => {
    const at = index(chance, rows[0]?.length ?? 1);
    for (const row of rows) row.splice(at, 1);
  }),
  ofTable((rows, chance) => {
    const at = 1 + index(chance, Math.max(1, (rows[0]?.length ?? 2) - 1));
    const value = (Math.floor(1000 * chance()) / 1000).toFixed(3);
    rows.slice(1).forEach((row) => {
      if (row.length > 1) row[at] = value;
    });
  }),
  ofTable((rows, chance) => {
    const factor = chosen(chance, [0.01, 0.1, 1.5, 10, 100]);
    const at = 1 + index(chance, Math.max(1, (rows[0]?.length ?? 2) - 1));
    rows.slice(1).forEach((row) => {
      if (row.length > 1) row[at] = String(factor * Number(row[at]));
    });
  }),
  ofTable((rows, chance) => {
    const from = index(chance, rows.length);
    rows.splice(from, 1 + index(chance, 8));
  }),
  ofTable((rows) => {
    rows.reverse();
  }),
  ofTable((rows, chance) => {
    const step = chosen(chance, [3.33, 4, 5, 20, 0, -10, 100]);
    rows.slice(1).forEach((row, i) => {
      if (row.length > 1) row[0] = String(400 + i * step);
    });
  }),
  ofTable((rows) => {
    const columns = Math.max(...rows.map((row) => row.length));
    const turned = Array.from({ length: columns }, (_, i) => rows.map((row) => row[i] ?? ""));
    rows.splice(0, rows.length, ...turned);
  }),
  (text) => text.replaceAll(",", ";").replaceAll(".", ","),
  (text) => text.replaceAll(",", "\t"),
  (text) => `sep=;\n${text.replaceAll(",", ";")}`,
  (text, chance) => `${chosen(chance, ["\ufeff", "Instrument: x\n\n", "#\n", "\n\n", '"'])}${text}`,
  (text, chance) => text.replace(/^nm/, chosen(chance, ["", "Name", "wavelength", "NM", "nm,nm"])),
  (text) => text.replaceAll("\n", "\r\n"),
];

const WORDS = [
  "BEGIN_DATA",
  "END_DATA",
  "BEGIN_DATA_FORMAT",
  "END_DATA_FORMAT",
  "NUMBER_OF_SETS 9999",
  "NUMBER_OF_FIELDS -1",
  'SCALE "percent"',
  "LAB_L LAB_A LAB_B",
  "SPECTRAL_NM400",
  'MEASUREMENT_GEOMETRY "45/0"',
  'FILTER "M3"',
  "CGATS.17",
  'KEYWORD "X"',
] as const;

const ofWords =
  (change: (words: string[], at: number, chance: Chance) => void): Mutation =>
  (text, chance) => {
    const words = text.split(/(\s+)/);
    change(words, 2 * index(chance, Math.ceil(words.length / 2)), chance);
    return words.join("");
  };

export const CGATS_MUTATIONS: readonly Mutation[] = [
  ofWords((words, at) => words.splice(at, 2)),
  ofWords((words, at) => words.splice(at, 0, words[at] ?? "", " ")),
  ofWords((words, at, chance) => {
    words[at] = chosen(chance, CELLS);
  }),
  ofWords((words, at, chance) => {
    words[at] = chosen(chance, WORDS);
  }),
  ofWords((words, at, chance) => {
    const other = 2 * index(chance, Math.ceil(words.length / 2));
    const kept = words[at] ?? "";
    words[at] = words[other] ?? "";
    words[other] = kept;
  }),
  (text, chance) => {
    const lines = text.split("\n");
    return lines
      .toSpliced(index(chance, lines.length), 1 + index(chance, 4), chosen(chance, WORDS))
      .join("\n");
  },
  (text, chance) =>
    text.replaceAll(/\b0\.\d+/g, (value) => (chance() < 0.05 ? chosen(chance, CELLS) : value)),
  (text) => text.replaceAll(".", ","),
  (text) => text.replaceAll("\n", "\r"),
];

const NODES = [
  "<x/>",
  "<x>",
  "</x>",
  "<!--",
  "<![CDATA[",
  "<?x ?>",
  '<!DOCTYPE x [<!ENTITY a "b">]>&a;',
  "&#0;",
  "&lt;",
  "<cc:Object/>",
  "<cc:ReflectanceSpectrum>1 2 3</cc:ReflectanceSpectrum>",
  "<cc:ColorCIELab><cc:L>50</cc:L><cc:A>0</cc:A><cc:B>1e300</cc:B></cc:ColorCIELab>",
] as const;

const ofPieces =
  (change: (pieces: string[], at: number, chance: Chance) => void): Mutation =>
  (text, chance) => {
    const pieces = text.split(/(<[^>]*>)/);
    change(pieces, index(chance, pieces.length), chance);
    return pieces.join("");
  };

export const CXF_MUTATIONS: readonly Mutation[] = [
  ofPieces((pieces, at) => pieces.splice(at, 1)),
  ofPieces((pieces, at) => pieces.splice(at, 0, pieces[at] ?? "")),
  ofPieces((pieces, at, chance) => {
    pieces[at] = chosen(chance, NODES);
  }),
  ofPieces((pieces, at, chance) => {
    const other = index(chance, pieces.length);
    const kept = pieces[at] ?? "";
    pieces[at] = pieces[other] ?? "";
    pieces[other] = kept;
  }),
  (text, chance) => {
    const attributes = [...text.matchAll(/ [\w:]+="[^"]*"/g)];
    if (attributes.length === 0) return text;
    const found = chosen(chance, attributes);
    const written = chosen(chance, ["", found[0].replace(/"[^"]*"/, `"${chosen(chance, CELLS)}"`)]);
    return text.slice(0, found.index) + written + text.slice(found.index + found[0].length);
  },
  (text, chance) => {
    const values = [...text.matchAll(/(?<=[\s>])\d+(?:\.\d+)?(?=[\s<])/g)];
    if (values.length === 0) return text;
    const found = chosen(chance, values);
    return (
      text.slice(0, found.index) + chosen(chance, CELLS) + text.slice(found.index + found[0].length)
    );
  },
  (text, chance) => text.replaceAll("cc:", chosen(chance, ["", "x:", "cc::"])),
];
