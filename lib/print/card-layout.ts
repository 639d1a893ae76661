import type { Language } from "../quantities/languages.ts";
import { WORDS } from "../words/languages.ts";
import { cardBack } from "./card-back.ts";
import type { CardContent } from "./card-content.ts";
import { cardFront } from "./card-front.ts";
import { cardGeometry, type CardPlan } from "./card-plan.ts";
import type { CardSize } from "./card-size.ts";
import type { Tagged } from "./mark.ts";
import { qrMatrix } from "./qr-figure.ts";

/** One piece of card, front and back; a back that goes on over takes further leaves. */
export interface CardLeaf {
  readonly front: readonly Tagged[];
  readonly back: readonly Tagged[];
}

export interface LaidCard {
  readonly slug: string;
  readonly name: string;
  readonly leaves: readonly CardLeaf[];
}

/** All that a card's layout is made from: plain data. */
export interface CardToLayOut {
  readonly content: CardContent;
  readonly revision: string;
  readonly size: CardSize;
  readonly language: Language;
}

/** @throws CardTooLarge for one that its size cannot hold. */
export function laidOutCard({ content, revision, size, language }: CardToLayOut): LaidCard {
  return cardLayout({
    content,
    revision,
    size,
    words: WORDS[language],
    ...(content.address !== undefined && { qr: qrMatrix(content.address) }),
  });
}

/** A card in its size: what a front has no room for is on its back, by rule. */
export function cardLayout(plan: CardPlan): LaidCard {
  const geometry = cardGeometry(plan.size);
  const { elements, left } = cardFront(plan, geometry);
  const [back = [], ...further] = cardBack(plan, geometry, left);
  return {
    slug: plan.content.slug,
    name: plan.content.name,
    leaves: [
      { front: elements, back },
      ...further.flatMap((side, i): CardLeaf[] =>
        i % 2 === 0 ? [{ front: side, back: further[i + 1] ?? [] }] : [],
      ),
    ],
  };
}
