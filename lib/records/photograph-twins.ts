import { readFileSync, statSync } from "node:fs";
import { warningAt, type Faults } from "./fault.ts";
import type { ParsedFiles } from "./parsed-files.ts";
import type { Photograph } from "./photographs.ts";

/**
 * One picture that two colours show as theirs, by its name or by its bytes. A picture of both of
 * them says of either where its paint lies, and nothing is told.
 */
export function* sharedPhotographFaults(
  photographs: readonly Photograph[],
  { lots }: Pick<ParsedFiles, "lots">,
): Faults {
  const shown = photographs.flatMap((one) => {
    const colour = colourOf(one, lots);
    const bytes = colour === undefined ? undefined : sizeOf(one.source.path);
    return colour === undefined || bytes === undefined ? [] : [{ ...one, colour, bytes }];
  });
  for (const [i, one] of shown.entries()) {
    const twin = shown
      .slice(0, i)
      .find(
        (other) =>
          other.colour !== one.colour &&
          other.bytes === one.bytes &&
          !liesElsewhere(one, other) &&
          isSamePicture(one, other),
      );
    if (twin === undefined) continue;
    yield warningAt(one.place(["file"]), "records/photograph-shared", {
      message: `The photograph ${one.source.name} is ${twin.source.name === one.source.name ? "shown" : `byte for byte ${twin.source.name}, which is shown`} as one of ${twin.colour} already, and here as one of ${one.colour}`,
      actual: one.source.name,
      expected: "a photograph of this colour",
      hint: "a file copied under another name? Of a picture that shows both, paint says where each lies",
    });
  }
}

/** The colour that a photograph is shown with; none of a dry pigment's. */
function colourOf(
  { owner: { folder, slug } }: Photograph,
  lots: ParsedFiles["lots"],
): string | undefined {
  if (folder === "colours") return slug;
  return folder === "lots" ? lots.get(slug)?.record.colour : undefined;
}

function liesElsewhere(one: Photograph, other: Photograph): boolean {
  const [own, others] = [one.record.paint, other.record.paint];
  return own !== undefined && others !== undefined && own.join() !== others.join();
}

function isSamePicture({ source: one }: Photograph, { source: other }: Photograph): boolean {
  return one.path === other.path || readFileSync(one.path).equals(readFileSync(other.path));
}

/** Undefined of a file that is gone by now: whoever shows it complains of that. */
function sizeOf(path: string): number | undefined {
  return statSync(path, { throwIfNoEntry: false })?.size;
}
