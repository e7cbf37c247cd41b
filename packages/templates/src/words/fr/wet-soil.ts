import type { Texts } from "../dictionary.ts"

export const wetSoil: Texts = {
  "Wet ground": "Sol mouillé",
  "Sand, silt and gravel bear half as much where water stands close below.":
    "Sable, silt et gravier portent deux fois moins quand l'eau est proche dessous.",
  "What soils bear, in two codes": "Ce que portent les sols, dans deux codes",
  "They sort soils differently, so read off only one. Values hold for ground that nobody has dug; peat, mud, organic soil and fill have none.":
    "Ils classent les sols autrement ; n'en lisez qu'un. Les valeurs valent pour un sol que personne n'a creusé ; tourbe, boue, sol organique et remblai n'en ont pas.",
  "As the code names it, in fewer words.": "Tel que le code le nomme, en moins de mots.",
  "Without a soil investigation.": "Sans étude de sol.",
  "Half where water is near": "Moitié si l'eau est proche",
  "Sand, silt and gravel. The first US row holds silts too, so it is halved with them, to be safe.":
    "Sable, silt et gravier. La première ligne américaine contient des silts ; elle est donc réduite avec eux, par sûreté.",
  "Water stands below the foot": "L'eau se tient sous le pied à",
  "Dig a hole in the wettest season and see how deep the water stands in it the next day, less how deep the supports stand.":
    "Creusez un trou à la saison la plus humide et voyez à quelle profondeur l'eau s'y tient le lendemain, moins la profondeur des appuis.",
  "Ground that squelches, grows rushes, or lies under a gutter's outlet is wet, whatever the map says.":
    "Un sol qui gargouille, où poussent des joncs ou qui est sous une descente de gouttière est mouillé, quoi qu'en dise la carte.",
  "far below": "loin dessous",
  "Does the ground bear it when it is wet?": "Le sol la porte-t-il quand il est mouillé ?",
  "Where water stands within the width of the foot below it, the value that you entered counts half, as for sand, silt and gravel. Clay that was tested wet keeps its value: then enter no water.":
    "Si l'eau se tient à moins d'une largeur de pied dessous, la valeur entrée compte pour moitié, comme pour sable, silt et gravier. Une argile éprouvée mouillée garde sa valeur : n'entrez alors aucune eau.",
  "Your local code decides the value; on doubtful ground a geotechnical engineer does.":
    "Votre code local décide de la valeur ; sur un sol douteux, c'est un ingénieur géotechnicien.",
  "Drain the ground, give the supports a larger foot, or set more of them.":
    "Drainez le sol, donnez un pied plus grand aux appuis, ou mettez-en plus.",
}
