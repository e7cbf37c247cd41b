import type { Texts } from "../dictionary.ts"

export const cleats: Texts = {
  "Cleats at the joints": "Éclisses aux joints",
  "Short pieces beside every joint in a stringer keep the two ends in line and on their sleeper.":
    "De courts morceaux à côté de chaque joint d'un longeron gardent les deux bouts en ligne et sur leur traverse.",
  "Cleats at a joint": "Éclisses à un joint",
  "One on either side. With one only, the joint folds to the open side.":
    "Une de chaque côté. Avec une seule, le joint plie du côté ouvert.",
  "Length of a cleat": "Longueur d'une éclisse",
  "Half of it lies beside either end, so that the screws stand well away from the cut.":
    "La moitié est à côté de chaque bout, pour que les vis soient loin de la coupe.",
  Cleats: "Éclisses",
  "At every joint of every line.": "À chaque joint de chaque ligne.",
  "Each cleat": "Chaque éclisse",
  "Where each cleat goes, and what to cut. They come out of what is left of the stringers first.":
    "Où va chaque éclisse, et quoi couper. Elles sortent d'abord de ce qui reste des longerons.",
  "The row of the table of joints.": "La ligne du tableau des joints.",
  "Middle, along the walk": "Milieu, le long du sentier",
  "The cleat's middle is at the joint.": "Le milieu de l'éclisse est au joint.",
  "Cleat beside either end": "Éclisse à côté de chaque bout",
  "Half the cleat on each side of the joint.": "La moitié de l'éclisse de chaque côté du joint.",
  "Least cleat beside either end": "Moindre éclisse à côté de chaque bout",
  "Room for two pairs of screws, the nearest ones far enough from the cut end that it does not split.":
    "Place pour deux paires de vis, les plus proches assez loin du bout coupé pour qu'il ne fende pas.",
  "Are the cleats long enough?": "Les éclisses sont-elles assez longues ?",
  "A short cleat is held by screws that stand near the cut, and these are the first to split out.":
    "Une courte éclisse tient par des vis près de la coupe, et celles-là fendent en premier.",
  "Make the cleats long enough to reach {cleat_reach_least} past the joint on either side.":
    "Faites les éclisses assez longues pour dépasser le joint de {cleat_reach_least} de chaque côté.",
  "Clear between two stringers": "Vide entre deux longerons",
  "Where neighbouring joints stand side by side, two cleats share this room.":
    "Là où des joints voisins sont côte à côte, deux éclisses se partagent cette place.",
  "Room that two cleats need": "Place que veulent deux éclisses",
  "Cleats are of the stringers' timber, so as thick as these.":
    "Les éclisses sont du bois des longerons, donc aussi épaisses.",
  "Room for the cleats": "Place pour les éclisses",
  "Stringers that stand very close leave no room for a cleat and a driver between them.":
    "Des longerons très rapprochés ne laissent place ni à une éclisse ni à une visseuse.",
  "Set the stringers further apart, with at least {cleat_room_needed} clear between them.":
    "Écartez les longerons, avec au moins {cleat_room_needed} de vide entre eux.",
  "Frame screws in a cleat": "Vis de charpente dans une éclisse",
  "Two pairs into either end of the stringer.": "Deux paires dans chaque bout du longeron.",
}
