import type { Source } from "./source.js";

/** Handbooks, papers, catalogues and data sets. */
export const handbooks = {
  "common practice": { title: "Common practice of the trade, no publication", publisher: "none", year: null, kind: "practice" },
  "Häberlin:2012": { title: "Photovoltaics: System Design and Practice", publisher: "Wiley", year: 2012, kind: "handbook" },
  "PVPMC temperature models:undated": { title: "Module and cell temperature models (modelling guide pages)", publisher: "Sandia National Laboratories, PV Performance Modeling Collaborative", year: null, kind: "agency", address: "https://pvpmc.sandia.gov/modeling-guide/2-dc-module-iv/module-temperature/" },
  "King:2004": { title: "Photovoltaic Array Performance Model, SAND2004-3535", publisher: "Sandia National Laboratories", year: 2004, kind: "paper" },
  "Faiman:2008": { title: "Assessing the outdoor operating temperature of photovoltaic modules, Progress in Photovoltaics 16, 307-315", publisher: "Wiley", year: 2008, kind: "paper" },
  "NICEIC Pocket Guide 14:2018": { title: "Pocket Guide 14: sizing protective conductors by selection, with data of BS 7671 tables 43.1 and 54.2 to 54.6", publisher: "NICEIC / Certsure", year: 2018, kind: "handbook" },
  "NICEIC Pocket Guide 15:2018": { title: "Pocket Guide 15: sizing of protective conductors by calculation", publisher: "NICEIC / Certsure", year: 2018, kind: "handbook" },
  "Yuanky breaker page:undated": { title: "Miniature circuit-breaker to IEC 60898-1 up to 63 A: overcurrent protection characteristics", publisher: "Yuanky", year: null, kind: "catalogue" },
  "Mitolo:2009": { title: "Electrical Safety of Low-Voltage Systems", publisher: "McGraw-Hill", year: 2009, kind: "handbook" },
  "Linsley:undated": { title: "Basic Electrical Installation Work", publisher: "Newnes", year: null, kind: "handbook" },
  "Filipino Engineer:undated": { title: "Maximum cable length and earth fault loop impedance, series of articles", publisher: "filipinoengineer.org", year: null, kind: "magazine" },
  "SIBA fuse.on:2012": { title: "fuse.on 2/2012, selection of fuses for photovoltaics", publisher: "SIBA", year: 2012, kind: "catalogue" },
  "Altech gPV chart:undated": { title: "PV protection: selection chart of gPV fuses 10 × 38, data book page 5", publisher: "Altech Corp.", year: null, kind: "catalogue", address: "https://pdf.ic37.com/ALTECH/004110423_datasheet_20452445/004110423_5.html" },
  "Solahart module manual:undated": { title: "Module installation manual, version 1", publisher: "Solahart Industries", year: null, kind: "catalogue", address: "https://manualshive.com/ru/manual/solahart/suncell-solahart345v1/1313231?page=10" },
  "EcoInnovation pump manual:2019": { title: "Pump installation manual V2.1", publisher: "EcoInnovation", year: 2019, kind: "catalogue", address: "https://www.manualslib.com/manual/2096828/Ecoinnovation-React-Pump.html?page=47" },
  "Primesolar blog:2025": { title: "String sizing and voltage drop (shop blog)", publisher: "primesolar.shop", year: 2025, kind: "magazine", address: "https://www.primesolar.shop/string-sizing-and-voltage-drop-wiring-a-compliant-and-efficient-solar-system-in-nz" },
  "Aurensol guide:undated": { title: "Stringhe e MPPT (shop guide)", publisher: "aurensol.com", year: null, kind: "magazine", address: "https://aurensol.com/it/blogs/guias-tecnicas/diseno-strings-mppt-inversor-regulador" },
} as const satisfies Record<string, Source>;
