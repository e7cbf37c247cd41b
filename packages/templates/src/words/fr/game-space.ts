import type { Texts } from "../dictionary.ts"

export const gameSpace: Texts = {
  "Purpose: room to play": "Usage : la place pour jouer",
  "Whether the platform leaves the room behind and beside the table that your players want.":
    "Si la plateforme laisse, derrière et à côté de la table, la place que veulent vos joueurs.",
  "The table, and a hall's playing area": "La table, et l'aire de jeu d'une salle",
  "The laws of the game fix the table; an outdoor one measures the same. A garden is often content with less room than a hall: it shows what is usual.":
    "Les règles du jeu fixent la table ; une table extérieure mesure pareil. Un jardin se contente souvent de moins de place qu'une salle : ceci montre ce qui est usuel.",
  What: "Quoi",
  "The playing area is what is asked of a hall for recreation and coaching.":
    "L'aire de jeu est celle demandée à une salle pour le loisir et l'entraînement.",
  Length: "Longueur",
  "The long way.": "Dans le sens long.",
  Width: "Largeur",
  "The short way.": "Dans le sens court.",
  "Platform's length, as a share of that": "Longueur de la plateforme, en part de celle-là",
  "How near the platform comes to a hall's playing area, and how many times the table it is.":
    "À quel point la plateforme approche l'aire de jeu d'une salle, et combien de fois la table elle fait.",
  "Platform's width, as a share of that": "Largeur de la plateforme, en part de celle-là",
  "The same across.": "La même chose en travers.",
  "Height of the table": "Hauteur de la table",
  "Its top above the tiles. The feet want a level, firm floor.":
    "Son dessus au-dessus des tuiles. Les pieds veulent un plancher ferme et de niveau.",
  "Room wanted behind the table": "Place voulue derrière la table",
  "From the table's end to the platform's edge. Players step back for a fast ball: ask the ones who will use it.":
    "Du bout de la table au bord de la plateforme. Les joueurs reculent sur une balle rapide : demandez à ceux qui joueront.",
  "Room wanted beside the table": "Place voulue à côté de la table",
  "From the table's side to the platform's edge.": "Du côté de la table au bord de la plateforme.",
  "Room behind the table": "Place derrière la table",
  "What the platform leaves at each end with the table in the middle.":
    "Ce que la plateforme laisse à chaque bout, la table au milieu.",
  "Room beside the table": "Place à côté de la table",
  "What the platform leaves on each side with the table in the middle.":
    "Ce que la plateforme laisse de chaque côté, la table au milieu.",
  "Enough room behind?": "Assez de place derrière ?",
  "A player who steps off the edge while looking at the ball falls.":
    "Un joueur qui recule hors du bord en regardant la balle tombe.",
  "Mark the platform's edge in a colour that is seen from the corner of the eye.":
    "Marquez le bord de la plateforme d'une couleur qui se voit du coin de l'œil.",
  "Make the platform at least {platform_length_wanted} long, or be content with less room.":
    "Faites la plateforme d'au moins {platform_length_wanted} de long, ou contentez-vous de moins de place.",
  "Enough room beside?": "Assez de place à côté ?",
  "Wide shots and doubles take players out to the side.":
    "Les coups larges et les doubles font sortir les joueurs sur le côté.",
  "Make the platform at least {platform_width_wanted} wide, or be content with less room.":
    "Faites la plateforme d'au moins {platform_width_wanted} de large, ou contentez-vous de moins de place.",
  "Length that the players want": "Longueur que veulent les joueurs",
  "The table and the room wanted at both ends.": "La table et la place voulue aux deux bouts.",
  "Width that the players want": "Largeur que veulent les joueurs",
  "The table and the room wanted on both sides.": "La table et la place voulue des deux côtés.",
}
