import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, inject, test } from "vitest";
import { keptBesideProgram, madeBesideProgram } from "../../lib/kept/beside-program.ts";

const folder = (): string => mkdtempSync(join(inject("scratch"), "kept-"));

/** What is kept for some inputs, and how often it had to be made. */
function counted(dir: string | undefined) {
  let made = 0;
  const of = (...inputs: string[]): unknown =>
    keptBesideProgram("sum", inputs, () => ({ inputs, made: ++made, none: undefined }), dir);
  return { of, times: () => made };
}

test("is made once, and given again as it was made: a map, a lack and an infinity too", () => {
  const dir = folder();
  const value = { map: new Map([["a", [-0, Infinity]]]), none: undefined };
  expect(keptBesideProgram("sum", ["x"], () => value, dir)).toBe(value);
  expect(
    keptBesideProgram("sum", ["x"], () => expect.unreachable("made a second time"), dir),
  ).toStrictEqual(value);
  expect(readdirSync(dir)).toEqual(["sum.kept"]);
});

test("is made once of what takes its time, too", async () => {
  const dir = folder();
  const made = async (): Promise<string> => Promise.resolve("made");
  const again = async (): Promise<string> => Promise.reject(new Error("made a second time"));
  expect(await madeBesideProgram("sum", ["x"], made, dir)).toBe("made");
  expect(await madeBesideProgram("sum", ["x"], again, dir)).toBe("made");
});

test("is made anew for other inputs, though they are the same letters run together", () => {
  const { of, times } = counted(folder());
  for (const inputs of [["ab", "c"], ["a", "bc"], ["abc"], ["abc", ""]]) of(...inputs);
  expect(times()).toBe(4);
});

test("is made anew when its file is not as it was written", () => {
  const dir = folder();
  const { of, times } = counted(dir);
  of("x");
  const file = join(dir, "sum.kept");
  const whole = readFileSync(file);
  const flipped = Buffer.from(whole);
  flipped[whole.length - 3] = 255 - (flipped[whole.length - 3] ?? 0);
  for (const bytes of [whole.subarray(0, 40), whole.subarray(0, -1), flipped, Buffer.alloc(0)]) {
    const before = times();
    writeFileSync(file, bytes);
    of("x");
    expect(times()).toBe(before + 1);
  }
  of("x");
  expect(times()).toBe(5);
});

test("is made each time where nothing can be kept, and where nothing is to be", () => {
  for (const dir of [join(folder(), "not", "there"), undefined]) {
    const { of, times } = counted(dir);
    of("x");
    of("x");
    expect(times()).toBe(2);
  }
});
