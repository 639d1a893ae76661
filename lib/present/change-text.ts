import type { Change, ChangedThing } from "../changes/changes-between.ts";
import { FIGURE_TABLE } from "../sheet/figure-table.ts";
import type { Words } from "../words/words.ts";
import { given } from "../quantities/given.ts";

/** What changed of a colour or an answer, a sentence each. */
export function changeSentences(thing: ChangedThing, words: Words): string[] {
  return thing.changes.flatMap((change) => changeTexts(change, thing.what, words));
}

/** One difference in words: a sentence for each thing that came or went. */
export function changeTexts(change: Change, what: ChangedThing["what"], words: Words): string[] {
  const text = words.pages.changes;
  switch (change.kind) {
    case "new":
    case "otherwise":
      return [text[change.kind][what]];
    case "gone":
      return [
        given([
          text.gone[what],
          change.replacedBy !== undefined && `${words.pages.former.replacedBy(change.replacedBy)}.`,
        ]).join(" "),
      ];
    case "price": {
      const [before, now] = [change.before, change.now].map((amount) =>
        amount === undefined
          ? undefined
          : words.pages.handling.offer.price(amount, change.currency),
      );
      return [cameOrWent(text.price(change.ml), before, now, words)];
    }
    case "discontinued":
      return [text.discontinued(words.date(change.date))];
    case "renamed":
      return [text.renamed(change.before, change.now)];
    case "figure":
      return [figureText(change, words)];
    case "said":
      return [saidText(change, words)];
    case "sizes":
    case "photographs":
      return listTexts(text[change.kind], change, words);
    case "signal word":
      return [
        text.figure(
          text.signalWord,
          signalWord(change.before, words),
          signalWord(change.now, words),
        ),
      ];
    case "cautions": {
      const named = (one: string): string =>
        change.of === "pictograms" ? (words.pictograms[one] ?? one) : one.replace(/\.$/, "");
      return listTexts(
        text.cautions[change.of],
        { came: change.came.map(named), went: change.went.map(named) },
        words,
      );
    }
  }
}

function figureText(
  { figure, before, now }: Extract<Change, { readonly kind: "figure" }>,
  words: Words,
): string {
  const word = FIGURE_TABLE.find(({ pattern }) => pattern === figure)?.word;
  const what = word === undefined ? figure : words.figures[word];
  // A difference has no unit: what it is a difference of, its sign says.
  const sign = word === "deltaEab" ? "\u0394E*ab " : "";
  const [old, own] = [before, now].map((one) => one && `${sign}${one}`);
  return cameOrWent(what, old, own, words);
}

/** One that came has nothing before, one that went nothing now. */
function cameOrWent(
  what: string,
  before: string | undefined,
  now: string | undefined,
  { pages: { changes: text } }: Words,
): string {
  if (now === undefined) return text.figureWent(what, before ?? "");
  return before === undefined ? text.figureCame(what, now) : text.figure(what, before, now);
}

function saidText(
  { what, before, now }: Extract<Change, { readonly kind: "said" }>,
  words: Words,
): string {
  const text = words.pages.changes;
  const [old, own] = [before, now].map((one) => one?.replace(/\.$/, ""));
  if (own === undefined) return text.figureWent(text.said[what], old ?? "");
  return old === undefined
    ? text.figureCame(text.said[what], own)
    : `${text.said[what]}${words.colon}${text.renamed(old, own)}`;
}

function listTexts(
  what: string,
  { came, went }: { readonly came: readonly string[]; readonly went: readonly string[] },
  words: Words,
): string[] {
  const text = words.pages.changes;
  return [...went.map((one) => text.went(what, one)), ...came.map((one) => text.came(what, one))];
}

function signalWord(word: string | null, words: Words): string {
  return word === "Danger" || word === "Warning"
    ? words.signalWords[word]
    : words.pages.changes.noSignalWord;
}
