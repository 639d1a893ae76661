import { type Figure, type FigureRef } from "../../quantities/figure.ts";
import type { Quantity } from "../../quantities/interval.ts";
import { derivedFigure, type Method } from "../../quantities/derived-figure.ts";
import type { PigmentPart } from "../sheet.ts";

type PartFigure = "densityGPerCm3" | "oilAbsorptionGPer100g";
export type BlendMember = { readonly massFraction: number } & Record<PartFigure, number>;

/** Where a blend's figure stands in the sheet. */
const BLEND_PATHS: Readonly<Record<PartFigure, string>> = {
  densityGPerCm3: "oil.pigmentDensityGPerCm3",
  oilAbsorptionGPer100g: "oil.oilAbsorptionGPer100g",
};

/** A figure of the mixed dry pigment with its place: of one pigment simply that pigment's own. */
export function blendedFigure(
  parts: readonly PigmentPart[],
  own: PartFigure,
  needs: readonly PartFigure[],
  method: Method,
  blend: (members: readonly BlendMember[]) => number,
): FigureRef<Quantity> {
  const [only] = parts;
  if (parts.length === 1 && only !== undefined)
    return { path: `pigments.${only.slug}.${own}`, figure: only[own] };
  const inputs = Object.fromEntries(
    parts.flatMap((part, i) => [
      [
        `massFraction ${i}`,
        {
          path: `pigments.${part.slug}.massFraction`,
          figure: part.massFraction as Figure<Quantity>,
        },
      ],
      ...needs.map(
        (need) =>
          [`${need} ${i}`, { path: `pigments.${part.slug}.${need}`, figure: part[need] }] as const,
      ),
    ]),
  ) as Record<string, FigureRef<Quantity>>;
  const figure = derivedFigure(method, inputs, (values) =>
    blend(
      parts.map((_, i) => ({
        massFraction: values[`massFraction ${i}`] ?? NaN,
        densityGPerCm3: values[`densityGPerCm3 ${i}`] ?? NaN,
        oilAbsorptionGPer100g: values[`oilAbsorptionGPer100g ${i}`] ?? NaN,
      })),
    ),
  );
  return { path: BLEND_PATHS[own], figure };
}
