import { describe, expect, test } from "vitest";
import {
  noteRead,
  readAgain,
  readAsPart,
  readBy,
  readOnce,
  type RememberedReads,
} from "../../lib/kept/reads.ts";

describe("names of what was read", () => {
  test("are those of all that a value was made from, each once, however deep they were read", () => {
    const inner = readBy(() => {
      noteRead("a");
      noteRead("b");
    });
    const outer = readBy(() => {
      noteRead("b");
      readAgain(inner);
      readBy(() => noteRead("c"));
      readAgain(inner);
    });
    expect([...outer.names].sort()).toEqual(["a", "b", "c"]);
    expect([...inner.names]).toEqual(["a", "b"]);
  });

  test("come to an end where a value is read while it is made", () => {
    const first = readBy(() => noteRead("a"));
    const second = readBy(() => {
      noteRead("b");
      readAgain(first);
    });
    first.names.addAll(second.names);
    expect([...first.names].sort()).toEqual(["a", "b"]);
  });

  test("that many values share are held once, whatever their number", () => {
    const held = (count: number): number => {
      const known: RememberedReads<object, string> = new WeakMap();
      const range = {};
      const pages = Array.from({ length: count }, (_, i) =>
        readBy(() => {
          noteRead(`page ${i}`);
          return readOnce(known, range, "order", () => {
            for (let colour = 0; colour < count; colour++) noteRead(`colour ${colour}`);
            return "in order";
          });
        }),
      );
      for (const { names } of pages) expect([...names]).toHaveLength(count + 1);
      return pages.reduce((sum, { names }) => sum + names.held, 0);
    };
    expect(held(200)).toBe(2 * held(100));
  });
});

test("of a value that is a part by itself nothing is noted but its name, whoever asks first", () => {
  const part = readAsPart("cards", () => {
    noteRead("a sheet");
    return "worded";
  });
  for (let times = 0; times < 2; times++) {
    const { value, names } = readBy(part);
    expect(value).toBe("worded");
    expect([...names]).toEqual(["cards"]);
  }
});
