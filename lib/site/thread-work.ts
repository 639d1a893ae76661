import type { MadeOfPhotograph, PhotographToMake } from "../photographs/made-of-photograph.ts";
import type { PictureToDraw } from "../pictures/drawn-picture.ts";
import type { CardToLayOut } from "../print/card-layout.ts";
import type { CardsOnPaper, PagesOnPaper, RangeOnPaper, SheetPaper } from "../print/paper-work.ts";

/** What may be worked out in a thread of its own: plain data in, plain data out, the same wherever it is done. */
export interface ThreadWork {
  readonly ready: (asked: Uint8Array | null) => null;
  readonly words: (asked: null) => Uint8Array | null;
  readonly leaves: (asked: PagesOnPaper) => Uint8Array;
  readonly sheet: (asked: PagesOnPaper) => SheetPaper;
  readonly range: (asked: RangeOnPaper) => Uint8Array;
  readonly card: (asked: CardToLayOut) => Uint8Array | null;
  readonly cards: (asked: CardsOnPaper) => Uint8Array;
  readonly picture: (asked: PictureToDraw) => Promise<Uint8Array>;
  readonly photograph: (asked: PhotographToMake) => Promise<MadeOfPhotograph>;
}

export type WorkName = keyof ThreadWork;
export type Asked<N extends WorkName> = Parameters<ThreadWork[N]>[0];
export type WorkedOut<N extends WorkName> = Awaited<ReturnType<ThreadWork[N]>>;

/** Each by the module that does it, which is loaded where the first of its kind is done. */
const WORK: { readonly [N in WorkName]: () => Promise<ThreadWork[N]> } = {
  ready: async () => (await import("../print/paper-work.ts")).readyForPaper,
  words: async () => (await import("../print/paper-work.ts")).wordsOnPaper,
  leaves: async () => (await import("../print/paper-work.ts")).leavesOnPaper,
  sheet: async () => (await import("../print/paper-work.ts")).sheetOnPaper,
  range: async () => (await import("../print/paper-work.ts")).rangeOnPaper,
  picture: async () => (await import("../pictures/drawn-picture.ts")).drawnPicture,
  photograph: async () => (await import("../photographs/made-of-photograph.ts")).madeOfPhotograph,
  card: async () => (await import("../print/paper-work.ts")).cardOnPaper,
  cards: async () => (await import("../print/paper-work.ts")).cardsOnPaper,
};

/** Does a piece of work in this thread. */
export async function workedOut<N extends WorkName>(
  name: N,
  asked: Asked<N>,
): Promise<WorkedOut<N>> {
  const work = (await WORK[name]()) as (asked: Asked<N>) => WorkedOut<N>;
  return work(asked);
}
