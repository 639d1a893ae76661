import type { KeptSteps } from "../kept/kept-steps.ts";
import { partText, textHash } from "../kept/part-hashes.ts";
import {
  mixesOf,
  type FoundMix,
  type Nearest,
  type Search,
} from "../mixing/finding/found-mixes.ts";
import { remembered } from "../quantities/remembered.ts";

/** What was found of a search before: of each set of paints, by their places in it, the nearest mixture. */
interface SearchedBefore {
  /** Of the target, and of what all paints of the search share. */
  readonly aim: string;
  /** Of each paint. */
  readonly paints: readonly string[];
  readonly nearest: ReadonlyMap<string, Nearest | undefined>;
}

/**
 * What a search finds. A paint that is another since moves the mixtures that it is in: of all sets
 * without it what was found before is taken.
 * @param name of the search, by which it is kept.
 */
export function keptMixes(name: string, search: Search, steps: KeptSteps | undefined): FoundMix[] {
  if (steps === undefined) return foundIn(mixesOf(search));
  const step = { modules: ["lib/pages/kept-mixes.ts"], name: `mixtures ${name}` };
  const before = steps.last(step) as SearchedBefore | undefined;
  const [aim, paints] = [aimOf(search), search.ladders.map((one) => hashOf(one))];
  const places = new Map(
    before?.aim === aim ? before.paints.map((paint, i) => [paint, i + 1] as const) : [],
  );
  const placesBefore = [0, ...paints.map((paint) => places.get(paint))];
  const nearest = new Map<string, Nearest | undefined>();
  let isAnother = before?.aim !== aim;
  const found = foundIn(
    mixesOf(search, (members, made) => {
      const known = members.map((member) => placesBefore[member] ?? "?").join();
      const isKnown = before?.nearest.has(known) === true;
      isAnother ||= !isKnown;
      const own = isKnown ? before.nearest.get(known) : made();
      nearest.set(members.join(), own);
      return own;
    }),
  );
  if (isAnother) steps.keepLast(step, { aim, paints, nearest } satisfies SearchedBefore);
  return found;
}

function foundIn(mixes: Iterable<FoundMix | undefined>): FoundMix[] {
  return [...mixes].flatMap((one) => one ?? []);
}

/** The target as it is met, and the film and the white that the first of the paints tells for all. */
function aimOf({ wish: { target }, ladders: [first] }: Search): string {
  const { grid, geometry, surface } = first?.fit ?? {};
  return textHash([partText([target, grid, geometry, surface, first?.white.whiteRatio])]);
}

/** Its model follows from these. The same ladder is in many searches. */
const hashOf = remembered(({ fit, white, used }: Search["ladders"][number]): string =>
  textHash([partText([fit, white, used])]),
);
