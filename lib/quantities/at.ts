/**
 * The member of a list or of named values that is certain to be there.
 * @throws RangeError when it is not: a fault of ours, never of a record.
 */
export function at<T>(values: readonly T[], index: number): T;
export function at<T>(values: Readonly<Record<string, T>>, name: string): T;
export function at<T>(values: Readonly<Record<string, T>> | readonly T[], key: string | number): T {
  const value = (values as Readonly<Record<string | number, T | undefined>>)[key];
  if (value === undefined) throw new RangeError(`Nothing at ${key}`);
  return value;
}
