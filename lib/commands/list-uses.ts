import { answerColours } from "../answers/answer-pages.ts";
import { shownPaths } from "../answers/shown-paths.ts";
import { tracedLots } from "../claims/traced-lots.ts";
import { namedRecords, recordsNamed, usesOf, type ColourUse, type Uses } from "../claims/uses.ts";
import { andNearest } from "../diagnostics/nearest-word.ts";
import { loadRecords } from "../records/load-records.ts";
import { printedLabels } from "../site/printed-labels.ts";
import { workedSite } from "../site/site-context.ts";
import { workCacheOf } from "../kept/work-cache.ts";
import { labelLines, lotsText } from "./lots-text.ts";
import { counted, exitCode, printDiagnostics, seconds, tally } from "./told.ts";
import type { CommandOptions } from "./command-options.ts";

/** List what rests on a record, to be looked at again when a supplier changes, or which lots are called back; write nothing. */
export function listUses(
  { contentDir, strict }: Pick<CommandOptions, "contentDir" | "strict">,
  slug: string,
): number {
  const started = performance.now();
  const { records, diagnostics } = loadRecords(contentDir);
  if (records === undefined || exitCode(diagnostics, strict) !== 0) {
    printDiagnostics(diagnostics);
    process.stdout.write(`no uses, ${tally(diagnostics)}, ${seconds(started)}\n`);
    return 1;
  }
  const traced = tracedLots(slug, records);
  const printed = printedLabels(contentDir);
  for (const lots of traced) process.stdout.write(`${lotsText(lots, records, printed)}\n`);
  // The number of a lot that lots/ does not have, as a colour's own record gives it, stands on labels too.
  const labels = traced.length > 0 ? [] : labelLines(slug, printed);
  if (labels.length > 0) process.stdout.write(`lot ${slug}: ${labels.join("\n")}\n`);
  const named = recordsNamed(slug, records);
  if (named.length === 0 && traced.length + labels.length > 0) {
    process.stdout.write(`${seconds(started)}\n`);
    return 0;
  }
  if (named.length === 0) {
    const near = andNearest(
      slug,
      namedRecords(records).map((record) => record.slug),
    );
    process.stderr.write(
      `No colour, pigment, vehicle, reading, source, lot or supplier's lot is called ${slug}${near}\n`,
    );
    return 1;
  }
  const {
    published,
    answers: { held, rootsOf },
  } = workedSite(records, undefined, workCacheOf(contentDir, false));
  const sheets = published.map(({ worded: { sheet } }) => sheet);
  const answers = held.map((one) => ({
    ...one,
    shown: shownPaths(one.answer, answerColours(one.answer, one.claims)),
  }));
  const uses = named.map((record) => usesOf(record, sheets, answers, rootsOf));
  process.stdout.write(`${uses.map(usesText).join("\n")}\n${seconds(started)}\n`);
  return 0;
}

/** One record's uses as lines: mixtures apart, each colour with the parts of its sheet. */
function usesText({ record, colours, answers }: Uses): string {
  const claims = answers.reduce((sum, answer) => sum + answer.claims.length, 0);
  const [mixtures, single] = [
    colours.filter(({ isMixture }) => isMixture),
    colours.filter(({ isMixture }) => !isMixture),
  ];
  const list = (heading: string, lines: readonly string[]): string[] =>
    lines.length === 0 ? [] : [`  ${heading}`, ...lines.map((line) => `    ${line}`)];
  return [
    `${record.kind} ${record.slug}: ${[counted(single.length, "colour"), counted(mixtures.length, "mixture"), counted(answers.length, "answer"), counted(claims, "claim"), counted(colours.filter(({ hasCard }) => hasCard).length, "shelf card")].join(", ")}`,
    ...list("colours", single.map(colourLine)),
    ...list("mixtures", mixtures.map(colourLine)),
    ...list(
      "answers",
      answers.map(
        (answer) =>
          `${answer.slug}: ${answer.claims.length === 0 ? "by figures that it shows" : `${answer.claims.length === 1 ? "claim" : "claims"} ${answer.claims.join(", ")}`}`,
      ),
    ),
    ...list(
      "shelf cards",
      colours.filter(({ hasCard }) => hasCard).map(({ slug }) => slug),
    ),
  ].join("\n");
}

function colourLine({ slug, sections }: ColourUse): string {
  return `${slug}: ${sections.join(", ")}`;
}
