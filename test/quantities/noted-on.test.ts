import { expect, test } from "vitest";
import { notesOn } from "../../lib/quantities/noted-on.ts";

test("a thing has the note that was put on it last, a frozen one too, and no other note", () => {
  const [sources, places] = [notesOn<object, string>(), notesOn<object, number>()];
  const thing = Object.freeze({ value: 1 });
  expect([sources.has(thing), sources.get(thing)]).toEqual([false, undefined]);
  sources.set(thing, "a reading");
  sources.set(thing, "a supplier");
  expect([sources.has(thing), sources.get(thing)]).toEqual([true, "a supplier"]);
  expect([places.has(thing), places.get(thing)]).toEqual([false, undefined]);
});

test("a note shows in no copy, text or clone of its thing", () => {
  const notes = notesOn<object, string>();
  const thing = { value: 1 };
  notes.set(thing, "a reading");
  for (const other of [{ ...thing }, structuredClone(thing)]) {
    expect(notes.has(other)).toBe(false);
    expect(other).toStrictEqual(thing);
  }
  expect(JSON.stringify(thing)).toBe('{"value":1}');
  expect(Reflect.ownKeys(thing)).toEqual(["value"]);
});
