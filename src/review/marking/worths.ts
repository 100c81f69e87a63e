import { sameButAngle } from '../../units/index.ts';
import { isClose, isCloseInSome } from '../matching/closeness.ts';
import {
  linearForm,
  type LinearForm,
  type WorkingFault,
} from '../reading/linear-form.ts';
import { replaceWritten } from '../reading/replace-written.ts';
import type { Written } from '../reading/written.ts';
import { truthOf } from './truth-of.ts';
import { meaningsFor, ownMeaningsFor, withValues } from './meanings.ts';
import type { StepRequest } from './step-mark.ts';
import type { OwnValue, Worker } from './worker.ts';

/** What an expression is worth: `own` by the worker's own earlier figures, `truth` with the true ones put in their place. */
export interface Worths extends OwnValue {
  /** True where the two differ: a value that an earlier step got wrong is in use. */
  readonly isCarried: boolean;
}

/** The worths of an expression, or why it has none; neither for one that measures nothing (a bare 0) or holds an unknown that nothing tells. */
export interface ReadWorths {
  readonly worths?: Worths;
  readonly fault?: WorkingFault;
}

/** Works an expression out twice, with every symbol's true value and with the worker's own. */
export function worthsOf(of: Written, request: StepRequest): ReadWorths {
  const { context, worker, also } = request;
  const truth = (key: string): number | undefined => truthOf(request, key);
  const mine = (key: string): number | undefined =>
    worker.concluded.get(key)?.value ?? truth(key);
  const truly = linearForm(
    withTruths(of, worker),
    withValues(meaningsFor(context, worker, also), truth),
  );
  if (truly.fault !== undefined) return { fault: truly.fault };
  const own = linearForm(of, withValues(ownMeaningsFor(context, worker, also), mine));
  if (own.fault !== undefined) return { fault: own.fault };
  const { dimension } = own.form;
  if (dimension === undefined || isOpen(own.form) || isOpen(truly.form)) return {};
  const values = { own: own.form.constant, truth: truly.form.constant };
  const isCarried = !isCloseInSome(values.own, values.truth);
  return { worths: { ...values, dimension, isCarried } };
}

function isOpen({ unknowns }: LinearForm): boolean {
  return unknowns.size > 0;
}

/** An expression with the true value for each number that repeats what an earlier step wrongly concluded. */
function withTruths(of: Written, worker: Worker): Written {
  // A size alone does not say that it repeats a value whose sign is the only slip.
  const slipped = slippedValues(worker).filter(
    ({ own, truth }) => !isClose(own, -truth),
  );
  if (slipped.length === 0) return of;
  return replaceWritten(of, (part) => {
    if (part.kind !== 'number' || part.isBare) return undefined;
    const { quantity } = part;
    const found = slipped.find(
      ({ own, dimension }) =>
        sameButAngle(dimension, quantity.dimension) &&
        isClose(quantity.si, Math.abs(own)),
    );
    if (found === undefined) return undefined;
    const si = found.truth * (found.own < 0 ? -1 : 1);
    return { ...part, quantity: { ...quantity, si } };
  });
}

/** What the worker came to that is not what it truly is. */
export function slippedValues(worker: Worker): readonly OwnValue[] {
  const concluded = [...worker.concluded.values()].map(
    ({ value: own, truth, dimension }) => ({ own, truth, dimension }),
  );
  return [...concluded, ...worker.values.values()].filter(
    ({ own, truth }) => own !== 0 && !isCloseInSome(own, truth),
  );
}
