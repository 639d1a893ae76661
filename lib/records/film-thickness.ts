import { filmUnitHint } from "../drying/film-units.ts";
import type { Fault } from "./fault.ts";

/** Reach of a film drawn down [um], and under which a film is thinner than all but a few. Common practice. */
const FILM_REACH_UM = [3, 1000] as const;
const THIN_FILM_UM = 5;

/** A thickness [um] beyond what is drawn down, with the unit that it was most likely given in. */
export function filmThicknessFault(um: number): Fault | undefined {
  const [least, most] = FILM_REACH_UM;
  const isBeyond = !(um >= least && um <= most);
  if (!isBeyond && um >= THIN_FILM_UM) return undefined;
  return {
    severity: isBeyond ? "error" : "warning",
    rule: "records/film-thickness",
    message: isBeyond
      ? `The film is ${um} um thick, and films drawn down lie between ${least} and ${most} um`
      : `The film is ${um} um thick, and few films are drawn down under ${THIN_FILM_UM} um`,
    actual: `${um} um`,
    expected: `${isBeyond ? least : THIN_FILM_UM} to ${most} um`,
    hint: filmUnitHint(um),
  };
}
