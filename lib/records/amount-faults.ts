import { nearestHint } from "../diagnostics/nearest-word.ts";
import { amountEnds } from "./amount-ends.ts";
import { faultAt, warningAt, type Fault, type Faults } from "./fault.ts";
import { methodUnitFault } from "./method-units.ts";
import type { Parsed } from "./parsed-record.ts";
import { valuesIn } from "./record-values.ts";
import type { ColourRecord } from "./schema/colour.ts";
import type { PigmentRecord } from "./schema/pigment.ts";

/** Times [1] its value that an uncertainty can't be: of a figure with a zero that means nothing. */
const UNCERTAINTY_TIMES = 3;
/** Whose zero is a convention, so that an uncertainty may pass the value. */
const FREE_ZERO = new Set<PropertyKey>(["temperatureC"]);
/** Of a difference that may be none, an uncertainty passes the value as soon as it is small. */
const MAY_BE_NOUGHT = new Set<PropertyKey>(["deltaEab"]);

/** Days that a record gives, and how many years ahead each may lie: what is to be made no more may be said before. */
const DATES = new Map<PropertyKey, number>([
  ["date", 0],
  ["started", 0],
  ["ended", 0],
  ["calibration", 0],
  ["discontinued", 5],
]);

/** A workshop's own readings and papers are no older [years]. Our own limit. */
export const OLDEST_YEARS = 60;

/** Largest difference that two colours of paint have [Delta-E*ab], and the largest that light makes of one. */
const DELTA_E = { possible: 100, usual: 60 } as const;

/** Methods of a rub-out that are in use, by how they begin. @source iso-787-5, astm-d281, astm-d1483 */
const RUB_OUT_METHODS = ["ISO 787-5", "ASTM D281", "ASTM D1483"] as const;

/** Figures of any record that no method gives: uncertainties past all sense, methods that name another unit, dates to come or long past. */
export function* valueFaults(
  { record, yaml }: Parsed<unknown>,
  { today }: { readonly today: string | undefined },
): Faults {
  for (const { value, path } of valuesIn(record)) {
    const key = path.at(-1) ?? "";
    const uncertainty = uncertaintyFault(key, value);
    if (uncertainty !== undefined) yield faultAt(yaml.place([...path, "uncertainty"]), uncertainty);
    const { method } = (typeof value === "object" && value !== null ? value : {}) as {
      readonly method?: unknown;
    };
    const unit = typeof method === "string" ? methodUnitFault(key, method) : undefined;
    if (unit !== undefined) yield faultAt(yaml.place([...path, "method"]), unit);
    const yearsAhead = DATES.get(key);
    if (today === undefined || typeof value !== "string" || yearsAhead === undefined) continue;
    const date = dateFault(value, today, yearsAhead);
    if (date !== undefined) yield faultAt(yaml.place(path), date);
  }
}

/** Colour changes beyond white to black, or beyond what light makes of a paint. */
export function* colourChangeFaults({
  record: { exposures = [] },
  yaml,
}: Parsed<ColourRecord>): Faults {
  for (const [i, { deltaEab }] of exposures.entries()) {
    const [least] = amountEnds(deltaEab, ["exposures", i, "deltaEab"]);
    if (least !== undefined && least.value > DELTA_E.usual)
      yield faultAt(yaml.place(least.path), exposureFault(least.value));
  }
}

function uncertaintyFault(key: PropertyKey, found: unknown): Fault | undefined {
  if (typeof found !== "object" || found === null || FREE_ZERO.has(key)) return undefined;
  const { value, uncertainty } = found as {
    readonly value?: unknown;
    readonly uncertainty?: unknown;
  };
  if (typeof uncertainty !== "number") return undefined;
  const largest = Math.max(...[value].flat().map((end) => Math.abs(Number(end))));
  const isBeyond = uncertainty > UNCERTAINTY_TIMES * largest;
  const passes = uncertainty > largest && !MAY_BE_NOUGHT.has(key);
  if (!(largest > 0) || !(isBeyond || passes)) return undefined;
  return {
    severity: isBeyond ? "error" : "warning",
    rule: "records/uncertainty",
    message: `The uncertainty ${uncertainty} is ${Number((uncertainty / largest).toPrecision(2))} times the value ${largest} itself`,
    actual: String(uncertainty),
    expected: "a standard uncertainty, in the unit of the value",
    hint: "in the unit of the value, not in percent",
  };
}

function dateFault(date: string, today: string, yearsAhead: number): Fault | undefined {
  const earliest = `${Number(today.slice(0, 4)) - OLDEST_YEARS}`;
  if (date < earliest)
    return {
      severity: "warning",
      rule: "records/date-long-past",
      message: `The date ${date} lies more than ${OLDEST_YEARS} years before ${today}`,
      actual: date,
      expected: `${earliest} or after`,
      hint: "a digit of the year?",
    };
  const latest = `${Number(today.slice(0, 4)) + yearsAhead}${today.slice(4)}`;
  if (date <= latest) return undefined;
  return {
    severity: "warning",
    rule: "records/date-to-come",
    message: `The date ${date} lies ${yearsAhead === 0 ? "" : `more than ${yearsAhead} years `}after ${today}`,
    actual: date,
    expected: `${latest} or before`,
    hint: "a digit of the year, or day and month exchanged?",
  };
}

function exposureFault(deltaEab: number): Fault {
  const isBeyond = deltaEab > DELTA_E.possible;
  return {
    severity: isBeyond ? "error" : "warning",
    rule: "records/colour-change",
    message: isBeyond
      ? `A change of ${deltaEab} Delta-E*ab is more than lies between black and white`
      : `A change of ${deltaEab} Delta-E*ab is more than light makes of almost any paint`,
    actual: String(deltaEab),
    expected: `at most ${isBeyond ? DELTA_E.possible : DELTA_E.usual}`,
    hint: `${Number((deltaEab / 10).toPrecision(3))}, if the decimal point is lost`,
  };
}

/** Methods of a rub-out that there are not. */
export function* rubOutMethodFaults({
  record: { oilAbsorptionGPer100g },
  yaml,
}: Parsed<PigmentRecord>): Faults {
  if (typeof oilAbsorptionGPer100g !== "object") return;
  const { method } = oilAbsorptionGPer100g;
  const names = (known: string): RegExp =>
    new RegExp(`${known.replace(/[ -]/g, "[\\s-]*")}(?!\\d)`, "i");
  if (
    method === undefined ||
    !/\b(ISO|ASTM|DIN|EN|BS)\b/i.test(method) ||
    RUB_OUT_METHODS.some((known) => names(known).test(method))
  )
    return;
  yield warningAt(yaml.place(["oilAbsorptionGPer100g", "method"]), "records/rub-out-method", {
    message: `"${method}" is no method of finding oil absorption that is known here: ${RUB_OUT_METHODS.join(", ")}`,
    actual: method,
    expected: RUB_OUT_METHODS.join(" | "),
    hint: nearestHint(method, RUB_OUT_METHODS),
  });
}
