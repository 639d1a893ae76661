import { contentHash } from "../kept/content-hash.ts";
import { bodiesIn, withBodies } from "../kept/kept-bodies.ts";
import type { PaperPicture, PictureSizes, ScreenPicture } from "../records/taken-photograph.ts";
import type { MadePicture, UnnamedSizes } from "./picture-sizes.ts";

/** A photograph's files, before anybody has given them an address. */
export interface KeptSizes extends Omit<PictureSizes, "screen"> {
  readonly screen: readonly Omit<ScreenPicture, "path">[];
}

/** What is told of each file; of a photograph in a published site nothing else is asked for. */
type ToldPicture<P extends Pick<PaperPicture, "bytes">> = Omit<P, "bytes">;

interface ToldSizes {
  readonly screen: readonly ToldPicture<KeptSizes["screen"][number]>[];
  readonly paper: ToldPicture<PaperPicture>;
  readonly hash: string;
}

/** A photograph's files as they are written down, what is told of them before their bytes. */
export function packedSizes({ screen, paper }: UnnamedSizes): Uint8Array {
  const told: ToldSizes = {
    screen: screen.map(toldOf),
    paper: toldOf(paper),
    hash: contentHash([paper.bytes]).toString("hex"),
  };
  return withBodies(
    told,
    [...screen, paper].map(({ bytes }) => bytes),
  );
}

function toldOf<P extends MadePicture>({
  bytes,
  ...told
}: P): Omit<P, "bytes"> & { fileHash: string } {
  return { ...told, fileHash: contentHash([bytes]).toString("base64url") };
}

export function unpackedSizes(packed: Uint8Array): KeptSizes {
  const { head, body } = bodiesIn<ToldSizes>(packed);
  // By themselves: sent to a thread, bytes take along all that they lie in, which is every size of this photograph.
  const bytesAt = (i: number) => (): Uint8Array => new Uint8Array(body(i));
  return {
    screen: head.screen.map((picture, i) => ({ ...picture, bytes: bytesAt(i) })),
    paper: { ...head.paper, bytes: bytesAt(head.screen.length) },
    hash: head.hash,
  };
}
