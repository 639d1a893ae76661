import { lostHint } from "../claims/figure-index.ts";
import { nearestHint } from "../diagnostics/nearest-word.ts";
import { isPrivatePath } from "../sheet/figure-table.ts";
import { isKnown } from "../quantities/figure.ts";
import { LIGHTNESS_KEYS } from "../sheet/tints/tint-figures.ts";
import type { ArgKind, ArgRule, Args, Shortcode, ShortcodeRoom } from "./shortcode.ts";
import { listed, type ShortcodeCall } from "./shortcode-syntax.ts";

/** Hold the arguments of a shortcode against what it takes; every fault is told, and then there are none. */
export function checkedArgs(
  { name: shortcode, args: rules }: Shortcode,
  call: ShortcodeCall,
  room: ShortcodeRoom,
): Args | undefined {
  let faults = 0;
  const fault = (message: string, actual: string, expected: string, hint?: string): void => {
    room.fault({ message, actual, expected, hint });
    faults += 1;
  };
  for (const key of call.args.keys()) {
    if (!rules.some(({ name }) => name === key))
      fault(
        key === ""
          ? `${shortcode} takes no value without a name, and "${call.args.get("") ?? ""}" is one`
          : `${shortcode} takes no value called ${key}`,
        key === "" ? (call.args.get("") ?? "") : key,
        rules.map(({ name }) => (name === "" ? "one without a name" : name)).join(", "),
        nearestHint(
          key,
          rules.map(({ name }) => name),
        ),
      );
  }
  for (const rule of rules) {
    const value = call.args.get(rule.name);
    if (value === undefined || value === "") {
      if (rule.optional !== true)
        fault(
          `${shortcode} needs ${rule.name === "" ? "" : `${rule.name}: `}${EXPECTED[rule.kind]}`,
          "nothing",
          EXPECTED[rule.kind],
        );
    } else checkValue(rule, value);
  }
  return faults === 0 ? argsOf(call, room) : undefined;

  function privateFault(path: string): void {
    fault(`${path} is the workshop's alone, and an answer is published`, path, PUBLIC_FIGURE);
  }

  /** A name that is among none of those known. */
  function checkKnown(
    name: string,
    known: readonly string[],
    message: string,
    kind: ArgKind,
  ): void {
    if (!known.includes(name))
      fault(`${message} ${name}`, name, EXPECTED[kind], nearestHint(name, known));
  }

  function checkValue({ name, kind }: ArgRule, value: string): void {
    const { sheets } = room.index;
    switch (kind) {
      case "figure":
        checkFigure(value);
        return;
      case "colour":
      case "colours":
        for (const slug of listed(value))
          checkKnown(
            slug,
            sheets.map((sheet) => sheet.slug),
            "No colour has the slug",
            "colour",
          );
        if (kind === "colour" && listed(value).length > 1)
          fault(
            `${name === "" ? shortcode : name} takes one colour, and "${value}" names several`,
            value,
            "one colour",
          );
        return;
      case "figures":
        for (const path of listed(value)) checkPath(path);
        return;
      case "white": {
        const whites = [...room.context.range.letDownIn.keys()];
        checkKnown(value, whites, "No colour was let down in", kind);
        return;
      }
      case "level":
        if (!LIGHTNESS_KEYS.some((level) => level === value))
          fault(
            `The lightness is ${value}, and tints are shown at L* 70, 50 or 30`,
            value,
            EXPECTED.level,
          );
        return;
      case "answer":
        checkKnown(value, [...room.context.records.answers.keys()], "No answer has the slug", kind);
        return;
      case "text":
        return;
    }
  }

  function checkFigure(path: string): void {
    const found = room.index.figure(path);
    if ("lost" in found)
      fault(`No sheet has a figure ${path}`, path, EXPECTED.figure, lostHint(found));
    else if (found.leaf.row.isPrivate) privateFault(path);
    else if (!isKnown(found.leaf.figure))
      fault(
        `${path} is not stated, and can't be shown`,
        path,
        "a figure that is stated",
        found.leaf.figure.reason,
      );
  }

  /** Known of one of the colours at least: else it is a slip, and no gap in a record. */
  function checkPath(path: string): void {
    if (isPrivatePath(path)) {
      privateFault(path);
      return;
    }
    const colours = listed(call.args.get("colours") ?? "");
    const found = colours.map((slug) => room.index.figure(`${slug}.${path}`));
    if (!found.every((figure) => "lost" in figure)) return;
    const nearest = found.find((figure) => figure.nearest !== undefined)?.nearest;
    fault(
      `No colour named here has a figure ${path}`,
      path,
      "a figure path without the colour, as in the evidence of sheet.json",
      nearest && `nearest: ${nearest.slice(nearest.indexOf(".") + 1)}`,
    );
  }
}

/** What an answer may show. */
export const PUBLIC_FIGURE = "a figure that sheet.json has";

const EXPECTED: Readonly<Record<ArgRule["kind"], string>> = {
  figure: "a colour and a figure path, as in the evidence of sheet.json",
  figures: "figure paths without the colour, by commas",
  colour: "the slug of a colour",
  colours: "slugs of colours, by commas",
  white: "a white that colours were let down in",
  level: "70, 50 or 30",
  answer: "the slug of an answer",
  text: "text",
};

function argsOf(call: ShortcodeCall, { index, context }: ShortcodeRoom): Args {
  const text = (name: string): string | undefined => call.args.get(name);
  return {
    text,
    figure: (name) => {
      const found = index.figure(text(name) ?? "");
      if ("lost" in found)
        throw new RangeError(
          `The argument is ${name}; right would be one that was checked as a figure`,
        );
      return found;
    },
    figures: (name) => listed(text(name) ?? ""),
    colours: (name) =>
      listed(text(name) ?? "").flatMap((slug) =>
        context.sheets.filter(({ sheet }) => sheet.slug === slug),
      ),
    level: (name) => LIGHTNESS_KEYS.find((level) => level === text(name)) ?? "50",
  };
}
