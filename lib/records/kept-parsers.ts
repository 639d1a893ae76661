import type { z } from "zod";
import { contentHash } from "../kept/content-hash.ts";
import { keepValue, keptIfAny, type Origin } from "../kept/kept-result.ts";
import { keptSteps, type KeptSteps } from "../kept/kept-steps.ts";
import { textHash } from "../kept/part-hashes.ts";
import { partTimes } from "../kept/part-times.ts";
import { sameAsBefore } from "../kept/same-as-before.ts";
import type { WorkCache } from "../kept/work-cache.ts";
import { certain } from "../quantities/at.ts";
import { parsedRecord, type Parsed, type ParsedRecord } from "./parsed-record.ts";
import { priceList } from "./price-list.ts";
import { LISTS_OF_FILES } from "./followed-files.ts";
import { frontMatter } from "./front-matter.ts";
import type { FileParsers } from "./parsed-files.ts";
import { parseReadingFile } from "./readings/reading-file.ts";
import { yamlAsAnswered, yamlWhenAsked, type YamlRecord } from "./yaml-record.ts";

/** Parsers that remember each file as it was last: of a workshop that is read again and again only what was edited is parsed. */
export interface KeptParsers extends FileParsers {
  /** Keep for the next run what every file was parsed to. */
  readonly keep: (cache: WorkCache) => void;
  /** Begin with what the last run kept. */
  readonly begin: (cache: WorkCache) => void;
}

/** What a file was last parsed to, by the hash of its text and of what it is parsed as. */
interface LastParsed {
  readonly hash: string;
  readonly made: unknown;
  /** What followed from it when it was last asked for, by name. */
  readonly follows: Map<string, unknown>;
  /** What its YAML was asked since it was parsed: who asks is kept as well, and does not ask each time. */
  readonly answers: Map<string, unknown>;
}

/** What reads the files, and all that it finds wrong with them. */
const ORIGIN: Origin = { modules: ["lib/records/load-records.ts"], inputs: "parsed files" };
/** Files that were edited since all of them were written down: these alone are written again. */
const EDITED: Origin = { ...ORIGIN, inputs: "parsed files, edited since" };
/** Of more than so many edited files all are written down anew. Our own choice. */
const MOST_EDITED = 24;

export function keptParsers(): KeptParsers {
  let last = new Map<string, LastParsed>();
  let asked = new Map<string, LastParsed>();
  /** Files of which another thing is known than was written down with all others. */
  const edited = new Set<string>();
  let isAllNew = true;
  let isNew = false;
  let begun: WorkCache | undefined;
  let steps: KeptSteps | undefined;
  /** What is written above the text of each file that was asked for, as a hash. */
  const above = new Map<string, () => string>();
  /** What tells a part: of a file the hash of its text, of its YAML that of what is written there. */
  const told = (part: unknown): unknown => {
    if (typeof part !== "object" || part === null || !("file" in part)) return part;
    const file = String(part.file);
    return "place" in part ? certain(above.get(file))() : certain(asked.get(file)).hash;
  };
  const noteNew = (file: string): void => {
    isNew = true;
    edited.add(file);
  };
  const once = <R>(file: string, as: string, text: string, parsed: () => R): R => {
    const hash = contentHash([as, text]).toString("base64url");
    const known = last.get(file);
    const own =
      known?.hash === hash
        ? known
        : { hash, made: parsed(), follows: new Map(), answers: new Map() };
    if (own !== known) noteNew(file);
    last.set(file, own);
    asked.set(file, { ...own, follows: new Map() });
    return own.made as R;
  };
  const follows = <V>(file: string, name: string, made: () => V): V => {
    const own = asked.get(file) ?? last.get(file);
    if (own === undefined) return made();
    const before = [own, last.get(file)].find((one) => one?.follows.has(name) === true);
    const value = before === undefined ? made() : (before.follows.get(name) as V);
    if (before === undefined) noteNew(file);
    own.follows.set(name, value);
    return value;
  };
  const answering = (file: string, yaml: YamlRecord): YamlRecord =>
    yamlAsAnswered(yaml, <A>(question: string, made: () => A) => {
      const answers = (asked.get(file) ?? last.get(file))?.answers;
      if (answers?.has(question) === true) return answers.get(question) as A;
      const answer = made();
      answers?.set(question, answer);
      noteNew(file);
      return answer;
    });
  return {
    record: (schema, source) => {
      const parsed = (): ParsedRecord<z.output<typeof schema>> => parsedRecord(schema, source);
      const { file, folder, text, ending } = source;
      const yaml = (): string | undefined =>
        ending === ".md" ? frontMatter(file, text).parts?.yaml : text;
      above.set(file, () => textHash([certain(yaml())]));
      const made = once(file, folder, text, () =>
        withYaml(parsed(), (yaml) => answering(file, yaml)),
      );
      return made.record === undefined || "yaml" in made.record
        ? made
        : withYaml(made, () =>
            answering(
              file,
              yamlWhenAsked(file, () => certain(parsed().record?.yaml)),
            ),
          );
    },
    again: sameAsBefore(),
    checks: (part) => {
      if (begun === undefined) return (_name, _of, made) => made();
      const now = (name: string): unknown => told(part(name));
      const isFile = (owner: string): boolean =>
        LISTS_OF_FILES.some((list) => owner.startsWith(list));
      const times = partTimes(begun, "files", {
        part: now,
        identity: (owner) => (isFile(owner) ? (now(owner) as string | undefined) : undefined),
      });
      const own = keptSteps(begun, null, times, LISTS_OF_FILES);
      steps = own;
      return (name, of, made) => own.made({ modules: ORIGIN.modules, name, of }, made);
    },
    follows,
    reading: (file, text) => once(file, "a reading", text, () => parseReadingFile(file, text)),
    prices: (file, text, currency) =>
      once(file, `prices in ${currency ?? "no currency"}`, text, () =>
        priceList(file, text, currency),
      ),
    begin: (cache) => {
      begun = cache;
      if (last.size > 0) return;
      const all = keptIfAny(cache, ORIGIN) as typeof last | undefined;
      isAllNew = all === undefined;
      const since = all && (keptIfAny(cache, EDITED) as typeof last | undefined);
      for (const file of since?.keys() ?? []) edited.add(file);
      // Each is told by the hash of its text: one that was written down sooner is parsed again.
      last = new Map([...(all ?? last), ...(since ?? [])]);
    },
    keep: (cache) => {
      steps?.keepBooks();
      if (isNew || asked.size < last.size) {
        const isMuch = isAllNew || edited.size > MOST_EDITED;
        if (isMuch) keepValue(cache, ORIGIN, written([...asked]));
        if (isMuch) edited.clear();
        keepValue(cache, EDITED, written([...asked].filter(([file]) => edited.has(file))));
        isAllNew = false;
      }
      last = asked;
      asked = new Map();
      isNew = false;
    },
  };
}

function written(files: readonly (readonly [string, LastParsed])[]): Map<string, LastParsed> {
  return new Map(files.map(([file, one]) => [file, { ...one, made: plain(one.made) }]));
}

/** What can be written down of what a file was parsed to: all but its YAML, which is parsed again where anybody asks what it was not asked before. */
function plain(made: unknown): unknown {
  if (typeof made !== "object" || made === null || !("record" in made)) return made;
  const { yaml: _, ...record } = made.record as Parsed<unknown>;
  return { ...made, record };
}

/** The same record, which whoever remembers something of it knows. */
function withYaml<R>(
  made: ParsedRecord<R>,
  yaml: (own: YamlRecord) => YamlRecord,
): ParsedRecord<R> {
  const { record } = made;
  return record === undefined
    ? made
    : { ...made, record: Object.assign(record, { yaml: yaml(record.yaml) }) };
}
