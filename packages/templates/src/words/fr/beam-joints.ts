import type { Texts } from "../dictionary.ts"

export const beamJoints: Texts = {
  "Beams and their joints": "Poutres et leurs joints",
  "What to cut each plank from, and over which supports planks meet.":
    "Dans quoi couper chaque madrier, et sur quels appuis les madriers se rejoignent.",
  "Lengths sold, beams": "Longueurs vendues, poutres",
  "The lengths on the rack. A line longer than the longest is made of pieces that meet over a pad.":
    "Les longueurs du présentoir. Une ligne plus longue que la plus longue se fait de morceaux qui se rejoignent sur une dalle d'appui.",
  "Each piece must lie on the pad by at least this much, or a little movement lets it slip off.":
    "Chaque morceau doit reposer au moins d'autant sur la dalle d'appui, sinon un petit mouvement le fait glisser.",
  "Joints of two planks side by side are kept this far apart, so that at every joint another plank runs through.":
    "Les joints de deux madriers côte à côte restent à cette distance, pour qu'à chaque joint un autre madrier soit continu.",
  "Sometimes a line can end a little inside the end and so be cut from the lengths you have. It must still lie full on the last pad.":
    "Parfois une ligne peut finir un peu avant le bout et se couper ainsi dans les longueurs que vous avez. Elle doit quand même reposer en plein sur la dernière dalle d'appui.",
  "Pieces of the beams": "Morceaux des poutres",
  "What to cut for each plank of each beam.": "Quoi couper pour chaque madrier de chaque poutre.",
  Plank: "Madrier",
  "Counted beam by beam, and across each beam from its near face.":
    "Compté poutre par poutre, et en travers de chacune depuis sa face proche.",
  "Where the piece ends: in the middle of a pad, or at the end.":
    "Où finit le morceau : au milieu d'une dalle d'appui, ou au bout.",
  "The length on sale that the piece comes out of: the cheapest by your prices, the shortest where there are none. The cutting plan may put two into one.":
    "La longueur vendue d'où sort le morceau : la moins chère selon vos prix, la plus courte là où il n'y en a pas. Le plan de coupe peut en mettre deux dans une.",
  "Joints of the beams": "Joints des poutres",
  "Where two pieces of one line meet, always over a pad; neighbouring lines meet over different ones.":
    "Là où deux morceaux d'une ligne se rejoignent, toujours sur une dalle d'appui ; les lignes voisines se rejoignent sur d'autres.",
  "Tie the two ends of every joint together beside the joint; a pad alone does not hold them.":
    "Reliez les deux bouts de chaque joint par le côté ; une dalle d'appui seule ne les retient pas.",
  "As in the pieces.": "Comme dans les morceaux.",
  "Over pad": "Sur la dalle d'appui",
  "The pad's number, from the first end.": "Le numéro de la dalle d'appui, depuis le premier bout.",
  "How much of the pad lies under each of the two ends.":
    "Quelle longueur de la dalle d'appui est sous chacun des deux bouts.",
  "Pieces of beam": "Morceaux de poutre",
  "As many pieces to cut and to screw together.": "Autant de morceaux à couper et à visser ensemble.",
  "Joints in the beams": "Joints dans les poutres",
  "None where planks are sold as long as the platform.":
    "Aucun si des madriers se vendent aussi longs que la plateforme.",
  "Rest of each end at a joint": "Appui de chaque bout à un joint",
  "Two ends share the length of one pad.": "Deux bouts se partagent la longueur d'une dalle d'appui.",
  "Shortest pad that may carry a joint": "Plus courte dalle d'appui qui peut porter un joint",
  "Do both ends rest far enough on a pad?": "Les deux bouts reposent-ils assez sur une dalle d'appui ?",
  "A joint is only as good as what is under it.": "Un joint ne vaut que ce qui est dessous.",
  "Use pads at least {joint_block_length_least} long, with their length along the beam.":
    "Prenez des dalles d'appui d'au moins {joint_block_length_least} de long, leur longueur le long de la poutre.",
  "Each plank of the beams": "Chaque madrier des poutres",
  "Where it lies in its beam, so that its pieces and joints can be drawn.":
    "Où il se trouve dans sa poutre, pour que ses morceaux et ses joints puissent être dessinés.",
  "Thickness of the plank": "Épaisseur du madrier",
  "Each plank's share of its beam.": "La part de chaque madrier dans sa poutre.",
  "Middle, across the width": "Milieu, en travers de la largeur",
  "From the frame's first long edge to the middle of the plank.":
    "Du premier long bord du cadre au milieu du madrier.",
}
