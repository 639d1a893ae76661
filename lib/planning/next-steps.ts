import type { HeldAnswer } from "../claims/held-claims.ts";
import { slugOrder } from "../quantities/name-order.ts";
import { remembered } from "../quantities/remembered.ts";
import { grouped } from "../quantities/grouped.ts";
import type { Records } from "../records/records.ts";
import { MADE_EACH_TIME, type Keep } from "../kept/kept-result.ts";
import { madeStep, type KeptSteps } from "../kept/kept-steps.ts";
import { readWhenAsked } from "../kept/reads.ts";
import { allFits } from "../sheet/all-sheets.ts";
import { colourSheet } from "../sheet/colour-sheet.ts";
import { paintOfWhite } from "../sheet/record-inputs.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { Fits } from "../sheet/tints/strength.ts";
import {
  isAskedFor,
  isGivenBy,
  possibleMeasurements,
  workHours,
  type Measurement,
} from "./measurement.ts";
import { gainedLines, matterOf, openLines, type Gain, type GainedLine } from "./sheet-lines.ts";
import { given } from "../quantities/given.ts";

/** What a measurement would do to the sheets, found by putting a plausible value in. */
export interface NextStep {
  readonly measurement: Measurement;
  readonly hours: number;
  /** Lines of "not stated" that would be stated. */
  readonly cleared: number;
  /** Lines that rest on an estimate now and would not. */
  readonly firmer: number;
  /** Lines that no sheet has yet, since nothing was there to work them out of. */
  readonly added: number;
  /** Of those cleared or firmer what a reader takes for one: the cells of one table, a pigment's own figure on all sheets. */
  readonly matters: number;
  /** Claims of answers that speak of one of these lines. */
  readonly claims: number;
  /** Colours whose sheets change, by slug. */
  readonly colours: readonly string[];
  /** Colours whose lines are counted, and all that it concerns. */
  readonly countedOn: number;
  readonly concerns: number;
  /** Whether it was tried itself; else it gains what steps gain that want the same of their colours. */
  readonly isTried: boolean;
}

/** What concerns more colours is tried on so many, taken evenly out of them: the sheets of one pigment gain much alike. Our own choice. */
const TRIED_ON_MOST = 40;

/** Of steps that want the same of their colours so many are tried; where these gain the same lines, the others are taken to. Our own choice. */
export const TRIED_ALIKE = 3;

/** So many lines that are new count as one that is cleared: a ladder has dozens. Our own choice. */
const ADDED_TO_ONE = 10;

/**
 * What to measure, weigh, ask or expose next: the steps that clear and firm up most lines for
 * the work they take, the best first. Each is tried: a plausible value goes into the records,
 * the sheets that rest on it are worked out again, and what has changed is counted. Of many that
 * are alike a few are tried.
 *
 * @param sheets of the records as they are.
 * @param most steps that are tried, those first that concern most open lines; and sheets that are worked out for it in all.
 * @param known fits of the records as they are, and what is kept between builds.
 */
export function nextSteps(
  records: Records,
  sheets: readonly Sheet[],
  answers: readonly HeldAnswer[],
  most: { readonly steps: number; readonly sheets: number },
  known: KnownFits = { fits: allFits(records), kept: MADE_EACH_TIME },
): NextStep[] {
  const bySlug = new Map(sheets.map((sheet) => [sheet.slug, sheet]));
  const claimed = claimedPaths(answers);
  let [steps, worked] = [0, 0];
  const tried = (measurement: Measurement): TriedStep[] => {
    if (steps >= most.steps || worked >= most.sheets) return [];
    const step = triedStep(measurement, records, known, bySlug);
    steps++;
    worked += step.gained.length;
    return [step];
  };
  return promising(records, bySlug, known.steps)
    .flatMap((alike): NextStep[] => {
      const few = lastOfStretches(alike, TRIED_ALIKE);
      const others = alike.filter((measurement) => !few.includes(measurement));
      const first = few.flatMap(tried);
      const [one] = first;
      if (one === undefined) return [];
      return [
        ...first.map((step) => counted(step, claimed)),
        ...(first.length === few.length && first.every((step) => gainsAlike(step, one))
          ? others.map((measurement) => takenFrom(one, measurement, claimed))
          : others.flatMap(tried).map((step) => counted(step, claimed))),
      ];
    })
    .filter(({ cleared, firmer, added }) => cleared + firmer + added > 0)
    .sort(
      (one, other) =>
        Number(isPacking(one)) - Number(isPacking(other)) ||
        worth(other) - worth(one) ||
        order(one, other),
    );
}

/** How a powder packs, which no painter asks: after all that one does. */
function isPacking({ measurement }: NextStep): boolean {
  return measurement.key === "bulkDensities";
}

export interface KnownFits {
  readonly fits: Fits;
  readonly kept: Keep;
  /** What each sheet has open and would gain, by what was read for it. */
  readonly steps?: KeptSteps | undefined;
}

const MODULES = ["lib/planning/next-steps.ts"];

/** What is gained for an hour of work, in all colours as in those that it was tried on. */
export function worth({ matters, added, claims, hours, countedOn, concerns }: NextStep): number {
  const gained = matters + claims + added / ADDED_TO_ONE;
  return countedOn === 0 ? 0 : (gained * (concerns / countedOn)) / hours;
}

function order({ measurement: one }: NextStep, { measurement: other }: NextStep): number {
  return slugOrder(
    `${one.kind} ${one.slug} ${one.key}`,
    `${other.kind} ${other.slug} ${other.key}`,
  );
}

/** How often claims speak of a path, colour first. */
function claimedPaths(answers: readonly HeldAnswer[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const { claims } of answers)
    for (const path of claims.flatMap(({ paths }) => paths))
      counts.set(path, (counts.get(path) ?? 0) + 1);
  return counts;
}

/** A measurement as it was tried: of each colour that it was tried on, the lines of its sheet that gain. */
interface TriedStep {
  readonly measurement: Measurement;
  readonly gained: readonly GainedLines[];
  readonly concerns: number;
}

interface GainedLines {
  readonly slug: string;
  readonly lines: readonly GainedLine[];
}

function triedStep(
  measurement: Measurement,
  records: Records,
  known: KnownFits,
  sheets: ReadonlyMap<string, Sheet>,
): TriedStep {
  const { kind, slug: measured, key } = measurement;
  const all = concerned(measurement, records);
  const tried = readWhenAsked(() => measurement.tried());
  const gained = lastOfStretches(all, TRIED_ON_MOST).map((slug): GainedLines => {
    const of = `${kind} ${measured} ${key} on ${slug}`;
    const lines = madeStep(known.steps, { modules: MODULES, name: "measurements tried", of }, () =>
      gainedLines(...beforeAndAfter(measurement, tried(), slug, records, known, sheets)),
    );
    return { slug, lines };
  });
  return { measurement, gained, concerns: all.length };
}

function gainsAlike({ gained: one }: TriedStep, { gained: other }: TriedStep): boolean {
  const lines = (gained: TriedStep["gained"]): string =>
    JSON.stringify(gained.map((each) => each.lines));
  return lines(one) === lines(other);
}

function counted(
  { measurement, gained, concerns }: TriedStep,
  claimed: ReadonlyMap<string, number>,
): NextStep {
  const count = (wanted: Gain): number =>
    gained.reduce((sum, { lines }) => sum + lines.filter(({ gain }) => gain === wanted).length, 0);
  return {
    measurement,
    hours: workHours(measurement),
    cleared: count("cleared"),
    firmer: count("firmer"),
    added: count("added"),
    matters: new Set(
      gained.flatMap(({ slug, lines }) =>
        lines.flatMap(({ path, gain }) => (gain === "added" ? [] : [matterOf(slug, path)])),
      ),
    ).size,
    claims: gained
      .flatMap(({ slug, lines }) => lines.map(({ path }) => claimed.get(`${slug}.${path}`) ?? 0))
      .reduce((sum, claims) => sum + claims, 0),
    colours: gained.flatMap(({ slug, lines }) => (lines.length === 0 ? [] : [slug])),
    countedOn: gained.length,
    concerns,
    isTried: true,
  };
}

/** What the same measurement of another colour gains that wants the same. */
function takenFrom(
  { gained, ...step }: TriedStep,
  measurement: Measurement,
  claimed: ReadonlyMap<string, number>,
): NextStep {
  const own = gained.map(({ lines }) => ({ slug: measurement.slug, lines }));
  return { ...counted({ ...step, measurement, gained: own }, claimed), isTried: false };
}

/** So many at most: of as many equal stretches the last of each. */
function lastOfStretches<T>(all: readonly T[], most: number): readonly T[] {
  return all.length <= most
    ? all
    : all.filter(
        (_, i) => Math.floor((i * most) / all.length) < Math.floor(((i + 1) * most) / all.length),
      );
}

/** A sheet as it is, and as it would be. A reading changes the fit of its colour: then it and what it is let down in are fitted apart, before as after. */
function beforeAndAfter(
  { refits, slug: measured }: Measurement,
  tried: Records,
  slug: string,
  records: Records,
  { fits, kept }: KnownFits,
  sheets: ReadonlyMap<string, Sheet>,
): readonly [before: Sheet | undefined, after: Sheet | undefined] {
  const colour = tried.colours.get(slug);
  if (colour === undefined) return [undefined, undefined];
  if (!refits) return [sheets.get(slug), colourSheet(colour, fits, tried)];
  const [few, fewTried] = [
    companions(measured, records, tried),
    companions(measured, tried, tried),
  ];
  const own = few.colours.get(slug);
  return [
    own && colourSheet(own, allFits(few, kept), few),
    colourSheet(colour, allFits(fewTried, kept), fewTried),
  ];
}

/** The records with no colours but one, the whites of its let-downs as tried, and what strength goes by. */
function companions(slug: string, records: Records, tried: Records): Records {
  const whites = (tried.colours.get(slug)?.record.tints ?? []).map(({ white }) => white);
  const reference = records.workshop.strengthReference;
  const kept = new Set(
    given([
      slug,
      ...[...whites, ...referenceWhites(reference, records)].flatMap(
        (white) => paintOfWhite(white, records)?.slug ?? [],
      ),
      reference,
    ]),
  );
  const few = [...kept].flatMap((one) => records.colours.get(one) ?? []);
  return {
    ...records,
    colours: new Map(
      few
        .sort((one, other) => slugOrder(one.slug, other.slug))
        .map((colour) => [colour.slug, colour]),
    ),
  };
}

function referenceWhites(reference: string | undefined, records: Records): string[] {
  return reference === undefined
    ? []
    : (records.colours.get(reference)?.record.tints ?? []).map(({ white }) => white);
}

/** Colours whose sheets a measurement can change. */
function concerned({ kind, slug }: Measurement, records: Records): readonly string[] {
  if (kind === "colour") return records.colours.has(slug) ? [slug] : [];
  return coloursMadeWith(records).get(`${kind} ${slug}`) ?? [];
}

/** By pigment and by vehicle, the colours with it in them. */
const coloursMadeWith = remembered(({ colours, workshop }: Records) =>
  grouped(
    [...colours.values()].flatMap(({ slug, record }) => {
      const vehicles = [
        record.vehicle ?? workshop.vehicle,
        ...(record.additions ?? []).map(({ vehicle }) => vehicle),
      ];
      const parts = [
        ...record.pigments.map(({ pigment }) => `pigment ${pigment}`),
        ...vehicles.map((vehicle) => `vehicle ${vehicle}`),
      ];
      return [...new Set(parts)].map((part) => [part, slug] as const);
    }),
  ),
);

/**
 * Trying takes time: those first that most open lines ask for or rest on, for the work they take.
 * What is measured of a colour stands together with the same of others whose same lines want it.
 */
function promising(
  records: Records,
  sheets: ReadonlyMap<string, Sheet>,
  steps: KeptSteps | undefined,
): (readonly Measurement[])[] {
  const open = new Map(
    [...sheets].map(([slug, sheet]) => [
      slug,
      madeStep(steps, { modules: MODULES, name: "open lines", of: slug }, () => openLines(sheet)),
    ]),
  );
  const groups = new Map<string, { readonly promised: number; readonly alike: Measurement[] }>();
  for (const measurement of possibleMeasurements(records)) {
    const { kind, slug, key } = measurement;
    const lines = concerned(measurement, records).flatMap((colour) =>
      (open.get(colour) ?? [])
        .filter(
          ({ wanting, restsOn }) =>
            wanting.some((path) => isAskedFor(measurement, path)) ||
            restsOn.some((path) => isGivenBy(measurement, path)),
        )
        .map(({ path }) => ({ path, matter: matterOf(colour, path) })),
    );
    const of = kind === "colour" ? lines.map(({ path }) => path) : [slug];
    const id = [kind, key, ...of].join(" ");
    const group = groups.get(id) ?? {
      promised: new Set(lines.map(({ matter }) => matter)).size / workHours(measurement),
      alike: [],
    };
    group.alike.push(measurement);
    groups.set(id, group);
  }
  return [...groups.values()]
    .sort((one, other) => other.promised - one.promised)
    .map(({ alike }) => alike);
}
