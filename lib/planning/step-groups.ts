import type { MeasuredKind, MeasurementKey } from "./measurement.ts";
import type { NextStep } from "./next-steps.ts";

/** Steps of one kind that each gain as much: what is done in one go. */
export interface StepGroup {
  readonly kind: MeasuredKind;
  readonly key: MeasurementKey;
  readonly slugs: readonly string[];
  /** Of one of them. */
  readonly step: NextStep;
  /** Colours whose sheets change, of all of them. */
  readonly colours: readonly string[];
}

/** Steps that differ in nothing but the record, in one group each, in the order of the best. */
export function stepGroups(steps: readonly NextStep[]): StepGroup[] {
  const groups = new Map<string, StepGroup>();
  for (const step of steps) {
    const { kind, key, slug } = step.measurement;
    const id = [kind, key, step.cleared, step.firmer, step.added, step.claims].join(" ");
    const group = groups.get(id);
    groups.set(id, {
      kind,
      key,
      slugs: [...(group?.slugs ?? []), slug],
      step: group?.step ?? step,
      colours: [...new Set([...(group?.colours ?? []), ...step.colours])],
    });
  }
  return [...groups.values()];
}
