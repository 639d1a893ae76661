/** A card that can't be laid out in a size: said, and the others are printed. */
export class CardTooLarge extends RangeError {
  constructor(size: string, slug: string, least: string) {
    super(
      `Unexpected size of card \`${size}\` for \`${slug}\`, expected \`one that holds ${least}\``,
    );
  }
}
