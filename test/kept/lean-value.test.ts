import { deserialize, serialize, setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { expect, test } from "vitest";
import { lean } from "../../lib/kept/lean-value.ts";

const again = (value: unknown): unknown => deserialize(serialize(value)) as unknown;

const method = { method: "weighed", digits: [1, 2.5, -0] };
const VALUE = {
  method,
  same: method,
  list: ["weighed", method.digits, undefined, { text: "x".repeat(200) }],
  bytes: new Uint8Array([1, 2]),
  map: new Map([["weighed", [Number.NaN, 1]]]),
  nothing: null,
  isEmpty: [],
};

test("a value made lean says what it said, each kind of thing in it", () => {
  expect(lean(again(VALUE))).toEqual(VALUE);
});

test("what is one thing in it stays one, and what is two stays two", () => {
  const made = lean(again({ ...VALUE, other: { ...method } })) as typeof VALUE & {
    readonly other: object;
  };
  expect(made.same).toBe(made.method);
  expect(made.list[1]).toBe(made.method.digits);
  expect(made.other).not.toBe(made.method);
});

test("of what refers to itself an end is come to", () => {
  const round: { own?: unknown; readonly name: string } = { name: "round" };
  round.own = [round];
  const made = lean(again(round)) as { readonly own: readonly unknown[] };
  expect(made.own[0]).toBe(made);
});

test("many values that say the same take less memory than they did as they were read", () => {
  const one = { method: "two-constant fit through all drawdowns", numbers: [0.1, 0.2, 0.3, 0.4] };
  setFlagsFromString("--expose-gc");
  const sweep = runInNewContext("gc") as () => void;
  const taken = (made: (value: unknown) => unknown): number => {
    const bytes = serialize(Array.from({ length: 20_000 }, () => ({ ...one })));
    sweep();
    const before = process.memoryUsage().heapUsed;
    const values = made(deserialize(bytes));
    sweep();
    const after = process.memoryUsage().heapUsed;
    expect(values).toHaveLength(20_000);
    return after - before;
  };
  expect(taken(lean)).toBeLessThan(0.8 * taken((value) => value));
});
