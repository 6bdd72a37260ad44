/** What a deviation may come from, in words for the person with the meter. Hints suggest where to look; they judge nothing. */
export const hintKinds = {
  reversedPolarity: "The poles may be reversed: check both plugs before anything is connected.",
  noVoltage: "No voltage: a plug may be open, a fuse blown, a switch open or the string broken.",
  oneModuleFewer: "The voltage is that of one module fewer: a module may be missing, bridged or not plugged in.",
  modulesFewer:
    "The voltage is that of fewer modules: the string may be shorter than planned, or a part of it is not connected.",
  modulesMore:
    "The voltage is that of more modules: the string may be longer than planned. Check it against the largest input voltage before it is connected.",
  partOfModule:
    "Less than one module's voltage is lacking: a bypass diode may be shorted, or a part of a module shaded; first check the temperature that was used.",
  colderOrMore: "The voltage is a little high: the cells may be colder than the temperature that was used.",
  swappedStrings: "Each of the two strings reads what the other should: they may be swapped or mislabelled.",
  allAlike:
    "All strings deviate alike: look at the measured temperature and irradiance, and at the module type, before the strings.",
  noCurrent:
    "Voltage but no current: a contact may be open under load, or a fuse blown behind the point of the voltage reading.",
  lessCurrent: "The voltage is right and the current low: shade, soiling, or light that changed between the readings.",
  twiceCurrent: "The current is that of two strings: parallel strings may have been read together.",
  moreCurrent:
    "The current is high: the irradiance may not have been read in the plane of the modules, or the light changed.",
  bypassed:
    "The current is right and the working voltage low: parts of modules may be bypassed, by shade or by a shorted diode.",
  throttled: "Working voltage high and current low: the inverter may be limiting its power.",
} as const;

/** The key of a hint. */
export type HintKey = keyof typeof hintKinds;
