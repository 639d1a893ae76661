/** A name as the name of a file: lower-case letters, digits and single hyphens; empty of a name without any. @example slugOf("Lamp soot") // "lamp-soot" */
export function slugOf(name: string): string {
  return name
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .slice(0, 80)
    .replace(/^-|-$/g, "");
}
