/**
 * Pigments that two-constant theory does not hold for. It counts light that is absorbed or
 * scattered, alike in all directions and without a change of wavelength.
 * @source astm-e991, flake-pigments-km
 */
import type { StatementOf } from "../quantities/statement.ts";

export const SPECIAL_EFFECTS = ["fluorescent", "metallic", "pearlescent"] as const;
export type SpecialEffect = (typeof SPECIAL_EFFECTS)[number];

/** Why nothing is predicted of a paint, whatever was drawn down of it. */
export type NotPredicted = StatementOf<
  "pigment-fluoresces" | "pigment-is-flakes",
  { readonly pigments: readonly string[] }
>;

/** Pigment metals of the Colour Index, all of them flakes. */
const PIGMENT_METAL = /^PM /;

/** What a pigment is by its record, else by the class that its Colour Index name stands in. */
export function specialEffect(
  effect: SpecialEffect | undefined,
  colourIndexName: string | undefined,
): SpecialEffect | undefined {
  const isMetal = colourIndexName !== undefined && PIGMENT_METAL.test(colourIndexName);
  return effect ?? (isMetal ? "metallic" : undefined);
}

/**
 * @param pigments of one paint, by the names that pages print.
 * @returns rules `pigment-fluoresces`, which goes before, and `pigment-is-flakes`, each with those
 *   pigments alone; undefined where theory holds for all of them.
 */
export function notPredicted(
  pigments: readonly { readonly name: string; readonly effect: SpecialEffect | undefined }[],
): NotPredicted | undefined {
  const named = (isOne: (effect: SpecialEffect) => boolean): string[] =>
    pigments.flatMap(({ name, effect }) => (effect !== undefined && isOne(effect) ? [name] : []));
  const fluorescent = named((effect) => effect === "fluorescent");
  if (fluorescent.length > 0)
    return {
      rule: "pigment-fluoresces",
      values: { pigments: fluorescent },
      source: "astm-e991",
    };
  const flakes = named((effect) => effect !== "fluorescent");
  return flakes.length === 0
    ? undefined
    : { rule: "pigment-is-flakes", values: { pigments: flakes }, source: "flake-pigments-km" };
}
