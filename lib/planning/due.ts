import { dryingSoFar, exposureSoFar } from "../lots/trial-series.ts";
import type { Lot, Records } from "../records/records.ts";
import type { TrialRecord } from "../records/schema/trial.ts";
import { lotOnSale, lotState, type LotState } from "../sheet/lots/lot-on-sale.ts";
import { bookOf } from "../sheet/lots/lot-book.ts";
import {
  foundSoFar,
  openResults,
  touches,
  type FoundSoFar,
  type OpenResult,
} from "./trial-results.ts";

/** Something that time has made due. */
export type Due =
  /** Hazards of a record that is older than a supplier's paper should be. */
  | {
      readonly due: "old-paper";
      readonly record: string;
      readonly name: string;
      readonly date: string;
    }
  /** Hazards of records that say not of what day they are, told together. */
  | { readonly due: "undated-papers"; readonly record: string; readonly names: readonly string[] }
  /** A trial that is to be looked at on a day, which may be past. */
  | {
      readonly due: "trial";
      readonly record: string;
      readonly trial: TrialRecord;
      readonly date: string;
    }
  /** A trial that is over, whose result the record of its colour does not have. */
  | ({ readonly due: "trial-result"; readonly record: string } & OpenResult)
  /** A trial that the record of its colour tells better already than it was found. */
  | ({ readonly due: "trial-worse"; readonly record: string } & Worse)
  /** A lot that is planned and not made, or made and held against nothing yet, or read so that it can't be, or the newest of its colour and fails; or recalled; or conceded, and on sale. */
  | {
      readonly due:
        | "lot-planned"
        | "lot-unread"
        | "lot-unjudged"
        | "lot-failed"
        | "lot-recalled"
        | "lot-conceded";
      readonly record: string;
      readonly number: string;
    }
  /** Colours of a workshop that keeps lots, by slug, of which a second one would show the spread. */
  | {
      readonly due: "second-lot";
      readonly record: "lots";
      readonly lots: 0 | 1;
      readonly colours: readonly string[];
    };

type Worse = FoundSoFar & Required<Pick<FoundSoFar, "contradiction">>;

/** A safety data sheet is asked for anew after so many years. Common practice. */
const PAPER_YEARS = 3;

/**
 * Suppliers' papers that are to be asked for again.
 * @param today YYYY-MM-DD; without it nothing can be too old.
 */
export function duePapers(
  { pigments, vehicles }: Pick<Records, "pigments" | "vehicles">,
  today: string | undefined,
): Due[] {
  const before = today === undefined ? undefined : yearsBefore(today, PAPER_YEARS);
  const papers = [
    ...[...pigments.values()].map(({ slug, record }) => ({
      record: `pigments/${slug}`,
      ...record,
    })),
    ...[...vehicles.values()].map(({ slug, record }) => ({
      record: `vehicles/${slug}`,
      ...record,
    })),
  ].filter(({ hazards, components }) => hazards !== undefined || components !== undefined);
  return [
    ...undatedPapers(papers.filter(({ date }) => date === undefined)),
    ...papers.flatMap(({ record, name, date }): Due[] =>
      before !== undefined && date !== undefined && date < before
        ? [{ due: "old-paper", record, name, date }]
        : [],
    ),
  ];
}

/** Told at the record, or of several at their folders. */
function undatedPapers(
  papers: readonly { readonly record: string; readonly name: string }[],
): Due[] {
  const [only, ...more] = papers.map(({ record }) => record);
  if (only === undefined) return [];
  const folders = new Set([only, ...more].map((record) => record.split("/")[0] ?? ""));
  const record = more.length === 0 ? only : [...folders].join(", ");
  return [{ due: "undated-papers", record, names: papers.map(({ name }) => name) }];
}

/** The same day so many years before; of 29 February the 28th. @param date YYYY-MM-DD. */
function yearsBefore(date: string, years: number): string {
  const year = String(Number(date.slice(0, 4)) - years).padStart(4, "0");
  return `${year}${date.slice(4) === "-02-29" ? "-02-28" : date.slice(4)}`;
}

/** Exposures and drying trials that go on, by the day on which they are to be looked at. */
export function dueTrials({ trials }: Pick<Records, "trials">): Extract<Due, { due: "trial" }>[] {
  return [...trials.values()]
    .flatMap(({ slug, record }) => {
      const nextDate = nextLook(record);
      return nextDate === undefined
        ? []
        : [{ due: "trial" as const, record: `trials/${slug}`, trial: record, date: nextDate }];
    })
    .toSorted((one, other) => (one.date < other.date ? -1 : 1));
}

/** Results of trials that are to be brought into the records of their colours, the oldest first. */
export function dueResults(records: Pick<Records, "trials" | "colours">): Due[] {
  return openResults(records).map((open) => ({
    due: "trial-result",
    record: `trials/${open.slug}`,
    ...open,
  }));
}

/** Trials that go on, or ended without a result, and contradict the records of their colours already. */
export function dueDoubts(records: Pick<Records, "trials" | "colours">): Due[] {
  return foundSoFar(records).flatMap((so) =>
    isWorse(so) ? [{ due: "trial-worse" as const, record: `trials/${so.slug}`, ...so }] : [],
  );
}

function isWorse(so: FoundSoFar): so is Worse {
  return so.contradiction !== undefined;
}

/** @returns the day on which a trial is to be looked at again, YYYY-MM-DD; undefined when it has ended. */
export function nextLook(trial: TrialRecord): string | undefined {
  const { nextDate } =
    trial.kind === "exposure"
      ? exposureSoFar(trial.started, trial.readings, trial.ended)
      : dryingSoFar(trial.started, touches(trial), trial.ended);
  return nextDate;
}

type DueLot = Extract<Due, { number: string }>;

const LEFT_TO_DO: Readonly<Partial<Record<LotState, DueLot["due"]>>> = {
  planned: "lot-planned",
  none: "lot-unread",
  unjudged: "lot-unjudged",
  fail: "lot-failed",
  recalled: "lot-recalled",
  conceded: "lot-conceded",
};

/** What a later lot of the colour has made a thing of the past. */
const OF_THE_NEWEST: ReadonlySet<DueLot["due"]> = new Set(["lot-unjudged", "lot-failed"]);

/** Lots with work left, the oldest first. */
export function dueLots(records: Records): DueLot[] {
  const isNewest = (lot: Lot): boolean =>
    madeLots(records).every(
      ({ record }) => record.colour !== lot.record.colour || record.date <= lot.record.date,
    );
  const isOnSale = ({ record }: Lot): boolean => {
    const colour = records.colours.get(record.colour);
    return colour !== undefined && lotOnSale(colour, records) === record.number;
  };
  return [...records.lots.values()]
    .toSorted((one, other) => (one.record.date < other.record.date ? -1 : 1))
    .flatMap((lot): DueLot[] => {
      const due = LEFT_TO_DO[lotState(lot, bookOf(lot.record.colour, records))];
      const isPassed =
        due !== undefined &&
        ((OF_THE_NEWEST.has(due) && !isNewest(lot)) || (due === "lot-conceded" && !isOnSale(lot)));
      return due === undefined || isPassed
        ? []
        : [{ due, record: `lots/${lot.slug}`, number: lot.record.number }];
    });
}

/** Of a workshop that keeps lots: its colours of which none was made, and those of which one was. */
export function coloursOfFewLots(records: Pick<Records, "colours" | "lots">): Due[] {
  const made = madeLots(records);
  if (made.length === 0) return [];
  return ([0, 1] as const).flatMap((lots): Due[] => {
    const colours = [...records.colours.keys()].filter(
      (slug) => made.filter(({ record }) => record.colour === slug).length === lots,
    );
    return colours.length === 0 ? [] : [{ due: "second-lot", record: "lots", lots, colours }];
  });
}

function madeLots({ lots }: Pick<Records, "lots">): Lot[] {
  return [...lots.values()].filter(({ record }) => record.planned !== true);
}
