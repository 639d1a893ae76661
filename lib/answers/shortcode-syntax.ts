/** A shortcode as written: `{% figure lamp-black.drying.class %}`, `{% ladder colour=lamp-black white="titanium-white" %}`. */
export interface ShortcodeCall {
  readonly name: string;
  /** By name; the one value without a name is under "". */
  readonly args: ReadonlyMap<string, string>;
}

interface SyntaxFault {
  readonly message: string;
  readonly actual: string;
  readonly expected: string;
}

const OPEN = "{%";
const CLOSE = "%}";

/** Where a shortcode that begins at `start` ends, past its close; -1 for one that never closes. */
export function shortcodeEnd(text: string, start: number): number {
  if (!text.startsWith(OPEN, start)) return -1;
  const close = text.indexOf(CLOSE, start + OPEN.length);
  const next = text.indexOf(OPEN, start + OPEN.length);
  return close < 0 || (next >= 0 && next < close) ? -1 : close + CLOSE.length;
}

/** What looks like a shortcode in other brackets, `{ figure a.b }` or `{{ figure a.b }}`: a page would print it as it is. */
export function otherBrackets(
  text: string,
  names: readonly string[],
): { readonly raw: string; readonly line: number; readonly column: number }[] {
  const written = new RegExp(`\\{(?!%)[\\s{%]*(?:${names.join("|")})(?=[\\s%}])[^{}\\n]*\\}+`, "g");
  return [...text.matchAll(written)].map(({ 0: raw, index }) => {
    const before = text.slice(0, index).split("\n");
    return { raw, line: before.length - 1, column: before.at(-1)?.length ?? 0 };
  });
}

/** The parts of a whole shortcode, from its open to its close. */
export function shortcodeCall(raw: string): ShortcodeCall | SyntaxFault {
  const inside = raw.slice(OPEN.length, -CLOSE.length).trim();
  const named = /^[a-z]+/.exec(inside);
  if (named === null)
    return {
      message: `A shortcode begins with its name, and this one ${inside === "" ? "is empty" : `with "${inside.slice(0, 40)}"`}`,
      actual: inside.slice(0, 40) || "nothing",
      expected: "the name of a shortcode first",
    };
  const args = new Map<string, string>();
  let rest = inside.slice(named[0].length);
  while (rest.trim() !== "") {
    const match = ARGUMENT.exec(rest);
    if (match === null)
      return {
        message: `"${rest.trim().slice(0, 40)}" can't be read as the value of a shortcode: a value is written white=titanium-white or colours="bone-black, lamp-black"`,
        actual: rest.trim().slice(0, 40),
        expected: 'values such as `white=titanium-white` or `colours="bone-black, lamp-black"`',
      };
    const key = match[1] ?? "";
    if (args.has(key))
      return {
        message:
          key === ""
            ? `A shortcode takes one value without a name, and "${match[0].trim()}" is a second`
            : `The value ${key} is given twice`,
        actual: key === "" ? match[0].trim() : key,
        expected: key === "" ? "one value without a name" : "each value once",
      };
    args.set(key, (match[2] ?? match[3] ?? "").trim());
    rest = rest.slice(match[0].length);
  }
  return { name: named[0], args };
}

const ARGUMENT = /^\s+(?:([a-z]+)=)?(?:"([^"]*)"|([^\s"=]+))(?=\s|$)/;

/** The members of a list by commas. */
export function listed(value: string): string[] {
  return value
    .split(",")
    .map((member) => member.trim())
    .filter((member) => member !== "");
}
