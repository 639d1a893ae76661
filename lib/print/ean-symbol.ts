import { createRequire } from "node:module";
import type JsBarcode from "jsbarcode";
import { eanFault } from "../records/ean.ts";

const require = createRequire(import.meta.url);

/** Modules of an EAN-13 without its quiet zones. */
export const EAN_MODULES = 95;
/** Light modules before and behind. @source iso-15420-memory */
export const EAN_QUIET = { before: 11, behind: 7 } as const;
/** Width of a module [mm]: the smallest that a till is held to read. @source iso-15420-memory */
export const EAN_MODULE_MM = 0.264;

/**
 * The bars of an EAN-13, module by module.
 * @returns 95 entries, true where the module is dark.
 * @throws RangeError for a number that is none.
 */
export function eanBars(ean: string): readonly boolean[] {
  const fault = eanFault(ean);
  if (fault !== undefined) throw new RangeError(`The EAN is ${ean}; right would be ${fault}`);
  const drawn: { encodings?: readonly { readonly data: string }[] } = {};
  // Loaded with the first number: a build whose cards and labels are as before draws none.
  const drawBars = require("jsbarcode") as typeof JsBarcode;
  drawBars(drawn, ean, { format: "EAN13", flat: true });
  const modules = (drawn.encodings ?? []).map(({ data }) => data).join("");
  if (modules.length !== EAN_MODULES)
    throw new Error(`An EAN-13 of ${modules.length} modules was drawn, and it has ${EAN_MODULES}`);
  return Array.from(modules, (module) => module === "1");
}

/**
 * Bars as one path in modules: side by side along x, or one under the other along y, for a
 * tube so narrow that bars along its axis would bend out of a scanner's sight.
 * @param length of the bars, in modules.
 */
export function eanPath(bars: readonly boolean[], length: number, run: "across" | "down"): string {
  let d = "";
  for (let at = 0; at < bars.length; at++) {
    if (bars[at] !== true) continue;
    const from = at;
    while (bars[at + 1] === true) at++;
    d +=
      run === "across"
        ? `M${from} 0H${at + 1}V${length}H${from}Z`
        : `M0 ${from}H${length}V${at + 1}H0Z`;
  }
  return d;
}

/** "6 291041 500213", as it is printed under its symbol. */
export function eanText(ean: string): string {
  return `${ean.slice(0, 1)} ${ean.slice(1, 7)} ${ean.slice(7)}`;
}
