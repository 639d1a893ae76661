import { contentHash } from "../kept/content-hash.ts";
import { readKept, writeKept } from "../kept/kept-file.ts";
import type { KeptFolder } from "../kept/work-cache.ts";

const FILE = "drawn-papers.json";
const KEYS = "paper-keys.json";
/** Of so many papers it is known what they came out as; those of the newest build are always among them. */
const MOST = 20_000;

/** What a PDF came out as. */
export interface DrawnPaper {
  readonly fileHash: string;
  /** As a manifest has it. */
  readonly hash: string;
  /** [bytes] */
  readonly size: number;
}

/** A PDF by the key of all that it was drawn from. */
interface KeyedPaper extends DrawnPaper {
  readonly key: string;
}

/** What the papers of earlier builds came out as: a PDF of an output that is none of these is drawn anew. */
export interface KeptPapers {
  /** What was drawn from what a key stands for. */
  readonly drawn: (key: string) => DrawnPaper | undefined;
  /** The hash of these bytes, where they are that. */
  readonly drawnHash: (paper: {
    readonly key: string;
    readonly bytes: Uint8Array;
  }) => string | undefined;
  /** The key of what has one of its own that is found sooner, as it was when that was kept. */
  readonly keyOf: (sooner: string, made: () => string) => string;
  readonly keep: (papers: readonly KeyedPaper[]) => void;
}

/** @param cache undefined knows of no paper and keeps none. */
export function keptPapers(cache: KeptFolder | undefined): KeptPapers {
  const before = cache === undefined ? new Map<string, unknown>() : readByKeys(cache.folder, FILE);
  const sooner = cache === undefined ? new Map<string, unknown>() : readByKeys(cache.folder, KEYS);
  const keys = new Map<string, string>();
  const drawn = (key: string): DrawnPaper | undefined => before.get(key) as DrawnPaper | undefined;
  return {
    drawn,
    keyOf: (own, made) => {
      const known = sooner.get(own);
      const key = typeof known === "string" ? known : made();
      keys.set(own, key);
      return key;
    },
    drawnHash: ({ key, bytes }) => {
      const known = drawn(key)?.fileHash;
      return known !== undefined && known === hashOf(bytes) ? known : undefined;
    },
    keep: (papers) => {
      if (cache?.keeps !== true) return;
      const own = new Map(
        papers.map(({ key, fileHash, hash, size }): [string, DrawnPaper] => [
          key,
          { fileHash, hash, size },
        ]),
      );
      // Read again, since the papers of another language may have been kept meanwhile.
      writeKept(cache.folder, FILE, newest(own, readByKeys(cache.folder, FILE)));
      writeKept(cache.folder, KEYS, newest(keys, readByKeys(cache.folder, KEYS)));
    },
  };
}

function newest(
  own: ReadonlyMap<string, unknown>,
  before: ReadonlyMap<string, unknown>,
): Record<string, unknown> {
  const others = [...before].filter(([key]) => !own.has(key));
  return Object.fromEntries([...own, ...others].slice(0, Math.max(MOST, own.size)));
}

function readByKeys(folder: string, file: string): Map<string, unknown> {
  const kept = readKept(folder, file);
  return new Map(Object.entries(typeof kept === "object" && kept !== null ? kept : {}));
}

function hashOf(bytes: Uint8Array): string {
  return contentHash([bytes]).toString("base64url");
}
