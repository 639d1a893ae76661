import type { LABEL_PAGE as ENGLISH_PAGE } from "../en/label-page.ts";
import type { AnyWords } from "../any-words.ts";

/** How to read a label and a sheet. Where a line needs a figure the page takes it from a sheet. */
export const LABEL_PAGE: AnyWords<typeof ENGLISH_PAGE> = {
  heading: "Leer una etiqueta",
  lead: "En un tubo caben pocas líneas. Qué dice cada una, qué calla, y qué añade una ficha.",
  columns: { line: "Línea", says: "Qué dice", here: (name) => `En ${name}` },
  label: {
    heading: "Las líneas de una etiqueta",
    caption: "Línea a línea",
    lines: {
      name: [
        "Nombre",
        "El del fabricante. Puede ser histórico o inventado, y no dice qué pigmento hay dentro; un nombre puede valer por varios.",
      ],
      pigment: [
        "Pigmento",
        "En palabras y por su nombre genérico del Colour Index: P de pigmento o N de natural, letras para el matiz, un número. Nombra una clase de pigmento; fabricante, tono y calidad aún difieren.",
      ],
      vehicle: [
        "Aglutinante",
        "El aceite que lo liga, y lo que se añadió. Decide cómo amarillea la película e influye en la rapidez con que seca.",
      ],
      lightfastness: [
        "Solidez a la luz",
        "Una categoría de I a V solo donde se hicieron las exposiciones de una norma, o por declaración ajena; si no, qué se hizo en su lugar, o que no se hizo nada.",
      ],
      hazards: [
        "Peligros",
        "Palabra de advertencia, pictogramas e indicaciones en términos fijos. Tratan de la pintura en el tubo; el polvo de lijarla y el pigmento seco pueden ser peores.",
      ],
      contents: [
        "Contenido",
        "Mililitros, porque la pintura se usa por volumen. El mismo tubo pesa mucho más con un pigmento denso.",
      ],
      lot: [
        "Lote",
        "De qué fabricación salió: lo que hay que citar cuando algo va mal. Los lotes de un color difieren un poco.",
      ],
    },
    nothing: "ninguna advertencia: los documentos de los proveedores no piden ninguna",
    lot: "escrito a mano",
    holds: (ml, grams) => `${ml}, que contienen ${grams} de pintura`,
    noSize: "no hay ningún tamaño registrado",
    unsaid:
      "En una etiqueta no cabe qué hace el color en un blanco, cuánto aceite lleva, cuándo está seco, y cómo se sabe todo ello. Para eso está su ficha.",
  },
  studio: {
    heading: "Lo que vale para todo color",
    text: "Estas precauciones valen en todo estudio y taller, sea cual sea el color que esté sobre la mesa, y por eso están aquí una vez. Lo propio de un color está en su ficha, en primer lugar; prevalecen la etiqueta y la ficha de datos de seguridad, y los reglamentos locales y la práctica autorizada van antes que todo lo que aquí se dice.",
    caption: "En todo estudio",
    dust: "Un pigmento seco se levanta en polvo: tratarlo como muy pulverulento salvo que su densidad aparente diga otra cosa.",
    columns: {
      operation: "Al",
      caution: "Qué hacer, y qué no",
      reason: "Por qué",
    },
  },
  pigments: {
    heading: "Un pigmento o varios",
    caption: "Colores de más de un pigmento",
    text: (single, all) =>
      `De los ${all} colores de aquí, ${single} ${single === 1 ? "está hecho" : "están hechos"} de un solo pigmento. Mire cuántos nombres del Colour Index da una etiqueta: un nombre es una clase de pigmento, que mezcla limpio y se comporta igual en cada capa. Varios nombres son una mezcla que podría hacerse en la paleta; se vende porque es cómoda, o sustituye a un pigmento caro, nocivo o fugaz.`,
    columns: { colour: "Color", pigments: "Pigmentos", weakest: "El menos sólido a la luz" },
    alike: "iguales, hasta donde se sabe",
    unknown: "no se sabe",
    none: "Ningún color de aquí es una mezcla.",
  },
  names: {
    heading: "Un nombre, varios colores",
    caption: "Nombres del Colour Index que aquí llevan varios pigmentos",
    text: "Un nombre del Colour Index abarca todo lo de una misma constitución: las tierras naturales y tostadas comparten un nombre, y también una calidad gruesa y una fina. Tampoco un nombre se sigue de un número CAS: el negro de humo (PBk 6) y el negro de carbono de gas (PBk 7) tienen un solo número, y difieren en el grano, en el aceite y en lo que hacen en un blanco.",
    columns: { index: "Nombre del Colour Index", pigments: "Pigmentos", colours: "Colores" },
  },
  drift: {
    heading: "Por qué derivan algunos negros mezclados",
    caption: "Los negros y grises de aquí que son mezclas",
    text: "Un negro de un solo pigmento tiene una sola cosa que puede cambiar. Si la luz se lleva una parte, se aclara y conserva su matiz. Un negro mezclado es un equilibrio: pigmentos de matices distintos se dosifican para que juntos parezcan neutros. Si uno pierde fuerza el equilibrio se inclina, y el negro deriva hacia los que quedan: hacia el pardo donde cede un azul o un verde, hacia el verde o el azul donde cede un rojo. Lo que se desvanece primero a la luz, lo que alcanzan los álcalis, los ácidos o el calor, y lo que solo parece más débil en un blanco que en otro pueden inclinarlo. Así que en una mezcla decide el pigmento menos sólido a la luz, y una mezcla de pigmentos iguales a la luz tiene poco motivo para derivar.",
    driftColumn: "Si pierde el 30\u00a0% de un pigmento",
    notReckoned: "no calculado aquí",
    none: "Ningún negro ni gris de aquí es una mezcla.",
  },
  sheet: {
    heading: "Las líneas de una ficha",
    caption: "Los datos de la primera pantalla",
    facts: {
      lasts:
        "Cómo aguantó, o se prevé que aguante, a la luz. La letra pequeña lo precisa: expuesto según la norma, expuesto aquí, declarado por alguien, o previsible por sus pigmentos y no ensayado.",
      hides:
        "Cuánto cubre una película el negro y el blanco por igual, y qué espesor de película seca hace falta.",
      dries:
        "Una clase por el medio de los días hasta seco al tacto, para una película del espesor y una sala de la temperatura que nombra la ficha. Seco al tacto no es seco en profundidad.",
      strength:
        "Hasta dónde llega un poco de él en un blanco, tubo a tubo, junto al color con que compara el taller.",
      oil: "Gramos de aceite en la pintura por 100 g de pigmento. Mucho no es un defecto: un pigmento ligero y fino lo necesita. En volumen los colores están más cerca.",
      safety:
        "La palabra de advertencia de la etiqueta, o que no hace falta ninguna. Donde nadie ha clasificado un pigmento la ficha lo dice: tratar como peligroso.",
    },
    whitens:
      "De un blanco: cuánto hace falta para llevar una parte del color con que compara el taller a un tono medio. Cuanto menos, más fuerte es el blanco.",
    middleTone:
      "Cuánto blanco lleva una parte de él a un tono medio. Un color oscuro pide mucho blanco, y no por eso es más fuerte.",
    text: "Junto a cada cifra se dice cómo se sabe. Una cifra que nadie conoce no está indicada, con lo que haría falta; nunca es un cero ni una conjetura.",
  },
};
