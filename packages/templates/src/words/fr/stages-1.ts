import type { Texts } from "../dictionary.ts"

export const stages1: Texts = {
  "Mark out, and have services found": "Implanter, et faire repérer les conduites",
  "Ask the locating service to mark cables and pipes, {locate_notice_days} working days ahead or more.":
    "Demandez au service de repérage de marquer câbles et conduites, {locate_notice_days} jours ouvrables d'avance ou plus.",
  "Drive peg A, stretch the first long side, and mark {platform_length} on it. Every other length is measured from A.":
    "Plantez le piquet A, tendez le premier long côté et marquez-y {platform_length}. Toutes les autres longueurs se mesurent à partir de A.",
  "Square the short side with the triangle: {square_triangle.short} along it, {square_triangle.long} along the long side, {square_triangle.across} across.":
    "Mettez le petit côté d'équerre avec le triangle : {square_triangle.short} le long de celui-ci, {square_triangle.long} le long du grand côté, {square_triangle.across} entre les deux marques.",
  "Both diagonals measure {platform_diagonal}. Measure both pairs of sides as well: {platform_length} and {platform_width}.":
    "Les deux diagonales mesurent {platform_diagonal}. Mesurez aussi les deux paires de côtés : {platform_length} et {platform_width}.",
  "Nobody digs before the services are marked and the pegs measure true.":
    "Personne ne creuse avant que les conduites soient repérées et que les piquets soient d'équerre.",
  "two long tapes": "deux longs rubans",
  hammer: "marteau",
  "the set-out sheet": "la feuille d'implantation",
  "A peg can pierce a cable as a spade can: wait for the marks before you drive one.":
    "Un piquet peut percer un câble autant qu'une bêche : attendez les marques avant d'en planter un.",
  "Keep to what your local authority says of distances to the boundary.":
    "Respectez ce que dit votre municipalité sur les distances à la limite du terrain.",
  "The service needs its days of notice; order timber and stone meanwhile.":
    "Le service a besoin de son préavis ; commandez bois et pierre en attendant.",
  "Pegs and strings may stand for weeks. Tie a rag to each, so that nobody trips.":
    "Piquets et cordeaux peuvent rester des semaines. Nouez un chiffon à chacun pour que personne ne trébuche.",
  peg: "piquet",
  "roll of string": "rouleau de cordeau",
  "can of marking paint": "bombe de peinture à marquer",
  "Take the levels": "Prendre les niveaux",
  "Stretch one level string, or use a water level: the underside of the lowest timber is {underside_level} above the ground at the high corner.":
    "Tendez un cordeau de niveau, ou prenez un niveau à eau : le dessous du bois le plus bas est à {underside_level} au-dessus du sol au coin haut.",
  "Measure down from it to the ground at every peg. The plan goes by a fall of {fall_in_use} in all; enter your own levels where they differ.":
    "De là, mesurez jusqu'au sol à chaque piquet. Le plan compte sur un dénivelé de {fall_in_use} en tout ; entrez vos niveaux là où ils diffèrent.",
  "The levels are entered, and every hole's depth has been read again after that.":
    "Les niveaux sont entrés, et la profondeur de chaque trou a été relue ensuite.",
  "water level, or a level on a straight board": "niveau à eau, ou niveau sur une règle droite",
  tape: "ruban à mesurer",
  "pencil and paper": "crayon et papier",
  "Strings at knee height trip people: mark them.":
    "Un cordeau à hauteur de genou fait trébucher : marquez-le.",
  "A water level freezes, and a string sags in wind: choose a still day above freezing.":
    "Un niveau à eau gèle, et un cordeau fléchit au vent : choisissez un jour calme au-dessus de zéro.",
  "After this stage nothing is open yet.": "Après cette étape, rien n'est encore ouvert.",
  "Strip the turf and dig": "Enlever le gazon et creuser",
  "Lift the turf in sods and keep them in the shade. Dig a hole for each stack: from {least_dig} to {greatest_dig} deep, as the set-out sheet says.":
    "Levez le gazon en plaques et gardez-les à l'ombre. Creusez un trou pour chaque pile : de {least_dig} à {greatest_dig} de profondeur, selon la feuille d'implantation.",
  "{dug_volume} come out of the ground and loosen to {dug_volume_loose}: about {spoil_barrows} barrows. Heap them where water does not wash them back.":
    "{dug_volume} sortent du sol et foisonnent à {dug_volume_loose} : environ {spoil_barrows} brouettes. Mettez-les en tas là où l'eau ne les ramène pas.",
  "Every bottom is flat, firm and out of the turf; soft places are dug out further.":
    "Chaque fond est plat, ferme et sans gazon ; les endroits mous sont creusés davantage.",
  spade: "bêche",
  shovel: "pelle",
  barrow: "brouette",
  "tape and level string": "ruban et cordeau de niveau",
  "Dig by hand near a mark of the locating service, and stop at any tape, tile or pipe.":
    "Creusez à la main près d'une marque du service de repérage, et arrêtez à tout ruban, tuile ou tuyau.",
  "Edges of a trench give way: keep the heap and your feet back from them, and let nobody step into a deep one.":
    "Le bord d'une tranchée cède : gardez le tas et vos pieds en retrait, et que personne n'entre dans une tranchée profonde.",
  "Lift with your knees and with a second person: one piece weighs up to {heaviest_piece}.":
    "Soulevez avec les genoux et à deux : une pièce pèse jusqu'à {heaviest_piece}.",
  "Not in frozen or waterlogged ground: the bottom is trodden to mud.":
    "Pas dans un sol gelé ou gorgé d'eau : le fond se piétine en boue.",
  "Cover open holes with boards overnight. Rain softens the bottoms: do not leave them for long.":
    "Couvrez de planches les trous ouverts pour la nuit. La pluie ramollit les fonds : ne les laissez pas longtemps.",
  "pair of gloves": "paire de gants",
  "pair of goggles": "paire de lunettes de protection",
  "set of ear defenders": "protecteurs d'oreilles",
  "Lay and tamp the stone": "Étendre et compacter la pierre",
  "Spread the stone in the holes in layers no thicker than a hand is long, and tamp each until it rings.":
    "Étendez la pierre dans les trous en couches pas plus épaisses que la longueur d'une main, et compactez chacune jusqu'à ce qu'elle sonne dur.",
  "Order {stone_order}, loose; the beds take {stone_in_place} when tamped: about {stone_barrows} barrows.":
    "Commandez {stone_order}, en vrac ; les lits prennent {stone_in_place} une fois compactés : environ {stone_barrows} brouettes.",
  "The stone is level both ways and at its height below the string; nothing moves underfoot.":
    "La pierre est de niveau dans les deux sens et à sa hauteur sous le cordeau ; rien ne bouge sous le pied.",
  rake: "râteau",
  "hand tamper or plate tamper": "pilon à main ou plaque vibrante",
  "level on a straight board": "niveau sur une règle droite",
  "Dust of concrete and stone harms the lungs for good: split blocks rather than saw them, or saw wet and with a mask made for it.":
    "La poussière de béton et de pierre abîme les poumons pour toujours : fendez les blocs plutôt que de les scier, ou sciez à l'eau avec un masque fait pour cela.",
  "A plate tamper crushes feet and is loud: strong boots and ear defenders.":
    "Une plaque vibrante écrase les pieds et fait du bruit : bottes solides et protecteurs d'oreilles.",
  "Stone may be laid in light rain, never on frozen ground: it sinks when it thaws.":
    "La pierre se pose sous une pluie légère, jamais sur un sol gelé : elle s'enfonce au dégel.",
  "Tamped stone may lie for weeks.": "La pierre compactée peut attendre des semaines.",
  stone: "pierre",
  "Set the blocks level": "Poser les blocs de niveau",
  "Set {block_count} blocks at {support_count} places, with their middles where the set-out sheet says.":
    "Posez {block_count} blocs à {support_count} endroits, leur centre là où le dit la feuille d'implantation.",
  "Bring each top to the level string and check it against its neighbours with a straight board.":
    "Amenez chaque dessus au cordeau de niveau et comparez-le à ses voisins avec une règle droite.",
  "Every top touches the string, no block rocks, and the rows run straight.":
    "Chaque dessus touche le cordeau, aucun bloc ne bascule, et les rangées sont droites.",
  "rubber hammer": "maillet de caoutchouc",
  string: "cordeau",
  trowel: "truelle",
  "One block weighs {block_mass}. Lift with your knees and with a second person: one piece weighs up to {heaviest_piece}.":
    "Un bloc pèse {block_mass}. Soulevez avec les genoux et à deux : une pièce pèse jusqu'à {heaviest_piece}.",
  "A good place to stop: nothing rots or shifts.":
    "Un bon moment pour s'arrêter : rien ne pourrit ni ne bouge.",
  block: "bloc",
  "Lay the skids, and square them": "Poser les patins et les mettre d'équerre",
  "{skid_count} skids of {skid_size}, {skid_spacing} from centre to centre. Every joint lies over a stack.":
    "{skid_count} patins de {skid_size}, à {skid_spacing} centre à centre. Chaque joint tombe sur une pile.",
  "Brush preservative on each cut end before the piece is laid.":
    "Badigeonnez de préservatif chaque bout coupé avant de poser la pièce.",
  "Measure both diagonals ({platform_diagonal}) and both pairs of sides before anything is fixed; enter what you measure and push the corners as the set-out sheet says.":
    "Mesurez les deux diagonales ({platform_diagonal}) et les deux paires de côtés avant de fixer quoi que ce soit ; entrez vos mesures et poussez les coins comme le dit la feuille d'implantation.",
  "Square, level and in line. Nothing is fixed before that.":
    "D'équerre, de niveau et aligné. Rien n'est fixé avant.",
  saw: "scie",
  "drill-driver": "perceuse-visseuse",
  "long tape": "long ruban",
  clamps: "serre-joints",
  "Dust of treated wood: saw outdoors, wear gloves and a mask, wash before you eat. Never burn the off-cuts, not in a stove either.":
    "Poussière de bois traité : sciez dehors, portez gants et masque, lavez-vous avant de manger. Ne brûlez jamais les chutes, pas même dans un poêle.",
  "Eyes and ears: wear goggles and ear defenders at the saw and the driver, and keep others away from the blade.":
    "Yeux et oreilles : portez lunettes et protecteurs d'oreilles à la scie et à la visseuse, et tenez les autres loin de la lame.",
  "Power outdoors: a socket with a safety switch that trips on a fault to earth, a cable made for outdoors, joints kept off wet ground.":
    "Courant dehors : une prise protégée par un disjoncteur différentiel, une rallonge faite pour l'extérieur, des raccords à l'abri du sol mouillé.",
  "May rest for weeks under a sheet that lets air through.":
    "Peut attendre des semaines sous une bâche qui laisse passer l'air.",
  "timber for the skids": "bois pour les patins",
  "driver bit": "embout de vissage",
  "drill bit": "mèche à bois",
  "saw blade": "lame de scie",
  "dust mask": "masque antipoussière",
  "tin brush": "pinceau",
  "Set the joists, rims and blocking": "Poser les solives, les solives de rive et les entretoises",
  "Mark {joist_count} joists on both rims, {joist_spacing} from centre to centre, from the same end.":
    "Marquez {joist_count} solives sur les deux solives de rive, à {joist_spacing} centre à centre, à partir du même bout.",
  "Crowns up: sight along each joist and turn the bow upwards. {blocking_count} pieces of blocking go between them.":
    "Bombement vers le haut : visez le long de chaque solive et tournez l'arc en haut. {blocking_count} entretoises vont entre elles.",
  "Diagonals and ends once more, before the last screws.":
    "Diagonales et bouts encore une fois, avant les dernières vis.",
  "carpenter's square": "équerre de charpentier",
  "Fresh treated timber moves as it dries: fix what you cut on the same day.":
    "Le bois traité frais bouge en séchant : fixez le jour même ce que vous coupez.",
  "Once the rims are on and it is square, the frame may rest.":
    "Une fois les solives de rive posées et l'équerre faite, le cadre peut attendre.",
  "timber for joists, rims and blocking": "bois pour solives, solives de rive et entretoises",
  "frame screws": "vis de charpente",
  tie: "attache",
  "box of 100 connector nails": "boîte de 100 clous à connecteur",
  "Treat every cut end before closing up": "Traiter chaque bout coupé avant de refermer",
  "The saw has laid bare {end_cut_count} ends, {end_cut_area} of them. Brush each {preservative_coats} times, and bolt and notch holes too.":
    "La scie a mis à nu {end_cut_count} bouts, soit {end_cut_area}. Badigeonnez chacun {preservative_coats} fois, les trous de boulons et les entailles aussi.",
  "Tape the tops of the timber where water would stand: {joist_tape_length} in all.":
    "Collez du ruban sur le dessus du bois là où l'eau resterait : {joist_tape_length} en tout.",
  "Photograph it: under the surface nobody sees it again.":
    "Prenez des photos : sous la surface, plus personne ne le verra.",
  brush: "pinceau large",
  rags: "chiffons",
  knife: "couteau",
  "Preservative harms skin, eyes and fish: gloves, goggles, nothing into a drain or pond. Rags with oil in them can catch fire by themselves: dry them spread out.":
    "Le préservatif abîme la peau, les yeux et les poissons : gants, lunettes, rien dans un drain ou un étang. Les chiffons huileux peuvent s'enflammer seuls : faites-les sécher étalés.",
  "A day between coats, or as the tin says.": "Un jour entre les couches, ou ce que dit le contenant.",
  "Dry, and above the temperature that the tin names.":
    "Au sec, et au-dessus de la température indiquée sur le contenant.",
  "A good place to stop: what is treated may wait.":
    "Un bon moment pour s'arrêter : ce qui est traité peut attendre.",
  "preservative tin": "contenant de préservatif",
  "tape roll": "rouleau de ruban",
  "Lay and screw the sheets": "Poser et visser les panneaux",
  "{sheet_piece_count} pieces in {sheet_row_count} rows, cut from {sheet_count} sheets, with a gap of {sheet_gap} between them.":
    "{sheet_piece_count} morceaux en {sheet_row_count} rangées, coupés dans {sheet_count} panneaux, avec un jeu de {sheet_gap} entre eux.",
  "Seal every edge, cut or not, before the sheet is laid. Screws: {screw_spacing_panel_end} apart at ends and seams, {screw_spacing_panel_field} elsewhere.":
    "Scellez chaque chant, coupé ou non, avant de poser le panneau. Vis : à {screw_spacing_panel_end} aux bouts et aux joints, à {screw_spacing_panel_field} ailleurs.",
  "Every seam lies on a joist, and no screw has missed one.":
    "Chaque joint tombe sur une solive, et aucune vis n'en a manqué une.",
  "chalk line": "cordeau à craie",
  "Wind takes a sheet out of your hands.": "Le vent vous arrache un panneau des mains.",
  "The sealer on the edges dries before they are covered, as its tin says.":
    "Le scellant des chants sèche avant d'être couvert, selon son contenant.",
  "Dry sheets only, on a day without much wind.": "Panneaux secs seulement, un jour sans grand vent.",
  "Cover the sheets until the surface is on.": "Couvrez les panneaux jusqu'à la pose de la surface.",
  sheet: "panneau",
  screws: "vis",
  "tin of edge sealer": "contenant de scellant à chants",
  "Lay the tiles": "Poser les tuiles",
  "{tile_columns} by {tile_row_count} tiles, {tile_count} in all. Start {tile_start}, and keep {tile_edge_gap_hot} free at the edge: in the heat the floor grows by {tile_growth_length}.":
    "{tile_columns} sur {tile_row_count} tuiles, {tile_count} en tout. Commencez {tile_start}, et laissez {tile_edge_gap_hot} libre au bord : à la chaleur, le plancher s'allonge de {tile_growth_length}.",
  "Cut tiles last, {tile_cut_count} of them.": "Coupez les tuiles en dernier : {tile_cut_count}.",
  "The floor lies loose: nothing is screwed through it.":
    "Le plancher est posé libre : rien n'est vissé au travers.",
  "fine saw": "scie fine",
  "knee pads": "genouillères",
  "Tiles in the sun burn bare skin, and wet ones are slippery.":
    "Au soleil, les tuiles brûlent la peau nue, et mouillées elles glissent.",
  "Lay them near {lay_temperature}, or allow for what is missing.":
    "Posez-les près de {lay_temperature}, ou tenez compte de l'écart.",
  "After any whole row.": "Après toute rangée complète.",
  tile: "tuile",
  "Fix the edge boards": "Fixer les planches de rive",
  "{edging_length} of edge boards go round, in the pieces below. Ends meet over timber.":
    "{edging_length} de planches de rive font le tour, en morceaux listés ci-dessous. Les bouts se rejoignent sur du bois.",
  "After any side.": "Après tout côté.",
  "edge boards": "planches de rive",
  "Put up the net": "Monter le filet",
  "{net_post_count} posts of {net_post_length}, guyed with {net_guy_count} ropes to pegs {net_guy_reach} out.":
    "{net_post_count} poteaux de {net_post_length}, haubanés par {net_guy_count} cordes à des piquets à {net_guy_reach} de distance.",
  "Hang {net_run} of net from its rope, tied every {net_tie_spacing}.":
    "Suspendez {net_run} de filet à sa corde, attaché tous les {net_tie_spacing}.",
  "ladder on firm ground": "échelle sur un sol ferme",
  level: "niveau",
  "Ropes at ankle height trip people, and a net in a storm pulls posts over: take it down in time.":
    "Une corde à hauteur de cheville fait trébucher, et un filet dans la tempête renverse les poteaux : démontez-le à temps.",
  "Posts without a net may stand.": "Les poteaux sans filet peuvent rester.",
  "net post": "poteau de filet",
  net: "filet",
  "net rope": "corde de filet",
  "guy rope": "corde de hauban",
  "net tie": "attache de filet",
  "net peg": "piquet de filet",
  "net bolt": "boulon de filet",
  "Make the steps": "Faire les marches",
  "At the high end {risers_high_end} risers of {riser_height_high_end}; at the low end {risers_low_end} of {riser_height_low_end}.":
    "Au bout haut, {risers_high_end} contremarches de {riser_height_high_end} ; au bout bas, {risers_low_end} de {riser_height_low_end}.",
  "A ramp in their place would be {ramp_length} long at the slope entered. Timber for either is not in this workbook's lists.":
    "Une rampe à leur place aurait {ramp_length} de long à la pente entrée. Le bois pour l'une ou l'autre n'est pas dans les listes de ce classeur.",
  "All risers of a flight are alike, and its foot stands on firm, drained ground.":
    "Toutes les contremarches d'une volée sont pareilles, et son pied repose sur un sol ferme et drainé.",
  "Unlike risers trip people. Ask your authority when a handrail is wanted.":
    "Des contremarches inégales font trébucher. Demandez à votre municipalité quand une main courante est exigée.",
  "Bar the ends until the steps are fast.": "Barrez les bouts jusqu'à ce que les marches soient solides.",
  "Walk round it once more": "En faire le tour encore une fois",
  "The surface is {top_height} above the ground at the high corner and {height_above_ground} above the lowest ground beside it.":
    "La surface est à {top_height} au-dessus du sol au coin haut et à {height_above_ground} au-dessus du sol le plus bas à côté.",
  "Run a bare hand over edges, look along every row for a screw that stands proud, and rock on each corner.":
    "Passez la main nue sur les bords, cherchez de l'œil une vis qui dépasse le long de chaque rangée, et pesez sur chaque coin.",
  "Look underneath: air moves, nothing of wood lies on soil, water runs away.":
    "Regardez dessous : l'air circule, aucun bois ne touche la terre, l'eau s'écoule.",
  "Write down what you bought and what the tags say, and keep it with the photographs.":
    "Notez ce que vous avez acheté et ce que disent les étiquettes, et gardez-le avec les photos.",
  "Where the height or the authority asks for a guard, nobody uses it before the guard stands.":
    "Si la hauteur ou la municipalité exige un garde-corps, personne n'y monte avant qu'il soit en place.",
  torch: "lampe de poche",
  driver: "visseuse",
  "Splinters and proud screws: shoes until it is done.":
    "Échardes et vis qui dépassent : gardez vos chaussures jusqu'à la fin.",
  "Look again after the first winter: stone settles, screws work loose.":
    "Regardez de nouveau après le premier hiver : la pierre tasse, les vis se desserrent.",
  "Clear up and take back": "Nettoyer et retourner le surplus",
  "Soil: {dug_volume_loose}, loose, {spoil_barrows} barrows. Fill hollows away from the platform; lay the sods on top, or stack them to rot.":
    "Terre : {dug_volume_loose}, en vrac, {spoil_barrows} brouettes. Comblez des creux loin de la plateforme ; posez les plaques de gazon dessus, ou empilez-les pour qu'elles se décomposent.",
}
