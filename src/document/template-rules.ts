import Handlebars from 'handlebars';
import { Fault } from '../exact/fault.ts';

const ALLOWED = new Set(['if', 'unless', 'each', 'f', 'eq', 'q', 'term', 'run']);

/**
 * A template may say anything and compute nothing: partials, decorators and helpers other than ours are refused.
 * @throws Fault `bad-wording` with file and line
 */
export function checkTemplate(text: string, file: string, firstLine: number): void {
  const faultAt = (line: number, message: string) => new Fault('bad-wording', message, { file, line: firstLine + line });
  const program = parse(text, faultAt);
  visit(program, (node) => {
    const line = node.loc?.start.line ?? 1;
    if (/Partial|Decorator/.test(node.type)) throw faultAt(line, 'partials and decorators are not allowed in a wording');
    if (node.type === 'PathExpression') checkPath(node as hbs.AST.PathExpression, line, faultAt);
    if (!/Mustache|Block|SubExpression/.test(node.type)) return;
    const { path, params } = node as hbs.AST.MustacheStatement;
    const name = path.type === 'PathExpression' ? (path as hbs.AST.PathExpression).original : '';
    const isCall = params.length > 0 || node.type === 'BlockStatement';
    if (isCall && !ALLOWED.has(name))
      throw faultAt(line, `\`${name}\` is not a helper of ours; there are: ${[...ALLOWED].join(' ')}`);
  });
}

function parse(text: string, faultAt: (line: number, message: string) => Fault): hbs.AST.Program {
  try {
    return Handlebars.parse(text);
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    const line = /line (\d+)/.exec(message);
    throw faultAt(Number(line?.[1] ?? 1), `the wording does not parse: ${message.split('\n').at(-1)}`);
  }
}

/** A name may go down into plain data, and nowhere else. */
function checkPath(
  { original, data, depth, parts }: hbs.AST.PathExpression,
  line: number,
  faultAt: (line: number, message: string) => Fault,
): void {
  const strays = depth > 0 || (data && !['index', 'first', 'last'].includes(original.replace('@', '')));
  if (strays || parts.some((part) => ['constructor', '__proto__', 'prototype'].includes(String(part)))) {
    throw faultAt(line, `\`${original}\` is not allowed in a wording`);
  }
}

/** Walks every node of a parsed template, children after parents. */
function visit(node: hbs.AST.Node, look: (node: hbs.AST.Node) => void): void {
  look(node);
  for (const child of Object.values(node)) {
    for (const each of Array.isArray(child) ? child : [child]) {
      if (each && typeof each === 'object' && 'type' in each && typeof each.type === 'string') visit(each as hbs.AST.Node, look);
    }
  }
}
