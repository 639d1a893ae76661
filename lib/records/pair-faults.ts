import { listedPairs } from "./chosen-pairs.ts";
import { errorAt, type Faults } from "./fault.ts";
import type { ParsedFiles } from "./parsed-files.ts";
import type { RecordPath, YamlRecord } from "./yaml-record.ts";

/** Faults of the chosen pairs: a colour beside itself, and two pairs of the same colours, which would be one page. */
export function* pairFaults({ workshop }: ParsedFiles): Faults {
  if (workshop === undefined) return;
  const { record, yaml } = workshop;
  const seen = new Set<string>();
  yield* besideItself(yaml, ["leadingPair"], record.leadingPair ?? []);
  for (const [i, { colours }] of listedPairs(record).entries()) {
    const at = Array.isArray(record.pairs?.[i]) ? ["pairs", i] : ["pairs", i, "colours"];
    yield* besideItself(yaml, at, colours);
    const key = [...colours].sort().join("-and-");
    if (seen.has(key))
      yield errorAt(yaml.place(["pairs", i]), "records/duplicate", {
        message: `The pair ${colours.join(", ")} is listed twice`,
        actual: colours.join(", "),
        expected: "each pair once",
      });
    seen.add(key);
  }
}

function* besideItself(yaml: YamlRecord, at: RecordPath, colours: readonly string[]): Faults {
  for (const [i, slug] of colours.entries())
    if (colours.indexOf(slug) < i)
      yield errorAt(yaml.place([...at, i]), "records/duplicate", {
        message: `The colour ${slug} stands twice in one pair`,
        actual: slug,
        expected: "each colour once",
      });
}
