import { nearestHint } from "../diagnostics/nearest-word.ts";
import { LIGHTNESS_KEYS } from "../sheet/tints/tint-figures.ts";
import { ARG_KINDS } from "./arg-kinds.ts";
import type { Args, Shortcode, ShortcodeFault, ShortcodeRoom } from "./shortcode.ts";
import { listed, type ShortcodeCall } from "./shortcode-syntax.ts";

/** Hold the arguments of a shortcode against what it takes; every fault is told, and then there are none. */
export function checkedArgs(
  shortcode: Shortcode,
  call: ShortcodeCall,
  room: ShortcodeRoom,
): Args | undefined {
  const faults = [...unknownArgs(shortcode, call), ...argFaults(shortcode, call, room)];
  for (const fault of faults) room.fault(fault);
  return faults.length === 0 ? argsOf(call, room) : undefined;
}

function* unknownArgs({ name, args }: Shortcode, call: ShortcodeCall): Generator<ShortcodeFault> {
  const known = args.map((rule) => rule.name);
  for (const [key, value] of call.args)
    if (!known.includes(key))
      yield {
        message:
          key === ""
            ? `${name} takes no value without a name, and "${value}" is one`
            : `${name} takes no value called ${key}`,
        actual: key === "" ? value : key,
        expected: known.map((one) => (one === "" ? "one without a name" : one)).join(", "),
        hint: nearestHint(key, known),
      };
}

function* argFaults(
  { name: shortcode, args }: Shortcode,
  call: ShortcodeCall,
  room: ShortcodeRoom,
): Generator<ShortcodeFault> {
  for (const { name, kind, optional } of args) {
    const value = call.args.get(name) ?? "";
    const { expected, faults } = ARG_KINDS[kind];
    if (value !== "") yield* faults(value, { called: name === "" ? shortcode : name, call, room });
    else if (optional !== true)
      yield {
        message: `${shortcode} needs ${name === "" ? "" : `${name}: `}${expected}`,
        actual: "nothing",
        expected,
      };
  }
}

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
