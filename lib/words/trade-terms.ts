import type { Language } from "../quantities/languages.ts";

/** Gloss of a trade term, where a page first meets it: each language has terms of its own, so that they are no rows. */
export const TRADE: Readonly<Record<Language, Readonly<Record<string, string>>>> = {
  en: {
    masstone: "the colour as it comes from the tube, in a film thick enough to hide its ground",
    undertone: "the colour of a thin film over white",
    tint: "the paint mixed with white, or let down",
    "L* a* b*":
      "lightness from 0 to 100, then green to red and blue to yellow; C* is the distance from grey",
    Munsell: "hue, value from 0 (black) to 10 (white), chroma; N is a neutral",
    "oil index": "grams of oil to 100 g of pigment, in the paint as made",
    "tinting strength": "how far a little of the colour goes in a white",
    specular:
      "of the shine: a glossy black looks deeper, and an instrument can take the shine in or leave it out",
    "d/8": "lit from all sides and read at 8° from upright, the shine taken in or shut out",
    "categories I\u2013V":
      "lightfastness, by how much a colour changes in a standard test; I is the best",
    "blue wool": "eight dyed wools that fade one after another, number 8 last",
    "fat over lean": "more oil in each layer than in the one below",
  },
  de: {
    Vollton: "die Farbe, wie sie aus der Tube kommt, in einem Film, der seinen Grund deckt",
    Unterton: "die Farbe eines dünnen Films über Weiß",
    Aufhellung: "die Farbe mit Weiß gemischt",
    "L* a* b*":
      "Helligkeit von 0 bis 100, dann Grün bis Rot und Blau bis Gelb; C* ist der Abstand von Grau",
    Munsell: "Buntton, Helligkeit (Value) von 0 (Schwarz) bis 10 (Weiß), Chroma; N ist unbunt",
    Ölindex: "Gramm Öl auf 100\u00a0g Pigment, in der fertigen Farbe",
    Farbstärke: "wie weit ein wenig der Farbe in einem Weiß reicht",
    Oberflächenglanz:
      "ein glänzendes Schwarz wirkt tiefer, und ein Messgerät kann mit oder ohne Glanz messen",
    "d/8": "von allen Seiten beleuchtet und 8° neben dem Lot gemessen, mit oder ohne Glanz",
    "Kategorien I\u2013V":
      "Lichtechtheit, nach der Farbänderung in einer genormten Prüfung; I ist die beste",
    Blauwollskala: "acht gefärbte Wollen, die nacheinander ausbleichen, Nummer 8 zuletzt",
    "fett auf mager": "in jeder Schicht mehr Öl als in der darunter",
  },
  fr: {
    "ton plein":
      "la couleur telle qu’elle sort du tube, en un film assez épais pour couvrir son fond",
    "sous-ton": "la couleur d’un film mince sur du blanc",
    dégradé: "la peinture mélangée à du blanc, ou coupée de blanc",
    "L* a* b*":
      "clarté de 0 à 100, puis du vert au rouge et du bleu au jaune\u202f; C* est la distance au gris",
    Munsell: "teinte, valeur de 0 (noir) à 10 (blanc), chroma\u202f; N est un neutre",
    "indice d’huile":
      "grammes d’huile pour 100\u00a0g de pigment, dans la peinture telle que nous la faisons",
    "pouvoir colorant": "l’effet d’un peu de couleur dans un blanc",
    reflet:
      "la part spéculaire\u202f: un noir brillant paraît plus profond, et un instrument peut compter le reflet ou le laisser de côté",
    "d/8":
      "éclairage de tous côtés et mesure à 8° de la verticale, le reflet compté ou laissé de côté",
    "catégories I\u2013V":
      "solidité à la lumière, selon le changement d’une couleur dans un essai normalisé\u202f; I est la meilleure",
    "laine bleue": "huit laines teintes qui passent l’une après l’autre, la huitième en dernier",
    "gras sur maigre": "plus d’huile dans chaque couche que dans celle du dessous",
  },
  es: {
    "tono pleno":
      "el color tal como sale del tubo, en una película lo bastante gruesa para cubrir su fondo",
    subtono: "el color de una película fina sobre blanco",
    rebaje: "la pintura mezclada con blanco, o rebajada",
    "L* a* b*":
      "claridad de 0 a 100, luego de verde a rojo y de azul a amarillo; C* es la distancia al gris",
    Munsell: "matiz, valor de 0 (negro) a 10 (blanco), croma; N es un neutro",
    "índice de aceite":
      "gramos de aceite por 100\u00a0g de pigmento, en la pintura tal como la hacemos",
    "poder colorante": "el efecto de un poco de color en un blanco",
    brillo:
      "la parte especular: un negro brillante parece más profundo, y un instrumento puede contar el brillo o dejarlo fuera",
    "d/8":
      "iluminación desde todos los lados y medición a 8° de la vertical, con el brillo contado o dejado fuera",
    "categorías I\u2013V":
      "solidez a la luz, según cuánto cambia un color en un ensayo normalizado; I es la mejor",
    "lana azul": "ocho lanas teñidas que se desvanecen una tras otra, la octava en último lugar",
    "graso sobre magro": "más aceite en cada capa que en la de debajo",
  },
};
