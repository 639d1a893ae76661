import type { Interval } from "../../quantities/interval.ts";
import { NUMBERS } from "./phrases.ts";

export const ends = ([low, high]: Interval): string =>
  `${NUMBERS.decimal(low, 0)} to ${NUMBERS.decimal(high, 0)}`;
