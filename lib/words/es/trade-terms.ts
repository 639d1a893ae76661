/** Gloss of a trade term, where a page first meets it. */
export const TRADE = {
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
} as const satisfies Record<string, string>;
