import { errorAt, warningAt, type Faults } from "./fault.ts";
import type { ParsedFiles } from "./parsed-files.ts";

/** Faults of what a site says of itself: a colour replaced and yet made, or by itself; a security.txt past its day; one page named twice as former; a label that is folded out and reduced. */
export function* siteFaults(files: ParsedFiles, today: string | undefined): Faults {
  yield* replacedFaults(files);
  yield* formerTwice(files);
  yield* foldedAndReduced(files);
  if (today !== undefined) yield* expiredSecurity(files, today);
}

function* replacedFaults({ colours }: ParsedFiles): Faults {
  for (const { slug, record, yaml } of colours.values()) {
    const { replacedBy, discontinued } = record;
    if (replacedBy === undefined) continue;
    const rule = "records/replaced";
    const place = yaml.place(["replacedBy"]);
    if (replacedBy === slug)
      yield errorAt(place, rule, {
        message: "A colour can't be replaced by itself",
        actual: slug,
        expected: "another colour of colours/",
      });
    else if (discontinued === undefined)
      yield errorAt(place, rule, {
        message:
          "A colour that is replaced is made no more, and this one has no discontinued with its day",
        actual: "no discontinued",
        expected: "discontinued: a day",
      });
    else if (colours.get(replacedBy)?.record.discontinued !== undefined)
      yield warningAt(place, rule, {
        message: `What replaces it, ${replacedBy}, is made no more itself`,
        actual: replacedBy,
        expected: "a colour that is made",
      });
  }
}

function* formerTwice({ workshop }: ParsedFiles): Faults {
  const addresses = workshop?.record.former?.map(({ address }) => address) ?? [];
  for (const [i, address] of addresses.entries())
    if (workshop !== undefined && addresses.indexOf(address) < i)
      yield errorAt(workshop.yaml.place(["former", i, "address"]), "records/duplicate", {
        message: `The former page ${address} is listed twice`,
        actual: address,
        expected: "each address once",
      });
}

/** CLP, Article 29: a part may be left out only where no fold-out label bears the whole. */
function* foldedAndReduced({ workshop }: ParsedFiles): Faults {
  for (const [i, { name, foldOut = false, reduced = false }] of (
    workshop?.record.labels ?? []
  ).entries())
    if (workshop !== undefined && foldOut && reduced)
      yield errorAt(workshop.yaml.place(["labels", i, "reduced"]), "records/folded-and-reduced", {
        message: `The label ${name} is folded out and reduced, and statements may be left out only where no fold-out label bears the whole (CLP, Article 29)`,
        actual: "foldOut: true, reduced: true",
        expected: "one of them",
      });
}

/** Nobody is to rely on it past that day (RFC 9116, 2.5.5). */
function* expiredSecurity({ workshop }: ParsedFiles, today: string): Faults {
  const expires = workshop?.record.security?.expires;
  if (workshop === undefined || expires === undefined || expires > today) return;
  yield warningAt(workshop.yaml.place(["security", "expires"]), "records/expired", {
    message: `security.txt expires on ${expires}, and it is ${today}: look whether its contact still holds, and give it another day`,
    actual: expires,
    expected: "a day to come, within a year",
  });
}
