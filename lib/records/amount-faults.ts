import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { nearestWord } from "../diagnostics/nearest-word.ts";
import { amountEnds } from "./amount-ends.ts";
import { allRecords, type ParsedFiles } from "./parsed-files.ts";
import type { Parsed } from "./parsed-record.ts";
import { eachValue } from "./record-values.ts";
import type { RecordPath } from "./yaml-record.ts";

/** Times [1] its value that an uncertainty can't be: of a figure with a zero that means nothing. */
const UNCERTAINTY_TIMES = 3;
/** Whose zero is a convention, so that an uncertainty may pass the value. */
const FREE_ZERO = new Set<PropertyKey>(["temperatureC"]);
/** Of a difference that may be none, an uncertainty passes the value as soon as it is small. */
const MAY_BE_NOUGHT = new Set<PropertyKey>(["deltaEab"]);

/** Keys whose day has come when the record is written. */
const DATES = new Set<PropertyKey>(["date", "started", "ended"]);

/** A workshop's own readings and papers are no older [years]. Our own limit. */
const OLDEST_YEARS = 60;

/** Largest difference that two colours of paint have [Delta-E*ab], and the largest that light makes of one. */
const DELTA_E = { possible: 100, usual: 60 } as const;

/** Methods of a rub-out that are in use, by how they begin. @source iso-787-5, astm-d281, astm-d1483 */
const RUB_OUT_METHODS = ["ISO 787-5", "ASTM D281", "ASTM D1483"] as const;

/** Figures that no method gives: uncertainties past all sense, colour changes beyond white to black, methods that there are not, dates to come or long past. */
export function amountFaults(files: ParsedFiles, today: string | undefined): Diagnostic[] {
  return [
    ...allRecords(files).flatMap((one) => valueFaults(one, today)),
    ...[...files.colours.values()].flatMap((colour) =>
      (colour.record.exposures ?? []).flatMap(({ deltaEab }, i) =>
        exposureFaults(colour, amountEnds(deltaEab, ["exposures", i, "deltaEab"])),
      ),
    ),
    ...[...files.pigments.values()].flatMap(methodFaults),
  ];
}

function valueFaults(one: Parsed<unknown>, today: string | undefined): Diagnostic[] {
  const faults: Diagnostic[] = [];
  eachValue(one.record, (value, path) => {
    faults.push(...uncertaintyFaults(one, path, value));
    if (today !== undefined) faults.push(...dateFaults(one, path, value, today));
  });
  return faults;
}

function uncertaintyFaults(
  { yaml }: Parsed<unknown>,
  path: RecordPath,
  found: unknown,
): Diagnostic[] {
  if (typeof found !== "object" || found === null || FREE_ZERO.has(path.at(-1) ?? "")) return [];
  const { value, uncertainty } = found as {
    readonly value?: unknown;
    readonly uncertainty?: unknown;
  };
  if (typeof uncertainty !== "number") return [];
  const largest = Math.max(...[value].flat().map((end) => Math.abs(Number(end))));
  const isBeyond = uncertainty > UNCERTAINTY_TIMES * largest;
  const passes = uncertainty > largest && !MAY_BE_NOUGHT.has(path.at(-1) ?? "");
  if (!(largest > 0) || !(isBeyond || passes)) return [];
  return [
    {
      severity: isBeyond ? "error" : "warning",
      rule: "records/uncertainty",
      place: yaml.place([...path, "uncertainty"]),
      message: `The uncertainty ${uncertainty} is ${Number((uncertainty / largest).toPrecision(2))} times the value ${largest} itself`,
      actual: String(uncertainty),
      expected: "a standard uncertainty, in the unit of the value",
      hint: "in the unit of the value, not in percent",
    },
  ];
}

function dateFaults(
  { yaml }: Parsed<unknown>,
  path: RecordPath,
  value: unknown,
  today: string,
): Diagnostic[] {
  if (!DATES.has(path.at(-1) ?? "") || typeof value !== "string") return [];
  const earliest = `${Number(today.slice(0, 4)) - OLDEST_YEARS}`;
  if (value < earliest)
    return [
      {
        severity: "warning",
        rule: "records/date-long-past",
        place: yaml.place(path),
        message: `The date ${value} lies more than ${OLDEST_YEARS} years before ${today}`,
        actual: value,
        expected: `${earliest} or after`,
        hint: "a digit of the year?",
      },
    ];
  if (value <= today) return [];
  return [
    {
      severity: "warning",
      rule: "records/date-to-come",
      place: yaml.place(path),
      message: `The date ${value} lies after ${today}`,
      actual: value,
      expected: `${today} or before`,
      hint: "a digit of the year, or day and month exchanged?",
    },
  ];
}

function exposureFaults(
  { yaml }: Parsed<unknown>,
  ends: readonly { readonly value: number; readonly path: RecordPath }[],
): Diagnostic[] {
  return ends.slice(0, 1).flatMap(({ value, path }): Diagnostic[] => {
    if (value <= DELTA_E.usual) return [];
    const isBeyond = value > DELTA_E.possible;
    return [
      {
        severity: isBeyond ? "error" : "warning",
        rule: "records/colour-change",
        place: yaml.place(path),
        message: isBeyond
          ? `A change of ${value} Delta-E*ab is more than lies between black and white`
          : `A change of ${value} Delta-E*ab is more than light makes of almost any paint`,
        actual: String(value),
        expected: `at most ${isBeyond ? DELTA_E.possible : DELTA_E.usual}`,
        hint: `${Number((value / 10).toPrecision(3))}, if the decimal point is lost`,
      },
    ];
  });
}

function methodFaults({
  record: { oilAbsorptionGPer100g },
  yaml,
}: Parsed<{ readonly oilAbsorptionGPer100g?: unknown }>): Diagnostic[] {
  if (typeof oilAbsorptionGPer100g !== "object" || oilAbsorptionGPer100g === null) return [];
  const { method } = oilAbsorptionGPer100g as { readonly method?: unknown };
  const names = (known: string): RegExp =>
    new RegExp(`${known.replace(/[ -]/g, "[\\s-]*")}(?!\\d)`, "i");
  if (
    typeof method !== "string" ||
    !/\b(ISO|ASTM|DIN|EN|BS)\b/i.test(method) ||
    RUB_OUT_METHODS.some((known) => names(known).test(method))
  )
    return [];
  const near = nearestWord(method, RUB_OUT_METHODS);
  return [
    {
      severity: "warning",
      rule: "records/rub-out-method",
      place: yaml.place(["oilAbsorptionGPer100g", "method"]),
      message: `"${method}" is no method of finding oil absorption that is known here: ${RUB_OUT_METHODS.join(", ")}`,
      actual: method,
      expected: RUB_OUT_METHODS.join(" | "),
      ...(near === undefined ? {} : { hint: `nearest: ${near}` }),
    },
  ];
}
