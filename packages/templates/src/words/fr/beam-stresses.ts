import type { Texts } from "../dictionary.ts"

export const beamStresses: Texts = {
  "Beam: what the timber may bear": "Poutre : ce que le bois peut porter",
  "Beam: width in the name, inches": "Poutre : largeur dans le nom, pouces",
  "Beam: thickness class": "Poutre : classe d'épaisseur",
  "Beam: wet service factor on shear": "Poutre : facteur de service humide sur le cisaillement",
  "Beam: wet service factor on bearing": "Poutre : facteur de service humide sur la portance",
  "Beam: wet service factor on stiffness": "Poutre : facteur de service humide sur la rigidité",
  "Beam: stresses by species": "Poutre : contraintes par essence",
  "Beam: every species has a published row": "Poutre : chaque essence a une ligne publiée",
}
