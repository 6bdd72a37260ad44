import type { Cell, Row } from "../view/cell.js";
import { shown, shownPercent, shownText } from "../view/number-text.js";

/** A cell as plain text. */
export function cellText(cell: Cell): string {
  switch (cell.kind) {
    case "number":
      return shownText(cell.percent === true ? shownPercent(cell.number) : shown(cell.number));
    case "made":
      return shownText(shown(cell));
    case "fact":
    case "words":
      return cell.text;
  }
}

export const rowText = ({ cells }: Row): string => cells.map(cellText).join(" ");
