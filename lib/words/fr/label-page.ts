import type { LABEL_PAGE as ENGLISH_PAGE } from "../en/label-page.ts";
import type { AnyWords } from "../any-words.ts";

/** How to read a label and a sheet. Where a line needs a figure the page takes it from a sheet. */
export const LABEL_PAGE: AnyWords<typeof ENGLISH_PAGE> = {
  heading: "Lire une étiquette",
  lead: "Un tube n’a place que pour quelques lignes. Ce que dit chacune, ce qu’elle tait, et ce qu’une fiche y ajoute.",
  columns: { line: "Ligne", says: "Ce qu’elle dit", here: (name) => `Sur ${name}` },
  label: {
    heading: "Les lignes d’une étiquette",
    caption: "Ligne à ligne",
    lines: {
      name: [
        "Nom",
        "Celui du fabricant. Il peut être historique ou inventé, et ne dit pas quel pigment est dedans\u202f; un nom peut en désigner plusieurs.",
      ],
      pigment: [
        "Pigment",
        "En mots et par son nom générique au Colour Index\u202f: P pour un pigment ou N pour un naturel, des lettres pour la teinte, un numéro. Il nomme une sorte de pigment\u202f; fabricant, nuance et qualité diffèrent encore.",
      ],
      vehicle: [
        "Liant",
        "L’huile qui le lie, et ce qu’on y a ajouté. Il décide du jaunissement du film et compte pour la vitesse du séchage.",
      ],
      lightfastness: [
        "Solidité à la lumière",
        "Une catégorie de I à V seulement si les expositions d’une norme ont été faites, ou sur la déclaration d’autrui\u202f; sinon ce qu’on a fait à la place, ou que rien n’a été fait.",
      ],
      hazards: [
        "Dangers",
        "Mention d’avertissement, pictogrammes et mentions en termes fixes. Ils concernent la peinture dans le tube\u202f; la poussière de ponçage et le pigment sec peuvent être pires.",
      ],
      contents: [
        "Contenu",
        "En millilitres, puisque la peinture s’emploie au volume. Le même tube pèse bien plus avec un pigment dense.",
      ],
      lot: [
        "Lot",
        "De quelle fabrication il vient\u202f: c’est ce qu’il faut citer quand quelque chose ne va pas. Les lots d’une couleur diffèrent un peu.",
      ],
    },
    nothing: "pas d’avertissement\u202f: les documents des fournisseurs n’en demandent aucun",
    lot: "écrit à la main",
    holds: (ml, grams) => `${ml}, soit ${grams} de peinture`,
    noSize: "aucune contenance n’est consignée",
    unsaid:
      "Une étiquette n’a pas place pour ce que la couleur fait dans un blanc, combien d’huile elle contient, quand elle est sèche, et d’où l’on sait tout cela. C’est l’affaire de sa fiche.",
  },
  studio: {
    heading: "Ce qui vaut pour toute couleur",
    text: "Ces précautions valent dans tout atelier, quelle que soit la couleur sur la table\u202f; elles sont donc dites ici une fois. Ce qui est propre à une couleur est sur sa fiche, en premier\u202f; une étiquette et une fiche de données de sécurité prévalent, et les règlements locaux et la pratique habilitée passent avant tout ce qui est dit ici.",
    caption: "Dans tout atelier",
    dust: "Un pigment sec s’envole en poussière\u202f: le traiter comme très poussiéreux, sauf si sa masse volumique apparente dit autre chose.",
    columns: {
      operation: "Au moment de",
      caution: "Ce qu’il faut faire, et ne pas faire",
      reason: "Pourquoi",
    },
  },
  pigments: {
    heading: "Un pigment ou plusieurs",
    caption: "Couleurs de plus d’un pigment",
    text: (single, all) =>
      `Des ${all} couleurs d’ici, ${single} ${single === 1 ? "est faite" : "sont faites"} d’un seul pigment. Il faut regarder combien de noms du Colour Index donne une étiquette\u202f: un seul nom est une seule sorte de pigment, qui se mélange proprement et se comporte de même dans chaque couche. Plusieurs noms sont un mélange qu’on pourrait faire sur la palette\u202f; il se vend parce qu’il est commode, ou remplace un pigment cher, nocif ou fugace.`,
    columns: { colour: "Couleur", pigments: "Pigments", weakest: "Le moins solide à la lumière" },
    alike: "semblables, autant qu’on sache",
    unknown: "inconnu",
    none: "Aucune couleur d’ici n’est un mélange.",
  },
  names: {
    heading: "Un nom, plusieurs couleurs",
    caption: "Noms du Colour Index que portent ici plusieurs pigments",
    text: "Un nom du Colour Index couvre tout ce qui a une même constitution\u202f: terres naturelles et brûlées partagent un nom, comme une qualité grossière et une fine. Un nom ne suit pas non plus d’un numéro CAS\u202f: le noir de lampe (PBk 6) et le noir de carbone au gaz (PBk 7) ont un même numéro, et diffèrent par le grain, par l’huile et par ce qu’ils font dans un blanc.",
    columns: { index: "Nom au Colour Index", pigments: "Pigments", colours: "Couleurs" },
  },
  drift: {
    heading: "Pourquoi certains noirs de mélange dérivent",
    caption: "Les noirs et les gris d’ici qui sont des mélanges",
    text: "Un noir d’un seul pigment n’a qu’une chose qui puisse changer. Si la lumière en prend une part, il s’éclaircit et garde sa teinte. Un noir de mélange est un équilibre\u202f: des pigments de teintes différentes sont dosés pour que l’ensemble paraisse neutre. Si l’un perd de sa force, l’équilibre penche, et le noir dérive vers ceux qui restent\u202f: vers le brun quand cède un bleu ou un vert, vers le vert ou le bleu quand cède un rouge. Ce qui passe le premier à la lumière, ce qu’atteignent alcali, acide ou chaleur, et ce qui paraît seulement plus faible dans un blanc que dans un autre peut chacun le faire pencher. Dans un mélange, le pigment le moins solide à la lumière décide donc, et un mélange de pigments qui se valent à la lumière a peu de raisons de dériver.",
    driftColumn: "S’il perd 30\u00a0% d’un pigment",
    notReckoned: "non calculé ici",
    none: "Aucun noir ni gris d’ici n’est un mélange.",
  },
  sheet: {
    heading: "Les lignes d’une fiche",
    caption: "Les données du premier écran",
    facts: {
      lasts:
        "Comment elle a tenu, ou doit tenir, à la lumière. Les petits caractères le précisent\u202f: exposée selon la norme, exposée ici, déclarée par quelqu’un, ou à prévoir d’après ses pigments et non testée.",
      hides:
        "Combien un film couvre également le noir et le blanc, et quelle épaisseur de film sec il y faut.",
      dries:
        "Une classe d’après le milieu des jours jusqu’au sec au toucher, pour un film de l’épaisseur et une pièce de la température que nomme la fiche. Sec au toucher n’est pas sec à cœur.",
      strength:
        "Jusqu’où un peu de cette couleur porte dans un blanc, tube pour tube, à côté de la couleur que l’atelier prend pour mesure.",
      oil: "Grammes d’huile dans la peinture pour 100 g de pigment. Beaucoup n’est pas un défaut\u202f: un pigment fin et léger la demande. En volume les couleurs sont plus proches.",
      safety:
        "La mention d’avertissement de l’étiquette, ou qu’il n’en faut aucune. Là où personne n’a classé un pigment, la fiche le dit\u202f: à traiter comme dangereux.",
    },
    whitens:
      "D’un blanc\u202f: combien il en faut pour mener une part de la couleur que l’atelier prend pour mesure à un ton moyen. Moins il en faut, plus le blanc est fort.",
    middleTone:
      "Combien de blanc amène une part de cette couleur à un ton moyen. Une couleur foncée prend beaucoup de blanc, et n’en est pas plus forte.",
    text: "À côté de chaque chiffre est dit d’où on le sait. Un chiffre que personne ne connaît n’est pas indiqué, avec ce qu’il y faudrait\u202f; ce n’est jamais un zéro ni une supposition.",
  },
};
