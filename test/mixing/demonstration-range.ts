import { mixingRange, type MixingRange } from "../../lib/mixing/mixing-range.ts";
import type { MixingData } from "../../lib/mixing/mixing-paint.ts";
import { mixingData } from "../../lib/pages/mixing-data.ts";
import { worked } from "../support/demonstration.ts";

/** The demonstration as a browser is sent it, by way of JSON. */
export const WORKED = worked();
export const DATA = JSON.parse(JSON.stringify(mixingData(WORKED.context))) as MixingData;
export const RANGE: MixingRange = mixingRange(DATA);
