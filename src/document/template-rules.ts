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
    const call = node as unknown as { path?: { original?: unknown; data?: boolean }; params?: unknown[]; escaped?: boolean };
    if (!/Mustache|Block|SubExpression/.test(node.type) || !call.path) return;
    const name = String(call.path.original);
    const isCall = (call.params?.length ?? 0) > 0 || node.type === 'BlockStatement';
    if (isCall && !ALLOWED.has(name))
      throw faultAt(line, `\`${name}\` is not a helper of ours; there are: ${[...ALLOWED].join(' ')}`);
    if (/^(?:constructor|__proto__|prototype)$|\.\.|@(?!index|first|last)/.test(name))
      throw faultAt(line, `\`${name}\` is not allowed in a wording`);
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

/** Walks every node of a parsed template, children after parents. */
function visit(node: hbs.AST.Node, look: (node: hbs.AST.Node) => void): void {
  look(node);
  for (const child of Object.values(node)) {
    for (const each of Array.isArray(child) ? child : [child]) {
      if (each && typeof each === 'object' && 'type' in each && typeof each.type === 'string') visit(each as hbs.AST.Node, look);
    }
  }
}
