import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { PageContext } from "../pages/page-context.ts";
import { isGraveDust } from "../pages/studio-cautions.ts";
import {
  coloursOfFewLots,
  dueLots,
  duePapers,
  dueDoubts,
  dueResults,
  dueTrials,
  type Due,
} from "../planning/due.ts";
import { OF_A_POWDER, recordLine } from "../planning/measurement.ts";
import { stepGroups, type StepGroup } from "../planning/step-groups.ts";
import type { NextStep } from "../planning/next-steps.ts";
import type { Reprint } from "../print/reprint-list.ts";
import type { Records } from "../records/records.ts";
import { dryPigmentHandling } from "../sheet/handling/dry-pigment-handling.ts";
import { statementText } from "../present/statement-text.ts";
import type { Words } from "../words/words.ts";
import { trialName } from "./trials-page.ts";

/** One thing to find out, finished. */
interface NextLine {
  readonly what: string;
  readonly gain: string;
  readonly hours: string;
  /** Where the record of the first of them stands, and what is to be written there. */
  readonly file: string;
  readonly record: string;
}

/** Steps worded, those that gain alike in one line. */
export function nextLines(steps: readonly NextStep[], records: Records, words: Words): NextLine[] {
  const text = words.pages.nextSteps;
  return stepGroups(steps).map(({ kind, key, slugs, step, counted: { on, of } }): NextLine => {
    const [first = ""] = slugs;
    return {
      what:
        text.of(
          text.things[key],
          slugs.map((slug) => nameOf(kind, slug, records)),
        ) + (kind === "pigment" && OF_A_POWDER.has(key) ? maskText(slugs, records, words) : ""),
      gain:
        text.gain(step.cleared, step.firmer, step.added, step.claims) +
        (on < of ? `, ${text.triedOn(on, of)}` : ""),
      hours: text.hours(step.hours),
      file: text.file(kind, first),
      record: recordLine({ kind, key }),
    };
  });
}

/** What is to be worn for those of the powders that call for it. */
function maskText(slugs: readonly string[], records: Records, words: Words): string {
  const grave = slugs.flatMap((slug) => {
    const pigment = records.pigments.get(slug);
    return pigment !== undefined && isGraveDust(dryPigmentHandling(pigment, records).cautions)
      ? [pigment.record.name]
      : [];
  });
  const text = words.pages.nextSteps;
  if (grave.length === 0) return "";
  return `${words.semicolon}${grave.length === slugs.length ? text.mask : text.maskFor(words.listed(grave))}`;
}

function nameOf(kind: StepGroup["kind"], slug: string, records: Records): string {
  const found = { pigment: records.pigments, vehicle: records.vehicles, colour: records.colours }[
    kind
  ].get(slug);
  return found?.record.name ?? slug;
}

/** What is to be done beside what the records' own dates tell. */
export interface DueMatter {
  /** What labels still want, texts and translations to review among it. */
  readonly labelNotes: readonly Diagnostic[];
  /** Cards that say something else than when they were printed; undefined where no manifest of then was named. */
  readonly reprints: readonly Reprint[] | undefined;
}

/** One thing to do, finished, with where its record stands. */
export interface DueLine {
  readonly what: string;
  readonly record: string;
}

/** What presses: what is to be called back, then trials, lots, suppliers' papers and cards, each with the record that speaks of it. */
export function pressingLines(
  context: PageContext,
  { reprints = [] }: Pick<DueMatter, "reprints">,
): DueLine[] {
  const { records, words, date } = context;
  const lots = dueLots(records);
  const due = [
    ...lots.filter((lot) => lot.due === "lot-recalled"),
    ...dueResults(records),
    ...dueDoubts(records),
    ...lots.filter((lot) => lot.due !== "lot-recalled"),
    ...dueTrials(records),
    ...duePapers(records, date),
  ];
  return [
    ...dueLines(due, context),
    ...reprints.map(({ slug, changes }) => ({
      what: words.pages.nextSteps.dueLines.reprint(changes),
      record: `colours/${slug}`,
    })),
  ];
}

/** What no day makes due: texts of labels to review, colours of few lots. */
export function openLines(
  context: PageContext,
  { labelNotes }: Pick<DueMatter, "labelNotes">,
): DueLine[] {
  return [
    ...labelNotes.map(({ message, hint, place: { file, line, column } }) => ({
      what: hint === undefined ? message : `${message} (${hint})`,
      record: `${recordName(file)}:${line}:${column}`,
    })),
    ...dueLines(coloursOfFewLots(context.records), context),
  ];
}

/** A record below the content folder: where that folder lies is no matter of a page. */
export function recordName(file: string): string {
  return file
    .split("/")
    .slice(file.endsWith("workshop.yaml") ? -1 : -2)
    .join("/");
}

function dueLines(due: readonly Due[], context: PageContext): DueLine[] {
  const { words, records } = context;
  const { dueLines: text } = words.pages.nextSteps;
  const dueText = (one: Due): string => {
    switch (one.due) {
      case "old-paper":
        return text["old-paper"](one.name, words.date(one.date));
      case "undated-papers":
        return text["undated-papers"](words.listed(one.names));
      case "trial":
        return text.trial(trialName(one.trial, context), words.date(one.date));
      case "trial-result": {
        const [name, date] = [trialName(one.trial, context), words.date(one.ended)];
        return one.result.kind === "exposure"
          ? text["exposure-result"](
              name,
              date,
              words.numbers.decimal(one.result.deltaEab, 1),
              one.result.category,
            )
          : text["drying-result"](name, date, ...one.result.touchDryDays);
      }
      case "trial-worse":
        return `${trialName(one.trial, context)}${words.colon}${statementText(one.contradiction, words).replace(/\.$/, "")}`;
      case "second-lot":
        return text["second-lot"](
          one.lots,
          words.listed(one.colours.map((slug) => nameOf("colour", slug, records))),
        );
      case "lot-planned":
      case "lot-unread":
      case "lot-unjudged":
      case "lot-failed":
      case "lot-recalled":
      case "lot-conceded":
        return text[one.due](one.number);
    }
  };
  return due.map((one) => ({
    record: one.record,
    what: dueText(one),
  }));
}
