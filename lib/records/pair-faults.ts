import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { chosenPairs } from "./chosen-pairs.ts";
import type { ParsedFiles } from "./parsed-files.ts";

/** Faults of the chosen pairs: a colour beside itself, and two pairs of the same colours, which would be one page. */
export function pairFaults({ workshop }: ParsedFiles): Diagnostic[] {
  if (workshop === undefined) return [];
  const seen = new Set<string>();
  return chosenPairs(workshop.record).flatMap(({ colours }, i): Diagnostic[] => {
    const at = Array.isArray(workshop.record.pairs?.[i]) ? ["pairs", i] : ["pairs", i, "colours"];
    const key = [...colours].sort().join("-and-");
    const isKnown = seen.has(key);
    seen.add(key);
    const twice = colours.flatMap((slug, j): Diagnostic[] =>
      colours.indexOf(slug) === j
        ? []
        : [
            {
              severity: "error",
              rule: "records/duplicate",
              place: workshop.yaml.place([...at, j]),
              message: `The colour ${slug} stands twice in one pair`,
              actual: slug,
              expected: "each colour once",
            },
          ],
    );
    return isKnown
      ? [
          ...twice,
          {
            severity: "error",
            rule: "records/duplicate",
            place: workshop.yaml.place(["pairs", i]),
            message: `The pair ${colours.join(", ")} is listed twice`,
            actual: colours.join(", "),
            expected: "each pair once",
          },
        ]
      : twice;
  });
}
