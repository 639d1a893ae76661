import type { ExpectedStatement } from "../../optics/tints/expected-ladder.ts";
import { de, en, es, fr } from "../phrases-in-each.ts";
import { named } from "./expected-phrases.ts";
import type { RulingsInEach } from "./rulings-in-each.ts";

/** What is expected of a colour in a white that it was not let down in. */
export const EXPECTED_RULINGS: RulingsInEach<ExpectedStatement> = {
  "expected-in-white": ({ white, from, through, deltaE00 }) => ({
    en: `We have not painted it out in ${en.within(white)}. This is what to expect of a coat that hides, from its let-downs in ${en.within(from)} and from what ${named(through).en} in both; it may be off by \u0394E00\u00a0${en.decimals(deltaE00, 0)}.`,
    de: `In ${de.within(white)} haben wir die Farbe nicht aufgestrichen. So sieht ein deckender Auftrag voraussichtlich aus, nach den Aufhellungen in ${de.within(from)} und nach dem Verhalten von ${named(through).de} in beiden; die Abweichung kann \u0394E00\u00a0${de.decimals(deltaE00, 0)} betragen.`,
    fr: `Nous ne l’avons pas peint dans ${fr.within(white)}. Voici l’aspect à prévoir d’une couche qui couvre, d’après ses dégradés dans ${fr.within(from)} et ce que ${named(through).fr} dans les deux\u202f; l’écart peut aller à \u0394E00\u00a0${fr.decimals(deltaE00, 0)}.`,
    es: `No lo hemos pintado en ${es.within(white)}. Este es el aspecto previsible de una capa que cubre, según sus rebajes en ${es.within(from)} y lo que ${named(through).es} en ambos; el error puede ser de \u0394E00\u00a0${es.decimals(deltaE00, 0)}.`,
  }),
};
