/**
 * The member of a list or of named values that is certain to be there.
 * @throws RangeError when it is not: a fault of ours, never of a record.
 */
export function at<T>(values: ArrayLike<T>, index: number): T;
export function at<T>(values: Readonly<Record<string, T>>, name: string): T;
export function at<T>(values: Readonly<Record<string, T>> | ArrayLike<T>, key: string | number): T {
  const value = (values as Readonly<Record<string | number, T | undefined>>)[key];
  if (value === undefined) throw new RangeError(`Nothing at ${key}`);
  return value;
}

/**
 * A value that is certain to be there where this is asked for.
 * @throws RangeError when it is not: a fault of ours, never of a record.
 */
export function certain<T>(value: T | undefined): T {
  if (value === undefined) throw new RangeError("Nothing where a value was certain");
  return value;
}
