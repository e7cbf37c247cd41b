import type { Texts } from "../dictionary.ts"

export const fabric: Texts = {
  Fabric: "Géotextile",
  "A sheet that keeps weeds down and keeps the stone from sinking into the soil.":
    "Une toile qui retient les mauvaises herbes et empêche la pierre de s'enfoncer dans le sol.",
  "Fabric turned up, each side": "Géotextile relevé, chaque côté",
  "Turned up at the sides, the fabric keeps soil from washing in between the stones.":
    "Relevé sur les côtés, il empêche la terre d'entrer entre les pierres.",
  "Fabric, as it lies": "Géotextile, tel que posé",
  "The ground covered and the turned-up sides, before laps.":
    "Le sol couvert et les côtés relevés, avant recouvrements.",
  "Width of a roll": "Largeur d'un rouleau",
  "Fabric comes on rolls; a wide one saves seams.":
    "Le géotextile vient en rouleaux ; un large épargne des joints.",
  "Lap of two strips": "Recouvrement de deux bandes",
  "The upper strip lies this far over the lower one, like roof tiles, lower edge downhill. On soft ground lap more.":
    "La bande du haut recouvre d'autant celle du bas, comme des tuiles de toit, le bord bas vers l'aval. Sur un sol mou, recouvrez plus.",
  "Strips side by side": "Bandes côte à côte",
  "Every strip after the first covers its own width less the lap.":
    "Chaque bande après la première couvre sa largeur moins le recouvrement.",
  "Length of a strip": "Longueur d'une bande",
  "Cut each strip this long.": "Coupez chaque bande à cette longueur.",
  "Fabric off the roll": "Géotextile du rouleau",
  "All strips, end to end: what is bought by length.":
    "Toutes les bandes, bout à bout : ce qui s'achète à la longueur.",
  "Lost in laps and at the edge": "Perdu en recouvrements et au bord",
  "The part of the bought fabric that covers nothing new. Another width of roll may waste less.":
    "La part du géotextile acheté qui ne couvre rien de neuf. Une autre largeur de rouleau peut en perdre moins.",
  "Pins at most apart": "Agrafes au plus à",
  "Pins hold the fabric until the stone lies on it.":
    "Des agrafes tiennent le géotextile jusqu'à ce que la pierre soit dessus.",
  Pins: "Agrafes",
  "Along both outer edges and every seam, both ends counted.":
    "Le long des deux bords extérieurs et de chaque joint, les deux bouts comptés.",
}
