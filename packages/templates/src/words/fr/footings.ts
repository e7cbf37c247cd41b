import type { Texts } from "../dictionary.ts"

export const footings: Texts = {
  "Instead: footings below the frost": "À la place : des fondations sous le gel",
  "The other way to stand: round concrete footings below the frost, counted so that you can compare.":
    "L'autre façon de se tenir : des fondations rondes de béton sous le gel, comptées pour comparer.",
  "Never shallower than": "Jamais moins profond que",
  "Below undisturbed ground, frost or not.": "Sous le sol non remanié, gel ou pas.",
  "Depth of a footing's hole": "Profondeur du trou d'une fondation",
  "To the frost, and to the least depth at any rate. A footing that ends above the frost is lifted by it; one below stays put, and what stands on it must not touch the ground that moves.":
    "Jusqu'au gel, et au moins à la profondeur minimale. Une fondation qui finit au-dessus du gel est soulevée ; dessous, elle reste, et ce qu'elle porte ne doit pas toucher le sol qui bouge.",
  "Deep holes are covered or guarded while they are open, and nobody climbs into one that could cave in.":
    "Des trous profonds sont couverts ou gardés tant qu'ils sont ouverts, et personne ne descend dans un qui pourrait s'effondrer.",
  "Diameter of a footing": "Diamètre d'une fondation",
  "As wide as the auger or the tube. The soil under it has to bear the load.":
    "Aussi large que la tarière ou le tube. Le sol dessous doit porter la charge.",
  "Footing above the ground": "Fondation au-dessus du sol",
  "So that the timber on it stays dry.": "Pour que le bois dessus reste sec.",
  "Foot of a footing": "Pied d'une fondation",
  "The round face on the soil.": "La face ronde sur le sol.",
  "Are the footings wide enough?": "Les fondations sont-elles assez larges ?",
  "A deep footing still presses on soil: the busiest support's load over the footing's foot, without the footing's own weight.":
    "Une fondation profonde presse quand même le sol : la charge de l'appui le plus chargé sur son pied, sans son propre poids.",
  "Make the footings at least {footing_diameter_needed} wide at the bottom.":
    "Faites les fondations d'au moins {footing_diameter_needed} de large au fond.",
  "Diameter that the soil asks for": "Diamètre que demande le sol",
  "The round face that carries the busiest support's load.":
    "La face ronde qui porte la charge de l'appui le plus chargé.",
  "Soil out of all holes, loose": "Terre de tous les trous, en vrac",
  "As it lies in the heap, one hole a support.": "Telle qu'en tas, un trou par appui.",
  Concrete: "Béton",
  "The holes and what stands above the ground.": "Les trous et ce qui dépasse du sol.",
  "Wet cement burns the skin and its dust harms eyes and lungs: wear gloves, long sleeves, goggles and a mask.":
    "Le ciment frais brûle la peau et sa poussière nuit aux yeux et aux poumons : gants, manches longues, lunettes et masque.",
  "Concrete by the bag": "Béton en sacs",
  "How many bags of one size it would take. The bigger bag is cheaper and needs a strong back.":
    "Combien de sacs d'un format il faudrait. Le gros sac est moins cher et demande un bon dos.",
  Bag: "Sac",
  "The dry mix in one bag.": "Le mélange sec d'un sac.",
  Fills: "Remplit",
  "What one bag gives when mixed.": "Ce que donne un sac une fois mélangé.",
  "Bags of this size": "Sacs de ce format",
  "Counted up once, for all footings together.":
    "Arrondis une fois vers le haut, pour toutes les fondations.",
  "For the weight to carry.": "Pour le poids à porter.",
  "Weight of the concrete": "Poids du béton",
  "What is mixed and carried to the holes.": "Ce qui est mélangé et porté aux trous.",
}
