import {
  type Check,
  isMissing,
  isNamed,
  type Known,
  type Named,
  type Step,
  stepOf,
  usesOf,
} from "../../formula/index.js";
import { isQuantity, type Quantity } from "../../quantity/index.js";
import { bibliography, type Citation, type Grade, grades, type SourceKey } from "../../source/index.js";
import {
  type PlantRecord,
  type RecordedCheck,
  type RecordedDeclaration,
  type RecordedNumber,
  type RecordedStep,
  recordedVerdict,
} from "./record.js";

/** Turns quantities and checks into plain JSON, and keeps each step, declaration and source once. */
export interface Recorder {
  readonly number: (quantity: Quantity) => RecordedNumber;
  /** A number, or `null` for what is not there. */
  readonly perhaps: (quantity: Known<Quantity> | null | undefined) => RecordedNumber | null;
  readonly check: (check: Check) => RecordedCheck;
  readonly assumption: (quantity: Quantity) => PlantRecord["assumptions"][number];
  readonly steps: () => Readonly<Record<string, RecordedStep>>;
  readonly declarations: () => PlantRecord["declarations"];
  readonly sources: () => PlantRecord["sources"];
}

interface AnyRule {
  readonly id: string;
  readonly source: readonly Citation[];
}

function kindOf(step: Step): RecordedDeclaration["kind"] | null {
  switch (step.kind) {
    case "formula":
    case "model":
      return step.kind;
    case "lookup":
      return "table";
    case "choice":
      return "series";
    default:
      return null;
  }
}

/** Makes a recorder. */
export function makeRecorder(): Recorder {
  const ids = new Map<Quantity | Named, string>();
  const byIdentity = new Map<string, string>();
  const steps: Record<string, RecordedStep> = {};
  const declarations = new Map<string, RecordedDeclaration>();
  const cited = new Map<SourceKey, Set<Grade>>();

  function cite(source: readonly Citation[]): void {
    for (const { in: key, grade } of source) {
      const seen = cited.get(key);
      if (seen) seen.add(grade);
      else cited.set(key, new Set([grade]));
    }
  }

  function declare(kind: RecordedDeclaration["kind"], rule: AnyRule): void {
    if (declarations.has(rule.id)) return;
    declarations.set(rule.id, { kind, ...rule } as unknown as RecordedDeclaration);
    cite(rule.source);
    for (const constant of Object.values((rule as { constants?: Record<string, AnyRule> }).constants ?? {}))
      cite(constant.source);
  }

  function idOf(value: Quantity | Named): string {
    const known = ids.get(value);
    if (known !== undefined) return known;
    const uses: Record<string, string | readonly string[]> = {};
    for (const [key, used] of Object.entries(usesOf(value))) {
      uses[key] = Array.isArray(used) ? used.map(idOf) : idOf(used as Quantity);
    }
    // Equal steps are kept once; only a new one is put into words.
    const identity = identityOf(value, uses);
    let id = byIdentity.get(identity);
    if (id === undefined) {
      const step = stepOf(value);
      const kind = kindOf(step);
      if (kind && step.id !== null) declare(kind, (value.origin as unknown as { rule: AnyRule }).rule);
      else cite(step.source);
      id = `s${byIdentity.size + 1}`;
      byIdentity.set(identity, id);
      steps[id] = recordedStep(step, uses);
    }
    ids.set(value, id);
    return id;
  }

  function number(quantity: Quantity): RecordedNumber {
    const id = idOf(quantity);
    const { grade } = steps[id]!;
    const { text: value, unit } = quantity;
    return { value, unit, step: id, grade };
  }

  function side(value: Check["value"] | Check["limit"]): RecordedCheck["limit"] {
    if (value === null || typeof value === "string") return value;
    if (isNamed(value)) return value.name;
    return isQuantity(value) ? number(value) : value;
  }

  function check({
    id,
    rule,
    at,
    verdict,
    value,
    limit,
    utilisation,
    grade,
    missing,
    because,
    remedy,
  }: Check): RecordedCheck {
    declare("condition", rule);
    return {
      id,
      rule: rule.id,
      at,
      asks: rule.asks,
      force: rule.force,
      verdict: recordedVerdict(verdict),
      value: side(value) as RecordedCheck["value"],
      relation: rule.relation,
      limit: side(limit),
      utilisation,
      source: rule.source[0] ?? null,
      grade,
      missing,
      because,
      remedy,
    };
  }

  return {
    number,
    perhaps: (quantity) =>
      quantity === null || quantity === undefined || isMissing(quantity) ? null : number(quantity),
    check,
    assumption: (quantity) => {
      const { about, source } = quantity.origin as unknown as { about: string; source: readonly Citation[] };
      return { about, value: number(quantity), source };
    },
    steps: () => steps,
    declarations: () => Object.fromEntries([...declarations].sort(([a], [b]) => (a < b ? -1 : 1))),
    sources: () =>
      [...cited]
        .sort(([a], [b]) => (a < b ? -1 : 1))
        .map(([key, seen]) => ({ key, grades: grades.filter((grade) => seen.has(grade)), ...bibliography[key] })),
  };
}

interface Told {
  readonly kind: string;
  readonly rule?: { readonly id: string };
  readonly about?: string;
  readonly statedIn?: string;
  readonly rows?: readonly string[];
  readonly column?: Readonly<Record<string, string>>;
  readonly rejected?: readonly { readonly size: Quantity }[];
}

/** Everything that tells one step from another, as text. */
function identityOf(value: Quantity | Named, uses: RecordedStep["uses"] & object): string {
  const { kind, rule, about, statedIn, rows, column, rejected } = value.origin as unknown as Told;
  const result = isQuantity(value) ? `${value.text} ${value.unit} ${value.keeps}` : value.name;
  const used = Object.values(uses).join(",");
  const place = rows ? `${rows.join(",")};${Object.values(column ?? {}).join(",")}` : "";
  return `${kind}|${rule?.id ?? ""}|${result}|${used}|${about ?? ""}|${statedIn ?? ""}|${place}|${rejected?.length ?? ""}`;
}

function recordedStep(step: Step, uses: RecordedStep["uses"] & object): RecordedStep {
  const { of, kind, id, symbol, about, equation, substituted, result, source, grade, detail } = step;
  const origin = of.origin as { readonly rows?: readonly string[]; readonly column?: Readonly<Record<string, string>> };
  return {
    kind,
    ...(id === null ? {} : { id }),
    ...(symbol === "" ? {} : { symbol }),
    about,
    ...(equation === null ? {} : { equation }),
    ...(substituted === null ? {} : { substituted }),
    result,
    value: isQuantity(of) ? of.text : of.name,
    unit: isQuantity(of) ? of.unit : "",
    ...(isQuantity(of) && of.rounded ? { rounded: true as const } : {}),
    ...(Object.keys(uses).length === 0 ? {} : { uses }),
    ...(detail === null ? {} : { detail }),
    ...(kind === "lookup" ? { rows: origin.rows ?? [], column: origin.column ?? {} } : {}),
    ...(source.length === 0 ? {} : { source }),
    grade,
  };
}
