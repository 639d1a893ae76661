/** A combined statement taken apart: "H302+H332" is two. */
export function singleStatements(stated: string): string[] {
  return stated.split("+").map((code) => code.trim());
}
