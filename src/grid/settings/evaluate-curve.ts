import type { Input, Quantity } from "../../quantity/index.js";
import { InputError } from "../../quantity/index.js";
import { voltVarResponse, voltVarResponseInVolts } from "../curves/volt-var.js";
import { voltWattResponse, voltWattResponseInVolts } from "../curves/volt-watt.js";
import { powerFactorOfPowerResponse, wattVarResponse } from "../curves/watt-var.js";
import type { CurveSetting } from "./curve-settings.js";

type Ratio = Quantity<"ratio">;
type Volts = Quantity<"voltage">;

/**
 * What a characteristic curve asks for at a voltage (in the unit of its points) or at an active power (as a share of the rated).
 *
 * @throws InputError where the input is not in the unit of the curve's points
 */
export function evaluateCurve(curve: CurveSetting, at: Input<"voltage"> | Input<"ratio">): Ratio {
  const [p1, p2, p3, p4] = curve.points;
  if (!p1 || !p2) throw tooShort(curve);
  const inVolts = p1.x.dimension === "voltage";
  switch (curve.key) {
    case "volt-var": {
      if (!p3 || !p4) throw tooShort(curve);
      const reactive = { reactive1: p1.y, reactive2: p2.y, reactive3: p3.y, reactive4: p4.y };
      return inVolts
        ? voltVarResponseInVolts({
            voltage: at as Volts,
            voltage1: p1.x as Volts,
            voltage2: p2.x as Volts,
            voltage3: p3.x as Volts,
            voltage4: p4.x as Volts,
            ...reactive,
          })
        : voltVarResponse({
            voltageShare: at as Ratio,
            voltageShare1: p1.x as Ratio,
            voltageShare2: p2.x as Ratio,
            voltageShare3: p3.x as Ratio,
            voltageShare4: p4.x as Ratio,
            ...reactive,
          });
    }
    case "volt-watt": {
      const active = { active1: p1.y, active2: p2.y };
      return inVolts
        ? voltWattResponseInVolts({ voltage: at as Volts, voltage1: p1.x as Volts, voltage2: p2.x as Volts, ...active })
        : voltWattResponse({
            voltageShare: at as Ratio,
            voltageShare1: p1.x as Ratio,
            voltageShare2: p2.x as Ratio,
            ...active,
          });
    }
    case "watt-var": {
      if (!p3) throw tooShort(curve);
      const active = { active1: p1.x as Ratio, active2: p2.x as Ratio, active3: p3.x as Ratio };
      return wattVarResponse({
        activeShare: at as Ratio,
        ...active,
        reactive1: p1.y,
        reactive2: p2.y,
        reactive3: p3.y,
      });
    }
    case "power factor of power":
      return powerFactorOfPowerResponse({
        activeShare: at as Ratio,
        active1: p1.x as Ratio,
        active2: p2.x as Ratio,
        powerFactor1: p1.y,
        powerFactor2: p2.y,
      });
  }
}

function tooShort({ key, points }: CurveSetting): InputError {
  const message = `a ${key} curve has too few points`;
  return new InputError("evaluate curve", [
    { path: "points", code: "missing", message, expected: "all points", received: `${points.length} points` },
  ]);
}
