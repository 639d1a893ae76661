import { recordSchemas } from "../../../lib/records/json-schemas.ts";
import { chosen, index, type Chance } from "../chance.ts";
import { withData } from "./structure.ts";

interface Schema {
  readonly type?: string;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly items?: Schema;
  readonly prefixItems?: readonly Schema[];
  readonly anyOf?: readonly Schema[];
  readonly oneOf?: readonly Schema[];
  readonly $ref?: string;
  readonly $defs?: Readonly<Record<string, Schema>>;
}

/** The path of a key that takes a number; 0 stands for the entries of a list. */
type KeyPath = readonly (string | number)[];

/** A key, and from and to what its schema takes a number. */
interface NumericKey {
  readonly path: KeyPath;
  readonly from: number;
  readonly to: number;
}

/** Every key of a kind of record that takes a number, or an amount with its uncertainty. */
function numericKeys(schema: Schema, root: Schema, path: KeyPath): NumericKey[] {
  const named = /^#\/\$defs\/(.+)$/.exec(schema.$ref ?? "")?.[1];
  const here = named === undefined ? schema : (root.$defs?.[named] ?? {});
  if (path.length > 6) return [];
  if (here.type === "number" || here.type === "integer")
    return [{ path, from: Math.max(here.minimum ?? 0, 1e-6), to: here.maximum ?? 1e6 }];
  return [
    ...[...(here.anyOf ?? []), ...(here.oneOf ?? [])].flatMap((one) =>
      numericKeys(one, root, path),
    ),
    ...Object.entries(here.properties ?? {}).flatMap(([key, one]) =>
      // Value and uncertainty of an amount are written with it.
      key === "value" || key === "uncertainty" ? [] : numericKeys(one, root, [...path, key]),
    ),
    ...(here.items === undefined ? [] : numericKeys(here.items, root, [...path, 0])),
    ...(here.prefixItems ?? []).flatMap((one, i) => numericKeys(one, root, [...path, i])),
  ];
}

const FOLDERS: Readonly<Record<string, string>> = {
  workshop: "workshop.yaml",
  pigment: "pigments",
  vehicle: "vehicles",
  colour: "colours",
  answer: "answers",
};

/** By the folder that the records lie in. */
export const NUMERIC_KEYS: Readonly<Record<string, readonly NumericKey[]>> = Object.fromEntries(
  recordSchemas().flatMap(({ name, schema }) => {
    const folder = FOLDERS[name];
    const root = schema as Schema;
    const keys = new Map(numericKeys(root, root, []).map((key) => [JSON.stringify(key.path), key]));
    return folder === undefined ? [] : [[folder, [...keys.values()]]];
  }),
);

/** From the smallest to the largest that can be written, or within what the key takes. */
function size({ from, to }: NumericKey, chance: Chance): number {
  const [least, most] = chance() < 0.3 ? [-300, 300] : [Math.log10(from), Math.log10(to)];
  return Number((10 ** (least + (most - least) * chance())).toPrecision(1 + index(chance, 5)));
}

/** A number alone, with its uncertainty, or as a range. */
function figure(key: NumericKey, chance: Chance): unknown {
  const value = (chance() < 0.03 ? -1 : 1) * size(key, chance);
  return chosen<() => unknown>(chance, [
    () => value,
    () => ({ value, uncertainty: size(key, chance) }),
    () => ({ value, uncertainty: Math.abs(value) * 10 ** (8 * chance() - 7) }),
    () => ({ value: [value, size(key, chance)].sort((one, other) => one - other) }),
    () => ({ value: [value, value * (1 + chance())], uncertainty: value * chance() }),
  ])();
}

/** One or two numeric keys of a record, there or not there before, with numbers of every size. */
export function withNumbers(text: string, folder: string, chance: Chance): string {
  const keys = NUMERIC_KEYS[folder] ?? [];
  return withData(text, (data) => {
    for (let times = 1 + index(chance, 2); times > 0; times--) {
      const key = chosen(chance, keys);
      const isAmount = chance() < 0.6;
      setAt(data, key.path, isAmount ? figure(key, chance) : size(key, chance), chance);
    }
  });
}

function setAt(data: unknown, path: KeyPath, value: unknown, chance: Chance): void {
  let holder = data as Record<string | number, unknown>;
  path.forEach((key, i) => {
    const own = Array.isArray(holder) && holder.length > 0 ? index(chance, holder.length) : key;
    if (i === path.length - 1) holder[own] = value;
    else {
      const inner = holder[own];
      if (typeof inner !== "object" || inner === null)
        holder[own] = typeof path[i + 1] === "number" ? [] : {};
      holder = holder[own] as Record<string | number, unknown>;
    }
  });
}
