/** The cautions that stand in every record: the usual ones of the trade, in the order of the work. */
export const standingCautions: readonly string[] = [
  "Strings are live whenever there is daylight; they cannot be switched off at the module.",
  "Before work on the a.c. side: isolate, lock off, prove dead.",
  "Open the d.c. switch before plugs are mated or parted; never part them under load.",
  "Measure polarity and voltage of each string before it is connected.",
  "Mate only plugs of one make and type, crimped with the maker's tool.",
  "The inverter must not feed the grid before the settings of its connection rules are active.",
  "Work is for licensed people under the local rules. Local rules and the makers' instructions prevail over this record.",
  "This record does not replace the standards that it cites, nor statics, fire or lightning protection design.",
];
