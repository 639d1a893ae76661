import { warningAt, type Faults } from "./fault.ts";
import type { ParsedFiles } from "./parsed-files.ts";

/** A legal basis for a market that the workshop does not sell in, or a second one for a market: nothing comes of either. */
export function* marketFaults({ workshop, colours }: ParsedFiles): Faults {
  const markets = workshop?.record.markets ?? [];
  for (const { record, yaml } of colours.values())
    for (const [i, { market }] of (record.legalBasis ?? []).entries()) {
      const isSecond = record.legalBasis?.findIndex((one) => one.market === market) !== i;
      if (isSecond)
        yield warningAt(yaml.place(["legalBasis", i, "market"]), "records/legal-basis", {
          message: `The market ${market} has a legal basis above already, and only the first one counts`,
          actual: market,
          expected: "one legal basis a market",
        });
      else if (markets.length > 0 && !markets.includes(market))
        yield warningAt(yaml.place(["legalBasis", i, "market"]), "records/legal-basis", {
          message: `There is a legal basis for the market ${market}, and the workshop sells in ${markets.join(", ")}: nothing comes of it`,
          actual: market,
          expected: markets.join(" | "),
          hint: "another market's name, or one that workshop.yaml leaves out",
        });
    }
}
