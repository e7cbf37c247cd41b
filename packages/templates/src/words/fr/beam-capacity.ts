import type { Texts } from "../dictionary.ts"

export const beamCapacity: Texts = {
  "Beam: what the section carries": "Poutre : ce que porte la section",
  "Beam: bending stress it may bear": "Poutre : contrainte de flexion qu'elle peut porter",
  "Beam: shear stress it may bear": "Poutre : contrainte de cisaillement qu'elle peut porter",
  "Beam: bearing stress it may bear": "Poutre : contrainte de portance qu'elle peut porter",
  "Beam: stiffness in use": "Poutre : rigidité en service",
  "Beam: section modulus": "Poutre : module de section",
  "Beam: moment it can take": "Poutre : moment qu'elle peut prendre",
  "Beam: shear it can take": "Poutre : cisaillement qu'elle peut prendre",
}
