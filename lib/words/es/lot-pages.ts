import type { LOT_PAGES as ENGLISH_PAGES } from "../en/lot-pages.ts";
import type { AnyWords } from "../any-words.ts";
import { FORMS, wordOf } from "./closed-words.ts";

/** What the workshop's pages of lots, batch sheets and trials say. */
export const LOT_PAGES: AnyWords<typeof ENGLISH_PAGES> = {
  describes: (standard, others) =>
    [
      ...(standard === undefined ? [] : [`Las cifras describen el lote ${standard}.`]),
      ...(others.length === 0
        ? []
        : [
            `${others.length === 1 ? "El lote" : "Los lotes"} ${others.join(", ")} ${others.length === 1 ? "concuerda" : "concuerdan"} con ${standard === undefined ? "el patrón" : "él"} dentro de la tolerancia.`,
          ]),
    ].join(" "),
  recalled: (number, since) => `El lote ${number} se retiró el ${since}: no lo use, y escríbanos.`,
  conceded: (number) =>
    `El lote ${number} se vende por concesión, aunque está fuera de tolerancia.`,
  reply: "Lotes",
  verdicts: { pass: "Conforme", near: "En el límite", fail: "No conforme", none: "Sin juzgar" },
  index: {
    heading: "Lotes",
    lead: "Cada lote junto a su patrón, el más reciente primero.",
    description: "Los lotes del taller junto a sus patrones.",
    none: "Aún no hay ningún lote registrado. Un lote es un archivo en lots/.",
    outcome: "Cómo salieron",
    caption: "Lotes, el más reciente primero",
    columns: {
      lot: "Lote",
      colour: "Color",
      date: "Fecha",
      verdict: "Veredicto",
      letDown: "Rebaje, \u0394E00",
      strength: "Fuerza, %",
    },
    recalled: "retirado",
    conceded: "concedido",
    standard: "Patrón",
    planned: "Previsto",
    spreadHeading: "Nuestra repetibilidad",
    spread: (colour, strength, degrees) =>
      `El mismo lote, rebajado y medido otra vez, difiere en ${colour} \u0394E*ab y en un ${strength}\u00a0% de fuerza (desviación típica, ${degrees} ${degrees === 1 ? "grado" : "grados"} de libertad).`,
    spreadUsed: "Los veredictos se rigen por eso, al doble.",
    spreadNotUsed:
      "Es demasiado poco para guiarse: los veredictos se rigen por el ruido propio del instrumento.",
    spreadOfReadings:
      "El \u00b1 de cada medición del mismo instrumento que no indica ninguno tiene en cuenta estas repeticiones y todas las demás.",
    spreadNone:
      "Ningún lote tiene un rebaje hecho o medido dos veces, así que los veredictos se rigen por el ruido propio del instrumento.",
  },
  lot: {
    heading: (number, colour) => `Lote ${number}, ${colour}`,
    description: (number, colour) => `El lote ${number} de ${colour} junto a su patrón.`,
    back: "Todos los lotes",
    ruled: (since, why) => `Desde el ${since}: ${why}`,
    lead: {
      pass: "Es conforme.",
      near: "Está demasiado cerca de un límite para decidir.",
      unjudged: "Sin juzgar: no todo lo que se midió de él puede compararse con el patrón.",
      fail: "No es conforme.",
      none: "Sin juzgar: ni su tono pleno ni su rebaje se han medido como espectro.",
      standard: "El patrón conservado: los lotes siguientes se comparan con él.",
      recalled: "Retirado: nada de él debe venderse ni usarse.",
      conceded: "Concedido: se vende aunque no es conforme.",
      planned: "Previsto, y aún no hecho.",
    },
    sections: {
      verdict: "Frente al patrón",
      seen: "Lado a lado",
      parts: "La diferencia por partes",
      correction: "Qué lo devolvería",
      planned: "Como está previsto",
      batch: "Tal como se hizo",
      next: "Después",
    },
    judgedCaption: "Cada criterio con su tolerancia",
    judgedColumns: {
      what: "Criterio",
      found: "Hallado",
      tolerance: "Tolerancia",
      verdict: "Veredicto",
    },
    customary: "Las tolerancias son elección nuestra donde ni el taller ni el color las nombran.",
    seenRows: ["Patrón", "Lote"],
    seenDescription: (number) => `El patrón encima del lote ${number}, en tono pleno y rebajado.`,
    masstone: "Tono pleno",
    letDown: (white, ratio) => `${ratio} en ${white}`,
    partsCaption: "Lote menos patrón, \u0394E00 (D65, 10\u00b0)",
    partsColumns: {
      of: "Qué",
      total: "\u0394E00",
      L: "\u0394L\u2032",
      C: "\u0394C\u2032",
      H: "\u0394H\u2032",
    },
    equal: "Rebaje a igual fuerza",
    strength: (percent, nm, weighted) =>
      `Fuerza del ${percent}\u00a0% a ${nm} nm, donde más absorbe el patrón; del ${weighted}\u00a0% ponderada por lo que el ojo toma de la luz del día.`,
    correctionLead: (best, grams) => `Incorporar ${grams} g de ${best} a cada 100 g del lote.`,
    correctionForeign: (name, pigments) =>
      `Con ${name} contiene también ${pigments}, lo que no dicen ni su nombre ni su etiqueta.`,
    correctionNone:
      "Nada de lo que se probó reduciría la diferencia a la mitad: ni un blanco, ni una carga, ni un color medido igual, ni otro lote. No se pudo probar lo que nunca se rebajó con blanco ni se midió solo y en películas sobre una carta de contraste desnuda, medida también.",
    correctionUnread: "No hay nada que corregir antes de una medición correcta.",
    correctionCaption: "Por 100 g del lote, y lo que se mediría entonces",
    correctionColumns: {
      what: "Adición",
      grams: "Por 100 g, g",
      masstone: "Tono pleno, \u0394E00",
      letDown: "Rebaje, \u0394E00",
      strength: "Fuerza, %",
    },
    correctionNote:
      "Entre paréntesis, a lo que puede llegar con una dosis desviada en un 5\u00a0%, o en la medida en que es incierto lo añadido, y con la incertidumbre de la medición. Probar antes en 20 g: lo que la teoría deja fuera no está en el intervalo.",
    kinds: { white: "blanco", extender: "carga", colour: "color", lot: "lote" },
    plannedCaption: "Por pesar",
    batchCaption: "Pesado, y lo que salió",
    batchColumns: { what: "Qué", amount: "Cantidad" },
    rows: {
      yield: "Rendimiento",
      loss: "Perdido",
      tubes: (ml) => `Tubos de ${ml} ml`,
      packed: (ml) => `Los tubos de ${ml} ml deben contener de media`,
      packedMean: (grams) => `${grams} o más`,
      packedFew: "Solo unos pocos de ellos pueden contener menos de",
      packedGross: (net, gross) => `${net}; con el tubo vacío ${gross}`,
      packedShort: (found, ml) =>
        `Contienen de media ${found} ml, y en ellos se leen ${ml} ml: no pueden venderse así (Directiva 76/211/CEE).`,
      tubeMass: (ml) => `En uno de ${ml} ml`,
      fineness: "Finura de molienda",
      density: "Densidad de la pintura",
      retained: "Muestra de retención",
      passes: "Pasadas",
      note: "Nota",
    },
    steps: {
      recalled: (number) => [
        `Lo que salió de él, por retirar: npm run check -- --uses ${number}.`,
        "No se imprimen etiquetas de él.",
      ],
      conceded: (number, howMany) => [
        `Sus etiquetas: npm run labels -- --lot ${number} ${howMany}.`,
      ],
      planned: () => [
        "Una vez hecho: ponga en su registro los pesos como fueron y quite planned: true.",
        "Extienda el tono pleno y el rebaje y mídalos; npm run read -- ARCHIVO guarda las mediciones y da las líneas para su registro.",
      ],
      none: () => [
        "Extienda el tono pleno y el rebaje y mídalos; npm run read -- ARCHIVO guarda las mediciones y da las líneas para su registro.",
      ],
      pass: (number, howMany) => [`Sus etiquetas: npm run labels -- --lot ${number} ${howMany}.`],
      standard: (number, howMany) => [
        `Sus etiquetas: npm run labels -- --lot ${number} ${howMany}.`,
      ],
      unjudged: () => [
        "Rebájelo en el blanco y en la proporción del patrón y mídalo como se midió el patrón; o rebaje el patrón conservado como este lote.",
      ],
      near: () => ["Extiéndalo y mídalo otra vez: con un ± menor quizá se vea si es conforme."],
      fail: () => [
        "Corríjalo según su hoja, o reténgalo. Lo corregido se mide otra vez, como un lote aparte.",
      ],
      kept: () => ["Reténgalo: nada de lo medido aquí lo devolvería a su patrón."],
    },
    ownSheet: (number) => `Hoja de fabricación del lote ${number}`,
    correctionSheet: (number) => `Hoja de corrección del lote ${number}`,
    reply: (colour) => `Una respuesta sobre ${colour}`,
    batchSheet: (colour) => `Hoja de fabricación de ${colour}`,
    colourPage: (colour) => `${colour} en el taller`,
  },
  chart: {
    of: {
      strength: {
        title: (colour) => `Fuerza de ${colour}, lote a lote`,
        ranges: (colour) => `Fuerza de ${colour}: de cada lote al siguiente`,
        value: "Poder colorante, % del patrón",
        range: "Diferencia de dos vecinos, %",
        column: "Fuerza, %",
      },
      letDown: {
        title: (colour) => `Rebaje de ${colour} junto al patrón, lote a lote`,
        ranges: (colour) => `Rebaje de ${colour}: de cada lote al siguiente`,
        value: "\u0394E00 del rebaje al patrón",
        range: "Diferencia de dos vecinos, \u0394E00",
        column: "Rebaje, \u0394E00",
      },
      masstone: {
        title: (colour) => `Tono pleno de ${colour} junto al patrón, lote a lote`,
        ranges: (colour) => `Tono pleno de ${colour}: de cada lote al siguiente`,
        value: "\u0394E00 del tono pleno al patrón",
        range: "Diferencia de dos vecinos, \u0394E00",
        column: "Tono pleno, \u0394E00",
      },
    },
    description: (numbers) => `Por orden de fecha: ${numbers}.`,
    order: "Lotes por orden de fecha",
    lines: {
      mean: "media",
      limits: "límites de control",
      limit: "límite",
      tolerance: "tolerancia",
    },
    provisional: (count) =>
      `Los límites de ${count} lotes son provisionales: los siguientes los moverán. Veinte los hacen firmes.`,
    quiet: "Ningún lote sale de los límites, y ninguna serie es lo bastante larga para decir algo.",
    points: "Qué lote es cada marca",
    columns: { place: "Marca", lot: "Lote", date: "Fecha" },
    one: "Un solo lote no hace una gráfica.",
    apart:
      "Ninguno de estos lotes pudo compararse con el patrón en color o fuerza, así que no hay gráfica.",
  },
  correctionSheet: {
    heading: (number) => `Corrección del lote ${number}`,
    description: (number) => `Lo que hay que pesar para devolver el lote ${number} a su patrón.`,
    rows: {
      trialLot: "Ensayo: del lote",
      trialAdded: (name) => `Ensayo: ${name}`,
      restLot: "Después: el resto del lote",
      restAdded: (name) => `Después: ${name}`,
    },
    predicted: (masstone, letDown, strength) =>
      `Debería dar entonces: tono pleno \u0394E00 ${masstone}, rebaje \u0394E00 ${letDown}, fuerza ${strength}\u00a0%.`,
    dose: (grams, name) => `${grams}\u00a0g de ${name} por 100\u00a0g del lote.`,
    ofYield: (grams) =>
      `Para los ${grams}\u00a0g que salieron: tanto menos cuanto haya ya en tubos.`,
    ofWeighed: (grams) => `Para los ${grams}\u00a0g que se pesaron: el registro no da rendimiento.`,
    order: [
      "Mezcle el ensayo en la losa con la espátula hasta que no quede veta alguna.",
      "Extiéndalo junto al patrón, tono pleno y rebaje, y mida ambos.",
      "Fuera de tolerancia: anote lo medido y deje el lote como está.",
      "Dentro de tolerancia: incorpore el resto por tercios y dé al conjunto una pasada más.",
      "Extienda el conjunto, mídalo y llene un nuevo frasco de muestra.",
      "Anótelo como un lote aparte, con todo lo que entró.",
    ],
    cautions: "Antes de mezclar",
    classified: (name, statements) =>
      `${name} está clasificado (${statements}): las advertencias de su etiqueta valen en la losa, y el lote pide una etiqueta propia.`,
    fields: {
      masstone: "Ensayo, tono pleno \u0394E00",
      letDown: "Ensayo, rebaje \u0394E00",
      strength: "Ensayo, fuerza %",
    },
  },
  batchSheet: {
    heading: (colour) => `Hoja de fabricación: ${colour}`,
    description: (colour) =>
      `Qué pesar para un lote de ${colour}, para imprimir y llevar a la losa.`,
    back: (colour) => `${colour} en el taller`,
    backToLot: (number) => `Lote ${number}`,
    wanted: "Qué se quiere",
    units: { tubes: (ml) => `tubos de ${ml} ml`, pigmentG: "g de pigmento" },
    amount: "Cuántos, o cuánto",
    fault: "Dé una cantidad mayor que 0.",
    print: "Imprimir",
    caption: "Qué pesar",
    columns: { what: "Qué", planned: "Previsto,\u00a0g", weighed: "Pesado,\u00a0g" },
    rows: {
      first: "Aceite para empezar",
      held: "Aceite reservado",
      paint: "Pintura en total",
    },
    comesOut: (from, to) => `Deben salir de ${from} a ${to} ml.`,
    loss: {
      learnt: (from, to, count) =>
        `Pérdida de ${from} a ${to}\u00a0%, como ${count === 1 ? "la de un lote suyo" : `la de ${count} lotes suyos`}.`,
      customary: (from, to) =>
        `Pérdida de ${from} a ${to}\u00a0%, como es costumbre: no hay ningún lote suyo registrado.`,
    },
    fill: (ml, really) =>
      `Cuente ${really} ml por cada tubo de ${ml} ml: es lo que contenían los anteriores.`,
    packed: (ml, mean, few, none, density) =>
      `Por ley los tubos de ${ml} ml deben contener de media ${mean} g de pintura o más: basta para ${ml} ml hasta una densidad de ${density} g/cm\u00b3. Pocos de un lote (2 de cada 100 según la ley alemana) pueden contener menos de ${few} g, y ninguno menos de ${none} g (Directiva 76/211/CEE).`,
    gross: (ml, mean, few, none, tare) =>
      `En la balanza, con un tubo vacío de ${ml} ml de ${tare} g: ${mean} g, ${few} g y ${none} g.`,
    tareless: "El tubo vacío con su tapón va aparte: pese uno y anótelo como tareG.",
    densityFirst: "Pese antes la densidad del lote: las masas dependen de ella.",
    rubbedOut: (pigment, number, figure) =>
      `${pigment}, entrega ${number}: absorción ${figure} g/100 g, según la cual se reserva aquí el aceite.`,
    step: (grams) => `Pesos a ${grams} g, el paso de la balanza.`,
    order: {
      heading: "Orden del trabajo",
      mulled: [
        "Pesar el pigmento con el extractor en marcha, como se dice abajo, y cerrar el tarro.",
        "Aceite para empezar: incorporarlo con el cuchillo hasta que no quede pigmento seco.",
        "Moler con moleta por porciones; recoger y dar la vuelta después de cada pasada.",
        "Aceite reservado: gota a gota, solo hasta donde lo pida la pasta. Anotar lo que queda.",
        "Secantes y médiums al final, y mezclarlos bien.",
        "Extender el tono pleno y el rebaje, llenar el tarro de muestra, luego los tubos.",
      ],
      milled: [
        "Pesar el pigmento con el extractor en marcha, como se dice abajo, y cerrar el tarro.",
        "Aceite para empezar: mezclar hasta una pasta firme, y dejarla reposar hasta que esté mojada por dentro.",
        "Moler con los rodillos abiertos, luego más cerrados en cada pasada; leer la galga después de cada una.",
        "Aceite reservado: entre pasadas, solo hasta donde lo pida la pasta. Anotar lo que queda.",
        "Secantes y médiums en la última pasada.",
        "Extender el tono pleno y el rebaje, llenar el tarro de muestra, luego los tubos.",
      ],
    },
    cautions: "Antes de que el pigmento sea pintura",
    defer:
      "Las fichas de datos de seguridad de los proveedores y las normas locales tienen prioridad.",
    fields: {
      heading: "Para rellenar",
      lot: "Lote",
      name: "Hecho por",
      date: "Fecha",
      passes: "Pasadas",
      fineness: "Finura, \u00b5m",
      left: "Aceite sobrante, g",
      yield: "Rendimiento, g",
      tubes: "Tubos llenos",
      sample: "Número de muestra",
    },
    none: "No puede pesarse nada:",
  },
  labels: {
    heading: "Etiquetas para pegar",
    description: "Etiquetas del taller para tubos y tarros.",
    lead: "Una etiqueta de cada color en cada tamaño en que se envasa, a tamaño real. Una etiqueta es un borrador para quien la firma: la ley de cada mercado decide lo que tiene que llevar.",
    sections: {
      print: "Para imprimir",
      refused: "Sin etiqueta",
      remarks: "Sobre las etiquetas impresas",
    },
    list: "Color, tamaño, y por qué",
    caption: "Etiquetas por tamaño",
    columns: { size: "Tamaño", measures: "Etiqueta, mm", colours: "Colores" },
    measures: (width, height) => `${width} \u00d7 ${height}`,
    pdf: (pages) =>
      `labels.pdf, ${pages} ${pages === 1 ? "página" : "páginas"}, para imprimir a tamaño real`,
    none: "workshop.yaml no da etiquetas: una lista de { name, kind, ml } dice cuáles hay.",
    nothing: "Ningún color que se envase en uno de estos tamaños tiene aún etiqueta.",
    command:
      "Para un lote, y tantas como tubos se llenaron: npm run labels -- --lot NUMBER --filled.",
  },
  trials: {
    heading: "Ensayos",
    lead: "Exposiciones y ensayos de secado hasta donde han llegado.",
    description: "Los ensayos del taller como series fechadas.",
    none: "No hay ningún ensayo registrado como serie. Un ensayo es un archivo en trials/.",
    due: "Lo próximo que vence",
    dueCaption: "Cuándo volver a mirar",
    dueColumns: { what: "Ensayo", date: "Mirar el" },
    ended: "Terminado",
    exposure: (colour, form) => `${colour}, ${wordOf(FORMS, form)}, expuesto`,
    drying: (colour) => `${colour}, secado`,
    soFar: (category, deltaEab, days) =>
      `Categoría\u00a0${category} hasta ahora: \u0394E*ab ${deltaEab} ${days === 1 ? "al cabo de 1 día" : `a los ${days} días`}. No dice nada de lo que vendrá.`,
    over: (category, deltaEab, days) =>
      `Categoría\u00a0${category}: \u0394E*ab ${deltaEab} ${days === 1 ? "al cabo de 1 día" : `a los ${days} días`}.`,
    unread: "Aún no medido.",
    touch: (from, to) => `Seco al tacto entre el día ${from} y el día ${to}.`,
    through: (from, to) => `Seco en profundidad entre el día ${from} y el día ${to}.`,
    notYet: "Aún no seco al tacto.",
    never: "No seco al tacto al terminar.",
    day: "Días desde el comienzo",
    change: "\u0394E*ab respecto a la mitad guardada a oscuras",
    state: "Húmedo 0, pegajoso 1, seco al tacto 2, en profundidad 3",
    limit: (category) => `fin de ${category}`,
    next: (date) => `Volver a mirar el ${date}.`,
    table: "Cada medición",
    columns: { date: "Fecha", day: "Día", found: "Hallado" },
  },
};
