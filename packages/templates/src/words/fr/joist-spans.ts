import type { Texts } from "../dictionary.ts"

export const joistSpans: Texts = {
  "How far it may span": "Jusqu'où elle peut porter",
  "The span at which bending, shear or sag is used up; the least of them counts, for the least species of the group.":
    "La portée où flexion, cisaillement ou flèche est épuisé ; la moindre compte, pour la plus faible essence du groupe.",
  "Deck tables end at": "Les tableaux de terrasse finissent à",
  "No published deck span is longer, whatever the calculation gives.":
    "Aucune portée de terrasse publiée n'est plus longue, quoi que donne le calcul.",
  "Floor tables end at": "Les tableaux de plancher finissent à",
  "Longer than any joist: floor tables print what the calculation gives.":
    "Plus long que toute solive : les tableaux de plancher impriment ce que donne le calcul.",
  "No span longer than, in use": "Aucune portée de plus de, utilisée",
  "Yours, or the end of deck tables where the timber stays wet.":
    "La vôtre, ou la fin des tableaux de terrasse si le bois reste mouillé.",
  "Load at the tip of an overhang": "Charge au bout d'un porte-à-faux",
  "One heavy person at the very end.": "Une personne lourde tout au bout.",
  "Sag of an overhang: its length over": "Flèche d'un porte-à-faux : sa longueur sur",
  "Under that load alone.": "Sous cette seule charge.",
  "Overhang, no more of the span than": "Porte-à-faux, au plus cette part de la portée",
  "Else the far end may lift, and the beam carries more than tables say.":
    "Sinon l'autre bout peut se soulever, et la poutre porte plus que ne disent les tableaux.",
  "Taken off an overhang": "Retranché d'un porte-à-faux",
  "The printed overhang is measured clear of the beam; the calculation, from its centre.":
    "Le porte-à-faux imprimé se mesure au-delà de la poutre ; le calcul, depuis son centre.",
  "Sag at a tip: P a² (L + a) over E I times": "Flèche au bout : P a² (L + a) sur E I fois",
  "A joist on two supports with a load at the end of its overhang.":
    "Une solive sur deux appuis avec une charge au bout de son porte-à-faux.",
  "Spans by species": "Portées par essence",
  "A group's span is that of its least species, and the least may differ by size and spacing.":
    "La portée d'un groupe est celle de sa plus faible essence, qui peut changer avec grosseur et espacement.",
  "One of the group.": "Une du groupe.",
  "By the chosen rules of design.": "Selon les règles de calcul choisies.",
  "Span by bending": "Portée par flexion",
  "Where the moment of the load has used up the section.":
    "Là où le moment de la charge a épuisé la section.",
  "Span by shear": "Portée par cisaillement",
  "Where half the load, at the support, has used up the section.":
    "Là où la moitié de la charge, à l'appui, a épuisé la section.",
  "Span by bearing": "Portée par portance",
  "Where the seat is used up. Published tables leave it out, and so does the longest span here.":
    "Là où le siège est épuisé. Les tableaux publiés l'omettent, et la plus longue portée ici aussi.",
  "Span by sag": "Portée par flèche",
  "Where the sag under live load reaches the span over the limit: w L⁴ × share ÷ (E I), with I = b d³ ÷ 12.":
    "Là où la flèche sous surcharge atteint la portée sur la limite : w L⁴ × part ÷ (E I), avec I = b d³ ÷ 12.",
  "Span by strength and sag": "Portée par résistance et flèche",
  "The least of the three.": "La moindre des trois.",
  "Longest span": "Plus longue portée",
  "With the end of deck tables, where the timber stays wet or where you set one.":
    "Avec la fin des tableaux de terrasse, si le bois reste mouillé ou si vous en avez fixé une.",
  "What decides": "Ce qui décide",
  "Change this first if you want a longer span.":
    "Changez cela d'abord si vous voulez une portée plus longue.",
  "Stiffness of an overhang": "Rigidité d'un porte-à-faux",
  "3 E I ÷ (180 × 220 lb): the overhang times span and overhang together may reach this.":
    "3 E I ÷ (180 × 220 lb) : le porte-à-faux fois portée et porte-à-faux ensemble peut atteindre cela.",
  "Longest overhang": "Plus long porte-à-faux",
  "Behind the longest span of this species.": "Derrière la plus longue portée de cette essence.",
  "Longest cantilever behind your span": "Plus long porte-à-faux derrière votre portée",
  "By the table of cantilevers by the span behind them, measured from the beam's centre.":
    "Selon le tableau des porte-à-faux d'après la portée derrière, mesurés du centre de la poutre.",
  "There is a published strength": "Il y a une résistance publiée",
  "No where the chosen rules have no row for the species, grade and size.":
    "Non si les règles choisies n'ont pas de ligne pour l'essence, la qualité et la grosseur.",
  "The published figures cover it": "Les données publiées le couvrent",
  "No where species, grade, size or spacing is outside the figures: then no span is given.":
    "Non si essence, qualité, grosseur ou espacement est hors des données : aucune portée n'est alors donnée.",
  "Span tables end at a spacing of": "Les tableaux de portées finissent à un espacement de",
  "No published joist span is for joists further apart.":
    "Aucune portée publiée n'est pour des solives plus écartées.",
  "The weakest species of the group.": "La plus faible essence du groupe.",
  "Span by bearing on the seat": "Portée par portance sur le siège",
  "Not in the span tables: a longer seat mends it.":
    "Pas dans les tableaux de portées : un siège plus long y remédie.",
  "The springiest species of the group.": "L'essence la plus souple du groupe.",
  "Longest joist span": "Plus longue portée de solive",
  "From support to support. No joist of this kind may span further under this load.":
    "D'un appui à l'autre. Aucune solive de cette sorte ne peut porter plus loin sous cette charge.",
  "A span table leaves out notches, cracks, point loads and the seat. Check the bearing below, and your local table.":
    "Un tableau de portées omet entailles, fentes, charges ponctuelles et siège. Vérifiez la portance ci-dessous, et votre tableau local.",
  "Metric tables print spans to the nearest": "Les tableaux métriques impriment les portées à",
  "Canada's table is printed in hundredths of a metre.":
    "Le tableau du Canada est imprimé en centièmes de mètre.",
  "Longest joist span, as tables print it": "Plus longue portée de solive, telle qu'imprimée",
  "Rounded to the nearest step, so that it can be held against a printed table.":
    "Arrondie au pas le plus proche, pour la comparer à un tableau imprimé.",
  "What decides the span": "Ce qui décide de la portée",
  "The species that decides": "L'essence qui décide",
  "The least species of the group at this size and spacing.":
    "La plus faible essence du groupe à cette grosseur et cet espacement.",
  "How far joists may run out over a beam, clear of it, behind their longest span.":
    "Jusqu'où les solives peuvent dépasser une poutre, mesuré au-delà d'elle, derrière leur plus longue portée.",
  "Longest overhang, as tables print it": "Plus long porte-à-faux, tel qu'imprimé",
  "A shorter span behind gives a shorter quarter, but a stiffer tip.":
    "Une portée plus courte derrière donne un quart plus court, mais un bout plus rigide.",
}
