import type { Records } from "../records/records.ts";

/** The photographs of some records as paper takes them, by hash. */
export function paperPhotographs({
  photographs,
}: Pick<Records, "photographs">): ReadonlyMap<string, Uint8Array> {
  return new Map(
    photographs.flatMap(({ pictures, inReadColour }) =>
      [pictures, inReadColour].flatMap((one) =>
        one === undefined ? [] : [[one.hash, one.paper.bytes] as const],
      ),
    ),
  );
}
