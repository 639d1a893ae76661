import { followed, type Followed, type Grain } from "../kept/followed.ts";
import type { Records } from "./records.ts";

/** A record key by key. Where it stands in its file goes into complaints alone, which no kept work makes. */
const RECORD: Grain = { keys: { slug: "always", place: "always", record: { keys: {} } } };

const RECORDS: Grain = {
  keys: {
    hazardKnowledge: "always",
    knowledge: "always",
    workshopPlace: "always",
    workshop: { keys: {} },
    pigments: { each: RECORD },
    vehicles: { each: RECORD },
    colours: { each: RECORD },
    answers: { each: RECORD },
    lots: { each: RECORD },
    trials: { each: RECORD },
    sources: { each: "whole" },
  },
};

/** Names of parts whose members are records. */
export const LISTS_OF_RECORDS = [
  "pigments",
  "vehicles",
  "colours",
  "answers",
  "lots",
  "trials",
  "sources",
].map((name) => `records/${name}`);

/** Records that note what is read of them, but for what the program's own tables know. */
export function followedRecords(records: Records): Followed<Records> {
  return followed(records, RECORDS, "records");
}
