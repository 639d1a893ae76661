/** The code that Node gives an error, "ENOENT"; empty for what has none. */
export function codeOf(error: unknown): string {
  return typeof error === "object" &&
    error !== null &&
    "code" in error &&
    typeof error.code === "string"
    ? error.code
    : "";
}
