import type { Texts } from "../dictionary.ts"

export const stringerJoints: Texts = {
  "Stringers and their joints": "Longerons et leurs joints",
  "Which lengths to buy, and over which sleepers the pieces of one line meet.":
    "Quelles longueurs acheter, et sur quelles traverses se rejoignent les morceaux d'une ligne.",
  "Lengths sold, stringers": "Longueurs vendues, longerons",
  "The lengths on the rack. A line longer than the longest is made of pieces that meet over a sleeper.":
    "Les longueurs du présentoir. Une ligne plus longue que la plus longue se fait de morceaux qui se rejoignent sur une traverse.",
  "Each piece must lie on the sleeper by at least this much, or a little movement lets it slip off.":
    "Chaque morceau doit reposer au moins d'autant sur la traverse, sinon un petit mouvement le fait glisser.",
  "Sometimes a line can end a little inside the end and so be cut from the lengths you have. It must still lie full on the last sleeper.":
    "Parfois une ligne peut finir un peu avant le bout et se couper ainsi dans les longueurs que vous avez. Elle doit quand même reposer en plein sur la dernière traverse.",
  "Pieces of the stringers": "Morceaux des longerons",
  "What to cut for each line.": "Quoi couper pour chaque ligne.",
  "The line of stringers, as in the layout.": "La ligne de longerons, comme dans le plan.",
  "Where the piece ends: in the middle of a sleeper, or at the end.":
    "Où finit le morceau : au milieu d'une traverse, ou au bout.",
  "Comes out of": "Sort de",
  "The length on sale that the piece comes out of: the cheapest by your prices, the shortest where there are none. The cutting plan may put two into one, and cuts the cleats from what is left.":
    "La longueur vendue d'où sort le morceau : la moins chère selon vos prix, la plus courte là où il n'y en a pas. Le plan de coupe peut en mettre deux dans une, et tire les éclisses de ce qui reste.",
  "Joints of the stringers": "Joints des longerons",
  "Where two pieces of one line meet, always over a sleeper; neighbouring lines meet over different ones.":
    "Là où deux morceaux d'une ligne se rejoignent, toujours sur une traverse ; les lignes voisines se rejoignent sur d'autres.",
  "Tie the two ends of every joint together beside the joint; a sleeper alone does not hold them.":
    "Reliez les deux bouts de chaque joint par le côté ; une traverse seule ne les retient pas.",
  "Over sleeper": "Sur la traverse",
  "The sleeper's number, from the first end.": "Le numéro de la traverse, depuis le premier bout.",
  "How much of the sleeper lies under each of the two ends.":
    "Quelle largeur de la traverse est sous chacun des deux bouts.",
  "Pieces of stringer": "Morceaux de longeron",
  "As many pieces to cut and to lay.": "Autant de morceaux à couper et à poser.",
  "Joints in the stringers": "Joints dans les longerons",
  "Two ends share the width of one sleeper, half each.":
    "Deux bouts se partagent la largeur d'une traverse, la moitié chacun.",
  "Narrowest sleeper that may carry a joint": "Plus étroite traverse qui peut porter un joint",
  "Do both ends rest far enough on a sleeper?": "Les deux bouts reposent-ils assez sur une traverse ?",
  "A joint is only as good as the sleeper under it.": "Un joint ne vaut que la traverse dessous.",
  "Use sleepers at least {joint_sleeper_width_least} wide.":
    "Prenez des traverses d'au moins {joint_sleeper_width_least} de large.",
}
