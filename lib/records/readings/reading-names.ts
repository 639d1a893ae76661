import { TEXT_START, type FaultList, type Spot } from "./fault-list.ts";

/** What a file offers as the name of one reading. */
interface NameOffer {
  /** SAMPLE_NAME, or the name of an object; "" for none. */
  readonly name: string;
  /** SAMPLE_ID, or the Id of an object; "" for none. */
  readonly id: string;
  readonly at: Spot;
}

/**
 * One name a reading, in their order: the samples' names where each has its
 * own, else their identifiers, with a warning. A reading that has neither takes
 * its number. Complains when the identifiers repeat as well.
 */
export function readingNames(offers: readonly NameOffer[], faults: FaultList): string[] {
  const named = offers.map(({ name, id }, i) => name || id || String(i + 1));
  const twin = firstTwin(named);
  if (twin === undefined) return named;
  const identified = offers.map(({ id, name }, i) => id || name || String(i + 1));
  const second = firstTwin(identified);
  const fault = (
    index: number,
    names: readonly string[],
    severity: "error" | "warning",
    expected: string,
  ): void =>
    faults[severity]("duplicated-column", offers[index]?.at ?? TEXT_START, {
      message:
        severity === "warning"
          ? `The sample name ${names[index] ?? ""} comes twice, so the samples go by their identifiers`
          : `The sample ${names[index] ?? ""} comes twice`,
      actual: names[index] ?? "",
      expected,
    });
  if (second === undefined)
    fault(twin, named, "warning", "each sample name once; the samples go by their identifiers");
  else fault(second, identified, "error", "each sample once");
  return identified;
}

function firstTwin(names: readonly string[]): number | undefined {
  const seen = new Set<string>();
  const index = names.findIndex((name) => seen.has(name) || !seen.add(name));
  return index < 0 ? undefined : index;
}
