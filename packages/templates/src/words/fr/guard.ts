import type { Texts } from "../dictionary.ts"

/** Posts of a guard. */
export const guard: Texts = {
  "Fails when the drop is more than your limit: then a guard must be designed. The section on its posts works out these and their bolts, and no more.":
    "Échoue si la chute dépasse votre limite : un garde-corps doit alors être conçu. La section sur ses poteaux calcule ceux-ci et leurs boulons, et rien de plus.",
  "Are the guard posts strong enough?": "Les poteaux du garde-corps sont-ils assez forts ?",
  "Shorten the span of the guard posts, set them closer together, or take the next size up or a better grade. Choose a species, grade and size that the tables hold where this one is outside them.":
    "Raccourcissez la portée des poteaux du garde-corps, rapprochez-les, ou prenez la grosseur suivante ou une meilleure qualité. Choisissez une essence, une qualité et une grosseur qui sont dans les tableaux, si celle-ci n'y est pas.",
  "Posts of a guard": "Poteaux d'un garde-corps",
  "Where the drop asks for a guard: how many posts, how hard they are pushed, and what pulls at their bolts. Rails and what fills the bays are for your code and a designer.":
    "Là où la chute demande un garde-corps : combien de poteaux, avec quelle force ils sont poussés, et ce qui tire sur leurs boulons. Lisses et remplissage relèvent de votre code et d'un concepteur.",
  Guard: "Garde-corps",
  "Small children and old people are reason enough for one where none is asked for.":
    "De petits enfants et des personnes âgées sont une raison suffisante d'en mettre un là où aucun n'est exigé.",
  "A guard keeps people from falling: lives hang on it. Your local code and a licensed designer decide its height, its load, its posts and its fastening.":
    "Un garde-corps empêche de tomber : des vies y tiennent. Votre code local et un concepteur autorisé décident de sa hauteur, de sa charge, de ses poteaux et de ses fixations.",
  "Loads on the guard by": "Charges du garde-corps selon",
  "Your place decides. The table of loads shows each, and every cell can be changed.":
    "Votre localité décide. Le tableau des charges les montre toutes, et chaque case peut être changée.",
  "guards: 200 lb at any one place along the top, in any direction":
    "garde-corps : 200 lb en un endroit quelconque du haut, dans toute direction",
  "International Building Code, guards: 50 lb on each foot, or 200 lb at one place":
    "International Building Code, garde-corps : 50 lb par pied, ou 200 lb en un endroit",
  "National Building Code of Canada, guards: 1.0 kN at one place, or 0.75 kN on each metre":
    "Code national du bâtiment du Canada, garde-corps : 1,0 kN en un endroit, ou 0,75 kN par mètre",
  "Size of the guard posts": "Grosseur des poteaux du garde-corps",
  "Of the same species and grade as the frame, whole and never notched. The narrow side counts.":
    "De la même essence et qualité que la charpente, entiers et jamais entaillés. Le côté étroit compte.",
  "Guard posts, at most apart": "Poteaux du garde-corps, écart maximal",
  "Wider bays hand each post more of an even push, and the rails sag.":
    "Des intervalles plus larges donnent à chaque poteau plus d'une poussée égale, et les lisses fléchissent.",
  "The connector at the upper bolt holds": "La ferrure au boulon du haut tient",
  "The pull that its evaluation report allows for guard posts. It hands the pull back into the framing.":
    "La traction que permet son rapport d'évaluation pour des poteaux de garde-corps. Elle la rend à la charpente.",
  "International Residential Code, R507.10: guards on decks":
    "International Residential Code, R507.10 : garde-corps de terrasses",
  "posts fastened to the framing behind the rim, not to the rim alone":
    "poteaux fixés à la charpente derrière la solive de rive, non à elle seule",
  "Fasten posts as a tested assembly with an evaluation report shows, into the framing and not into the edge timber alone. Screws or nails alone have let whole guards go.":
    "Fixez les poteaux comme le montre un assemblage éprouvé avec rapport d'évaluation, dans la charpente et non dans le bois de rive seul. Des vis ou clous seuls ont laissé partir des garde-corps entiers.",
  "Loads on a guard, by code": "Charges d'un garde-corps, par code",
  "Somebody who stumbles against the top, or a crowd that leans on it. Each cell can be changed to what your authority says.":
    "Quelqu'un qui trébuche contre le haut, ou une foule qui s'y appuie. Chaque case peut être mise à ce que dit votre autorité.",
  "Which one holds is your place's to say.": "C'est à votre localité de dire lequel vaut.",
  "At one place": "En un endroit",
  "Along the top, outwards here.": "Le long du haut, ici vers l'extérieur.",
  Evenly: "Également",
  "Along the top; not at the same time.": "Le long du haut ; pas en même temps.",
  "Height of the guard": "Hauteur du garde-corps",
  "Above the surface. Ask for yours.": "Au-dessus de la surface. Demandez la vôtre.",
  "How a guard post is bolted on": "Comment un poteau de garde-corps est boulonné",
  "In one row; each can be changed by itself. The bolts' thickness is in the table of joints that carry a load.":
    "En une rangée ; chaque case se change seule. La grosseur des boulons est dans le tableau des joints qui portent une charge.",
  "Plain carbon steel bolts (A307) in tension, 22.5 ksi of the shank's area by allowable stress":
    "Boulons d'acier au carbone ordinaire (A307) en traction, 22,5 ksi de l'aire de la tige par contraintes admissibles",
  "Upper bolt below the timber's top": "Boulon du haut sous le dessus du bois",
  "Three times the bolt's thickness.": "Trois fois la grosseur du boulon.",
  "Lower bolt above its underside": "Boulon du bas au-dessus du dessous",
  "Four times the bolt's thickness: this edge is pushed at.":
    "Quatre fois la grosseur du boulon : ce bord est poussé.",
  "Bolts in a post": "Boulons par poteau",
  "One above the other. The upper one is pulled when somebody leans on the guard.":
    "L'un au-dessus de l'autre. Celui du haut est tiré quand quelqu'un s'appuie au garde-corps.",
  "Side of a square washer": "Côté d'une rondelle carrée",
  "Thick plates, one at either end of a bolt. A small round washer sinks into the wood.":
    "Des plaques épaisses, une à chaque bout d'un boulon. Une petite rondelle ronde s'enfonce dans le bois.",
  "A bolt may be pulled with": "Un boulon peut être tiré avec",
  "On the area of its shank.": "Sur l'aire de sa tige.",
  "Guard, side by side": "Garde-corps, côté par côté",
  "Each side has its own drop. Where no limit is entered, no guard is counted: ask first.":
    "Chaque côté a sa propre chute. Sans limite entrée, aucun garde-corps n'est compté : demandez d'abord.",
  "Some places ask for a guard on steep ground beside a low platform too, or on a ramp.":
    "Certains endroits exigent aussi un garde-corps sur un sol raide au bord d'une plateforme basse, ou sur une rampe.",
  "1 and 3 are the long sides. Where steps go up, leave out the bay; none is taken off here.":
    "1 et 3 sont les longs côtés. Là où montent des marches, laissez l'intervalle ; rien n'est retranché ici.",
  "Drop within reach": "Chute à portée",
  "With the slope carried on as far as the ground counts.":
    "Avec la pente prolongée aussi loin que le sol compte.",
  "Is a guard counted?": "Un garde-corps est-il compté ?",
  "By your limits of drop and slope, or as you chose.":
    "Selon vos limites de chute et de pente, ou comme vous l'avez choisi.",
  "Ask your authority where it says so.": "Demandez à votre autorité là où c'est écrit.",
  Bays: "Intervalles",
  "From post to post, no wider than you allow.": "De poteau en poteau, pas plus larges que permis.",
  Posts: "Poteaux",
  "One more than bays. A corner where two sides meet has two: each side stands by itself.":
    "Un de plus que les intervalles. Un coin où deux côtés se rejoignent en a deux : chaque côté se tient seul.",
  "From middle to middle, alike along a side. The outer two end where the side ends.":
    "De milieu en milieu, pareils le long d'un côté. Les deux extrêmes finissent là où le côté finit.",
  "Above the surface, by the code you chose.": "Au-dessus de la surface, selon le code choisi.",
  "Along the side": "Le long du côté",
  "What lies against the edge timber.": "Ce qui s'appuie contre la pièce de rive.",
  Outwards: "Vers l'extérieur",
  "How far a post stands out.": "De combien un poteau dépasse.",
  "Guard posts to buy and to set": "Poteaux de garde-corps à acheter et à poser",
  "All sides together, in one row. Rails and what fills the bays are not counted here: your code says how close they stand.":
    "Tous les côtés ensemble, en une rangée. Lisses et remplissage ne sont pas comptés ici : votre code dit à quel écart ils se tiennent.",
  "The four sides added up.": "Les quatre côtés additionnés.",
  "None where no guard is needed.": "Aucun si aucun garde-corps n'est nécessaire.",
  "Widest bay": "Intervalle le plus large",
  "The post between two of these carries the most.": "Le poteau entre deux de ceux-là porte le plus.",
  "Length of a post": "Longueur d'un poteau",
  "From the underside of the outer stringer to the top of the guard.":
    "Du dessous du longeron extérieur au haut du garde-corps.",
  Bolts: "Boulons",
  "Through post and timber.": "À travers poteau et bois.",
  "Square washers": "Rondelles carrées",
  "One at either end of each bolt.": "Une à chaque bout de chaque boulon.",
  "Tested connectors": "Ferrures éprouvées",
  "One at the upper bolt of each post, back into the framing.":
    "Une au boulon du haut de chaque poteau, ramenée dans la charpente.",
  "Push on a guard post, step by step": "Poussée sur un poteau de garde-corps, pas à pas",
  "Outwards at the top, once at one place and once evenly. Along the rail the posts of a side help each other; that is not worked out here.":
    "Vers l'extérieur en haut, une fois en un endroit et une fois également. Le long de la lisse, les poteaux d'un côté s'aident ; ce n'est pas calculé ici.",
  "The worse of the two counts.": "La pire des deux compte.",
  "Push on a post": "Poussée sur un poteau",
  "No other post is counted on to help. Nothing where no guard is needed.":
    "On ne compte sur l'aide d'aucun autre poteau. Rien si aucun garde-corps n'est nécessaire.",
  "Above the upper bolt": "Au-dessus du boulon du haut",
  "How long the lever is.": "La longueur du levier.",
  "Bending at the upper bolt": "Flexion au boulon du haut",
  "Where the post is bent most.": "Là où le poteau est le plus fléchi.",
  "From bolt to bolt": "D'un boulon à l'autre",
  "As far apart as the outer stringer lets them be: the farther, the less each is pulled.":
    "Aussi éloignés que le longeron extérieur le permet : plus ils le sont, moins chacun est tiré.",
  "Post and bolts are a lever: the lower bolt is where it turns.":
    "Poteau et boulons font un levier : il tourne au boulon du bas.",
  "Thrust at the lower bolt": "Poussée au boulon du bas",
  "Pushes the outer stringer inwards: blocking behind it has to take this up.":
    "Pousse le longeron extérieur vers l'intérieur : des entretoises derrière lui doivent la reprendre.",
  "Wood under the washer": "Bois sous la rondelle",
  "Pull over the washer's area, less the hole; with the load factor of limit states.":
    "Traction sur l'aire de la rondelle, moins le trou ; avec le facteur de charge des états limites.",
  "Of what that wood may bear": "De ce que ce bois peut porter",
  "Across the grain, by your method of design.": "En travers du fil, selon votre méthode de calcul.",
  "Of what the bolt's steel may bear": "De ce que l'acier du boulon peut porter",
  "Pull over the shank's area; without a load factor, by either method.":
    "Traction sur l'aire de la tige ; sans facteur de charge, par l'une et l'autre méthode.",
  "The worse of the two": "Le pire des deux",
  "Over 100 % it lets go.": "Au-delà de 100 %, cela lâche.",
  "Top moves outwards by": "Le haut s'écarte de",
  "For information: of the post alone. The joint gives way as much again, or more.":
    "Pour information : du poteau seul. Le joint cède encore autant, ou plus.",
  "Do the guard posts' bolts and washers hold?":
    "Les boulons et rondelles des poteaux de garde-corps tiennent-ils ?",
  "A push at the top pulls many times harder at the upper bolt, as the bolts stand close together. Nothing where no guard is needed.":
    "Une poussée en haut tire bien des fois plus fort sur le boulon du haut, car les boulons sont proches. Rien si aucun garde-corps n'est nécessaire.",
  "Make the outer stringer deeper, so that the bolts stand farther apart; take larger washers or thicker bolts in the tables; or have a tested assembly laid out by a designer.":
    "Prenez un longeron extérieur plus haut, pour éloigner les boulons ; prenez des rondelles plus grandes ou des boulons plus gros dans les tableaux ; ou faites prévoir un assemblage éprouvé par un concepteur.",
  "Is the pull handed on into the framing?": "La traction est-elle rendue à la charpente ?",
  "The outer stringer hangs on screws in end grain, which hold no pull: a rated connector at the upper bolt has to take all of it.":
    "Le longeron extérieur tient à des vis dans le bois de bout, qui ne retiennent aucune traction : une ferrure cotée au boulon du haut doit la prendre toute.",
  "Take a connector that is rated for the pull in the table, or make the outer stringer deeper so that the pull is less.":
    "Prenez une ferrure cotée pour la traction du tableau, ou un longeron extérieur plus haut pour que la traction soit moindre.",
  "Bolt on the guard posts, where a guard is needed":
    "Boulonner les poteaux du garde-corps, là où il en faut un",
  "{guard_post.number} posts of {guard_post_size}, each {guard_post.length} long, no more than {guard_post.spacing} apart. 0: no guard is counted; look at the section on its posts for why.":
    "{guard_post.number} poteaux de {guard_post_size}, longs de {guard_post.length} chacun, à {guard_post.spacing} au plus. 0 : aucun garde-corps n'est compté ; la section sur ses poteaux dit pourquoi.",
  "Bore right through post and timber, brush preservative into the holes, and put a square washer at both ends of every bolt.":
    "Percez de part en part poteau et bois, mettez du préservatif au pinceau dans les trous, et une rondelle carrée aux deux bouts de chaque boulon.",
  "A tested connector at each upper bolt ties the post back into the framing, as its maker draws it.":
    "Une ferrure éprouvée à chaque boulon du haut ramène le poteau à la charpente, comme la dessine son fabricant.",
  spanners: "clés",
  "A guard that gives way is worse than none: people lean on it. Keep everybody off the edge until posts, rails and infill stand as your code says.":
    "Un garde-corps qui cède est pire qu'aucun : on s'y appuie. Tenez tout le monde loin du bord tant que poteaux, lisses et remplissage ne sont pas comme le dit votre code.",
  "guard post": "poteau de garde-corps",
  "guard bolt": "boulon de garde-corps",
  "square washer": "rondelle carrée",
  "guard connector": "ferrure de garde-corps",
  "Whole posts, never notched; nuts tight, and tight again after the first dry month. An inspector may want to see the bolts before the boards hide them.":
    "Poteaux entiers, jamais entaillés ; écrous serrés, et resserrés après le premier mois sec. Un inspecteur peut vouloir voir les boulons avant que les planches les cachent.",
  "Bar the edge with a rope set well back until the guard is whole.":
    "Barrez le bord d'une corde tendue bien en retrait tant que le garde-corps n'est pas complet.",
  "guard posts": "poteaux de garde-corps",
  "guard post on its two bolts, pushed down":
    "poteau de garde-corps sur ses deux boulons, poussé vers le bas",
  "where my limit asks for it": "là où ma limite l'exige",
  "on all sides": "de tous les côtés",
  "United States, model house code": "États-Unis, code modèle des maisons",
  "United States, model building code": "États-Unis, code modèle du bâtiment",
  "Canada, national code": "Canada, code national",
  "ask: your limit is blank": "demandez : votre limite est vide",
  "all sides": "tous les côtés",
  "one push at the top of one post": "une poussée en haut d'un poteau",
  "an even push along the top": "une poussée égale le long du haut",
  "From the underside of the rim to the top of the guard.":
    "Du dessous de la solive de rive au haut du garde-corps.",
  "As far apart as the rim lets them be: the farther, the less each is pulled.":
    "Aussi éloignés que la solive de rive le permet : plus ils le sont, moins chacun est tiré.",
  "Pushes the rim inwards: blocking behind it has to take this up.":
    "Pousse la solive de rive vers l'intérieur : des entretoises derrière elle doivent la reprendre.",
  "Make the rim deeper, so that the bolts stand farther apart; take larger washers or thicker bolts in the tables; or have a tested assembly laid out by a designer.":
    "Prenez une solive de rive plus haute, pour éloigner les boulons ; prenez des rondelles plus grandes ou des boulons plus gros dans les tableaux ; ou faites prévoir un assemblage éprouvé par un concepteur.",
  "The rim hangs on screws in end grain, which hold no pull: a rated connector at the upper bolt has to take all of it.":
    "La solive de rive tient à des vis dans le bois de bout, qui ne retiennent aucune traction : une ferrure cotée au boulon du haut doit la prendre toute.",
  "Take a connector that is rated for the pull in the table, or make the rim deeper so that the pull is less.":
    "Prenez une ferrure cotée pour la traction du tableau, ou une solive de rive plus haute pour que la traction soit moindre.",
}
