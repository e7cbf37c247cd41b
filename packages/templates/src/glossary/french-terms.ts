import type { Term } from "./terms.ts"

type FrenchTerm = Omit<Term, "id">

/** The same words in French, by the id of the English. */
export const FRENCH_TERMS: Readonly<Record<string, FrenchTerm>> = {
  skid: {
    forms: ["patin", "patins"],
    means: "Un long bois épais posé sur les appuis, qui porte toute la charpente.",
  },
  bearer: {
    forms: ["lambourde", "lambourdes"],
    means: "Un bois posé sur les appuis, qui porte les solives en travers.",
  },
  beam: {
    forms: ["poutre", "poutres"],
    means:
      "Un bois fort, ou plusieurs madriers fixés côte à côte, qui porte les solives d’un appui à l’autre.",
  },
  joist: {
    forms: ["solive", "solives"],
    means: "Un des bois posés sur chant, côte à côte, juste sous les planches ou les panneaux.",
  },
  rim: {
    forms: ["solive de rive", "solives de rive"],
    means: "Le bois le long des bouts des solives, qui ferme le cadre et les tient droites.",
  },
  blocking: {
    forms: ["entretoise", "entretoises"],
    means:
      "Un court morceau entre deux solives. Il les empêche de se tordre et tient les bords qui finissent entre elles.",
  },
  stringer: {
    forms: ["longeron", "longerons"],
    means: "Un long bois dans le sens du sentier ou de l’escalier, qui porte les planches ou les marches.",
  },
  sleeper: {
    forms: ["traverse", "traverses"],
    means: "Un bois couché sur la pierre ou le sol, en travers du sentier, qui porte ce qui est dessus.",
  },
  cleat: {
    forms: ["éclisse", "éclisses"],
    means: "Un court morceau vissé le long d’un joint, pour que les deux bouts restent alignés.",
  },
  plies: {
    forms: ["pli", "plis"],
    means: "Les couches d’une pièce faite de plusieurs : madriers d’une poutre, feuilles d’un panneau.",
  },
  kerb: {
    forms: ["chasse-roue", "chasse-roues"],
    means: "Un bois bas le long d’un bord, qui empêche roues et pieds d’en sortir.",
  },
  packer: {
    forms: ["cale", "cales"],
    means: "Une pièce mince mise sous des bois ou entre eux, pour les amener à la bonne hauteur ou distance.",
  },
  bay: {
    forms: ["intervalle", "intervalles"],
    means: "L’espace entre une solive, ou un appui, et la suivante.",
  },
  course: { forms: ["rang", "rangs"], means: "Une couche de blocs, ou une ligne de pièces semblables." },
  seam: { forms: ["joint", "joints"], means: "La ligne où deux pièces se rencontrent." },
  stagger: {
    forms: ["décalage", "décalés", "décalées"],
    means:
      "Les joints de lignes voisines sont éloignés l’un de l’autre, pour ne pas faire ensemble un endroit faible.",
  },
  overhang: {
    forms: ["porte-à-faux"],
    means: "La partie d’un bois ou d’une planche qui dépasse son dernier appui.",
  },
  span: { forms: ["portée", "portées"], means: "La longueur libre d’un bois entre deux appuis." },
  bearing: {
    forms: ["appui", "portance"],
    means:
      "Ce qui repose d’une pièce sur ce qui la porte ; aussi, combien on peut y presser le sol ou le bois.",
  },
  deflection: { forms: ["flèche", "flèches"], means: "De combien un bois plie sous sa charge." },
  shear: {
    forms: ["cisaillement"],
    means:
      "L’effort qui veut faire glisser une partie d’un bois contre l’autre, le plus grand près des appuis.",
  },
  bending: {
    forms: ["flexion"],
    means: "Ce que fait une charge à un bois entre ses appuis : elle étire le dessous et presse le dessus.",
  },
  "live load": {
    forms: ["surcharge", "surcharges"],
    means: "Le poids qui va et vient : personnes, meubles, neige.",
  },
  "dead load": {
    forms: ["charge permanente"],
    means: "Le poids qui reste : le bois, les planches et tout ce qui y est fixé.",
  },
  uplift: { forms: ["soulèvement"], means: "L’effort du vent qui veut arracher quelque chose du sol." },
  incised: {
    forms: ["incisé", "incisés"],
    means:
      "Avec des rangs de petites fentes, pour que le préservatif entre plus loin. Le bois en est un peu plus faible.",
  },
  "wet service": {
    forms: ["service humide"],
    means: "Du bois qui reste humide, comme dehors. Il est plus faible que le bois sec.",
  },
  grade: {
    forms: ["qualité", "qualités"],
    means:
      "Ce que vaut une pièce de bois selon ses nœuds et défauts, comme le dit son estampille. La résistance en dépend.",
  },
  species: {
    forms: ["essence", "essences"],
    means: "La sorte d’arbre d’où vient le bois, ou un groupe de sortes vendues ensemble.",
  },
  "limit states": {
    forms: ["états limites"],
    means:
      "Une façon de vérifier la résistance, employée au Canada : on augmente les charges et réduit les résistances par des facteurs, puis on compare.",
  },
  "strength axis": {
    forms: ["axe fort"],
    means:
      "Le sens où un panneau est le plus fort, le plus souvent sa longueur. Il va en travers des solives.",
  },
  preservative: {
    forms: ["préservatif"],
    means:
      "Ce qui garde le bois de la pourriture et des insectes. Injecté à l’usine, ou mis au pinceau là où vous coupez.",
  },
  "use class": {
    forms: ["classe d’emploi", "classes d’emploi"],
    means: "Une étiquette qui dit où le bois traité peut servir : au-dessus du sol, sur lui ou dedans.",
  },
  "hot-dip": {
    forms: ["galvanisé à chaud", "zinc à chaud"],
    means:
      "Une épaisse couche de zinc, faite en trempant l’acier dans le métal fondu. Elle dure dehors ; un mince zinc brillant, non.",
  },
  stainless: {
    forms: ["inox"],
    means:
      "Un acier qui ne rouille pas à l’humidité. Le 304 sert à l’intérieur des terres, le 316 près du sel.",
  },
  hanger: { forms: ["étrier", "étriers"], means: "Une pièce d’acier pliée qui tient le bout d’une solive." },
  tie: {
    forms: ["attache", "attaches"],
    means: "Une petite pièce d’acier qui retient un bois sur un autre.",
  },
  withdrawal: {
    forms: ["arrachement"],
    means: "La force qu’il faut pour tirer une vis ou un clou tout droit hors du bois.",
  },
  kerf: {
    forms: ["trait de scie", "traits de scie"],
    means: "La largeur de bois que la scie met en poussière à chaque coupe.",
  },
  "off-cut": { forms: ["chute", "chutes"], means: "Ce qui reste d’une planche après la coupe des morceaux." },
  sliver: {
    forms: ["languette", "languettes"],
    means: "Une bande trop étroite pour être solide, qui reste à un bord.",
  },
  nominal: {
    forms: ["nominale", "nominal"],
    means:
      "La grosseur dans le nom d’un bois, non celle que vous mesurez : un 2x6 fait 1 1/2 sur 5 1/2 pouces.",
  },
  "board feet": {
    forms: ["pied-planche", "pieds-planche"],
    means:
      "Une mesure pour le prix du bois : un pied de long, un pied de large et un pouce d’épais d’après son nom.",
  },
  datum: { forms: ["origine"], means: "Le point ou la hauteur d’où tout le reste est mesuré." },
  fall: { forms: ["pente", "pentes"], means: "De combien le sol est plus bas à l’autre bout." },
  spoil: { forms: ["déblai", "déblais"], means: "La terre que l’on sort en creusant." },
  turf: { forms: ["gazon"], means: "L’herbe avec ses racines et la terre qu’elles tiennent." },
  tamped: {
    forms: ["compacté", "compactée", "compactées", "compacter"],
    means: "Battu ou secoué jusqu’à être ferme, par couches minces.",
  },
  fabric: {
    forms: ["géotextile", "toile"],
    means: "Un tissu mis entre le sol et la pierre, qui laisse passer l’eau et les garde séparés.",
  },
  footing: {
    forms: ["fondation", "fondations"],
    means: "Un pied de béton dans le sol, qui répartit une charge.",
  },
  frost: {
    forms: ["gel"],
    means:
      "Un sol qui gèle gonfle et soulève ce qui est dessus ; sous une certaine profondeur, il ne gèle jamais.",
  },
  riser: { forms: ["contremarche", "contremarches"], means: "La hauteur d’une marche." },
  tread: { forms: ["giron", "girons"], means: "La partie d’une marche où se pose le pied." },
  guard: { forms: ["garde-corps"], means: "Une rampe qui empêche de tomber d’un bord élevé." },
  sill: { forms: ["seuil"], means: "Le bord du bas de l’ouverture d’une porte." },
  diagonal: {
    forms: ["diagonale", "diagonales"],
    means: "La ligne d’un coin au coin opposé. Si les deux sont égales, le cadre est d’équerre.",
  },
  edging: {
    forms: ["bordure", "bordures"],
    means: "Des planches sur chant autour d’un lit de pierre, qui l’empêchent de s’étaler.",
  },
  guy: {
    forms: ["hauban", "haubans"],
    means: "Un câble du haut d’un poteau jusqu’au sol, qui le retient contre une traction.",
  },
  twine: { forms: ["fil du filet", "cordelette"], means: "La corde dont un filet est fait." },
  contingency: { forms: ["imprévus"], means: "Une part ajoutée pour ce que personne n’a prévu." },
}
