// Control characters could steer a terminal; direction marks could turn a line's reading order round.

const UNSAFE = /[\u0000-\u001f\u007f-\u009f\u200b-\u200f\u2028-\u202e\u2060-\u2069\ufeff\ufff9-\ufffb]/g;
const LONE_SURROGATE = /[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

/** A text of the user on one line, with nothing in it that a reader could not see. */
export function plainText(text: string): string {
  return text
    .replace(/[\t\r\n]+/g, " ")
    .replace(UNSAFE, "\ufffd")
    .replace(LONE_SURROGATE, "\ufffd");
}
