import { answerColours } from "../answers/answer-pages.ts";
import { recordRoots } from "../claims/record-roots.ts";
import { nearestRecord, recordUses, type RecordUses, type UsesRoom } from "../claims/record-uses.ts";
import { claimText } from "../present/claim-text.ts";
import { rangeCards } from "../print/range-cards.ts";
import type { Records } from "../records/records.ts";
import type { WorkedSite } from "../site/site-context.ts";
import { counted } from "./counted.ts";

/** Print everything that rests on the records of a slug: what must be looked at again when a supplier changes. */
export function printUses(slug: string, records: Records, { answers, context }: WorkedSite): number {
  const { index, held } = answers;
  const room: UsesRoom = { records, index, held, rootsOf: recordRoots(index, records), namedBy: ({ answer, claims }) => answerColours(answer, claims) };
  const found = recordUses(slug, room);
  if (found.length === 0) {
    const near = nearestRecord(slug, room);
    process.stderr.write(`Unexpected --uses \`${slug}\`, expected \`the slug of a pigment, vehicle, colour, reading or source\`${near === undefined ? "" : `; nearest \`${near}\``}\n`);
    return 1;
  }
  const withCard = new Set(rangeCards(context).cards.map((card) => card.slug));
  for (const uses of found) process.stdout.write(`${usesLines(uses, records, withCard, context.words).join("\n")}\n`);
  return 0;
}

function usesLines({ kind, slug, colours, answers }: RecordUses, records: Records, withCard: ReadonlySet<string>, words: WorkedSite["context"]["words"]): string[] {
  const nameOf = (colour: string): string => records.colours.get(colour)?.record.name ?? colour;
  const isMixture = (colour: string): boolean => (records.colours.get(colour)?.record.pigments.length ?? 0) > 1;
  const lines = [
    ...colours.map((colour) => [isMixture(colour) ? "mixture" : "colour", `${records.colours.get(colour)?.file ?? colour}  ${nameOf(colour)}`]),
    ...answers.flatMap(({ slug: answer, claims }) => {
      const record = records.answers.get(answer);
      return record === undefined ? [] : [
        ["answer", `${record.file}  ${record.record.question}`],
        ...claims.map(({ index, claim }) => {
          const { line, column } = record.place(["claims", index]);
          return ["claim", `${record.file}:${line}:${column}  ${claimText(claim, nameOf, words)}`];
        }),
      ];
    }),
    ...colours.filter((colour) => withCard.has(colour)).map((colour) => ["card", nameOf(colour)]),
  ];
  const count = (what: string): number => lines.filter(([name]) => name === what).length;
  const summary = ["colour", "mixture", "answer", "claim", "card"].filter((what) => count(what) > 0).map((what) => counted(count(what), what)).join(", ");
  return [`${kind} ${slug}: ${summary === "" ? "nothing rests on it" : summary}`, ...lines.map(([what = "", text = ""]) => `  ${what.padEnd(8)}${text}`)];
}
