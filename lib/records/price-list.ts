import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { nearestHint, nearestWord } from "../diagnostics/nearest-word.ts";
import { eanFault } from "./ean.ts";
import { priceHint, thousandsFault } from "./price-slips.ts";
import { cellSlips, cutPrice, type PricedCells } from "./price-cells.ts";
import { csvCells, delimiterOf } from "./readings/csv-cells.ts";
import { faultList, type FaultList } from "./readings/fault-list.ts";
import type { WrittenCell } from "./readings/reading-column.ts";
import { textSpots } from "./readings/text-spots.ts";
import { writtenNumber } from "./readings/written-number.ts";
import { within } from "./schema/reach.ts";

/** Columns of prices.csv; the first three are in every list. */
const COLUMNS = ["colour", "ml", "price", "code", "ean"] as const;
const REQUIRED: readonly Column[] = ["colour", "ml", "price"];
export type Column = (typeof COLUMNS)[number];
const FIRST_LINE = "colour,ml,price, with code and ean where they are used";
/** What a cell of it is called in a sentence. */
const NAMES: Readonly<Record<Column, string>> = {
  colour: "colour",
  ml: "size",
  price: "price",
  code: "code",
  ean: "ean",
};

/** One line of prices.csv. */
export interface PriceRow {
  readonly colour: string;
  readonly ml: number;
  /** In the workshop's currency, before its rounding rule; absent of a size that has none yet. */
  readonly price?: number;
  /** The price group that a label prints in place of a price. */
  readonly code?: string;
  readonly ean?: string;
  /** Where its cells stand. */
  readonly at: Readonly<Record<Column, Pick<Diagnostic["place"], "line" | "column">>>;
}

interface PriceList {
  readonly rows: readonly PriceRow[];
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * The rows of prices.csv, or what is wrong with them, a line each. Cells are parted by commas, semicolons or tabs.
 * @param currency its code, which tells how many decimals a price has.
 */
export function priceList(file: string, text: string, currency: string | undefined): PriceList {
  const body = text.replace(/^\uFEFF/, "");
  const faults = faultList(file, "records");
  const table = csvCells({ text: body, spot: textSpots(body), faults })?.filter((row) =>
    row.some((cell) => cell.text !== ""),
  );
  const [header = [], ...lines] = table ?? [];
  const at = columnPlaces(header, faults);
  if (faults.errorCount() > 0) return { rows: [], diagnostics: faults.diagnostics };
  const rows = lines.flatMap((cells) => priceRow(cells, at, header.length, currency, faults) ?? []);
  if (faults.errorCount() === 0) {
    const priced = lines.flatMap((cells) => pricedCells(cells, at) ?? []);
    cellSlips(priced, delimiterOf(body), currency, faults);
  }
  return { rows, diagnostics: faults.diagnostics };
}

function pricedCells(
  cells: readonly WrittenCell[],
  at: ReadonlyMap<Column, number>,
): PricedCells | undefined {
  const [price, code] = [cells[at.get("price") ?? -1], cells[at.get("code") ?? -1]];
  return price === undefined || code === undefined ? undefined : { price, code };
}

function columnPlaces(
  header: readonly WrittenCell[],
  faults: FaultList,
): ReadonlyMap<Column, number> {
  const places = new Map<Column, number>();
  const columnOf = ({ text }: WrittenCell): Column | undefined =>
    COLUMNS.find((known) => known === text.toLowerCase());
  if (!header.some(columnOf)) {
    faults.error("price-column", header[0] ?? { line: 1, column: 1 }, {
      message: `The first line of the price list names no columns: it is ${FIRST_LINE}`,
      actual: header.map(({ text }) => text).join(", "),
      expected: COLUMNS.join(", "),
    });
    return places;
  }
  header.forEach((cell, i) => {
    const column = columnOf(cell);
    if (column === undefined || places.has(column))
      faults.error("price-column", cell, {
        message:
          column === undefined
            ? `A price list has no column "${cell.text}": its columns are ${COLUMNS.join(", ")}`
            : `The column ${column} comes twice`,
        actual: cell.text,
        expected: COLUMNS.join(", "),
        hint: column === undefined ? nearestHint(cell.text, COLUMNS) : undefined,
      });
    else places.set(column, i);
  });
  const misspelt = header.map(({ text }) => nearestWord(text, COLUMNS));
  for (const column of REQUIRED)
    if (!places.has(column) && !misspelt.includes(column))
      faults.error("price-column", header[0] ?? { line: 1, column: 1 }, {
        message: `The price list has no column ${column}: its first line is ${FIRST_LINE}`,
        actual: header.map(({ text }) => text).join(", "),
        expected: COLUMNS.join(", "),
      });
  return places;
}

function priceRow(
  cells: readonly WrittenCell[],
  at: ReadonlyMap<Column, number>,
  width: number,
  currency: string | undefined,
  faults: FaultList,
): PriceRow | undefined {
  const cell = (column: Column): WrittenCell =>
    cells[at.get(column) ?? -1] ?? { ...(cells[0] ?? { line: 1, column: 1 }), text: "" };
  const before = faults.errorCount();
  const past = cells.slice(width).find(({ text }) => text !== "");
  if (past !== undefined) {
    faults.error("price", past, {
      message: `The cell "${past.text}" lies past the last column: the first line has ${width}`,
      actual: `${cells.length} cells`,
      expected: `${width} cells, as in the first line`,
      hint: "a decimal comma in the price? between commas a price has a decimal point",
    });
    return undefined;
  }
  const refuse = (column: Column, expected: string, hint?: string): undefined => {
    const { text } = cell(column);
    faults.error("price", cell(column), {
      message:
        text === ""
          ? `The ${NAMES[column]} is missing: it is ${expected}`
          : `The ${NAMES[column]} can't be "${text}": it is ${expected}`,
      actual: text === "" ? "nothing" : text,
      expected,
      hint,
    });
  };
  const colour = cell("colour").text;
  if (colour === "") refuse("colour", "a file of colours/, without its ending");
  const ml = within("ml").safeParse(writtenNumber(cell("ml").text.replace(/\s*ml$/i, ""))).data;
  if (ml === undefined) refuse("ml", "contents in millilitres, such as 40", sizeHint(cells, at));
  const written = cell("price").text;
  const price = written === "" ? undefined : within("price").safeParse(writtenNumber(written)).data;
  if (written !== "" && price === undefined)
    refuse("price", "a number of 0 or more, in the workshop's currency", priceHint(written));
  const thousands = thousandsFault(written, currency);
  if (thousands !== undefined) faults.error("price", cell("price"), { ...thousands });
  const { text: ean } = cell("ean");
  const fault = ean === "" ? undefined : eanFault(ean);
  const cut = pricedCells(cells, at);
  const meant = cut && cutPrice(cut, currency);
  if (fault !== undefined)
    refuse(
      "ean",
      fault,
      meant && `a decimal comma in the price? between commas it is written ${meant}`,
    );
  if (faults.errorCount() > before || ml === undefined) return undefined;
  const { text: code } = cell("code");
  return {
    colour,
    ml,
    ...(price !== undefined && { price }),
    ...(code !== "" && { code }),
    ...(ean !== "" && { ean }),
    at: {
      colour: spotOf(cell("colour")),
      ml: spotOf(cell("ml")),
      price: spotOf(cell("price")),
      code: spotOf(cell("code")),
      ean: spotOf(cell("ean")),
    },
  };
}

function spotOf({ line, column }: WrittenCell): PriceRow["at"][Column] {
  return { line, column };
}

const ML_IN: Readonly<Record<string, number>> = { l: 1000, dl: 100, cl: 10 };

/** A size in another unit. A row whose cells are parted by another sign than the first row's is one cell, or a few. */
function sizeHint(
  cells: readonly WrittenCell[],
  at: ReadonlyMap<Column, number>,
): string | undefined {
  const [first] = cells;
  const written = cells[at.get("ml") ?? -1]?.text ?? "";
  const [, amount = "", unit = ""] = /^(\d+(?:[.,]\d+)?)\s*(l|dl|cl)$/i.exec(written) ?? [];
  const times = ML_IN[unit.toLowerCase()];
  if (times !== undefined)
    return `written so: ${Number((Number(amount.replace(",", ".")) * times).toPrecision(6))}`;
  return first !== undefined && cells.length < at.size && /[;,\t].*[;,\t]/.test(first.text)
    ? "this row's cells are parted by another sign than those of the first row"
    : undefined;
}
