/** A stretch of a text and what is to stand in its place. */
export interface TextEdit {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** The text with all edits made, and every other letter as it was. @throws RangeError where two of them overlap */
export function editedText(text: string, edits: readonly TextEdit[]): string {
  const inOrder = [...edits].sort((one, other) => one.from - other.from || one.to - other.to);
  let end = 0;
  let edited = "";
  for (const { from, to, text: put } of inOrder) {
    if (!(from >= end && to >= from && to <= text.length))
      throw new RangeError(`An edit of ${from} to ${to} overlaps another or the text's end.`);
    edited += text.slice(end, from) + put;
    end = to;
  }
  return edited + text.slice(end);
}

/** Where the line begins that holds a place of the text. */
export function lineStart(text: string, at: number): number {
  return text.lastIndexOf("\n", at - 1) + 1;
}

/** Where the line ends that holds a place of the text, before what ends it. */
export function lineEnd(text: string, at: number): number {
  const feed = text.indexOf("\n", at);
  if (feed < 0) return text.length;
  return text[feed - 1] === "\r" ? feed - 1 : feed;
}

/** Where the next line begins, or the text's end. */
export function nextLine(text: string, at: number): number {
  const feed = text.indexOf("\n", at);
  return feed < 0 ? text.length : feed + 1;
}

/** What ends the lines of a text. */
export function lineBreak(text: string): string {
  return /\r?\n/.exec(text)?.[0] ?? "\n";
}
