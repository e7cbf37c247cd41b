import type { Texts } from "../dictionary.ts"

export const joistStresses: Texts = {
  "Joist: what the timber may bear": "Solive : ce que le bois peut porter",
  "Published strength, and one factor after another for how the timber is used, for each species of the group.":
    "La résistance publiée, et un facteur après l'autre selon l'usage du bois, pour chaque essence du groupe.",
  "Joist: width in the name, inches": "Solive : largeur dans le nom, pouces",
  "The size factor goes by it.": "Le facteur de grosseur en dépend.",
  "Joist: thickness class": "Solive : classe d'épaisseur",
  "Thin timber and timbers of 5 in and more are graded and adjusted by different rules.":
    "Le bois mince et les gros bois de 5 po et plus se classent et s'ajustent selon d'autres règles.",
  "Joist: wet service factor on shear": "Solive : facteur de service humide sur le cisaillement",
  "1 where the timber stays dry.": "1 si le bois reste sec.",
  "Joist: wet service factor on bearing": "Solive : facteur de service humide sur la portance",
  "Wet wood is crushed across the grain far more easily. 1 where it stays dry.":
    "Le bois mouillé s'écrase bien plus facilement en travers du fil. 1 s'il reste sec.",
  "Joist: wet service factor on stiffness": "Solive : facteur de service humide sur la rigidité",
  "Wet wood sags more. 1 where it stays dry.": "Le bois mouillé fléchit plus. 1 s'il reste sec.",
  "Joist: stresses by species": "Solive : contraintes par essence",
  "Each species of the group by itself: one may be the weakest and another the springiest.":
    "Chaque essence du groupe à part : l'une peut être la plus faible et une autre la plus souple.",
  "Class of size": "Classe de grosseur",
  "Where the species is published by width, the row for this width.":
    "Si l'essence est publiée par largeur, la ligne de cette largeur.",
  "0 where the table has no row for this species, grade and size: then there is no answer.":
    "0 si le tableau n'a pas de ligne pour cette essence, qualité et grosseur : il n'y a alors pas de réponse.",
  "Fb, before any factor.": "Fb, avant tout facteur.",
  "Tension, published": "Traction, publiée",
  "Ft, before any factor.": "Ft, avant tout facteur.",
  "Fv, before any factor.": "Fv, avant tout facteur.",
  "Fc across the grain.": "Fc en travers du fil.",
  "E, before any factor.": "E, avant tout facteur.",
  "Size factor, CF": "Facteur de grosseur, CF",
  "On bending. 1 where the size is already inside the published value.":
    "En flexion. 1 si la grosseur est déjà dans la valeur publiée.",
  "Size factor on tension": "Facteur de grosseur en traction",
  "1 where the size is already inside the published value.":
    "1 si la grosseur est déjà dans la valeur publiée.",
  "Wet service factor on bending, CM": "Facteur de service humide en flexion, CM",
  "1 where it stays dry, and where Fb × CF is not over the threshold.":
    "1 s'il reste sec, et si Fb × CF ne dépasse pas le seuil.",
  "Only where the timber is incised and the species is one that needs it.":
    "Seulement si le bois est incisé et que l'essence en a besoin.",
  "Incising factor, Ci": "Facteur d'incision, Ci",
  "On bending, tension and shear.": "En flexion, traction et cisaillement.",
  "Bending, allowed": "Flexion, permise",
  "Fb × CD × Ct × CM × CL × CF × Ci × the factor for members that share.":
    "Fb × CD × Ct × CM × CL × CF × Ci × le facteur des pièces qui partagent.",
  "Tension, allowed": "Traction, permise",
  "Ft × CD × Ct × CM × CF × Ci.": "Ft × CD × Ct × CM × CF × Ci.",
  "Shear, allowed": "Cisaillement, permis",
  "Fv × CD × Ct × CM × Ci.": "Fv × CD × Ct × CM × Ci.",
  "Bearing, allowed": "Portance, permise",
  "Fc × Ct × CM × Cb; incising and duration do not count here.":
    "Fc × Ct × CM × Cb ; incision et durée ne comptent pas ici.",
  "Stiffness, in use": "Rigidité, en service",
  "E × Ct × CM × Ci; duration does not count here.": "E × Ct × CM × Ci ; la durée ne compte pas ici.",
  "Joist: every species has a published row": "Solive : chaque essence a une ligne publiée",
  "No where the table has no row for the species, grade and size: then nothing is guessed.":
    "Non si le tableau n'a pas de ligne pour l'essence, la qualité et la grosseur : rien n'est alors deviné.",
}
