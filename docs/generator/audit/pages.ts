import { auditPage } from "./audit-page.js";
import { clausesPage } from "./clauses-page.js";
import { auditCsv, auditJson } from "./data-files.js";
import { errataPage } from "./errata-page.js";
import type { Findings } from "./findings.js";
import { releasesPage } from "./releases-page.js";
import { subjectPage } from "./subject-page.js";
import { weakPage } from "./weak-page.js";

/** The text of every file of `docs/audit/`, by path. */
export function auditFiles(findings: Findings): Readonly<Record<string, string>> {
  const subjects = Object.keys(findings.audit.summary.subjects);
  return {
    "README.md": auditPage(findings),
    "weak.md": weakPage(findings),
    "errata.md": errataPage(findings),
    "clauses.md": clausesPage(findings),
    "wrong-releases.md": releasesPage(findings),
    "audit.csv": auditCsv(findings),
    "audit.json": auditJson(findings),
    ...Object.fromEntries(subjects.map((subject) => [`subjects/${subject}.md`, subjectPage(subject, findings)])),
  };
}
