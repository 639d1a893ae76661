import sharp from "sharp";
import { afterAll, expect, test } from "vitest";
import { asOnEveryMachine } from "../../lib/photographs/loaded-sharp.ts";

afterAll(() => sharp.concurrency(1));

/** An AVIF of something that takes more than one piece to pack. */
async function avif(): Promise<Buffer> {
  const [width, height] = [200, 130];
  const pixels = Buffer.from(
    Array.from({ length: 3 * width * height }, (_, i) => (i * i + (i >> 7)) % 251),
  );
  return sharp(pixels, { raw: { width, height, channels: 3 } })
    .avif({ quality: 60, effort: 1 })
    .toBuffer();
}

test("a picture comes out the same however many threads the machine would give it", async () => {
  sharp.concurrency(2);
  const ofTwo = await avif();
  asOnEveryMachine(sharp);
  const ofOne = await avif();
  // Else the test would hold nothing.
  expect(ofTwo.equals(ofOne)).toBe(false);
  sharp.concurrency(1);
  expect((await avif()).equals(ofOne)).toBe(true);
});
