import { de, en, es, fr } from "../phrases-in-each.ts";
import type { Quantity } from "../../quantities/interval.ts";
import type { Texts } from "../texts.ts";
import { LAMPS, MIX_FACTS } from "./mix-facts.ts";
import { PALETTE } from "./palette.ts";
import { RANGE_MAP } from "./range-map.ts";
import { RECIPES } from "./recipes.ts";
import { TINT_BENCH } from "./tint-bench.ts";
import { FIND_RECIPE, MAP_OF_RANGE } from "../shared-rows.ts";

/** The pages that mix, and what they have in common; their scripts carry these words too. */
export const MIXING = {
  ways: {
    bench: { en: "Tint bench", de: "Mischtisch", fr: "Banc de mélange", es: "Banco de mezcla" },
    recipes: FIND_RECIPE,
    map: MAP_OF_RANGE,
    palette: { en: "Palette", de: "Palette", fr: "Palette", es: "Paleta" },
    label: { en: "Mixing", de: "Mischen", fr: "Mélanger", es: "Mezclar" },
  },
  offered: (offered: number, all: number) => ({
    en: `Of ${all} paints, ${offered} can be chosen here, those that lie farthest apart; any other comes along from its own sheet.`,
    de: `Von ${all} Farben stehen hier die ${offered} zur Wahl, die am weitesten auseinanderliegen; jede andere lässt sich von ihrem eigenen Blatt aus hinzunehmen.`,
    fr: `Sur ${all} couleurs, ${offered} se choisissent ici, les plus éloignées entre elles\u202f; toute autre vient de sa propre fiche.`,
    es: `De ${all} colores se pueden elegir aquí ${offered}, los más alejados entre sí; cualquier otro viene desde su propia ficha.`,
  }),
  notPredicted: (names: readonly string[]) => ({
    en: `Not here, since neither fluorescent pigments nor flakes can be predicted: ${en.listed(names)}.`,
    de: `Nicht dabei, da sich weder fluoreszierende Pigmente noch Plättchen vorhersagen lassen: ${de.listed(names)}.`,
    fr: `Absentes d’ici, car ni les pigments fluorescents ni les paillettes ne se prévoient\u202f: ${fr.listed(names)}.`,
    es: `No están aquí, pues ni los pigmentos fluorescentes ni las laminillas se pueden prever: ${es.listed(names)}.`,
  }),
  without: {
    en: "Mixing here needs the page\u2019s script. What we worked out beforehand is in the table below.",
    de: "Zum Mischen ist hier das Skript der Seite nötig. Was wir im Voraus errechnet haben, steht in der Tabelle unten.",
    fr: "Pour mélanger ici, il faut le script de la page. Ce que nous avons calculé d’avance est dans le tableau ci-dessous.",
    es: "Para mezclar aquí hace falta el script de la página. Lo que calculamos de antemano está en la tabla de abajo.",
  },
  olderData: {
    en: "The figures here are from another version of the page than its script. Load the page again; if that does not help, only the table below holds.",
    de: "Die Werte hier stammen aus einer anderen Fassung der Seite als ihr Skript. Laden Sie die Seite neu; hilft das nicht, gilt nur die Tabelle unten.",
    fr: "Les chiffres d’ici viennent d’une autre version de la page que son script. Recharger la page\u202f; si cela ne suffit pas, seul le tableau ci-dessous vaut.",
    es: "Las cifras de aquí son de otra versión de la página que su script. Vuelva a cargar la página; si eso no ayuda, solo vale la tabla de abajo.",
  },
  noData: {
    en: "The figures did not load. Load the page again; the table below needs no script.",
    de: "Die Werte wurden nicht geladen. Laden Sie die Seite neu; die Tabelle unten braucht kein Skript.",
    fr: "Les chiffres ne se sont pas chargés. Recharger la page\u202f; le tableau ci-dessous n’a pas besoin de script.",
    es: "Las cifras no se cargaron. Vuelva a cargar la página; la tabla de abajo no necesita script.",
  },
  demonstration: {
    en: "Invented figures, to show how it works.",
    de: "Erfundene Werte, die nur zeigen, wie es geht.",
    fr: "Chiffres inventés, pour montrer comment cela fonctionne.",
    es: "Cifras inventadas, para mostrar cómo funciona.",
  },
  lamps: LAMPS,
  bench: TINT_BENCH,
  facts: MIX_FACTS,
  micrometres: (um: Quantity) => ({
    en: en.micrometres(um),
    de: de.micrometres(um),
    fr: fr.micrometres(um),
    es: es.micrometres(um),
  }),
  recipes: RECIPES,
  map: RANGE_MAP,
  palette: PALETTE,
} satisfies Texts;
