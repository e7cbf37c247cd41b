import type { Texts } from "../dictionary.ts"

export const loads: Texts = {
  "Loads and the ground under them": "Charges et sol qui les porte",
  "How much the busiest stack carries, and whether the soil can take it.":
    "Ce que porte la pile la plus chargée, et si le sol peut le prendre.",
  "People and things on the platform": "Gens et choses sur la plateforme",
  "The load that comes and goes. A place where a crowd may stand or jump is counted heavier than a family's deck (40 lb per square foot in one house code).":
    "La charge qui va et vient. Un endroit où une foule peut se tenir ou sauter compte plus que la terrasse d'une famille (40 lb par pied carré dans un code d'habitation).",
  "Where the public uses the platform, your authority decides the load, and may ask for a licensed designer.":
    "Là où le public utilise la plateforme, votre municipalité décide de la charge et peut exiger un concepteur habilité.",
  "The platform's own weight": "Poids propre de la plateforme",
  "Timber and surface, spread over the area. Ten pounds a square foot is usual for timber floors.":
    "Bois et surface, répartis sur l'aire. Dix livres par pied carré est usuel pour un plancher de bois.",
  "Load of the whole platform": "Charge de toute la plateforme",
  "Everything together. The loads of the stacks add up to exactly this.":
    "Tout ensemble. Les charges des piles font exactement cette somme.",
  "Load on the busiest stack": "Charge sur la pile la plus chargée",
  "An inner stack carries most: it has neighbours on every side.":
    "Une pile intérieure porte le plus : elle a des voisines de tous les côtés.",
  "Greatest pressure under a block": "Plus grande pression sous un bloc",
  "The busiest stack's load over the face of its block.":
    "La charge de la pile la plus chargée sur la face de son bloc.",
  "What soils bear": "Ce que portent les sols",
  "To compare with your soil; the figures are for undisturbed ground below the topsoil.":
    "Pour comparer avec votre sol ; les chiffres valent pour un sol non remanié sous la terre végétale.",
  Soil: "Sol",
  "Dig a small hole and look.": "Creusez un petit trou et regardez.",
  Bears: "Porte",
  "What it may be loaded with.": "Ce dont on peut le charger.",
  "Your soil bears": "Votre sol porte",
  "What the ground may be loaded with. The figure to start from is for clay and silt, the weakest firm soils in the table.":
    "Ce dont on peut charger le sol. Le chiffre de départ vaut pour l'argile et le silt, les sols fermes les plus faibles du tableau.",
  "Peat, mud, organic soil and made-up ground have no such figure: ask a geotechnical engineer. Wet clay bears much less than dry.":
    "Tourbe, boue, sol organique et remblai n'ont pas de tel chiffre : demandez à un ingénieur géotechnicien. L'argile mouillée porte bien moins que sèche.",
  "Blocks on the surface move with frost. Keep the platform free of any building, and level it again in spring.":
    "Des blocs en surface bougent avec le gel. Tenez la plateforme libre de tout bâtiment, et remettez-la de niveau au printemps.",
  "Can the ground bear the busiest stack?": "Le sol peut-il porter la pile la plus chargée ?",
  "Ground that is pressed harder than it bears gives way slowly, and one corner sinks.":
    "Un sol pressé plus qu'il ne porte cède lentement, et un coin s'enfonce.",
  "Give the busiest stack a foot of at least {block_face_needed}: a bigger slab, or two blocks side by side.":
    "Donnez à la pile la plus chargée un pied d'au moins {block_face_needed} : une dalle plus grande, ou deux blocs côte à côte.",
  "Or stand the supports closer together, or set the skids closer.":
    "Ou rapprochez les appuis, ou rapprochez les patins.",
  "Face of block that the soil asks for": "Face de bloc que demande le sol",
  "The busiest stack's load over what the soil bears.":
    "La charge de la pile la plus chargée divisée par ce que porte le sol.",
  "Stone spreads a load by": "La pierre étale une charge de",
  "On each side, for each inch of depth: one out for two down.":
    "De chaque côté, pour chaque pouce de profondeur : un de large pour deux de creux.",
  "Can the ground bear it under the stone?": "Le sol peut-il la porter sous la pierre ?",
  "A second opinion, after the bed has spread the load: it holds only if the stone is well tamped and cannot creep out sideways.":
    "Un deuxième avis, une fois la charge étalée par le lit : il ne vaut que si la pierre est bien compactée et ne peut pas fuir de côté.",
  "Make the bed of stone larger or thicker, or set more supports.":
    "Faites le lit de pierre plus grand ou plus épais, ou ajoutez des appuis.",
  "How hard the busiest skid presses, and whether the soil can take it.":
    "À quel point presse le patin le plus chargé, et si le sol peut le prendre.",
  "People and things in the shed": "Gens et choses dans le cabanon",
  "The load that comes and goes: tools, a mower, firewood, people. Stacked firewood or bags of soil weigh more than most people think.":
    "La charge qui va et vient : outils, tondeuse, bois de chauffage, gens. Du bois cordé ou des sacs de terre pèsent plus qu'on pense.",
  "The base's and the shed's own weight": "Poids propre de la base et du cabanon",
  "Base, walls and roof, spread over the floor. Snow on the roof comes on top: add it where you have snow.":
    "Base, murs et toit, répartis sur le plancher. La neige du toit s'ajoute : comptez-la si vous en avez.",
  "Everything together, as it comes down on the stone.": "Tout ensemble, tel que cela arrive sur la pierre.",
  "Load along the busiest skid": "Charge le long du patin le plus chargé",
  "For each length of skid: half way to the skid on either side, with everything that stands there.":
    "Pour chaque longueur de patin : jusqu'à mi-chemin des patins de chaque côté, avec tout ce qui s'y trouve.",
  "Greatest pressure under a skid": "Plus grande pression sous un patin",
  "The skid lies on stone all along, so its load is shared over its whole face.":
    "Le patin repose sur la pierre tout du long, et sa charge se partage sur toute sa face.",
  "Can the ground bear the busiest skid?": "Le sol peut-il porter le patin le plus chargé ?",
  "Held against the pressure on the skid's own face; the stone spreads it before it reaches the soil, which is to the good.":
    "Comparé à la pression sur la face même du patin ; la pierre l'étale avant le sol, ce qui est à notre avantage.",
  "Lay the skids so near that none carries more than {skid_width_for_soil} of the floor's width, or take wider ones.":
    "Rapprochez les patins pour qu'aucun ne porte plus de {skid_width_for_soil} de la largeur du plancher, ou prenez-les plus larges.",
  "Width of floor that one skid may carry": "Largeur de plancher qu'un patin peut porter",
  "With this skid, this soil and these loads. Where nothing is carried, the whole width.":
    "Avec ce patin, ce sol et ces charges. Si rien n'est porté, toute la largeur.",
  "Greatest pressure under the stone": "Plus grande pression sous la pierre",
  "After the least thickness of stone has spread the load. It shows how much the stone helps; no check leans on it.":
    "Une fois la charge étalée par la moindre épaisseur de pierre. Montre ce que la pierre apporte ; aucune vérification ne s'y appuie.",
  "Load on the busiest footing, if it stood on footings":
    "Charge sur la fondation la plus chargée, s'il y en avait",
  "To compare with; on the stone pad there are none.":
    "Pour comparer ; sur l'assise de pierre, il n'y en a pas.",
  "How much the busiest sleeper carries, and whether the soil can take it.":
    "Ce que porte la traverse la plus chargée, et si le sol peut le prendre.",
  "The load that comes and goes: people, barrows. A walk that the public crowds onto is counted heavier than a family's deck (40 lb per square foot in one house code).":
    "La charge qui va et vient : gens, brouettes. Un sentier où le public s'entasse compte plus que la terrasse d'une famille (40 lb par pied carré dans un code d'habitation).",
  "Timber, spread over the area. Ten pounds a square foot is usual for timber floors.":
    "Bois, réparti sur l'aire. Dix livres par pied carré est usuel pour un plancher de bois.",
  "Everything together. The loads of the strips add up to exactly this.":
    "Tout ensemble. Les charges des bandes font exactement cette somme.",
  "Load on the busiest strip": "Charge sur la bande la plus chargée",
  "An inner sleeper carries most: it has neighbours on both sides.":
    "Une traverse intérieure porte le plus : elle a des voisines des deux côtés.",
  "Greatest pressure under a sleeper": "Plus grande pression sous une traverse",
  "The busiest strip's load over the face of its sleeper.":
    "La charge de la bande la plus chargée sur la face de sa traverse.",
  "Can the ground bear the busiest sleeper?": "Le sol peut-il porter la traverse la plus chargée ?",
  "Ground that is pressed harder than it bears gives way slowly, and the walk sags there.":
    "Un sol pressé plus qu'il ne porte cède lentement, et le sentier s'y affaisse.",
  "Give each sleeper an underside of at least {block_face_needed}: a wider or a longer one.":
    "Donnez à chaque traverse un dessous d'au moins {block_face_needed} : plus large ou plus longue.",
  "Or lay the sleepers no more than {sleeper_spacing_for_soil} apart.":
    "Ou ne posez pas les traverses à plus de {sleeper_spacing_for_soil} l'une de l'autre.",
  "Underside of sleeper that the soil asks for": "Dessous de traverse que demande le sol",
  "The busiest sleeper's load over what the soil bears.":
    "La charge de la traverse la plus chargée divisée par ce que porte le sol.",
  "Sleeper spacing that the soil allows": "Espacement des traverses que permet le sol",
  "How far apart inner sleepers may lie with this size of sleeper and this soil. Where nothing is carried, the whole length.":
    "À quelle distance peuvent être les traverses intérieures avec cette grosseur et ce sol. Si rien n'est porté, toute la longueur.",
  "How much the busiest pad carries, and whether the soil can take it.":
    "Ce que porte la dalle d'appui la plus chargée, et si le sol peut le prendre.",
  "Everything together. The loads of the pads add up to exactly this.":
    "Tout ensemble. Les charges des dalles d'appui font exactement cette somme.",
  "Load on the busiest pad": "Charge sur la dalle d'appui la plus chargée",
  "An inner pad carries most: it has neighbours on every side.":
    "Une dalle d'appui intérieure porte le plus : elle a des voisines de tous les côtés.",
  "Greatest pressure under a pad": "Plus grande pression sous une dalle d'appui",
  "The busiest pad's load over the face of its pad.":
    "La charge de la dalle d'appui la plus chargée sur sa face.",
  "Can the ground bear the busiest pad?": "Le sol peut-il porter la dalle d'appui la plus chargée ?",
  "Give the busiest pad a foot of at least {block_face_needed}: a bigger slab, or two pads side by side.":
    "Donnez à la dalle d'appui la plus chargée un pied d'au moins {block_face_needed} : une dalle plus grande, ou deux côte à côte.",
  "Or stand the supports closer together, or set the beams closer.":
    "Ou rapprochez les appuis, ou rapprochez les poutres.",
  "Face of pad that the soil asks for": "Face de dalle d'appui que demande le sol",
  "The busiest pad's load over what the soil bears.":
    "La charge de la dalle d'appui la plus chargée divisée par ce que porte le sol.",
  "How much the busiest slab carries, and whether the soil can take it.":
    "Ce que porte la dalle la plus chargée, et si le sol peut le prendre.",
  "People and things on the floor": "Gens et choses sur le plancher",
  "The load that comes and goes: people, barrows, bags of soil. The figure to start from is that of a house's deck.":
    "La charge qui va et vient : gens, brouettes, sacs de terre. Le chiffre de départ est celui de la terrasse d'une maison.",
  "Weight of the floor and the greenhouse": "Poids du plancher et de la serre",
  "Floor, greenhouse and benches, spread over the area. The section on the greenhouse says whether it is enough.":
    "Plancher, serre et tablettes, répartis sur l'aire. La section sur la serre dit si c'est assez.",
  "Everything together. The loads of the slabs add up to exactly this.":
    "Tout ensemble. Les charges des dalles font exactement cette somme.",
  "Load on the busiest slab": "Charge sur la dalle la plus chargée",
  "An inner slab carries most: it has neighbours on every side.":
    "Une dalle intérieure porte le plus : elle a des voisines de tous les côtés.",
  "Greatest pressure under a slab": "Plus grande pression sous une dalle",
  "The busiest slab's load over the face of its slab.": "La charge de la dalle la plus chargée sur sa face.",
  "Can the ground bear the busiest slab?": "Le sol peut-il porter la dalle la plus chargée ?",
  "Give the busiest slab a foot of at least {block_face_needed}: a bigger slab, or two slabs side by side.":
    "Donnez à la dalle la plus chargée un pied d'au moins {block_face_needed} : une dalle plus grande, ou deux côte à côte.",
  "Or stand the supports closer together, or set the bearers closer.":
    "Ou rapprochez les appuis, ou rapprochez les lambourdes.",
  "Face of slab that the soil asks for": "Face de dalle que demande le sol",
  "The busiest slab's load over what the soil bears.":
    "La charge de la dalle la plus chargée divisée par ce que porte le sol.",
}
