import type { Texts } from "../dictionary.ts"

export const sheets: Texts = {
  "Sheets lie in rows along the platform, their long side across the joists, their ends on joists and staggered from row to row.":
    "Les panneaux sont en rangées le long de la plateforme, leur long côté en travers des solives, leurs bouts sur des solives et décalés d'une rangée à l'autre.",
  "Sheet length": "Longueur d'un panneau",
  "The long side. It is the stiff one, so it goes across the joists. Measure a sheet: some are made 1/8 in short, to leave room for the gap.":
    "Le long côté. C'est le côté rigide, il va donc en travers des solives. Mesurez un panneau : certains sont faits 1/8 po plus court, pour laisser le jeu.",
  "Sheet width": "Largeur d'un panneau",
  "The short side. It sets how many rows there are.": "Le petit côté. Il fixe le nombre de rangées.",
  "Sheet thickness": "Épaisseur d'un panneau",
  "Thicker sheets bend less between joists. It is also part of the height, and of the length of the screws.":
    "Plus épais, il fléchit moins entre les solives. Compte aussi dans la hauteur et dans la longueur des vis.",
  "The joist spacing that a sheet may span is stamped on it. Outdoors use sheets that their maker allows outdoors, seal every cut edge, and let water drain off.":
    "L'espacement de solives qu'un panneau peut franchir est estampillé dessus. Dehors, prenez des panneaux que leur fabricant permet dehors, scellez chaque chant coupé, et laissez l'eau s'écouler.",
  "Gap between sheets": "Jeu entre panneaux",
  "Sheets swell when they are wet. Laid tight they push each other up. A common nail is about this thick and makes a good spacer.":
    "Les panneaux gonflent à l'eau. Posés serrés, ils se soulèvent l'un l'autre. Un clou ordinaire a à peu près cette épaisseur et fait un bon espaceur.",
  "Rows of sheets": "Rangées de panneaux",
  "Each row takes its width and one gap. A row begun is a row to buy; what is left beside the last one, when it is no wider than a gap, is left bare.":
    "Chaque rangée prend sa largeur et un jeu. Une rangée entamée est une rangée à acheter ; ce qui reste à côté de la dernière, s'il n'est pas plus large qu'un jeu, reste nu.",
  "From one seam to the next in a row": "D'un joint au suivant dans une rangée",
  "A sheet's end needs a joist under it, so seams stand a whole number of joist spacings apart: as many as a sheet and its gap reach over.":
    "Le bout d'un panneau veut une solive dessous ; les joints sont donc à un nombre entier d'espacements : autant qu'un panneau et son jeu en couvrent.",
  "First seam in every other row": "Premier joint d'une rangée sur deux",
  "Every second row starts with about half a sheet, so that seams of neighbouring rows do not make one long line that opens.":
    "Une rangée sur deux commence par environ un demi-panneau, pour que les joints voisins ne fassent pas une longue ligne qui s'ouvre.",
  "Seams in the first, third … row": "Joints dans la première, troisième… rangée",
  "How often a sheet ends inside the row: once for each seam spacing that is left where one whole sheet, with half a gap at either end, does not reach.":
    "Combien de fois un panneau finit dans la rangée : une fois par espacement de joints entamé, là où un panneau entier, avec un demi-jeu à chaque bout, n'arrive pas.",
  "Seams in the second, fourth … row": "Joints dans la deuxième, quatrième… rangée",
  "How often a sheet ends inside the rows that start with half a sheet. Where one sheet reaches from end to end, no row has a seam.":
    "Combien de fois un panneau finit dans les rangées qui commencent par un demi-panneau. Là où un panneau va d'un bout à l'autre, aucune rangée n'a de joint.",
  "Each row of sheets": "Chaque rangée de panneaux",
  "Where each row lies and how it is made up. Blocking goes under the middle of the gap between two rows.":
    "Où va chaque rangée et de quoi elle est faite. Les entretoises vont sous le milieu du jeu entre deux rangées.",
  Row: "Rangée",
  "Counted from the long edge that all widths are measured from.":
    "Comptée depuis le long bord d'où toutes les largeurs se mesurent.",
  "Near edge, from the long edge": "Bord proche, depuis le long bord",
  "Where to snap the line for this row. Half a gap before it is the middle of the blocking.":
    "Où claquer la ligne de cette rangée. Un demi-jeu avant, c'est le milieu des entretoises.",
  "Width to cut": "Largeur à couper",
  "The last row is ripped down to what is left.": "La dernière rangée est refendue à ce qui reste.",
  "Blocking under its near edge": "Entretoises sous son bord proche",
  "Rows of blocking go under the edges between the rows of sheets, the first edge first. The long edge itself lies on the rim.":
    "Des rangs d'entretoises vont sous les bords entre les rangées de panneaux, le premier bord d'abord. Le long bord lui-même repose sur la solive de rive.",
  "First seam, from the end": "Premier joint, depuis le bout",
  "A whole sheet in odd rows, about half a sheet in even rows; the other end where there is no seam.":
    "Un panneau entier dans les rangées impaires, environ un demi dans les paires ; l'autre bout s'il n'y a pas de joint.",
  "Seams in the row": "Joints dans la rangée",
  "Each lies on a joist and is screwed on both sides.":
    "Chacun repose sur une solive et se visse des deux côtés.",
  "Pieces in the row": "Morceaux dans la rangée",
  "One more than there are seams.": "Un de plus que de joints.",
  "End seams in all": "Joints de bout en tout",
  "Each of them has to be found and screwed along both sides.":
    "Il faut trouver chacun et le visser des deux côtés.",
  "Each end seam": "Chaque joint de bout",
  "Where sheets meet end to end, and whether a joist is really under the place.":
    "Où les panneaux se rejoignent bout à bout, et si une solive est vraiment dessous.",
  "Which row of sheets.": "Quelle rangée de panneaux.",
  "Seam in the row": "Joint dans la rangée",
  "Middle of the gap, from the end": "Milieu du jeu, depuis le bout",
  "The line to snap on the joist.": "La ligne à claquer sur la solive.",
  "Last joist up to there": "Dernière solive jusque-là",
  "The joists' marks are searched, so that a changed joist shows here.":
    "Les marques des solives sont cherchées ; une solive déplacée se voit donc ici.",
  "Nearest joist": "Solive la plus proche",
  "The joist that has to carry both ends.": "La solive qui doit porter les deux bouts.",
  "From that joist's middle": "Du milieu de cette solive",
  "Should be nothing.": "Devrait être nul.",
  "Wood under each end": "Bois sous chaque bout",
  "Half the joist, less half the gap, less what the seam is off the middle.":
    "La moitié de la solive, moins la moitié du jeu, moins l'écart du joint au milieu.",
  "Least wood under a sheet's end": "Minimum de bois sous un bout de panneau",
  "A screw needs wood around it: 3/8 in from the sheet's edge, and not at the very edge of the joist.":
    "Une vis veut du bois autour : à 3/8 po du bord du panneau, et pas au ras du bord de la solive.",
  "A joist under every seam": "Une solive sous chaque joint",
  "A sheet's end with no joist under it gives way under a foot.":
    "Un bout de panneau sans solive dessous cède sous le pied.",
  "Move the joists under the seams to their marks, or screw a second piece of joist timber to the side of each.":
    "Déplacez les solives sous les joints à leurs marques, ou vissez un second morceau de solive sur le côté de chacune.",
  "Seams stand {sheet_seam_spacing} apart: joists spaced by an even part of this meet them all.":
    "Les joints sont à {sheet_seam_spacing} : des solives espacées d'une part entière de cela les rencontrent tous.",
  "Pieces of sheet": "Morceaux de panneau",
  "How many pieces to lay; several may come out of one sheet.":
    "Combien de morceaux poser ; plusieurs peuvent sortir d'un panneau.",
  "Each piece of sheet": "Chaque morceau de panneau",
  "The sizes to cut and where each piece lies.": "Les dimensions à couper et où va chaque morceau.",
  "Piece in the row": "Morceau dans la rangée",
  "The end of the platform, or the middle of a seam.": "Le bout de la plateforme, ou le milieu d'un joint.",
  "Room for it": "Place pour lui",
  "From the middle of one seam to the middle of the next, or to the end.":
    "Du milieu d'un joint au milieu du suivant, ou au bout.",
  "Length to cut": "Longueur à couper",
  "Half a gap less at either end. At the ends of the platform that leaves half a gap of frame showing, which lets the edge dry.":
    "Un demi-jeu de moins à chaque bout. Aux bouts de la plateforme, cela laisse voir un demi-jeu de cadre, où le bord sèche.",
  "The width of its row.": "La largeur de sa rangée.",
  "Joist bays that a piece should cross": "Intervalles qu'un morceau devrait franchir",
  "A piece over one bay only bends more than one that runs on over the next joist.":
    "Un morceau sur un seul intervalle fléchit plus qu'un qui continue sur la solive suivante.",
  "No piece of sheet too short": "Aucun morceau de panneau trop court",
  "The last piece of a row takes what is left, and may be a strip that crosses a single bay.":
    "Le dernier morceau d'une rangée prend le reste, et peut être une bande sur un seul intervalle.",
  "Start that row with a shorter piece so that the last one grows, or put an extra joist in the middle of the bay under the short piece.":
    "Commencez cette rangée par un morceau plus court pour que le dernier grandisse, ou mettez une solive de plus au milieu de l'intervalle sous le morceau court.",
  "No row of sheets too narrow": "Aucune rangée de panneaux trop étroite",
  "The last row takes what is left. Its near edge lies on blocking and its far edge on the rim: when the strip is narrower than the two and as much again between them, there is no room to fix the blocking, and a strip splits where it is screwed.":
    "La dernière rangée prend le reste. Son bord proche repose sur les entretoises et l'autre sur la solive de rive : si la bande est plus étroite que les deux et autant entre elles, il n'y a pas la place de fixer les entretoises, et une bande se fend là où on la visse.",
  "Change the platform's width, so that the last row grows or is not needed.":
    "Changez la largeur de la plateforme, pour que la dernière rangée grandisse ou ne soit plus nécessaire.",
  "Or rip the first row narrower by as much as the last one is to grow, and move the blocking with its edge.":
    "Ou refendez la première rangée d'autant que la dernière doit grandir, et déplacez les entretoises avec son bord.",
  "Blocking under the long seams": "Entretoises sous les joints longs",
  "Between two joists the long edges of two sheets hang free unless a line of blocking runs below: one edge sinks under a foot and the other does not.":
    "Entre deux solives, les longs bords de deux panneaux pendent si aucun rang d'entretoises ne passe dessous : l'un s'enfonce sous le pied et l'autre non.",
  "There are {sheet_row_count} rows of sheets, with a long seam between each two: enter one line of blocking for each, or use sheets with a tongue and groove.":
    "Il y a {sheet_row_count} rangées de panneaux, avec un joint long entre deux : entrez un rang d'entretoises pour chacun, ou prenez des panneaux bouvetés.",
  "What to cut from each sheet": "Quoi couper dans chaque panneau",
  "The off-cut of one row serves in another: counting row by row would buy sheets that are not needed. No piece is turned, so that the stiff way stays across the joists.":
    "La chute d'une rangée sert dans une autre : compter rangée par rangée ferait acheter des panneaux de trop. Aucun morceau n'est tourné, pour que le sens rigide reste en travers des solives.",
  Sheet: "Panneau",
  "Which sheet the piece is cut from.": "De quel panneau sort le morceau.",
  "Where it goes.": "Où il va.",
  "Sheets to buy": "Panneaux à acheter",
  "Whole sheets, by the layout: never the area divided by a sheet's area, which forgets what cannot be used.":
    "Des panneaux entiers, d'après le plan : jamais l'aire divisée par celle d'un panneau, qui oublie ce qui ne sert pas.",
  "Area of the pieces": "Aire des morceaux",
  "What lies on the frame, gaps left out.": "Ce qui est sur le cadre, jeux exclus.",
  "Sheet left over": "Panneau qui reste",
  "The part of the bought sheets that is not laid, saw cuts included.":
    "La part des panneaux achetés qui n'est pas posée, traits de scie compris.",
  "Edges to seal": "Chants à sceller",
  "All four edges of every piece. Sheets take in water at the edges first; seal them before they are laid.":
    "Les quatre chants de chaque morceau. L'eau entre d'abord par les chants ; scellez-les avant la pose.",
}
