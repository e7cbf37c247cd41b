import type { Texts } from "../dictionary.ts"

export const door: Texts = {
  "Door, sill and ramp": "Porte, seuil et rampe",
  "Where the door is decides how high you step, and how long a ramp for the mower gets.":
    "L'endroit de la porte décide de la hauteur de la marche, et de la longueur d'une rampe pour la tondeuse.",
  "Door at": "Porte au",
  "The high end has the lowest step; on a slope that is worth turning the shed for.":
    "Le bout haut a la marche la plus basse ; dans une pente, cela vaut la peine de tourner le cabanon.",
  "high end": "bout haut",
  "low end": "bout bas",
  "Sill above the floor": "Seuil au-dessus du plancher",
  "A sill keeps driven rain out; wheels have to get over it.":
    "Un seuil arrête la pluie battante ; les roues doivent le franchir.",
  "Slope of the ramp for wheels": "Pente de la rampe pour les roues",
  "Rise over run. A mower or a barrow manages one in six; a wheelchair needs one in twelve or gentler, and more than a ramp.":
    "Hauteur sur longueur. Une tondeuse ou une brouette monte un sur six ; un fauteuil roulant veut un sur douze ou plus doux, et plus qu'une rampe.",
  "A wet ramp is slippery: give it grip, and edges that a wheel cannot leave.":
    "Une rampe mouillée glisse : donnez-lui de l'adhérence, et des bords qu'une roue ne peut pas quitter.",
  "Width of the ramp": "Largeur de la rampe",
  "As wide as the door's opening, or a little wider.":
    "Aussi large que l'ouverture de la porte, ou un peu plus.",
  "Up to the door": "Jusqu'à la porte",
  "What a foot or a wheel climbs at the door, by steps or by a ramp. One row.":
    "Ce que monte un pied ou une roue à la porte, par des marches ou une rampe. Une ligne.",
  "Ground to the top of the sill": "Du sol au dessus du seuil",
  "At the middle of that end.": "Au milieu de ce bout.",
  Steps: "Marches",
  "The sill counts: it is the top of the last step.":
    "Le seuil compte : il est le dessus de la dernière marche.",
  "Ramp, along the ground": "Rampe, au sol",
  "How far it reaches out, on level ground.": "Jusqu'où elle avance, sur un sol de niveau.",
  "Ramp, along its surface": "Rampe, le long de sa surface",
  "How long its timbers are.": "La longueur de ses bois.",
  "Surface of the ramp": "Surface de la rampe",
  "Boards or sheet for it, and the grit on top.": "Planches ou panneau, et l'antidérapant dessus.",
}
