import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import { isOneOf, keysOf } from "../../quantities/members.ts";
import { cgatsReading } from "./cgats-reading.ts";
import { csvReading } from "./csv-reading.ts";
import { headerOf } from "./csv-header.ts";
import { cxfReading } from "./cxf-reading.ts";
import { faultList, TEXT_START, type FaultList, type ReadText } from "./fault-list.ts";
import { ENDINGS_BY_FORMAT } from "./reading-endings.ts";
import type { ReadingFile, ReadingFormat } from "./reading-column.ts";
import { LONGEST_TEXT } from "./size-limits.ts";
import { textSpots } from "./text-spots.ts";

export type { ReadingFile, ReadingColumn } from "./reading-column.ts";

const READERS: Readonly<Record<ReadingFormat, (source: ReadText) => ReadingFile | undefined>> = {
  CSV: csvReading,
  "CGATS.17": cgatsReading,
  CxF3: cxfReading,
};
/** ".txt, .cgats or .it8". */
const namedAs = (format: ReadingFormat): string =>
  ENDINGS_BY_FORMAT[format].join(", ").replace(/, (?=[^,]*$)/, " or ");
const ALL_NAMES = keysOf(ENDINGS_BY_FORMAT).map(namedAs).join(", ");

/** Controls that text may have: tab, line ends, form feed, what ends a file or begins an escape. A NUL is told of as another encoding. */
const TEXT_CONTROLS = "\0\t\n\v\f\r\u001A\u001B";
/** So many characters tell text from what is none. */
const LOOKED_THROUGH = 4096;

interface ParsedReadingFile {
  /** Absent as soon as there is an error. */
  readonly reading?: ReadingFile;
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * The readings in an instrument's file. The ending says which format it is, and
 * the content must agree. Whatever the text, the answer is a reading or
 * complaints, never an exception.
 *
 * @param file path as printed in complaints; its ending decides.
 * @param asFormat what it holds, whatever its ending.
 * @param text the file, decoded from UTF-8, with or without byte order mark.
 */
export function parseReadingFile(
  file: string,
  text: string,
  asFormat?: ReadingFormat,
): ParsedReadingFile {
  const faults = faultList(file);
  const body = text.startsWith("\uFEFF") ? text.slice(1) : text;
  if (holdsNoText(body.slice(0, LOOKED_THROUGH))) {
    faults.error(
      "encoding",
      { line: 1, column: 1 },
      {
        message:
          "The file holds bytes that no text has, as a picture or a program's own format does",
        actual: "bytes that are no text",
        expected: "readings as text",
        hint: "export them from the instrument as CSV, CGATS.17 or CxF3",
      },
    );
    return { diagnostics: faults.diagnostics };
  }
  const format = asFormat ?? checkedFormat(file, body, faults);
  const reading = format && READERS[format]({ text: body, spot: textSpots(body), faults });
  return {
    ...(reading && faults.errorCount() === 0 ? { reading } : {}),
    diagnostics: faults.diagnostics,
  };
}

function holdsNoText(text: string): boolean {
  return text.split("").some((unit) => unit < " " && !TEXT_CONTROLS.includes(unit));
}

function checkedFormat(file: string, text: string, faults: FaultList): ReadingFormat | undefined {
  const fault = (
    rule: string,
    message: string,
    actual: string,
    expected: string,
    hint?: string,
  ): undefined => {
    faults.error(rule, TEXT_START, {
      message,
      actual,
      expected,
      ...(hint !== undefined && { hint }),
    });
  };
  const ending = /\.[A-Za-z0-9]+$/.exec(file)?.[0].toLowerCase() ?? "none";
  const declared = keysOf(ENDINGS_BY_FORMAT).find((format) =>
    isOneOf(ENDINGS_BY_FORMAT[format], ending),
  );
  if (declared === undefined)
    return fault(
      "ending",
      `A reading's name has an ending that says its format, ${ALL_NAMES}, and this one has ${ending}`,
      ending,
      ALL_NAMES,
    );
  if (text.length > LONGEST_TEXT)
    return fault(
      "size",
      `The file has ${text.length} characters, and at most ${LONGEST_TEXT} are read`,
      `${text.length} characters`,
      `at most ${LONGEST_TEXT}`,
    );
  if (/\0|^\uFFFD/.test(text))
    return fault(
      "encoding",
      "The file is not saved as UTF-8 text",
      "bytes that are no text",
      "UTF-8",
      "save the file as UTF-8 text",
    );
  if (text.trim() === "")
    return fault("empty", `The file is empty, and would hold ${declared}`, "nothing", declared);
  const found = contentFormat(text);
  if (found === undefined ? declared !== "CSV" : found !== declared) {
    return fault(
      "format",
      `A ${ending} holds ${declared}, and this one holds ${found ?? "some other text"}`,
      found ?? "other text",
      declared,
      found && `name it ${namedAs(found)}`,
    );
  }
  return declared;
}

/** What a text looks like, undefined of some other text; a CSV has no mark of its own but its first header cell. */
export function contentFormat(text: string): ReadingFormat | undefined {
  if (/^\s*</.test(text)) return "CxF3";
  if (
    /^\s*(?:CGATS|IT8|ISO28178)\b/i.test(text) ||
    /(?:^|[\r\n])[ \t]*BEGIN_DATA(?:_FORMAT)?\b/i.test(text)
  )
    return "CGATS.17";
  return headerOf(text) === undefined ? undefined : "CSV";
}
