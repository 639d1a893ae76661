import { lostHint, pathParts } from "../claims/figure-index.ts";
import { nearestHint } from "../diagnostics/nearest-word.ts";
import { isKnown } from "../quantities/figure.ts";
import { isPrivatePath } from "../sheet/figure-table.ts";
import { LIGHTNESS_KEYS } from "../sheet/tints/tint-figures.ts";
import type { ArgKind, ShortcodeFault, ShortcodeRoom } from "./shortcode.ts";
import { listed, type ShortcodeCall } from "./shortcode-syntax.ts";

interface Kind {
  /** What a value of it is, in words. */
  readonly expected: string;
  /** What is wrong with one, as written. */
  readonly faults: (value: string, at: ArgPlace) => Iterable<ShortcodeFault>;
}

/** Where a value stands. */
interface ArgPlace {
  /** What a complaint calls it: its own name, or the shortcode's where it has none. */
  readonly called: string;
  readonly call: ShortcodeCall;
  readonly room: ShortcodeRoom;
}

/** What an answer may show. */
export const PUBLIC_FIGURE = "a figure that sheet.json has";

/** Each kind of value that a shortcode takes. */
export const ARG_KINDS: Readonly<Record<ArgKind, Kind>> = {
  figure: {
    expected: "a colour and a figure path, as in the evidence of sheet.json",
    faults: figureFaults,
  },
  figures: {
    expected: "figure paths without the colour, by commas",
    *faults(value, at) {
      for (const path of listed(value)) yield* pathFaults(path, at);
    },
  },
  colour: {
    expected: "a file of colours/, without its ending",
    *faults(value, at) {
      yield* colourFaults(value, at);
      if (listed(value).length > 1)
        yield {
          message: `${at.called} takes one colour, and "${value}" names several`,
          actual: value,
          expected: "one colour",
        };
    },
  },
  colours: { expected: "files of colours/ without their endings, by commas", faults: colourFaults },
  white: {
    expected: "a white that colours were let down in",
    faults(value, { room: { context } }) {
      const whites = [...context.range.letDownIn.keys()];
      return unknownName(value, whites, "white", `No colour was let down in ${value}`);
    },
  },
  level: {
    expected: "70, 50 or 30",
    *faults(value) {
      if (!LIGHTNESS_KEYS.some((level) => level === value))
        yield {
          message: `The lightness is ${value}, and tints are shown at L* 70, 50 or 30`,
          actual: value,
          expected: ARG_KINDS.level.expected,
        };
    },
  },
  answer: {
    expected: "a file of answers/, without its ending",
    faults(value, { room: { context } }) {
      const answers = [...context.records.answers.keys()];
      return unknownName(value, answers, "answer");
    },
  },
  text: { expected: "text", faults: () => [] },
};

function* colourFaults(value: string, { room }: ArgPlace): Generator<ShortcodeFault> {
  const slugs = room.index.sheets.map((sheet) => sheet.slug);
  for (const slug of listed(value)) yield* unknownName(slug, slugs, "colour");
}

/** A name that is among none of those known. */
function* unknownName(
  name: string,
  known: readonly string[],
  kind: "colour" | "answer" | "white",
  message = `There is no ${kind} ${name} in ${kind}s/`,
): Generator<ShortcodeFault> {
  if (!known.includes(name))
    yield {
      message,
      actual: name,
      expected: ARG_KINDS[kind].expected,
      hint: nearestHint(name, known),
    };
}

function* figureFaults(path: string, { room }: ArgPlace): Generator<ShortcodeFault> {
  const found = room.index.figure(path);
  if ("lost" in found)
    yield {
      message:
        found.lost === "colour"
          ? `There is no colour ${pathParts(path).colour} in colours/`
          : `No sheet has a figure ${path}`,
      actual: path,
      expected: ARG_KINDS.figure.expected,
      hint: lostHint(found),
    };
  else if (found.leaf.row.isPrivate) yield privateFault(path);
  else if (!isKnown(found.leaf.figure))
    yield {
      message: `${path} is not stated, and can't be shown`,
      actual: path,
      expected: "a figure that is stated",
      hint: found.leaf.figure.reason,
    };
}

/** Known of one of the colours at least: else it is a slip, and no gap in a record. */
function* pathFaults(path: string, { call, room }: ArgPlace): Generator<ShortcodeFault> {
  if (isPrivatePath(path)) {
    yield privateFault(path);
    return;
  }
  const colours = listed(call.args.get("colours") ?? "");
  const found = colours.map((slug) => room.index.figure(`${slug}.${path}`));
  if (!found.every((figure) => "lost" in figure)) return;
  const nearest = found.find((figure) => figure.nearest !== undefined)?.nearest;
  yield {
    message: `No colour named here has a figure ${path}`,
    actual: path,
    expected: "a figure path without the colour, as in the evidence of sheet.json",
    hint: nearest && `nearest: ${nearest.slice(nearest.indexOf(".") + 1)}`,
  };
}

function privateFault(path: string): ShortcodeFault {
  return {
    message: `${path} is the workshop's alone, and an answer is published`,
    actual: path,
    expected: PUBLIC_FIGURE,
  };
}
