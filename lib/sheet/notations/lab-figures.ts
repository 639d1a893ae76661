import type { Lab, Xyz } from "../../colorimetry/viewing.ts";
import { computedFigure, type Figure, type Input, type Standing } from "../../quantities/figure.ts";
import type { SourceKey } from "../../sources/source.ts";
import type { LabFigures, XyzFigures } from "./notation-figures.ts";

/** How a set of coordinates came about: the same for each of them. */
export interface Origin {
  readonly standing: Standing;
  readonly method: string;
  readonly source?: SourceKey | undefined;
  readonly inputs: readonly Input[];
}

/** A figure of a colour notation, which sums and tables give rather than arithmetic on figures. */
export function notationFigure<V extends number | string | readonly number[]>(
  value: V,
  unit: string,
  { standing, method, source, inputs }: Origin,
  uncertainty?: number,
): Figure<V> {
  return computedFigure(standing, value, { unit, method, source, inputs, uncertainty });
}

export function labFigures({ L, a, b }: Lab, origin: Origin, uncertainty?: Lab): LabFigures {
  return {
    L: notationFigure(L, "1", origin, uncertainty?.L),
    a: notationFigure(a, "1", origin, uncertainty?.a),
    b: notationFigure(b, "1", origin, uncertainty?.b),
  };
}

export function xyzFigures({ X, Y, Z }: Xyz, origin: Origin): XyzFigures {
  return {
    X: notationFigure(X, "1", origin),
    Y: notationFigure(Y, "1", origin),
    Z: notationFigure(Z, "1", origin),
  };
}
