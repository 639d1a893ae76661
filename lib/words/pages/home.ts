import type { RangeCounts } from "../range-counts.ts";
import type { Texts } from "../texts.ts";
import { HOW_WE_KNOW } from "../shared-rows.ts";
import { given } from "../../quantities/given.ts";

/** The first page. */
export const HOME = {
  promise: ({ measured, mediums, byEye, unread, tinted }: RangeCounts) => ({
    en:
      mediums + byEye + unread === 0 && tinted === measured
        ? `${measured} oil colours, each shown as we measured it: alone, and mixed with white.`
        : [
            `${measured} oil colours${mediums === 0 ? "" : ` and ${mediums} ${mediums === 1 ? "medium" : "mediums"}`} as we measured them`,
            ...(tinted === measured + mediums
              ? ["alone and mixed with white"]
              : tinted === 0
                ? []
                : [`${tinted} of them mixed with white as well`]),
          ].join(", ") + ".",
    de:
      mediums + byEye + unread === 0 && tinted === measured
        ? `${measured} Ölfarben, jede gezeigt, wie wir sie gemessen haben: allein und mit Weiß gemischt.`
        : [
            `${measured} Ölfarben${mediums === 0 ? "" : ` und ${mediums} ${mediums === 1 ? "Streckmedium" : "Streckmedien"}`}, wie wir sie gemessen haben`,
            ...(tinted === measured + mediums
              ? ["allein und mit Weiß gemischt"]
              : tinted === 0
                ? []
                : [`${tinted} davon auch mit Weiß gemischt`]),
          ].join(", ") + ".",
    fr:
      mediums + byEye + unread === 0 && tinted === measured
        ? `${measured} couleurs à l’huile, chacune montrée telle que nous l’avons mesurée\u202f: pure, et mélangée à du blanc.`
        : [
            `${measured} couleurs à l’huile${mediums === 0 ? "" : ` et ${mediums} ${mediums === 1 ? "médium" : "médiums"} de charge`} telles que nous les avons mesurées`,
            ...(tinted === measured + mediums
              ? ["pures et mélangées à du blanc"]
              : tinted === 0
                ? []
                : [`dont ${tinted} aussi mélangées à du blanc`]),
          ].join(", ") + ".",
    es:
      mediums + byEye + unread === 0 && tinted === measured
        ? `${measured} óleos, cada uno mostrado tal como lo medimos: puro, y mezclado con blanco.`
        : [
            `${measured} óleos${mediums === 0 ? "" : ` y ${mediums} ${mediums === 1 ? "médium" : "médiums"} de carga`} tal como los medimos`,
            ...(tinted === measured + mediums
              ? ["puros y mezclados con blanco"]
              : tinted === 0
                ? []
                : [`${tinted} de ellos también mezclados con blanco`]),
          ].join(", ") + ".",
  }),

  /** What is shown beside those, and how it is known. */
  besides: ({ byEye, unread }: RangeCounts) => ({
    en: given([
      byEye !== 0 && `${byEye} more by eye or by figures of others`,
      unread !== 0 && `${unread} still to measure`,
    ]).join(", "),
    de: given([
      byEye !== 0 && `${byEye} weitere nach Augenmaß oder nach Angaben anderer`,
      unread !== 0 && `${unread} noch zu messen`,
    ]).join(", "),
    fr: given([
      byEye !== 0 && `${byEye} de plus, à l’œil ou d’après les chiffres d’autrui`,
      unread !== 0 && `${unread} encore à mesurer`,
    ]).join(", "),
    es: given([
      byEye !== 0 && `${byEye} más a ojo o según cifras de otros`,
      unread !== 0 && `${unread} aún por medir`,
    ]).join(", "),
  }),
  pressFamily: {
    en: "Press a family for its colours, and a colour for its sheet: what it does in white, whether it lasts, when it dries, what is in the tube.",
    de: "Tippen Sie auf eine Familie für ihre Farben und auf eine Farbe für ihr Blatt: wie sie sich in Weiß verhält, wie beständig sie ist, wann sie trocknet, was in der Tube ist.",
    fr: "Toucher une famille pour voir ses couleurs, et une couleur pour voir sa fiche\u202f: ce qu’elle donne dans un blanc, si elle tient, quand elle sèche, ce qu’il y a dans le tube.",
    es: "Pulse una familia para ver sus colores, y un color para ver su ficha: cómo queda en un blanco, si dura, cuándo seca, qué hay en el tubo.",
  },
  press: {
    en: "Press a colour for its sheet: what it does in white, whether it lasts, when it dries, what is in the tube.",
    de: "Tippen Sie auf eine Farbe für ihr Blatt: wie sie sich in Weiß verhält, wie beständig sie ist, wann sie trocknet, was in der Tube ist.",
    fr: "Toucher une couleur pour voir sa fiche\u202f: ce qu’elle donne dans un blanc, si elle tient, quand elle sèche, ce qu’il y a dans le tube.",
    es: "Pulse un color para ver su ficha: cómo queda en un blanco, si dura, cuándo seca, qué hay en el tubo.",
  },
  ask: { en: "Ask", de: "Fragen", fr: "Vos questions", es: "Sus preguntas" },
  allQuestions: (count: number) => ({
    en: `All ${count} questions`,
    de: `Alle ${count} Fragen`,
    fr: `Les ${count} questions`,
    es: `Las ${count} preguntas`,
  }),
  beside: {
    en: "Put side by side",
    de: "Nebeneinandergestellt",
    fr: "Mises côte à côte",
    es: "Puestos lado a lado",
  },
  choose: {
    en: "Choose your own",
    de: "Selbst wählen",
    fr: "Choisir les vôtres",
    es: "Elegir los suyos",
  },
  know: HOW_WE_KNOW,
  knowText: {
    en: "We measured it, worked it out, estimated it, or took a supplier\u2019s word. Every sheet says which.",
    de: "Wir haben es gemessen, errechnet, geschätzt oder die Angabe eines Lieferanten übernommen. Jedes Blatt sagt, was davon gilt.",
    fr: "Nous l’avons mesuré, calculé, estimé, ou repris d’un fournisseur. Chaque fiche le précise.",
    es: "Lo medimos, lo calculamos, lo estimamos, o lo tomamos de un proveedor. Cada ficha lo precisa.",
  },
  knowLink: {
    en: "How to read a label",
    de: "Wie man ein Etikett liest",
    fr: "Comment lire une étiquette",
    es: "Cómo leer una etiqueta",
  },
  wall: { en: "The range", de: "Das Sortiment", fr: "La gamme", es: "La gama" },
} satisfies Texts;
