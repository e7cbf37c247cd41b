import type { Texts } from "../dictionary.ts"

export const timber: Texts = {
  "Timber to buy and to cut": "Bois à acheter et à couper",
  "All pieces of one size are cut together from the lengths sold, with the width of the saw cut counted, so that it costs as little as possible by your prices. Without prices, as little as possible is bought.":
    "Toutes les pièces d'une grosseur se coupent ensemble dans les longueurs vendues, trait de scie compté, pour que ce soit le moins cher d'après vos prix. Sans prix, on achète le moins possible.",
  "Width of a saw cut": "Largeur d'un trait de scie",
  "Every cut turns this much into dust. Four 36 in pieces do not come out of a 12 ft board.":
    "Chaque coupe en fait de la poussière. Quatre morceaux de 36 po ne sortent pas d'une planche de 12 pi.",
  "Trimmed off each end of a board": "Éboutage de chaque bout d'une planche",
  "Board ends are split, wet or not square. Enter what you saw off; boards are often a little longer than they say, and then it is nothing.":
    "Les bouts sont fendus, mouillés ou hors d'équerre. Entrez ce que vous sciez ; les planches sont souvent un peu plus longues que dit, et c'est alors zéro.",
  "Boards and off-cuts you have": "Planches et chutes que vous avez",
  "Straight, sound pieces of the same timber that lie in your shed. They are cut before any board is bought.":
    "Des morceaux droits et sains du même bois, dans votre remise. Ils se coupent avant d'acheter une planche.",
  "Use only timber treated for the place that it goes to; old treated wood can hold arsenic.":
    "N'utilisez que du bois traité pour l'endroit où il va ; du vieux bois traité peut contenir de l'arsenic.",
  "The size as it is called here: it has to be the very same.":
    "La grosseur telle que nommée ici : ce doit être exactement la même.",
  "Of the sound part, splits sawn off.": "De la partie saine, fentes sciées.",
  "Of this length.": "De cette longueur.",
  "Pieces wanted": "Morceaux voulus",
  "Everything that has to be cut, like with like.": "Tout ce qui doit être coupé, les pareils ensemble.",
  For: "Pour",
  "The size to ask for.": "La grosseur à demander.",
  "Measure the place before you cut the last ones.": "Mesurez la place avant de couper les derniers.",
  "How many alike.": "Combien de pareils.",
  Wood: "Bois",
  "By the real size.": "D'après la grosseur réelle.",
  "Timber to buy": "Bois à acheter",
  "Whole boards of the lengths sold: those of the cutting plan, without what you have already.":
    "Des planches entières des longueurs vendues : celles du plan de coupe, sans ce que vous avez déjà.",
  "Nothing is added here for boards that turn out bent or split. Look each one over in the yard, or buy one or two more of what you need most of.":
    "Rien n'est ajouté ici pour des planches croches ou fendues. Examinez chacune à la cour, ou achetez-en une ou deux de plus de ce qu'il vous faut le plus.",
  "Length sold": "Longueur vendue",
  "The board to ask for.": "La planche à demander.",
  Boards: "Planches",
  "How many of them.": "Combien.",
  "Board feet": "Pieds-planche",
  "By the size in the name, as timber is priced.": "D'après la grosseur du nom, comme se facture le bois.",
  "By the real size: what there is to carry.": "D'après la grosseur réelle : ce qu'il y a à porter.",
  "What to cut from each board": "Quoi couper dans chaque planche",
  "Cut the longest piece of a board first. A board that was spoilt can then still give the shorter ones.":
    "Coupez d'abord le plus long morceau d'une planche. Une planche gâchée peut alors donner encore les plus courts.",
  "Dust of treated wood is harmful: saw outdoors with mask, goggles and gloves. Never burn the off-cuts. Brush every cut end with preservative.":
    "La poussière de bois traité est nocive : sciez dehors avec masque, lunettes et gants. Ne brûlez jamais les chutes. Badigeonnez chaque bout coupé de préservatif.",
  Board: "Planche",
  "Write the number on the board.": "Écrivez le numéro sur la planche.",
  "Which board to take.": "Quelle planche prendre.",
  "Of your own": "Des vôtres",
  "The length of a board that you have already, once a board; nothing for one that is bought.":
    "La longueur d'une planche que vous avez déjà, une fois par planche ; rien pour une achetée.",
  "Write it on the piece.": "Écrivez-le sur le morceau.",
  "Which one": "Lequel",
  "Its line and place, or its number among its like. Write it on the piece too.":
    "Sa ligne et sa place, ou son numéro parmi les pareils. Écrivez-le aussi sur le morceau.",
  "Of the board, after its last piece.": "De la planche, après son dernier morceau.",
  "Timber bought, end to end": "Bois acheté, bout à bout",
  "What the plan makes small, as long as your prices have none of it. Of a size with a price it makes the money small.":
    "Ce que le plan réduit, tant que vos prix n'en disent rien. D'une grosseur qui a un prix, il réduit l'argent.",
  "Timber used, end to end": "Bois utilisé, bout à bout",
  "The pieces alone.": "Les morceaux seuls.",
  "Timber left over": "Bois qui reste",
  "Off-cuts and sawdust, as a part of the length bought, and of your own that is cut.":
    "Chutes et sciure, en part de la longueur achetée et de la vôtre qui est coupée.",
  "Treated off-cuts may not be burnt or composted: ask where they may be taken.":
    "Les chutes traitées ne se brûlent ni ne se compostent : demandez où les apporter.",
  "A board foot": "Un pied-planche",
  "One foot of a board one inch thick and one foot wide, by its name. Yards price timber by it.":
    "Un pied d'une planche épaisse d'un pouce et large d'un pied, d'après son nom. Les cours facturent ainsi.",
  "Thinner boards count as": "Les planches plus minces comptent pour",
  "A board under an inch is sawn from one of an inch.":
    "Une planche de moins d'un pouce est sciée dans une d'un pouce.",
  "Sizes by name": "Grosseurs par nom",
  "A 2x6 was two inches by six before it was dried and planed. Board feet go by the name.":
    "Un 2x6 faisait deux pouces sur six avant séchage et rabotage. Les pieds-planche suivent le nom.",
  Name: "Nom",
  "What it is called in the shop.": "Comment on l'appelle au magasin.",
  "Thickness in the name": "Épaisseur dans le nom",
  "The first number. Sizes in millimetres are named by their real size.":
    "Le premier nombre. Les grosseurs en millimètres portent leur grosseur réelle.",
  "Width in the name": "Largeur dans le nom",
  "The second number.": "Le second nombre.",
  "Board feet bought": "Pieds-planche achetés",
  "By the sizes in the names: compare prices with it, not weights.":
    "D'après les grosseurs des noms : comparez les prix avec, pas les poids.",
  "Wood bought": "Bois acheté",
  "By the real sizes: weight follows from this.": "D'après les grosseurs réelles : le poids en découle.",
}
