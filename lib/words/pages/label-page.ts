import type { Texts } from "../texts.ts";
import { COLOUR_INDEX_NAME, LIGHTFASTNESS } from "../shared-rows.ts";

/** How to read a label and a sheet. Where a line needs a figure the page takes it from a sheet. */
export const LABEL_PAGE = {
  heading: {
    en: "Reading a label",
    de: "Ein Etikett lesen",
    fr: "Lire une étiquette",
    es: "Leer una etiqueta",
  },
  lead: {
    en: "A tube has room for a few lines. What each of them says, what it leaves out, and what a sheet adds.",
    de: "Auf einer Tube ist Platz für wenige Zeilen. Was jede davon sagt, was sie auslässt und was ein Blatt hinzufügt.",
    fr: "Un tube n’a de place que pour quelques lignes. Ce que dit chacune, ce qu’elle tait, et ce qu’une fiche y ajoute.",
    es: "En un tubo caben pocas líneas. Qué dice cada una, qué calla, y qué añade una ficha.",
  },
  columns: {
    line: { en: "Line", de: "Zeile", fr: "Ligne", es: "Línea" },
    says: { en: "What it says", de: "Was sie sagt", fr: "Ce qu’elle dit", es: "Qué dice" },
    here: (name: string) => ({
      en: `On ${name}`,
      de: `Auf ${name}`,
      fr: `Sur ${name}`,
      es: `En ${name}`,
    }),
  },
  label: {
    heading: {
      en: "The lines of a label",
      de: "Die Zeilen eines Etiketts",
      fr: "Les lignes d’une étiquette",
      es: "Las líneas de una etiqueta",
    },
    caption: {
      en: "Line by line",
      de: "Zeile für Zeile",
      fr: "Ligne à ligne",
      es: "Línea a línea",
    },
    lines: {
      name: {
        line: { en: "Name", de: "Name", fr: "Nom", es: "Nombre" },
        says: {
          en: "The maker's own. It may be historic or invented, and does not say which pigment is inside; one name can stand for several.",
          de: "Der des Herstellers. Er kann historisch oder erfunden sein und sagt nicht, welches Pigment darin ist; ein Name kann für mehrere stehen.",
          fr: "Celui du fabricant. Il peut être historique ou inventé, et ne dit pas quel pigment est dedans\u202f; un nom peut en désigner plusieurs.",
          es: "El del fabricante. Puede ser histórico o inventado, y no dice qué pigmento hay dentro; un nombre puede valer por varios.",
        },
      },
      pigment: {
        line: { en: "Pigment", de: "Pigment", fr: "Pigment", es: "Pigmento" },
        says: {
          en: "In words and by its Colour Index generic name: P for pigment or N for a natural one, letters for the hue, a number. It names a kind of pigment; maker, shade and quality still differ.",
          de: "In Worten und mit seinem Colour-Index-Namen: P für Pigment oder N für ein natürliches, Buchstaben für den Buntton, eine Nummer. Er nennt eine Art von Pigment; je nach Hersteller, Farbton und Güte gibt es trotzdem Unterschiede.",
          fr: "En mots et par son nom générique du Colour Index\u202f: P pour un pigment ou N pour un colorant naturel, des lettres pour la teinte, un numéro. Il nomme une sorte de pigment\u202f; fabricant, nuance et qualité diffèrent encore.",
          es: "En palabras y por su nombre genérico del Colour Index: P de pigmento o N de natural, letras para el matiz, un número. Nombra una clase de pigmento; fabricante, tono y calidad aún difieren.",
        },
      },
      vehicle: {
        line: { en: "Vehicle", de: "Bindemittel", fr: "Liant", es: "Aglutinante" },
        says: {
          en: "The oil that binds it, and what was added. It sets how the film yellows and helps to set how fast it dries.",
          de: "Das Öl, das die Farbe bindet, und was zugesetzt wurde. Das Bindemittel bestimmt, wie der Film vergilbt, und mit darüber, wie schnell er trocknet.",
          fr: "L’huile qui le lie, et ce qu’on y a ajouté. Il décide du jaunissement du film et compte pour la vitesse du séchage.",
          es: "El aceite que lo liga, y lo que se añadió. Decide cómo amarillea la película e influye en la rapidez con que seca.",
        },
      },
      lightfastness: {
        line: LIGHTFASTNESS,
        says: {
          en: "A category from I to V only where the exposures of a standard were made, or as somebody's word; else what was done instead, or that nothing was.",
          de: "Eine Kategorie von I bis V nur, wo nach einer Norm belichtet wurde, oder als Angabe eines anderen; sonst steht da, was stattdessen geprüft wurde oder dass nichts geprüft wurde.",
          fr: "Une catégorie de I à V seulement si les expositions d’une norme ont été faites, ou sur la déclaration d’autrui\u202f; sinon ce qu’on a fait à la place, ou que rien n’a été fait.",
          es: "Una categoría de I a V solo donde se hicieron las exposiciones de una norma, o por declaración ajena; si no, qué se hizo en su lugar, o que no se hizo nada.",
        },
      },
      hazards: {
        line: { en: "Hazards", de: "Gefahren", fr: "Dangers", es: "Peligros" },
        says: {
          en: "Signal word, pictograms and statements in fixed words. They are about the paint in the tube; dust from sanding it and the dry pigment can be worse.",
          de: "Signalwort, Piktogramme und Hinweise in festem Wortlaut. Sie gelten für die Farbe in der Tube; Schleifstaub und trockenes Pigment können gefährlicher sein.",
          fr: "Mention d’avertissement, pictogrammes et mentions en termes fixes. Ils concernent la peinture dans le tube\u202f; la poussière de ponçage et le pigment sec peuvent être pires.",
          es: "Palabra de advertencia, pictogramas e indicaciones en términos fijos. Tratan de la pintura en el tubo; el polvo de lijarla y el pigmento seco pueden ser peores.",
        },
      },
      contents: {
        line: { en: "Contents", de: "Inhalt", fr: "Contenu", es: "Contenido" },
        says: {
          en: "Millilitres, since paint is used by volume. The same tube weighs far more with a dense pigment in it.",
          de: "Milliliter, denn Farbe wird nach Volumen verbraucht. Dieselbe Tube wiegt mit einem dichten Pigment weit mehr.",
          fr: "En millilitres, puisque la peinture s’emploie au volume. Le même tube pèse bien plus avec un pigment dense.",
          es: "Mililitros, porque la pintura se usa por volumen. El mismo tubo pesa mucho más con un pigmento denso.",
        },
      },
      lot: {
        line: { en: "Lot", de: "Charge", fr: "Lot", es: "Lote" },
        says: {
          en: "Which batch it was: the thing to quote when something is wrong. Lots of one colour differ a little.",
          de: "Aus welchem Ansatz die Farbe stammt: Nennen Sie die Charge, wenn etwas nicht stimmt. Chargen einer Farbe unterscheiden sich ein wenig.",
          fr: "De quelle fabrication il vient\u202f: c’est ce qu’il faut citer quand quelque chose ne va pas. Les lots d’une couleur diffèrent un peu.",
          es: "De qué fabricación salió: lo que hay que citar cuando algo va mal. Los lotes de un color difieren un poco.",
        },
      },
    },
    nothing: {
      en: "no warning: the suppliers' papers call for none",
      de: "kein Warnhinweis: Die Unterlagen der Lieferanten verlangen keinen",
      fr: "pas d’avertissement\u202f: les documents des fournisseurs n’en demandent aucun",
      es: "ninguna advertencia: los documentos de los proveedores no piden ninguna",
    },
    lot: {
      en: "written in by hand",
      de: "von Hand eingetragen",
      fr: "écrit à la main",
      es: "escrito a mano",
    },
    holds: (ml: string, grams: string) => ({
      en: `${ml}, which hold ${grams} of paint`,
      de: `${ml}, das sind ${grams} Farbe`,
      fr: `${ml}, soit ${grams} de peinture`,
      es: `${ml}, que contienen ${grams} de pintura`,
    }),
    noSize: {
      en: "no size is recorded",
      de: "keine Größe aufgezeichnet",
      fr: "aucune contenance n’est consignée",
      es: "no hay ningún tamaño registrado",
    },
    unsaid: {
      en: "A label has no room for what the colour does in a white, how much oil is in it, when it is dry, and how any of that is known. That is what its sheet is for.",
      de: "Ein Etikett hat keinen Platz dafür, wie sich die Farbe in Weiß verhält, wie viel Öl darin ist, wann sie trocken ist und woher das alles bekannt ist. Dafür ist ihr Blatt da.",
      fr: "Une étiquette n’a pas la place de dire ce que la couleur donne dans un blanc, combien d’huile elle contient, quand elle est sèche, et d’où l’on sait tout cela. C’est l’affaire de sa fiche.",
      es: "En una etiqueta no cabe cómo queda el color en un blanco, cuánto aceite lleva, cuándo está seco, y cómo se sabe todo ello. Para eso está su ficha.",
    },
  },
  studio: {
    heading: {
      en: "What holds for every colour",
      de: "Was für jede Farbe gilt",
      fr: "Ce qui vaut pour toute couleur",
      es: "Lo que vale para todo color",
    },
    text: {
      en: "These cautions hold in every studio and workshop, whichever colour is on the table, and so they stand here once. What is particular to a colour stands on its sheet, first; a label and a safety data sheet prevail, and local codes and licensed practice come before anything that is said here.",
      de: "Diese Vorsichtsregeln gelten in jedem Atelier und jeder Werkstatt, gleich welche Farbe auf dem Tisch liegt; deshalb stehen sie hier ein einziges Mal. Was nur für eine Farbe gilt, steht zuoberst auf ihrem Blatt. Etikett und Sicherheitsdatenblatt gehen vor, ebenso örtliche Vorschriften und zugelassene Fachleute.",
      fr: "Ces précautions valent dans tout atelier, quelle que soit la couleur sur la table\u202f; elles sont donc dites ici une fois. Ce qui est propre à une couleur est sur sa fiche, en premier\u202f; une étiquette et une fiche de données de sécurité prévalent, et les règlements locaux et les pratiques agréées passent avant tout ce qui est dit ici.",
      es: "Estas precauciones valen en todo estudio y taller, sea cual sea el color que esté sobre la mesa, y por eso están aquí una vez. Lo propio de un color está en su ficha, en primer lugar; prevalecen la etiqueta y la ficha de datos de seguridad, y los reglamentos locales y las prácticas autorizadas van antes que todo lo que aquí se dice.",
    },
    caption: {
      en: "In every studio",
      de: "In jedem Atelier",
      fr: "Dans tout atelier",
      es: "En todo estudio",
    },
    dust: {
      en: "A dry pigment goes up as dust: treat it as very dusty unless its bulk density says otherwise.",
      de: "Ein trockenes Pigment staubt: Behandeln Sie es als stark staubend, sofern seine Schüttdichte nichts anderes sagt.",
      fr: "Un pigment sec s’envole en poussière\u202f: le traiter comme s’il dégageait beaucoup de poussière, sauf si sa masse volumique apparente dit autre chose.",
      es: "Un pigmento seco se levanta en polvo: tratarlo como si levantara mucho polvo, salvo que su densidad aparente diga otra cosa.",
    },
    columns: {
      operation: { en: "At", de: "Bei", fr: "Opération", es: "Al" },
      caution: {
        en: "What to do, and what to leave",
        de: "Was zu tun und was zu lassen ist",
        fr: "Ce qu’il faut faire, et ne pas faire",
        es: "Qué hacer, y qué no",
      },
      reason: { en: "Why", de: "Warum", fr: "Pourquoi", es: "Por qué" },
    },
  },
  pigments: {
    heading: {
      en: "One pigment or several",
      de: "Ein Pigment oder mehrere",
      fr: "Un pigment ou plusieurs",
      es: "Un pigmento o varios",
    },
    caption: {
      en: "Colours of more than one pigment",
      de: "Farben aus mehr als einem Pigment",
      fr: "Couleurs de plus d’un pigment",
      es: "Colores de más de un pigmento",
    },
    text: (single: number, all: number) => ({
      en: `Of the ${all} colours here ${single} ${single === 1 ? "is" : "are"} made of a single pigment. Look at how many Colour Index names a label gives: one name is one kind of pigment, which mixes cleanly and behaves alike in every layer. Several names are a mixture that could be made on the palette; it is sold because it is handy, or stands in for a pigment that is dear, harmful or fugitive.`,
      de: `Von den ${all} Farben hier ${single === 1 ? "ist" : "sind"} ${single} aus einem einzigen Pigment gemacht. Sehen Sie nach, wie viele Colour-Index-Namen ein Etikett nennt: Ein Name steht für eine Art von Pigment, die sich rein mischen lässt und sich in jeder Schicht gleich verhält. Mehrere Namen stehen für eine Mischung, die sich auch auf der Palette herstellen ließe; verkauft wird sie, weil sie praktisch ist oder ein Pigment ersetzt, das teuer, gesundheitsschädlich oder nicht lichtecht ist.`,
      fr: `Des ${all} couleurs d’ici, ${single} ${single === 1 ? "est faite" : "sont faites"} d’un seul pigment. Il faut regarder combien de noms du Colour Index une étiquette donne\u202f: un seul nom est une seule sorte de pigment, qui se mélange proprement et se comporte de la même façon dans chaque couche. Plusieurs noms sont un mélange qu’on pourrait faire sur la palette\u202f; il se vend parce qu’il est commode, ou remplace un pigment cher, nocif ou fugace.`,
      es: `De los ${all} colores de aquí, ${single} ${single === 1 ? "está hecho" : "están hechos"} de un solo pigmento. Mire cuántos nombres del Colour Index da una etiqueta: un nombre es una clase de pigmento, que mezcla limpio y se comporta igual en cada capa. Varios nombres son una mezcla que podría hacerse en la paleta; se vende porque es cómoda, o sustituye a un pigmento caro, nocivo o fugaz.`,
    }),
    columns: {
      colour: { en: "Colour", de: "Farbe", fr: "Couleur", es: "Color" },
      pigments: { en: "Pigments", de: "Pigmente", fr: "Pigments", es: "Pigmentos" },
      weakest: {
        en: "Least lightfast",
        de: "Am wenigsten lichtecht",
        fr: "Le moins solide à la lumière",
        es: "El menos sólido a la luz",
      },
    },
    alike: {
      en: "alike, as far as is known",
      de: "gleich, soweit bekannt",
      fr: "semblables, pour autant qu’on sache",
      es: "iguales, hasta donde se sabe",
    },
    unknown: { en: "not known", de: "nicht bekannt", fr: "inconnu", es: "no se sabe" },
    none: {
      en: "No colour here is a mixture.",
      de: "Keine Farbe hier ist eine Mischung.",
      fr: "Aucune couleur d’ici n’est un mélange.",
      es: "Ningún color de aquí es una mezcla.",
    },
  },
  names: {
    heading: {
      en: "One name, several colours",
      de: "Ein Name, mehrere Farben",
      fr: "Un nom, plusieurs couleurs",
      es: "Un nombre, varios colores",
    },
    caption: {
      en: "Colour Index names that more than one pigment here goes by",
      de: "Colour-Index-Namen, die hier mehr als ein Pigment trägt",
      fr: "Noms du Colour Index que portent ici plusieurs pigments",
      es: "Nombres del Colour Index que aquí llevan varios pigmentos",
    },
    text: {
      en: "A Colour Index name covers everything of one constitution: raw and burnt earths share a name, and so do a coarse and a fine grade. Nor does a name follow from a CAS number: lamp black (PBk 6) and gas-made carbon black (PBk 7) have one number between them, and differ in grain, in oil and in what they do in a white.",
      de: "Ein Colour-Index-Name umfasst alles von gleichem chemischem Aufbau: Rohe und gebrannte Erden teilen sich einen Namen, ebenso eine grobe und eine feine Sorte. Aus einer CAS-Nummer folgt der Name auch nicht: Lampenruß (PBk 6) und aus Gas gewonnener Ruß (PBk 7) haben eine gemeinsame Nummer und unterscheiden sich im Korn, im Öl und im Verhalten in Weiß.",
      fr: "Un nom du Colour Index couvre tout ce qui a une même constitution\u202f: terres naturelles et brûlées partagent un nom, comme une qualité grossière et une qualité fine. Un numéro CAS ne donne pas non plus le nom\u202f: le noir de fumée (PBk 6) et le noir de carbone au gaz (PBk 7) ont un même numéro, et diffèrent par le grain, par l’huile et par ce qu’ils donnent dans un blanc.",
      es: "Un nombre del Colour Index abarca todo lo de una misma constitución: las tierras naturales y tostadas comparten un nombre, y también una calidad gruesa y una fina. Tampoco un número CAS da el nombre: el negro de humo (PBk 6) y el negro de carbono de gas (PBk 7) tienen un solo número, y difieren en el grano, en el aceite y en cómo quedan en un blanco.",
    },
    columns: {
      index: COLOUR_INDEX_NAME,
      pigments: { en: "Pigments", de: "Pigmente", fr: "Pigments", es: "Pigmentos" },
      colours: { en: "Colours", de: "Farben", fr: "Couleurs", es: "Colores" },
    },
  },
  drift: {
    heading: {
      en: "Why some mixed blacks drift",
      de: "Warum sich manches gemischte Schwarz verschiebt",
      fr: "Pourquoi certains noirs de mélange dérivent",
      es: "Por qué derivan algunos negros mezclados",
    },
    caption: {
      en: "Blacks and greys here that are mixed",
      de: "Gemischte Schwarz- und Grautöne hier",
      fr: "Les noirs et les gris d’ici qui sont des mélanges",
      es: "Los negros y grises de aquí que son mezclas",
    },
    text: {
      en: "A black of a single pigment can change in one way only: if light takes some of it, it grows lighter and keeps its hue. A mixed black is a balance: pigments of unlike hue are weighed so that together they look neutral. If one of them loses strength the balance tips, and the black drifts towards those that stay: towards brown where a blue or green gives way, towards green or blue where a red does. Light can tip it, and so can alkali, acid or heat, when they reach one pigment before the others; so can a white in which one of them merely looks weaker. In a mixture the least lightfast pigment decides; a mixture of pigments that last equally well hardly drifts.",
      de: "Ein Schwarz aus einem einzigen Pigment kann sich nur auf eine Art ändern: Nimmt ihm das Licht etwas, so wird es heller und behält seinen Buntton. Ein gemischtes Schwarz ist ein Gleichgewicht: Pigmente von ungleichem Buntton sind so abgewogen, dass sie zusammen neutral wirken. Verliert eines an Farbstärke, so kippt das Gleichgewicht, und das Schwarz verschiebt sich zu den Pigmenten hin, die bleiben: nach Braun, wo ein Blau oder Grün schwindet, nach Grün oder Blau, wo ein Rot schwindet. Kippen kann es durch Licht, aber auch durch Lauge, Säure oder Hitze, wenn sie ein Pigment vor den anderen angreifen, und durch ein Weiß, in dem eines nur schwächer wirkt. In einer Mischung entscheidet daher das am wenigsten lichtechte Pigment, und eine Mischung aus Pigmenten, die gleich lichtecht sind, verschiebt sich kaum.",
      fr: "Un noir d’un seul pigment ne peut changer que d’une façon\u202f: si la lumière en prend une part, il s’éclaircit et garde sa teinte. Un noir de mélange est un équilibre\u202f: des pigments de teintes différentes sont dosés pour que l’ensemble paraisse neutre. Si l’un perd de sa force, l’équilibre penche, et le noir dérive vers ceux qui restent\u202f: vers le brun quand cède un bleu ou un vert, vers le vert ou le bleu quand cède un rouge. La lumière peut le faire pencher, mais aussi les alcalis, les acides ou la chaleur, quand ils atteignent un pigment avant les autres, ou un blanc dans lequel l’un d’eux paraît seulement plus faible. Dans un mélange, le pigment le moins solide à la lumière décide donc\u202f; un mélange de pigments aussi solides les uns que les autres ne dérive guère.",
      es: "Un negro de un solo pigmento solo puede cambiar de una manera: si la luz se lleva una parte, se aclara y conserva su matiz. Un negro mezclado es un equilibrio: pigmentos de matices distintos se dosifican para que juntos parezcan neutros. Si uno pierde fuerza el equilibrio se inclina, y el negro deriva hacia los que quedan: hacia el pardo donde cede un azul o un verde, hacia el verde o el azul donde cede un rojo. Puede inclinarlo la luz, y también los álcalis, los ácidos o el calor cuando alcanzan un pigmento antes que los demás, o un blanco en el que uno de ellos solo parece más débil. En una mezcla decide, por tanto, el pigmento menos sólido a la luz; una mezcla de pigmentos igual de sólidos apenas deriva.",
    },
    driftColumn: {
      en: "If it loses 30\u00a0% of one pigment",
      de: "Wenn ein Pigment 30\u00a0% verliert",
      fr: "S’il perd 30\u00a0% d’un pigment",
      es: "Si pierde el 30\u00a0% de un pigmento",
    },
    notReckoned: {
      en: "not reckoned here",
      de: "hier nicht errechnet",
      fr: "non calculé ici",
      es: "no calculado aquí",
    },
    none: {
      en: "No black or grey here is mixed.",
      de: "Kein Schwarz oder Grau hier ist gemischt.",
      fr: "Aucun noir ni gris d’ici n’est un mélange.",
      es: "Ningún negro ni gris de aquí es una mezcla.",
    },
  },
  sheet: {
    heading: {
      en: "The lines of a sheet",
      de: "Die Zeilen eines Blatts",
      fr: "Les lignes d’une fiche",
      es: "Las líneas de una ficha",
    },
    caption: {
      en: "The facts of a first screen",
      de: "Die Angaben oben auf dem Blatt",
      fr: "Les données du premier écran",
      es: "Los datos de la primera pantalla",
    },
    facts: {
      lasts: {
        en: "How it held, or is expected to hold, in light. The small print says which: exposed under the standard, exposed here, stated by somebody, or expected from its pigments and not tested.",
        de: "Wie lichtecht die Farbe ist oder voraussichtlich ist. Das Kleingedruckte sagt, woher das bekannt ist: nach der Norm belichtet, hier belichtet, von jemandem angegeben oder nach den Pigmenten zu erwarten und nicht geprüft.",
        fr: "Comment elle a tenu, ou devrait tenir, à la lumière. Les petits caractères le précisent\u202f: exposée selon la norme, exposée ici, déclarée par quelqu’un, ou à prévoir d’après ses pigments et non testée.",
        es: "Cómo aguantó, o se prevé que aguante, a la luz. La letra pequeña lo precisa: expuesto según la norma, expuesto aquí, declarado por alguien, o previsible por sus pigmentos y no ensayado.",
      },
      hides: {
        en: "How well a film covers black and white alike, and how thick a dry film has to be for it.",
        de: "Wie gut ein Film Schwarz und Weiß gleichermaßen deckt und wie dick ein trockener Film dafür sein muss.",
        fr: "Dans quelle mesure un film couvre à la fois le noir et le blanc, et quelle épaisseur de film sec il faut pour cela.",
        es: "Cuánto cubre una película el negro y el blanco por igual, y qué espesor de película seca hace falta para ello.",
      },
      dries: {
        en: "A class by the middle of the days to touch dry, for a film of the thickness and a room of the warmth that the sheet names. Touch dry is not through dry.",
        de: "Eine Klasse nach der Mitte der Tage bis grifftrocken, bei der Filmdicke und der Raumtemperatur, die das Blatt nennt. Grifftrocken ist nicht durchgetrocknet.",
        fr: "Une classe d’après le milieu des jours jusqu’au sec au toucher, pour un film de l’épaisseur et une pièce de la température qu’indique la fiche. Sec au toucher n’est pas sec à cœur.",
        es: "Una clase según el centro de los días hasta el secado al tacto, para una película del espesor y una sala de la temperatura que indica la ficha. Seco al tacto no es seco en profundidad.",
      },
      strength: {
        en: "How far a little of it goes in a white, tube for tube, beside the colour that the workshop compares with.",
        de: "Wie weit ein wenig davon in einem Weiß reicht, Tube zu Tube, verglichen mit der Bezugsfarbe der Werkstatt.",
        fr: "L’effet d’un peu de cette couleur dans un blanc, tube pour tube, par rapport à la couleur que l’atelier prend pour référence.",
        es: "El efecto de un poco de él en un blanco, tubo a tubo, en comparación con el color de referencia del taller.",
      },
      oil: {
        en: "Grams of oil in the paint to 100 g of pigment. High is no fault: a light, fine pigment needs it. By volume colours lie closer together.",
        de: "Gramm Öl in der Farbe auf 100\u00a0g Pigment. Viel Öl ist kein Fehler: Ein leichtes, feines Pigment braucht es. Nach Volumen liegen die Farben näher beieinander.",
        fr: "Grammes d’huile dans la peinture pour 100\u00a0g de pigment. Beaucoup n’est pas un défaut\u202f: un pigment fin et léger en a besoin. En volume, les couleurs sont plus proches.",
        es: "Gramos de aceite en la pintura por 100\u00a0g de pigmento. Mucho no es un defecto: un pigmento ligero y fino lo necesita. En volumen, los colores se parecen más.",
      },
      safety: {
        en: "The label's signal word, or that none is needed. Where nobody has classified a pigment the sheet says so: treat it as hazardous.",
        de: "Das Signalwort des Etiketts oder dass keines nötig ist. Hat niemand ein Pigment eingestuft, so steht auf dem Blatt: als gefährlich behandeln.",
        fr: "La mention d’avertissement de l’étiquette, ou qu’il n’en faut aucune. Là où personne n’a classé un pigment, la fiche le dit\u202f: à traiter comme dangereux.",
        es: "La palabra de advertencia de la etiqueta, o que no hace falta ninguna. Donde nadie ha clasificado un pigmento la ficha lo dice: tratar como peligroso.",
      },
    },
    whitens: {
      en: "Of a white: how much of it brings one part of the colour that the workshop compares with to a middle tone. The less, the stronger the white.",
      de: "Von einem Weiß: wie viel davon einen Teil der Bezugsfarbe der Werkstatt auf einen Mittelton bringt. Je weniger, desto stärker das Weiß.",
      fr: "D’un blanc\u202f: combien il en faut pour mener à un ton moyen une part de la couleur que l’atelier prend pour référence. Moins il en faut, plus le blanc est fort.",
      es: "De un blanco: cuánto hace falta para llevar a un tono medio una parte del color de referencia del taller. Cuanto menos, más fuerte es el blanco.",
    },
    middleTone: {
      en: "How much of it and of white make a middle tone. A dark colour takes more white without being stronger.",
      de: "Wie viel davon und wie viel Weiß einen Mittelton ergeben. Eine dunkle Farbe braucht mehr Weiß, ohne stärker zu färben.",
      fr: "Combien de cette couleur et combien de blanc font un ton moyen. Une couleur foncée demande plus de blanc sans être plus forte.",
      es: "Cuánto de él y cuánto blanco dan un tono medio. Un color oscuro pide más blanco sin ser más fuerte.",
    },
    text: {
      en: "Beside each figure stands how it is known. A figure that nobody knows is not stated, with what it would take; it is never a zero or a guess.",
      de: "Neben jedem Wert steht, woher er bekannt ist. Ein Wert, den niemand kennt, ist als „keine Angabe“ vermerkt, mit dem, was dazu nötig wäre; er ist nie eine Null oder geraten.",
      fr: "À côté de chaque chiffre est dit d’où on le sait. Un chiffre que personne ne connaît est «\u202fnon indiqué\u202f», avec ce qu’il faudrait pour le connaître\u202f; ce n’est jamais un zéro ni une supposition.",
      es: "Junto a cada cifra se dice cómo se sabe. Una cifra que nadie conoce figura como «no indicado», con lo que haría falta para conocerla; nunca es un cero ni una conjetura.",
    },
  },
} satisfies Texts;
