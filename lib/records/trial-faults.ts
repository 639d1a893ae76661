import { grouped } from "../quantities/grouped.ts";
import { errorAt, faultAt, warningAt, type Faults } from "./fault.ts";
import type { OwnRule } from "./own-faults.ts";
import type { ParsedFiles } from "./parsed-files.ts";
import type { Parsed } from "./parsed-record.ts";
import type { ColourRecord } from "./schema/colour.ts";
import { TOUCHES } from "./schema/terms.ts";
import type { TrialRecord } from "./schema/trial.ts";
import { humidityFault } from "./humidity-fault.ts";
import { amountEnds } from "./amount-ends.ts";
import type { RecordPath, YamlRecord } from "./yaml-record.ts";

/** A colour change may be read so much less [Delta-E*ab], and by such a part [1], than it was before. Our own limits, wide for a hand-held instrument. */
const READ_AGAIN_WITHIN = { deltaEab: 0.5, part: 0.1 } as const;

/** Trials whose days are out of order, or that are of another colour's lot. */
export function* trialFaults({ trials, lots }: ParsedFiles): Faults {
  for (const trial of trials.values()) yield* orderFaults(trial, lots);
}

/** Trials that run backwards, in a room that no room is. */
export const trialReadingFaults: OwnRule<TrialRecord> = function* ({ record, yaml }) {
  if (record.kind === "drying") {
    yield* wetAgainFaults(record, yaml);
    const dry = humidityFault(record.humidityPercent);
    if (dry !== undefined) yield faultAt(yaml.place(["humidityPercent"]), dry);
  } else
    yield* fallFaults(
      record.readings.map(({ date, deltaEab }, i) => ({
        when: `on ${date}`,
        deltaEab,
        path: ["readings", i, "deltaEab"],
      })),
      yaml,
    );
};

function* orderFaults({ record, yaml }: Parsed<TrialRecord>, lots: ParsedFiles["lots"]): Faults {
  const [key, entries] =
    record.kind === "exposure"
      ? (["readings", record.readings] as const)
      : (["touched", record.touched] as const);
  const disordered = entries.findIndex(
    ({ date }, i) => date <= (entries[i - 1]?.date ?? "") || date < record.started,
  );
  if (disordered >= 0)
    yield errorAt(yaml.place([key, disordered, "date"]), "records/trial-order", {
      message: `The day ${entries[disordered]?.date ?? ""} does not come after ${entries[disordered - 1]?.date ?? record.started}`,
      actual: entries[disordered]?.date ?? "",
      expected: "days in order, none before the start",
    });
  const last = entries.at(-1)?.date ?? record.started;
  if (record.ended !== undefined && record.ended < last)
    yield errorAt(yaml.place(["ended"]), "records/trial-order", {
      message: `The trial ended on ${record.ended}, and was read on ${last}`,
      actual: record.ended,
      expected: `${last} or later`,
    });
  const lot = record.lot === undefined ? undefined : lots.get(record.lot);
  if (lot !== undefined && lot.record.colour !== record.colour)
    yield errorAt(yaml.place(["lot"]), "records/trial-lot", {
      message: `The lot ${lot.slug} is one of ${lot.record.colour}`,
      actual: lot.record.colour,
      expected: `a lot of ${record.colour}`,
    });
}

/** A film that was dry does not turn wet. */
function* wetAgainFaults(
  { touched }: Extract<TrialRecord, { kind: "drying" }>,
  yaml: YamlRecord,
): Faults {
  for (const [i, { found, date }] of touched.entries()) {
    const before = touched[i - 1];
    if (before === undefined || TOUCHES.indexOf(found) >= TOUCHES.indexOf(before.found)) continue;
    yield warningAt(yaml.place(["touched", i, "found"]), "records/trial-backwards", {
      message: `The film was ${before.found} on ${before.date}, and ${found} on ${date}: no film turns back`,
      actual: found,
      expected: `${before.found} or drier`,
      hint: "two days or two words exchanged, or another film?",
    });
  }
}

interface Changed {
  /** "after 12 months", "on 2026-03-01". */
  readonly when: string;
  readonly deltaEab: number;
  readonly path: RecordPath;
}

/** Changes in the order of their exposure, each told that lies plainly below an earlier one. */
function* fallFaults(changes: readonly Changed[], yaml: YamlRecord): Faults {
  for (const [i, { when, deltaEab, path }] of changes.entries()) {
    const most = changes
      .slice(0, i)
      .reduce<Changed | undefined>(
        (one, other) => (one === undefined || other.deltaEab > one.deltaEab ? other : one),
        undefined,
      );
    if (most === undefined) continue;
    const fall = most.deltaEab - deltaEab;
    const { deltaEab: least, part } = READ_AGAIN_WITHIN;
    if (!(fall > least && fall > part * most.deltaEab)) continue;
    yield warningAt(yaml.place(path), "records/change-falls", {
      message: `The colour change is ${deltaEab} ${when}, and was ${most.deltaEab} ${most.when}: with more light it does not fall`,
      actual: String(deltaEab),
      expected: `about ${most.deltaEab} or more`,
      hint: "a digit, two values exchanged, or read against another reference than the half kept dark; a few pigments come back in the dark",
    });
  }
}

const NUMBER = /\d+(?:\.\d+)?/g;

/** Exposures of one colour that their records tell apart by one number alone, as "6 months" from "12 months". */
export const exposureFallFaults: OwnRule<ColourRecord> = function* ({
  record: { exposures = [] },
  yaml,
}) {
  const changes = exposures.flatMap(({ deltaEab, form, standard, exposure }, i) => {
    const [number, ...others] = exposure.match(NUMBER) ?? [];
    const [end] = amountEnds(deltaEab, ["exposures", i, "deltaEab"]);
    if (number === undefined || others.length > 0 || end === undefined) return [];
    const series = JSON.stringify([form, standard, exposure.replace(NUMBER, "#")]);
    const change = { when: `after ${exposure}`, deltaEab: end.value, path: end.path };
    return [[series, { ...change, amount: Number(number) }] as const];
  });
  for (const series of grouped(changes).values())
    yield* fallFaults(
      series.toSorted((one, other) => one.amount - other.amount),
      yaml,
    );
};
