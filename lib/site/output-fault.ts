import { codeOf } from "../diagnostics/error-code.ts";

/** A reason for which an output can't be written; printed on one line. */
export class OutputFault extends Error {}

const REASONS: Readonly<Record<string, string>> = {
  ENOSPC: "the disk is full",
  EACCES: "permission denied",
  EPERM: "permission denied",
  EROFS: "the disk is read-only",
  ENOTDIR: "part of its path is not a folder",
  EEXIST: "part of its path is not a folder",
  EDQUOT: "the disk quota is used up",
  EMFILE: "this program may not open more files: raise the limit (ulimit -n)",
  ENFILE: "this machine has too many files open",
  EBUSY: "it is in use, or a mount point",
  ELOOP: "a link in its path leads round in a circle",
  ENAMETOOLONG: "its path is too long",
};

/** Whatever stopped a build in one line; a file system's complaint names the output, `out`. */
export function stoppedBy(error: unknown, out: string): string {
  if (error instanceof OutputFault) return error.message;
  const first = firstCause(error);
  const code = codeOf(first);
  // Node says the same where it may not open one more file.
  if (code === "ERR_MODULE_NOT_FOUND")
    return `${oneLine(String(first))}: run npm ci, or, where it is there, raise the limit of open files (ulimit -n)`;
  const reason = REASONS[code];
  return reason === undefined ? oneLine(String(first)) : `${out} can't be written: ${reason}`;
}

/** A fault of its own as it is, anything else in one line, with what became of the earlier output. */
export function asFault(error: unknown, out: string): OutputFault {
  return error instanceof OutputFault
    ? error
    : new OutputFault(`${stoppedBy(error, out)}; the earlier output is untouched`, {
        cause: error,
      });
}

/** Eleventy and others wrap what went wrong in what they were at. */
function firstCause(error: unknown): unknown {
  const { cause, originalError } = error as { cause?: unknown; originalError?: unknown };
  const inner = originalError ?? cause;
  return inner instanceof Error ? firstCause(inner) : error;
}

function oneLine(text: string): string {
  return text
    .split("\n")
    .map((line) => line.trim())
    .filter((line) => line !== "")
    .join(" ");
}
