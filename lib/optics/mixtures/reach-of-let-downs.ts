import { deltaE00 } from "../../colorimetry/difference.ts";
import type { Lab } from "../../colorimetry/viewing.ts";
import { domainError } from "../../diagnostics/diagnostic.ts";
import type { LadderModel } from "../tints/ladder.ts";
import type { UnlikeReadings } from "../unlike-readings.ts";
import { mixedLab, mixedTint, mixture, type MassPart, type MixedTint } from "./mixture.ts";

/** Parts of one to the other [1], from where the first is lost in it to where the second is; a step is some 2 Delta-E00. */
const RATIOS = Array.from({ length: 41 }, (_, i) => Math.exp((i - 20) * 0.35));
const SHARES = [0, ...RATIOS.map((ratio) => ratio / (1 + ratio)), 1];

/**
 * Of all mixtures of one or two colours, by themselves or with the white that they were let down in, the one
 * nearest to a colour: whoever does not know the parts knows that none comes nearer.
 *
 * @param ladders one or two, in one and the same white.
 * @param lab D65/10.
 * @param withWhite whether there may be white in it.
 * @returns the mixture, as predicted, within the steps of its search, some 2 Delta-E00; rules of {@link mixture}.
 * @throws RangeError when there are no ladders, or more than two.
 * @source duncan-1940
 */
export function nearestMixed(
  ladders: readonly LadderModel[],
  lab: Lab,
  withWhite: boolean,
): MixedTint | UnlikeReadings {
  const [first, second] = ladders;
  if (first === undefined || ladders.length > 2)
    throw domainError("count of colours", ladders.length, "1 or 2");
  const parts: MassPart[][] =
    second === undefined
      ? [[{ ladder: first, parts: 1 }]]
      : SHARES.map((share) => [
          { ladder: first, parts: share },
          { ladder: second, parts: 1 - share },
        ]);
  const tried = parts.map(mixture);
  const unlike = tried.find((one) => "rule" in one);
  if (unlike !== undefined) return unlike;
  const tints = tried.flatMap((mixed) =>
    "rule" in mixed
      ? []
      : (withWhite ? [...RATIOS, Infinity] : [Infinity]).map((massRatio) => ({
          mixed,
          massRatio,
          apart: deltaE00(mixedLab(mixed, massRatio), lab),
        })),
  );
  const nearest = tints.reduce((one, other) => (other.apart < one.apart ? other : one));
  return mixedTint(nearest.mixed, nearest.massRatio);
}
