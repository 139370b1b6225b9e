/** A species as it is read off the page. */
export interface Species {
  /** caret notation without state: `Cr2O7^2-` */
  readonly key: string;
  /** atoms of each element */
  readonly atoms: ReadonlyMap<string, number>;
  readonly charge: number;
  readonly state?: string;
}

const CACHE = new Map<string, Species | undefined>();

/** Reads a formula in caret notation. @returns undefined when it is none */
export function readSpecies(text: string): Species | undefined {
  if (!CACHE.has(text)) CACHE.set(text, parse(text));
  return CACHE.get(text);
}

const SHAPE = /^(?<body>.+?)(?:\^(?<size>\d*)(?<sign>[+-]))?(?:\((?<state>s|l|g|aq)\))?$/;

function parse(text: string): Species | undefined {
  const groups = SHAPE.exec(text)?.groups;
  if (!groups?.body) return undefined;
  const { body, size, sign, state } = groups;
  const atoms = body === 'e' ? new Map<string, number>() : atomsOf(body);
  if (!atoms) return undefined;
  const charge = sign ? Number(size || '1') * (sign === '+' ? 1 : -1) : 0;
  const key = state ? text.slice(0, -state.length - 2) : text;
  return { key, atoms, charge, ...(state ? { state } : {}) };
}

/** Atoms of a formula between raised dots; each part may begin with how many times it is taken. */
function atomsOf(body: string): Map<string, number> | undefined {
  const total = new Map<string, number>();
  for (const part of body.split('·')) {
    const [, times = '', rest = ''] = /^(\d*)(.*)$/.exec(part)!;
    const found = atomsOfPart(rest);
    if (!found) return undefined;
    for (const [element, count] of found) total.set(element, (total.get(element) ?? 0) + count * Number(times || '1'));
  }
  return total;
}

/** Reads from the right with a stack of multipliers: a closing bracket multiplies everything as far as its opening one. */
function atomsOfPart(part: string): Map<string, number> | undefined {
  const pieces = part.match(/[A-Z][a-z]?\d*|[([]|[)\]]\d*/g) ?? [];
  if (pieces.join('') !== part || pieces.length === 0) return undefined;
  const atoms = new Map<string, number>();
  const factors = [1];
  for (const piece of pieces.reverse()) {
    const [, head, digits] = /^(\D+)(\d*)$/.exec(piece)!;
    const count = Number(digits || '1');
    if (head === ')' || head === ']') factors.push(factors.at(-1)! * count);
    else if (head === '(' || head === '[') {
      factors.pop();
      if (factors.length === 0) return undefined;
    } else atoms.set(head!, (atoms.get(head!) ?? 0) + count * factors.at(-1)!);
  }
  return factors.length === 1 ? atoms : undefined;
}
