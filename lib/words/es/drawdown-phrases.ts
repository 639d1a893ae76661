import { percent, significant, within } from "./phrases.ts";

type NamedTint = { readonly tint: string; readonly white: string };

/** "titanium-white 1:20" as "El rebaje 1:20 en titanium white". */
export function letDown({ tint, white }: NamedTint): string {
  return tint.startsWith(`${white} `)
    ? `El rebaje ${tint.slice(white.length + 1)} en ${within(white)}`
    : `El rebaje ${tint}`;
}

export function drawdown(name: string): string {
  const [, white, ratio] = /^(\S+) (\S+)$/.exec(name) ?? [];
  return white === undefined || ratio === undefined
    ? name === "masstone"
      ? "el tono pleno"
      : `la aplicación ${within(name)}`
    : `el rebaje ${ratio} en ${within(white)}`;
}

export function wavelengths(count: number): string {
  return `${count} ${count === 1 ? "longitud" : "longitudes"} de onda`;
}

export function luminances(one: number, other: number): string {
  return `Y ${percent(one)} frente a ${significant(other * 100, 2)}`;
}
