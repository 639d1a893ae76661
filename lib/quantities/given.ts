/**
 * Those of a list that there are: what a condition left out is passed over.
 * @example given([isMixed && "mixed", "alone"]) // ["alone"] of what is not mixed
 */
export function given<T>(list: readonly (T | false | undefined)[]): T[] {
  return list.filter((one) => one !== false && one !== undefined) as T[];
}
