import { contentHash } from "../kept/content-hash.ts";
import { keepValue, keptIfAny, type Origin } from "../kept/kept-result.ts";
import { sameAsBefore } from "../kept/same-as-before.ts";
import type { WorkCache } from "../kept/work-cache.ts";
import { certain } from "../quantities/at.ts";
import { parsedRecord, type Parsed, type ParsedRecord } from "./parsed-record.ts";
import { priceList } from "./price-list.ts";
import type { FileParsers } from "./parsed-files.ts";
import { parseReadingFile } from "./readings/reading-file.ts";
import { yamlWhenAsked, type YamlRecord } from "./yaml-record.ts";

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
}

const ORIGIN: Origin = { modules: ["lib/records/parsed-files.ts"], inputs: "parsed files" };

export function keptParsers(): KeptParsers {
  let last = new Map<string, LastParsed>();
  let asked = new Map<string, LastParsed>();
  let isNew = false;
  const once = <R>(file: string, as: string, text: string, parsed: () => R): R => {
    const hash = contentHash([as, text]).toString("base64url");
    const known = last.get(file);
    const own = known?.hash === hash ? known : { hash, made: parsed() };
    isNew ||= own !== known;
    last.set(file, own);
    asked.set(file, own);
    return own.made as R;
  };
  return {
    record: (schema, source) =>
      withYaml(
        once(source.file, source.folder, source.text, () => parsedRecord(schema, source)),
        () => parsedRecord(schema, source).record?.yaml,
      ),
    again: sameAsBefore(),
    reading: (file, text) => once(file, "a reading", text, () => parseReadingFile(file, text)),
    prices: (file, text, currency) =>
      once(file, `prices in ${currency ?? "no currency"}`, text, () =>
        priceList(file, text, currency),
      ),
    begin: (cache) => {
      if (last.size > 0) return;
      last = (keptIfAny(cache, ORIGIN) as typeof last | undefined) ?? last;
    },
    keep: (cache) => {
      if (isNew || asked.size < last.size)
        keepValue(
          cache,
          ORIGIN,
          new Map([...asked].map(([file, { hash, made }]) => [file, { hash, made: plain(made) }])),
        );
      last = asked;
      asked = new Map();
      isNew = false;
    },
  };
}

/** What can be written down of what a file was parsed to: all but its YAML, which is parsed again where anybody asks for a place in it. */
function plain(made: unknown): unknown {
  if (typeof made !== "object" || made === null || !("record" in made)) return made;
  const { yaml: _, ...record } = made.record as Parsed<unknown>;
  return { ...made, record };
}

function withYaml<R>(made: ParsedRecord<R>, again: () => YamlRecord | undefined): ParsedRecord<R> {
  const { record } = made;
  if (record === undefined || "yaml" in record) return made;
  const { file } = record as Parsed<R>;
  const own: Parsed<R> = Object.assign(record, {
    yaml: yamlWhenAsked(file, () => certain(again())),
  });
  return { ...made, record: own };
}
