import type { Texts } from "../dictionary.ts"

export const joistCapacity: Texts = {
  "Joist: what the section carries": "Solive : ce que porte la section",
  "The least species of the group, times the shape of the piece.":
    "La plus faible essence du groupe, fois la forme de la pièce.",
  "Joist: bending stress it may bear": "Solive : contrainte de flexion qu'elle peut porter",
  "The weakest species of the group in bending.": "La plus faible essence du groupe en flexion.",
  "Joist: shear stress it may bear": "Solive : contrainte de cisaillement qu'elle peut porter",
  "The weakest species of the group in shear.": "La plus faible essence du groupe en cisaillement.",
  "Joist: bearing stress it may bear": "Solive : contrainte de portance qu'elle peut porter",
  "The softest species of the group across the grain.":
    "L'essence la plus tendre du groupe en travers du fil.",
  "Joist: stiffness in use": "Solive : rigidité en service",
  "Joist: section modulus": "Solive : module de section",
  "How well the shape resists bending. Twice the depth counts four times, twice the width only twice.":
    "À quel point la forme résiste à la flexion. Deux fois plus haut compte quatre fois, deux fois plus large seulement deux.",
  "Joist: moment it can take": "Solive : moment qu'elle peut prendre",
  "Bending stress times section modulus.": "Contrainte de flexion fois module de section.",
  "Joist: shear it can take": "Solive : cisaillement qu'elle peut prendre",
  "Shear stress times the area, with its peak in the middle of the depth.":
    "Contrainte de cisaillement fois l'aire, avec sa pointe au milieu de la hauteur.",
}
