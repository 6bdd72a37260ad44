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
} as const satisfies Record<string, Source>;
