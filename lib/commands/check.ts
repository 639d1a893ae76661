import { printedOrder } from "../diagnostics/printed-order.ts";
import { checkedSite } from "../site/checked-site.ts";
import type { CommandOptions } from "./command-options.ts";
import { counted, exitCode, printDiagnostics, seconds, tally } from "./told.ts";

/**
 * Check the records, the sheets against them and the answers against the sheets; write no page.
 * @param asJson print the diagnostics as one JSON array, for editors, and nothing else.
 */
export async function check(
  { contentDir, date, strict, claims, since }: CommandOptions,
  asJson = false,
): Promise<number> {
  const started = performance.now();
  const { records, diagnostics } = await checkedSite({ contentDir, date, claims, since });
  if (asJson) {
    process.stdout.write(`${JSON.stringify(printedOrder(diagnostics), null, 2)}\n`);
    return exitCode(diagnostics, strict);
  }
  printDiagnostics(diagnostics);
  const answers =
    records === undefined || records.answers.size === 0
      ? ""
      : `, ${counted(records.answers.size, "answer")}`;
  const colours = records === undefined ? "no sheets" : counted(records.colours.size, "colour");
  process.stdout.write(`${colours}${answers}, ${tally(diagnostics)}, ${seconds(started)}\n`);
  return exitCode(diagnostics, strict);
}
