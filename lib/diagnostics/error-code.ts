/** The code that Node gives an error, "ENOENT"; empty for what has none. */
export function codeOf(error: unknown): string {
  return typeof error === "object" &&
    error !== null &&
    "code" in error &&
    typeof error.code === "string"
    ? error.code
    : "";
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: "since nothing is there",
  ENOTDIR: "since it is not a folder",
  EISDIR: "since it is a folder",
  EACCES: "since permission is denied",
  EPERM: "since permission is denied",
  EROFS: "since the disk is read-only",
  ENOSPC: "since the disk is full",
  ELOOP: "since a link leads round in a circle",
};

/** Why a file or folder can't be read or written, as the end of a sentence. */
export function reasonRefused(error: unknown): string {
  const code = codeOf(error);
  return REASONS[code] ?? `since the system says ${code === "" ? String(error) : code}`;
}
