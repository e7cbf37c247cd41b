import type { Texts } from "../dictionary.ts"

export const buildUp: Texts = {
  "What lies on what": "Ce qui repose sur quoi",
  "The layers from the skids up, added together.": "Les couches à partir des patins, additionnées.",
  "Skids and joists together": "Patins et solives ensemble",
  "The joists lie on the skids, so both depths count.":
    "Les solives reposent sur les patins ; les deux hauteurs comptent donc.",
  "Sheets and tiles together": "Panneaux et tuiles ensemble",
  "What lies on the joists.": "Ce qui repose sur les solives.",
  "The layers from the stone up, added together.": "Les couches à partir de la pierre, additionnées.",
  "The floor's sheets": "Les panneaux du plancher",
  "Stone to the underside of the rims": "De la pierre au dessous des solives de rive",
  "The rims hang beside the skids; air passes below them.":
    "Les solives de rive pendent à côté des patins ; l'air passe dessous.",
  "Opening that a mesh has to close": "Ouverture qu'un grillage doit fermer",
  "From the stone to the underside of the rims.": "De la pierre au dessous des solives de rive.",
  "The layers from the sleepers up, added together.": "Les couches à partir des traverses, additionnées.",
  "Sleepers and stringers together": "Traverses et longerons ensemble",
  "The stringers lie on the sleepers, so both depths count.":
    "Les longerons reposent sur les traverses ; les deux hauteurs comptent donc.",
  "What lies on the stringers.": "Ce qui repose sur les longerons.",
  "Underside of the stringers above the ground": "Dessous des longerons au-dessus du sol",
  "The stringers run through the air between the sleepers: this is what the wind can blow through.":
    "Les longerons traversent l'air entre les traverses : c'est par là que le vent peut souffler.",
  "The layers from the beams up, added together.": "Les couches à partir des poutres, additionnées.",
  "Beams and joists together": "Poutres et solives ensemble",
  "The joists lie on the beams, so both depths count.":
    "Les solives reposent sur les poutres ; les deux hauteurs comptent donc.",
  "The layers from the bearers up, added together.": "Les couches à partir des lambourdes, additionnées.",
  "Bearers and joists together": "Lambourdes et solives ensemble",
  "The joists lie on the bearers, so both depths count.":
    "Les solives reposent sur les lambourdes ; les deux hauteurs comptent donc.",
  "Highest ground or stone under the floor": "Sol ou pierre le plus haut sous le plancher",
  "The loose stone lies on the ground, and takes some of the air.":
    "La pierre en vrac est sur le sol, et prend un peu de l'air.",
  "Underside of the rims above the stone": "Dessous des solives de rive au-dessus de la pierre",
  "Air passes below the rims and between the bearers.":
    "L'air passe sous les solives de rive et entre les lambourdes.",
  "From the ground at the low corner to the underside of the rims.":
    "Du sol au coin bas au dessous des solives de rive.",
}
