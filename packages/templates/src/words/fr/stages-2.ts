import type { Texts } from "../dictionary.ts"

export const stages2: Texts = {
  "Timber: {timber_length_bought} were bought and {timber_length_used} are in the work. Treated off-cuts go to the tip as such: never burned, never mulched.":
    "Bois : {timber_length_bought} achetés, {timber_length_used} dans l'ouvrage. Les chutes traitées vont à l'écocentre comme telles : jamais brûlées, jamais en paillis.",
  "Take back what is whole: unopened boxes, whole boards, whole rolls. Keep a few of the screws that are left over.":
    "Retournez ce qui est entier : boîtes fermées, planches entières, rouleaux entiers. Gardez quelques-unes des vis qui restent.",
  "Packaging, tins and brushes go where your authority says; a tin with preservative in it is hazardous waste.":
    "Emballages, contenants et pinceaux vont là où le dit votre municipalité ; un contenant avec du préservatif est un déchet dangereux.",
  "magnet on a string for lost screws": "aimant au bout d'une ficelle pour les vis perdues",
  "Smoke and ash of treated wood are poisonous.": "La fumée et la cendre de bois traité sont toxiques.",
  "Soil from near roads or old buildings may not be given away: ask.":
    "La terre prise près d'une route ou d'un vieux bâtiment ne se donne pas toujours : demandez.",
  "Lift the turf in sods and keep them in the shade. Dig the whole pad: from {least_dig} to {greatest_dig} deep, as the set-out sheet says.":
    "Levez le gazon en plaques et gardez-les à l'ombre. Creusez toute l'assise : de {least_dig} à {greatest_dig} de profondeur, selon la feuille d'implantation.",
  "Spread the stone over the fabric and inside the edging in layers no thicker than a hand is long, and tamp each until it rings.":
    "Étendez la pierre sur le géotextile, dans la bordure, en couches pas plus épaisses que la longueur d'une main, et compactez chacune jusqu'à ce qu'elle sonne dur.",
  fabric: "géotextile",
  "fabric pin": "agrafe à géotextile",
  edging: "bordure",
  "edging stake": "piquet de bordure",
  "{skid_count} skids of {skid_size} on the stone, {skid_spacing} from centre to centre.":
    "{skid_count} patins de {skid_size} sur la pierre, à {skid_spacing} centre à centre.",
  "Close the foot with mesh": "Fermer le pied avec du grillage",
  "{mesh_length} of mesh, {mesh_height} high in all: {mesh_bury_depth} go down and {mesh_turn_out} turn outwards.":
    "{mesh_length} de grillage, {mesh_height} de haut en tout : {mesh_bury_depth} descendent et {mesh_turn_out} tournent vers l'extérieur.",
  snips: "cisailles",
  "stapler or hammer": "agrafeuse ou marteau",
  "Cut wire springs back and cuts: gloves and goggles.":
    "Le fil coupé rebondit et coupe : gants et lunettes.",
  "Leave air gaps: the frame has to dry.": "Laissez des passages d'air : le cadre doit sécher.",
  "mesh roll": "rouleau de grillage",
  "box of staples": "boîte d'agrafes",
  "Lift the turf in sods and keep them in the shade. Dig a trench for each sleeper: from {least_dig} to {greatest_dig} deep, as the set-out sheet says.":
    "Levez le gazon en plaques et gardez-les à l'ombre. Creusez une tranchée pour chaque traverse : de {least_dig} à {greatest_dig} de profondeur, selon la feuille d'implantation.",
  "Spread the stone in the trenches in layers no thicker than a hand is long, and tamp each until it rings.":
    "Étendez la pierre dans les tranchées en couches pas plus épaisses que la longueur d'une main, et compactez chacune jusqu'à ce qu'elle sonne dur.",
  "Lay the sleepers and stringers, and square them":
    "Poser les traverses et les longerons, et les mettre d'équerre",
  "{sleeper_count} sleepers of {sleeper_size}, {sleeper_spacing} from centre to centre, level across.":
    "{sleeper_count} traverses de {sleeper_size}, à {sleeper_spacing} centre à centre, de niveau en travers.",
  "{stringer_count} stringers of {stringer_size} over them, {stringer_spacing} apart; a cleat at each side of every joint.":
    "{stringer_count} longerons de {stringer_size} par-dessus, à {stringer_spacing} ; une éclisse de chaque côté de chaque joint.",
  "timber for the sleepers and stringers": "bois pour les traverses et les longerons",
  "Lay the boards": "Poser les planches",
  "{board_rows} rows of {board_size}, with a gap of {board_gap}. Measure what is left every few rows, so that the last comes out at {board_last_width}.":
    "{board_rows} rangées de {board_size}, avec un jeu de {board_gap}. Mesurez ce qui reste toutes les quelques rangées, pour que la dernière tombe à {board_last_width}.",
  "Joints of neighbouring rows stand {board_joint_stagger} apart or more, each on timber.":
    "Les joints de rangées voisines sont décalés de {board_joint_stagger} ou plus, chacun sur du bois.",
  "Rows run parallel to the edge; every cut end is brushed.":
    "Les rangées sont parallèles au bord ; chaque bout coupé est badigeonné.",
  spacers: "espaceurs",
  "lever for crooked boards": "levier pour planches croches",
  "Gaps are for boards as wet or dry as entered: wet boards shrink apart later.":
    "Les jeux valent pour des planches aussi mouillées ou sèches qu'entré : mouillées, elles s'écartent plus tard en séchant.",
  boards: "planches",
  "Make the ramps and steps": "Faire les rampes et les marches",
  "High end: {access_high_end}. Low end: {access_low_end}. The slope of a ramp is {ramp_slope}.":
    "Bout haut : {access_high_end}. Bout bas : {access_low_end}. La pente d'une rampe est de {ramp_slope}.",
  "The foot of each stands on tamped stone, not on grass.":
    "Le pied de chacune repose sur de la pierre compactée, pas sur l'herbe.",
  "No edge to trip on where the walk begins, and nothing gives underfoot.":
    "Rien pour trébucher là où le sentier commence, et rien ne cède sous le pied.",
  "Unlike risers trip people; a ramp in the shade is slippery.":
    "Des contremarches inégales font trébucher ; une rampe à l'ombre glisse.",
  "Bar the ends until ramps and steps are fast.":
    "Barrez les bouts jusqu'à ce que rampes et marches soient solides.",
  "timber for ramps and steps": "bois pour rampes et marches",
  "Lift the turf in sods and keep them in the shade. Dig a hole for each of the supports: from {least_dig} to {greatest_dig} deep, as the set-out sheet says.":
    "Levez le gazon en plaques et gardez-les à l'ombre. Creusez un trou pour chaque appui : de {least_dig} à {greatest_dig} de profondeur, selon la feuille d'implantation.",
  "Set the pads level": "Poser les dalles d'appui de niveau",
  "Set {block_count} pads at {support_count} places, with their middles where the set-out sheet says.":
    "Posez {block_count} dalles d'appui à {support_count} endroits, leur centre là où le dit la feuille d'implantation.",
  "Lay the beams, and square them": "Poser les poutres et les mettre d'équerre",
  "{beam_count} beams of {beam_plies} planks of {beam_size}, {beam_spacing} from centre to centre.":
    "{beam_count} poutres de {beam_plies} madriers de {beam_size}, à {beam_spacing} centre à centre.",
  "timber for the beams": "bois pour les poutres",
  "Set the slabs level": "Poser les dalles de niveau",
  "Set {block_count} slabs at {support_count} places, with their middles where the set-out sheet says.":
    "Posez {block_count} dalles à {support_count} endroits, leur centre là où le dit la feuille d'implantation.",
  "Every top touches the string, no slab rocks, and the rows run straight.":
    "Chaque dessus touche le cordeau, aucune dalle ne bascule, et les rangées sont droites.",
  "One slab weighs {block_mass}. Lift with your knees and with a second person: one piece weighs up to {heaviest_piece}.":
    "Une dalle pèse {block_mass}. Soulevez avec les genoux et à deux : une pièce pèse jusqu'à {heaviest_piece}.",
  slab: "dalle",
  "Lay the bearers, and square them": "Poser les lambourdes et les mettre d'équerre",
  "{skid_count} bearers of {skid_size}, {skid_spacing} from centre to centre.":
    "{skid_count} lambourdes de {skid_size}, à {skid_spacing} centre à centre.",
  "timber for the bearers": "bois pour les lambourdes",
}
