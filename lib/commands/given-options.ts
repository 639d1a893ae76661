/** What is wrong with the words of a command line before any command looks at them. */
import { parseArgs } from "node:util";
import { nearestWord } from "../diagnostics/nearest-word.ts";

export const OPTIONS = {
  content: { type: "string", default: "content" },
  output: { type: "string" },
  workshop: { type: "string", default: "_workshop" },
  only: { type: "string" },
  family: { type: "string" },
  size: { type: "string" },
  paper: { type: "string" },
  since: { type: "string" },
  incomplete: { type: "boolean", default: false },
  proof: { type: "string" },
  base: { type: "string" },
  date: { type: "string" },
  port: { type: "string", default: "0" },
  strict: { type: "boolean", default: false },
  claims: { type: "string", default: "error" },
  scale: { type: "string" },
  lot: { type: "string" },
  copies: { type: "string", default: "1" },
  uses: { type: "string" },
  json: { type: "boolean", default: false },
  to: { type: "string" },
  endpoint: { type: "string" },
  "dry-run": { type: "boolean", default: false },
  write: { type: "boolean", default: false },
  confirm: { type: "string" },
  help: { type: "boolean", short: "h", default: false },
} as const;

const TYPES: Readonly<Record<string, { readonly type: "string" | "boolean" }>> = OPTIONS;

/** Commands that take words beside their options, and how many at most. */
const WORDS_OF: Readonly<Record<string, number>> = { read: 1, unpack: 1, new: Infinity };

/** Those that npm has under the same name: a user's own configuration may set them for good. */
const OF_NPM = new Set(["json", "only"]);

/**
 * The first fault of options as given: one that there is not, a value that is missing, or one too many.
 * @returns undefined when nothing is wrong.
 */
export function optionFault(args: readonly string[]): string | undefined {
  const { tokens } = parseArgs({
    args: [...args],
    options: OPTIONS,
    allowPositionals: true,
    strict: false,
    tokens: true,
  });
  for (const token of tokens) {
    if (token.kind !== "option") continue;
    const { name, rawName, value, inlineValue } = token;
    const type = Object.hasOwn(TYPES, name) ? TYPES[name]?.type : undefined;
    if (type === undefined) {
      const near = nearestWord(name, Object.keys(OPTIONS));
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
 * What npm kept of a script's options, since no `--` stood before them: the command would do
 * something else than was meant, and say nothing of it.
 *
 * @param words those that stand behind the command.
 * @param given names of the options that arrived.
 * @param env the process's own, in which npm passes its options on.
 * @returns undefined when nothing was kept.
 */
export function keptByNpm(
  command: string,
  words: readonly string[],
  given: readonly string[],
  env: Readonly<Record<string, string | undefined>>,
): string | undefined {
  const kept =
    env["npm_lifecycle_event"] === command
      ? Object.keys(OPTIONS).filter(
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
