import type { Interval } from "../../quantities/interval.ts";
import type { InEach } from "../in-each.ts";
import { de, en, es, fr, inEach } from "../phrases-in-each.ts";

export function losing(v: { readonly component: string; readonly loss: number }): InEach {
  return {
    en: `When ${en.within(v.component)} has lost ${en.percent(v.loss)} of its strength,`,
    de: `Hat ${de.within(v.component)} ${de.percent(v.loss)} an Stärke verloren,`,
    fr: `Quand ${fr.within(v.component)} a perdu ${fr.percent(v.loss)} de sa force,`,
    es: `Cuando ${es.within(v.component)} ha perdido el ${es.percent(v.loss)} de su fuerza,`,
  };
}

export function change(v: { readonly deltaE00: number }): InEach {
  return inEach((p) => `\u0394E00\u00a0${p.decimals(v.deltaE00, 1)}`);
}

export function lightness(v: { readonly L: number }): InEach {
  return inEach((p) => p.decimals(v.L, 0));
}

/** A change without its sign, which the words around it give. */
export function amount({ change: ends }: { readonly change: Interval }): InEach {
  const [least = 0, most = 0] = ends.map(Math.abs).toSorted((one, other) => one - other);
  return inEach((p) => p.decimals([least, most], 1));
}

/** Ends that may be negative: "-4 to 3", since a dash between them would be read as another minus. */
export function span([low, high]: Interval, places: number): InEach {
  return inEach(
    (p, language) => `${p.decimals(low, places)} ${TO[language]} ${p.decimals(high, places)}`,
  );
}

const TO: InEach = { en: "to", de: "bis", fr: "à", es: "a" };
