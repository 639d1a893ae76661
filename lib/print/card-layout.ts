import { cardBack } from "./card-back.ts";
import { cardFront } from "./card-front.ts";
import { cardGeometry, type CardPlan } from "./card-plan.ts";
import type { Tagged } from "./mark.ts";

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
