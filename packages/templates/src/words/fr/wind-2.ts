import type { Texts } from "../dictionary.ts"

export const wind2: Texts = {
  "Sideways pressure in all": "Pression latérale en tout",
  "Push in front and pull behind, added up.": "Poussée devant et traction derrière, additionnées.",
  "Side that the wind meets": "Côté que rencontre le vent",
  "The broad side, with half of the roof's rise.": "Le côté large, avec la moitié de la montée du toit.",
  "Sideways force": "Force latérale",
  "Tries to push the building off, and to tip it.":
    "Cherche à pousser le bâtiment dehors, et à le renverser.",
  "Lift on the roof, per area": "Soulèvement du toit, par aire",
  "Suction from above and pressure from inside.": "Succion du dessus et pression de l'intérieur.",
  "Lift on the roof": "Soulèvement du toit",
  "Tries to lift the building.": "Cherche à soulever le bâtiment.",
  "Weight of the platform": "Poids de la plateforme",
  "Without what stands on it.": "Sans ce qui est dessus.",
  "Weight of building and platform": "Poids du bâtiment et de la plateforme",
  "Empty: you may clear it out before the storm.": "Vide : vous pourriez le vider avant la tempête.",
  "Weight that is counted on": "Poids sur lequel on compte",
  "The stated share of it.": "La part indiquée.",
  "Width of the base against tipping": "Largeur de la base contre le basculement",
  "It tips over its outer line of support, or over its end.":
    "Il bascule autour de sa ligne d'appui extérieure, ou de son bout.",
  "Tipping moment": "Moment de renversement",
  "The sideways force at half of the side's height, and the lift, about the edge in the lee.":
    "La force latérale à mi-hauteur du côté, et le soulèvement, autour du bord à l'abri.",
  "Moment of the weight against it": "Moment du poids contre cela",
  "The counted weight, at half of the base.": "Le poids compté, à la moitié de la base.",
  "To be held down along one long side": "À retenir le long d'un long côté",
  "What the weight does not hold, the anchors along the side towards the wind must. Wind comes from either side, so both are anchored alike.":
    "Ce que le poids ne retient pas, les ancrages du côté au vent le doivent. Le vent vient des deux côtés ; on ancre donc les deux pareil.",
  "To be held by the ties along one side": "À retenir par les attaches d'un côté",
  "As much as the anchors hold, as though all of the platform's weight hung below the ties.":
    "Autant que les ancrages, comme si tout le poids de la plateforme pendait sous les attaches.",
  "Held by friction": "Retenu par le frottement",
  "Only what still presses on the ground rubs on it.": "Seul ce qui presse encore le sol y frotte.",
  "Sideways force that friction does not hold": "Force latérale que le frottement ne retient pas",
  "The anchors must hold this too.": "Les ancrages doivent aussi tenir cela.",
  "Anchors needed": "Ancrages requis",
  "As many along each of the two long sides, one near each corner at least.":
    "Autant le long de chacun des deux longs côtés, au moins un près de chaque coin.",
  "Anchors counted on": "Ancrages comptés",
  "Yours if you entered a number.": "Les vôtres si vous avez entré un nombre.",
  "Anchors along a long side, apart": "Ancrages d'un long côté, distance",
  "Spread evenly from corner to corner.": "Répartis également de coin à coin.",
  "One anchor holds, upwards": "Un ancrage tient, vers le haut",
  "What the maker allows in your soil, or half of what one held when you pulled at it. There is no figure that fits all soils.":
    "Ce que permet le fabricant dans votre sol, ou la moitié de ce que l'un a tenu quand vous avez tiré dessus. Aucun chiffre ne vaut pour tous les sols.",
  "Wet or frozen ground, and loose fill, can halve what an anchor holds. Mark buried cables and pipes before you drive one.":
    "Un sol mouillé ou gelé, ou un remblai lâche, peut réduire de moitié ce que tient un ancrage. Faites repérer les câbles avant d'en planter un.",
  "One anchor holds, sideways": "Un ancrage tient, de côté",
  "A rod that stands up in soft ground holds little sideways; a slanting strap holds both ways.":
    "Une tige debout dans un sol mou tient peu de côté ; une sangle en biais tient dans les deux sens.",
  "Anchors that you will set": "Ancrages que vous mettrez",
  "Enter another number to see whether it holds.": "Entrez un autre nombre pour voir s'il tient.",
  "as many as are needed": "autant qu'il en faut",
  "Does the wind lift it?": "Le vent le soulève-t-il ?",
  "Lift against the counted weight and the anchors.":
    "Le soulèvement contre le poids compté et les ancrages.",
  "Set {wind_on_building.anchors_needed} anchors, or choose stronger ones: {wind_on_building.tie_force_side} along each long side.":
    "Mettez {wind_on_building.anchors_needed} ancrages, ou prenez-les plus forts : {wind_on_building.tie_force_side} le long de chaque long côté.",
  "Does the wind tip it over?": "Le vent le renverse-t-il ?",
  "Tipping moment against the counted weight and the anchors towards the wind.":
    "Le moment de renversement contre le poids compté et les ancrages au vent.",
  "Hold down {wind_on_building.tie_force_side} along each long side: {wind_on_building.anchors_needed} anchors in all.":
    "Retenez {wind_on_building.tie_force_side} le long de chaque long côté : {wind_on_building.anchors_needed} ancrages en tout.",
  "Does the wind push it off?": "Le vent le pousse-t-il dehors ?",
  "Sideways force against friction and the anchors.":
    "La force latérale contre le frottement et les ancrages.",
  "Hold {wind_on_building.slide_left} more sideways: slanting straps to anchors, or a frame let into the ground.":
    "Retenez {wind_on_building.slide_left} de plus de côté : sangles en biais vers des ancrages, ou un cadre encastré dans le sol.",
  "A light greenhouse on a loose base can lift, tip or slide. Weight against wind, and what must be anchored.":
    "Une serre légère sur une base libre peut se soulever, basculer ou glisser. Le poids contre le vent, et ce qu'il faut ancrer.",
  "Height of the greenhouse's walls": "Hauteur des murs de la serre",
  "Frame and glass, without pots and benches, which may be gone when the storm comes.":
    "Cadre et vitrage, sans pots ni tablettes, qui peuvent ne plus être là quand vient la tempête.",
  "Bearers tied to slabs on stone over sandy ground. Tie them down: timber on a slab slides sooner.":
    "Lambourdes attachées à des dalles sur pierre et sol sableux. Attachez-les : du bois sur une dalle glisse plus vite.",
}
