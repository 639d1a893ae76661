import { percent, significant, within } from "./phrases.ts";

type NamedTint = { readonly tint: string; readonly white: string };

/** "titanium-white 1:20" as "Le dégradé 1:20 dans titanium white". */
export function letDown({ tint, white }: NamedTint): string {
  return tint.startsWith(`${white} `)
    ? `Le dégradé ${tint.slice(white.length + 1)} dans ${within(white)}`
    : `Le dégradé ${tint}`;
}

export function drawdown(name: string): string {
  const [, white, ratio] = /^(\S+) (\S+)$/.exec(name) ?? [];
  return white === undefined || ratio === undefined
    ? name === "masstone"
      ? "le ton plein"
      : `l’application ${within(name)}`
    : `le dégradé ${ratio} dans ${within(white)}`;
}

export function wavelengths(count: number): string {
  return `${count} longueur${count === 1 ? "" : "s"} d’onde`;
}

export function luminances(one: number, other: number): string {
  return `Y ${percent(one)} contre ${significant(other * 100, 2)}`;
}
