/** A specimen that is read as it hangs, beside the change that the record of its colour tells. */
import type { StatementOf } from "../quantities/statement.ts";
import type { ExposedForm, Exposure } from "./exposure.ts";
import { lightfastnessRuling, type LightfastnessCategory } from "./lightfastness.ts";

/** The greatest change read of it [Delta-E*ab]: a colour does not come back. */
export interface ChangeSoFar {
  readonly form: ExposedForm;
  readonly deltaEab: number;
}

export type ChangeSoFarStatement = StatementOf<
  "change-beyond-record",
  {
    readonly form: ExposedForm;
    readonly deltaEab: number;
    readonly category: LightfastnessCategory;
    readonly recordedDeltaEab: number;
  }
>;

/** Two readings of one change differ by so much [Delta-E*ab]. Common practice, no source. */
export const SAME_CHANGE = 0.5;

/** The greatest change on record of that form [Delta-E*ab], where it is less than was read. */
export function less(
  { form, deltaEab }: ChangeSoFar,
  recorded: readonly Pick<Exposure, "form" | "deltaEab">[],
): number | undefined {
  const changes = recorded.filter((one) => one.form === form).map((one) => one.deltaEab);
  const greatest = Math.max(...changes);
  return changes.length > 0 && greatest < deltaEab - SAME_CHANGE ? greatest : undefined;
}

/** That another specimen has changed more already than those on record. */
export function changeSoFarStatements(
  change: ChangeSoFar,
  recorded: readonly Pick<Exposure, "form" | "deltaEab">[],
): ChangeSoFarStatement[] {
  const recordedDeltaEab = less(change, recorded);
  return recordedDeltaEab === undefined
    ? []
    : [
        {
          rule: "change-beyond-record",
          values: {
            ...change,
            category: lightfastnessRuling(change.deltaEab).category,
            recordedDeltaEab,
          },
          standing: "measured",
        },
      ];
}
