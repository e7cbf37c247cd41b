import type { Texts } from "../dictionary.ts"

export const animalMesh: Texts = {
  "Mesh against animals": "Grillage contre les animaux",
  "A skirt of wire mesh from the frame down into the ground: a low floor is a dry home that many animals look for.":
    "Une jupe de grillage du cadre jusque dans le sol : un plancher bas est un logis sec que bien des animaux cherchent.",
  "Mesh let into the stone": "Grillage enfoncé dans la pierre",
  "Lay the mesh before the last layer of stone, so that its foot is held by it.":
    "Posez le grillage avant la dernière couche de pierre, pour que son pied y soit tenu.",
  "Make sure that no animal is inside before the last piece is closed.":
    "Assurez-vous qu'aucun animal n'est à l'intérieur avant de fermer le dernier morceau.",
  "Turned outwards in the stone": "Tourné vers l'extérieur dans la pierre",
  "As far as the stone reaches beyond the frame: an animal digs down onto wire and gives up.":
    "Aussi loin que la pierre dépasse le cadre : un animal creuse jusqu'au fil et abandonne.",
  "Mesh stapled to the timber": "Grillage agrafé au bois",
  "How far the mesh reaches up the outside of the frame.":
    "Jusqu'où le grillage monte sur l'extérieur du cadre.",
  "Width of mesh needed": "Largeur de grillage requise",
  "From the staples down the opening, into the stone and out along the bottom.":
    "Des agrafes le long de l'ouverture, dans la pierre et vers l'extérieur au fond.",
  "Lap of two pieces": "Recouvrement de deux morceaux",
  "Where one roll ends and the next begins, and at the last corner.":
    "Là où un rouleau finit et le suivant commence, et au dernier coin.",
  "Length of a roll of mesh": "Longueur d'un rouleau de grillage",
  "As sold. Openings no wider than half an inch keep rats out as well.":
    "Tel que vendu. Des mailles d'au plus un demi-pouce arrêtent aussi les rats.",
  "Rolls of mesh": "Rouleaux de grillage",
  "Each roll covers its length less one lap.": "Chaque rouleau couvre sa longueur moins un recouvrement.",
  "Mesh, laps counted": "Grillage, recouvrements comptés",
  "All the way round, and one lap for every roll.": "Tout le tour, et un recouvrement par rouleau.",
  "Mesh below the ground": "Grillage sous le sol",
  "Animals dig where the mesh meets the ground; it has to go on below.":
    "Les animaux creusent là où le grillage touche le sol ; il doit continuer dessous.",
  "Turned outwards at the bottom": "Tourné vers l'extérieur au fond",
  "A foot of mesh lying flat, away from the platform: the animal digs down onto wire and gives up.":
    "Un pied de grillage à plat, vers l'extérieur : l'animal creuse jusqu'au fil et abandonne.",
  "From the staples down the widest opening, into the ground and out along the bottom.":
    "Des agrafes le long de la plus grande ouverture, dans le sol et vers l'extérieur au fond.",
  "As sold. Openings no wider than 13 mm keep rats out as well.":
    "Tel que vendu. Des mailles d'au plus 13 mm arrêtent aussi les rats.",
  "Soil dug for the mesh": "Terre creusée pour le grillage",
  "A trench as wide as the mesh lies flat; the soil goes back on top of it.":
    "Une tranchée aussi large que le grillage à plat ; la terre retourne dessus.",
}
