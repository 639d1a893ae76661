import { fractionHint, type Fault } from "./fault.ts";

/** A room so dry that its humidity was most likely written as a fraction; undefined of any other. */
export function humidityFault(percent: number | undefined): Fault | undefined {
  return percent === undefined || percent > 1
    ? undefined
    : {
        rule: "records/humidity",
        message: `The humidity is ${percent} %, and no room is so dry`,
        actual: `${percent} %`,
        expected: "a relative humidity in percent, such as 55",
        hint: percent > 0 ? fractionHint(percent) : undefined,
      };
}
