import type { Texts } from "../dictionary.ts"

export const skidJoints: Texts = {
  "Skids and their joints": "Patins et leurs joints",
  "Which lengths to buy, and over which supports the pieces of one line meet.":
    "Quelles longueurs acheter, et sur quels appuis se rejoignent les morceaux d'une ligne.",
  "Lengths sold, skids": "Longueurs vendues, patins",
  "The lengths on the rack. A line longer than the longest is made of pieces that meet over a block.":
    "Les longueurs du présentoir. Une ligne plus longue que la plus longue se fait de morceaux qui se rejoignent sur un bloc.",
  "Least rest at a joint": "Appui minimal à un joint",
  "Each piece must lie on the block by at least this much, or a little movement lets it slip off.":
    "Chaque morceau doit reposer au moins d'autant sur le bloc, sinon un petit mouvement le fait glisser.",
  "Least stagger between neighbours": "Décalage minimal entre voisins",
  "Joints of two lines side by side are kept this far apart, so that nothing hinges right across.":
    "Les joints de deux lignes voisines restent à cette distance, pour que rien ne plie d'un travers à l'autre.",
  "Shortest piece in a line": "Plus court morceau d'une ligne",
  "A stub rocks. Pieces shorter than this are not used, unless the whole line is one piece.":
    "Un bout trop court bascule. On n'en prend pas de plus court que cela, sauf si toute la ligne est d'un morceau.",
  "A line may stop short by": "Une ligne peut s'arrêter avant de",
  "Sometimes a line can end a little inside the end and so be cut from the lengths you have. It must still lie full on the last block.":
    "Parfois une ligne peut finir un peu avant le bout et se couper ainsi dans les longueurs que vous avez. Elle doit quand même reposer en plein sur le dernier bloc.",
  "Pieces of the skids": "Morceaux des patins",
  "What to cut each line from: every piece has a board of its own.":
    "Ce qu'il faut couper pour chaque ligne : chaque morceau a sa propre pièce.",
  "Long boards are a lift for two. Bend your knees, and lower the board together.":
    "Les longues pièces se soulèvent à deux. Pliez les genoux, et déposez-les ensemble.",
  "The line of skids, as in the layout.": "La ligne de patins, comme dans le plan.",
  Piece: "Morceau",
  From: "De",
  "Where the piece begins, along the length.": "Où commence le morceau, sur la longueur.",
  To: "À",
  "Where the piece ends: in the middle of a block, or at the end.":
    "Où finit le morceau : au milieu d'un bloc, ou au bout.",
  "Cut to": "Couper à",
  "The length to cut.": "La longueur à couper.",
  "Bought as": "Acheté en",
  "The length on sale that the piece comes out of: the cheapest by your prices, the shortest where there are none.":
    "La longueur vendue d'où sort le morceau : la moins chère selon vos prix, la plus courte là où il n'y en a pas.",
  "Joints of the skids": "Joints des patins",
  "Where two pieces of one line meet, always over a block; neighbouring lines meet over different ones.":
    "Là où deux morceaux d'une ligne se rejoignent, toujours sur un bloc ; les lignes voisines se rejoignent sur d'autres.",
  "Tie the two ends of every joint together beside the joint; a block alone does not hold them.":
    "Reliez les deux bouts de chaque joint par le côté ; un bloc seul ne les retient pas.",
  "Where the two ends meet.": "Où les deux bouts se rejoignent.",
  "Over block": "Sur le bloc",
  "The block's number, from the first end.": "Le numéro du bloc, depuis le premier bout.",
  "Rest of each end": "Appui de chaque bout",
  "How much of the block lies under each of the two ends.":
    "Quelle longueur du bloc est sous chacun des deux bouts.",
  "Pieces of skid": "Morceaux de patin",
  "As many boards to buy: each piece is cut from a board of its own.":
    "Autant de pièces à acheter : chaque morceau se coupe dans sa propre pièce.",
  "Joints in the skids": "Joints dans les patins",
  "Each joint has to be held together from the side.": "Chaque joint doit être retenu par le côté.",
  "Rest of each piece at a joint": "Appui de chaque morceau à un joint",
  "Two ends share the length of one block, half each.":
    "Deux bouts se partagent la longueur d'un bloc, la moitié chacun.",
  "Do both ends rest far enough on a block?": "Les deux bouts reposent-ils assez sur un bloc ?",
  "A joint is only as good as the block under it.": "Un joint ne vaut que le bloc dessous.",
  "Use blocks at least {joint_block_length_least} long, with their length along the skid.":
    "Prenez des blocs d'au moins {joint_block_length_least} de long, leur longueur le long du patin.",
  "Shortest block that may carry a joint": "Plus court bloc qui peut porter un joint",
  "Twice the least rest.": "Deux fois l'appui minimal.",
  "Skid timber bought": "Bois de patin acheté",
  "All the boards end to end, as bought.": "Toutes les pièces bout à bout, telles qu'achetées.",
  "Length of a slab under a joint": "Longueur d'une dalle sous un joint",
  "Width of a slab": "Largeur d'une dalle",
  "Thickness of a slab": "Épaisseur d'une dalle",
  "The slab is let into the stone, its top level with the pad's.":
    "La dalle est encastrée dans la pierre, son dessus au niveau de l'assise.",
  "Where two pieces of one line meet, always over a slab; neighbouring lines meet over different ones.":
    "Là où deux morceaux d'une ligne se rejoignent, toujours sur une dalle ; les lignes voisines se rejoignent sur d'autres.",
  "Two ends share the length of one slab, half each.":
    "Deux bouts se partagent la longueur d'une dalle, la moitié chacun.",
  "Do both ends rest far enough on a slab?": "Les deux bouts reposent-ils assez sur une dalle ?",
  "A joint on loose stone alone opens as the stone settles.":
    "Un joint sur la seule pierre s'ouvre à mesure qu'elle se tasse.",
  Slabs: "Dalles",
  "One under every joint; none where every skid is one piece.":
    "Une sous chaque joint ; aucune si chaque patin est d'un seul morceau.",
}
