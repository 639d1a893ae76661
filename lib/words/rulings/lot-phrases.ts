import type { Charted } from "../../lots/chart-signals.ts";
import type { InEach } from "../in-each.ts";

/** What a chart follows, as it stands inside a sentence. */
export const CHARTED: Readonly<Record<Charted, InEach>> = {
  strength: { en: "strength", de: "Farbstärke", fr: "force", es: "fuerza" },
  letDown: {
    en: "the let-down\u2019s difference from the standard",
    de: "Abstand der Aufhellung vom Standard",
    fr: "écart du dégradé à l’étalon",
    es: "diferencia del rebaje con el patrón",
  },
  masstone: {
    en: "the masstone\u2019s difference from the standard",
    de: "Abstand des Volltons vom Standard",
    fr: "écart du ton plein à l’étalon",
    es: "diferencia del tono pleno con el patrón",
  },
};

export const NOT_READ = {
  masstone: {
    en: "No spectrum of its masstone is recorded: the verdict says nothing of the masstone.",
    de: "Vom Vollton ist kein Spektrum aufgezeichnet: Das Urteil sagt nichts über den Vollton.",
    fr: "Aucun spectre du ton plein du lot n’est consigné\u202f: le verdict ne dit rien du ton plein.",
    es: "No hay registrado ningún espectro de su tono pleno: el veredicto no dice nada del tono pleno.",
  },
  "let-down": {
    en: "No spectrum of a let-down of it is recorded: the verdict says nothing of its strength.",
    de: "Von einer Aufhellung ist kein Spektrum aufgezeichnet: Das Urteil sagt nichts über die Farbstärke.",
    fr: "Aucun spectre d’un dégradé du lot n’est consigné\u202f: le verdict ne dit rien de sa force.",
    es: "No hay registrado ningún espectro de un rebaje suyo: el veredicto no dice nada de su fuerza.",
  },
  both: {
    en: "No spectrum of its masstone or of a let-down is recorded.",
    de: "Weder vom Vollton noch von einer Aufhellung ist ein Spektrum aufgezeichnet.",
    fr: "Aucun spectre du ton plein du lot ni d’un de ses dégradés n’est consigné.",
    es: "No hay registrado ningún espectro de su tono pleno ni de un rebaje.",
  },
} as const satisfies Readonly<Record<string, InEach>>;

/** Why K and S, and with them strength, do not follow from a reading. */
export const WITHOUT_STRENGTH = {
  "pigment-fluoresces": {
    en: "fluoresces",
    de: "fluoresziert",
    fr: "est fluorescent",
    es: "es fluorescente",
  },
  "pigment-is-flakes": {
    en: "is made of flakes",
    de: "besteht aus Plättchen",
    fr: "est en paillettes",
    es: "está formado por laminillas",
  },
} as const satisfies Readonly<Record<string, InEach>>;
