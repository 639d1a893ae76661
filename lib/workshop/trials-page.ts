import type { Block } from "../blocks/block.ts";
import type { WorkshopPageView } from "../blocks/page-kinds.ts";
import { section, statement } from "../blocks/section-blocks.ts";
import { dryingSoFar, exposureSoFar } from "../lots/trial-series.ts";
import type { PageContext } from "../pages/page-context.ts";
import { dueTrials, nextLook } from "../planning/due.ts";
import { foundSoFar, touches } from "../planning/trial-results.ts";
import { trialCurve, type TrialCurve } from "../plots/trial-curve.ts";
import { statementText } from "../present/statement-text.ts";
import { asMarkup, type CellView } from "../present/views.ts";
import type { Checked } from "../records/records.ts";
import { TOUCHES } from "../records/schema/terms.ts";
import type { TrialRecord } from "../records/schema/trial.ts";
import { workshopHead } from "./workshop-frame.ts";

/** Exposures and drying trials as series: what is due next, then each with its curve. */
export function trialsPage(context: PageContext): WorkshopPageView {
  const { words, records } = context;
  const { trials: text } = words.pages.lots;
  const trials = [...records.trials.values()];
  const due = dueTrials(records);
  const sections = [
    ...(due.length === 0
      ? []
      : section("due", text.due, [
          {
            kind: "table",
            table: {
              caption: text.dueCaption,
              columns: [{ head: text.dueColumns.what }, { head: text.dueColumns.date }],
              rows: due.map(({ trial, date }): CellView[] => [
                { text: trialName(trial, context) },
                { text: words.date(date) },
              ]),
            },
          },
        ])),
    ...trials.flatMap((trial) =>
      section(trial.slug, trialName(trial.record, context), trialBlocks(trial, context)),
    ),
  ];
  return {
    kind: "workshop",
    ...workshopHead(context, text.heading, text.description),
    lead: trials.length === 0 ? [text.lead, text.none] : [text.lead],
    contents: sections.map(({ id, heading }) => ({ text: heading, href: `#${id}` })),
    sections,
  };
}

/** When a trial is to be looked at again, YYYY-MM-DD; undefined once it has ended. */
export function trialName(record: TrialRecord, { words, records }: PageContext): string {
  const { trials: text } = words.pages.lots;
  const colour = records.colours.get(record.colour)?.record.name ?? record.colour;
  return record.kind === "exposure" ? text.exposure(colour, record.form) : text.drying(colour);
}

function trialBlocks(trial: Checked<TrialRecord>, context: PageContext): Block[] {
  const { words } = context;
  const { trials: text } = words.pages.lots;
  const { record } = trial;
  const next = nextLook(trial.record);
  return [
    ...(record.kind === "exposure"
      ? exposureBlocks(trial.slug, record, context)
      : dryingBlocks(trial.slug, record, context)),
    ...foundSoFar(context.records, record.colour).flatMap(({ slug, contradiction }) =>
      slug !== trial.slug || contradiction === undefined
        ? []
        : [statement(statementText(contradiction, words))],
    ),
    ...(record.note === undefined ? [] : [statement(record.note, "note")]),
    statement(
      next === undefined
        ? `${text.ended}${record.ended === undefined ? "" : `${words.colon}${words.date(record.ended)}`}.`
        : text.next(words.date(next)),
      "note",
    ),
  ];
}

function exposureBlocks(
  slug: string,
  record: Extract<TrialRecord, { kind: "exposure" }>,
  context: PageContext,
): Block[] {
  const { trials: text } = context.words.pages.lots;
  const { curve, category, limit } = exposureSoFar(record.started, record.readings, record.ended);
  const last = curve.at(-1);
  if (category === undefined || last === undefined || curve.length < 2)
    return [statement(text.unread)];
  const worst = Math.max(...curve.map(({ deltaEab }) => deltaEab));
  const told = [category, context.words.numbers.decimal(worst, 1), last.day] as const;
  const sentence = record.ended === undefined ? text.soFar(...told) : text.over(...told);
  return [
    statement(sentence),
    statement(`${record.standard}${context.words.semicolon}${record.exposure}.`, "note"),
    curvePlot(slug, sentence, {
      decimalMark: context.words.numbers.mark,
      points: curve.map(({ day, deltaEab }) => ({ day, value: deltaEab })),
      valueLabel: text.change,
      dayLabel: text.day,
      most: Math.max(worst, limit ?? worst) * 1.15,
      limits: limit === undefined ? [] : [{ value: limit, name: text.limit(category) }],
    }),
    readingsTable(
      trialName(record, context),
      curve.slice(1).map(({ day, deltaEab }, i) => ({
        date: record.readings[i]?.date ?? record.started,
        day,
        found: context.words.numbers.decimal(deltaEab, 1),
      })),
      context,
    ),
  ];
}

function dryingBlocks(
  slug: string,
  record: Extract<TrialRecord, { kind: "drying" }>,
  context: PageContext,
): Block[] {
  const { trials: text } = context.words.pages.lots;
  const { curve, touchDryDays, throughDryDays } = dryingSoFar(
    record.started,
    touches(record),
    record.ended,
  );
  const sentence =
    touchDryDays !== undefined
      ? text.touch(touchDryDays[0], touchDryDays[1])
      : record.ended === undefined
        ? text.notYet
        : text.never;
  return [
    statement(sentence),
    ...(throughDryDays === undefined
      ? []
      : [statement(text.through(throughDryDays[0], throughDryDays[1]))]),
    ...(curve.length < 2
      ? []
      : [
          curvePlot(slug, sentence, {
            decimalMark: context.words.numbers.mark,
            points: curve.map(({ day, touch }) => ({ day, value: TOUCHES.indexOf(touch) })),
            valueLabel: text.state,
            dayLabel: text.day,
            most: TOUCHES.length - 1,
            ticks: { values: TOUCHES.map((_, i) => i), decimals: 0 },
            limits: [],
          }),
          readingsTable(
            trialName(record, context),
            curve.slice(1).map(({ day, touch }, i) => ({
              date: record.touched[i]?.date ?? record.started,
              day,
              found: touch,
            })),
            context,
          ),
        ]),
  ];
}

function curvePlot(
  slug: string,
  sentence: string,
  curve: Omit<TrialCurve, "idPrefix" | "title" | "description" | "width">,
): Block {
  const figure = (width: number, suffix: string) =>
    asMarkup(
      trialCurve({
        ...curve,
        idPrefix: `trial-${slug}${suffix}`,
        title: sentence,
        description: curve.points.map(({ day, value }) => `${day}: ${value}`).join("; "),
        width,
      }),
    );
  return { kind: "plots", plots: [{ svg: figure(480, ""), narrow: figure(320, "-narrow") }] };
}

function readingsTable(
  caption: string,
  rows: readonly { readonly date: string; readonly day: number; readonly found: string }[],
  { words }: PageContext,
): Block {
  const { trials: text } = words.pages.lots;
  return {
    kind: "fold",
    summary: text.table,
    blocks: [
      {
        kind: "table",
        table: {
          caption,
          compact: true,
          columns: [
            { head: text.columns.date },
            { head: text.columns.day, numeric: true },
            { head: text.columns.found, numeric: true },
          ],
          rows: rows.map(({ date, day, found }) => [
            { text: words.date(date) },
            { text: String(day) },
            { text: found },
          ]),
        },
      },
    ],
  };
}
