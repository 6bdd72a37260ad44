import { type Known, missing, whenKnown } from "../../formula/index.js";
import { iec60898_1_2015_instantaneous_time } from "../../device/index.js";
import {
  chooseResidualDevice,
  type Disconnection,
  iec60364_4_43_2008_43a,
  proveBackfeed,
  proveBreaking,
  proveDisconnection,
  proveWithstand,
  type ResidualQuestion,
  type SupplyEarthing,
} from "../../protection/index.js";
import type { Quantity } from "../../quantity/index.js";
import type { RecordedFinding } from "../record/record.js";
import type { Recorder } from "../record/recorder.js";
import type { SizedAcRoute } from "./ac-routes.js";
import type { PlantRoute } from "./cables.js";
import { loopAlong } from "./fault-loop.js";
import { finding, noteChoice, type Sizing } from "./sizing.js";

/** Proves disconnection, breaking capacity, withstand, back-feed and the residual-current device of one a.c. route. */
export function proveAcRoute(
  sizing: Sizing,
  route: SizedAcRoute,
  fromSupply: readonly SizedAcRoute[],
  recorder: Recorder,
): readonly RecordedFinding[] {
  const { plant, rules, checks } = sizing;
  const path = `routes[${route.index}].breaker`;
  const at = `${route.route.from}-${route.route.to}`;
  const { breaker } = route.route;
  const nec = rules.wiring.startsWith("NFPA 70");
  const disconnection = disconnectionOf(sizing, route, fromSupply, at);
  checks.push(
    ...disconnection.checks,
    ...proveBreaking({
      at,
      largestFaultCurrent: finding(plant.supply.largestFaultCurrent, "supply.largestFaultCurrent"),
      breakingCapacity: finding(breaker?.breakingCapacity, `${path}.breakingCapacity`),
      backUp: breaker?.backUp ?? null,
    }),
    proveBackfeed(at, finding(breaker?.marking, `${path}.marking`)),
  );
  if (!nec) {
    checks.push(
      ...proveWithstand({
        at,
        section: route.sized.size ?? missing(`routes[${route.index}].cable.size`),
        factor: withstandFactorOf(route.route, route.index),
        smallestFaultCurrent: disconnection.smallestFaultCurrent,
        trippingTime: trippingTimeOf(route, path),
        letThrough: finding(breaker?.letThrough, `${path}.letThrough`),
      }).checks,
    );
  }
  const residual = nec ? null : chooseResidualDevice(residualQuestion(sizing, route, at));
  if (residual) checks.push(...residual.checks);
  const row = (what: string, value: Known<Quantity> | null): RecordedFinding => ({
    subject: "protection",
    what,
    at,
    value: recorder.perhaps(value),
    checks: [],
  });
  if (nec) return [];
  return [
    row("largest loop impedance", disconnection.largestLoopImpedance),
    row("disconnection time, at most", disconnection.disconnectionTime),
    row("smallest fault current", disconnection.smallestFaultCurrent),
    ...(residual?.ratedResidualCurrent ? [row("residual-current device", residual.ratedResidualCurrent)] : []),
  ];
}

function earthingOf({ plant }: Sizing): Known<SupplyEarthing> {
  const { earthing } = plant.supply;
  return earthing === undefined || earthing === "solidly grounded" ? missing("supply.earthing") : earthing;
}

function disconnectionOf(
  sizing: Sizing,
  route: SizedAcRoute,
  fromSupply: readonly SizedAcRoute[],
  at: string,
): Disconnection {
  const { plant, rules } = sizing;
  const path = `routes[${route.index}]`;
  const { breaker, rcd } = route.route;
  return proveDisconnection({
    at,
    wiring: rules.wiring,
    earthing: earthingOf(sizing),
    circuit: plant.inverters.some(({ name }) => name === route.route.from) ? "final" : "distribution",
    lineToEarth: finding(plant.supply.lineToNeutral, "supply.lineToNeutral"),
    kind: breaker?.kind ?? "miniature breaker",
    ratedCurrent: route.breaker.rating ?? missing(`${path}.breaker.rating`),
    characteristic: finding(breaker?.characteristic, `${path}.breaker.characteristic`),
    operatingCurrent: finding(breaker?.operatingCurrent, `${path}.breaker.operatingCurrent`),
    loop: loopAlong(sizing, fromSupply),
    lowestVoltage: "by the rules",
    residualCurrent: rcd === "none" ? "none" : finding(rcd?.ratedResidualCurrent, `${path}.rcd`),
    electrodeResistance: finding(plant.electrode?.resistance, "electrode.resistance"),
    insulationMonitoring:
      plant.supply.insulationMonitoring === undefined
        ? missing("supply.insulationMonitoring")
        : plant.supply.insulationMonitoring
          ? "present"
          : "none",
  });
}

function withstandFactorOf({ cable }: PlantRoute, index: number): Known<Quantity<"adiabaticFactor">> {
  const { insulation, conductor = "copper" } = cable;
  switch (insulation) {
    case "PVC":
      return iec60364_4_43_2008_43a({ insulation: "PVC 70 °C, up to 300 mm²", material: conductor });
    case "XLPE":
      return iec60364_4_43_2008_43a({ insulation: "thermosetting 90 °C", material: conductor });
    default:
      return missing(`routes[${index}].cable.insulation`);
  }
}

function trippingTimeOf({ route }: SizedAcRoute, path: string): Known<Quantity<"time">> {
  const { kind = "miniature breaker", characteristic } = route.breaker ?? {};
  if (kind !== "miniature breaker") return missing(`${path}.operatingCurrent`);
  return whenKnown({ characteristic: finding(characteristic, `${path}.characteristic`) }, (known) =>
    iec60898_1_2015_instantaneous_time(known),
  );
}

function residualQuestion(sizing: Sizing, { route, index, inverters }: SizedAcRoute, at: string): ResidualQuestion {
  const { plant } = sizing;
  const [inverter] = inverters;
  const inverterPath = `inverters[${plant.inverters.indexOf(inverter!)}]`;
  const path = `routes[${index}].rcd`;
  const { rcd } = route;
  noteChoice(sizing, path, rcd);
  const declared = inverter!.residualCurrent?.rcdTypeAllowed;
  const { upstreamRcd } = plant.supply;
  return {
    at,
    earthing: earthingOf(sizing),
    asked: finding(route.rcdAsked, `routes[${index}].rcdAsked`),
    isolated: finding(inverter!.isolated, `${inverterPath}.isolated`),
    declaredType: declared ?? "not declared",
    leakageCurrent: finding(
      inverter!.residualCurrent?.standingLeakage,
      `${inverterPath}.residualCurrent.standingLeakage`,
    ),
    electrodeResistance: finding(plant.electrode?.resistance, "electrode.resistance"),
    device:
      rcd === undefined
        ? "choose"
        : rcd === "none"
          ? "none"
          : {
              type: finding(rcd.type, `${path}.type`),
              ratedResidualCurrent: finding(rcd.ratedResidualCurrent, `${path}.ratedResidualCurrent`),
              feed: finding(rcd.feed, `${path}.feed`),
            },
    upstream:
      upstreamRcd === undefined
        ? missing("supply.upstreamRcd")
        : upstreamRcd === "none"
          ? "none"
          : {
              type: finding(upstreamRcd.type, "supply.upstreamRcd.type"),
              ratedResidualCurrent: finding(
                upstreamRcd.ratedResidualCurrent,
                "supply.upstreamRcd.ratedResidualCurrent",
              ),
              delay:
                upstreamRcd.delayed === undefined
                  ? missing("supply.upstreamRcd.delayed")
                  : upstreamRcd.delayed
                    ? "S"
                    : "general",
            },
  };
}
