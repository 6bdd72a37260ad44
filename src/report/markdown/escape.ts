import { plainText } from "../view/plain-text.js";

const SIGNS = /[\\`*_{}[\]<>()#+!|~&$]/g;
const AT_START = /^(\s*)([-=]|\d+\.)(?=\s|$)/;

/** Text that Markdown prints as it is: no sign of it makes markup, a link or HTML. */
export function markdownText(text: string): string {
  return plainText(text).replace(SIGNS, "\\$&").replace(AT_START, "$1\\$2").replace(/:\/\//g, ":\\/\\/");
}
