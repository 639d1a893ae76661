import { existsSync, readFileSync, statSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { fields, publishedState, type PublishedState } from "../changes/published-state.ts";
import type { EarlierCard } from "../print/reprint-list.ts";
import { OutputFault } from "./output-fault.ts";
import { MANIFEST_KIND } from "./output-manifest.ts";

/** What the workshop's own record of printed cards says of itself. */
export const PRINTED_CARDS_KIND = "mullstone-printed-cards";

/**
 * What an earlier manifest, or the workshop's record of printed cards, says of cards.
 * @throws OutputFault for a file that is not there, is no manifest of ours, or is of before there were cards.
 */
export function earlierCards(file: string): EarlierCard[] {
  const read = readManifest(file);
  const { kind, cards } = fields(read);
  if (kind !== MANIFEST_KIND && kind !== PRINTED_CARDS_KIND)
    throw new OutputFault(`--since names ${file}, which is no manifest.json of an earlier build`);
  if (!areCards(cards))
    throw new OutputFault(
      `--since names ${file}, a manifest that does not say what its cards state: build anew with the records of then`,
    );
  return cards;
}

/**
 * What an earlier manifest says that its site told customers: of another language the manifest in that language's folder
 * beside it. Without one nothing was told in that language, and its feed begins now, as that of a first publishing does.
 * @throws OutputFault for a file that is no manifest of ours
 */
export function earlierState(file: string, folder = ""): PublishedState {
  const own = join(dirname(file), folder, basename(file));
  if (folder !== "" && !existsSync(own)) return publishedState({});
  const read = readManifest(own);
  if (fields(read)["kind"] !== MANIFEST_KIND)
    throw new OutputFault(`${own} is no manifest.json of an earlier build`);
  return publishedState(read);
}

/** A manifest of a thousand colours has less than a tenth of it. */
const LARGEST_MANIFEST_BYTES = 32 * 1024 * 1024;

/** What a plain file of bounded size says: a pipe or a device is not even opened. */
function readManifest(file: string): unknown {
  const refused = (why: string): OutputFault =>
    new OutputFault(`--since names ${file}, which is no manifest.json of an earlier build: ${why}`);
  let found;
  try {
    found = statSync(file, { throwIfNoEntry: false });
  } catch {
    found = undefined;
  }
  if (found === undefined) throw refused("there is no such file");
  if (!found.isFile()) throw refused("it is no plain file");
  if (found.size > LARGEST_MANIFEST_BYTES)
    throw refused(`it has ${found.size} bytes, and at most ${LARGEST_MANIFEST_BYTES} are read`);
  try {
    return JSON.parse(readFileSync(file, "utf8"));
  } catch {
    throw refused("it can't be read as JSON");
  }
}

export function areCards(value: unknown): value is EarlierCard[] {
  return Array.isArray(value) && value.every(isCard);
}

function isCard(value: unknown): value is EarlierCard {
  const { slug, name, states } = fields(value);
  return (
    typeof slug === "string" &&
    typeof name === "string" &&
    typeof states === "object" &&
    states !== null &&
    Object.values(states).every((text) => typeof text === "string")
  );
}
