import type { Interval } from "../../quantities/interval.ts";
import { de, en, es, fr } from "../phrases-in-each.ts";
import type { InEach } from "../in-each.ts";

export function ends([low, high]: Interval): InEach {
  return {
    en: `${en.NUMBERS.decimal(low, 0)} to ${en.NUMBERS.decimal(high, 0)}`,
    de: `${de.NUMBERS.decimal(low, 0)} bis ${de.NUMBERS.decimal(high, 0)}`,
    fr: `${fr.NUMBERS.decimal(low, 0)} à ${fr.NUMBERS.decimal(high, 0)}`,
    es: `${es.NUMBERS.decimal(low, 0)} a ${es.NUMBERS.decimal(high, 0)}`,
  };
}
