import type { Texts } from "../dictionary.ts"

export const beam: Texts = {
  "The beam and its load": "La poutre et sa charge",
  "What beam it is, and how much floor its joists bring to it.":
    "Quelle poutre c'est, et combien de plancher ses solives lui amènent.",
  "Size of one ply": "Grosseur d'un pli",
  "How many pieces are nailed together side by side.": "Combien de pièces sont clouées côte à côte.",
  "Span of the joists on it": "Portée des solives dessus",
  "From the house, or the next beam, to this beam. The longer it is, the more floor this beam carries.":
    "De la maison, ou de la poutre suivante, à cette poutre. Plus elle est longue, plus cette poutre porte de plancher.",
  "Joists run out over the beam by": "Les solives dépassent la poutre de",
  "As a part of their span. Published beam tables allow for a quarter, whether you use it or not.":
    "En part de leur portée. Les tableaux publiés prévoient un quart, que vous l'utilisiez ou non.",
  "The floor itself. Published tables take 10 psf.":
    "Le plancher lui-même. Les tableaux publiés prennent 10 lb/pi².",
  "Under the live load alone. 360 is what decks are printed for.":
    "Sous la seule surcharge. 360 est ce pour quoi les terrasses sont imprimées.",
  "Between posts, from centre to centre.": "Entre poteaux, de centre à centre.",
  "How much of the beam rests on one post, measured along the beam.":
    "Quelle longueur de la poutre repose sur un poteau, mesurée le long d'elle.",
  "Thickness of one ply, real": "Épaisseur réelle d'un pli",
  "Beam depth, real": "Hauteur réelle de la poutre",
  "Two plies of 2 in timber count as, each": "Deux plis de bois de 2 po comptent, chacun, pour",
  "The table prints one row for one 3 in beam (2 1/2 in real) or two 2 in plies, so the thinner of them is counted.":
    "Le tableau imprime une ligne pour une poutre de 3 po (2 1/2 po réels) ou deux plis de 2 po ; la plus mince des deux est donc comptée.",
  "Thickness of one ply, counted": "Épaisseur d'un pli, comptée",
  "The real thickness, unless the table's row also stands for a thinner beam.":
    "L'épaisseur réelle, sauf si la ligne du tableau vaut aussi pour une poutre plus mince.",
  "The group whose rows are shared": "Le groupe dont les lignes sont partagées",
  "Only this group's rows are printed for two kinds of beam at once.":
    "Seules les lignes de ce groupe sont imprimées pour deux sortes de poutres à la fois.",
  "Factor for plies that share a load": "Facteur des plis qui partagent une charge",
  "A weak piece is helped by the one beside it. Bending only.":
    "Une pièce faible est aidée par sa voisine. En flexion seulement.",
  "Pieces side by side.": "Pièces côte à côte.",
  "On bending strength.": "Sur la résistance en flexion.",
  "Factor for plies in use": "Facteur des plis utilisé",
  "1 for a single piece, for timber of 4 in and more, and where the row also stands for a single one.":
    "1 pour une pièce seule, pour du bois de 4 po et plus, et si la ligne vaut aussi pour une seule.",
  "4 in beams take the size factor of thin timber from a depth of":
    "Les poutres de 4 po prennent le facteur de grosseur du bois mince à partir d'une hauteur de",
  "The table's 4x10 and 4x12 come out so; the published factor is one step larger.":
    "Les 4x10 et 4x12 du tableau en sortent ainsi ; le facteur publié est un pas plus grand.",
  "Load on a beam of the first species group, share":
    "Charge sur une poutre du premier groupe d'essences, part",
  "With the weakest species of this group, its printed spans come out for a load this little smaller.":
    "Avec la plus faible essence de ce groupe, ses portées imprimées correspondent à une charge un peu plus petite.",
  "Floor that the beam carries": "Plancher que porte la poutre",
  "Half the joists' span, and more where they run out over the beam: (L + a)² ÷ (2 L).":
    "La moitié de la portée des solives, et plus si elles dépassent la poutre : (L + a)² ÷ (2 L).",
  "Load on the beam": "Charge sur la poutre",
  "Live and dead, along the beam.": "Surcharge et charge permanente, le long de la poutre.",
  "Live load on the beam": "Surcharge sur la poutre",
}
