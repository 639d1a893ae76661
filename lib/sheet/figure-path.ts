import type { FigurePath } from "../quantities/figure.ts";

/** Of a part by its name; the path of the sheet itself is empty. */
export function pathBelow(path: FigurePath, name: string): FigurePath {
  return path === "" ? name : `${path}.${name}`;
}

/** An array's member goes by its slug, a tint by its white's, a step by its ratio, a film by its micrometres: paths then survive a new neighbour. */
export function memberName(member: unknown, index: number): string {
  if (typeof member === "object" && member !== null) {
    if ("slug" in member && typeof member.slug === "string") return member.slug;
    if ("massRatio" in member && typeof member.massRatio === "string") return member.massRatio;
    if ("filmUm" in member && typeof member.filmUm === "number") return String(member.filmUm);
    if ("white" in member) return memberName(member.white, index);
  }
  return String(index);
}
