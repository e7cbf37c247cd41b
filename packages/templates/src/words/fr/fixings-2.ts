import type { Texts } from "../dictionary.ts"

export const fixings2: Texts = {
  "Shortest that holds": "La plus courte qui tient",
  "Through the first piece and far enough into the second.":
    "À travers la première pièce et assez loin dans la seconde.",
  "Length to ask for": "Longueur à demander",
  "The next length that is made.": "La prochaine longueur qui se fait.",
  "Metal or coating": "Métal ou revêtement",
  "As chosen above; its check says whether the timber allows it.":
    "Comme choisi ci-dessus ; sa vérification dit si le bois l'admet.",
  "Surface screws": "Vis de surface",
  "Over all joints that take them.": "Sur tous les joints qui en prennent.",
  "Spare screws": "Vis de réserve",
  "Some break, some fall into the grass. Screws are what people run out of most often.":
    "Certaines cassent, d'autres tombent dans l'herbe. Les vis sont ce dont on manque le plus souvent.",
  "Surface screws in a box": "Vis de surface par boîte",
  "It is on the box. If yours are sold by weight, ask how many that is.":
    "C'est sur la boîte. Si les vôtres se vendent au poids, demandez combien cela fait.",
  "Surface screws with the spare": "Vis de surface avec la réserve",
  "Rounded up once, at the end.": "Arrondi une fois vers le haut, à la fin.",
  "Boxes of surface screws": "Boîtes de vis de surface",
  "Whole boxes.": "Des boîtes entières.",
  "Frame screws in a box": "Vis de charpente par boîte",
  "Frame screws with the spare": "Vis de charpente avec la réserve",
  "Boxes of frame screws": "Boîtes de vis de charpente",
  "Screws, box by box": "Vis, boîte par boîte",
  "One length that serves every joint of a box saves a second kind; the joints' own table says what each alone would take.":
    "Une longueur qui sert à chaque joint d'une boîte épargne une seconde sorte ; le tableau des joints dit ce que chacun prendrait seul.",
  Box: "Boîte",
  "Through the thickest piece that they hold, and far enough into the next.":
    "À travers la pièce la plus épaisse qu'elles tiennent, et assez loin dans la suivante.",
  "If none is lost. Where it is large, a smaller box may do.":
    "Si aucune ne se perd. Si le reste est grand, une boîte plus petite peut suffire.",
  "How well metal connectors are protected": "À quel point les connecteurs de métal sont protégés",
  "The same order of ranks as for the screws. The number after the G is how much zinc the sheet carries.":
    "Le même ordre de rangs que pour les vis. Le nombre après le G dit combien de zinc porte la tôle.",
  Connector: "Connecteur",
  "It is stamped on the piece or printed on its label.":
    "C'est estampillé sur la pièce ou imprimé sur son étiquette.",
  "The code takes zinc G185 as the least on treated wood outdoors, where the makers say nothing else.":
    "Le code veut au moins le zinc G185 sur du bois traité dehors, quand les fabricants ne disent rien d'autre.",
  "Two metals that touch in wet wood make a small battery, and one of them is eaten.":
    "Deux métaux qui se touchent dans du bois mouillé font une petite pile, et l'un d'eux est mangé.",
  "Metal connectors": "Connecteurs de métal",
  "Ties and hangers are thin: where the zinc is gone, the steel is soon gone as well.":
    "Attaches et étriers sont minces : quand le zinc est parti, l'acier l'est bientôt aussi.",
  "zinc G60 or G90": "zinc G60 ou G90",
  "zinc G185": "zinc G185",
  "hot-dip zinc after making": "zinc à chaud après fabrication",
  "Nails in one connector": "Clous dans un connecteur",
  "Every hole that its maker says, filled with the nail or screw that he names. Read it off the piece that you buy.":
    "Chaque trou que dit son fabricant, rempli du clou ou de la vis qu'il nomme. Lisez-le sur la pièce que vous achetez.",
  "Use the nails or screws that the maker of the connector names, in every hole that he says.":
    "Prenez les clous ou les vis que nomme le fabricant du connecteur, dans tous les trous qu'il dit.",
  "Ties and hangers": "Attaches et étriers",
  "One a place, so they are counted where they go.": "Un par endroit ; ils se comptent donc là où ils vont.",
  "Where they go.": "Où ils vont.",
  "What to ask for.": "Quoi demander.",
  Pieces: "Pièces",
  "One at each place.": "Une à chaque endroit.",
  Nails: "Clous",
  "Of the connectors' own metal.": "Du même métal que les connecteurs.",
  "Connectors and their nails alike.": "Connecteurs et leurs clous pareillement.",
  "Nails for connectors": "Clous pour connecteurs",
  "Over all connectors, before any spare.": "Sur tous les connecteurs, avant toute réserve.",
  "Least connector for this timber and place": "Connecteur minimal pour ce bois et cet endroit",
  "Connectors that the timber does not eat": "Des connecteurs que le bois ne mange pas",
  "A tie that has rusted through holds nothing, and nobody sees it under the surface.":
    "Une attache rouillée de part en part ne tient rien, et personne ne la voit sous la surface.",
  "Take {connector_needed} or better. {fastener_reason}":
    "Prenez {connector_needed} ou mieux. {fastener_reason}",
  "Screws and connectors of one metal": "Vis et connecteurs d'un même métal",
  "Stainless screws through a zinc tie eat the tie's zinc.":
    "Des vis en inox dans une attache de zinc mangent le zinc de l'attache.",
  "The screws are {screw_coating} and the connectors {connector_coating}: take both of one metal.":
    "Les vis sont en {screw_coating} et les connecteurs en {connector_coating} : prenez les deux du même métal.",
  "Screws where a board crosses a stringer": "Vis là où une planche croise un longeron",
  "One near either edge of the board: it cannot cup, and no one trips on it.":
    "Une près de chaque bord de la planche : elle ne peut pas se creuser, et personne n'y trébuche.",
  "Every row crosses every stringer, the outer ones too. Where two boards meet, both ends are screwed down, which is one crossing more.":
    "Chaque rangée croise chaque longeron, les extérieurs aussi. Là où deux planches se rejoignent, les deux bouts se vissent, ce qui fait un croisement de plus.",
  "Frame screws where a stringer lies on a sleeper":
    "Vis de charpente là où un longeron repose sur une traverse",
  "Driven at a slant, one from either face, they keep the stringer upright on its mark. The code's table asks for three nails where nothing else holds it.":
    "Posées en biais, une de chaque face, elles gardent le longeron debout à sa marque. Le tableau du code demande trois clous si rien d'autre ne le tient.",
  "Places where a stringer lies on a sleeper": "Endroits où un longeron repose sur une traverse",
  "Every line lies on every sleeper. Where two pieces meet, both ends are screwed down, which is one place more.":
    "Chaque ligne repose sur chaque traverse. Là où deux morceaux se rejoignent, les deux bouts se vissent, ce qui fait un endroit de plus.",
  "Frame screws at the head of a ramp stringer or carriage":
    "Vis de charpente en tête d'un longeron de rampe ou d'un limon",
  "They hold the head in its place. The weight should lie on a cleat or a metal hanger below, not on screws alone.":
    "Elles tiennent la tête en place. Le poids devrait reposer sur un tasseau ou un étrier dessous, pas sur les vis seules.",
  "Packers and screws of a kerb, at most apart": "Cales et vis d'un chasse-roue, au plus à",
  "A kerb that bends between its packers works loose.":
    "Un chasse-roue qui plie entre ses cales se desserre.",
  "Kerb screws at a packer": "Vis de chasse-roue par cale",
  "Side by side, so that the packer cannot turn.": "Côte à côte, pour que la cale ne tourne pas.",
  Packers: "Cales",
  "Along each kerb piece, one at both its ends.":
    "Le long de chaque morceau de chasse-roue, une à ses deux bouts.",
  "Screws along a beam, places at most apart": "Vis le long d'une poutre, endroits au plus à",
  "The planks of a beam carry together only if they are held together.":
    "Les madriers d'une poutre ne portent ensemble que s'ils sont tenus ensemble.",
  "Screws at a place along a beam": "Vis par endroit le long d'une poutre",
  "One near the top and one near the bottom.": "Une près du haut et une près du bas.",
  "Places along the beams": "Endroits le long des poutres",
  "Along every face where two planks meet, both ends counted.":
    "Le long de chaque face où deux madriers se touchent, les deux bouts comptés.",
  "Ties where a joist crosses a beam": "Attaches là où une solive croise une poutre",
  "A small metal tie keeps the joist on the beam and upright.":
    "Une petite attache de métal garde la solive sur la poutre, et debout.",
  "Every joist crosses every beam.": "Chaque solive croise chaque poutre.",
  "Screws where a board crosses a joist": "Vis là où une planche croise une solive",
  "Crossings of boards and joists": "Croisements de planches et de solives",
  "Every row crosses every joist, the outer ones too. Where two boards meet, both ends are screwed down, which is one crossing more.":
    "Chaque rangée croise chaque solive, les extérieures aussi. Là où deux planches se rejoignent, les deux bouts se vissent, ce qui fait un croisement de plus.",
  "Ties where a joist crosses a bearer": "Attaches là où une solive croise une lambourde",
  "A small metal tie keeps the joist on the bearer when wind lifts what stands on it.":
    "Une petite attache de métal garde la solive sur la lambourde quand le vent soulève ce qui est dessus.",
  "Every joist crosses every bearer.": "Chaque solive croise chaque lambourde.",
}
