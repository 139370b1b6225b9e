import { Rational } from '../../exact/rational.ts';

/**
 * Reads printed arithmetic and computes it exactly: numbers (`4.690 × 10^-4`, true minus), + − × ÷ / and brackets.
 * Independent of the expressions that families use. @returns undefined when it cannot be read
 */
export function computeText(text: string): Rational | undefined {
  const reader = new ArithmeticReader(text.replaceAll('\u2212', '-').replaceAll('÷', '/').replaceAll(/\s+/g, ''));
  const value = reader.sum();
  return reader.atEnd() ? value : undefined;
}

/** Decimal places of a printed number; of one in standard form, those of the number it stands for (1.20 × 10^-4 has six). */
export function printedPlaces(text: string): number {
  const match = /(\d+)(?:\.(\d+))?(?:\s*×\s*10\^(-?\d+))?/.exec(text);
  return (match?.[2]?.length ?? 0) - Number(match?.[3] ?? 0);
}

class ArithmeticReader {
  readonly #text: string;
  #at = 0;
  constructor(text: string) {
    this.#text = text;
  }

  atEnd(): boolean {
    return this.#at === this.#text.length;
  }

  sum(): Rational | undefined {
    let total = this.#product();
    while (total && (this.#next('+') || this.#next('-'))) {
      const sign = this.#text[this.#at - 1];
      const addend = this.#product();
      total = addend && (sign === '+' ? total.plus(addend) : total.minus(addend));
    }
    return total;
  }

  #product(): Rational | undefined {
    let total = this.#factor();
    while (total && (this.#next('×') || this.#next('/'))) {
      const sign = this.#text[this.#at - 1];
      const factor = this.#factor();
      if (!factor || (sign === '/' && factor.isZero())) return undefined;
      total = sign === '×' ? total.times(factor) : total.over(factor);
    }
    return total;
  }

  #factor(): Rational | undefined {
    if (this.#next('(')) {
      const inner = this.sum();
      return this.#next(')') ? inner : undefined;
    }
    const number = /^[+-]?\d+(?:\.\d+)?(?:×10\^-?\d+)?/.exec(this.#text.slice(this.#at));
    if (!number) return undefined;
    this.#at += number[0].length;
    return Rational.parse(number[0].replace('×10^', 'e'));
  }

  #next(sign: string): boolean {
    if (this.#text[this.#at] !== sign) return false;
    this.#at += 1;
    return true;
  }
}
