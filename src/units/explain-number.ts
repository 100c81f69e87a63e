import { quoted, type QuantityProblem } from './quantity-problem.ts';

const feetAndInches = /^\d[\d.,]*\s*(?:ft(?=[\s-])|['′’])\s*-?\s*\d/;

/** What is wrong with a text that looks like feet and inches and is not: feet not whole, inches of twelve or more. */
export function explainFeetInches(text: string): QuantityProblem | undefined {
  if (!feetAndInches.test(text)) return undefined;
  return problem('malformed', text, {
    message: `${quoted(text)} is not a length in feet and inches`,
    hint: 'write whole feet and fewer than twelve inches: 12 ft 6 in, 12 ft 6 1/2 in or 12\'-6 1/2"',
  });
}

/** Why no number begins a text. */
export function explainMissingNumber(text: string): QuantityProblem {
  if (text === '') {
    return problem('malformed', text, {
      message: 'there is no number here',
      hint: 'write a number and its unit, such as 8.4 kip',
    });
  }
  if (/^\.?(?:nan|inf|infinity|∞)(?![a-z])/i.test(text)) {
    return problem('not-finite', text, {
      message: `${quoted(text)} is no number that can be worked with`,
      hint: 'write the number itself',
    });
  }
  return problem('malformed', text, {
    message: `"${quoted(text)}" does not begin with a number`,
    hint: 'write the number first and its unit after it, such as 8.4 kip',
  });
}

/**
 * What is wrong with what follows a number directly, where it can be no unit: `end` is the offset at which the
 * number ended. Undefined where a unit may follow.
 */
export function explainAfterNumber(
  text: string,
  end: number,
): QuantityProblem | undefined {
  const rest = text.slice(end);
  const slip = slips.find(({ pattern }) => pattern.test(rest));
  if (slip !== undefined) return slip.explain(text, end);
  return /^0[xXoObB][\da-fA-F]/.test(text)
    ? problem('malformed', text, {
        message: `${quoted(text)} is not a decimal number`,
        hint: 'write the number in decimal digits',
      })
    : undefined;
}

interface Slip {
  readonly pattern: RegExp;
  readonly explain: (text: string, end: number) => QuantityProblem;
}

const slips: readonly Slip[] = [
  { pattern: /^,/, explain: explainComma },
  {
    // A 1 before a slash and a letter begins a unit: 12e-6 1/K.
    pattern: /^\s+(?!1\s*[/∕⁄]\s*\D)\d/,
    explain: (text) =>
      problem('malformed', text, {
        message: `"${quoted(text)}" holds two numbers`,
        hint: `write ${quoted(text.replace(/(?<=\d)\s+(?=\d)/g, ''))}, without blanks inside the number`,
      }),
  },
  {
    pattern: /^_/,
    explain: (text) =>
      problem('malformed', text, {
        message: `${quoted(text)} holds an underscore`,
        hint: `write ${quoted(text.replaceAll('_', ''))}`,
      }),
  },
  {
    pattern: /^[½¼¾⅓⅔⅛⅜⅝⅞]/,
    explain: (text, end) =>
      problem('malformed', text, {
        message: `${quoted(text)} holds a fraction in one sign`,
        hint: `write the fraction with a slash, such as ${text.slice(0, end)} 1/2`,
      }),
  },
  {
    pattern: /^[eE](?:[+\-−]|\s|$)/,
    explain: (text) =>
      problem('malformed', text, {
        message: `the power of ten in ${quoted(text)} has no digits`,
        hint: 'write it like 36.9e6',
      }),
  },
  {
    pattern: /^[\d.]|^%/,
    explain: (text) =>
      problem('malformed', text, {
        message: `"${quoted(text)}" is not a number with a unit`,
        hint: 'write one number with a decimal point, and its unit after it',
      }),
  },
];

function explainComma(text: string, end: number): QuantityProblem {
  const grouped = /^,\s+\d{3}(?!\d)/.test(text.slice(end));
  const joined = text.replaceAll(/,\s*(?=\d)/g, '');
  const isDecimal = /^\d+,\d+(?![\d,.])/.test(text);
  const quotedGroup = text.replaceAll(/,\s+(?=\d{3})/g, ',');
  const asDecimal = `write ${quoted(text.replace(',', '.'))}, with a decimal point`;
  const asWhole = grouped
    ? `write ${quoted(joined)}, or "${quoted(quotedGroup)}"`
    : `write ${quoted(joined)}, without the comma`;
  return problem('ambiguous-comma', text, {
    message: `the comma in ${quoted(text)} separates no thousands`,
    hint: isDecimal ? asDecimal : asWhole,
  });
}

function problem(
  kind: QuantityProblem['kind'],
  text: string,
  says: { readonly message: string; readonly hint: string },
): QuantityProblem {
  return {
    kind,
    start: 0,
    end: text.length,
    message: says.message,
    hints: [says.hint],
  };
}
