import type { Texts } from "../dictionary.ts"

export const joist: Texts = {
  "The joist and its load": "La solive et sa charge",
  "What joist it is, how far apart they lie, and what stands on them.":
    "Quelle solive c'est, à quelle distance elles sont, et ce qui repose dessus.",
  "The name of the timber in the shop.": "Le nom du bois au magasin.",
  "Each joist carries a strip of floor this wide.":
    "Chaque solive porte une bande de plancher de cette largeur.",
  "Live load": "Surcharge",
  "People and what they bring. A home deck is worked out for 40 psf.":
    "Les gens et ce qu'ils apportent. Une terrasse de maison se calcule pour 40 lb/pi².",
  "Dead load": "Charge permanente",
  "The floor itself. Published tables take 10 psf, which covers joists and boards.":
    "Le plancher lui-même. Les tableaux publiés prennent 10 lb/pi², ce qui couvre solives et planches.",
  "Sag allowed: span over": "Flèche permise : portée sur",
  "Under the live load alone. 360 is what floors and decks are printed for.":
    "Sous la seule surcharge. 360 est ce pour quoi planchers et terrasses sont imprimés.",
  "Span to check": "Portée à vérifier",
  "The span that you have in mind. Without it, the longest span allowed is checked.":
    "La portée que vous avez en tête. Sans elle, la plus longue portée permise est vérifiée.",
  "the longest span allowed": "la plus longue portée permise",
  "Length of the seat": "Longueur du siège",
  "How far the joist's end rests on its ledger, beam or hanger. 1 1/2 in is the least that codes accept on wood.":
    "De combien le bout de la solive repose sur sa lambourde, sa poutre ou son étrier. 1 1/2 po est le moindre que les codes acceptent sur du bois.",
  "Span behind an overhang": "Portée derrière un porte-à-faux",
  "How far the joist spans before it runs out over a beam.":
    "Jusqu'où porte la solive avant de dépasser une poutre.",
  "No span longer than": "Aucune portée de plus de",
  "Deck tables stop at 18 ft whatever the calculation gives. Floor tables do not.":
    "Les tableaux de terrasse s'arrêtent à 18 pi quoi que donne le calcul. Ceux de plancher, non.",
  "18 ft where the timber stays wet, as deck tables end there; no end where it stays dry":
    "18 pi si le bois reste mouillé, car les tableaux de terrasse finissent là ; aucune fin s'il reste sec",
  "Rules of design": "Règles de calcul",
  "The United States' tables go by allowable stress, Canada's by limit states.":
    "Les tableaux des États-Unis suivent les contraintes admissibles, ceux du Canada les états limites.",
  "What keeps joists from swaying": "Ce qui empêche les solives de vaciller",
  "Only for limit states: Canada's floor table allows longer spans where joists are tied to each other.":
    "Seulement aux états limites : le tableau canadien permet des portées plus longues si les solives sont reliées.",
  strapping: "fourrures",
  bridging: "croix de Saint-André",
  "bridging and strapping": "croix de Saint-André et fourrures",
  "By limit states": "Aux états limites",
  "Decides which factors count.": "Décide quels facteurs comptent.",
  "By allowable stress": "Par contraintes admissibles",
  "What a tape measures.": "Ce que mesure un ruban.",
  "Repetitive member factor in use": "Facteur de pièces en série utilisé",
  "Joists that lie close help a weak one out.": "Des solives rapprochées en aident une faible.",
  "Load on a joist, for strength": "Charge sur une solive, pour la résistance",
  "The strip of floor that one joist carries. By limit states both loads are made larger first.":
    "La bande de plancher que porte une solive. Aux états limites, les deux charges sont d'abord majorées.",
  "Live load on a joist, for sag": "Surcharge sur une solive, pour la flèche",
  "Sag is judged under the live load alone.": "La flèche se juge sous la seule surcharge.",
}
