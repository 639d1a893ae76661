import { GEOMETRIES, wordOf } from "../closed-sets.ts";
import { percent, significant, within } from "./phrases.ts";

type NamedTint = { readonly tint: string; readonly white: string };

/** "titanium-white 1:20" as "Die Aufhellung 1:20 in titanium white". */
export function letDown({ tint, white }: NamedTint): string {
  return tint.startsWith(`${white} `)
    ? `Die Aufhellung ${tint.slice(white.length + 1)} in ${within(white)}`
    : `Die Aufhellung ${tint}`;
}

/** After "die Messung": whose it is. */
export function drawdown(name: string): string {
  const [, white, ratio] = /^(\S+) (\S+)$/.exec(name) ?? [];
  if (white !== undefined && ratio !== undefined)
    return `der Aufhellung ${ratio} in ${within(white)}`;
  return name === "masstone" ? "des Volltons" : `von ${within(name)}`;
}

export function geometry(of: string): string {
  return wordOf(GEOMETRIES, of, "de");
}

export function wavelengths(count: number): string {
  return `${count} Wellenlänge${count === 1 ? "" : "n"}`;
}

export function luminances(one: number, other: number): string {
  return `Y ${percent(one)} gegen ${significant(other * 100, 2)}`;
}
