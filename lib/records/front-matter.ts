import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { errorAt, fileStart } from "./fault.ts";

export interface FrontMatter {
  readonly yaml: string;
  /** Line of the file on which the YAML begins. */
  readonly firstLine: number;
  readonly body: string;
  /** Line of the file on which the body begins. */
  readonly bodyLine: number;
}

/** Split a Markdown record at its two `---` lines. */
export function frontMatter(
  file: string,
  text: string,
): { parts?: FrontMatter; diagnostics: Diagnostic[] } {
  const lines = text.replace(/^\uFEFF/, "").split(/\r\n|\r|\n/);
  const fault = (line: number, message: string): { diagnostics: Diagnostic[] } => {
    const whole = errorAt(fileStart(file), "records/front-matter", {
      message,
    });
    return { diagnostics: [{ ...whole, place: { ...whole.place, line } }] };
  };
  if (lines[0]?.trimEnd() !== "---")
    return fault(1, "The record begins without front matter: its first line is three hyphens, ---");
  const end = lines.findIndex((line, i) => i > 0 && line.trimEnd() === "---");
  if (end < 0)
    return fault(lines.length, "The front matter is not closed by a line of three hyphens, ---");
  const below = lines.slice(end + 1);
  const blank = Math.max(
    0,
    below.findIndex((line) => line.trim() !== ""),
  );
  return {
    parts: {
      yaml: lines.slice(1, end).join("\n"),
      firstLine: 2,
      body: below.slice(blank).join("\n").trimEnd(),
      bodyLine: end + 2 + blank,
    },
    diagnostics: [],
  };
}
