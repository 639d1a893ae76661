/** Gloss of a trade term, where a page first meets it. */
export const TRADE = {
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
} as const satisfies Record<string, string>;
