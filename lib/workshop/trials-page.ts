import type { Block } from "../blocks/block.ts";
import type { WorkshopPageView } from "../blocks/page-kinds.ts";
import { fold, plots, section, statement, tables, tableOf } from "../blocks/section-blocks.ts";
import { dryingSoFar, exposureSoFar } from "../lots/trial-series.ts";
import type { PageContext } from "../pages/page-context.ts";
import { dueTrials, nextLook } from "../planning/due.ts";
import { foundSoFar, touches } from "../planning/trial-results.ts";
import { trialCurve, type TrialCurve } from "../plots/trial-curve.ts";
import { statementText } from "../present/statement-text.ts";
import { numberColumns, tableView } from "../present/table-view.ts";
import type { Checked } from "../records/records.ts";
import { TOUCHES } from "../records/schema/terms.ts";
import type { TrialRecord } from "../records/schema/trial.ts";
import { workshopPage } from "./workshop-frame.ts";
import { given } from "../quantities/given.ts";

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
          tableOf({
            caption: text.dueCaption,
            columns: [text.dueColumns.what, text.dueColumns.date],
            rows: due.map(({ trial, date }) => [trialName(trial, context), words.date(date)]),
          }),
        ])),
    ...trials.flatMap((trial) =>
      section(trial.slug, trialName(trial.record, context), trialBlocks(trial, context)),
    ),
  ];
  return workshopPage(context, {
    heading: text.heading,
    description: text.description,
    lead: trials.length === 0 ? [text.lead, text.none] : [text.lead],
    sections,
  });
}

/** What a trial is called: its kind, and the colour that it is of. */
export function trialName(record: TrialRecord, { words, records }: PageContext): string {
  const { trials: text } = words.pages.lots;
  const colour = records.colours.get(record.colour)?.record.name ?? record.colour;
  return record.kind === "exposure" ? text.exposure(colour, record.form) : text.drying(colour);
}

function trialBlocks(trial: Checked<TrialRecord>, context: PageContext): Block[] {
  const { words } = context;
  const { trials: text } = words.pages.lots;
  const { slug, record } = trial;
  const next = nextLook(record);
  return given([
    ...(record.kind === "exposure"
      ? exposureBlocks(slug, record, context)
      : dryingBlocks(slug, record, context)),
    ...foundSoFar(context.records, record.colour).flatMap(({ slug: of, contradiction }) =>
      of !== slug || contradiction === undefined
        ? []
        : [statement(statementText(contradiction, words))],
    ),
    record.note !== undefined && statement(record.note, "note"),
    statement(
      next === undefined
        ? `${text.ended}${record.ended === undefined ? "" : `${words.colon}${words.date(record.ended)}`}.`
        : text.next(words.date(next)),
      "note",
    ),
  ]);
}

function exposureBlocks(
  slug: string,
  record: Extract<TrialRecord, { kind: "exposure" }>,
  context: PageContext,
): Block[] {
  const { words } = context;
  const { trials: text } = words.pages.lots;
  const { curve, category, limit } = exposureSoFar(record.started, record.readings, record.ended);
  const last = curve.at(-1);
  if (category === undefined || last === undefined || curve.length < 2)
    return [statement(text.unread)];
  const worst = Math.max(...curve.map(({ deltaEab }) => deltaEab));
  const told = [category, words.numbers.decimal(worst, 1), last.day] as const;
  const sentence = record.ended === undefined ? text.soFar(...told) : text.over(...told);
  return [
    statement(sentence),
    statement(`${record.standard}${words.semicolon}${record.exposure}.`, "note"),
    ...seriesBlocks(
      { slug, record },
      sentence,
      curve.map(({ day, deltaEab }, i) => ({
        date: record.readings[i - 1]?.date ?? record.started,
        day,
        value: deltaEab,
        found: words.numbers.decimal(deltaEab, 1),
      })),
      {
        valueLabel: text.change,
        most: Math.max(worst, limit ?? worst) * 1.15,
        limits: limit === undefined ? [] : [{ value: limit, name: text.limit(category) }],
      },
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
  return given([
    statement(sentence),
    throughDryDays !== undefined && statement(text.through(throughDryDays[0], throughDryDays[1])),
    ...(curve.length < 2
      ? []
      : seriesBlocks(
          { slug, record },
          sentence,
          curve.map(({ day, touch }, i) => ({
            date: record.touched[i - 1]?.date ?? record.started,
            day,
            value: TOUCHES.indexOf(touch),
            found: text.touches[touch],
          })),
          {
            valueLabel: text.state,
            most: TOUCHES.length - 1,
            ticks: { values: TOUCHES.map((_, i) => i), decimals: 0 },
            limits: [],
          },
          context,
        )),
  ]);
}

/** One reading of a trial: its place on the curve, and what the table says of it. */
interface SeriesPoint {
  readonly date: string;
  readonly day: number;
  readonly value: number;
  readonly found: string;
}

/** A trial day by day: its curve from the start on, and its readings in a table. */
function seriesBlocks(
  { slug, record }: Pick<Checked<TrialRecord>, "slug" | "record">,
  sentence: string,
  points: readonly SeriesPoint[],
  axis: Pick<TrialCurve, "valueLabel" | "most" | "ticks" | "limits">,
  context: PageContext,
): Block[] {
  const { words } = context;
  const { trials: text } = words.pages.lots;
  const curve = (width: number, suffix: string) =>
    trialCurve({
      ...axis,
      decimalMark: words.numbers.mark,
      points,
      dayLabel: text.day,
      idPrefix: `trial-${slug}${suffix}`,
      title: sentence,
      description: points
        .map(({ day, value }) => `${day}${words.colon}${value}`)
        .join(words.semicolon),
      width,
    });
  const table = tableView({
    caption: trialName(record, context),
    compact: true,
    columns: [text.columns.date, ...numberColumns(text.columns.day, text.columns.found)],
    rows: points.slice(1).map(({ date, day, found }) => [words.date(date), String(day), found]),
  });
  return [
    ...plots([{ svg: curve(480, ""), narrow: curve(320, "-narrow") }]),
    ...fold(text.table, tables([table])),
  ];
}
