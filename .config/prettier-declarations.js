/** Leaves the data of declared rules as it was laid out by hand: one symbol, one constant, one citation a line. */
import * as doc from "prettier/doc";
import * as estree from "prettier/plugins/estree";

const makers = ["formula", "table", "series", "condition", "model"];
const printer = estree.printers.estree;

function isDeclaration({ node, parent }) {
  const calls = parent?.type === "CallExpression" && makers.includes(parent.callee.name);
  return calls && node === parent.arguments[0] && node.type === "ObjectExpression";
}

function asWritten({ node }, { originalText, locStart, locEnd }) {
  return doc.utils.replaceEndOfLine(originalText.slice(locStart(node), locEnd(node)));
}

export const printers = {
  estree: {
    ...printer,
    hasPrettierIgnore: (path) => isDeclaration(path) || printer.hasPrettierIgnore(path),
    printPrettierIgnored: (path, options, ...rest) =>
      isDeclaration(path) ? asWritten(path, options) : printer.printPrettierIgnored(path, options, ...rest),
  },
};
