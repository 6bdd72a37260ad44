import type { Source } from "./source.js";

/** Publications of IEC, CENELEC and the bodies that adopt them unchanged. */
export const iec = {
  "IEC 62548-1:2023": { title: "Photovoltaic (PV) arrays – Part 1: Design requirements", publisher: "IEC", year: 2023, kind: "standard" },
  "IEC 62548:2016": { title: "Photovoltaic (PV) arrays – Design requirements", publisher: "IEC", year: 2016, kind: "standard" },
  "IEC 60364-5-52:2009": { title: "Low-voltage electrical installations – Part 5-52: Wiring systems", publisher: "IEC", year: 2009, kind: "standard" },
  "IEC 60364-5-54:2011": { title: "Low-voltage electrical installations – Part 5-54: Earthing arrangements and protective conductors", publisher: "IEC", year: 2011, kind: "standard" },
  "IEC 60364-4-41:2017": { title: "Low-voltage electrical installations – Part 4-41: Protection against electric shock", publisher: "IEC", year: 2017, kind: "standard" },
  "IEC 60364-4-43:2008": { title: "Low-voltage electrical installations – Part 4-43: Protection against overcurrent", publisher: "IEC", year: 2008, kind: "standard" },
  "IEC 60364-7-712:2017": { title: "Low-voltage electrical installations – Part 7-712: Solar photovoltaic (PV) power supply systems", publisher: "IEC", year: 2017, kind: "standard" },
  "IEC 60228:2004": { title: "Conductors of insulated cables", publisher: "IEC", year: 2004, kind: "standard" },
  "IEC 60898-1:2015": { title: "Circuit-breakers for overcurrent protection for household and similar installations – Part 1: A.C. operation", publisher: "IEC", year: 2015, kind: "standard" },
  "IEC 60904-3:2019": { title: "Photovoltaic devices – Part 3: Measurement principles for terrestrial devices with reference spectral irradiance data", publisher: "IEC", year: 2019, kind: "standard" },
  "IEC 60269-6:2010": { title: "Low-voltage fuses – Part 6: Fuse-links for the protection of photovoltaic energy systems", publisher: "IEC", year: 2010, kind: "standard" },
  "EN 50618:2014": { title: "Electric cables for photovoltaic systems", publisher: "CENELEC", year: 2014, kind: "standard" },
  "EN 50549-1:2019": { title: "Requirements for generating plants to be connected in parallel with distribution networks – Part 1: Low voltage", publisher: "CENELEC", year: 2019, kind: "standard" },
  "EN 50160:2010": { title: "Voltage characteristics of electricity supplied by public electricity networks", publisher: "CENELEC", year: 2010, kind: "standard" },
} as const satisfies Record<string, Source>;
