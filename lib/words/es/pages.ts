import type { MeasuredErrors } from "../../optics/fit/measured-errors.ts";
import type { PageWords } from "../en/pages.ts";
import { EXPECTATIONS } from "../../permanence/expected-lightfastness.ts";
import type { AnyWords } from "../any-words.ts";
import { upperFirst } from "../letter-case.ts";
import { ANSWER_PAGES } from "./answer-pages.ts";
import { BLACKS_PAGES } from "./blacks-pages.ts";
import { CARDS } from "./cards.ts";
import { CHANGES } from "./changes.ts";
import { EXPECTED, GEOMETRIES, wordOf } from "./closed-words.ts";
import { COMPARE_PAGES } from "./compare-pages.ts";
import { HANDLING } from "./handling.ts";
import { LABEL_PAGE } from "./label-page.ts";
import { LOT_PAGES } from "./lot-pages.ts";
import { MIXING_PAGES } from "./mixing-pages.ts";
import { MIXTURE_PAGES } from "./mixture-pages.ts";
import { NEXT_STEPS } from "./next-steps.ts";
import { OPTICS_PAGES } from "./optics-pages.ts";
import { PACKAGE_LABELS } from "./package-labels.ts";
import { PAINT_PAGES } from "./paint-pages.ts";
import { LISTING } from "./listing.ts";
import { PHOTOGRAPHS } from "./photographs.ts";
import { NUMBERS, listed } from "./phrases.ts";
import { PIGMENT_INDEX } from "./pigment-index.ts";
import { SHEET_PAGE } from "./sheet-page.ts";
import { SHEET_PAPER } from "./sheet-paper.ts";
import { TERMS } from "./terms.ts";
import { WORKSHOP_PAGES } from "./workshop-pages.ts";

/** What was predicted and measured. */
const MEASURED: Readonly<Record<MeasuredErrors["what"], string>> = {
  "let-downs that hide": "rebajes que cubren",
  "all let-downs": "todos los rebajes",
  "mixtures with black": "mezclas con negro",
  "in a white not tried": "en un blanco no probado",
};

/** Headings, captions and sentences of the pages that do not come from a science. */
export const PAGES: AnyWords<PageWords> = {
  nav: {
    colours: "Colores",
    answers: "Preguntas",
    compare: "Comparar",
    mix: "Mezclar",
    pigments: "Pigmentos",
    methods: "Cómo lo sabemos",
    label: "Etiquetas",
    sources: "Fuentes",
    about: "Acerca de",
  },
  search: {
    text: "Buscar un color",
    nothing: "No se encontró nada.",
    count: "Encontrados: {count}.",
    kinds: { pigment: "Pigmento", answer: "Pregunta", comparison: "Lado a lado" },
  },
  frame: {
    skip: "Ir al texto",
    mainNavigation: "Sitio",
    more: "Más",
    onThisPage: "En esta página",
    toContents: "Volver al contenido",
    property: "Propiedad",
    value: "Valor",
    standing: "Origen",
    method: "Método y fuente",
    source: "Fuente",
    standingsHeading: "Cómo se sabe cada cifra",
    termsHeading: "Términos",
    downloadsHeading: "Datos",
    handlingLink: "Todo sobre la seguridad",
    orders: "Orden",
    parts: "Página",
    families: "Familia",
    coloursMade: "Colores hechos de él",
    languages: "Idiomas",
  },
  demonstration: "Demostración: aquí todo es inventado.",
  ragLine:
    "Los trapos empapados de aceite secante pueden prenderse solos: extenderlos uno a uno al aire libre hasta que endurezcan, o remojarlos en agua en una lata metálica cerrada. Nunca en la basura ni en un montón.",
  fromPapers: "Peligros: de los documentos de nuestros proveedores.",
  cautionLine:
    "La etiqueta, la ficha de datos de seguridad, sus normas locales y la práctica autorizada tienen prioridad.",
  build: (date) =>
    date === undefined
      ? "Hecho a partir de registros sin fecha."
      : `Hecho a partir de los registros hasta el ${date}.`,
  title: (page, workshop) => (page === workshop ? workshop : `${page} \u2013 ${workshop}`),

  sheet: {
    description: (name, madeOf) =>
      `${name}: ${madeOf}. Qué hace en cada blanco, si dura, cuándo seca y cómo manejarlo.`,
    madeOf: {
      mulled: (vehicle) => `; ${vehicle}, molido con moleta`,
      milled: (vehicle) => `; ${vehicle}, molido a máquina`,
      plain: (vehicle) => `; ${vehicle}`,
      comma: ", ",
      withAdditions: (names) => `; contiene además: ${listed(names)}`,
    },
    holdsMediums: (mediums) =>
      `Contiene además ${listed(mediums)}: qué hace eso al secado, al acabado y al amarilleo no lo hemos probado.`,
    noPanel: "No se muestra ningún color: aún no se ha medido ni igualado ninguna aplicación.",
    tintDescription: (level, a, b) => `L* ${level}, a* ${a}, b* ${b}`,
    missing: "no indicado",
    approximateColour:
      "Solo aproximado en pantalla: calculado a partir de una medición bajo otra luz.",
    outOfGamut:
      "Una pantalla corriente no puede mostrar este color; la muestra es lo más próximo que puede.",
    factDetail: {
      category: (category) => `categoría\u00a0${category}`,
      asCategory: (category) => `como en la categoría\u00a0${category}`,
      notTested: "no ensayada aquí",
      notTestedInTints: "por sus rebajes, donde es más débil; no ensayada aquí",
    },
    expectation: TERMS,
    categories: Object.fromEntries(
      EXPECTATIONS.map(({ category, expectation }) => [category, EXPECTED[expectation]]),
    ),
    revision: (revision, date) =>
      `Revisión ${revision}${date === undefined ? "" : `, de registros del ${date}`}`,
    whiteSentence: (count) =>
      count === 1
        ? "Un blanco. Se probó en él un color de la gama."
        : `Un blanco. Se probaron en él ${count} colores de la gama.`,
    noSentence: "Aún no probado en blanco.",
  },
  sections: {
    reply: "Respuesta",
    label: "Texto de la etiqueta",
  },
  whites: {
    heading: (name, index) => `En ${name}${index === undefined ? "" : ` (${index})`}`,
    ladderTitle: (white) => `Con ${white}, de la mezcla más fuerte a la más pálida`,
    ladderDescription: (steps) => `${steps.join("; ")}.`,
    stepDescription: (ratio, standing, L, a, b) =>
      `${ratio}, ${standing}, L* ${L}, a* ${a}, b* ${b}`,
    suspect: "dudoso",
    steps: (count) => (count === 1 ? "El único paso en cifras" : `Los ${count} pasos en cifras`),
    stepsCaption: (white, kind) =>
      `Color a ${white} en masa de ${kind === "paint" ? "pintura" : "pigmento seco"}`,
    columns: {
      ratio: "Color : blanco",
      L: "L*",
      a: "a*",
      b: "b*",
      munsell: "Munsell",
      misfit: "\u00b1 o error",
    },
    note: "L* a* b* bajo D65, observador de 10\u00b0. Última columna, en \u0394E00: en un paso previsto, el error que no superan alrededor del 68\u00a0% de las previsiones; en una aplicación, cuánto se aparta de ella el ajuste, y entre paréntesis cuánto si se deja fuera.",
    expectedNote:
      "Previsible, no pintado: L* a* b* (D65, observador de 10\u00b0) como el intervalo en que caen nueve de cada diez rebajes así, Munsell en su medio. Última columna, en \u0394E00: el error que no superan alrededor del 68\u00a0% de los casos.",
    range: (low, high) => (low === high ? low : `${low} a ${high}`),
    trailEnds: { plusA: "rojo", minusA: "verde", plusB: "amarillo", minusB: "azul" },
    trailTitle: "Adónde lleva cada blanco el color: a* y b* de las mezclas",
    trailDescription: (whites) =>
      `Una línea por blanco, del color puro a la mezcla más pálida: ${whites.join(", ")}.`,
  },
  strength: {
    caption: "Fuerza y opacidad",
    why: "Por qué",
    tubeCaption: "Cuánto blanco por una parte, hasta un tono medio (L* 50)",
    tubeColumns: {
      white: "Blanco",
      byVolume: "Tubo a tubo, en volumen",
      byMass: "En masa de pintura",
    },
    tubeNote:
      "Un color fuerte pide mucho blanco. Del tubo se saca por volumen; ese volumen se calcula a partir de los pesos y las densidades.",
    glazeTitle: "Subtono: películas cada vez más gruesas sobre blanco",
    glazeAxis: "Película seca, \u00b5m",
    glazeLabel: (filmUm) => `${filmUm}`,
    glazeDescription: (films) => `Películas sobre blanco: ${films.join("; ")}.`,
    hidingTitle: "Qué espesor necesita una película para cubrir",
    hidingFilm: "Película seca, \u00b5m",
    hidingRatio: "Relación de contraste",
    hides: "cubre",
    hidingDescription: (points) => `Relación de contraste por película: ${points.join("; ")}.`,
  },
  drying: {
    caption: "Secado",
    why: "Por qué",
    layering: "Capas",
    film: "La película, con la edad",
    contradictions: "Dónde no concuerdan nuestro ensayo y la regla práctica",
    summary: (dryingClass, days, through) =>
      through === undefined
        ? `${upperFirst(dryingClass)}: seco al tacto en ${days}. Eso no es seco en profundidad.`
        : `${upperFirst(dryingClass)}: seco al tacto en ${days}, en profundidad en ${through}. Una película más gruesa tarda más.`,
    none: "Aún no se sabe: no tenemos ningún ensayo suyo, ni sabemos qué hace su pigmento al aceite secante.",
  },
  permanence: {
    exposed: (word, category) =>
      `${upperFirst(word)}: cambió lo que permite la categoría\u00a0${category}, en nuestra propia exposición.`,
    stated: (word, told) => `${upperFirst(word)}: ${told}.`,
    expected: (word) => `${upperFirst(word)}; no ensayada aquí.`,
    caption: "Solidez a la luz",
    why: "Por qué",
    sensitivities: "Otros riesgos",
    note: "Los límites de las categorías se citan de memoria de la norma. Una categoría propiamente dicha necesita las exposiciones de la propia norma.",
    none: "Aún no se sabe: ni exposición, ni dato del proveedor, ni nada que prever por sus pigmentos.",
  },
  oil: {
    caption: "Aceite, empaquetamiento y acabado",
    why: "Por qué",
    contradictions: "Dónde no concuerdan nuestro registro y la regla práctica",
    summary: (oilClass, line) => `Nivel de aceite ${oilClass}: ${line}`,
    notClassed: (grams) =>
      `Su aceite aún no se ha pesado, y la estimación es demasiado amplia para una palabra: ${grams}.`,
    none: "Aún no se sabe: no tenemos ni una absorción de aceite ni el aceite de una fabricación.",
  },
  handling: HANDLING,
  pigmentIndex: PIGMENT_INDEX,
  pigment: {
    share: (share) => `${share} del pigmento seco`,
    whole: "pigmento único",
    noShare: "parte no registrada",
    caption: (name) => `${name}, seco`,
    facts: {
      origin: "Origen",
      chemistry: "Química",
      particle: "Partícula",
      benchTest: "Una prueba de mesa",
    },
    particle: (size, shape, index) =>
      [shape, size, index === undefined ? undefined : `índice de refracción ${index}`]
        .filter((part) => part !== undefined)
        .join(", "),
    size: (um) => `${um} \u00b5m`,
    nothing: "No hemos anotado nada más de él.",
  },
  range: {
    ends: { low: "el que menos", high: "el que más" },
    sameColour: "Parecidos al salir del tubo",
    samePigment: "Hechos del mismo pigmento",
    metameric: "Al salir del tubo, a la luz del día y a la de lámpara",
    metamericPair: (name, sentence) => `${name}: ${sentence}`,
    hueTitle: "La gama por matiz y croma",
    hueDescription: (parts) => `${parts.join("; ")}.`,
    neutral: "neutro",
    chroma: "Croma Munsell",
    value: "Valor Munsell",
    valueTitle: "La gama por valor y croma",
    difference: (deltaE, inWhite) =>
      inWhite === undefined
        ? `solo \u0394E00 ${deltaE}`
        : `solo \u0394E00 ${deltaE}; en ${inWhite.white} \u0394E00 ${inWhite.deltaE}`,
    oilTitle: "Su aceite junto al resto de la gama",
    dryingTitle: "Su secado junto al resto de la gama",
    placeDescription: (name, value, count, [lowest, lower, upper, highest]) =>
      `${name}: ${value}. Los ${count} colores con cifra van de ${lowest} a ${highest}, la mitad central de ${lower} a ${upper}.`,
    box: (count) => `recuadro: la mitad central de ${count} colores`,
  },
  notations: {
    readBy: (geometry) => `Medido en ${wordOf(GEOMETRIES, geometry)}.`,
    included: (L) => `Medido con el brillo incluido; sin él L* sería alrededor de ${L}.`,
    byEye: "Igualado a ojo a una muestra Munsell, lo que vale medio paso de valor y uno de croma.",
    none: "Ninguna aún: no se ha medido ni igualado a ojo ninguna aplicación.",
    labCaption: "El color puro, bajo cada luz",
    light: "Luz, observador",
    viewings: {
      "C/2": "C, 2\u00b0",
      "D65/2": "D65, 2\u00b0",
      "D65/10": "D65, 10\u00b0",
      "D50/2": "D50, 2\u00b0",
      "A/10": "A (lámpara), 10\u00b0",
      "A/2": "A (lámpara), 2\u00b0",
      "C/10": "C, 10\u00b0",
      "D50/10": "D50, 10\u00b0",
      "D65/2006": "D65, 10\u00b0 de la CIE 2006",
    },
    caption: "Nombres y colores de pantalla",
    curveTitle: "Reflectancia del tono pleno a lo largo del espectro",
    curveDescription: (low, high, lowNm, highNm) =>
      `Entre ${low} a ${lowNm} nm y ${high} a ${highNm} nm.`,
    curveLabel: (geometry) => `tono pleno, ${wordOf(GEOMETRIES, geometry)}`,
    excludedLabel: "calculado sin el brillo",
    wavelength: "Longitud de onda, nm",
    reflectance: "Factor de reflectancia",
    reflectanceTo: (end) => `Factor de reflectancia, ampliado: el eje acaba en ${end}`,
  },
  evidence: {
    summary:
      "Cada cifra de esta ficha, de dónde sale y a partir de qué se calculó. Las cifras llevan los nombres que usan los datos de la ficha y las afirmaciones de las respuestas.",
    caption: "Las cifras y cómo se halló cada una",
    columns: {
      figure: "Cifra",
      value: "Valor",
      standing: "Origen",
      method: "Método",
      inputs: "A partir de",
    },
    part: (part, count) => `${part}: ${count} ${count === 1 ? "cifra" : "cifras"}`,
    parts: {
      pigments: "El pigmento",
      notations: "Notaciones",
      tints: "En los blancos",
      mixture: "Como mezcla",
      optics: "Fuerza, opacidad, brillo y el ajuste",
      oil: "Aceite y acabado",
      batch: "Una fabricación",
      fill: "Tarros y tubos",
      drying: "Secado",
      permanence: "Solidez a la luz",
      additions: "Añadidos",
      vehicle: "Aglutinante",
      cautions: "Seguridad",
      offer: "Tamaños y precios",
    },
    notStated: "Aún no se sabe",
    notStatedCaption: "Aún no se sabe, y qué haría falta",
    reason: "Por qué",
    wanting: "Hace falta",
    sources: "Fuentes",
  },
  downloads: {
    sheet: "cada cifra de esta ficha y cómo se sabe",
    reading: "el tono pleno tal como se midió, factor de reflectancia por longitud de onda",
    csv: "una línea por tamaño, para cargar en una tienda",
    figures: "una línea por color, cada cifra con su origen",
    json: "la lista de fichas, para programas",
  },
  parts: {
    heading: (heading, page, pages) => `${heading}, página ${page} de ${pages}`,
    onThisPage: (what) => `${what}, en esta página`,
    someOf: (shown, all) => `Se muestran ${shown} de ${all}, tomados de modo uniforme entre todos.`,
  },
  catalogue: {
    heading: "Colores",
    filters: {
      label: "Reducir la gama",
      families: "Solo",
      heading: "que",
      found: "{count} de {all} colores",
      nothing: "Ningún color cumple todo eso.",
    },
    filterNames: {
      opaque: "cubren",
      transparent: "son transparentes",
      fast: "secan deprisa",
      slow: "secan despacio",
      lightfast: "duran (categoría I o II)",
      unwarned: "no necesitan advertencia",
    },
    inThisWhite: (white) => `se probaron en ${white}`,
    gridLead: "Cada color, puro arriba y con blanco debajo, llevado a un tono medio.",
    orders: {
      grid: "Muestras por familia",
      family: "Tabla por familia",
      value: "Por valor",
      hue: "Por matiz",
      drying: "Por secado",
      permanence: "Por permanencia",
      oil: "Por aceite",
      strength: "Por fuerza",
      whites: OPTICS_PAGES.inTheWhites.orders,
    },
    leads: {
      family: "Por familia, luego por nombre.",
      value: "Del más oscuro al más claro, tal como salen del tubo.",
      hue: "Primero los neutros, luego alrededor del círculo de matices.",
      drying:
        "Los más rápidos primero. Donde los días son un intervalo, su medio decide el orden; cuente con el último día.",
      permanence:
        "Los más sólidos a la luz primero. En una misma categoría va delante lo ensayado: nuestro propio ensayo vale más que la palabra de un proveedor, y esta más que lo que solo es previsible.",
      oil: PAINT_PAGES.byOil.lead,
      strength: OPTICS_PAGES.byStrength.lead,
    },
    columns: {
      colour: "Color",
      pigments: "Pigmentos",
      munsell: "Munsell",
      lightfastness: "Solidez a la luz",
      opacity: "Opacidad",
      drying: "Secado",
      oil: "Índice de aceite",
    },
    notRead: "no medido",
    count: (count) => `${count} ${count === 1 ? "color" : "colores"}`,
    groups: { neutral: "Neutros", notStated: "Aún no se sabe" },
    noSwatch: "aún no medido",
    madeNoMore: "descatalogado",
    caption: (heading) => `Colores: ${heading}`,
    value: (from) => `Valor ${from} a ${from + 1}`,
  },
  pigments: {
    heading: "Pigmentos",
    columns: {
      pigment: "Pigmento",
      index: "Colour Index",
      density: "Densidad",
      oil: "Absorción de aceite",
      colours: "Colores",
    },
    properties: "Cifras del pigmento seco",
    handling: "Manejar el pigmento seco",
    noColours: "Ningún color está hecho de él.",
    caption: "Pigmentos secos",
  },
  home: {
    promise: ({ measured, mediums, byEye, unread, tinted }) =>
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
    /** What is shown beside those, and how it is known. */
    besides: ({ byEye, unread }) =>
      [
        ...(byEye === 0 ? [] : [`${byEye} más a ojo o según cifras de otros`]),
        ...(unread === 0 ? [] : [`${unread} aún por medir`]),
      ].join(", "),
    pressFamily:
      "Pulse una familia para ver sus colores, y un color para ver su ficha: qué hace en blanco, si dura, cuándo seca, qué hay en el tubo.",
    press:
      "Pulse un color para ver su ficha: qué hace en blanco, si dura, cuándo seca, qué hay en el tubo.",
    ask: "Preguntar",
    allQuestions: (count) => `Las ${count} preguntas`,
    beside: "Puestos lado a lado",
    choose: "Elegir los suyos",
    know: "Cómo lo sabemos",
    knowText:
      "Lo medimos, lo calculamos, lo estimamos, o lo tomamos de un proveedor. Cada ficha lo precisa.",
    knowLink: "Cómo leer una etiqueta",
    wall: "La gama",
  },
  methods: {
    heading: "Métodos",
    lead: "De dónde sale cada cifra, y hasta dónde fiarse.",
    measured: (rows, areInvented) =>
      [
        "Cuánto distan tales previsiones de óleos medidos, en \u0394E00. Cada rebaje se deja fuera y se prevé por los demás; una mezcla se prevé por sus dos colores, y un color en barita o creta por sus rebajes en blanco de cinc, a través de otro color rebajado en los dos. Con películas: aplicaciones sobre negro y blanco dijeron al ajuste cuánto dispersa cada pintura. Las dos últimas columnas cuentan los que quedan dentro del 68 y del 90\u00a0% que imprimimos junto a una previsión.",
        "",
        "| | | cuántos | mediana | nueve de diez dentro de | dentro del 68\u00a0% | dentro del 90\u00a0% |",
        "|---|---|---|---|---|---|---|",
        ...rows.map(
          ({ what, films, count, median, p90, inside68, inside90 }) =>
            `| ${MEASURED[what]} | ${films ? "con películas" : "sin películas"} | ${count} | ${NUMBERS.decimal(median, 1)} | ${NUMBERS.decimal(p90, 1)} | ${inside68} | ${inside90} |`,
        ),
        "",
        `Un \u00b1 de una ficha depende de las lecturas de ese color: es más estrecho o más ancho que estas cifras.${areInvented ? " Las lecturas de esta demostración las hizo un programa y concuerdan mucho mejor que las de una pintura: de una pintura espere los errores de esta tabla, no el pequeño \u00b1 de estas fichas." : ""}`,
      ].join("\n"),
    sections: [
      [
        "colour",
        "Color",
        "Una medición es una lista de factores de reflectancia. Se suma con las tablas de la CIE a X, Y, Z y L*, a*, b* para cada luz y observador, a escala para que un blanco perfecto dé el blanco de la CIE. Las notaciones Munsell son las de la renotación, interpoladas en LCHab. Los colores de pantalla son para D65 y el observador de 2\u00b0. Nombramos la geometría junto a cada medición: con el brillo dentro, un negro resulta de 13 a 23 unidades de L* más claro.",
      ],
      [
        "tints",
        "Rebajes",
        "Lo que un color hace en un blanco viene de nuestras propias aplicaciones. Dos constantes, absorción K y dispersión S, se ajustan juntas a todas las aplicaciones de un color (Kubelka y Munk), después de descontar la superficie. Los pasos intermedios se prevén y se marcan así; cuanto más lejos de una aplicación, más inciertos. Nada se prevé del color solo. En un blanco en que un color no se probó, decimos qué cabe esperar donde otros colores se probaron en los dos: de ellos se sigue cuánto dispersan los dos blancos. Es una estimación, y un intervalo. Una aplicación que las demás contradicen se muestra y no se usa.",
      ],
      [
        "oil",
        "Aceite y acabado",
        "El índice de aceite es lo que pesamos; la absorción de aceite es lo justo para ligar el pigmento. La absorción y la densidad dan la CPVC, la fabricación da la PVC, y las dos juntas dicen si cabe esperar una película brillante o mate. Una medición con brillómetro sustituye la previsión.",
      ],
      [
        "drying",
        "Secado",
        "Partimos de los días que tarda el aceite de linaza solo, y multiplicamos por un factor para cada cosa: el aceite, el pigmento, el secante si lo hay, la película y la sala. Eso da un intervalo de días. Nuestro propio ensayo sustituye la estimación y se muestra con sus condiciones.",
      ],
      [
        "permanence",
        "Permanencia",
        "Una categoría viene de una exposición, o del dato de un proveedor; sin ninguna de las dos solo hay lo que hace prever la clase de pigmento. La ficha dice cuál de las tres es. La lana azul es otra escala. No damos años: ninguna exposición puede decir cuántos.",
      ],
      [
        "handling",
        "Manejo",
        "Si se ha declarado una etiqueta, esa tiene prioridad. Si no, se calcula a partir de las clasificaciones de los proveedores con las reglas de las mezclas, y cada indicación nombra el componente, su parte y el límite. Esto no es una ficha de datos de seguridad.",
      ],
    ],
  },
  sources: {
    heading: "Fuentes",
    lead: "Los textos detrás de las cifras, y hasta dónde usamos cada uno: leído, calculado a partir de él, o citado de memoria.",
    groups: { used: "Usadas en estas fichas", other: "A mano, no usadas aquí" },
    standings: {
      read: "leído",
      derived: "calculado a partir de",
      memory: "citado de memoria",
      practice: "práctica común",
    },
  },
  about: {
    heading: "Acerca de",
    lead: (workshop) => `Qué es ${workshop}, y qué son estas fichas.`,
    revision: (revision) => `Todas las fichas juntas: revisión ${revision}.`,
    sections: [
      [
        "sheets",
        "Qué es una ficha",
        "Una ficha se calcula a partir de nuestros registros: lo que entró en la fabricación, absorciones de aceite, aplicaciones medidas con un instrumento o igualadas a ojo, ensayos de secado, exposiciones, documentos de los proveedores. Cada cifra dice cómo se sabe. Donde no sabemos, dice qué haría falta.",
      ],
      [
        "limits",
        "Qué no es",
        "Una ficha no es una ficha de datos de seguridad ni un certificado. Fíese de una muestra pintada, no de la pantalla.",
      ],
    ],
  },
  blacks: BLACKS_PAGES,
  mixture: MIXTURE_PAGES,
  mixing: MIXING_PAGES,
  paint: PAINT_PAGES,
  listing: LISTING,
  photographs: PHOTOGRAPHS,
  workshop: WORKSHOP_PAGES,
  lots: LOT_PAGES,
  optics: OPTICS_PAGES,
  labelPage: LABEL_PAGE,
  sheetPage: SHEET_PAGE,
  sheetPaper: SHEET_PAPER,
  cards: CARDS,
  changes: CHANGES,
  packageLabels: PACKAGE_LABELS,
  nextSteps: NEXT_STEPS,
  compare: COMPARE_PAGES,
  answers: ANSWER_PAGES,
  former: {
    gone: (name, date) =>
      date === undefined
        ? `${name} ya no está en este sitio.`
        : `${name} ya no está en este sitio desde el ${date}.`,
    replacedBy: (name) => `En su lugar: ${name}`,
  },
  notFound: {
    heading: "Página no encontrada",
    lead: "No hay nada en esta dirección. Puede que un color haya cambiado de nombre o salido de la gama.",
    link: "Todos los colores",
  },
};
