import { expect, test } from "vitest";
import { certain } from "../../lib/quantities/at.ts";
import { yamlAsAnswered, yamlRecord, yamlWhenAsked } from "../../lib/records/yaml-record.ts";

const TEXT = "name: Soot\nsizes:\n  - ml: 40\n";

test("is parsed once for all who ask in one go, and says the same as at first", () => {
  let times = 0;
  const parsed = () => {
    times += 1;
    return certain(yamlRecord("x.yaml", TEXT).record);
  };
  const first = parsed();
  const yaml = yamlWhenAsked("x.yaml", parsed, first);
  expect(yaml.place(["sizes", 0, "ml"])).toEqual(first.place(["sizes", 0, "ml"]));
  expect(yaml.written(["name"])).toBe("Soot");
  expect(times).toBe(1);
  const later = yamlWhenAsked("x.yaml", parsed);
  expect(times).toBe(1);
  expect(later.keyPlace(["sizes", 0], "ml")).toEqual(first.keyPlace(["sizes", 0], "ml"));
  expect(later.data).toEqual({ name: "Soot", sizes: [{ ml: 40 }] });
  expect(times).toBe(2);
});

test("a question that was asked before is answered as it was, without the text", () => {
  let times = 0;
  const parsed = () => {
    times += 1;
    return certain(yamlRecord("x.yaml", TEXT).record);
  };
  const answers = new Map<string, unknown>();
  const answered = () =>
    yamlAsAnswered(yamlWhenAsked("x.yaml", parsed), <A>(question: string, made: () => A): A => {
      if (!answers.has(question)) answers.set(question, made());
      return answers.get(question) as A;
    });
  const ask = () => {
    const yaml = answered();
    return [
      yaml.place(["sizes", 0]),
      yaml.place(["sizes"]),
      yaml.written(["name"]),
      yaml.written(["sizes"]),
      yaml.keyPlace(["sizes", 0], "ml"),
      yaml.pairs(["sizes", 0]),
    ];
  };
  const first = ask();
  const told = parsed();
  expect(first).toEqual([
    told.place(["sizes", 0]),
    told.place(["sizes"]),
    "Soot",
    undefined,
    told.keyPlace(["sizes", 0], "ml"),
    [{ key: "ml", value: "40" }],
  ]);
  const before = times;
  expect(ask()).toEqual(first);
  expect(times).toBe(before);
  expect(answered().written(["sizes", 0, "ml"])).toBe("40");
  expect(times).toBe(before + 1);
});
