import type { Texts } from "../dictionary.ts"

export const work: Texts = {
  "Order of the work": "Ordre des travaux",
  "How long each stage takes, what it uses up, and whether every thing that is bought has its place in the work.":
    "Combien de temps prend chaque étape, ce qu'elle consomme, et si chaque achat a sa place dans les travaux.",
  "How long each stage takes": "Durée de chaque étape",
  "No source: guesses for somebody who does it for the first time. Time yourself at the first of each and write your own.":
    "Aucune source : des estimations pour qui le fait la première fois. Chronométrez le premier de chaque sorte et entrez vos temps.",
  Stage: "Étape",
  "In the order of the work.": "Dans l'ordre des travaux.",
  "Counted by": "Compté par",
  "What there is many of in this stage.": "Ce qu'il y a en nombre dans cette étape.",
  "By the plan as it is now.": "Selon le plan actuel.",
  "One takes": "Un seul prend",
  "With that many people at it. No source; yours to change.":
    "Avec autant de gens à l'ouvrage. Aucune source ; à vous de changer.",
  People: "Gens",
  "Two where something long or heavy is held. Yours to change.":
    "Deux là où l'on tient quelque chose de long ou de lourd. À vous de changer.",
  Takes: "Prend",
  "Without breaks, weather and waiting for deliveries.": "Sans pauses, météo ni attente de livraison.",
  "A day's work": "Une journée de travail",
  "Hours of real work in a day. Yours to change.":
    "Heures de vrai travail dans une journée. À vous de changer.",
  Days: "Jours",
  "Whole days: what a calendar and a hirer count.":
    "Des jours entiers : ce que comptent un calendrier et un loueur.",
  "Hours of all people": "Heures de tous les gens",
  "What to ask of friends.": "Quoi demander aux amis.",
  "Used up and worn out": "Consommé et usé",
  "The small things that stop a day's work when they are missing. How far one of them goes is nobody's published figure: change it to your own.":
    "Les petites choses dont le manque arrête une journée. Personne n'a publié combien de temps elles durent : mettez vos chiffres.",
  "As on the lists of things to buy.": "Comme sur les listes d'achats.",
  "Used by": "Utilisé par",
  "Screws driven, ends cut, people at work: whatever wears it.":
    "Vis posées, bouts coupés, gens à l'ouvrage : ce qui l'use.",
  "One of them serves": "Un seul sert à",
  "How much of that use one lasts for. No source; yours to change.":
    "Combien de cet usage il dure. Aucune source ; à vous de changer.",
  "Whole ones.": "Entiers.",
  "Tools with power, stage by stage": "Outils à moteur, étape par étape",
  "What has to be charged, plugged in, fuelled or fetched from the hirer before the stage begins.":
    "Ce qu'il faut charger, brancher, remplir ou aller chercher chez le loueur avant l'étape.",
  "Outdoors, a switch that trips on a fault to earth stands between you and the mains; joints of cables stay off wet ground.":
    "Dehors, un disjoncteur différentiel vous sépare du secteur ; les raccords restent hors du sol mouillé.",
  Tool: "Outil",
  "Borrowed, bought or hired.": "Emprunté, acheté ou loué.",
  "The stage of the work.": "L'étape des travaux.",
  Power: "Énergie",
  "What it runs on.": "Ce qui le fait tourner.",
  "Usually hired": "Loué d'habitude",
  "Too big or too seldom used to own.": "Trop gros ou trop peu utilisé pour l'acheter.",
  "Whole days that the stage takes: what a hirer charges.":
    "Jours entiers que prend l'étape : ce que facture un loueur.",
  "Hire for a day": "Location d'un jour",
  "What your hirer asks, with delivery shared out. No price is made up here: it is 0 until you have asked.":
    "Ce que demande votre loueur, livraison répartie. Aucun prix n'est inventé ici : 0 tant que vous n'avez pas demandé.",
  "Hire in all": "Location en tout",
  "Of what is hired, by whole days.": "De ce qui est loué, en jours entiers.",
  "Tools without power, stage by stage": "Outils sans moteur, étape par étape",
  "What to look for in the shed, or to ask the neighbours for, before the stage begins.":
    "Quoi chercher dans la remise, ou demander aux voisins, avant l'étape.",
  "Yours to put another in its place.": "À vous d'en mettre un autre à sa place.",
  "For how long to borrow it.": "Pour combien de temps l'emprunter.",
  "Charges of a battery for all screws": "Charges de batterie pour toutes les vis",
  "Never charge a lithium battery that is below freezing: let it warm up indoors first.":
    "Ne chargez jamais une batterie au lithium sous le point de congélation : laissez-la d'abord se réchauffer à l'intérieur.",
  "On a day of": "Un jour à",
  "Of the battery, which is that of the air after an hour outdoors.":
    "De la batterie, celle de l'air après une heure dehors.",
  Gives: "Donne",
  Battery: "Batterie",
  "Volts times ampere-hours, printed on it: 18 V and 2 Ah here. Yours to change.":
    "Volts fois ampères-heures, imprimés dessus : 18 V et 2 Ah ici. À vous de changer.",
  "One screw takes": "Une vis prend",
  "With the driver's own losses. Soft wood and drilled holes take less.":
    "Pertes de la visseuse comprises. Bois tendre et trous percés prennent moins.",
  "Screws to a charge": "Vis par charge",
  "As many as that energy drives.": "Autant que cette énergie en pose.",
  "Charges for all screws": "Charges pour toutes les vis",
  "Over the whole job.": "Sur tout le chantier.",
  "What is bought, and where it is used": "Ce qui est acheté, et où cela sert",
  "Every thing bought is used in some stage, and every stage finds what it needs on a list: what one side has alone was forgotten.":
    "Chaque chose achetée sert à une étape, et chaque étape trouve ce qu'il lui faut sur une liste : ce qu'un seul côté a, on l'avait oublié.",
  "Timber by its size, the rest by its name.": "Le bois par sa grosseur, le reste par son nom.",
  "What the amounts are counted in.": "En quoi se comptent les quantités.",
  "With spare and whole packs' worth, as on the lists.":
    "Avec réserve et paquets entiers, comme sur les listes.",
  "Added up over the stages.": "Additionné sur les étapes.",
  "Spare, off-cuts and what rounding up adds.": "Réserve, chutes et ce qu'ajoute l'arrondi.",
  "In these stages": "Dans ces étapes",
  "Where it is used.": "Où cela sert.",
  "In order": "En ordre",
  "1: bought, used, and enough of it.": "1 : acheté, utilisé, et en quantité.",
  "What is the matter, where something is.": "Ce qui ne va pas, s'il y a lieu.",
  "To carry away or take back": "À évacuer ou à retourner",
  "Soil swells when it is dug, and treated wood is waste of its own kind: know how much, and where to, before the heap is there.":
    "La terre foisonne quand on la creuse, et le bois traité est un déchet à part : sachez combien, et pour où, avant le tas.",
  "Smoke and ash of treated wood are poisonous: off-cuts are never burned, in no stove either.":
    "La fumée et la cendre de bois traité sont toxiques : les chutes ne se brûlent jamais, pas même dans un poêle.",
  "Soil, turf, off-cuts by their size, and what is left over of the rest.":
    "Terre, gazon, chutes par grosseur, et ce qui reste du reste.",
  "Bought or dug, less what is in the work. Spare that is used up on the way makes it less.":
    "Acheté ou creusé, moins ce qui est dans l'ouvrage. La réserve qui s'use en chemin le réduit.",
  "What it is counted in.": "En quoi c'est compté.",
  "Where to": "Pour où",
  "As is usual; ask your authority before the first load.":
    "Comme d'usage ; demandez à votre municipalité avant le premier voyage.",
  "Is nothing forgotten?": "Rien n'est-il oublié ?",
  "A box of nails that nobody wrote down costs a day. This looks from both sides: things without a stage, stages without their things.":
    "Une boîte de clous que personne n'a notée coûte une journée. Ceci regarde des deux côtés : choses sans étape, étapes sans leurs choses.",
  "Look at the table of what is bought and where it is used: each line that is not in order says why.":
    "Voyez le tableau de ce qui est acheté et où cela sert : chaque ligne qui n'est pas en ordre dit pourquoi.",
  "The day you drive screws on": "Le jour où vous vissez",
  "One line. Put in the coldest day you mean to work on and what your battery is.":
    "Une ligne. Entrez le jour le plus froid où vous comptez travailler et quelle est votre batterie.",
  "Temperature of the day": "Température du jour",
  "Of the air where the battery lies. Yours to change.":
    "De l'air là où se trouve la batterie. À vous de changer.",
  "Your battery": "Votre batterie",
  "Write Li-ion, NiCd or NiMH, as in the table of batteries. Of any other nothing is counted on.":
    "Écrivez Li-ion, NiCd ou NiMH, comme au tableau des batteries. Sur toute autre, on ne compte pas.",
  "Not worth carrying below": "Ne vaut plus la peine sous",
  "Of what is printed on it: you would walk indoors more than you drive. Yours to change.":
    "De ce qui est imprimé dessus : vous rentreriez plus souvent que vous ne visseriez. À vous de changer.",
  "no published limit was found": "aucune limite publiée n'a été trouvée",
  "Gives on your day": "Donne ce jour-là",
  "By the published cold capacity of its kind; nothing where the day is colder than any that was published.":
    "Selon la capacité au froid publiée pour sa sorte ; rien si le jour est plus froid que tous ceux qui furent publiés.",
  "Drive with": "Visser avec",
  "A battery that gives up in the cold calls for a tool with a cord, on a socket with a switch that trips on a fault to earth.":
    "Une batterie qui lâche au froid appelle un outil à cordon, sur une prise à disjoncteur différentiel.",
  "Cold takes much of a battery away, and of some kinds all of it. Keep the spare one warm indoors.":
    "Le froid prend beaucoup à une batterie, et tout à certaines sortes. Gardez celle de rechange au chaud.",
  "NiCd at -18 °C, NiMH at -15 °C": "NiCd à -18 °C, NiMH à -15 °C",
  "Kind of battery": "Sorte de batterie",
  "Printed on it: lithium, nickel-cadmium or nickel-metal hydride cells.":
    "Imprimé dessus : piles au lithium, au nickel-cadmium ou à l'hydrure métallique de nickel.",
  "Of what is printed on it.": "De ce qui est imprimé dessus.",
  "Over the whole job. 0 where a charge drives none.":
    "Sur tout le chantier. 0 là où une charge n'en pose aucune.",
  "Next warmer row": "Ligne plus chaude suivante",
  "Of the same kind; in its warmest row, that row itself.":
    "De la même sorte ; à sa ligne la plus chaude, cette ligne même.",
  "Where your day lies between this row and the next warmer one, along a straight line between them. Colder than the coldest published row nothing is counted on.":
    "Là où votre jour tombe entre cette ligne et la plus chaude suivante, en ligne droite de l'une à l'autre. Plus froid que la ligne publiée la plus froide, on ne compte sur rien.",
  "a straight line between two published values": "une ligne droite entre deux valeurs publiées",
  "Energy on your day": "Énergie ce jour-là",
  "What that is of your battery.": "Ce que cela fait de votre batterie.",
  "Screws on your day": "Vis ce jour-là",
  "As many as a charge drives then.": "Autant qu'une charge en pose alors.",
  "Screws to drive, step by step": "Vis à poser, étape par étape",
  "So that enough is charged the evening before, at the cold of the day. Holes for bolts and what the lists do not hold are not in it.":
    "Pour que tout soit chargé la veille, selon le froid du jour. Les trous de boulons et ce que les listes n'ont pas n'y sont pas.",
  "Screws to drive": "Vis à poser",
  "By the table of fixings, without spare.": "Selon le tableau des fixations, sans réserve.",
  Energy: "Énergie",
  "Taken from the battery, the driver's own losses in it.":
    "Prise à la batterie, pertes de la visseuse comprises.",
  "Charges of the battery": "Charges de la batterie",
  "Whole ones, at the temperature of your day. 0 with a cord.":
    "Entières, à la température de votre jour. 0 avec un cordon.",
  "Bits worn": "Embouts usés",
  "Lay as many ready. One serves longer than one stage: the list of what wears out has what to buy in all.":
    "Préparez-en autant. Un embout dure plus d'une étape : la liste de ce qui s'use dit combien en acheter en tout.",
  "By the cold of the day.": "Selon le froid du jour.",
  "a battery": "une batterie",
  "a tool with a cord": "un outil à cordon",
  "unopened box of screws": "boîte de vis non ouverte",
  "unopened box of frame screws": "boîte de vis de charpente non ouverte",
  "keep for repairs: opened boxes are not taken back":
    "à garder pour réparer : une boîte ouverte n'est pas reprise",
  "back to the shop, unopened and with the receipt": "retour au magasin, non ouvert et avec le reçu",
  "back to the shop, if uncut and dry; else keep for repairs":
    "retour au magasin, si non coupée et sèche ; sinon à garder pour réparer",
}
