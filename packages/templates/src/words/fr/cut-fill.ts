import type { Texts } from "../dictionary.ts"

export const cutFill: Texts = {
  "Levelling the soil itself": "Mettre le sol lui-même de niveau",
  "What it would take to cut the soil level instead of making up the slope with stone, by the grid method.":
    "Ce qu'il faudrait pour tailler le sol de niveau au lieu de rattraper la pente avec de la pierre, par la méthode de la grille.",
  "Level soil, below the high corner's ground": "Sol de niveau, sous le sol du coin haut",
  "How far down the soil is cut at the high corner, counted from the grass. Negative: it is raised there.":
    "De combien le sol est taillé au coin haut, depuis l'herbe. Négatif : il y est remonté.",
  "Loose fill sinks for years. Nothing that carries a load stands on soil filled in by hand, unless it was tamped in thin layers and somebody qualified says so.":
    "Un remblai lâche s'enfonce pendant des années. Rien qui porte une charge ne repose sur de la terre remblayée à la main, à moins d'être compactée en couches minces et qu'une personne qualifiée le dise.",
  "where cut and fill are equal": "là où déblai et remblai sont égaux",
  "Level of the soil then": "Niveau du sol alors",
  "As entered, or the mean level of the ground.": "Comme entré, ou le niveau moyen du sol.",
  "Cut and fill are equal at": "Déblai et remblai sont égaux à",
  "Below the high corner's ground: the mean level. What is cut above it fills exactly what lies below it, as long as soil neither swells nor shrinks.":
    "Sous le sol du coin haut : le niveau moyen. Ce qui est taillé au-dessus comble exactement ce qui est dessous, tant que la terre ne foisonne ni ne se tasse.",
  "Soil cut, in the ground": "Déblai, en place",
  "The depths of cut, each times the area of its point.":
    "Les profondeurs de déblai, chacune fois l'aire de son point.",
  "Fill, tamped": "Remblai, compacté",
  "The depths of fill, each times the area of its point. Cut and fill are kept apart.":
    "Les profondeurs de remblai, chacune fois l'aire de son point. Déblai et remblai restent à part.",
  "Soil tamps down to": "La terre se compacte à",
  "Well tamped earth takes less room than it did in the ground: a tenth less. It is a factor, not a loss.":
    "De la terre bien compactée prend moins de place qu'en terre : un dixième de moins. C'est un facteur, pas une perte.",
  "Soil that the fill takes, in the ground": "Terre que prend le remblai, en place",
  "More than the fill itself, because it is tamped.": "Plus que le remblai lui-même, car il est compacté.",
  "Soil left over, loose": "Terre de reste, en vrac",
  "What has to be carted away; negative: what has to be brought.":
    "Ce qu'il faut emporter ; négatif : ce qu'il faut apporter.",
}
