import type { Texts } from "../dictionary.ts"

export const prices1: Texts = {
  "Buying list and cost": "Liste d'achats et coût",
  "Everything to buy. Enter what your own yard asks; no price is known to this workbook.":
    "Tout ce qu'il faut acheter. Entrez ce que demande votre cour à bois ; ce classeur ne connaît aucun prix.",
  "Your prices": "Vos prix",
  "Ask at your yard. Call timber by its size, and the rest: screws, frame screws, block, stone, sheet, tile, net post, 80 lb bag of concrete, net bolt, square washer, net, net rope, guy rope, net tie, net peg, preservative tin, tape roll, tie, peg, roll of string, can of marking paint, pair of gloves, pair of goggles, set of ear defenders, dust mask, driver bit, drill bit, saw blade, tin brush, box of 100 connector nails, tin of edge sealer.":
    "Demandez à votre cour à bois. Nommez le bois par sa grosseur, et le reste : vis, vis de charpente, bloc, pierre, panneau, tuile, poteau de filet, sac de béton de 80 lb, boulon de filet, rondelle carrée, filet, corde de filet, corde de hauban, attache de filet, piquet de filet, contenant de préservatif, rouleau de ruban, attache, piquet, rouleau de cordeau, bombe de peinture à marquer, paire de gants, paire de lunettes de protection, protecteurs d'oreilles, masque antipoussière, embout de vissage, mèche à bois, lame de scie, pinceau, boîte de 100 clous à connecteur, contenant de scellant à chants.",
  "The timber's size, or the name of the thing as on the list.":
    "La grosseur du bois, ou le nom de la chose comme sur la liste.",
  "Of timber: the length sold, with its unit. Left empty, the price holds for every length.":
    "Du bois : la longueur vendue, avec son unité. Vide, le prix vaut pour toutes les longueurs.",
  By: "Par",
  "What the price is for: each, box, ft, ft2, yd3.":
    "Pour quoi est le prix : each (chacun), box (boîte), ft, ft2, yd3.",
  Price: "Prix",
  "Of one unit, or of one pack where the next columns say how many are in it.":
    "D'une unité, ou d'un paquet si les colonnes suivantes disent combien il en contient.",
  Supplier: "Fournisseur",
  "Who asks it. May be left empty while there is only one.":
    "Qui le demande. Peut rester vide tant qu'il n'y en a qu'un.",
  "In a pack": "Par paquet",
  "So many of the unit in one pack, if it is only sold whole. Else empty.":
    "Combien d'unités dans un paquet, s'il ne se vend qu'entier. Sinon vide.",
  "So many packs (units, where there are none) from which this price holds for all of them. Empty: from the first.":
    "À partir de combien de paquets (ou d'unités) ce prix vaut pour tous. Vide : dès le premier.",
  "Asked on": "Demandé le",
  "Year-month-day, 2027-03-31. Old prices are marked, when today is entered.":
    "Année-mois-jour, 2027-03-31. Les vieux prix sont marqués, quand la date du jour est entrée.",
  "Days to come": "Jours avant l'arrivée",
  "Days from ordering until the goods are there. Empty: none.":
    "Jours entre la commande et l'arrivée. Vide : aucun.",
  "Your suppliers": "Vos fournisseurs",
  "What each asks for bringing it. A supplier who is only in the prices brings for nothing, and tax is added.":
    "Ce que chacun demande pour livrer. Un fournisseur qui n'est que dans les prix livre pour rien, et la taxe s'ajoute.",
  "As in your prices.": "Comme dans vos prix.",
  Delivery: "Livraison",
  "For one delivery, without tax. Nothing if you fetch it.":
    "Pour une livraison, sans taxe. Rien si vous allez chercher.",
  "Free from": "Gratuite à partir de",
  "Goods from which delivery costs nothing. Empty: it always costs.":
    "Marchandise à partir de laquelle la livraison est gratuite. Vide : toujours payante.",
  "Least order": "Commande minimale",
  "What goods have to come to at least. Empty: any order is taken.":
    "Ce que la marchandise doit faire au moins. Vide : toute commande est acceptée.",
  "Tax included": "Taxe comprise",
  "Yes: their prices have the tax in them, and none is added.":
    "Oui : leurs prix comprennent la taxe, et rien ne s'ajoute.",
  "How you buy": "Comment vous achetez",
  "One line. Everything in it may be left empty.": "Une ligne. Tout peut y rester vide.",
  "All from": "Tout chez",
  "One supplier's name, to make a single trip. Empty: whoever is cheapest in all.":
    "Le nom d'un fournisseur, pour un seul voyage. Vide : la combinaison la moins chère.",
  Today: "Aujourd'hui",
  "Year-month-day. Empty: no price is called old.": "Année-mois-jour. Vide : aucun prix n'est dit vieux.",
  "Old after days": "Vieux après (jours)",
  "Prices older than this are marked, to be asked again.":
    "Les prix plus vieux que cela sont marqués, pour redemander.",
  "Work starts on": "Début des travaux",
  "Year-month-day. With it the list says by which day to order.":
    "Année-mois-jour. La liste dit alors pour quel jour commander.",
  "Sales tax": "Taxe de vente",
  "Where your prices are without it. It is added to goods, delivery and what is set aside.":
    "Si vos prix sont sans elle. Elle s'ajoute à la marchandise, à la livraison et à ce qui est mis de côté.",
  "Coins are rounded on": "L'arrondi au comptant se fait sur",
  "Some tills round every line, some each invoice. Look at an old receipt; it is a matter of cents.":
    "Certaines caisses arrondissent chaque ligne, d'autres chaque facture. Regardez un vieux reçu ; c'est une affaire de cents.",
  total: "total",
  "each invoice": "chaque facture",
  "each line": "chaque ligne",
  "What is taken from whom": "Ce qui est pris chez qui",
  "The choice that the list, the invoices and the plans are made from. What is sold by measure is taken as needed, or in whole units where that pays.":
    "Le choix d'où viennent la liste, les factures et les plans. Ce qui se vend à la mesure est pris selon le besoin, ou en unités entières si cela paie.",
  "Suppliers mixed, or one alone.": "Fournisseurs combinés, ou un seul.",
  "Of what is needed, timber first.": "De ce qu'il faut, le bois d'abord.",
  "What is bought.": "Ce qu'on achète.",
  Offer: "Offre",
  "Which of those for this thing in your prices.": "Laquelle de celles de vos prix pour cette chose.",
  "Empty: nobody was named.": "Vide : personne n'a été nommé.",
  "So many": "Combien",
  "Packs, or units of the price.": "Paquets, ou unités du prix.",
  "Take it to the yard. What has no price yet is on it too, and is not in the sum.":
    "Apportez-la à la cour. Ce qui n'a pas encore de prix y est aussi, mais pas dans la somme.",
  "Of timber: the length sold. Nothing for what has no length.":
    "Du bois : la longueur vendue. Rien pour ce qui n'a pas de longueur.",
  "Found under": "Se trouve sous",
  "Where it stands in a shop or a yard.": "Où c'est dans un magasin ou une cour.",
  "First used in": "Sert d'abord à",
  "The step of the work that wants it first.": "L'étape des travaux qui le veut en premier.",
  "Used in": "Sert à",
  "Every step of the work that uses it.": "Chaque étape des travaux qui s'en sert.",
  "Who sells it, by the plan in force. Empty: nobody was named.":
    "Qui le vend, selon le plan en vigueur. Vide : personne n'a été nommé.",
  Take: "Prendre",
  "What to put on the cart: whole packs where it is sold in packs.":
    "Quoi mettre dans le chariot : des paquets entiers si c'est vendu ainsi.",
  "What that many are of.": "De quoi est ce nombre.",
  "How much": "Combien il en faut",
  "With the spare that was added, in the unit beside it.": "Avec la réserve ajoutée, dans l'unité à côté.",
  Unit: "Unité",
  "The unit of your price, where it is one of quantity.":
    "L'unité de votre prix, si c'en est une de quantité.",
  Packs: "Paquets",
  "Where it is sold in packs: whole ones.": "Si c'est vendu en paquets : entiers.",
  "In the unit of the quantity. Nothing for what is measured off.":
    "Dans l'unité de la quantité. Rien pour ce qui se mesure.",
  "You get": "Vous obtenez",
  "In the unit of the quantity: packs times what is in them.":
    "Dans l'unité de la quantité : paquets fois leur contenu.",
  "What no step of the work uses: spare, and the rest of the last pack. Of timber, whole pieces.":
    "Ce qu'aucune étape n'utilise : la réserve, et le reste du dernier paquet. Du bois, des pièces entières.",
  "Times the price": "Fois le prix",
  "How many of what the price is for.": "Combien de fois ce pour quoi est le prix.",
  "Priced by": "Facturé par",
  "From your prices.": "De vos prix.",
  "From your prices, at the number bought; nothing where there is none.":
    "De vos prix, au nombre acheté ; rien s'il n'y en a pas.",
  Cost: "Coût",
  "In whole coins only where every line is rounded.":
    "En pièces de monnaie entières seulement si chaque ligne est arrondie.",
  "Order days before": "Commander jours d'avance",
  "Order at least so many days before the day that you need it.":
    "Commandez au moins autant de jours avant celui où il vous le faut.",
  "Order by": "Commander avant le",
  "For the day that the work starts; empty until you entered it.":
    "Pour le jour du début des travaux ; vide tant que vous ne l'avez pas entré.",
  "Taken for granted": "Tenu pour acquis",
  "What was assumed where your prices leave it open.":
    "Ce qui a été supposé là où vos prix ne le disent pas.",
  Finding: "Constat",
  "What is the matter with its price, where something is.": "Ce qui ne va pas avec son prix, s'il y a lieu.",
  "Whom to buy from": "Chez qui acheter",
  "The least in all, with delivery and tax, against all from one supplier. Fewer trips may be worth more than the saving.":
    "Le moins cher en tout, livraison et taxe comprises, comparé à tout chez un seul. Moins de voyages peut valoir plus que l'économie.",
  "Mixed, from one supplier alone, or the best that needs one trip only.":
    "Combinés, chez un seul fournisseur, ou le meilleur en un seul voyage.",
  "The one supplier; empty where they are mixed.": "Le fournisseur unique ; vide s'ils sont combinés.",
  Orders: "Commandes",
  "Suppliers to go to, or deliveries to wait for.": "Fournisseurs où aller, ou livraisons à attendre.",
  "Without a price": "Sans prix",
  "Things on the list that this plan has no price for; its total is too low by them.":
    "Choses de la liste dont ce plan n'a pas le prix ; son total est trop bas d'autant.",
  Goods: "Marchandise",
  "Before delivery and tax.": "Avant livraison et taxe.",
  "What they charge for bringing it.": "Ce qu'ils demandent pour livrer.",
  Tax: "Taxe",
  "On goods and delivery, where prices are without it. Not rounded.":
    "Sur marchandise et livraison, si les prix sont sans elle. Non arrondie.",
  Paid: "Payé",
  "Goods, delivery and tax, before coins are rounded and without what is set aside.":
    "Marchandise, livraison et taxe, avant l'arrondi au comptant et sans ce qui est mis de côté.",
  "The mixed plan saves": "Le plan combiné économise",
  "Against this plan. Nothing where this plan lacks things: the totals are of different things.":
    "Par rapport à ce plan. Rien si ce plan n'a pas tout : les totaux ne sont pas comparables.",
  "In force": "En vigueur",
  "1: the list is made by this plan.": "1 : la liste suit ce plan.",
  "What it lacks, or which supplier it is.": "Ce qui lui manque, ou quel fournisseur c'est.",
  "What each supplier gets": "Ce que reçoit chaque fournisseur",
  "One invoice a row, as the plan in force has it.": "Une facture par ligne, selon le plan en vigueur.",
  Lines: "Lignes",
  "Of the list.": "De la liste.",
  "Sum of the lines' costs.": "Somme des coûts des lignes.",
  "Goods that tax is added to": "Marchandise où s'ajoute la taxe",
  "Nothing where the prices have it in them.": "Rien si les prix la comprennent.",
  "Free where the goods reach what your suppliers' table says.":
    "Gratuite si la marchandise atteint ce que dit le tableau de vos fournisseurs.",
  "On goods and delivery. Ask whether delivery is taxed where you live.":
    "Sur marchandise et livraison. Demandez si la livraison est taxée chez vous.",
  "To pay": "À payer",
  "What the invoice should come to.": "Ce que devrait donner la facture.",
  "The longest wait among its lines.": "La plus longue attente parmi ses lignes.",
  "For what goes wrong": "Pour les imprévus",
  "A board that split, a bit that broke, the trip for what was forgotten.":
    "Une planche fendue, un embout cassé, le voyage pour l'oubli.",
  Materials: "Matériaux",
  "All that has a price.": "Tout ce qui a un prix.",
  "What the sum is made of": "De quoi est faite la somme",
  "Things without a price are counted, but are in no sum: the total is too low by them.":
    "Les choses sans prix sont comptées, mais dans aucune somme : le total est trop bas d'autant.",
  "What the money goes to.": "À quoi va l'argent.",
  "Lines of the list, or invoices.": "Lignes de la liste, ou factures.",
  Money: "Argent",
  "What is set aside is spent on taxed things too.":
    "Ce qui est mis de côté se dépense aussi en choses taxées.",
  "Smallest coin": "Plus petite pièce de monnaie",
  "What amounts are rounded to; the greatest of the column is taken.":
    "À quoi s'arrondissent les montants ; la plus grande de la colonne est prise.",
  "Cost in all": "Coût total",
  "Half a coin goes up. Where you chose to round the total, it is rounded here and nowhere before: rounding line by line would drift.":
    "Une demi-pièce monte. Si vous avez choisi d'arrondir le total, c'est ici et nulle part avant : arrondir ligne par ligne dériverait.",
  "For each square foot or metre": "Par pied ou mètre carré",
  "To compare with another size, or with what a builder asks.":
    "Pour comparer à une autre dimension, ou à ce que demande un constructeur.",
  "Your own things to buy": "Vos propres choses à acheter",
  "What this workbook does not count: a gate hinge, a lamp, a tin of paint. It joins the buying list, the invoices and the cost.":
    "Ce que ce classeur ne compte pas : une charnière de barrière, une lampe, un pot de peinture. Cela s'ajoute à la liste d'achats, aux factures et au coût.",
  "How many": "Combien",
  "How many you need, spare and all.": "Combien il vous en faut, réserve comprise.",
  "What you count: each, bag, tin, ft. Left empty: each.":
    "Ce que vous comptez : sac, pot, pieds. Vide : à la pièce.",
  "Price of one": "Prix d'un seul",
  "In money, without tax. May be left empty, or stand in your prices.":
    "En argent, sans taxe. Peut rester vide, ou se trouver dans vos prix.",
  "Bought and used": "Acheté et utilisé",
  "What you have, and what you paid for it. The buy list fills this in when you tick something there.":
    "Ce que vous avez, et ce que vous l'avez payé. La liste d'achats le remplit quand vous y cochez quelque chose.",
  "As on the list.": "Comme sur la liste.",
  "Of timber, with its unit. Else empty.": "Du bois, avec son unité. Sinon vide.",
  In: "En",
  "The list's unit when it was bought. Empty: as the list counts it now.":
    "L'unité de la liste au moment de l'achat. Vide : comme la liste le compte maintenant.",
  Bought: "Acheté",
  "How much you have bought in all, in that unit: pieces, not packs.":
    "Combien vous en avez acheté en tout, dans cette unité : des pièces, pas des paquets.",
  "Really paid": "Vraiment payé",
  "For all of it, with tax. May be left empty.": "Pour le tout, taxe comprise. Peut rester vide.",
  Used: "Utilisé",
  "How much of it is built in. May be left empty.": "Combien est posé. Peut rester vide.",
  "Bought, short and left": "Acheté, manquant et restant",
  "Your notes held against the list as it is now: change the size, and it says what is short and what can go back.":
    "Vos notes comparées à la liste actuelle : changez la dimension, et elle dit ce qui manque et ce qui peut être retourné.",
  "Of timber.": "Du bois.",
  "What the next are counted in.": "En quoi se comptent les suivants.",
  Needed: "Besoin",
  "By the list, with the spare.": "Selon la liste, avec la réserve.",
  "By your notes.": "Selon vos notes.",
  "Still short": "Manque encore",
  "Needed less bought.": "Besoin moins acheté.",
  "At hand": "En main",
  "Bought less used.": "Acheté moins utilisé.",
}
