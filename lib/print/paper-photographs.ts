/** What paper shows of a photograph. */
export interface PhotographOnPaper {
  readonly pictures?: PictureOnPaper;
  readonly inReadColour?: PictureOnPaper;
}

interface PictureOnPaper {
  readonly hash: string;
  readonly paper: { readonly bytes: () => Uint8Array };
}

/** The photographs of some records as paper takes them, by hash. */
export function paperPhotographs({
  photographs,
}: {
  readonly photographs: readonly PhotographOnPaper[];
}): ReadonlyMap<string, Uint8Array> {
  return new Map(
    photographs.flatMap(({ pictures, inReadColour }) =>
      [pictures, inReadColour].flatMap((one) =>
        one === undefined ? [] : [[one.hash, one.paper.bytes()] as const],
      ),
    ),
  );
}
