import type { MeasuredCoverage } from "../../optics/fit/measured-coverage.ts";
import type { MeasuredErrors } from "../../optics/fit/measured-errors.ts";
import { de, en, es, fr } from "../phrases-in-each.ts";
import { alike, type Texts } from "../texts.ts";
import type { InOthers } from "../in-each.ts";
import { OIL_AND_FINISH } from "../shared-rows.ts";

const MEASURED: Readonly<Record<MeasuredErrors["what"], InOthers>> = {
  "let-downs that hide": {
    de: "Aufhellungen, die decken",
    fr: "dégradés qui couvrent",
    es: "rebajes que cubren",
  },
  "all let-downs": { de: "alle Aufhellungen", fr: "tous les dégradés", es: "todos los rebajes" },
  "mixtures with black": {
    de: "Mischungen mit Schwarz",
    fr: "mélanges avec du noir",
    es: "mezclas con negro",
  },
  "in a white not tried": {
    de: "in einem nicht erprobten Weiß",
    fr: "dans un blanc non essayé",
    es: "en un blanco no probado",
  },
};

const COVERED: Readonly<Record<MeasuredCoverage["what"], InOthers>> = {
  "L*, a* and b* at another place of a drawdown, each": {
    de: "L*, a* und b* an einer anderen Stelle eines Aufstrichs, je für sich",
    fr: "L*, a* et b* à un autre endroit d’une application, chacun pour soi",
    es: "L*, a* y b* en otro lugar de una aplicación, cada uno por sí",
  },
  "L*, a* and b* of a let-down, each": {
    de: "L*, a* und b* einer Aufhellung, je für sich",
    fr: "L*, a* et b* d’un dégradé, chacun pour soi",
    es: "L*, a* y b* de un rebaje, cada uno por sí",
  },
  "mass ratio at a lightness": {
    de: "Massenverhältnis bei einer Helligkeit",
    fr: "rapport des masses à une clarté",
    es: "relación de masas a una luminosidad",
  },
  "strength beside another colour": {
    de: "Farbstärke, verglichen mit einer anderen Farbe",
    fr: "pouvoir colorant à côté d’une autre couleur",
    es: "poder colorante junto a otro color",
  },
  "contrast ratio of a mixture's film": {
    de: "Kontrastverhältnis des Films einer Mischung",
    fr: "rapport de contraste du film d’un mélange",
    es: "relación de contraste de la película de una mezcla",
  },
  "contrast ratio of a film that hides": {
    de: "Kontrastverhältnis eines Films, der deckt",
    fr: "rapport de contraste d’un film qui couvre",
    es: "relación de contraste de una película que cubre",
  },
};

/** The page Methods. */
export const METHODS = {
  heading: { en: "Methods", de: "Verfahren", fr: "Méthodes", es: "Métodos" },
  lead: {
    en: "How we came by each figure, and how far to trust it.",
    de: "Woher wir jeden Wert haben und wie weit ihm zu trauen ist.",
    fr: "D’où nous tenons chaque chiffre, et jusqu’où s’y fier.",
    es: "De dónde sale cada cifra, y hasta dónde fiarse.",
  },

  /** Below the section on tints. */
  measured: (rows: readonly MeasuredErrors[], areInvented: boolean) => ({
    en: [
      "How far such predictions lie from measured oil paints, in \u0394E00. Each let-down is left out and predicted from the others; a mixture is predicted from its two colours, and a colour in barytes or chalk from its let-downs in zinc white, through one other colour that was let down in both. With films: drawdowns over black and white told the fit how each paint scatters. The last two columns count those that lie within the 68 and the 90 % that we print beside a prediction.",
      "",
      "| | | how many | middle one | nine of ten within | inside 68\u00a0% | inside 90\u00a0% |",
      "|---|---|--:|--:|--:|--:|--:|",
      ...rows.map(
        ({ what, films, count, median, p90, inside68, inside90 }) =>
          `| ${what} | ${films ? "with films" : "without films"} | ${count} | ${en.NUMBERS.decimal(median, 1)} | ${en.NUMBERS.decimal(p90, 1)} | ${inside68} | ${inside90} |`,
      ),
      "",
      `A \u00b1 on a sheet goes by that colour\u2019s own readings, so it is narrower or wider than these.${areInvented ? " The readings of this demonstration were made by a program and agree far better than drawdowns of paint do: of paint expect the errors of this table, not the small \u00b1 of these sheets." : ""}`,
    ].join("\n"),
    de: [
      "Wie weit solche Vorhersagen von gemessenen Ölfarben liegen, in \u0394E00. Jede Aufhellung wird einmal weggelassen und aus den anderen vorhergesagt; eine Mischung wird aus ihren beiden Farben vorhergesagt, und eine Farbe in Schwerspat oder Kreide aus ihren Aufhellungen in Zinkweiß, über eine andere Farbe, die in beiden aufgehellt wurde. Mit Filmen: Aufstriche über Schwarz und Weiß zeigten der Anpassung, wie stark jede Farbe streut. Die letzten beiden Spalten zählen, was innerhalb der 68 und der 90\u00a0% liegt, die wir neben eine Vorhersage drucken.",
      "",
      "| | | wie viele | mittlere | neun von zehn innerhalb | innerhalb 68\u00a0% | innerhalb 90\u00a0% |",
      "|---|---|--:|--:|--:|--:|--:|",
      ...rows.map(
        ({ what, films, count, median, p90, inside68, inside90 }) =>
          `| ${MEASURED[what].de} | ${films ? "mit Filmen" : "ohne Filme"} | ${count} | ${de.NUMBERS.decimal(median, 1)} | ${de.NUMBERS.decimal(p90, 1)} | ${inside68} | ${inside90} |`,
      ),
      "",
      `Ein \u00b1 auf einem Blatt richtet sich nach den Messungen dieser Farbe und ist darum enger oder weiter als diese Werte.${areInvented ? " Die Messungen dieser Demonstration hat ein Programm gemacht; sie stimmen weit besser überein als Aufstriche von Farbe: Bei wirklicher Farbe sind die Fehler dieser Tabelle zu erwarten, nicht das kleine \u00b1 dieser Blätter." : ""}`,
    ].join("\n"),
    fr: [
      "De combien de telles prévisions s’écartent des peintures à l’huile mesurées, en \u0394E00. Chaque dégradé est écarté et prévu d’après les autres\u202f; un mélange est prévu d’après ses deux couleurs, et une couleur dans la barytine ou la craie d’après ses dégradés dans le blanc de zinc, par une autre couleur dégradée dans les deux. Avec films\u202f: des applications sur noir et blanc ont dit à l’ajustement comment chaque peinture diffuse. Les deux dernières colonnes comptent celles qui restent dans les intervalles à 68 et à 90\u00a0% que nous imprimons à côté d’une prévision.",
      "",
      "| | | nombre | médiane | neuf sur dix en deçà de | dans les 68\u00a0% | dans les 90\u00a0% |",
      "|---|---|--:|--:|--:|--:|--:|",
      ...rows.map(
        ({ what, films, count, median, p90, inside68, inside90 }) =>
          `| ${MEASURED[what].fr} | ${films ? "avec films" : "sans films"} | ${count} | ${fr.NUMBERS.decimal(median, 1)} | ${fr.NUMBERS.decimal(p90, 1)} | ${inside68} | ${inside90} |`,
      ),
      "",
      `Un \u00b1 d’une fiche dépend des mesures de cette couleur\u202f: il est plus étroit ou plus large que ces chiffres.${areInvented ? " Les mesures de cette démonstration ont été faites par un programme et s’accordent bien mieux que celles d’une vraie peinture\u202f: d’une peinture, attendez les erreurs de ce tableau, non le petit \u00b1 de ces fiches." : ""}`,
    ].join("\n"),
    es: [
      "Cuánto distan tales previsiones de óleos medidos, en \u0394E00. Cada rebaje se deja fuera y se prevé a partir de los demás; una mezcla se prevé a partir de sus dos colores, y un color en barita o creta a partir de sus rebajes en blanco de cinc, a través de otro color rebajado en los dos. Con películas: aplicaciones sobre negro y blanco dijeron al ajuste cuánto dispersa cada pintura. Las dos últimas columnas cuentan las que quedan dentro de los intervalos del 68 y del 90\u00a0% que imprimimos junto a una previsión.",
      "",
      "| | | número | mediana | nueve de diez dentro de | dentro del 68\u00a0% | dentro del 90\u00a0% |",
      "|---|---|--:|--:|--:|--:|--:|",
      ...rows.map(
        ({ what, films, count, median, p90, inside68, inside90 }) =>
          `| ${MEASURED[what].es} | ${films ? "con películas" : "sin películas"} | ${count} | ${es.NUMBERS.decimal(median, 1)} | ${es.NUMBERS.decimal(p90, 1)} | ${inside68} | ${inside90} |`,
      ),
      "",
      `Un \u00b1 de una ficha depende de las mediciones de ese color: es más estrecho o más ancho que estas cifras.${areInvented ? " Las mediciones de esta demostración las hizo un programa y concuerdan mucho mejor que las de una pintura real: de una pintura espere los errores de esta tabla, no el pequeño \u00b1 de estas fichas." : ""}`,
    ].join("\n"),
  }),
  /** Below that: other figures with a \u00b1, and what was never held against paint. */
  coverage: (rows: readonly MeasuredCoverage[]) => ({
    en: [
      "Other figures that we print with a \u00b1, held against the same paints: how many lie within it, and how many within 1.645 times as much, as nine in ten should.",
      "",
      "| | how many | inside 68\u00a0% | inside 90\u00a0% |",
      "|---|--:|--:|--:|",
      ...rows.map(
        ({ what, count, inside68, inside90 }) =>
          `| ${what} | ${count} | ${inside68} | ${inside90} |`,
      ),
      "",
      "What we print of oil, drying days, lightfastness and the film that hides has been held against no such paint: no film of a known thickness and no drying was recorded with them. Of fourteen paints of which an old handbook says what oil they took, twelve lie within the range that we would give by the pigment\u2019s name; the siennas took more.",
    ].join("\n"),
    de: [
      "Andere Werte, die wir mit einem \u00b1 drucken, an denselben Farben geprüft: wie viele innerhalb liegen und wie viele innerhalb des 1,645-Fachen, wo neun von zehn liegen sollten.",
      "",
      "| | wie viele | innerhalb 68\u00a0% | innerhalb 90\u00a0% |",
      "|---|--:|--:|--:|",
      ...rows.map(
        ({ what, count, inside68, inside90 }) =>
          `| ${COVERED[what].de} | ${count} | ${inside68} | ${inside90} |`,
      ),
      "",
      "Was wir zu Öl, Trockentagen, Lichtechtheit und deckendem Film drucken, ist an keiner solchen Farbe geprüft: Von ihnen ist weder ein Film bekannter Dicke noch die Trocknung aufgezeichnet. Von vierzehn Farben, deren Öl ein altes Handbuch nennt, liegen zwölf in dem Bereich, den wir nach dem Namen des Pigments angeben würden; die Sienas nahmen mehr Öl auf.",
    ].join("\n"),
    fr: [
      "D’autres chiffres que nous imprimons avec un \u00b1, confrontés aux mêmes peintures\u202f: combien y restent, et combien dans 1,645 fois autant, comme il en faudrait neuf sur dix.",
      "",
      "| | combien | dans les 68\u00a0% | dans les 90\u00a0% |",
      "|---|--:|--:|--:|",
      ...rows.map(
        ({ what, count, inside68, inside90 }) =>
          `| ${COVERED[what].fr} | ${count} | ${inside68} | ${inside90} |`,
      ),
      "",
      "Ce que nous imprimons de l’huile, des jours de séchage, de la tenue à la lumière et du film qui couvre n’a été confronté à aucune de ces peintures\u202f: aucun film d’épaisseur connue ni aucun séchage n’y est consigné. De quatorze peintures dont un vieux manuel dit l’huile, douze restent dans l’intervalle que nous donnerions d’après le nom du pigment\u202f; les terres de Sienne en prenaient plus.",
    ].join("\n"),
    es: [
      "Otras cifras que imprimimos con un \u00b1, comparadas con las mismas pinturas: cuántas quedan dentro, y cuántas dentro de 1,645 veces tanto, como deberían nueve de cada diez.",
      "",
      "| | cuántos | dentro del 68\u00a0% | dentro del 90\u00a0% |",
      "|---|--:|--:|--:|",
      ...rows.map(
        ({ what, count, inside68, inside90 }) =>
          `| ${COVERED[what].es} | ${count} | ${inside68} | ${inside90} |`,
      ),
      "",
      "Lo que imprimimos del aceite, los días de secado, la solidez a la luz y la película que cubre no se ha comparado con ninguna de esas pinturas: de ellas no consta ninguna película de espesor conocido ni ningún secado. De catorce pinturas cuyo aceite da un viejo manual, doce quedan en el intervalo que daríamos por el nombre del pigmento; las tierras de Siena tomaban más.",
    ].join("\n"),
  }),
  sections: [
    [
      alike("colour"),
      { en: "Colour", de: "Farbe", fr: "Couleur", es: "Color" },
      {
        en: "A reading is a list of reflectance factors. It is summed against the CIE tables to X, Y, Z and L*, a*, b* for each light and observer, scaled so that a perfect white comes out as the CIE white. Munsell notations are those of the renotation, interpolated in LCHab. Screen colours are for D65 and the 2\u00b0 observer. We name the geometry beside each reading: with the shine in it, a black reads 13 to 23 units of L* lighter. The \u00b1 of a masstone is that of its drawdown: what the instrument errs by, and what one place of a drawdown differs by from another. Of 22 measured oil paints that hid their chart, the two halves of one drawdown lay within 0.2 of each other two times in three, in L*, a* and b* each; within 0.35 nineteen times in twenty; and once 2.2 apart. None of these paints was drawn down twice: what another drawdown differs by, or another batch, the \u00b1 does not say.",
        de: "Eine Messung ist eine Reihe von Reflexionsgraden. Daraus werden mit den CIE-Tabellen X, Y, Z und L*, a*, b* errechnet, für jedes Licht und jeden Beobachter und so skaliert, dass ein vollkommenes Weiß als CIE-Weiß herauskommt. Munsell-Notationen sind die der Renotation, in LCHab interpoliert. Bildschirmfarben gelten für D65 und den 2\u00b0-Beobachter. Neben jeder Messung nennen wir die Geometrie: Mit Glanz gemessen ist ein Schwarz um 13 bis 23 Einheiten L* heller. Das \u00b1 eines Volltons ist das seines Aufstrichs: worum das Messgerät irrt und worum eine Stelle eines Aufstrichs von einer anderen abweicht. Bei 22 gemessenen Ölfarben, die ihre Prüfkarte deckten, lagen die beiden Hälften eines Aufstrichs in L*, a* und b* zwei von drei Malen höchstens 0,2 auseinander, neunzehn von zwanzig Malen höchstens 0,35 und einmal 2,2. Keine dieser Farben wurde zweimal aufgestrichen: Worum ein anderer Aufstrich oder ein anderer Ansatz abweicht, sagt das \u00b1 nicht.",
        fr: "Une mesure est une liste de facteurs de réflectance. Les tables de la CIE en donnent, par sommation, X, Y, Z et L*, a*, b* pour chaque lumière et chaque observateur, à une échelle où un blanc parfait donne le blanc de la CIE. Les notations Munsell sont celles de la renotation, interpolées en LCHab. Les couleurs d’écran valent pour D65 et l’observateur 2\u00b0. Nous nommons la géométrie à côté de chaque mesure\u202f: reflet inclus, un noir est de 13 à 23 unités de L* plus clair. Le \u00b1 d’un ton plein est celui de son application\u202f: l’erreur de l’instrument, et l’écart d’un endroit de l’application à un autre. Sur 22 peintures à l’huile mesurées qui couvraient leur carte, les deux moitiés d’une application étaient, pour L*, a* et b* chacun, à 0,2 au plus l’une de l’autre deux fois sur trois, à 0,35 au plus dix-neuf fois sur vingt, et une fois à 2,2. Aucune de ces peintures n’a été appliquée deux fois\u202f: ce dont une autre application ou une autre fabrication s’écarte, le \u00b1 ne le dit pas.",
        es: "Una medición es una lista de factores de reflectancia. Con las tablas de la CIE se obtienen de ella, por suma, X, Y, Z y L*, a*, b* para cada luz y observador, a una escala en que un blanco perfecto da el blanco de la CIE. Las notaciones Munsell son las de la renotación, interpoladas en LCHab. Los colores de pantalla valen para D65 y el observador de 2\u00b0. Nombramos la geometría junto a cada medición: con el brillo incluido, un negro resulta de 13 a 23 unidades de L* más claro. El \u00b1 de un tono pleno es el de su aplicación: lo que yerra el instrumento, y lo que un lugar de la aplicación difiere de otro. En 22 óleos medidos que cubrían su carta, las dos mitades de una aplicación distaban en L*, a* y b*, cada uno, como mucho 0,2 dos veces de cada tres, como mucho 0,35 diecinueve de cada veinte, y una vez 2,2. Ninguno de esos óleos se aplicó dos veces: en cuánto difiere otra aplicación, u otra fabricación, el \u00b1 no lo dice.",
      },
    ],
    [
      alike("tints"),
      { en: "Tints", de: "Aufhellungen", fr: "Dégradés", es: "Rebajes" },
      {
        en: "What a colour does in a white comes from our own drawdowns. Two constants, absorption K and scattering S, are fitted to all of a colour\u2019s drawdowns together (Kubelka and Munk), after the surface has been taken off. The steps between are predicted and marked so; the farther from a drawdown, the less certain. Nothing is predicted from the colour alone. In a white that a colour was not tried in, we say what to expect where other colours were tried in both: how strongly the two whites scatter follows from these. It is an estimate, and a range. A drawdown that the others contradict is shown and not used.",
        de: "Wie sich eine Farbe in einem Weiß verhält, wissen wir aus unseren eigenen Aufstrichen. Zwei Konstanten, Absorption K und Streuung S, werden an alle Aufstriche einer Farbe zusammen angepasst (Kubelka und Munk), nachdem der Anteil der Oberfläche abgezogen ist. Die Stufen dazwischen sind vorhergesagt und so gekennzeichnet; je weiter von einem Aufstrich, desto ungewisser. Aus der Farbe allein wird nichts vorhergesagt. Für ein Weiß, in dem eine Farbe nicht erprobt wurde, geben wir an, was zu erwarten ist, sofern andere Farben in beiden erprobt wurden: Aus ihnen folgt, wie stark jedes Weiß streut. Das ist eine Schätzung und ein Bereich. Ein Aufstrich, dem die anderen widersprechen, wird gezeigt und nicht verwendet.",
        fr: "Ce qu’une couleur donne dans un blanc, nous le savons par nos propres applications. Deux constantes, l’absorption K et la diffusion S, sont ajustées ensemble sur toutes les applications d’une couleur (Kubelka et Munk), une fois la surface ôtée. Les degrés intermédiaires sont prévus et marqués comme tels\u202f; plus ils sont loin d’une application, plus ils sont incertains. Rien n’est prévu d’après la couleur pure. Dans un blanc où une couleur n’a pas été essayée, nous disons à quoi s’attendre si d’autres couleurs l’ont été dans les deux blancs\u202f: ces couleurs nous disent combien les deux blancs diffusent. C’est une estimation, et un intervalle. Une application que les autres contredisent est montrée et n’est pas employée.",
        es: "Cómo queda un color en un blanco lo sabemos por nuestras propias aplicaciones. Dos constantes, absorción K y dispersión S, se ajustan juntas a todas las aplicaciones de un color (Kubelka y Munk), después de descontar la superficie. Los pasos intermedios se prevén y se marcan como tales; cuanto más lejos de una aplicación, más inciertos. Nada se prevé a partir del color puro. En un blanco en que un color no se probó, decimos qué cabe esperar si otros colores se probaron en los dos blancos: esos colores nos dicen cuánto dispersan los dos blancos. Es una estimación, y un intervalo. Una aplicación que las demás contradicen se muestra y no se usa.",
      },
    ],
    [
      alike("oil"),
      OIL_AND_FINISH,
      {
        en: "The oil index is what we weighed in; the rub-out figure is what just binds the pigment. The rub-out and the density give the CPVC, the batch gives the PVC, and the two together say whether to expect a gloss or a matte film. A reading with a gloss meter replaces the expectation.",
        de: "Der Ölindex ist, was wir eingewogen haben; die Ölzahl ist das Öl, das das Pigment gerade eben bindet. Ölzahl und Dichte ergeben die KPVK, der Ansatz ergibt die PVK, und beide zusammen sagen, ob ein glänzender oder ein matter Film zu erwarten ist. Eine Messung mit dem Glanzmessgerät ersetzt die Erwartung.",
        fr: "L’indice d’huile est ce que nous avons pesé\u202f; la prise d’huile est ce qui lie tout juste le pigment. La prise d’huile et la masse volumique donnent la CPVC, la fabrication donne la CPV, et les deux ensemble disent s’il faut prévoir un film brillant ou mat. Une mesure au brillancemètre remplace la prévision.",
        es: "El índice de aceite es lo que pesamos; la absorción de aceite es lo que basta justo para ligar el pigmento. La absorción de aceite y la densidad dan la CPVC, la fabricación da la PVC, y las dos juntas dicen si cabe esperar una película brillante o mate. Una medición con brillómetro sustituye la previsión.",
      },
    ],
    [
      alike("drying"),
      { en: "Drying", de: "Trocknung", fr: "Séchage", es: "Secado" },
      {
        en: "We start from the days that linseed oil takes alone, and multiply by a factor each for the oil, the pigment, any drier, the film and the room. That gives a range of days. Our own trial replaces the estimate and is shown with its conditions.",
        de: "Wir gehen von den Tagen aus, die Leinöl allein braucht, und multiplizieren mit je einem Faktor für das Öl, das Pigment, ein etwaiges Sikkativ, den Film und den Raum. Das ergibt einen Bereich von Tagen. Unser eigener Versuch ersetzt die Schätzung und wird mit seinen Bedingungen gezeigt.",
        fr: "Nous partons du nombre de jours que demande l’huile de lin seule, et le multiplions par un facteur pour chacun\u202f: l’huile, le pigment, le siccatif s’il y en a, le film et la pièce. Cela donne un intervalle de jours. Notre propre essai remplace l’estimation et est montré avec ses conditions.",
        es: "Partimos de los días que tarda el aceite de linaza solo, y los multiplicamos por un factor para cada cosa: el aceite, el pigmento, el secante si lo hay, la película y la sala. Eso da un intervalo de días. Nuestro propio ensayo sustituye la estimación y se muestra con sus condiciones.",
      },
    ],
    [
      alike("permanence"),
      { en: "Permanence", de: "Beständigkeit", fr: "Permanence", es: "Permanencia" },
      {
        en: "A category comes from an exposure, or from a supplier\u2019s word; without either there is only what the kind of pigment leads us to expect. The sheet says which of the three it is. Blue wool is another scale. We give no years: no exposure can say how many.",
        de: "Eine Kategorie kommt aus einer Belichtung oder aus der Angabe eines Lieferanten; ohne beides bleibt nur, was die Art des Pigments erwarten lässt. Das Blatt sagt, was davon gilt. Die Blauwollskala ist eine andere Skala. Jahre nennen wir nicht: Keine Belichtung kann sagen, wie viele.",
        fr: "Une catégorie vient d’une exposition, ou de l’indication d’un fournisseur\u202f; sans l’une ni l’autre, il n’y a que ce que la sorte de pigment fait prévoir. La fiche dit lequel des trois cas s’applique. La laine bleue est une autre échelle. Nous ne donnons pas d’années\u202f: aucune exposition ne peut dire combien.",
        es: "Una categoría viene de una exposición, o del dato de un proveedor; sin ninguna de las dos solo hay lo que hace prever la clase de pigmento. La ficha dice cuál de los tres casos es. La lana azul es otra escala. No damos años: ninguna exposición puede decir cuántos.",
      },
    ],
    [
      alike("handling"),
      { en: "Handling", de: "Umgang", fr: "Manipulation", es: "Manipulación" },
      {
        en: "Where a label has been stated it comes first. If not, it is worked out from the suppliers\u2019 classifications by the rules for mixtures, and each statement names the ingredient, its share and the limit. This is not a safety data sheet.",
        de: "Ist ein Etikett angegeben, so geht es vor. Wenn nicht, wird es aus den Einstufungen der Lieferanten nach den Regeln für Gemische errechnet, und jeder Hinweis nennt den Bestandteil, dessen Anteil und den Grenzwert. Das ist kein Sicherheitsdatenblatt.",
        fr: "Si une étiquette a été déclarée, elle prime. Sinon elle est calculée d’après les classements des fournisseurs selon les règles des mélanges, et chaque mention nomme le composant, sa part et la limite. Ceci n’est pas une fiche de données de sécurité.",
        es: "Si se ha declarado una etiqueta, esa tiene prioridad. Si no, se calcula a partir de las clasificaciones de los proveedores con las reglas de las mezclas, y cada indicación nombra el componente, su proporción y el límite. Esto no es una ficha de datos de seguridad.",
      },
    ],
  ] as const,
} satisfies Texts;
