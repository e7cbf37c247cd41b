import type { Texts } from "../dictionary.ts"

export const wind1: Texts = {
  "Wind on the net and its posts": "Vent sur le filet et ses poteaux",
  "What a bare net catches, how hard that bends its posts, and how deep a post that stands in the ground must go.":
    "Ce que prend un filet nu, comment cela fléchit ses poteaux, et jusqu'où doit descendre un poteau planté dans le sol.",
  "Wind speed of your place": "Vitesse du vent chez vous",
  "The gust for which buildings near you are designed: ask your authority, or look at its map. The speed to start from is one town's.":
    "La rafale pour laquelle on conçoit les bâtiments de chez vous : demandez à votre municipalité, ou voyez sa carte. La vitesse de départ est celle d'une ville.",
  "A rough check for your own eyes. Your local code gives the wind speed and how to use it; a licensed engineer decides where something could blow onto people.":
    "Une vérification grossière, pour vous. Votre code local donne la vitesse du vent et son usage ; un ingénieur décide là où quelque chose pourrait s'envoler sur des gens.",
  "On a coast, a ridge or an island the wind is stronger than inland.":
    "Sur une côte, une crête ou une île, le vent est plus fort qu'à l'intérieur.",
  "What the wind blows over before it reaches you": "Ce que le vent survole avant de vous atteindre",
  "B: houses or woods all round. C: open fields with a few trees. D: open water or flat shore. If in doubt take the later letter.":
    "B : maisons ou bois tout autour. C : champs ouverts avec quelques arbres. D : eau libre ou rive plate. Dans le doute, prenez la lettre suivante.",
  "Exposure near the ground": "Exposition près du sol",
  "Houses and woods slow the wind near the ground; water does not.":
    "Maisons et bois ralentissent le vent près du sol ; l'eau, non.",
  Exposure: "Exposition",
  "As in the choice above.": "Comme dans le choix ci-dessus.",
  "At 15 ft and lower. For B the higher of the two published values, the one for parts of a building.":
    "À 15 pi et plus bas. Pour B, la plus haute des deux valeurs publiées, celle des parties d'un bâtiment.",
  "Factors of the wind": "Facteurs du vent",
  "In one row; each can be changed by itself, and then says so.":
    "En une ligne ; chacun peut être changé à part, et le dit alors.",
  "Pressure, if your authority gives one": "Pression, si votre municipalité en donne une",
  "Some codes print a pressure for each town in place of a speed. 0: worked out from the speed.":
    "Certains codes impriment une pression par ville au lieu d'une vitesse. 0 : calculée d'après la vitesse.",
  "Hill factor": "Facteur de colline",
  "Wind speeds up over the brow of a hill. 1 on flat ground; on a ridge or near the top of a steep slope ask an engineer.":
    "Le vent accélère par-dessus le front d'une colline. 1 sur terrain plat ; sur une crête ou près du haut d'une forte pente, demandez à un ingénieur.",
  "Directions factor": "Facteur de direction",
  "The strongest wind seldom comes from the worst direction.":
    "Le vent le plus fort vient rarement de la pire direction.",
  "Gust factor": "Facteur de rafale",
  "A gust does not strike the whole of a stiff body at once.":
    "Une rafale ne frappe pas tout un corps rigide à la fois.",
  "Half of the air's density": "Moitié de la masse volumique de l'air",
  "What turns a speed squared into a pressure.": "Ce qui change une vitesse au carré en pression.",
  "Never taken below": "Jamais prise sous",
  "Design rules put a floor under the pressure on anything that stands in the wind.":
    "Les règles fixent un plancher à la pression sur tout ce qui est au vent.",
  "Share of this wind that is counted": "Part de ce vent qui compte",
  "Speeds on newer maps belong to a wind that is almost never seen, and a design by allowable loads may then count 0.6 of it. 1 is on the safe side.":
    "Les vitesses des cartes récentes sont celles d'un vent presque jamais vu ; un calcul par charges admissibles peut alors en compter 0,6. 1 est du côté sûr.",
  "Share of the weight that is counted on": "Part du poids sur laquelle on compte",
  "Weight holds things down, and may be less than you think. Only this share of it is set against the wind.":
    "Le poids retient, et peut être moindre que vous pensez. Seule cette part s'oppose au vent.",
  "Pressure of the wind": "Pression du vent",
  "From the wind speed of your place, step by step, in one row.":
    "D'après la vitesse du vent chez vous, pas à pas, en une ligne.",
  "Exposure factor of your place": "Facteur d'exposition chez vous",
  "From the table.": "Du tableau.",
  "From its speed": "D'après sa vitesse",
  "Twice the speed, four times the pressure.": "Deux fois la vitesse, quatre fois la pression.",
  "Used here": "Utilisée ici",
  "Yours if you entered one.": "La vôtre si vous en avez entré une.",
  "Thickness of the net's twine": "Épaisseur du fil du filet",
  "Thin twine catches less wind.": "Un fil mince prend moins de vent.",
  "Size of the net posts": "Grosseur des poteaux de filet",
  "Of the same species and grade as the frame. The wind may come from any side, so the narrow side counts.":
    "De la même essence et qualité que le cadre. Le vent peut venir de tout côté ; c'est donc le petit côté qui compte.",
  "clay or silt": "argile ou silt",
  sand: "sable",
  gravel: "gravier",
  "Figures of the net's wind and its posts": "Données du vent sur le filet et ses poteaux",
  "Round members are thin up to": "Pièces rondes minces jusqu'à",
  "Diameter squared times the wind's pressure: 2.5 squared, in feet and pounds per square foot.":
    "Le diamètre au carré fois la pression du vent : 2,5 au carré, en pieds et livres par pied carré.",
  "The table ends at a solid share of": "Le tableau s'arrête à une part pleine de",
  "More solid than this, it is a wall and not an open frame.":
    "Plus plein que cela, c'est un mur et non un cadre ouvert.",
  "Factor of a wall that stands free": "Facteur d'un mur isolé",
  "For a net that is covered all over.": "Pour un filet tout couvert.",
  "Upper bolt below the surface": "Boulon du haut sous la surface",
  "From the upper bolt to the lower": "Du boulon du haut à celui du bas",
  "Width of a post's hole in the ground": "Largeur du trou d'un poteau dans le sol",
  "The soil's pressure counts times": "La pression du sol compte fois",
  "Depth that the soil table is for": "Profondeur pour laquelle vaut le tableau du sol",
  "The table gives the pressure for each foot of depth.":
    "Le tableau donne la pression par pied de profondeur.",
  "Factor of the depth formula": "Facteur de la formule de profondeur",
  "As published.": "Tel que publié.",
  "Factor of the height in it": "Facteur de la hauteur dans celle-ci",
  "Soil counts no stronger below": "Le sol ne compte pas plus fort sous",
  "How hard wind pulls at the members of an open frame":
    "À quel point le vent tire sur les pièces d'un cadre ouvert",
  "The factor is on the member's own area, so it falls on few, thin twines most.":
    "Le facteur porte sur l'aire même de la pièce ; il pèse donc le plus sur des fils rares et minces.",
  "Solid share from": "Part pleine à partir de",
  "The table has three rows.": "Le tableau a trois lignes.",
  "Thin and round": "Mince et rond",
  "Twine and rope.": "Fil et corde.",
  "Thick and round": "Gros et rond",
  "Pipes in a strong wind.": "Des tuyaux dans un vent fort.",
  "Flat or square": "Plat ou carré",
  "Square posts.": "Des poteaux carrés.",
  "Sideways pressure that soil holds": "Pression latérale que tient le sol",
  "It grows with the depth.": "Elle croît avec la profondeur.",
  "Firm and undisturbed; nothing for peat, mud or fill.":
    "Ferme et non remanié ; rien pour tourbe, boue ou remblai.",
  "One foot down": "À un pied de profondeur",
  "Twice as much two feet down, and so on.": "Le double à deux pieds, et ainsi de suite.",
  "Wind on the net and on a post": "Vent sur le filet et sur un poteau",
  "Every step, in the order of the calculation, in one row.":
    "Chaque pas, dans l'ordre du calcul, en une ligne.",
  "A post that falls can hurt somebody. Your local code and someone who answers for it decide the posts and their fastening; take the net down before a storm and in winter.":
    "Un poteau qui tombe peut blesser. Votre code local et quelqu'un qui en répond décident des poteaux et de leur fixation ; démontez le filet avant une tempête et l'hiver.",
  "Solid share of the net": "Part pleine du filet",
  "Twine as a share of the net's area; the rest is holes.":
    "Le fil en part de l'aire du filet ; le reste est fait de trous.",
  "Open enough for the table": "Assez ouvert pour le tableau",
  "The wind's force on a net is only known here for open ones. With a wider mesh or thinner twine it is one.":
    "La force du vent sur un filet n'est connue ici que pour les ouverts. Avec une maille plus large ou un fil plus mince, il l'est.",
  "Shape factor of the net": "Facteur de forme du filet",
  "From the table, for round twine.": "Du tableau, pour un fil rond.",
  "Pressure on the net by the formula": "Pression sur le filet par la formule",
  "Per area of the whole net, holes and all.": "Par aire de tout le filet, trous compris.",
  "Pressure on the net used here": "Pression sur le filet utilisée ici",
  "Not less than the floor on the twine's own area.": "Pas moins que le plancher sur l'aire même du fil.",
  "Pressure if it were covered": "Pression s'il était couvert",
  "With a cloth on it, or full of ice or wet leaves, a net is a sail. Nothing here is sized for that.":
    "Avec une toile, ou plein de glace ou de feuilles mouillées, un filet est une voile. Rien ici n'est fait pour cela.",
  "Never hang a cloth, a tarpaulin or a banner on the net.":
    "Ne suspendez jamais de toile, de bâche ni de bannière au filet.",
  "Net that one post carries": "Filet que porte un poteau",
  "Half of the bay on each side, at the widest spacing.":
    "La moitié de l'intervalle de chaque côté, au plus grand espacement.",
  "Narrow side of a post, real": "Petit côté réel d'un poteau",
  "What it really measures; a 4x4 is 3 1/2 in.": "Ce qu'il mesure vraiment ; un 4x4 fait 3 1/2 po.",
  "Wind on a post, per length": "Vent sur un poteau, par longueur",
  "From the net, and on the post itself.": "Du filet, et sur le poteau lui-même.",
  "Wind on a post": "Vent sur un poteau",
  "All of it, from the surface to the top.": "En tout, de la surface au sommet.",
  "Bending of a post at the surface": "Flexion d'un poteau à la surface",
  "As though no guy line held its top: a line is only as good as its peg. A post twice as high is bent four times as hard.":
    "Comme si aucun hauban ne tenait son sommet : un hauban ne vaut que son piquet. Un poteau deux fois plus haut est fléchi quatre fois plus.",
  "Bending of a post at its upper bolt": "Flexion d'un poteau à son boulon du haut",
  "Where it is bent most: it is free from there up.": "Là où il est le plus fléchi : il est libre au-dessus.",
  "Pull on the upper bolt": "Traction sur le boulon du haut",
  "Turning about the lower bolt. The rim that the bolt goes through is pulled off its joists by the same force: block behind it and screw the blocks to the joists.":
    "En tournant autour du boulon du bas. La même force arrache la solive de rive de ses solives : mettez des blocs derrière et vissez-les aux solives.",
  "Pull on a guy line, if it holds the top": "Traction sur un hauban, s'il tient le sommet",
  "Half of the wind goes to the top, along the slant of the line. Its peg has to hold this too.":
    "La moitié du vent va au sommet, le long du hauban en biais. Son piquet doit aussi tenir cela.",
  "Tipping of the platform by its nets": "Basculement de la plateforme par ses filets",
  "Nets on the frame pry at the whole platform. Across it, or along it brought to the same arm, whichever is worse.":
    "Des filets sur le cadre font levier sur toute la plateforme. En travers, ou en long ramené au même bras, le pire des deux.",
  "Moment of its weight against it": "Moment de son poids contre cela",
  "The counted share of the platform's weight, about the outer skid.":
    "La part comptée du poids de la plateforme, autour du patin extérieur.",
  "Sideways pressure counted on": "Pression latérale comptée",
  "Height of the wind above the ground": "Hauteur du vent au-dessus du sol",
  "The middle of the net.": "Le milieu du filet.",
  "Depth of a post that stands in the ground, try by try":
    "Profondeur d'un poteau planté dans le sol, essai par essai",
  Try: "Essai",
  "Counted from the first.": "Compté depuis le premier.",
  "Depth tried": "Profondeur essayée",
  "Half way between the last two.": "À mi-chemin des deux dernières.",
  "Sideways pressure at a third of it": "Pression latérale au tiers de celle-ci",
  "What the soil holds there.": "Ce que le sol y tient.",
  "A of the formula": "A de la formule",
  "Force over pressure and width, times the first factor.":
    "La force sur la pression et la largeur, fois le premier facteur.",
  "Depth found": "Profondeur trouvée",
  "By the formula.": "Par la formule.",
  "Does the platform stay down under the nets?": "La plateforme reste-t-elle au sol sous les filets ?",
  "Posts bolted to the frame hand all their wind to it.":
    "Des poteaux boulonnés au cadre lui passent tout leur vent.",
  "Lower the net, net fewer sides, or set the posts in the ground beside the platform.":
    "Abaissez le filet, mettez-en sur moins de côtés, ou plantez les poteaux dans le sol à côté de la plateforme.",
  Wind: "Vent",
  "A light shed on a loose base can lift, tip or slide. Weight against wind, and what must be anchored.":
    "Un cabanon léger sur une base libre peut se soulever, basculer ou glisser. Le poids contre le vent, et ce qu'il faut ancrer.",
  "Weight of the shed, empty": "Poids du cabanon, vide",
  "Without what you keep in it: you may clear it out before the storm. Ask the maker, or add up the timber.":
    "Sans ce que vous y gardez : vous pourriez le vider avant la tempête. Demandez au fabricant, ou additionnez le bois.",
  "Height of the shed's walls": "Hauteur des murs du cabanon",
  "From the platform to the eaves.": "De la plateforme à l'égout du toit.",
  "Rise of its roof": "Montée de son toit",
  "From the eaves to the ridge. The wind meets half of it, as a gable is pointed.":
    "De l'égout au faîte. Le vent en rencontre la moitié, car un pignon est pointu.",
  "Factors of the wind on a small building": "Facteurs du vent sur un petit bâtiment",
  "Suction on the roof": "Succion sur le toit",
  "Wind that passes over a roof sucks at it, the flat ones too.":
    "Le vent qui passe au-dessus d'un toit le tire vers le haut, même plat.",
  "Pressure from inside": "Pression de l'intérieur",
  "Wind that gets in pushes the roof up from below: 0.18 with doors shut, 0.55 with one side open. A greenhouse whose panes break is open.":
    "Le vent qui entre pousse le toit par en dessous : 0,18 portes fermées, 0,55 avec un côté ouvert. Une serre dont les vitres cassent est ouverte.",
  "Push on the wall that faces the wind": "Poussée sur le mur face au vent",
  "The air is stopped there.": "L'air y est arrêté.",
  "Pull on the wall behind": "Traction sur le mur derrière",
  "The air is thinner in the lee.": "L'air est plus mince à l'abri.",
  "Share of its weight that is always there": "Part de son poids toujours là",
  "Of the weight that you entered, which is of the empty shed.": "Du poids entré, celui du cabanon vide.",
  "Weight of the platform that is counted on, per area":
    "Poids de la plateforme sur lequel on compte, par aire",
  "Less than the load that it is designed for: here weight helps, so the light end counts.":
    "Moins que la charge de conception : ici le poids aide, donc le léger compte.",
  "Friction on the ground": "Frottement au sol",
  "Skids on gravel, taken as for blocks. On sand it is 0.25.":
    "Patins sur gravier, pris comme pour des blocs. Sur du sable, 0,25.",
  "Wind on what stands on the platform": "Vent sur ce qui est sur la plateforme",
  "Fasten the building to the platform through its sole plates, at every corner and along every side: the platform's weight only helps if the two are one.":
    "Fixez le bâtiment à la plateforme par ses lisses, à chaque coin et le long de chaque côté : le poids de la plateforme n'aide que si les deux ne font qu'un.",
}
