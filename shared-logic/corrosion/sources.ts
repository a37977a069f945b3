import { commonPractice, fromMemory, law, newZealand, published, quebec, roadworthiness, tradeLiterature, ukInspection } from '../rules/cite'

/** Where the rules on corrosion come from, each written once. */
export const corrosionSources = {
  degrees: published('ISO 4628-3', 'degrees of rusting, nominal areas as restated; smallest degree not below the measurement'),
  grades: published('ASTM D610-08 (2012)', 'Table 1'),
  protection: published('ISO 10289, through GB/T 6461-2002', 'protection rating by table'),
  rememberedEdges: fromMemory('edges 2.5 and 5 % of the ISO 10289 table'),
  tankCoating: law('ships', 'IMO MSC.1/Circ.1330', '4.1.3: edges and welds rated apart, poor above 20 % of a face'),
  zincThickness: published('ISO 1461:2009', 'least coating thickness, as a galvanizer’s page restates it'),
  zincThicknessUs: published('ASTM A123/A123M-17', 'Table 1, as a galvanizer’s page restates it'),
  zincRepair: published('ISO 1461:2009', '6.3, repair limits as yardstick'),
  zincRepairUs: published('ASTM A123', 'repair limits, as the American galvanizers’ association restates them'),
  wetStorage: tradeLiterature('galvanizing guidance', 'wet storage stain'),
  eatenAway: newZealand('general trailers, 3-1: eaten away above 50 mm, or weakened structure'),
  bubbling: newZealand('general trailers, 3-1: pitting, lifting or bubbling paint as signs of metal eaten away'),
  perforated: quebec('s. 98: frame members not perforated by rust'),
  mountings: ukInspection('6.1.1(c) and Appendix A: structure within 30 cm of a mounting'),
  rigidity: roadworthiness('6.1.1(c): excessive corrosion affecting rigidity'),
  pits: law('ships', 'IACS UR Z10.5', '8.2: pits leave more than 70 % of the wall'),
  section: law('ships', 'IACS Common Structural Rules', 'Ch 13 Sec 2: 90 % of a whole section'),
  weldZone: tradeLiterature('filler-metal maker’s technical guide', 'typical tensile properties: welded 6061-T6 keeps 45 to 67 %'),
  weldRepair: law('commercial', '49 CFR 393.201', 'weld repair only as the maker allows'),
  practice: commonPractice,
} as const
