import { mixingRange, type MixingRange } from "../../lib/mixing/mixing-range.ts";
import type { MixingData } from "../../lib/mixing/mixing-paint.ts";
import { mixingData } from "../../lib/pages/mixing-data.ts";
import { workedSite } from "../../lib/site/site-context.ts";
import { RECORDS } from "../sheet/demonstration-sheets.ts";

/** The demonstration as a browser is sent it, by way of JSON. */
export const WORKED = workedSite(RECORDS, undefined);
export const DATA = JSON.parse(JSON.stringify(mixingData(WORKED.context))) as MixingData;
export const RANGE: MixingRange = mixingRange(DATA);
