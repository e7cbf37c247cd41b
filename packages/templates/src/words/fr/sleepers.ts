import type { Texts } from "../dictionary.ts"

export const sleepers: Texts = {
  "Thick timbers lie across the walk, each on its own strip of stone, and carry the stringers.":
    "De gros bois en travers du sentier, chacun sur sa bande de pierre, portent les longerons.",
  "Size of the sleepers": "Grosseur des traverses",
  "A sleeper spreads the stringers' load along the stone. It must be wide enough for two stringer ends to meet on it.":
    "Une traverse étale la charge des longerons sur la pierre. Elle doit être assez large pour que deux bouts de longeron s'y rejoignent.",
  "A sleeper lies on stone that stays damp: it must be treated for ground contact. Wear gloves, goggles and a dust mask when you saw it, and never burn the off-cuts.":
    "Une traverse repose sur une pierre qui reste humide : elle doit être traitée pour le contact avec le sol. Portez gants, lunettes et masque antipoussière pour la scier, et ne brûlez jamais les chutes.",
  "Width of a sleeper along the walk, real": "Largeur réelle d'une traverse le long du sentier",
  "The narrow face: the seat that two stringer ends share where they meet.":
    "La face étroite : le siège que partagent deux bouts de longeron là où ils se rejoignent.",
  "Depth of a sleeper, real": "Hauteur réelle d'une traverse",
  "Length of a sleeper": "Longueur d'une traverse",
  "Across the walk, under all the stringers. A little under the walk's width hides its ends, keeps rain off them, and lets two come out of one board in spite of the saw cut.":
    "En travers du sentier, sous tous les longerons. Un peu moins que la largeur du sentier cache ses bouts, les garde de la pluie, et permet d'en tirer deux d'une pièce malgré le trait de scie.",
  "Shortest sleeper that carries them all": "Plus courte traverse qui les porte tous",
  "From the outer face of the first stringer to the outer face of the last.":
    "De la face extérieure du premier longeron à celle du dernier.",
  "Do the outer stringers lie full on the sleepers?":
    "Les longerons extérieurs reposent-ils en plein sur les traverses ?",
  "A stringer that lies half off its sleeper twists under a foot at the edge.":
    "Un longeron à moitié hors de sa traverse se tord sous un pied au bord.",
  "Make the sleepers at least {sleeper_length_least} long, or set the outer stringers further in.":
    "Faites les traverses d'au moins {sleeper_length_least} de long, ou mettez les longerons extérieurs plus en retrait.",
  "Widest spacing of the sleepers": "Plus grand espacement des traverses",
  "How far a stringer may span from sleeper to sleeper. Closer sleepers make a stiffer walk and more digging.":
    "Jusqu'où un longeron peut porter d'une traverse à l'autre. Des traverses plus rapprochées font un sentier plus rigide et plus de creusage.",
  "First sleeper in from the end": "Première traverse à cette distance du bout",
  "From the walk's end to the middle of the first and the last sleeper, so that the stringers' ends lie full on them.":
    "Du bout du sentier au milieu de la première et de la dernière traverse, pour que les bouts des longerons y reposent en plein.",
  "Spacing of the sleepers, centre to centre": "Espacement des traverses, centre à centre",
  "The spaces shared out evenly. Mark this along the string.":
    "Les intervalles répartis également. Marquez ceci le long du cordeau.",
  "Each sleeper": "Chaque traverse",
  "The marks on the string, and what to cut.": "Les marques sur le cordeau, et quoi couper.",
  Sleeper: "Traverse",
  "Counted along the walk from the first end.": "Comptée le long du sentier depuis le premier bout.",
  "Along the walk": "Le long du sentier",
  "From the first end to the middle of the sleeper.": "Du premier bout au milieu de la traverse.",
  "All alike.": "Toutes pareilles.",
  "Half way to the sleeper before it, or the end of the walk.":
    "À mi-chemin de la traverse d'avant, ou le bout du sentier.",
  "Half way to the next sleeper, or the end of the walk.":
    "À mi-chemin de la traverse suivante, ou le bout du sentier.",
  "How much of the walk's length rests on this sleeper.":
    "Quelle part de la longueur du sentier repose sur cette traverse.",
  "Seat along the stringer": "Siège le long du longeron",
  "The sleeper's width: what a stringer, or the two ends at a joint, have to lie on.":
    "La largeur de la traverse : ce sur quoi repose un longeron, ou les deux bouts d'un joint.",
  "Lengths sold, sleepers": "Longueurs vendues, traverses",
  "The lengths your yard has in this size. Each sleeper is one piece.":
    "Les longueurs que tient votre cour à bois dans cette grosseur. Chaque traverse est d'un seul morceau.",
  "Longest sleeper that can be bought": "Plus longue traverse qu'on peut acheter",
  "A sleeper comes out of one piece": "Une traverse sort d'un seul morceau",
  "A sleeper of two pieces would hinge in the middle of the walk.":
    "Une traverse de deux morceaux plierait au milieu du sentier.",
  "The longest sleeper to be had is {sleeper_stock_longest}: make the walk narrower, or add a longer length.":
    "La plus longue traverse disponible fait {sleeper_stock_longest} : rétrécissez le sentier, ou ajoutez une longueur plus longue.",
}
