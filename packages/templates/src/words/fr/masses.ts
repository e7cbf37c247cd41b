import type { Texts } from "../dictionary.ts"

export const masses: Texts = {
  Weights: "Poids",
  "How heavy things are when you lift and haul them. Fresh treated timber holds as much water as wood.":
    "Le poids des choses quand vous les soulevez et les transportez. Du bois traité frais contient autant d'eau que de bois.",
  "Density of water": "Masse volumique de l'eau",
  "Wood is weighed against it.": "Le bois se compare à elle.",
  "Density of the timber, dry": "Masse volumique du bois, sec",
  "As it will be after a summer in place.": "Comme elle sera après un été en place.",
  "Water from treating": "Eau du traitement",
  "Timber is soaked under pressure. Fresh from the treater, it drips.":
    "Le bois est imbibé sous pression. Frais du traiteur, il dégoutte.",
  "Fresh from the treater": "Frais du traiteur",
  "Plan for yes: it often is. No: it was dried after treating, or it was never treated.":
    "Prévoyez oui : il l'est souvent. Non : il a été séché après traitement, ou jamais traité.",
  "Density of the timber, as bought": "Masse volumique du bois, tel qu'acheté",
  "What you carry.": "Ce que vous portez.",
  "Weight of the timber": "Poids du bois",
  "One size and length a row, as it is bought.":
    "Une grosseur et une longueur par ligne, telles qu'achetées.",
  "Of one piece.": "D'une pièce.",
  "How many are bought.": "Combien on en achète.",
  "Wood in one": "Bois dans une",
  "By the real size. By the size in the name it would come out a third too heavy.":
    "D'après la grosseur réelle. D'après celle du nom, on trouverait un tiers de trop.",
  "One piece, as bought": "Une pièce, telle qu'achetée",
  "What you lift.": "Ce que vous soulevez.",
  "One piece, dry": "Une pièce, sèche",
  "What it will weigh when it has dried.": "Ce qu'elle pèsera une fois sèche.",
  "All timber, as bought": "Tout le bois, tel qu'acheté",
  "By density and size; a weight of your own, below, goes before this.":
    "D'après masse volumique et grosseur ; un poids à vous, ci-dessous, passe avant.",
  "How heavy materials are": "Combien pèsent les matériaux",
  "What counts while you have not weighed one yourself.":
    "Ce qui compte tant que vous n'en avez pas pesé un.",
  Material: "Matériau",
  "As on the buying list.": "Comme sur la liste d'achats.",
  "Density, dry": "Masse volumique, sec",
  "As it will be in place.": "Comme elle sera en place.",
  "Density, as bought": "Masse volumique, tel qu'acheté",
  "As you lift it.": "Comme vous le soulevez.",
  "Of what": "De quoi",
  "Weight by what the pieces are for": "Poids selon l'usage des pièces",
  "By density and size, as built in: off-cuts and spare are on the list to haul.":
    "D'après masse volumique et grosseur, telles que posées : chutes et réserve sont sur la liste à transporter.",
  "What each kind of piece is there for.": "À quoi sert chaque sorte de pièce.",
  "As they are cut and laid. Nothing for what is not counted by the piece.":
    "Telles que coupées et posées. Rien pour ce qui ne se compte pas à la pièce.",
  "Longest piece": "Plus longue pièce",
  "Who has to turn with it, and where.": "Qui doit tourner avec, et où.",
  "Volume of that piece": "Volume de cette pièce",
  "Heaviest piece, as bought": "Pièce la plus lourde, telle qu'achetée",
  "What you lift at once.": "Ce que vous soulevez d'un coup.",
  "Volume of all": "Volume de l'ensemble",
  "As laid, without off-cuts and spare.": "Tel que posé, sans chutes ni réserve.",
  "Of the timber, or from the figures for materials.": "Du bois, ou des données des matériaux.",
  "Fresh from the treater, timber and sheets hold water.":
    "Frais du traiteur, bois et panneaux contiennent de l'eau.",
  "All of them, dry": "Toutes, sèches",
  "What they put on the ground in the end.": "Ce qu'elles mettent sur le sol à la fin.",
  "All of them, as bought": "Toutes, telles qu'achetées",
  "What you lift, one after the other.": "Ce que vous soulevez, l'une après l'autre.",
  "All of it, as built": "L'ensemble, tel que construit",
  "One row: what stands there in the end. Metal, fabric and what you put on it are not counted.":
    "Une ligne : ce qui est là à la fin. Métal, géotextile et ce que vous mettez dessus ne sont pas comptés.",
  Dry: "Sec",
  "After a summer in place.": "Après un été en place.",
  "As bought": "Tel qu'acheté",
  "On the day that it is built.": "Le jour de la construction.",
  "Heaviest piece": "Pièce la plus lourde",
  "Cut and ready to be laid; as bought it may be longer.":
    "Coupée et prête à poser ; telle qu'achetée, elle peut être plus longue.",
  "Cut and ready to be laid.": "Coupée et prête à poser.",
  "Your weights": "Vos poids",
  "Put one piece on a scale, or ask. A row here goes before what density and size say.":
    "Mettez une pièce sur une balance, ou demandez. Une ligne ici passe avant ce que disent masse volumique et grosseur.",
  "The timber's size, or the name of the thing as on the buying list.":
    "La grosseur du bois, ou le nom de la chose comme sur la liste d'achats.",
  "What the weight is of: each, or a foot or a metre of timber.":
    "De quoi est le poids : chacun, ou un pied ou un mètre de bois.",
  Weight: "Poids",
  "As it is lifted.": "Tel que soulevé.",
  "To haul": "À transporter",
  "What you load yourself. Stone is delivered; it is counted only if you gave it a weight.":
    "Ce que vous chargez vous-même. La pierre est livrée ; elle ne compte que si vous lui avez donné un poids.",
  "Of timber, one piece. Nothing for what has no length.":
    "Du bois, une pièce. Rien pour ce qui n'a pas de longueur.",
  "As bought.": "Tel qu'acheté.",
  "Of the quantity.": "De la quantité.",
  "One piece": "Une pièce",
  "Nothing for what is not counted by the piece.": "Rien pour ce qui ne se compte pas à la pièce.",
  "All of it": "L'ensemble",
  "Pieces times one piece.": "Pièces fois une pièce.",
  "Your own weights, or density and size.": "Vos propres poids, ou masse volumique et grosseur.",
  "Weight to haul": "Poids à transporter",
  "Everything on that list.": "Tout ce qui est sur cette liste.",
  "Heaviest single piece": "Pièce seule la plus lourde",
  "The one that decides how many people you need.": "Celle qui décide combien de gens il faut.",
  "Lifts for two": "Charges à lever à deux",
  "The heaviest single piece against what one person should lift. The published figures are for a good grip and a straight back.":
    "La pièce seule la plus lourde comparée à ce qu'une personne devrait lever. Les chiffres publiés valent pour une bonne prise et un dos droit.",
  "Lift with bent knees and a straight back, in gloves and toe-capped boots.":
    "Soulevez genoux pliés et dos droit, avec gants et bottes à embout.",
  "Whose word it is.": "Qui le dit.",
  "One person lifts": "Une personne lève",
  "Yours to change, downwards: most people's back says so, if not on the day then on the next.":
    "À vous de le changer, vers le bas : bien des dos le disent, sinon le jour même, le lendemain.",
  "Is there a lift for two?": "Y a-t-il une charge à lever à deux ?",
  "Yes: have a second person there whenever such a piece is moved.":
    "Oui : ayez une deuxième personne chaque fois qu'une telle pièce bouge.",
  "People at the heaviest piece": "Personnes à la pièce la plus lourde",
  "At least. Sheets and long boards want two for their size alone.":
    "Au moins. Panneaux et longues planches en veulent deux pour leur seule taille.",
}
