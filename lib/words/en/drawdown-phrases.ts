import { percent, significant, within } from "./phrases.ts";

type NamedTint = { readonly tint: string; readonly white: string };

/** "titanium-white 1:20" as "The let-down 1:20 in titanium white". */
export function letDown({ tint, white }: NamedTint): string {
  return tint.startsWith(`${white} `)
    ? `The let-down ${tint.slice(white.length + 1)} in ${within(white)}`
    : `The let-down ${tint}`;
}

export function drawdown(name: string): string {
  const [, white, ratio] = /^(\S+) (\S+)$/.exec(name) ?? [];
  return white === undefined || ratio === undefined
    ? `the ${name === "masstone" ? name : within(name)}`
    : `the let-down ${ratio} in ${within(white)}`;
}

export function wavelengths(count: number): string {
  return `${count} wavelength${count === 1 ? "" : "s"}`;
}

export function luminances(one: number, other: number): string {
  return `Y ${percent(one)} against ${significant(other * 100, 2)}`;
}
