import type { Texts } from "../dictionary.ts"

export const panel: Texts = {
  "Sheets on joists": "Panneaux sur solives",
  "The strength axis, along which the outer layers run, lies across the joists.":
    "L'axe fort, le long duquel vont les plis extérieurs, est en travers des solives.",
  "Kind of sheet": "Sorte de panneau",
  "Strand board or plywood. Of plywood the weakest lay-up, three plies, is counted.":
    "Panneau à copeaux ou contreplaqué. Du contreplaqué, le plus faible montage, trois plis, est compté.",
  OSB: "OSB",
  plywood: "contreplaqué",
  "Span rating": "Cote de portée",
  "Stamped on the sheet, as 48/24 for roof and floor, or 24 oc for a floor alone.":
    "Estampillée sur le panneau, comme 48/24 pour toit et plancher, ou 24 oc pour un plancher seul.",
  "What the sheet has to bridge.": "Ce que le panneau doit franchir.",
  "Spans that one piece of sheet covers": "Portées que couvre un morceau de panneau",
  "Enter 1 only where a piece really lies on just two joists: it is then much weaker.":
    "Entrez 1 seulement si un morceau repose vraiment sur deux solives : il est alors bien plus faible.",
  "three up to a spacing of 32 in, two beyond": "trois jusqu'à un espacement de 32 po, deux au-delà",
  "Width of a joist": "Largeur d'une solive",
  "The sheet spans from face to face.": "Le panneau porte de face à face.",
  "People and what they bring.": "Les gens et ce qu'ils apportent.",
  "The sheet and what lies on it.": "Le panneau et ce qui repose dessus.",
  "Under the live load alone. 360 for floors.": "Sous la seule surcharge. 360 pour les planchers.",
  "Bending strength of your sheet": "Résistance en flexion de votre panneau",
  "From the maker's report, for a strip 1 ft wide, if you have it.":
    "Du rapport du fabricant, pour une bande de 1 pi, si vous l'avez.",
  "as published for its span rating": "telle que publiée pour sa cote de portée",
  "Shear strength of your sheet": "Résistance en cisaillement de votre panneau",
  "Stiffness of your sheet, EI over one inch": "Rigidité de votre panneau, EI sur un pouce",
  "1 for people; 1.15 for snow. On strength, not on stiffness.":
    "1 pour des gens ; 1,15 pour la neige. Sur la résistance, pas sur la rigidité.",
  "Strip that is worked out": "Bande calculée",
  "Published values are for a strip of this width.":
    "Les valeurs publiées sont pour une bande de cette largeur.",
  "The inch that stiffness is written over": "Le pouce sur lequel s'écrit la rigidité",
  "EI is this times the value in the table.": "EI est cela fois la valeur du tableau.",
  "Sag counts from the face plus": "La flèche compte depuis la face plus",
  "A sheet bends a little over the edge of a 2 in joist too.":
    "Un panneau fléchit un peu par-dessus le bord d'une solive de 2 po aussi.",
  "And over joists of 4 in plus": "Et sur des solives de 4 po, plus",
  "A wide joist lets more of the sheet bend.": "Une solive large laisse fléchir plus de panneau.",
  "A joist is wide from": "Une solive est large à partir de",
  "The published value is for 4 in supports, 3 1/2 in real.":
    "La valeur publiée est pour des appuis de 4 po, 3 1/2 po réels.",
  "Three spans up to a spacing of": "Trois portées jusqu'à un espacement de",
  "An 8 ft sheet bridges three bays up to here, and two beyond.":
    "Un panneau de 8 pi franchit trois intervalles jusqu'ici, et deux au-delà.",
  "Spans counted": "Portées comptées",
  "Yours, or by the spacing.": "Les vôtres, ou selon l'espacement.",
  "Bending strength in use": "Résistance en flexion utilisée",
  "Yours, or the published one.": "La vôtre, ou celle publiée.",
  "Shear strength in use": "Résistance en cisaillement utilisée",
  "Stiffness in use, EI over one inch": "Rigidité utilisée, EI sur un pouce",
  "Clear span": "Portée libre",
  "From face to face.": "De face à face.",
  "Span for sag": "Portée pour la flèche",
  "A little more than the clear span.": "Un peu plus que la portée libre.",
  "Load by bending": "Charge par flexion",
  "Live and dead together.": "Surcharge et charge permanente ensemble.",
  "Load by shear": "Charge par cisaillement",
  "Load by sag": "Charge par flèche",
  "Live load alone.": "Surcharge seule.",
  "Live load that the sheet may carry, worked out": "Surcharge que le panneau peut porter, calculée",
  "By strength less the dead load, or by sag; the less of them. Dry, strength axis across the joists.":
    "Par la résistance moins la charge permanente, ou par la flèche ; la moindre. Sec, axe fort en travers des solives.",
  "Change this first if you want more.": "Changez cela d'abord si vous en voulez plus.",
  "Row of the recommended loads": "Ligne des charges recommandées",
  "Rating, and spacing in whole inches.": "La cote, et l'espacement en pouces entiers.",
  "Live load that panel makers recommend": "Surcharge que recommandent les fabricants",
  "From their table, for this rating and spacing; where it has no such cell there is no answer.":
    "De leur tableau, pour cette cote et cet espacement ; sans une telle case, il n'y a pas de réponse.",
  "The table of recommended loads has this cell": "Le tableau des charges recommandées a cette case",
  "No between the printed spacings: nothing is guessed.":
    "Non entre les espacements imprimés : rien n'est deviné.",
  "A spacing is a printed one within": "Un espacement est imprimé à moins de",
  "Of an inch.": "D'un pouce.",
  "The table of ratings has this one": "Le tableau des cotes a celle-ci",
  "No for ratings that are not for floors, or not in the table.":
    "Non pour des cotes qui ne sont pas de plancher, ou absentes du tableau.",
  "Joists under this rating no further apart than": "Solives sous cette cote à au plus",
  "The floor number of the rating, for a floor at home.":
    "Le nombre de plancher de la cote, pour un plancher de maison.",
  "Joist spacing under the sheet": "Espacement des solives sous le panneau",
  "The rating counts before any calculation: a sheet may not bridge more than it is stamped for.":
    "La cote compte avant tout calcul : un panneau ne franchit pas plus que son estampille.",
  "Set joists {panel_spacing_max} apart at most, or take a sheet of a higher rating.":
    "Mettez les solives à {panel_spacing_max} au plus, ou prenez un panneau d'une cote plus haute.",
  "Live load on the sheet, worked out": "Surcharge sur le panneau, calculée",
  "Strength and sag of the sheet between joists.": "Résistance et flèche du panneau entre solives.",
  "Dry use: a sheet that stays damp carries less, and its edges swell.":
    "Usage au sec : un panneau qui reste humide porte moins, et ses bords gonflent.",
  "{panel_load_governed_by} allows {panel_load_max}: closer joists or a higher rating.":
    "{panel_load_governed_by} permet {panel_load_max} : rapprochez les solives ou prenez une cote plus haute.",
  "There are values to work with": "Il y a des valeurs pour calculer",
  "No where the rating has no published strength here and you entered none.":
    "Non si la cote n'a pas ici de résistance publiée et que vous n'en avez entré aucune.",
  "Live load against the makers' recommendation": "Surcharge comparée à la recommandation des fabricants",
  "Kept apart from the calculation: the two do not agree, and the smaller should be used.":
    "Gardée à part du calcul : les deux ne concordent pas, et la plus petite devrait servir.",
  "{panel_load_recommended} is recommended at most: closer joists or a higher rating.":
    "{panel_load_recommended} est recommandé au plus : rapprochez les solives ou prenez une cote plus haute.",
  "A panel over one, two or three spans": "Un panneau sur une, deux ou trois portées",
  "A sheet that runs over several joists bends less than one that lies on two.":
    "Un panneau continu sur plusieurs solives fléchit moins qu'un sur deux.",
  Spans: "Portées",
  "Bays that one piece of the panel covers.": "Intervalles que couvre un morceau de panneau.",
  "Moment: w L² over": "Moment : w L² sur",
  "96 or 120 in the published form, with inches and feet mixed.":
    "96 ou 120 dans la forme publiée, pouces et pieds mêlés.",
  "Shear: share of w L": "Cisaillement : part de w L",
  "24, 19.2 or 20 in the published form.": "24, 19,2 ou 20 dans la forme publiée.",
  "Sag: w L⁴ over E I times": "Flèche : w L⁴ sur E I fois",
  "921.6, 2220 or 1743 in the published form.": "921,6, 2220 ou 1743 dans la forme publiée.",
  "What a strip of panel takes, strength axis across the joists":
    "Ce que prend une bande de panneau, axe fort en travers des solives",
  "Panels are sold by span rating; behind each rating stand a bending strength, a shear strength and a stiffness.":
    "Les panneaux se vendent par cote de portée ; derrière chacune, une résistance en flexion, une en cisaillement et une rigidité.",
  "Kind and span rating in one text.": "Sorte et cote de portée en un texte.",
  "Bending, strip 1 ft wide": "Flexion, bande de 1 pi",
  "FbS, pound-inches in each foot of width.": "FbS, livres-pouces par pied de largeur.",
  "Rolling shear, strip 1 ft wide": "Cisaillement roulant, bande de 1 pi",
  "Fs(Ib/Q), pounds in each foot of width.": "Fs(Ib/Q), livres par pied de largeur.",
  "Stiffness, strip 1 ft wide, EI over one inch": "Rigidité, bande de 1 pi, EI sur un pouce",
  "EI is published in lb·in²; it is written here for each inch of the other inch.":
    "EI est publié en lb·po² ; il s'écrit ici par pouce de l'autre pouce.",
  "Span ratings under a floor": "Cotes de portée sous un plancher",
  "The second number of a rating, or the only one, is the greatest joist spacing in inches for a floor at home.":
    "Le second nombre d'une cote, ou le seul, est le plus grand espacement de solives en pouces pour un plancher de maison.",
  "Stamped on the sheet.": "Estampillée sur le panneau.",
  "Thicknesses sold, inches": "Épaisseurs vendues, pouces",
  "Performance categories under this rating.": "Catégories de performance sous cette cote.",
  "Joists no further apart than": "Solives à au plus",
  "Over two spans or more, strength axis across the joists.":
    "Sur deux portées ou plus, axe fort en travers des solives.",
  "Recommended live loads on panel floors": "Surcharges recommandées sur planchers de panneaux",
  "What the panel makers recommend. It is not the calculation: near the rated span it is more careful, and at close spacing less so.":
    "Ce que recommandent les fabricants de panneaux. Ce n'est pas le calcul : près de la portée cotée c'est plus prudent, et aux espacements serrés moins.",
  "Rating, and joist spacing in inches.": "Cote, et espacement des solives en pouces.",
  "With 10 psf of dead load, sag of the span over 360, dry.":
    "Avec 10 lb/pi² de charge permanente, flèche de la portée sur 360, sec.",
  "Canada: thinnest subfloor": "Canada : sous-plancher le plus mince",
  "A prescriptive table: no calculation, just the thickness for a joist spacing.":
    "Un tableau prescriptif : pas de calcul, seulement l'épaisseur pour un espacement.",
  "Centre to centre.": "Centre à centre.",
  "Plywood, strand board O-2": "Contreplaqué, copeaux O-2",
  "Thinnest sheet.": "Panneau le plus mince.",
  "Strand board O-1, waferboard": "Copeaux O-1, panneau de copeaux",
  Particleboard: "Panneau de particules",
  "Thinnest board.": "Planche la plus mince.",
  "Panel mark, alone; with underlay": "Marque de panneau, seul ; avec sous-couche",
  "Stamped on Canadian sheets.": "Estampillée sur les panneaux canadiens.",
  "Thinnest boards under a floor": "Planches les plus minces sous un plancher",
  "Boards instead of sheets, laid across the joists or at 45 degrees.":
    "Des planches au lieu de panneaux, posées en travers des solives ou à 45 degrés.",
  "Across the joists": "En travers des solives",
  "Net thickness.": "Épaisseur nette.",
}
