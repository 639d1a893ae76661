import type { RecordTexts } from "../support/content-folder.ts";
import { chosen, index, type Chance } from "./chance.ts";
import { SMALL_WORKSHOPS } from "./small-workshops.ts";
import { soundWorkshops } from "./sound-workshops.ts";
import { ANSWER_MUTATIONS } from "./mutations/answers.ts";
import { NUMERIC_KEYS, withNumbers } from "./mutations/numeric-keys.ts";
import { CGATS_MUTATIONS, CSV_MUTATIONS, CXF_MUTATIONS } from "./mutations/readings.ts";
import { restructured, withLetters } from "./mutations/structure.ts";
import { TEXT_MUTATIONS, type Mutation } from "./mutations/text.ts";

/** A way of spoiling a file, and the files that can be spoilt so. */
interface Kind {
  readonly takes: (path: string) => boolean;
  readonly spoilt: (text: string, path: string, chance: Chance) => string;
}

const isRecord = (path: string): boolean => !path.startsWith("readings/");
const folderOf = (path: string): string => path.split("/")[0] ?? "";
const ending =
  (end: string) =>
  (path: string): boolean =>
    path.endsWith(end);
const oneToThree =
  (mutations: readonly Mutation[]): Kind["spoilt"] =>
  (text, _, chance) => {
    let spoilt = text;
    for (let times = 1 + index(chance, 3); times > 0; times--)
      spoilt = chosen(chance, mutations)(spoilt, chance);
    return spoilt;
  };

export const KINDS = {
  text: { takes: () => true, spoilt: oneToThree(TEXT_MUTATIONS) },
  structure: { takes: isRecord, spoilt: (text, _, chance) => restructured(text, chance) },
  numbers: {
    takes: (path) => folderOf(path) in NUMERIC_KEYS,
    spoilt: (text, path, chance) => withNumbers(text, folderOf(path), chance),
  },
  letters: { takes: isRecord, spoilt: (text, _, chance) => withLetters(text, chance) },
  CSV: { takes: ending(".csv"), spoilt: oneToThree(CSV_MUTATIONS) },
  CGATS: { takes: ending(".txt"), spoilt: oneToThree(CGATS_MUTATIONS) },
  CxF: { takes: ending(".cxf"), spoilt: oneToThree(CXF_MUTATIONS) },
  answers: {
    takes: (path) => path.startsWith("answers/"),
    spoilt: oneToThree([...ANSWER_MUTATIONS, ...TEXT_MUTATIONS]),
  },
} as const satisfies Readonly<Record<string, Kind>>;
export type KindName = keyof typeof KINDS;

/** Records of every form come more often than readings of one. */
const OFTEN: readonly KindName[] = [
  "text",
  "text",
  "structure",
  "structure",
  "numbers",
  "numbers",
  "letters",
  "CSV",
  "CGATS",
  "CxF",
  "answers",
];

export interface FuzzedInput {
  readonly kind: KindName;
  /** Which of the workshops, which of its files, and what that becomes. */
  readonly workshop: number;
  readonly path: string;
  readonly text: string;
}

/** Of so many inputs [1] a file of a small workshop is spoilt, which costs a fifth of the time. */
const SMALL_SHARE = 0.9;

/** Small workshops first. */
export const WORKSHOPS: readonly RecordTexts[] = [...SMALL_WORKSHOPS, ...soundWorkshops()];

/** The same for a seed. */
export function fuzzedInput(chance: Chance): FuzzedInput {
  const kind = chosen(chance, OFTEN);
  const { takes, spoilt }: Kind = KINDS[kind];
  const filesOf = (from: number, to: number): { workshop: number; path: string }[] =>
    WORKSHOPS.slice(from, to).flatMap((texts, i) =>
      Object.keys(texts)
        .filter(takes)
        .map((path) => ({ workshop: from + i, path })),
    );
  const few = SMALL_WORKSHOPS.length;
  const among = chance() < SMALL_SHARE ? filesOf(0, few) : filesOf(few, WORKSHOPS.length);
  const { workshop, path } = chosen(chance, among);
  return { kind, workshop, path, text: spoilt(WORKSHOPS[workshop]?.[path] ?? "", path, chance) };
}
