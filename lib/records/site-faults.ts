import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { ParsedFiles } from "./parsed-files.ts";

/** Faults of what a site says of itself: a colour replaced and yet made, or by itself; a security.txt past its day; one page named twice as former. */
export function siteFaults(files: ParsedFiles, today: string | undefined): Diagnostic[] {
  return [
    ...replacedFaults(files),
    ...formerTwice(files),
    ...(today === undefined ? [] : expiredSecurity(files, today)),
  ];
}

function replacedFaults({ colours }: ParsedFiles): Diagnostic[] {
  return [...colours.values()].flatMap(({ slug, record, yaml }): Diagnostic[] => {
    const { replacedBy, discontinued } = record;
    if (replacedBy === undefined) return [];
    const fault = (
      severity: "error" | "warning",
      message: string,
      actual: string,
      expected: string,
    ): Diagnostic => ({
      severity,
      rule: "records/replaced",
      place: yaml.place(["replacedBy"]),
      message,
      actual,
      expected,
    });
    if (replacedBy === slug)
      return [
        fault("error", "A colour can't be replaced by itself", slug, "another colour of colours/"),
      ];
    if (discontinued === undefined)
      return [
        fault(
          "error",
          "A colour that is replaced is made no more, and this one has no discontinued with its day",
          "no discontinued",
          "discontinued: a day",
        ),
      ];
    return colours.get(replacedBy)?.record.discontinued === undefined
      ? []
      : [
          fault(
            "warning",
            `What replaces it, ${replacedBy}, is made no more itself`,
            replacedBy,
            "a colour that is made",
          ),
        ];
  });
}

function formerTwice({ workshop }: ParsedFiles): Diagnostic[] {
  const former = workshop?.record.former ?? [];
  return former.flatMap(({ address }, i): Diagnostic[] =>
    workshop === undefined || former.findIndex((one) => one.address === address) === i
      ? []
      : [
          {
            severity: "error",
            rule: "records/duplicate",
            place: workshop.yaml.place(["former", i, "address"]),
            message: `The former page ${address} is listed twice`,
            actual: address,
            expected: "each address once",
          },
        ],
  );
}

/** Nobody is to rely on it past that day (RFC 9116, 2.5.5). */
function expiredSecurity({ workshop }: ParsedFiles, today: string): Diagnostic[] {
  const expires = workshop?.record.security?.expires;
  if (workshop === undefined || expires === undefined || expires > today) return [];
  return [
    {
      severity: "warning",
      rule: "records/expired",
      place: workshop.yaml.place(["security", "expires"]),
      message: `security.txt expires on ${expires}, and it is ${today}: look whether its contact still holds, and give it another day`,
      actual: expires,
      expected: "a day to come, within a year",
    },
  ];
}
