/** Sources that several formulas of this folder share. */
import type { Source } from "../../kernel/formula.js";

export const hopkins2000: Source = {
  authors: "Hopkins WG",
  year: 2000,
  title: "Measures of reliability in sports medicine and science",
  journal: "Sports Med 30(1):1–15",
  doi: "10.2165/00007256-200030010-00001",
  where: "definition of the typical error",
  verified: "memory",
};
export const shroutFleiss1979: Source = {
  authors: "Shrout PE, Fleiss JL",
  year: 1979,
  title: "Intraclass correlations: uses in assessing rater reliability",
  journal: "Psychol Bull 86:420–428",
  where: "six targets rated by four judges",
  verified: "memory",
};
export const weir2005: Source = {
  authors: "Weir JP",
  year: 2005,
  title: "Quantifying test-retest reliability using the intraclass correlation coefficient and the SEM",
  journal: "J Strength Cond Res 19:231–240",
  where: "minimal difference: 1.96 · √2 · SEM",
  verified: "memory",
};
export const glueer1995: Source = {
  authors: "Glüer CC, Blake G, Lu Y, Blunt BA, Jergas M, Genant HK",
  year: 1995,
  title: "Accurate assessment of precision errors: how to measure the reproducibility of bone densitometry techniques",
  journal: "Osteoporos Int 5:262–270",
  doi: "10.1007/BF01774016",
  where: "abstract",
  verified: "seen",
};
export const swinton2018: Source = {
  authors: "Swinton PA, Stephens Hemingway B, Saunders B, Gualano B, Dolan E",
  year: 2018,
  title: "A statistical framework to interpret individual response to intervention",
  journal: "Front Nutr 5:41",
  doi: "10.3389/fnut.2018.00041",
  where: "abstract: intervals from the typical error, read beside the smallest worthwhile change",
  verified: "seen",
};
