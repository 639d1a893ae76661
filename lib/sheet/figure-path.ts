import type { FigurePath } from "../quantities/figure.ts";

/** Much the same paths stand on all sheets: each is one text, by the path above it and its own name. */
const PATHS = new Map<FigurePath, Map<string, FigurePath>>();

/** Of a part by its name; the path of the sheet itself is empty. */
export function pathBelow(path: FigurePath, name: string): FigurePath {
  if (path === "") return name;
  const below = PATHS.get(path) ?? new Map<string, FigurePath>();
  const known = below.get(name);
  if (known !== undefined) return known;
  // Joined it is one text; put together by a template it would hold its parts beside itself.
  const whole = [path, name].join(".");
  PATHS.set(path, below.set(name, whole));
  return whole;
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
