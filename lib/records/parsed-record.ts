import type { z } from "zod";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { certain } from "../quantities/at.ts";
import type { ContentFile } from "./content-tree.ts";
import { errorAt, fileStart } from "./fault.ts";
import { frontMatter, type FrontMatter } from "./front-matter.ts";
import { checkedAgainst } from "./schema-faults.ts";
import { yamlRecord, yamlWhenAsked, type YamlRecord } from "./yaml-record.ts";

/** One record that passed its schema, and the YAML it came from, for the place of later complaints. */
export interface Parsed<R> {
  readonly slug: string;
  readonly file: string;
  readonly record: R;
  readonly yaml: YamlRecord;
  /** Markdown below the front matter, and the line of the file on which it begins. */
  readonly body: string;
  readonly bodyLine: number;
}

export interface ParsedRecord<R> {
  /** Absent as soon as there is a fault. */
  readonly record?: Parsed<R>;
  readonly diagnostics: readonly Diagnostic[];
}

/** The record that a file's text is, or everything that is wrong with it by itself. */
export function parsedRecord<S extends z.ZodType>(
  schema: S,
  source: ContentFile,
): ParsedRecord<z.output<S>> {
  const unprintable = unprintableFault(source);
  if (unprintable !== undefined) return { diagnostics: [unprintable] };
  const split =
    source.ending === ".md"
      ? frontMatter(source.file, source.text)
      : {
          parts: { yaml: source.text.replace(/^\uFEFF/, ""), firstLine: 1, body: "", bodyLine: 1 },
          diagnostics: [],
        };
  const { parts } = split;
  if (parts === undefined) return { diagnostics: split.diagnostics };
  const tooLong = lengthFault(source.file, parts);
  if (tooLong !== undefined) return { diagnostics: [tooLong] };
  const parsed = (): ReturnType<typeof yamlRecord> =>
    yamlRecord(source.file, parts.yaml, parts.firstLine);
  const yaml = parsed();
  if (yaml.record === undefined) return { diagnostics: yaml.diagnostics };
  const { value, diagnostics } = checkedAgainst(schema, yaml.record);
  if (value === undefined) return { diagnostics };
  return {
    diagnostics: [...yaml.diagnostics, ...diagnostics],
    record: {
      slug: source.stem,
      file: source.file,
      record: value,
      yaml: yamlWhenAsked(source.file, () => certain(parsed().record), yaml.record),
      body: parts.body,
      bodyLine: parts.bodyLine,
    },
  };
}

/** Letters [1] that a record, and the text below it, may have: forty times the longest that a workshop writes. */
const LONGEST = { record: 250_000, text: 250_000 } as const;

/** A record past all writing by hand would only keep everybody waiting. */
function lengthFault(
  file: string,
  { yaml, body }: Pick<FrontMatter, "yaml" | "body">,
): Diagnostic | undefined {
  const [what, length, most] =
    yaml.length > LONGEST.record
      ? ["The record", yaml.length, LONGEST.record]
      : ["The text below the record", body.length, LONGEST.text];
  return length <= most
    ? undefined
    : errorAt(fileStart(file), "records/too-long", {
        message: `${what} has ${length} letters, and at most ${most} are read`,
        actual: String(length),
        expected: `at most ${most}`,
      });
}

/** Bytes that are no UTF-8, and controls that are no text: a page could not show them. */
function unprintableFault({ file, text }: ContentFile): Diagnostic | undefined {
  const lines = text.replace(/^\uFEFF/, "").split("\n");
  const line = lines.findIndex((one) => UNPRINTABLE.test(one));
  if (line < 0) return undefined;
  const whole = errorAt(fileStart(file), "records/encoding", {
    message: "The file is not saved as UTF-8 text, or holds a control character here",
    actual: "bytes that are no text",
    expected: "UTF-8 text",
  });
  return {
    ...whole,
    place: { ...whole.place, line: line + 1, column: (lines[line]?.search(UNPRINTABLE) ?? 0) + 1 },
  };
}

/** Controls, and marks that turn the writing round or have no width. */
const UNPRINTABLE = /(?![\t\n\r\u00AD])[\uFFFD\p{Cc}\p{Cf}]/u;
