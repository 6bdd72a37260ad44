const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** Header of a file of our own; the design conditions have the layout of the format, the values of no station. */
export const header = [
  "LOCATION,Boathouse,Lakeside,XXX,own scenario,000000,47.00,9.00,1.0,410.0",
  "DESIGN CONDITIONS,1,Climate Design Data 2009 ASHRAE Handbook,,Heating,1,-9,-7,-12,1.3,-7,-10,1.7,-5,9,3,8,3,2,40,Cooling,7,10,29,19,27,19,26,18,20,27,19,26,18,25,3,230,18,13,22,17,12,22,16,12,21,60,27,57,26,54,25,600,Extremes,9.1,8.0,7.1,24.2,-12.6,32.9,3.5,1.5,-15.1,34.0,-17.2,34.9,-19.1,35.7,-21.7,36.8",
  "TYPICAL/EXTREME PERIODS,0",
  "GROUND TEMPERATURES,0",
  "HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0",
  "COMMENTS 1,own scenario",
  "COMMENTS 2,",
  "DATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31",
];

/** An hour of the file: 35 fields, the dry-bulb temperature in the seventh. */
export function row(month: number, day: number, hour: number, dryBulb: string): string {
  return [2001, month, day, hour, 0, "A7", dryBulb, ...Array.from({ length: 28 }, () => "0")].join(",");
}

/** The rows of a year, with a temperature for each hour. */
export function year(dryBulb: (hour: number) => string, days: readonly number[] = DAYS): string[] {
  const rows: string[] = [];
  for (const [month, last] of days.entries()) {
    for (let day = 1; day <= last; day += 1) {
      for (let hour = 1; hour <= 24; hour += 1) rows.push(row(month + 1, day, hour, dryBulb(rows.length)));
    }
  }
  return rows;
}

export const leapYear = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
