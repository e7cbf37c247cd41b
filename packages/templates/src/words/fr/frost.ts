import type { Texts } from "../dictionary.ts"

export const frost: Texts = {
  Frost: "Gel",
  "Blocks on the surface rise and sink with the frost. Your place may allow that for a low platform that stands free.":
    "Des blocs posés en surface montent et descendent avec le gel. Votre municipalité peut l'admettre pour une plateforme basse qui se tient seule.",
  "Frost depth at your place": "Profondeur de gel chez vous",
  "How deep the ground freezes. Blocks on the surface stand above it and will move; the figure shows how far off a footing would be.":
    "Jusqu'où le sol gèle. Des blocs en surface sont au-dessus et bougeront ; le chiffre montre à quelle distance serait une fondation.",
  "Surface blocks heave. Keep the platform clear of the house, on drained stone, and level it again in spring.":
    "Les blocs en surface se soulèvent. Tenez la plateforme loin de la maison, sur de la pierre drainée, et remettez-la de niveau au printemps.",
  "How far supports may rise in winter": "De combien les appuis peuvent monter l'hiver",
  "Only to show what to expect: supports rise unevenly, the shaded side more. Keep packers at hand, and the frame loose enough to be levelled again.":
    "Seulement pour montrer à quoi s'attendre : les appuis montent inégalement, davantage du côté ombragé. Gardez des cales à portée, et un cadre assez libre pour être remis de niveau.",
  "Doors of a shed on it may jam in winter. Fix no rigid pipe or cable across the gap.":
    "Les portes d'un cabanon posé dessus peuvent coincer l'hiver. Ne fixez aucun tuyau ni câble rigide en travers du joint.",
  "Soil under the stone": "Sol sous la pierre",
  "Silt draws water up to the frost and swells most; clean gravel hardly moves.":
    "Le silt fait monter l'eau vers le gel et gonfle le plus ; le gravier propre bouge à peine.",
  "Rises by": "Monte de",
  "Rough share of the depth frozen, with water to be had. A wet winter can double it.":
    "Part approximative de la profondeur gelée, s'il y a de l'eau. Un hiver humide peut la doubler.",
  "A support may rise by about": "Un appui peut monter d'environ",
  "Of the soil that freezes below the shallowest bed of stone: stone drains and does not swell, the soil under it does.":
    "Du sol qui gèle sous le lit de pierre le plus mince : la pierre draine et ne gonfle pas, le sol dessous, oui.",
  "Buildings that it is fixed to": "Bâtiments auxquels elle est fixée",
  "A platform that hangs on a house has to move with the house: it then needs footings below the frost.":
    "Une plateforme accrochée à une maison doit bouger avec elle : il lui faut alors des fondations sous le gel.",
  "Does it stand free?": "Se tient-elle seule ?",
  "The lightening for frost is for platforms that no building holds up: none may be touched.":
    "L'allègement pour le gel vaut pour les plateformes qu'aucun bâtiment ne soutient : elle ne doit en toucher aucun.",
  "Keep a gap to the building, or have footings below the frost designed.":
    "Laissez un jeu avec le bâtiment, ou faites concevoir des fondations sous le gel.",
  "Largest area let off the frost depth": "Plus grande aire dispensée de la profondeur de gel",
  "Some codes let small structures stand above the frost. Ask yours for its area.":
    "Certains codes laissent les petits ouvrages au-dessus du gel. Demandez au vôtre jusqu'à quelle aire.",
  "Small enough to stand above the frost?": "Assez petite pour rester au-dessus du gel ?",
  "Holds the platform against the area that your place allows.":
    "Compare la plateforme à l'aire que permet votre municipalité.",
  "Make the platform smaller than {frost_area_limit}, or have footings below the frost designed.":
    "Faites la plateforme plus petite que {frost_area_limit}, ou faites concevoir des fondations sous le gel.",
  "Greatest height let off the frost depth": "Plus grande hauteur dispensée de la profondeur de gel",
  "Measured from the ground to the underside of the joists. Ask whether your place has such a limit.":
    "Mesurée du sol au dessous des solives. Demandez si votre municipalité a une telle limite.",
  "Low enough to stand above the frost?": "Assez basse pour rester au-dessus du gel ?",
  "The height that the frost rule asks about; not the one of the permit. Holds the joists' underside against the height that your place allows.":
    "La hauteur dont parle la règle du gel, et non celle du permis. Compare le dessous des solives à la hauteur que permet votre municipalité.",
  "The joists' underside stands higher above the lowest ground than {frost_height_limit}: lower the platform or have footings below the frost designed.":
    "Le dessous des solives est plus haut que {frost_height_limit} au-dessus du sol le plus bas : abaissez la plateforme ou faites concevoir des fondations sous le gel.",
  "How deep the ground freezes. A pad of stone drains and moves less than soil, but it stands above the frost and can move.":
    "Jusqu'où le sol gèle. Une assise de pierre draine et bouge moins que le sol, mais elle est au-dessus du gel et peut bouger.",
  "Only to show what to expect: sleepers rise unevenly, the shaded ones more. Keep packers at hand, and level the walk again in spring.":
    "Seulement pour montrer à quoi s'attendre : les traverses montent inégalement, davantage à l'ombre. Gardez des cales à portée, et remettez le sentier de niveau au printemps.",
  "Buildings that the walk is fixed to": "Bâtiments auxquels le sentier est fixé",
  "Count a building also if the walk is the only way out of its door: a way out must not heave.":
    "Comptez aussi un bâtiment si le sentier est la seule sortie de sa porte : une sortie ne doit pas se soulever.",
}
