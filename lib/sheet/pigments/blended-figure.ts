import { at } from "../../quantities/at.ts";
import type { Figure } from "../../quantities/figure.ts";
import type { Quantity } from "../../quantities/interval.ts";
import { derivedFigure, type Method } from "../../quantities/derived-figure.ts";
import type { PigmentPart } from "./pigment-figures.ts";

type PartFigure = "densityGPerCm3" | "oilAbsorptionGPer100g";
export type BlendMember = { readonly massFraction: number } & Record<PartFigure, number>;

/** A figure of the mixed dry pigment: of one pigment simply that pigment's own. */
export function blendedFigure(
  parts: readonly PigmentPart[],
  own: PartFigure,
  needs: readonly PartFigure[],
  method: Method,
  blend: (members: readonly BlendMember[]) => number,
): Figure<Quantity> {
  const [only] = parts;
  if (parts.length === 1 && only !== undefined) return only[own];
  const inputs = Object.fromEntries<Figure<Quantity>>(
    parts.flatMap((part, i) => [
      [`massFraction ${i}`, part.massFraction],
      ...needs.map((need): [string, Figure<Quantity>] => [`${need} ${i}`, part[need]]),
    ]),
  );
  return derivedFigure(method, inputs, (values) =>
    blend(
      parts.map((_, i) => {
        const value = (of: PartFigure): number =>
          needs.includes(of) ? at(values, `${of} ${i}`) : 0;
        return {
          massFraction: at(values, `massFraction ${i}`),
          densityGPerCm3: value("densityGPerCm3"),
          oilAbsorptionGPer100g: value("oilAbsorptionGPer100g"),
        };
      }),
    ),
  );
}
