import { expect, it } from "vitest";
import * as earthing from "../../src/earthing/index.js";

// Every cell a second time, typed apart from the tables; a slip in one of the two is noticed by the other. No evidence: guards are in reference-data/.
const again: Readonly<Record<string, string>> = {
  asnzs3000_2018_5_1: `
    1 | copper | 1
    1.5 | copper | 1.5
    2.5 | copper | 2.5
    4 | copper | 2.5
    6 | copper | 2.5
    6 | aluminium | 2.5
    10 | copper | 4
    10 | aluminium | 2.5
    16 | copper | 6
    16 | aluminium | 4
    25 | copper | 6
    25 | aluminium | 6
    35 | copper | 10
    35 | aluminium | 6
    50 | copper | 16
    50 | aluminium | 10
    70 | copper | 25
    70 | aluminium | 10
    95 | copper | 25
    95 | aluminium | 16
    120 | copper | 35
    120 | aluminium | 25
    150 | copper | 50
    150 | aluminium | 25
    185 | copper | 70
    185 | aluminium | 35
    240 | copper | 95
    240 | aluminium | 50
    300 | copper | 120
    300 | aluminium | 70
    400 | copper | 120
    400 | aluminium | 95
    500 | copper | 120
    500 | aluminium | 95
    630 | copper | 120
    630 | aluminium | 120
  `,
  nbsReport108_soil: `
    ashes, cinders, brine wastes | average | 2370
    ashes, cinders, brine wastes | lowest | 590
    ashes, cinders, brine wastes | highest | 7000
    clay, shale, gumbo, loam | average | 4060
    clay, shale, gumbo, loam | lowest | 340
    clay, shale, gumbo, loam | highest | 16300
    the same with sand and gravel | average | 15800
    the same with sand and gravel | lowest | 1020
    the same with sand and gravel | highest | 135000
    gravel, sand, stones with little clay or loam | average | 94000
    gravel, sand, stones with little clay or loam | lowest | 59000
    gravel, sand, stones with little clay or loam | highest | 458000
  `,
  ieee142_2007_soil: `
    well-graded gravel | lowest | 600
    well-graded gravel | highest | 1000
    poorly graded gravel | lowest | 1000
    poorly graded gravel | highest | 2500
    clayey gravel | lowest | 200
    clayey gravel | highest | 400
    silty sand | lowest | 100
    silty sand | highest | 800
    clayey sand | lowest | 50
    clayey sand | highest | 200
    silty or clayey sand of slight plasticity | lowest | 30
    silty or clayey sand of slight plasticity | highest | 80
  `,
  omics2015_ground: `
    granite | lowest | 300
    granite | highest | 1000000
    granite, weathered | lowest | 30
    granite, weathered | highest | 500
    consolidated shale | lowest | 20
    consolidated shale | highest | 2000
    sandstone | lowest | 200
    sandstone | highest | 5000
    sandstone, weathered | lowest | 50
    sandstone, weathered | highest | 200
    clays | lowest | 1
    clays | highest | 100
    boulder clay | lowest | 15
    boulder clay | highest | 35
    clay, very dry | lowest | 50
    clay, very dry | highest | 150
    gravel, dry | lowest | 1400
    gravel, dry | highest | 1400
    gravel, saturated | lowest | 100
    gravel, saturated | highest | 100
    lateritic soil | lowest | 120
    lateritic soil | highest | 750
    dry sandy soil | lowest | 80
    dry sandy soil | highest | 1050
    sand clay | lowest | 30
    sand clay | highest | 215
    sand and gravel, saturated | lowest | 30
    sand and gravel, saturated | highest | 225
    mudstone | lowest | 20
    mudstone | highest | 120
    siltstone | lowest | 20
    siltstone | highest | 150
  `,
  bs7430_2015_line_factor: `
    2 | 1
    3 | 1.66
    4 | 2.15
    5 | 2.54
    6 | 2.87
    7 | 3.15
    8 | 3.39
    9 | 3.61
    10 | 3.81
  `,
  bs7430_2015_square_factor: `
    2 | 2.71
    3 | 4.51
    4 | 5.46
    5 | 6.14
    6 | 6.63
    7 | 7.03
    8 | 7.36
    9 | 7.65
    10 | 7.9
    12 | 8.32
    14 | 8.67
    16 | 8.96
    18 | 9.22
    20 | 9.4
  `,
  ieee80_2000_coefficient: `
    copper, annealed soft-drawn | 0.00393
    copper, commercial hard-drawn | 0.00381
    copper-clad steel wire, 40 % conductivity | 0.00378
    copper-clad steel wire, 30 % conductivity | 0.00378
    copper-clad steel rod | 0.00378
    aluminium, EC grade | 0.00403
    aluminium 5005 | 0.00353
    aluminium 6201 | 0.00347
    aluminium-clad steel wire | 0.0036
    steel 1020 | 0.0016
    stainless-clad steel rod | 0.0016
    zinc-coated steel rod | 0.0032
    stainless steel 304 | 0.0013
  `,
  ieee80_2000_inverse_coefficient: `
    copper, annealed soft-drawn | 234
    copper, commercial hard-drawn | 242
    copper-clad steel wire, 40 % conductivity | 245
    copper-clad steel wire, 30 % conductivity | 245
    copper-clad steel rod | 245
    aluminium, EC grade | 228
    aluminium 5005 | 263
    aluminium 6201 | 268
    aluminium-clad steel wire | 258
    steel 1020 | 605
    stainless-clad steel rod | 605
    zinc-coated steel rod | 293
    stainless steel 304 | 749
  `,
  ieee80_2000_fusing_temperature: `
    copper, annealed soft-drawn | 1083
    copper, commercial hard-drawn | 1084
    copper-clad steel wire, 40 % conductivity | 1084
    copper-clad steel wire, 30 % conductivity | 1084
    copper-clad steel rod | 1084
    aluminium, EC grade | 657
    aluminium 5005 | 652
    aluminium 6201 | 654
    aluminium-clad steel wire | 657
    steel 1020 | 1510
    stainless-clad steel rod | 1400
    zinc-coated steel rod | 419
    stainless steel 304 | 1400
  `,
  ieee80_2000_resistivity: `
    copper, annealed soft-drawn | 1.72
    copper, commercial hard-drawn | 1.78
    copper-clad steel wire, 40 % conductivity | 4.4
    copper-clad steel wire, 30 % conductivity | 5.86
    copper-clad steel rod | 8.62
    aluminium, EC grade | 2.86
    aluminium 5005 | 3.22
    aluminium 6201 | 3.28
    aluminium-clad steel wire | 8.48
    steel 1020 | 15.9
    stainless-clad steel rod | 17.5
    zinc-coated steel rod | 20.1
    stainless steel 304 | 72
  `,
  ieee80_2000_thermal_capacity: `
    copper, annealed soft-drawn | 3.42
    copper, commercial hard-drawn | 3.42
    copper-clad steel wire, 40 % conductivity | 3.85
    copper-clad steel wire, 30 % conductivity | 3.85
    copper-clad steel rod | 3.85
    aluminium, EC grade | 2.56
    aluminium 5005 | 2.6
    aluminium 6201 | 2.6
    aluminium-clad steel wire | 3.58
    steel 1020 | 3.28
    stainless-clad steel rod | 4.44
    zinc-coated steel rod | 3.93
    stainless steel 304 | 4.03
  `,
  ieee80_2000_fusing_factor: `
    copper, annealed soft-drawn | 7
    copper, commercial hard-drawn | 7.06
    copper-clad steel wire, 40 % conductivity | 10.45
    copper-clad steel wire, 30 % conductivity | 12.06
    copper-clad steel rod | 14.64
    aluminium, EC grade | 12.12
    aluminium 5005 | 12.41
    aluminium 6201 | 12.47
    aluminium-clad steel wire | 17.2
    steel 1020 | 15.95
    stainless-clad steel rod | 14.72
    zinc-coated steel rod | 28.96
    stainless steel 304 | 30.05
  `,
  iec60364_5_54_2011_a_54_2: `
    PVC 70 °C, up to 300 mm² | copper | 143
    PVC 70 °C, up to 300 mm² | aluminium | 95
    PVC 70 °C, up to 300 mm² | steel | 52
    PVC 70 °C, above 300 mm² | copper | 133
    PVC 70 °C, above 300 mm² | aluminium | 88
    PVC 70 °C, above 300 mm² | steel | 49
    PVC 90 °C, up to 300 mm² | copper | 143
    PVC 90 °C, up to 300 mm² | aluminium | 95
    PVC 90 °C, up to 300 mm² | steel | 52
    PVC 90 °C, above 300 mm² | copper | 133
    PVC 90 °C, above 300 mm² | aluminium | 88
    PVC 90 °C, above 300 mm² | steel | 49
    thermosetting 90 °C | copper | 176
    thermosetting 90 °C | aluminium | 116
    thermosetting 90 °C | steel | 64
    rubber 60 °C | copper | 159
    rubber 60 °C | aluminium | 105
    rubber 60 °C | steel | 58
    rubber 85 °C | copper | 166
    rubber 85 °C | aluminium | 110
    rubber 85 °C | steel | 60
    silicone rubber | copper | 201
    silicone rubber | aluminium | 133
    silicone rubber | steel | 73
  `,
  iec60364_5_54_2011_a_54_3: `
    covering PVC | copper | 159
    covering PVC | aluminium | 105
    covering PVC | steel | 58
    covering polyethylene | copper | 138
    covering polyethylene | aluminium | 91
    covering polyethylene | steel | 50
    covering CSP | copper | 166
    covering CSP | aluminium | 110
    covering CSP | steel | 60
  `,
  iec60364_5_54_2011_a_54_4: `
    PVC 70 °C, up to 300 mm² | copper | 115
    PVC 70 °C, up to 300 mm² | aluminium | 76
    PVC 70 °C, up to 300 mm² | steel | 42
    PVC 70 °C, above 300 mm² | copper | 103
    PVC 70 °C, above 300 mm² | aluminium | 68
    PVC 70 °C, above 300 mm² | steel | 37
    PVC 90 °C, up to 300 mm² | copper | 100
    PVC 90 °C, up to 300 mm² | aluminium | 66
    PVC 90 °C, up to 300 mm² | steel | 36
    PVC 90 °C, above 300 mm² | copper | 86
    PVC 90 °C, above 300 mm² | aluminium | 57
    PVC 90 °C, above 300 mm² | steel | 31
    thermosetting 90 °C | copper | 143
    thermosetting 90 °C | aluminium | 94
    thermosetting 90 °C | steel | 52
    rubber 60 °C | copper | 141
    rubber 60 °C | aluminium | 93
    rubber 60 °C | steel | 51
    rubber 85 °C | copper | 134
    rubber 85 °C | aluminium | 89
    rubber 85 °C | steel | 48
    silicone rubber | copper | 132
    silicone rubber | aluminium | 87
    silicone rubber | steel | 47
  `,
  iec60364_5_54_2011_a_54_5: `
    PVC 70 °C | copper | 141
    PVC 70 °C | aluminium | 93
    PVC 70 °C | lead | 26
    PVC 70 °C | steel | 51
    PVC 90 °C | copper | 128
    PVC 90 °C | aluminium | 85
    PVC 90 °C | lead | 23
    PVC 90 °C | steel | 46
    thermosetting 90 °C | copper | 128
    thermosetting 90 °C | aluminium | 85
    thermosetting 90 °C | lead | 23
    thermosetting 90 °C | steel | 46
    rubber 60 °C | copper | 144
    rubber 60 °C | aluminium | 95
    rubber 60 °C | lead | 26
    rubber 60 °C | steel | 52
    rubber 85 °C | copper | 140
    rubber 85 °C | aluminium | 93
    rubber 85 °C | lead | 26
    rubber 85 °C | steel | 51
    mineral, covered | copper | 135
    mineral, bare | copper | 135
  `,
  iec60364_5_54_2011_a_54_6: `
    visible and restricted area | copper | 228
    visible and restricted area | aluminium | 125
    visible and restricted area | steel | 82
    normal conditions | copper | 159
    normal conditions | aluminium | 105
    normal conditions | steel | 58
    fire risk | copper | 138
    fire risk | aluminium | 91
    fire risk | steel | 50
  `,
  bs7671_2018_54_5: `
    thermoplastic 70 °C | 47
    thermoplastic 90 °C | 44
    thermosetting 90 °C | 58
  `,
  iec60364_5_54_2011_reciprocal_coefficient: `
    copper | 234.5
    aluminium | 228
    lead | 230
    steel | 202
  `,
  iec60364_5_54_2011_heat_capacity: `
    copper | 0.00345
    aluminium | 0.0025
    lead | 0.00145
    steel | 0.0038
  `,
  iec60364_5_54_2011_prefactor: `
    copper | 226
    aluminium | 148
    lead | 41
    steel | 78
  `,
  iec60364_5_54_2011_resistivity: `
    copper | 0.000017241
    aluminium | 0.000028264
    lead | 0.000214
    steel | 0.000138
  `,
  iec60364_5_54_2002_buried_minimum: `
    corrosion and mechanical damage | copper | 2.5
    corrosion and mechanical damage | steel | 10
    corrosion only | copper | 16
    corrosion only | steel | 16
    neither | copper | 25
    neither | steel | 50
  `,
  iec60364_5_54_2011_earthing_minimum: `
    none | copper | 6
    none | steel | 50
    present | copper | 16
    present | steel | 50
  `,
  iec60364_5_54_2011_separate_minimum: `
    separate, protected | copper | 2.5
    separate, protected | aluminium | 16
    separate, unprotected | copper | 4
    separate, unprotected | aluminium | 16
  `,
  iec60364_5_54_2011_pen_minimum: `
    copper | 10
    aluminium | 16
  `,
  bs7671_2018_54_8: `
    35 | 10
    50 | 16
    95 | 25
    150 | 35
  `,
  bs7671_2018_54_8_above: `
    above 150 mm² | 50
  `,
  arrayBondingMinimum: `
    no lightning protection | 6
    separation distance kept | 6
    lightning current can flow | 16
    bonding bar as down conductor | 50
  `,
  rebt2002_soil: `
    fertile or moist, compact | 50
    poor, not very compact | 500
    stony or dry sand | 3000
  `,
  nfpa70_2020_250_166: `
    not smaller than | copper | 8 AWG
    not smaller than | aluminium | 6 AWG
    not required larger than | copper | 3/0 AWG
    not required larger than | aluminium | 250 kcmil
  `,
  nfpa70_2023_250_122: `
    15 | copper | 14 AWG
    15 | aluminium | 12 AWG
    20 | copper | 12 AWG
    20 | aluminium | 10 AWG
    60 | copper | 10 AWG
    60 | aluminium | 8 AWG
    100 | copper | 8 AWG
    100 | aluminium | 6 AWG
    200 | copper | 6 AWG
    200 | aluminium | 4 AWG
    300 | copper | 4 AWG
    300 | aluminium | 2 AWG
    400 | copper | 3 AWG
    400 | aluminium | 1 AWG
    500 | copper | 2 AWG
    500 | aluminium | 1/0 AWG
    600 | copper | 1 AWG
    600 | aluminium | 2/0 AWG
    800 | copper | 1/0 AWG
    800 | aluminium | 3/0 AWG
    1000 | copper | 2/0 AWG
    1000 | aluminium | 4/0 AWG
    1200 | copper | 3/0 AWG
    1200 | aluminium | 250 kcmil
    1600 | copper | 4/0 AWG
    1600 | aluminium | 350 kcmil
    2000 | copper | 250 kcmil
    2000 | aluminium | 400 kcmil
    2500 | copper | 350 kcmil
    2500 | aluminium | 600 kcmil
    3000 | copper | 400 kcmil
    3000 | aluminium | 600 kcmil
    4000 | copper | 500 kcmil
    4000 | aluminium | 750 kcmil
    5000 | copper | 700 kcmil
    5000 | aluminium | 1250 kcmil
    6000 | copper | 800 kcmil
    6000 | aluminium | 1250 kcmil
  `,
  nfpa70_2023_250_66_copper: `
    66360 | copper | 8 AWG
    66360 | aluminium | 6 AWG
    105600 | copper | 6 AWG
    105600 | aluminium | 4 AWG
    167800 | copper | 4 AWG
    167800 | aluminium | 2 AWG
    350000 | copper | 2 AWG
    350000 | aluminium | 1/0 AWG
    600000 | copper | 1/0 AWG
    600000 | aluminium | 3/0 AWG
    1100000 | copper | 2/0 AWG
    1100000 | aluminium | 4/0 AWG
  `,
  nfpa70_2023_250_66_aluminium: `
    105600 | copper | 8 AWG
    105600 | aluminium | 6 AWG
    167800 | copper | 6 AWG
    167800 | aluminium | 4 AWG
    250000 | copper | 4 AWG
    250000 | aluminium | 2 AWG
    500000 | copper | 2 AWG
    500000 | aluminium | 1/0 AWG
    900000 | copper | 1/0 AWG
    900000 | aluminium | 3/0 AWG
    1750000 | copper | 2/0 AWG
    1750000 | aluminium | 4/0 AWG
  `,
  nfpa70_2023_250_66_largest: `
    copper | 3/0 AWG
    aluminium | 250 kcmil
  `,
  nfpa70_2023_250_66_caps: `
    rod, pipe or plate | copper | 6 AWG
    rod, pipe or plate | aluminium | 4 AWG
    concrete-encased | copper | 4 AWG
  `,
};

const faces = earthing as unknown as Readonly<
  Record<
    string,
    { cells(): readonly { readonly row: string; readonly column: readonly string[]; readonly text: string }[] }
  >
>;
// 1.20 and 1.2 are one number; names are compared as they are.
const plain = (text: string): string => (/^-?[\d.]+$/.test(text) ? String(Number(text)) : text);

it.each(Object.entries(again))("%s has the cells that were typed again", (name, lines) => {
  const shipped = faces[name]!.cells().map(({ row, column, text }) => [row, ...column, plain(text)].join(" | "));
  const typed = lines
    .trim()
    .split("\n")
    .map((line) => {
      const parts = line.trim().split(" | ");
      return [...parts.slice(0, -1), plain(parts.at(-1)!)].join(" | ");
    });
  expect([...shipped].sort()).toEqual([...typed].sort());
});
