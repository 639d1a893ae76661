import { apparentRatio, nearerToColour, type LadderEnds } from "../optics/tints/let-down-order.ts";
import { grouped } from "../quantities/grouped.ts";
import { errorAt, faultAt, warningAt, type Faults } from "./fault.ts";
import { filmFaults } from "./film-faults.ts";
import { levelsOf, mean, type Levels } from "./reading-levels.ts";
import type { ReadColour, Reading, TintReading } from "./records.ts";

/** Ratios nearer to each other than this [1] may change places by weighing alone. Common practice. */
const RATIOS_APART = 1.25;
/**
 * How many times [1] as strong as its masstone leads to expect a colour tints: a transparent pigment, whose
 * masstone is deep for want of scattering, far less. Our own limits, wide.
 */
const STRENGTH_REACH = [1 / 300, 30] as const;
/** Two let-downs of one ratio hold so many times [1] the same, by what they look like, and beyond the second are no two of one. Our own limits. */
const ALIKE_WITHIN = [1.5, 3] as const;
/** Mean reflectance [1] under which a paint is no white, nor near one. Our own limit, wide. */
const LEAST_WHITE = 0.3;
/** A let-down lies no farther than this [1] in reflectance beyond its masstone or its white, whatever noise and gloss do. Our own limit. */
const BEYOND_ENDS = 0.03;

/**
 * Let-downs and films against what paint can do: a let-down lies on the way from its white to the
 * colour in the order of the ratios, a film over white is never the darker.
 *
 * @param whites the masstone of a white, by its slug.
 * @param isExtender whether what a let-down names as its white is none: in a film that lets its ground
 *   through a colour looks stronger than it is.
 */
export function* drawdownFaults(
  colour: ReadColour,
  whites: (slug: string) => Reading | undefined,
  isExtender: (slug: string) => boolean,
): Faults {
  const { record } = colour;
  // What could not be read was told already, and the rest no longer stands where the record says.
  const allRead =
    colour.tints.length === (record.tints ?? []).length &&
    colour.films.length === (record.films ?? []).length;
  if (allRead) yield* tintFaults(colour, whites, isExtender);
  yield* filmFaults(colour, allRead);
  yield* kindFaults(colour);
}

/** A let-down with its place in the record's list. */
interface Rung {
  readonly tint: TintReading;
  readonly index: number;
  readonly ratio: number;
  readonly levels: Levels;
}

/** Let-downs of one colour in one white, and what colour and white look like by themselves. */
interface Ladder extends LadderEnds {
  readonly place: ReadColour["place"];
  readonly rungs: readonly Rung[];
}

function* tintFaults(
  colour: ReadColour,
  whites: (slug: string) => Reading | undefined,
  isExtender: (slug: string) => boolean,
): Faults {
  const masstone = levelsOf(colour.masstone);
  for (const rungs of laddersOf(colour)) {
    const [first] = rungs;
    if (first === undefined) continue;
    const { white } = first.tint;
    const alike = (levels: Levels | undefined): readonly number[] | undefined =>
      levels?.scale === first.levels.scale ? levels.values : undefined;
    const ladder: Ladder = {
      place: colour.place,
      rungs,
      masstone: alike(masstone),
      white: alike(levelsOf(whites(white))),
    };
    if (!isExtender(white) && white !== colour.slug) yield* whiteFaults(ladder, first);
    yield* alikeFaults(ladder);
    const reversed = [...orderFaults(ladder)];
    yield* reversed;
    if (reversed.length > 0 || isExtender(white)) continue;
    const beyond = [...beyondFaults(ladder, colour.masstoneOverBlack !== undefined)];
    yield* beyond;
    if (beyond.length === 0) for (const rung of rungs) yield* strengthFaults(ladder, rung);
  }
}

/** The let-downs that can be held against each other: in one white, weighed alike and read alike. */
function laddersOf({ tints }: ReadColour): Iterable<readonly Rung[]> {
  const rungs = tints.flatMap((tint, index): (readonly [string, Rung])[] => {
    const levels = levelsOf(tint.reading);
    const ratio = tint.colourParts / tint.whiteParts;
    if (levels === undefined || !(ratio > 0 && ratio < Infinity)) return [];
    const key = JSON.stringify([tint.white, tint.ratioKind, levels.scale]);
    return [[key, { tint, index, ratio, levels }]];
  });
  return grouped(rungs).values();
}

/** What a let-down names as its white, where that is dark. */
function* whiteFaults({ white, place }: Ladder, { tint, index, levels }: Rung): Faults {
  if (white === undefined || !levels.isSpectral || mean(white) >= LEAST_WHITE) return;
  yield warningAt(place(["tints", index, "white"]), "records/dark-white", {
    message: `${tint.white} stands as the white of a let-down, and throws back ${(100 * mean(white)).toFixed(0)} % of the light`,
    actual: tint.white,
    expected: "a white, or an extender",
    hint: "another colour's name, or colour and white exchanged",
  });
}

/** Neighbours by ratio of which the one with more of the colour lies nearer to the white. */
function* orderFaults(ladder: Ladder): Faults {
  const byRatio = ladder.rungs.toSorted((one, other) => other.ratio - one.ratio);
  const pairs = byRatio.slice(1).flatMap((weaker, i) => {
    const stronger = byRatio[i];
    return stronger === undefined || stronger.ratio < RATIOS_APART * weaker.ratio
      ? []
      : [{ stronger, weaker }];
  });
  const reversed = pairs.filter(
    ({ stronger, weaker }) =>
      nearerToColour(stronger.levels.values, weaker.levels.values, ladder) < -stronger.levels.least,
  );
  const [one] = reversed;
  if (one === undefined) return;
  const { white } = one.weaker.tint;
  if (reversed.length === pairs.length && pairs.length > 1) {
    yield errorAt(
      ladder.place(["tints", one.weaker.index, "massRatio"]),
      "records/let-down-order",
      {
        message: `Each let-down in ${white} lies nearer to the white, the more of the colour its ratio says that it holds`,
        actual: byRatio.map(({ tint }) => tint.massRatio).join(", "),
        expected: "more of the colour, nearer to the colour",
        hint: 'a massRatio is colour to white, so a pale let-down is "1:20" and not "20:1"',
        source: "duncan-1940",
      },
    );
    return;
  }
  for (const { stronger, weaker } of reversed)
    yield errorAt(ladder.place(["tints", weaker.index]), "records/let-down-order", {
      message: `The let-down ${weaker.tint.massRatio} in ${white} lies nearer to the colour than ${stronger.tint.massRatio}, which holds more of it${darker(weaker, stronger)}`,
      actual: `${weaker.tint.massRatio} beyond ${stronger.tint.massRatio}`,
      expected: "more of the colour, nearer to the colour",
      hint: "the two columns are exchanged, or a ratio is written white to colour",
      source: "duncan-1940",
    });
}

/**
 * Let-downs that lie beyond their masstone or their white, and not between the two.
 * @param isFilm whether the masstone was read over black too: it then may let its white ground through,
 *   and look paler than much of the colour in a white that hides.
 */
function* beyondFaults({ masstone, white, place, rungs }: Ladder, isFilm: boolean): Faults {
  if (masstone === undefined) return;
  const ends = { masstone, white };
  const beyondColour = isFilm
    ? []
    : rungs.filter(({ levels }) => nearerToColour(masstone, levels.values, ends) < -BEYOND_ENDS);
  const beyondWhite =
    white === undefined
      ? []
      : rungs.filter(({ levels }) => nearerToColour(levels.values, white, ends) < -BEYOND_ENDS);
  for (const [found, isColour] of [
    [beyondColour, true],
    [beyondWhite, false],
  ] as const) {
    const [first] = found;
    if (first === undefined) continue;
    const slug = first.tint.white;
    const [end, far] = isColour ? ["the masstone", "the white"] : [slug, "the masstone"];
    const ratios = found.map(({ tint }) => tint.massRatio).join(", ");
    yield warningAt(place(["tints", first.index]), "records/let-down-beyond", {
      message: `${found.length === 1 ? `The let-down ${ratios} in ${slug} lies` : `The let-downs ${ratios} in ${slug} lie`} farther from ${far} than ${end} itself, as no mixture of the two does`,
      actual: `${ratios} beyond ${end}`,
      expected: "between the masstone and the white",
      hint: isColour
        ? "two columns are exchanged, the masstone is another paint's, or it was read in a film that lets its white ground through: overBlack tells"
        : "another column, another white, or a white that was read in a film too thin to hide",
      source: "duncan-1940",
    });
  }
}

function darker(weaker: Rung, stronger: Rung): string {
  return mean(weaker.levels.values) < mean(stronger.levels.values)
    ? `: ${weaker.tint.massRatio} is darker than ${stronger.tint.massRatio}`
    : "";
}

/** One let-down alone has no order: its ratio against what colour and white lead to expect. */
function* strengthFaults(
  { masstone, white, place }: Ladder,
  { tint, index, ratio, levels }: Rung,
): Faults {
  if (masstone === undefined || white === undefined || !levels.isSpectral) return;
  const apparent = apparentRatio(levels.values, { masstone, white });
  if (apparent === undefined) return;
  const times = apparent / ratio;
  const turned = apparent * ratio;
  const [least, most] = STRENGTH_REACH;
  if (times >= least && times <= most) return;
  yield warningAt(place(["tints", index, "massRatio"]), "records/let-down-strength", {
    message: `The let-down ${tint.massRatio} in ${tint.white} looks as one of about ${ratioText(apparent)} would, ${times > 1 ? "far stronger" : "far weaker"} than colours tint`,
    actual: tint.massRatio,
    expected: `about ${ratioText(apparent)}`,
    hint:
      turned >= least && turned <= most
        ? `massRatio is colour to white: ${tint.massRatio.split(":").toReversed().join(":")}, if it was written white to colour`
        : "another column, or another ratio",
  });
}

/** Let-downs of one ratio in one white that look as of quite different ones. */
function* alikeFaults({ masstone, white, place, rungs }: Ladder): Faults {
  if (masstone === undefined || white === undefined) return;
  const [doubtful, impossible] = ALIKE_WITHIN;
  for (const [i, rung] of rungs.entries()) {
    const twin = rungs.slice(0, i).find(({ ratio }) => Math.abs(ratio / rung.ratio - 1) < 0.01);
    if (twin === undefined || !rung.levels.isSpectral) continue;
    const [own, other] = [rung, twin].map(({ levels }) =>
      apparentRatio(levels.values, { masstone, white }),
    );
    if (own === undefined || other === undefined) continue;
    const times = Math.max(own / other, other / own);
    if (times < doubtful) continue;
    const { massRatio, white: slug } = rung.tint;
    yield faultAt(place(["tints", rung.index]), {
      severity: times < impossible ? "warning" : "error",
      rule: "records/let-downs-of-one-ratio",
      message: `Two let-downs in ${slug} are ${massRatio}, and look as ${ratioText(other)} and ${ratioText(own)} would`,
      actual: `${Number(times.toPrecision(2))} times as much of the colour in one as in the other`,
      expected: "as much of the colour in both",
      hint: "another ratio, another column or another white?",
      source: "duncan-1940",
    });
  }
}

function ratioText(ratio: number): string {
  const number = (value: number): string => String(Number(value.toPrecision(2)));
  return ratio >= 1 ? `${number(ratio)}:1` : `1:${number(1 / ratio)}`;
}

/** Paint weighed for one let-down of a ladder and dry pigment for the next: rare, and no fit tells it from a wrong ratio. */
function* kindFaults({ record: { tints = [] }, place }: ReadColour): Faults {
  for (const white of new Set(tints.map((tint) => tint.white))) {
    const ladder = tints
      .map((tint, index) => ({ ...tint, index }))
      .filter((one) => one.white === white);
    const pigment = ladder.filter(({ ratioKind }) => ratioKind === "pigment");
    const paint = ladder.filter(({ ratioKind }) => ratioKind === "paint");
    const [odd] = pigment.length <= paint.length ? pigment : paint;
    if (odd === undefined) continue;
    const usual = odd.ratioKind === "pigment" ? "paint" : "pigment";
    yield warningAt(place(["tints", odd.index, "ratioKind"]), "records/ratio-kind", {
      message: `The let-down ${odd.massRatio} in ${white} says that ${odd.ratioKind} was weighed, and others in the same white that ${usual} was`,
      actual: odd.ratioKind,
      expected: `${usual}, as of the others in ${white}`,
    });
  }
}
