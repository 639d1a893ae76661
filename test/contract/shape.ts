/** Says what is wrong with a value, each fault with its path; nothing when it has the shape. */
export type Shape = (value: unknown, path: string) => string[];

function shape(name: string, holds: (value: unknown) => boolean): Shape {
  return (value, path) =>
    holds(value)
      ? []
      : [
          `${path}: ${value === undefined ? "nothing" : JSON.stringify(value).slice(0, 60)} is no ${name}`,
        ];
}

const isNumber = (value: unknown): boolean => typeof value === "number" && Number.isFinite(value);

export const text = shape("text", (value) => typeof value === "string" && value.trim() !== "");
export const flag = shape("true or false", (value) => typeof value === "boolean");
export const number = shape("number", isNumber);
/** An estimate: [min, max]. */
export const range = shape(
  "range",
  (value) =>
    Array.isArray(value) &&
    value.length === 2 &&
    value.every(isNumber) &&
    Number(value[0]) <= Number(value[1]),
);
export const matching = (pattern: RegExp): Shape =>
  shape(
    `text like ${String(pattern)}`,
    (value) => typeof value === "string" && pattern.test(value),
  );
export const oneOf = (...words: readonly unknown[]): Shape =>
  shape(`one of ${words.join(", ")}`, (value) => words.includes(value));

export const either =
  (...shapes: readonly Shape[]): Shape =>
  (value, path) => {
    const faults = shapes.map((one) => one(value, path));
    return faults.some((found) => found.length === 0) ? [] : faults.flat();
  };
export const quantity = either(number, range);

export const listOf =
  (member: Shape): Shape =>
  (value, path) =>
    Array.isArray(value)
      ? value.flatMap((one: unknown, i) => member(one, `${path}[${i}]`))
      : [`${path} is no list`];

/** Keys ending in `?` may be absent; keys beside the named ones are let be: the contract says "at least". */
export const keys =
  (members: Readonly<Record<string, Shape>>): Shape =>
  (value, path) => {
    if (typeof value !== "object" || value === null || Array.isArray(value))
      return [`${path} has no keys`];
    return Object.entries(members).flatMap(([key, member]) => {
      const name = key.replace(/\?$/, "");
      const found = (value as Record<string, unknown>)[name];
      if (found !== undefined) return member(found, path === "" ? name : `${path}.${name}`);
      return name === key ? [`${path}.${name} is wanting`] : [];
    });
  };

/** Every key one of a closed set, every value of one shape. */
export const mapOf =
  (names: readonly string[], member: Shape): Shape =>
  (value, path) => {
    if (typeof value !== "object" || value === null || Array.isArray(value))
      return [`${path} has no keys`];
    return Object.entries(value).flatMap(([key, one]) =>
      names.includes(key)
        ? member(one, `${path}.${key}`)
        : [`${path}.${key} is none of ${names.join(", ")}`],
    );
  };
