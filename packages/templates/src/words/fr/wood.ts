import type { Texts } from "../dictionary.ts"

export const wood: Texts = {
  "The wood": "Le bois",
  "Which wood it is and how wet: it decides how heavy the timber is and how far gaps open.":
    "Quel bois c'est et à quel point il est mouillé : cela décide de son poids et de l'ouverture des jeux.",
  "Ask the yard. Most treated softwood of the American south is loblolly pine or its near kin.":
    "Demandez à la cour. La plupart des résineux traités du Sud américain sont du pin à encens ou un proche parent.",
  "loblolly pine": "pin à encens",
  "Douglas-fir, coast": "douglas, côte",
  "white spruce": "épinette blanche",
  "western redcedar": "thuya géant",
  "northern white-cedar": "thuya occidental",
  "Softwoods: weight and shrinkage": "Résineux : poids et retrait",
  "Species differ by half as much again, in weight and in how far a gap opens.":
    "Les essences diffèrent de moitié, en poids et en ouverture des jeux.",
  "What the yard sells under one name is often a group: southern pine is mostly loblolly, spruce-pine-fir mostly spruce.":
    "Ce que la cour vend sous un nom est souvent un groupe : le pin du Sud est surtout du pin à encens, l'épinette-pin-sapin surtout de l'épinette.",
  "Of the wood alone, by its volume at 12 % moisture: how heavy it is against water.":
    "Du bois seul, d'après son volume à 12 % d'humidité : son poids par rapport à l'eau.",
  "Shrinkage of the width": "Retrait de la largeur",
  "How much narrower a flat-sawn board gets from soaking wet to bone dry.":
    "De combien une planche sur dosse se rétrécit, de trempée à anhydre.",
  "Which of the row's figures was read and which recalled.":
    "Lesquels des chiffres de la ligne ont été lus et lesquels sont de mémoire.",
  "Moisture when it is laid": "Humidité à la pose",
  "Fresh treated timber is soaking wet, kiln-dried timber has 19 % at most. A cheap meter with two pins shows it.":
    "Du bois traité frais est trempé, du bois séché au séchoir a 19 % au plus. Un humidimètre bon marché à deux pointes le montre.",
  "Moisture when it has dried": "Humidité une fois sec",
  "What timber comes to outdoors after a summer, in the air of your place.":
    "Ce que devient le bois dehors après un été, dans l'air de chez vous.",
  "Of this species, from the table.": "De cette essence, du tableau.",
  "Wood begins to shrink at": "Le bois commence à rétrécir à",
  "Above this the water is free in the cells, and drying changes the weight alone. Below it the wood shrinks.":
    "Au-dessus, l'eau est libre dans les cellules, et sécher ne change que le poids. Dessous, le bois rétrécit.",
  "Shrinkage of the width, soaking wet to bone dry": "Retrait de la largeur, de trempé à anhydre",
  "Width when laid, as a share of soaking wet": "Largeur à la pose, en part de la trempée",
  "The part of the shrinkage that lies behind it already.": "La part du retrait déjà faite.",
  "Width when dry, as a share of soaking wet": "Largeur une fois sec, en part de la trempée",
  "The same at the end.": "La même chose à la fin.",
}
