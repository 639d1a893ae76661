/** A card that can't be laid out in a size: said, and the others are printed. */
export class CardTooLarge extends RangeError {
  constructor(size: string, slug: string, least: string) {
    super(`The card of ${slug} does not fit in ${size}: its front has to hold ${least}`);
  }
}
