import type { Texts } from "../dictionary.ts"

export const treatment: Texts = {
  "Treatment against rot": "Traitement contre la pourriture",
  "Every timber outdoors is treated for where it lies. Near the ground that means ground contact, even if it touches nothing.":
    "Tout bois dehors est traité selon l'endroit où il est. Près du sol, c'est pour le contact avec le sol, même s'il ne touche rien.",
  "Use classes of treated timber": "Classes d'emploi du bois traité",
  "What a piece was treated for. In Canada they are called UC3.1, UC3.2, UC4.1 and UC4.2.":
    "Pour quoi une pièce a été traitée. Au Canada, elles s'appellent UC3.1, UC3.2, UC4.1 et UC4.2.",
  "Use class": "Classe d'emploi",
  "As on the tag.": "Comme sur l'étiquette.",
  "A later class may stand in for an earlier one.": "Une classe plus haute peut remplacer une plus basse.",
  "Meant for": "Faite pour",
  "Where such timber may lie.": "Où un tel bois peut aller.",
  "Counts as ground contact below": "Compte comme contact avec le sol sous",
  "Timber nearer to the ground than this stays damp, and wants the treatment for ground contact even where it touches nothing.":
    "Du bois plus près du sol que cela reste humide et veut le traitement de contact avec le sol, même s'il ne touche rien.",
  "Treatment of the skids": "Traitement des patins",
  "The use class on the tag at the end of the timber.": "La classe d'emploi sur l'étiquette au bout du bois.",
  "Treatment of the joists and blocking": "Traitement des solives et entretoises",
  "Treatment of the rims": "Traitement des solives de rive",
  "Treatment of the edge boards": "Traitement des planches de rive",
  "Soil or leaves build up on the timber": "Terre ou feuilles s'accumulent sur le bois",
  "Wet leaves between timbers keep them as damp as soil does.":
    "Des feuilles mouillées entre les bois les gardent aussi humides que la terre.",
  "Air moves below the frame": "L'air circule sous le cadre",
  "Where no air gets in, the timber never dries: count that as ground contact.":
    "Où l'air n'entre pas, le bois ne sèche jamais : comptez cela comme un contact avec le sol.",
  "Often wetted": "Souvent mouillé",
  "By a sprinkler, a downpipe, a pool or plants that are watered.":
    "Par un arrosoir, une descente de gouttière, une piscine ou des plantes arrosées.",
  "Touches untreated or rotten wood": "Touche du bois non traité ou pourri",
  "Rot spreads from piece to piece.": "La pourriture passe d'une pièce à l'autre.",
  "Hot and wet climate": "Climat chaud et humide",
  "Rot works all the year there.": "La pourriture y travaille toute l'année.",
  "Severe place for rot, or salt splash": "Endroit très exposé à la pourriture, ou embruns salés",
  "A warm wet coast, for one. What carries the platform then wants the heavy-duty class.":
    "Une côte chaude et humide, par exemple. Ce qui porte la plateforme veut alors la classe d'usage dur.",
  "Use class of every timber": "Classe d'emploi de chaque bois",
  "One treater takes joists for above ground; the criteria that inspectors use count them as ground contact where they are near the ground or hard to replace. The stricter is followed here.":
    "Un traiteur prend les solives pour hors sol ; les critères des inspecteurs les comptent en contact avec le sol si elles en sont proches ou difficiles à remplacer. Le plus sévère est suivi ici.",
  Timber: "Bois",
  "Each kind of timber in the frame.": "Chaque sorte de bois du cadre.",
  "Above the ground": "Au-dessus du sol",
  "From the ground to its underside at the high corner, where it is nearest.":
    "Du sol à son dessous au coin haut, là où il est le plus proche.",
  "Hard to replace": "Difficile à remplacer",
  "What lies under everything else cannot be changed without taking the platform apart.":
    "Ce qui est sous tout le reste ne se change pas sans démonter la plateforme.",
  "Near the ground": "Près du sol",
  "Nearer than the limit above: it counts as touching, even where it does not.":
    "Plus près que la limite ci-dessus : il compte comme s'il touchait, même sinon.",
  "The place keeps timber as wet as the ground does": "L'endroit garde le bois aussi mouillé que le sol",
  "Any one of the cases above, for every timber alike.":
    "L'un des cas ci-dessus, pour tous les bois pareillement.",
  "Any one of the cases is enough.": "L'un des cas suffit.",
  "Use class needed": "Classe d'emploi requise",
  "What has to be on the tag, or better.": "Ce qui doit être sur l'étiquette, ou mieux.",
  "The first case that holds.": "Le premier cas qui vaut.",
  "What to buy": "Quoi acheter",
  "The class, the timber and the reason in one line.": "La classe, le bois et la raison en une ligne.",
  "Use class bought": "Classe d'emploi achetée",
  "Rank bought": "Rang acheté",
  "From the table of use classes.": "Du tableau des classes d'emploi.",
  Enough: "Suffisant",
  "1: the class bought is the class needed, or better.": "1 : la classe achetée est celle requise, ou mieux.",
  "Clearance that its class needs": "Dégagement que veut sa classe",
  "None for timber treated for ground contact.": "Aucun pour du bois traité pour le contact avec le sol.",
  "Clearance beyond that": "Dégagement au-delà",
  "Below nothing: too near for what it was treated for.":
    "Sous zéro : trop près pour ce dont il a été traité.",
  "Timber nearest to its limit": "Bois le plus près de sa limite",
  "The timber that has least clearance beyond what its treatment needs.":
    "Le bois qui a le moins de dégagement au-delà de ce que veut son traitement.",
  "Is the treatment right for so near the ground?": "Le traitement convient-il si près du sol ?",
  "Timber treated for above ground has rotted through in ten years where water ran.":
    "Du bois traité pour hors sol a pourri de part en part en dix ans là où l'eau coulait.",
  "Every cut exposes untreated wood: brush the cut end with an end-cut preservative before it is laid.":
    "Chaque coupe expose du bois non traité : badigeonnez le bout coupé d'un préservatif avant de le poser.",
  "Buy the {ground_contact_member} tagged for ground contact, UC4A or better, or raise them to {ground_contact_clearance} above the ground.":
    "À acheter marqué pour le contact avec le sol, UC4A ou mieux : {ground_contact_member} ; ou à monter à {ground_contact_clearance} au-dessus du sol.",
  "First timber with too weak a class": "Premier bois de classe trop faible",
  "Change this one first.": "Changez celui-là d'abord.",
  "Every timber in the class that it needs": "Chaque bois dans la classe qu'il lui faut",
  "One weak row of timber lets the rest down. The clearance is not the only case: what cannot be replaced needs the better class too.":
    "Une seule rangée de bois faible trahit le reste. Le dégagement n'est pas le seul cas : ce qui ne se remplace pas veut aussi la meilleure classe.",
  "The treater's tag, the local code and the inspector decide. Where they ask for more, they are right.":
    "L'étiquette du traiteur, le code local et l'inspecteur décident. S'ils demandent plus, ils ont raison.",
  "Buy {treatment_short}. Or change what makes it so: more clearance, a dry place, air below.":
    "Achetez {treatment_short}. Ou changez ce qui en est cause : plus de dégagement, un endroit sec, de l'air dessous.",
  "Cut ends, size by size": "Bouts coupés, grosseur par grosseur",
  "The treatment goes in from outside and seldom reaches the core: every cut lays it bare.":
    "Le traitement entre de l'extérieur et atteint rarement le cœur : chaque coupe le met à nu.",
  "The size that the plan cuts.": "La grosseur que coupe le plan.",
  "In the cutting plan.": "Dans le plan de coupe.",
  "Cut ends": "Bouts coupés",
  "Two a piece, less those that no saw has touched: a board's own first end, and its last where nothing is left over. Where ends are trimmed, all of them.":
    "Deux par morceau, moins ceux qu'aucune scie n'a touchés : le premier bout d'une planche, et son dernier si rien ne reste. Si on éboute, tous.",
  "One end's area": "Aire d'un bout",
  "Thickness times depth, by the real size.": "Épaisseur fois hauteur, d'après la grosseur réelle.",
  "Cut ends to brush": "Bouts coupés à badigeonner",
  "Over all pieces of timber. Brush holes and notches as well.":
    "Sur tous les morceaux de bois. Badigeonnez aussi trous et entailles.",
  "Preservative harms skin and eyes and may burn: gloves and goggles, in the open air, away from flames, and nothing into drains or soil. Follow the label.":
    "Le préservatif abîme la peau et les yeux et peut brûler : gants et lunettes, à l'air libre, loin des flammes, et rien dans les drains ni le sol. Suivez l'étiquette.",
  "Area of the cut ends": "Aire des bouts coupés",
  "End grain drinks: it takes as much as rough wood.":
    "Le bois de bout boit : il en prend autant que du bois brut.",
  "Other bare faces to brush": "Autres faces nues à badigeonner",
  "The long faces of pieces that were ripped lengthwise, for one.":
    "Les longues faces de pièces refendues, par exemple.",
  Coats: "Couches",
  "The sheet that gives the coverage asks for two, a day apart. Yours may say otherwise.":
    "La fiche qui donne le rendement en demande deux, à un jour d'écart. La vôtre peut dire autre chose.",
  "Preservative for cut ends": "Préservatif pour bouts coupés",
  "What the standard takes for cuts. Borate only for what stays off the ground and dry.":
    "Ce que la norme prend pour les coupes. Le borate seulement pour ce qui reste hors sol et au sec.",
  Preservative: "Préservatif",
  "The usual one for cuts; its name is on the tin.":
    "Le plus usuel pour les coupes ; son nom est sur le contenant.",
  "Copper in it, at least": "Cuivre dedans, au moins",
  "It is on the tin as well.": "C'est aussi sur le contenant.",
  "How far preservative goes": "Rendement du préservatif",
  "One coat. Another sheet gives a little more for smooth wood; these are the safer figures.":
    "Une couche. Une autre fiche donne un peu plus pour du bois lisse ; ces chiffres sont les plus sûrs.",
  "End grain drinks as much as rough wood.": "Le bois de bout boit autant que le bois brut.",
  "So much preservative": "Tant de préservatif",
  "The area beside it is for this much.": "L'aire à côté est pour cette quantité.",
  Covers: "Couvre",
  "One coat.": "Une couche.",
  "To brush here": "À badigeonner ici",
  "The cut ends, and what else the saw left bare.": "Les bouts coupés, et ce que la scie a mis à nu d'autre.",
  "Takes, all coats": "Demande, toutes couches",
  "Before what stays in the brush.": "Avant ce qui reste dans le pinceau.",
  "All coats, before what stays in the brush.": "Toutes les couches, avant ce qui reste dans le pinceau.",
  "One tin holds": "Un contenant en a",
  "The size that your shop sells.": "Le format que vend votre magasin.",
  "Tins of preservative": "Contenants de préservatif",
  "Whole tins.": "Des contenants entiers.",
  "Tape along the tops of the frame": "Ruban sur le dessus du cadre",
  "Water stands on a joist's top under the surface and runs down every screw. Tape is not asked for by the codes; the frame lasts longer with it.":
    "L'eau reste sur le dessus d'une solive sous la surface et coule le long de chaque vis. Les codes ne demandent pas de ruban ; le cadre dure plus longtemps avec.",
  "Spare tape": "Ruban de réserve",
  "For the laps where rolls end and what sticks to itself.":
    "Pour les recouvrements en fin de rouleau et ce qui se colle à lui-même.",
  "Tape on a roll": "Ruban sur un rouleau",
  "It is on the roll. Take it at least as wide as the joists are thick.":
    "C'est sur le rouleau. Prenez-le au moins aussi large que les solives sont épaisses.",
  "Rolls of tape": "Rouleaux de ruban",
  "Whole rolls, the spare added once.": "Des rouleaux entiers, la réserve ajoutée une fois.",
  "Treatment of the sleepers": "Traitement des traverses",
  "Treatment of the stringers and cleats": "Traitement des longerons et éclisses",
  "Treatment of the ramps and steps, their timbers": "Traitement du bois des rampes et marches",
  "Treatment of the boards": "Traitement des planches",
  "Treatment of the kerbs": "Traitement des chasse-roues",
  "Treatment of the beams": "Traitement des poutres",
  "Treatment of the bearers": "Traitement des lambourdes",
}
