import { scatteringPowerLimit, type OpacityClass } from "../../optics/films/opacity.ts";
import { significant } from "./phrases.ts";

export function articled(word: OpacityClass): string {
  return word === "opaque" ? "an opaque" : `a ${word}`;
}

export function limitOf(word: OpacityClass): string {
  const { from, below = 0 } = scatteringPowerLimit(word);
  return from === undefined ? `below ${significant(below, 2)}` : `from ${significant(from, 2)}`;
}

export function reach(spans: readonly OpacityClass[]): string | undefined {
  return spans.length < 2
    ? undefined
    : `the range reaches from ${spans[0] ?? ""} to ${spans.at(-1) ?? ""}`;
}
