import { expect, test } from "vitest";
import { certain } from "../../lib/quantities/at.ts";
import { yamlRecord, yamlWhenAsked } from "../../lib/records/yaml-record.ts";

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
