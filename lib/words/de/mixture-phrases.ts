import type { Interval } from "../../quantities/interval.ts";
import { decimals, percent, within } from "./phrases.ts";

export function losing(v: { readonly component: string; readonly loss: number }): string {
  return `Hat ${within(v.component)} ${percent(v.loss)} an Stärke verloren,`;
}

export function change(v: { readonly deltaE00: number }): string {
  return `\u0394E00\u00a0${decimals(v.deltaE00, 1)}`;
}

export function lightness(v: { readonly L: number }): string {
  return decimals(v.L, 0);
}

/** A change without its sign, which the words around it give. */
export function amount({ change: [low, high] }: { readonly change: Interval }): string {
  const [least, most] = [Math.abs(low), Math.abs(high)];
  return decimals([Math.min(least, most), Math.max(least, most)], 1);
}

/** Ends that may be negative: "-4 bis 3", since a dash between them would be read as another minus. */
export function span([low, high]: Interval, places: number): string {
  return `${decimals(low, places)} bis ${decimals(high, places)}`;
}
