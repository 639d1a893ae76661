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
  /** Colours that the gain was counted on, and all that it concerns: of a group of colours those tried, and the group. */
  readonly counted: { readonly on: number; readonly of: number };
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
      counted:
        kind === "colour"
          ? {
              on: (group?.counted.on ?? 0) + (step.isTried ? step.countedOn : 0),
              of: (group?.counted.of ?? 0) + step.concerns,
            }
          : (group?.counted ?? { on: step.countedOn, of: step.concerns }),
    });
  }
  return [...groups.values()];
}
