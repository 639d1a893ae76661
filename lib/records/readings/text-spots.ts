import type { Spotter } from "./fault-list.ts";

const LF = 0x0a;
const CR = 0x0d;

/**
 * Line and column of every offset in a text. Lines end with LF, CRLF or a lone
 * CR, as instruments of different makes write them; columns are UTF-16 units.
 *
 * @returns a function of an offset, 0 <= offset <= text.length.
 */
export function textSpots(text: string): Spotter {
  const starts = [0];
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    if (code === LF || (code === CR && text.charCodeAt(i + 1) !== LF)) starts.push(i + 1);
  }
  return (place) => {
    // The LF of a CRLF has no column of its own.
    const offset =
      text.charCodeAt(place) === LF && text.charCodeAt(place - 1) === CR ? place - 1 : place;
    let low = 0;
    let high = starts.length - 1;
    while (low < high) {
      const middle = Math.ceil((low + high) / 2);
      if ((starts[middle] ?? 0) <= offset) low = middle;
      else high = middle - 1;
    }
    return { line: low + 1, column: offset - (starts[low] ?? 0) + 1 };
  };
}
