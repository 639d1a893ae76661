import type {
  CellView,
  KnownPropertyView,
  PropertyTableView,
  TableView,
} from "../present/views.ts";
import type { Flow, Group, Piece } from "./layout-tree.ts";
import { GREY, shifted, type LineMark, type Mark, type Tagged } from "./mark.ts";
import { bold, paragraph, quiet, smallPt, wholeParagraph, type PaperStyle } from "./paper-style.ts";
import { measureText } from "./print-document.ts";
import { NO_VALUE } from "../words/no-value.ts";
import { naturalWidths, setRuns, type Run } from "./set-runs.ts";

/** Between two columns of a table. */
const GUTTER_MM = 2.5;
const ROW_PAD_MM = 0.55;
const ROW_LEADING = 1.25;
/** A table with no more rows is not parted. */
const KEPT_ROWS = 5;

interface Cell {
  readonly runs: readonly Run[];
  /** Under the runs, small. */
  readonly note?: string | undefined;
  readonly align?: "left" | "right";
  readonly isHead?: boolean;
}

/** Property, value with unit, standing; a value in words runs across; what is not stated is named in one line below. */
export function propertyTable(
  { caption, rows }: PropertyTableView,
  text: { readonly absent: (names: readonly string[]) => string; readonly colon: string },
  style: PaperStyle,
): Flow[] {
  const { widthMm, sizePt, isDense: isRunIn = false } = style;
  const known = rows.flatMap((row) => ("reason" in row ? [] : [row]));
  const absent = rows.flatMap((row) => ("reason" in row ? [row.name] : []));
  const widths = [widthMm * 0.42, widthMm * 0.34 - GUTTER_MM, widthMm * 0.24 - GUTTER_MM];
  if (style.isSpare === true)
    return [...runInFigures(known, text.colon, style), ...absentFlow(absent, text, style)];
  const [nameMm = 0, valueMm = 0] = widths;
  const across = [nameMm * 0.6, widthMm - nameMm * 0.6 - GUTTER_MM];
  const shown = known.map((row): Row => {
    const { name, value, isProse = false, standing } = row;
    const cells = [headCell(name), ...valueCells(row)];
    const isShort = !isProse && measureText(value, "sans bold", sizePt) <= valueMm;
    if (isShort) return { cells, widths };
    const words = wordsCell(value, standing);
    return isRunIn
      ? { head: { runs: bold(`${name}${text.colon}`), isHead: true }, words }
      : { cells: [headCell(name), words], widths: across };
  });
  return [
    ...(shown.length === 0 ? [] : [table(caption, [], shown, style, absent.length > 0)]),
    ...absentFlow(absent, text, style),
  ];
}

function absentFlow(
  absent: readonly string[],
  text: { readonly absent: (names: readonly string[]) => string },
  style: PaperStyle,
): Flow[] {
  return absent.length === 0
    ? []
    : [paragraph(quiet(text.absent(absent)), style, { sizePt: smallPt(style) })];
}

/** Names, values and standings one behind another, in one paragraph; a value in words is not bold. */
function runInFigures(
  known: readonly KnownPropertyView[],
  colon: string,
  style: PaperStyle,
): Flow[] {
  const runs = known.flatMap(({ name, value, isProse, unit, note, standing }, i): Run[] => [
    { text: `${i === 0 ? "" : " "}${name}${colon}`, face: "sans" },
    {
      text: unit === undefined ? value : `${value}\u00a0${unit}`,
      face: isProse === true ? "sans" : "sans bold",
    },
    ...quiet(`${note === undefined ? "" : ` ${note}`} ${standing.word}`),
    { text: i === known.length - 1 ? "." : ";", face: "sans" },
  ]);
  return runs.length === 0 ? [] : [paragraph(runs, style)];
}

function headCell(name: string): Cell {
  return { runs: [{ text: name, face: "sans" }], isHead: true };
}

function valueCells({ value, unit, note, standing }: KnownPropertyView): Cell[] {
  const figure = unit === undefined ? value : `${value}\u00a0${unit}`;
  return [
    {
      runs: [{ text: figure, face: "sans bold" }, ...(note === undefined ? [] : quiet(` ${note}`))],
    },
    { runs: quiet(standing.word), align: "right" },
  ];
}

function wordsCell(value: string, { word }: KnownPropertyView["standing"]): Cell {
  return { runs: [{ text: value, face: "sans" }, ...quiet(` ${word}`)] };
}

/** A table as a page prints it, standings as words beside what they are of. */
export function plainTable(view: TableView, style: PaperStyle): Group {
  const head = view.columns.map(({ head: text, unit, numeric }): Cell => ({
    runs: [{ text: unit === undefined ? text : `${text}, ${unit}`, face: "sans", ink: GREY }],
    align: numeric === true ? "right" : "left",
    isHead: true,
  }));
  const rows = view.rows.map((cells) =>
    cells.map((cell, i): Cell => ({
      ...tableCell(cell),
      align: view.columns[i]?.numeric === true ? "right" : "left",
      isHead: i === 0,
    })),
  );
  const widths = columnWidths([head, ...rows], style);
  const note =
    view.note === undefined
      ? []
      : [
          paragraph(quiet(view.note), style, {
            tag: "Note",
            sizePt: smallPt(style),
          }),
        ];
  return {
    kind: "group",
    tag: "Div",
    children: [
      table(
        view.caption,
        head.some(({ runs }) => runs.some(({ text }) => text !== ""))
          ? [{ cells: head, widths }]
          : [],
        rows.map((cells) => ({ cells, widths })),
        style,
      ),
      ...note,
    ],
  };
}

function tableCell({ text, standing, note, reason }: CellView): Cell {
  const word =
    standing === undefined || text === NO_VALUE
      ? []
      : [{ text: `${text === "" ? "" : " "}${standing.word}`, face: "sans" as const, ink: GREY }];
  return { runs: [{ text, face: "sans" }, ...word], note: note ?? reason };
}

/**
 * As wide as the widest text where there is room, the first column taking what is left; else no
 * narrower than the longest word, and what then is left shared by how much each would still take.
 * @source CSS 2.1, 17.5.2.2 : automatic table layout by least and greatest widths of content
 */
function columnWidths(
  rows: readonly (readonly Cell[])[],
  { widthMm, sizePt }: PaperStyle,
): number[] {
  const count = Math.max(...rows.map(({ length }) => length));
  const columns = Array.from({ length: count }, (_, i) => {
    const widths = rows.map((row) => naturalWidths(row[i]?.runs ?? [], sizePt));
    return {
      least: Math.max(...widths.map(({ leastMm }) => leastMm)) + 0.1,
      greatest: Math.max(...widths.map(({ greatestMm }) => greatestMm)) + 0.1,
    };
  });
  const [least, greatest] = [
    columns.reduce((sum, column) => sum + column.least, 0),
    columns.reduce((sum, column) => sum + column.greatest, 0),
  ];
  const room = widthMm - GUTTER_MM * (count - 1);
  if (greatest <= room)
    return columns.map((column, i) => column.greatest + (i === 0 ? room - greatest : 0));
  if (least >= room) return columns.map((column) => (column.least * room) / least);
  const share = (room - least) / (greatest - least);
  return columns.map((column) => column.least + share * (column.greatest - column.least));
}

/** Cells beside one another, or a head and its words in one paragraph, where room is scarcest. */
type Row =
  | { readonly cells: readonly Cell[]; readonly widths: readonly number[] }
  | { readonly head: Cell; readonly words: Cell };

function table(
  caption: string,
  head: readonly Row[],
  rows: readonly Row[],
  style: PaperStyle,
  isNoted = false,
): Group {
  const title: Piece[] =
    caption === ""
      ? []
      : [
          wholeParagraph(quiet(caption), style, {
            tag: "Caption",
            beforeMm: 2,
            sizePt: smallPt(style),
            keepWithNext: true,
          }),
        ];
  const heads = head.map((row) => ({ ...rowPiece(row, style, "Column"), keepWithNext: true }));
  const [first] = heads;
  return {
    kind: "group",
    tag: "Table",
    ...(first !== undefined && { runningHead: { piece: first, at: "column" } }),
    children: [
      ...title,
      ...heads,
      ...rows.map((row, i) => ({
        ...rowPiece(row, style, "Row"),
        beforeMm: i === 0 && head.length === 0 ? 1 : 0,
        ...(isKept(i, rows.length) || (isNoted && i === rows.length - 1)
          ? { keepWithNext: true }
          : {}),
      })),
    ],
  };
}

/** A short table is not parted, and of a long one no row stands alone at the foot or the head of a column. */
function isKept(row: number, count: number): boolean {
  return row < count - 1 && (count <= KEPT_ROWS || row === 0 || row === count - 2);
}

function rowPiece(row: Row, style: PaperStyle, scope: "Row" | "Column"): Piece {
  const { rowPadMm: padMm = ROW_PAD_MM } = style;
  const { children, high } = "head" in row ? runInCells(row, style) : rowCells(row, style, scope);
  const heightMm = high + 2 * padMm;
  const rule: LineMark = {
    kind: "line",
    fromMm: [0, heightMm],
    toMm: [style.widthMm, heightMm],
    widthPt: 0.25,
    ink: { grey: 0.6 },
  };
  return {
    kind: "piece",
    heightMm,
    beforeMm: 0,
    content: { tag: "TR", children: [...children, { tag: "Artifact", marks: [rule] }] },
  };
}

/** Cells of a row, and how high they are without what stays clear above and below [mm]. */
interface SetCells {
  readonly children: readonly Tagged[];
  readonly high: number;
}

/** The head alone is bold: by that its marks are told from those of its words. */
function runInCells(
  { head, words }: Extract<Row, { head: Cell }>,
  { widthMm, sizePt, leading = ROW_LEADING, rowPadMm: padMm = ROW_PAD_MM }: PaperStyle,
): SetCells {
  const set = setRuns([...head.runs, ...words.runs], { widthMm, sizePt, leading });
  const marks = set.marks.map((mark) => shifted(mark, 0, padMm));
  return {
    children: [
      { tag: "TH", scope: "Row", marks: marks.filter(({ face }) => face === "sans bold") },
      { tag: "TD", marks: marks.filter(({ face }) => face !== "sans bold") },
    ],
    high: set.heightMm,
  };
}

function rowCells(
  { cells, widths }: Extract<Row, { widths: readonly number[] }>,
  style: PaperStyle,
  scope: "Row" | "Column",
): SetCells {
  const { sizePt, leading = ROW_LEADING, rowPadMm: padMm = ROW_PAD_MM } = style;
  let x = 0;
  let height = 0;
  const children = cells.map((cell, i): Tagged => {
    const width = widths[i] ?? 0;
    const set = setRuns(cell.runs, {
      widthMm: width,
      sizePt,
      leading,
      align: cell.align ?? "left",
    });
    const note =
      cell.note === undefined
        ? undefined
        : setRuns(quiet(cell.note), {
            widthMm: width,
            sizePt: smallPt(style),
            leading,
          });
    const marks: Mark[] = [
      ...set.marks.map((mark) => shifted(mark, x, padMm)),
      ...(note?.marks ?? []).map((mark) => shifted(mark, x, padMm + set.heightMm)),
    ];
    height = Math.max(height, set.heightMm + (note?.heightMm ?? 0));
    x += width + GUTTER_MM;
    return cell.isHead === true ? { tag: "TH", scope, marks } : { tag: "TD", marks };
  });
  return { children, high: height };
}
