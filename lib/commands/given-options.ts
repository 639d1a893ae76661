/** What is wrong with the words of a command line before any command looks at them. */
import { parseArgs } from "node:util";
import { nearestWord } from "../diagnostics/nearest-word.ts";
import { WORDS_OF, type CommandName } from "./command-table.ts";
import { OPTIONS, type GivenOptions } from "./option-table.ts";
import { keysOf } from "../quantities/members.ts";

/** What Node parses a command line by. */
export const PARSED = { ...OPTIONS, help: { type: "boolean", short: "h" } } as const;

/** Those that npm has under the same name: a user's own configuration may set them for good. */
const OF_NPM = new Set(["json", "only"]);

/**
 * The first fault of options as given: one that there is not, a value that is missing, or one too many.
 * @returns undefined when nothing is wrong.
 */
export function optionFault(args: readonly string[]): string | undefined {
  const { tokens } = parseArgs({
    args: [...args],
    options: PARSED,
    allowPositionals: true,
    strict: false,
    tokens: true,
  });
  for (const token of tokens) {
    if (token.kind !== "option") continue;
    const { name, rawName, value, inlineValue } = token;
    const { type } = Object.entries(PARSED).find(([known]) => known === name)?.[1] ?? {};
    if (type === undefined) {
      const near = nearestWord(name, Object.keys(PARSED));
      return `There is no option ${rawName}${near === undefined ? "" : `; nearest: --${near}`}`;
    }
    if (type === "boolean" && value !== undefined)
      return `${rawName} takes no value, and ${value} was given`;
    if (type === "string" && (value === undefined || (!inlineValue && value.startsWith("-"))))
      return `${rawName} takes a value, and none was given`;
  }
  return undefined;
}

/**
 * The values of options, each as its row of the table reads it.
 * @param written as parsed, by the names of options; flags are true.
 * @returns the fault of the first that can't be what is written.
 */
export function readOptions(
  written: Readonly<Record<string, string | boolean | undefined>>,
): GivenOptions | { readonly fault: string } {
  const read = new Map<string, unknown>();
  for (const name of keysOf(OPTIONS)) {
    const value = written[name];
    if (value === undefined) continue;
    const { read: readOf, expected } = OPTIONS[name];
    const found = readOf(String(value));
    if (found === undefined) return { fault: `--${name} can't be ${value}: it takes ${expected}` };
    read.set(name, found);
  }
  return Object.fromEntries(read) as unknown as GivenOptions;
}

/** What is wrong with the first option given that belongs to another command; undefined when all fit. */
export function misplacedOption(
  command: CommandName,
  given: readonly string[],
): string | undefined {
  const options = new Map(Object.entries(OPTIONS));
  const misplaced = given.find((name) => options.get(name)?.of.includes(command) === false);
  return misplaced === undefined
    ? undefined
    : `${command} has no --${misplaced}: it belongs to ${options.get(misplaced)?.of.join(", ") ?? ""}`;
}

/**
 * What npm kept of a script's options, since no `--` stood before them: the command would do
 * something else than was meant, and say nothing of it.
 *
 * @param words those that stand behind the command.
 * @param given names of the options that arrived.
 * @param env the process's own, in which npm passes its options on.
 * @returns undefined when nothing was kept.
 */
export function keptByNpm(
  command: CommandName,
  words: readonly string[],
  given: readonly string[],
  env: Readonly<Record<string, string | undefined>>,
): string | undefined {
  const kept =
    env["npm_lifecycle_event"] === command
      ? Object.keys(PARSED).filter(
          (name) =>
            !OF_NPM.has(name) &&
            !given.includes(name) &&
            env[`npm_config_${name.replaceAll("-", "_")}`] !== undefined,
        )
      : [];
  const [word] = words.slice(WORDS_OF[command] ?? 0);
  const [option = "content"] = kept;
  if (kept.length === 0 && word === undefined) return undefined;
  const meant = `npm run ${command} -- --${option}${word === undefined ? "" : ` ${word}`}`;
  return word === undefined
    ? `npm kept --${option} for itself; options of a script stand behind --: ${meant}`
    : `${command} takes no ${word}; options of a script stand behind --: ${meant}`;
}
