import { shownPaths } from "../answers/shown-paths.ts";
import { answerColours } from "../answers/answer-pages.ts";
import { usesOf, type Uses } from "../claims/uses.ts";
import { recordRoots } from "../claims/record-roots.ts";
import { loadRecords } from "../records/load-records.ts";
import { workedSite } from "../site/site-context.ts";
import { theoryCacheOf } from "../site/theory-cache.ts";
import { counted, exitCode, printDiagnostics, seconds, tally } from "./check.ts";
import type { CommandOptions } from "./command-line.ts";

/** List what rests on a pigment, vehicle, reading or source; write nothing. */
export function uses(slug: string, { contentDir, strict }: CommandOptions): number {
  const started = performance.now();
  const { records, diagnostics } = loadRecords(contentDir);
  printDiagnostics(diagnostics);
  if (records === undefined || exitCode(diagnostics, strict) !== 0) {
    process.stdout.write(`nothing listed, ${tally(diagnostics)}, ${seconds(started)}\n`);
    return 1;
  }
  const { answers: { index, held }, cards } = workedSite(records, undefined, theoryCacheOf(contentDir, false));
  const found = usesOf(slug, {
    records, index, held, rootsOf: recordRoots(index, records), cards: cards.cards.map((card) => card.slug),
    shown: new Map(held.map(({ answer, claims }) => [answer.slug, shownPaths(answer, answerColours(answer, claims))])),
  });
  if ("nearest" in found) {
    process.stderr.write(`Unexpected --uses \`${slug}\`, expected \`the slug of a pigment, vehicle, reading or source\`${found.nearest === undefined ? "" : `; nearest \`${found.nearest}\``}\n`);
    return 1;
  }
  const nameOf = (colour: string): string => records.colours.get(colour)?.record.name ?? colour;
  for (const one of found) process.stdout.write(`${linesOf(one, nameOf).join("\n")}\n`);
  return 0;
}

function linesOf({ kind, slug, colours, mixtures, answers, claims, cards }: Uses, nameOf: (colour: string) => string): string[] {
  const counts = [counted(colours.length, "colour"), counted(mixtures.length, "mixture"), counted(answers.length, "answer"), counted(claims.length, "claim"), counted(cards.length, "card")];
  return [
    `${kind} ${slug}: ${counts.join(", ")}`,
    ...colours.map((colour) => `  colour ${colour}`),
    ...mixtures.map((colour) => `  mixture ${colour}`),
    ...answers.map((answer) => `  answer ${answer}`),
    ...claims.map(({ answer, number, claim }) => {
      const { file, line, column } = answer.place(["claims", number]);
      return `  claim ${file}:${line}:${column} ${"fact" in claim ? claim.fact : claim.figure}`;
    }),
    ...cards.map((colour) => `  shelf card of ${nameOf(colour)}`),
  ];
}
