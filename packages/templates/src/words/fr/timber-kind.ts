import type { Texts } from "../dictionary.ts"

export const timberKind: Texts = {
  "What timber it is": "De quel bois il s'agit",
  "The stamp on the piece says the species and the grade. Both decide what it carries.":
    "L'estampille dit l'essence et la qualité. Les deux décident de ce que la pièce porte.",
  Species: "Essence",
  "Read it on the stamp. Where you do not know which one the yard will send, try each: the worst counts.":
    "Lisez-la sur l'estampille. Si vous ignorez laquelle la cour enverra, essayez chacune : la pire compte.",
  "Douglas Fir-Larch": "Douglas-mélèze",
  "Hem-Fir": "Pruche-sapin",
  "Spruce-Pine-Fir": "Épinette-pin-sapin",
  "Spruce-Pine-Fir (South)": "Épinette-pin-sapin (Sud)",
  "Southern Pine": "Pin du Sud",
  Redwood: "Séquoia",
  "Western Cedars": "Cèdres de l'Ouest",
  "Northern Species": "Essences nordiques",
  "Western Woods": "Bois de l'Ouest",
  "Eastern Softwoods": "Résineux de l'Est",
  Grade: "Qualité",
  "No.2 is what most yards keep. Some stamps join two grades, as No.1/No.2; such a species is found under either.":
    "No.2 est ce que tiennent la plupart des cours. Certaines estampilles joignent deux qualités, comme No.1/No.2 ; une telle essence se trouve sous l'une ou l'autre.",
  "Out of doors or damp": "Dehors ou à l'humidité",
  "Yes where rain or ground damp keeps the wood above 19 % moisture for long, as under most decks.":
    "Oui là où la pluie ou l'humidité du sol garde longtemps le bois au-dessus de 19 % d'humidité, comme sous la plupart des terrasses.",
  "Treated with incising": "Traité par incisions",
  "Look for rows of small slits in treated timber. The answer only counts for species that are incised at all.":
    "Cherchez des rangs de petites fentes dans le bois traité. La réponse ne compte que pour les essences qu'on incise.",
  "How long the load lasts in all": "Durée de la charge en tout",
  "Over the whole life of the platform, added up. Ten years stands for people.":
    "Sur toute la vie de la plateforme, additionnée. Dix ans vaut pour des gens.",
  permanent: "permanente",
  "ten years": "dix ans",
  "two months": "deux mois",
  "seven days": "sept jours",
  "ten minutes": "dix minutes",
  impact: "choc",
  "Method of design": "Méthode de calcul",
  "Allowable stress in the United States, limit states in Canada. The two are never mixed.":
    "Contraintes admissibles aux États-Unis, états limites au Canada. Les deux ne se mélangent jamais.",
  "allowable stress": "contraintes admissibles",
  "limit states": "états limites",
  "Species or group": "Essence ou groupe",
  "Read it on the stamp. Where you do not know which of several the yard will send, choose the group: its least species counts.":
    "Lisez-le sur l'estampille. Si vous ignorez laquelle de plusieurs la cour enverra, prenez le groupe : sa plus faible essence compte.",
  Northern: "Nordique",
  "Douglas Fir-Larch, Hem-Fir, Spruce-Pine-Fir": "Douglas-mélèze, pruche-sapin, épinette-pin-sapin",
  "Redwood, Western Cedars, Ponderosa Pine, Red Pine": "Séquoia, cèdres de l'Ouest, pin ponderosa, pin rouge",
}
