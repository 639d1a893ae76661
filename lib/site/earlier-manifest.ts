import { readFileSync } from "node:fs";
import type { EarlierCard } from "../print/reprint-list.ts";
import { MANIFEST_KIND, OutputFault } from "./output-folder.ts";

/**
 * What an earlier manifest says of its cards.
 * @throws OutputFault for a file that is not there, is no manifest of ours, or is of before there were cards.
 */
export function earlierCards(file: string): EarlierCard[] {
  let read: unknown;
  try {
    read = JSON.parse(readFileSync(file, "utf8"));
  } catch (error) {
    throw new OutputFault(
      `--since names ${file}, which is no manifest.json of an earlier build: ${(error as NodeJS.ErrnoException).code === "ENOENT" ? "there is no such file" : "it can't be read as JSON"}`,
    );
  }
  const { kind, cards } = (typeof read === "object" && read !== null ? read : {}) as {
    kind?: unknown;
    cards?: unknown;
  };
  if (kind !== MANIFEST_KIND)
    throw new OutputFault(`--since names ${file}, which is no manifest.json of an earlier build`);
  if (!Array.isArray(cards) || !cards.every(isCard))
    throw new OutputFault(
      `--since names ${file}, a manifest that does not say what its cards state: build anew with the records of then`,
    );
  return cards;
}

function isCard(value: unknown): value is EarlierCard {
  const { slug, name, states } = (
    typeof value === "object" && value !== null ? value : {}
  ) as Record<string, unknown>;
  return (
    typeof slug === "string" &&
    typeof name === "string" &&
    typeof states === "object" &&
    states !== null &&
    Object.values(states).every((text) => typeof text === "string")
  );
}
