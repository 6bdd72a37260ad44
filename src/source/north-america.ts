import type { Source } from "./source.js";

/** NFPA 70, IEEE and the publications of North American practice. */
export const northAmerica = {
  "NFPA 70:2017": { title: "National Electrical Code", publisher: "NFPA", year: 2017, kind: "standard" },
  "NFPA 70:2020": { title: "National Electrical Code", publisher: "NFPA", year: 2020, kind: "standard" },
  "NFPA 70:2023": { title: "National Electrical Code", publisher: "NFPA", year: 2023, kind: "standard" },
  "ANSI C84.1:2020": { title: "Electric power systems and equipment – Voltage ratings (60 Hz)", publisher: "ANSI / NEMA", year: 2020, kind: "standard" },
  "IEEE 1547:2018": { title: "Interconnection and interoperability of distributed energy resources with associated electric power systems interfaces", publisher: "IEEE", year: 2018, kind: "standard" },
  "IEEE 1547:2003": { title: "Interconnecting distributed resources with electric power systems", publisher: "IEEE", year: 2003, kind: "standard", address: "| superseded by the 2018 edition" },
  "IEEE 1547.1:2020": { title: "Conformance test procedures for equipment interconnecting distributed energy resources with electric power systems", publisher: "IEEE", year: 2020, kind: "standard" },
  "California Rule 21:2018": { title: "Electric Rule 21, generating facility interconnections, smart inverter settings", publisher: "California investor-owned utilities", year: 2018, kind: "law" },
  "ISO-NE source requirements:2018": { title: "Inverter source requirement document of ISO New England", publisher: "ISO New England", year: 2018, kind: "standard" },
  "UL1741SB test scripts:2026": { title: "Conformance-test scripts that transcribe tables of IEEE 1547-2018 and 1547.1-2020, commit dd11a39", publisher: "individual author, University of Arizona (public repository)", year: 2026, kind: "dataset", address: "https://github.com/ua-kxie/UL1741SB", note: "copies without an editor" },
  "IEEE 1547.1 test scripts:2022": { title: "IEEE 1547.1 conformance test scripts, commit 3517e7f", publisher: "Sandia National Laboratories, SunSpec Alliance, CanmetENERGY (public repository)", year: 2022, kind: "dataset", address: "https://github.com/sandialabs/svp_1547.1", note: "copies without an editor" },
  "NEC 2017 transcription:undated": { title: "Public repository with transcribed articles of the National Electrical Code 2017", publisher: "individual author", year: null, kind: "dataset", address: "| copies without an editor" },
  "California Electrical Code:2022": { title: "California Electrical Code, title 24 part 3 (NFPA 70:2020 with state amendments)", publisher: "California Building Standards Commission", year: 2022, kind: "law" },
  "NFPA 70:2026": { title: "National Electrical Code", publisher: "NFPA", year: 2026, kind: "standard" },
  "NFPA 70:2014": { title: "National Electrical Code", publisher: "NFPA", year: 2014, kind: "standard" },
  "UL 2579:undated": { title: "Fuses for photovoltaic systems", publisher: "UL", year: null, kind: "standard" },
  "UL 1741:undated": { title: "Inverters, converters, controllers and interconnection system equipment", publisher: "UL", year: null, kind: "standard" },
  "NABCEP study guide:2005": { title: "Study guide for photovoltaic system installers and sample examination questions", publisher: "NABCEP / Brooks Engineering", year: 2005, kind: "course" },
  "North American Clean Energy:2022": { title: "Get ready for NEC 2023, 15 November 2022", publisher: "North American Clean Energy", year: 2022, kind: "magazine", address: "https://www.nacleanenergy.com/solar/get-ready-for-nec-2023" },
  "NFPA 70:2008": { title: "National Electrical Code", publisher: "NFPA", year: 2008, kind: "standard" },
  "NFPA 70:2005": { title: "National Electrical Code", publisher: "NFPA", year: 2005, kind: "standard" },
  "ASHRAE Fundamentals:2013": { title: "Handbook of Fundamentals, climatic design information, chapter 14 and station data", publisher: "ASHRAE", year: 2013, kind: "handbook" },
} as const satisfies Record<string, Source>;
